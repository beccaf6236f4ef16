package accircuit

import (
	"slices"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Meter holds what one meter is said to measure and what passes it.
type Meter struct {
	working.Subject

	PurposeStated    working.Text `json:"purpose_stated" words:"what it is said to measure"`
	PurposeByCircuit working.Text `json:"purpose_by_circuit" words:"what it measures by where it stands; the word of the document where several would do"`
}

func (m *mains) meters() []Meter {
	if m.in.AC.Meters == nil {
		return nil
	}
	all := []Meter{}
	for i := range m.in.AC.Meters {
		meter := &m.in.AC.Meters[i]
		stated := working.StatedText(meter.Purpose)
		all = append(all, Meter{
			Subject:       working.Subject{ID: meter.ID.Value, At: meter.At(), Name: "meter " + meter.ID.Value},
			PurposeStated: stated, PurposeByCircuit: m.purpose(meter, stated),
		})
	}
	return all
}

// purpose is what a meter measures: between the supply and the first board what the
// premises draw and, where they generate, give; behind a way of a board what passes
// there.
func (m *mains) purpose(meter *schema.Meter, stated working.Text) working.Text {
	path := m.circuit.ToSupply(meter.ID.Value + ".in")
	var words []string
	by := m.in.AC.Supply.At()
	switch {
	case path.Input == "" || path.Ambiguous:
		return working.UnknownText("/cables")
	case len(path.Ways) == 0 && m.own == nil && m.existing == nil:
		words = []string{"import", "import_and_export"}
	case len(path.Ways) == 0:
		words = []string{"import_and_export"}
	case m.circuit.Fed(path.Ways[0]) != "":
		words, by = []string{"generation", "battery", "import_and_export"}, m.circuit.Fed(path.Ways[0])
	default:
		words, by = []string{"import"}, m.outlets[path.Ways[0]].way.At()
	}
	if slices.Contains(words, stated.Value()) {
		return working.KnownText(stated.Value(), by)
	}
	return working.KnownText(words[0], by)
}
