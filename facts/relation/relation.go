// Package relation holds values that are stated beside each other against each
// other: those of one datasheet of the AC side, of switches, surge protective
// devices, batteries and cables, of the supply and of a circuit. Each relation is
// one number, mostly a ratio; what it may be stands in a table of the rule set.
//
// A relation of which a value is not stated is not there: what is not stated cannot
// contradict, and whatever needs the value asks for it.
package relation

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Relation holds how values that are stated beside each other go together.
type Relation struct {
	working.Subject

	Relation working.Text   `json:"relation" words:"which values go together, and of what kind of thing: a row of the table of relations"`
	Value    working.Number `json:"value" words:"how they go together, mostly a ratio"`
}

// Derive derives every relation of which all values are stated.
func Derive(in *schema.Installation) []Relation {
	c := &collector{all: []Relation{}}
	each(in.Datasheets.Inverters, c.inverter)
	each(in.Datasheets.ProtectiveDevices, c.device)
	each(in.Datasheets.SwitchDisconnectors, c.switchDisconnector)
	each(in.Datasheets.SPDs, c.surgeDevice)
	each(in.Datasheets.Batteries, c.battery)
	each(in.Datasheets.Cables, c.cable)
	c.cableSizes(in.Datasheets.Cables)
	c.supply(in)
	c.circuits(in)
	c.settings(in)
	return c.all
}

// each goes through datasheets in the order of their ids.
func each[S any](sheets map[string]*S, of func(id string, s *S)) {
	for id, s := range working.InOrder(sheets) {
		of(id, s)
	}
}

// collector takes relations one after the other.
type collector struct{ all []Relation }

// part is what the values of some relations belong to.
type part struct{ id, at, name string }

// add takes one relation of a part, under the key of its row in the table and with
// what it is about in words.
func (c *collector) add(of part, key, words string, n working.Number) {
	c.addAs(of, key, key, words, n)
}

// addAs is add where a part has several relations of one key: they differ in their
// ids.
func (c *collector) addAs(of part, id, key, words string, n working.Number) {
	if !n.Known() {
		return
	}
	c.all = append(c.all, Relation{
		Subject:  working.Subject{ID: of.id + "." + id, At: of.at, Name: words + " of " + of.name},
		Relation: working.KnownText(key, of.at),
		Value:    n,
	})
}

// ratio is one stated number over another of the same unit.
func ratio(symbol, unit string, a, b schema.Number) working.Number {
	return working.Ratio(symbol, working.Stated("a", unit, a), working.Stated("b", unit, b))
}

// known leaves out what is not stated.
func known(numbers ...working.Number) []working.Number {
	return slices.DeleteFunc(numbers, func(n working.Number) bool { return !n.Known() })
}

// falls is the least ratio of each stated number to the next that is stated: below 1
// where they do not fall in the order given.
func falls(symbol, unit string, numbers ...schema.Number) working.Number {
	var ratios []working.Number
	var last *schema.Number
	for i := range numbers {
		if !numbers[i].Stated() {
			continue
		}
		if last != nil {
			ratios = append(ratios, ratio(symbol, unit, *last, numbers[i]))
		}
		last = &numbers[i]
	}
	return working.Least(symbol, "", ratios...)
}

var span = working.NewFormula("ΔT", "K", "T_max − T_min", working.ByDefinition)

// ambientSpan is how far the warm end of a range of temperatures is above the cold end.
func ambientSpan(low, high schema.Number) working.Number {
	return span.Of(working.Stated("T_max", "°C", high), working.Stated("T_min", "°C", low))
}
