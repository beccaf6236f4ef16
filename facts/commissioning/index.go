package commissioning

import "sunclause/schema"

// index finds parts and readings by their id: a document may have many of them.
type index struct {
	instruments map[string]*schema.Instrument
	strings     map[string]int // place in the list
	runs        map[string]int // place in the list
	circuits    map[string]*schema.ACCircuit
	ways        map[string]*schema.BoardWay // by terminal
	curves      map[string]int              // how many, by string
	rcdTests    map[string]int              // how many, by part
	functional  map[string][]*schema.FunctionalTest
	insulated   map[string][]*schema.InsulationReading
}

func indexOf(in *schema.Installation) index {
	x := index{
		instruments: map[string]*schema.Instrument{},
		strings:     map[string]int{},
		runs:        map[string]int{},
		circuits:    map[string]*schema.ACCircuit{},
		ways:        map[string]*schema.BoardWay{},
		curves:      map[string]int{},
		rcdTests:    map[string]int{},
		functional:  map[string][]*schema.FunctionalTest{},
		insulated:   map[string][]*schema.InsulationReading{},
	}
	for i := range in.Strings {
		x.strings[in.Strings[i].ID.Value] = i
	}
	for i := range in.Cables {
		x.runs[in.Cables[i].ID.Value] = i
	}
	for i := range in.AC.Circuits {
		x.circuits[in.AC.Circuits[i].ID.Value] = &in.AC.Circuits[i]
	}
	for _, b := range in.AC.Boards {
		for i := range b.Ways {
			x.ways[b.ID.Value+"."+b.Ways[i].ID.Value] = &b.Ways[i]
		}
	}
	x.readings(&in.Commissioning)
	return x
}

func (x *index) readings(c *schema.Commissioning) {
	for i := range c.Instruments {
		x.instruments[c.Instruments[i].ID.Value] = &c.Instruments[i]
	}
	for _, r := range c.Curves {
		x.curves[r.String.Value]++
	}
	for _, r := range c.Rcds {
		x.rcdTests[r.Part.Value]++
	}
	for i := range c.Functional {
		f := &c.Functional[i]
		x.functional[f.Test.Value] = append(x.functional[f.Test.Value], f)
	}
	for i := range c.Insulation {
		r := &c.Insulation[i]
		x.insulated[r.Part.Value] = append(x.insulated[r.Part.Value], r)
	}
}

// instrument is the one that a reading names; a blank one where it names none. So are
// circuit and way.
func (x *index) instrument(id schema.Text) *schema.Instrument { return partOf(x.instruments, id) }

func (x *index) circuit(id schema.Text) *schema.ACCircuit { return partOf(x.circuits, id) }

func (x *index) way(terminal schema.Text) *schema.BoardWay { return partOf(x.ways, terminal) }

func partOf[T any](parts map[string]*T, name schema.Text) *T {
	if p := parts[name.Value]; p != nil {
		return p
	}
	return schema.Blank[T](name.At())
}
