package pvstring

import (
	"math"
	"strconv"

	"sunclause/facts/working"
	"sunclause/schema"
)

// match works out how alike the strings of one input are.
func (m *Mppt) match(in *schema.Installation, fed []*String) {
	m.SeriesSpread = working.Spread("ΔN_s", "", each(fed, func(s *String) working.Number { return s.ModulesInSeries })...)
	m.VocMismatchPct = m.vocMismatch(fed)
	planes := planesOf(in, fed)
	m.ModuleTypes = distinct("n_types", fed, in, func(s schema.String) schema.Text { return s.Module })
	m.Planes = distinct("n_planes", fed, in, func(s schema.String) schema.Text { return s.Plane })
	var azimuths, pitches []working.Number
	for _, p := range planes {
		azimuths = append(azimuths, p.azimuth)
		pitches = append(pitches, p.pitch)
	}
	m.PitchSpreadDeg = working.Spread("Δpitch", "°", pitches...)
	m.AzimuthSpreadDeg = widestAngle(azimuths)
}

func (m *Mppt) vocMismatch(fed []*String) working.Number {
	vocs := each(fed, func(s *String) working.Number { return s.VocStcV })
	hi, lo := working.Greatest("U_hi", "V", vocs...), working.Least("U_lo", "V", vocs...)
	f := working.Formula{Symbol: "ΔU", Unit: "%", Text: "100 · (U_hi − U_lo) / U_hi", Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return 100 * (x[0] - x[1]) / x[0] }, hi, lo)
}

// distinct counts the different words that the strings state; one string that
// states none leaves the count unknown.
func distinct(symbol string, fed []*String, in *schema.Installation, member func(schema.String) schema.Text) working.Number {
	seen := map[string]bool{}
	var missing []string
	at := ""
	for _, f := range fed {
		t := member(stringBy(in, f.ID))
		at = t.At()
		if !t.Stated() {
			missing = append(missing, t.At())
		}
		seen[t.Value] = true
	}
	if len(missing) > 0 {
		return working.Unknown(symbol, "", missing...)
	}
	return working.Counted(symbol, len(seen), at)
}

func stringBy(in *schema.Installation, id string) schema.String {
	for _, s := range in.Strings {
		if s.ID.Value == id {
			return s
		}
	}
	return schema.String{}
}

// direction is where a roof plane faces and how steep it is.
type direction struct{ azimuth, pitch working.Number }

func planesOf(in *schema.Installation, fed []*String) []direction {
	var all []direction
	for i, f := range fed {
		n := strconv.Itoa(i + 1)
		s := stringBy(in, f.ID)
		d := direction{working.Unknown("α_"+n, "°", s.Plane.At()), working.Unknown("p_"+n, "°", s.Plane.At())}
		for _, p := range in.Roof.Planes {
			if s.Plane.Stated() && p.ID.Value == s.Plane.Value {
				d = direction{working.Stated("α_"+n, "°", p.AzimuthDeg), working.Stated("p_"+n, "°", p.PitchDeg)}
			}
		}
		all = append(all, d)
	}
	return all
}

// widestAngle is the widest angle between two of some compass directions, at
// most 180°.
func widestAngle(azimuths []working.Number) working.Number {
	if len(azimuths) == 0 {
		return working.Unknown("Δα", "°")
	}
	f := working.Formula{Symbol: "Δα", Unit: "°", Text: "widest angle between the azimuths", Source: working.ByDefinition, Lookup: true}
	return f.Of(func(x ...float64) float64 {
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
