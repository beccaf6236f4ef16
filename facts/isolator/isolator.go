// Package isolator derives the facts of isolators: the duty that the strings
// put on them, the rating that the maker gives for the way they are wired, and
// what each of them leaves live in daylight.
package isolator

import (
	"strings"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Isolator holds the facts of one isolator.
type Isolator struct {
	working.Subject

	Circuit           working.Text   `json:"circuit" words:"circuit it opens, where what it is joined to bears out what is stated: pv_dc, battery_dc or ac"`
	CircuitStated     working.Text   `json:"circuit_stated" words:"circuit it opens as stated"`
	CircuitMade       working.Text   `json:"circuit_by_wiring" words:"circuit it opens by what its ways lead to"`
	Round             working.Text   `json:"bypassed_by" words:"runs by which current passes round it when it is open; none, where there are none"`
	Strings           working.Names  `json:"strings" words:"strings whose current passes through it"`
	Inverters         working.Names  `json:"inverters" words:"inverters that its strings feed"`
	InvertersServed   working.Number `json:"inverters_served" words:"inverters that its strings feed: how many"`
	InverterIsolator  working.Flag   `json:"inverter_has_isolator" words:"whether an inverter that its strings feed has a DC switch-disconnector inside"`
	StringsParallel   working.Number `json:"strings_in_parallel" words:"most strings in parallel on the tracking input of one of its ways, wherever they are joined"`
	VocMaxV           working.Number `json:"voc_max_v" words:"greatest maximum voltage of the strings it opens"`
	IscMaxA           working.Number `json:"isc_max_a" words:"greatest design short-circuit current through one of its ways, forward or backward"`
	UeV               working.Number `json:"ue_v" words:"rated operational voltage as wired, in the stated category"`
	IeA               working.Number `json:"ie_a" words:"rated operational current at that voltage"`
	Category          working.Text   `json:"utilization_category" words:"utilization category it is used in"`
	Poles             working.Number `json:"poles" words:"poles of the device"`
	PolesUsed         working.Number `json:"poles_used" words:"poles that its wiring takes up"`
	BreaksAll         working.Flag   `json:"breaks_all_conductors" words:"whether every way breaks all live conductors"`
	BreaksTogether    working.Flag   `json:"breaks_all_poles_together" words:"whether one movement opens all poles"`
	IndependentManual working.Flag   `json:"independent_manual_operation" words:"whether its speed does not depend on the hand"`
	PolaritySensitive working.Flag   `json:"polarity_sensitive" words:"whether it breaks current in one direction only"`
	LockableOff       working.Flag   `json:"lockable_off" words:"whether it can be locked open as installed"`
	OnOffMarked       working.Flag   `json:"on_off_marked" words:"whether ON and OFF are marked"`
	IthA              working.Number `json:"ithe_a" words:"rated thermal current in an enclosure"`
	IthAmbientC       working.Number `json:"ithe_ambient_c" words:"ambient temperature to which that current belongs"`
	AmbientMaxC       working.Number `json:"ambient_max_c" words:"highest ambient temperature around it"`
	Place             working.Text   `json:"place" words:"where it stands"`
	Outdoors          working.Flag   `json:"outdoors" words:"whether it stands in the open"`
	IPSolids          working.Number `json:"ip_solids" words:"first figure of the enclosure's IP code"`
	IPWater           working.Number `json:"ip_water" words:"second figure of the enclosure's IP code"`
	UVResistant       working.Flag   `json:"uv_resistant" words:"whether the enclosure resists sunlight"`
	Entries           working.Text   `json:"entries" words:"face through which cables enter the enclosure"`
	GlandsFit         working.Flag   `json:"glands_fit" words:"whether the glands fit their cables"`
	DrilledBack       working.Flag   `json:"drilled_through_back" words:"whether fixing holes go through the back"`
	Combustible       working.Flag   `json:"enclosure_combustible" words:"whether the enclosure burns"`
	DistanceM         working.Number `json:"distance_to_inverter_m" words:"distance from the inverter"`
	Accessible        working.Flag   `json:"readily_accessible" words:"whether it can be reached without a ladder, tool or key"`
	RunsLive          working.Names  `json:"runs_live_when_open" words:"runs of PV cable in the circuits it opens that are still live in daylight with this isolator alone open"`
	RunsDead          working.Names  `json:"runs_dead_when_open" words:"runs of PV cable that it makes dead when it alone is open"`
	Inside
}

// Derive derives the facts of every isolator; nil when the document states none.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, b book.Book) []Isolator {
	if in.Isolators == nil {
		return nil
	}
	through, builtIn := c.Through(stringIDs(pv)), isolatorsInside(in)
	all := make([]Isolator, len(in.Isolators))
	for i := range in.Isolators {
		iso := &in.Isolators[i]
		all[i] = isolatorOf(iso)
		all[i].Circuit, all[i].CircuitMade = c.Opens(iso), c.OpensMade(iso)
		all[i].inside(iso, c, b)
		all[i].Round = round(iso, c.Round(i))
		all[i].duty(through[i], pv, builtIn)
		all[i].rating(iso)
		all[i].RunsLive, all[i].RunsDead = c.Alone(i)
	}
	return all
}

// round writes the runs by which current passes round an isolator.
func round(iso *schema.Isolator, runs []string) working.Text {
	if len(runs) == 0 {
		return working.KnownText("none", iso.At())
	}
	return working.KnownText(strings.Join(circuit.Several(runs), ", "), iso.At())
}

// isolatorOf takes what the isolator and its datasheet state.
func isolatorOf(iso *schema.Isolator) Isolator {
	sheet := iso.Datasheet.To()
	f := Isolator{
		Subject:           working.Subject{ID: iso.ID.Value, At: iso.At(), Name: "isolator " + iso.ID.Value},
		CircuitStated:     working.StatedText(iso.Circuit),
		Category:          working.StatedText(iso.UtilizationCategory),
		Poles:             working.Stated("n_poles", "", sheet.Poles),
		PolesUsed:         polesUsed(iso),
		BreaksAll:         circuit.BreaksAll(iso),
		BreaksTogether:    working.StatedFlag(sheet.BreaksAllPolesTogether),
		IndependentManual: working.StatedFlag(sheet.IndependentManualOperation),
		PolaritySensitive: working.StatedFlag(sheet.PolaritySensitive),
		LockableOff:       working.StatedFlag(iso.LockableOff),
		OnOffMarked:       working.StatedFlag(sheet.OnOffMarked),
		IthA:              working.Stated("I_the", "A", sheet.ItheA),
		IthAmbientC:       working.Stated("T_the", "°C", sheet.ItheAmbientC),
		AmbientMaxC:       working.Stated("T_amb", "°C", iso.AmbientMaxC),
		DistanceM:         working.Stated("d", "m", iso.DistanceToInverterM),
		Accessible:        working.StatedFlag(iso.ReadilyAccessible),
	}
	f.enclosure(iso)
	return f
}

func (f *Isolator) enclosure(iso *schema.Isolator) {
	e := iso.Enclosure
	f.Place = working.StatedText(iso.Place)
	f.Outdoors = working.Outdoors(iso.Place)
	f.IPSolids = working.IPFigure("IP_1", e.IP, working.IPSolids)
	f.IPWater = working.IPFigure("IP_2", e.IP, working.IPWater)
	f.UVResistant = working.StatedFlag(e.UVResistant)
	f.Entries = working.StatedText(e.Entries)
	f.GlandsFit = working.StatedFlag(e.GlandsFit)
	f.DrilledBack = working.StatedFlag(e.DrilledThroughBack)
	f.Combustible = working.StatedFlag(e.Combustible)
}

// conductorsBroken counts the conductors that each word of conductors_opened
// stands for.
var conductorsBroken = map[string]int{
	"positive": 1, "negative": 1, "both": 2, "line": 1, "line_and_neutral": 2, "all_lines": 3, "all_lines_and_neutral": 4,
}

var polesTaken = working.NewFormula("n_used", "", "n_con · n_ser", working.ByDefinition)

// polesUsed counts the poles that the wiring takes up: for each way the
// conductors it breaks, times the poles in series in each.
func polesUsed(iso *schema.Isolator) working.Number {
	inSeries := working.Stated("n_ser", "", iso.PolesInSeries)
	conductors := 0
	for _, w := range iso.Ways {
		if !w.ConductorsOpened.Stated() {
			return working.Unknown("n_used", "", w.ConductorsOpened.At())
		}
		conductors += conductorsBroken[w.ConductorsOpened.Value]
	}
	return polesTaken.Of(working.Counted("n_con", conductors, iso.At()), inSeries)
}
