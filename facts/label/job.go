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

	rows     []scheduleRow                        // rows of the label tables
	byLegend map[string][]*schema.Label           // labels put up
	byRun    map[string][]*schema.Label           // labels along, or on, a run
	runs     map[string]int                       // runs by their ids
	arrays   map[string]bool                      // ids of the arrays
	leaves   map[string]int                       // runs by the terminal where they begin
	through  [][][]int                            // strings through each way of each isolator
	sheets   map[string]*schema.InverterDatasheet // of the inverters, by their ids
	values   map[string]values                    // what the strings behind a part come to
	places   map[string]schema.Text               // where each part stands
	apart    []inverterWay                        // what parts each inverter from the supply
}

func jobOf(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) *job {
	j := &job{in: in, c: c, pv: pv, cables: cables, b: b, rows: scheduleRows(b),
		byLegend: map[string][]*schema.Label{}, byRun: map[string][]*schema.Label{},
		runs: map[string]int{}, leaves: map[string]int{}, arrays: map[string]bool{}, sheets: map[string]*schema.InverterDatasheet{}, values: map[string]values{}, places: placesOf(in)}
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
		j.byLegend[l.Legend.Value] = append(j.byLegend[l.Legend.Value], l)
		for _, run := range []string{l.Run.Value, l.On.Value} {
			if _, is := j.runs[run]; is {
				j.byRun[run] = append(j.byRun[run], l)
			}
		}
	}
	var ids []string
	for i := range pv.Strings {
		ids = append(ids, pv.Strings[i].ID)
	}
	j.through = c.Through(ids)
	j.apart = j.inverterWays()
	return j
}
