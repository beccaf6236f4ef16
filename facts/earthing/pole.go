package earthing

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Pole holds the facts of one pole of an array that is earthed on purpose.
type Pole struct {
	working.Subject

	Inverter   working.Text   `json:"inverter" words:"inverter that the array feeds"`
	Separation working.Text   `json:"separation" words:"separation of that inverter's DC side from its AC side"`
	Pole       working.Text   `json:"pole" words:"which pole"`
	By         working.Text   `json:"by" words:"through what it is earthed"`
	Reason     working.Text   `json:"reason" words:"why it is earthed"`
	SizeMm2    working.Number `json:"conductor_mm2" words:"cross-section of the conductor"`
	AtOnePoint working.Flag   `json:"at_one_point" words:"whether it is earthed at one point only"`
	CanBeOpen  working.Flag   `json:"can_be_lifted" words:"whether the connection can be opened for an insulation test"`
}

func poles(in *schema.Installation) []Pole {
	if in.Earthing.Poles == nil {
		return nil
	}
	all := make([]Pole, len(in.Earthing.Poles))
	for i, p := range in.Earthing.Poles {
		all[i] = Pole{
			Subject:    working.Subject{ID: p.ID.Value, At: p.At(), Name: "earthed pole " + p.ID.Value},
			Inverter:   working.StatedText(p.Inverter.Text),
			Separation: working.StatedText(p.Inverter.To().Datasheet.To().Separation),
			Pole:       working.StatedText(p.Pole),
			By:         working.StatedText(p.By),
			Reason:     working.StatedText(p.Reason),
			SizeMm2:    working.Stated("S", "mm²", p.ConductorMm2),
			AtOnePoint: working.StatedFlag(p.AtOnePoint),
			CanBeOpen:  working.StatedFlag(p.CanBeLifted),
		}
	}
	return all
}
