package pvstring

import (
	"math"
	"strconv"

	"sunclause/facts/working"
	"sunclause/schema"
)

// match works out how alike the strings of one input are.
func (m *Mppt) match(fed []feeder) {
	m.SeriesSpread = working.Spread("ΔN_s", "", each(fed, func(s *String) working.Number { return s.ModulesInSeries })...)
	m.VocMismatchPct = m.vocMismatch(fed)
	m.ModuleTypes = distinct("n_types", fed, func(s *schema.String) schema.Text { return s.Module.Text })
	m.Planes = distinct("n_planes", fed, func(s *schema.String) schema.Text { return s.Plane.Text })
	var azimuths, pitches []working.Number
	for i, f := range fed {
		plane, n := f.stated.Plane.To(), strconv.Itoa(i+1)
		azimuths = append(azimuths, working.Stated("α_"+n, "°", plane.AzimuthDeg))
		pitches = append(pitches, working.Stated("p_"+n, "°", plane.PitchDeg))
	}
	m.PitchSpreadDeg = working.Spread("Δpitch", "°", pitches...)
	m.AzimuthSpreadDeg = widestAngle(azimuths)
}

var mismatch = working.NewFormula("ΔU", "%", "100 · (U_hi − U_lo) / U_hi", working.ByDefinition)

func (m *Mppt) vocMismatch(fed []feeder) working.Number {
	vocs := each(fed, func(s *String) working.Number { return s.VocStcV })
	hi, lo := working.Greatest("U_hi", "V", vocs...), working.Least("U_lo", "V", vocs...)
	return mismatch.Of(hi, lo)
}

// distinct counts the different words that the strings state; one string that
// states none leaves the count unknown.
func distinct(symbol string, fed []feeder, member func(*schema.String) schema.Text) working.Number {
	seen := map[string]bool{}
	var missing []working.Gap
	at := ""
	for _, f := range fed {
		t := member(f.stated)
		at = t.At()
		if !t.Stated() {
			missing = append(missing, working.Unstated(t.At()))
		}
		seen[t.Value] = true
	}
	if len(missing) > 0 {
		return working.Unknown(symbol, "", missing...)
	}
	return working.Counted(symbol, len(seen), at)
}

// widestAngle is the widest angle between two of some compass directions, at
// most 180°.
func widestAngle(azimuths []working.Number) working.Number {
	if len(azimuths) == 0 {
		return working.NoNumber("Δα", "°")
	}
	widest := working.Lookup{Symbol: "Δα", Unit: "°", Text: "widest angle between the azimuths", Source: working.ByDefinition}
	return widest.Of(func(x ...float64) float64 {
		widest := 0.0
		for i, a := range x {
			for _, b := range x[i+1:] {
				d := math.Mod(math.Abs(a-b), 360)
				widest = max(widest, min(d, 360-d))
			}
		}
		return widest
	}, azimuths...)
}
