package earthing

import (
	"slices"

	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// StringPole holds how the poles of one string stand to earth and to its
// overcurrent protective device.
type StringPole struct {
	EarthedPole  working.Text   `json:"earthed_pole" words:"pole of its array that is earthed solidly or through a fuse: none, positive or negative"`
	UnfusedPoles working.Number `json:"unfused_poles" words:"poles, other than one earthed solidly or through a fuse, that have no overcurrent protective device"`
}

func stringPoles(in *schema.Installation, pv pvstring.Facts) []StringPole {
	all := make([]StringPole, len(pv.Strings))
	for i := range pv.Strings {
		s := &pv.Strings[i]
		all[i].EarthedPole = earthedPole(in, s.Inverter)
		all[i].UnfusedPoles = unfusedPoles(s.FusePoles, all[i].EarthedPole)
	}
	return all
}

// earthedPole is the pole that no fault to earth can drive: one earthed through
// a resistor or by electronics is not, and the midpoint is no pole.
func earthedPole(in *schema.Installation, inverter working.Text) working.Text {
	const at = "/earthing/poles"
	switch {
	case in.Earthing.Poles == nil:
		return working.UnknownText(at)
	case len(in.Earthing.Poles) > 0 && !inverter.Known():
		return working.UnknownText(inverter.Missing()...)
	}
	var missing []working.Gap
	for _, p := range in.Earthing.Poles {
		switch {
		case p.Inverter.Value != inverter.Value() || p.By.Is("resistor") || p.By.Is("electronic") || p.Pole.Is("midpoint"):
		case !p.By.Stated() || !p.Pole.Stated():
			missing = append(missing, slices.Concat(working.StatedText(p.By).Missing(), working.StatedText(p.Pole).Missing())...)
		default:
			return working.StatedText(p.Pole)
		}
	}
	if missing != nil {
		return working.UnknownText(missing...)
	}
	return working.KnownText("none", at)
}

// unfusedPoles counts the poles left without a device. With one in both there
// is none, whatever is earthed.
func unfusedPoles(fused, earthed working.Text) working.Number {
	const symbol = "n_bare"
	other := map[string]string{"positive": "negative", "negative": "positive"}[fused.Value()]
	switch {
	case !fused.Known():
		return working.Unknown(symbol, "", fused.Missing()...)
	case other == "":
		return working.Counted(symbol, 0, fused.At())
	case !earthed.Known():
		return working.Unknown(symbol, "", earthed.Missing()...)
	case earthed.Value() == other:
		return working.Counted(symbol, 0, earthed.At())
	}
	return working.Counted(symbol, 1, fused.At())
}
