package earthing

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// MainBond holds the facts of one main bonding conductor of the building.
type MainBond struct {
	working.Subject

	Bonds     working.Text   `json:"bonds" words:"what it bonds"`
	SizeMm2   working.Number `json:"size_mm2" words:"cross-section, as copper"`
	Connected working.Flag   `json:"connected" words:"whether it was found connected at both ends"`
}

func mainBonds(in *schema.Installation, b book.Book) []MainBond {
	if in.Earthing.MainBonds == nil {
		return nil
	}
	all := make([]MainBond, len(in.Earthing.MainBonds))
	for i, m := range in.Earthing.MainBonds {
		all[i] = MainBond{
			Subject:   working.Subject{ID: m.ID.Value, At: m.At(), Name: "main bond " + m.ID.Value},
			Bonds:     working.StatedText(m.Bonds),
			SizeMm2:   sizeOf("S_b", m.Conductor, b),
			Connected: working.StatedFlag(m.Conductor.Connected),
		}
	}
	return all
}
