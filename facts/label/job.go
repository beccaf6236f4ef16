package label

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/schema"
)

// job is an installation with what other rooms know of it, and with what many
// labels ask for looked up once.
type job struct {
	in     *schema.Installation
	c      *circuit.Circuit
	pv     pvstring.Facts
	cables cable.Facts
	b      book.Book

	rows       []scheduleRow                        // rows of the label tables
	hung       map[hanging][]int                    // labels put up, by where they hang
	byRun      map[string][]*schema.Label           // labels along, or on, a run
	runs       map[string]int                       // runs by their ids
	isolator   map[string]int                       // isolators by their ids
	inputs     map[string][]int                     // tracking inputs by the inverter they are of
	strings    map[string]int                       // strings by their ids
	arrays     map[string]bool                      // ids of the arrays
	leaves     map[string]int                       // runs by the terminal where they begin
	through    [][][]int                            // strings through each way of each isolator
	sheets     map[string]*schema.InverterDatasheet // of the inverters, by their ids
	values     map[string]values                    // what the strings behind a part come to
	places     map[string]schema.Text               // where each part stands
	numbered   map[string]bool                      // how the ids of parts look without their numbers
	protection []due                                // settings that a label of them may print, once they were asked for
	apart      []inverterWay                        // what parts each inverter from the supply
}

// hanging is a legend and where it hangs: on a part, along a run or at a location.
type hanging struct{ legend, on, run, location string }

func jobOf(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) *job {
	j := &job{in: in, c: c, pv: pv, cables: cables, b: b, rows: scheduleRows(b),
		hung: map[hanging][]int{}, byRun: map[string][]*schema.Label{},
		isolator: map[string]int{}, inputs: map[string][]int{}, strings: map[string]int{},
		runs: map[string]int{}, leaves: map[string]int{}, arrays: map[string]bool{}, sheets: map[string]*schema.InverterDatasheet{}, values: map[string]values{}, places: circuit.PlacesOf(in)}
	for i := range in.Cables {
		j.runs[in.Cables[i].ID.Value], j.leaves[in.Cables[i].From.Value] = i, i
	}
	for _, inv := range in.Inverters {
		j.sheets[inv.ID.Value] = inv.Datasheet.To()
	}
	for _, a := range in.Arrays {
		j.arrays[a.ID.Value] = true
	}
	for i := range in.Labels {
		l := &in.Labels[i]
		where := hanging{l.Legend.Value, l.On.Value, l.Run.Value, l.Location.Value}
		j.hung[where] = append(j.hung[where], i)
		for _, run := range []string{l.Run.Value, l.On.Value} {
			if _, is := j.runs[run]; is {
				j.byRun[run] = append(j.byRun[run], l)
			}
		}
	}
	var ids []string
	for i := range pv.Strings {
		ids = append(ids, pv.Strings[i].ID)
		j.strings[pv.Strings[i].ID] = i
	}
	for i := range in.Isolators {
		j.isolator[in.Isolators[i].ID.Value] = i
	}
	for i := range pv.Mppts {
		inverter := circuit.Part(pv.Mppts[i].ID)
		j.inputs[inverter] = append(j.inputs[inverter], i)
	}
	j.through = c.Through(ids)
	j.apart = j.inverterWays()
	j.numbered = map[string]bool{}
	for id := range j.places {
		j.numbered[digits.ReplaceAllString(id, "#")] = id != ""
	}
	return j
}
