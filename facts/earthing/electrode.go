package earthing

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Electrode holds the facts of one earth electrode.
type Electrode struct {
	working.Subject

	Kind          working.Text   `json:"kind" words:"kind of electrode"`
	Serves        working.Text   `json:"serves" words:"what it earths"`
	ResistanceOhm working.Number `json:"resistance_ohm" words:"resistance to earth, the latest reading first"`
	Bonded        working.Flag   `json:"bonded_to_main_terminal" words:"whether it is joined to the main earthing terminal"`
	ConductorMm2  working.Number `json:"conductor_mm2" words:"cross-section of the conductor that leads to it, as copper"`
	Buried        working.Flag   `json:"conductor_buried" words:"whether that conductor is buried"`
	BuriedMinMm2  working.Number `json:"conductor_buried_min_mm2" words:"least cross-section of that conductor where it is buried"`
}

func electrodes(in *schema.Installation, b book.Book) []Electrode {
	if in.Earthing.Electrodes == nil {
		return nil
	}
	all := make([]Electrode, len(in.Earthing.Electrodes))
	for i, e := range in.Earthing.Electrodes {
		all[i] = Electrode{
			Subject:       working.Subject{ID: e.ID.Value, At: e.At(), Name: "electrode " + e.ID.Value},
			Kind:          working.StatedText(e.Kind),
			Serves:        working.StatedText(e.Serves),
			ResistanceOhm: resistanceOf(in, e),
			Bonded:        working.StatedFlag(e.BondedToMainTerminal),
			ConductorMm2:  sizeOf("S_el", e.Conductor, b),
			Buried:        working.StatedFlag(e.Conductor.Buried),
			BuriedMinMm2:  buriedLeast("S_buried", e.Conductor, b),
		}
	}
	return all
}

// resistanceOf takes the latest reading of an electrode, and where the readings
// have none of it what is stated. Once built, the readings must be there: a
// bad one left out must not give way to what the designer hoped for. A reading
// that may be of another electrode, or whose date cannot be compared, leaves
// the resistance unknown.
func resistanceOf(in *schema.Installation, e schema.EarthElectrode) working.Number {
	if in.Commissioning.Electrodes == nil && in.Project.Stage.Is("as_built") {
		return working.Unknown("R_A", "Ω", in.Commissioning.Member("electrodes"))
	}
	var own []schema.ElectrodeReading
	for _, r := range in.Commissioning.Electrodes {
		if !r.Part.Stated() && len(in.Earthing.Electrodes) > 1 {
			return working.Unknown("R_A", "Ω", r.Part.At())
		}
		if !r.Part.Stated() || r.Part.Value == e.ID.Value {
			own = append(own, r)
		}
	}
	if len(own) == 0 {
		return working.Stated("R_A", "Ω", e.ResistanceOhm)
	}
	latest := own[0]
	for _, r := range own[1:] {
		if missing := unstated(latest.Date.Pointer, r.Date.Pointer); missing != nil {
			return working.Unknown("R_A", "Ω", missing...)
		}
		if r.Date.Value >= latest.Date.Value {
			latest = r
		}
	}
	return working.Stated("R_A", "Ω", latest.ResistanceOhm)
}
