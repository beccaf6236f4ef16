package earthing_test

import (
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/facttest"
)

// Table 54.8 of BS 7671 for a supply with protective multiple earthing, and
// half of the earthing conductor between 6 and 25 mm² for any other.
func TestMainBondingDue(t *testing.T) {
	for _, c := range []struct {
		arrangement             string
		neutral, line, earthing float64
		want                    float64
	}{
		{"TN-C-S", 25, 25, 16, 10}, {"TN-C-S", 35, 25, 16, 10}, {"TN-C-S", 50, 25, 16, 16}, {"TN-C-S", 70, 25, 16, 25},
		{"TN-C-S", 120, 25, 16, 35}, {"TN-C-S", 240, 25, 16, 50},
		{"TN-S", 25, 25, 16, 10}, {"TN-S", 25, 25, 6, 6}, {"TT", 25, 25, 4, 6}, {"TN-S", 240, 240, 120, 25},
		{"TN-S", 25, 25, 50, 10}, // thicker than the lines ask for: half of what they ask for will do
	} {
		doc := house()
		facttest.At(doc, "earthing")["arrangement"] = c.arrangement
		facttest.At(doc, "earthing", "earthing_conductor")["csa_mm2"] = c.earthing
		facttest.At(doc, "ac", "supply")["neutral_mm2"], facttest.At(doc, "ac", "supply")["line_mm2"] = c.neutral, c.line
		facttest.Near(t, c.arrangement, derive(t, doc).System.MainBondingDueMm2, c.want, 0)
	}
	doc := house()
	delete(facttest.At(doc, "earthing"), "arrangement")
	n := derive(t, doc).System.MainBondingDueMm2
	facttest.Wants(t, "arrangement not stated", n, "/earthing/arrangement")
}

// The fault current at 230 V and 0.21 Ω is 1095 A; the fuse opens within 0.4 s,
// so that copper in thermoplastic wants 4.84 mm², and 6 mm² is made.
func TestEarthingConductor(t *testing.T) {
	s := derive(t, house()).System
	facttest.Near(t, "by the lines", s.EarthingTableMm2, 16, 0)
	facttest.Near(t, "adiabatic", s.EarthingAdiabatic, 6, 0)
	facttest.Near(t, "due", s.EarthingDueMm2, 6, 0)
	facttest.Near(t, "smallest main bond", s.SmallestMainBondMm2, 10, 0)
	doc := house()
	facttest.At(doc, "ac", "supply")["ze_ohm"] = 0.5 // 460 A: within 5 s only, 7.19 mm²
	facttest.Near(t, "slower", derive(t, doc).System.EarthingAdiabatic, 10, 0)
	delete(facttest.At(doc, "ac", "supply"), "ze_ohm")
	s = derive(t, doc).System
	facttest.Wants(t, "impedance not stated", s.EarthingAdiabatic, "/ac/supply/ze_ohm")
	facttest.Near(t, "due without it", s.EarthingDueMm2, 16, 0)
}

func TestBuriedLeast(t *testing.T) {
	for _, c := range []struct {
		corrosion, mechanical any
		want                  float64
	}{{true, true, 0}, {true, false, 16}, {false, true, 25}, {false, false, 25}} {
		doc := house()
		e := facttest.At(doc, "earthing", "earthing_conductor")
		e["corrosion_protected"], e["mechanically_protected"] = c.corrosion, c.mechanical
		facttest.Near(t, "buried", derive(t, doc).System.EarthingBuriedMm2, c.want, 0)
	}
	n := derive(t, house()).System.EarthingBuriedMm2
	facttest.Wants(t, "not stated", n, "/earthing/earthing_conductor/corrosion_protected")
}

// Class III and two down-conductors over 10 m give 0.264 m in air and 0.528 m in
// masonry: worked with the factors of IEC 62305-3, 6.3. A published guide to
// lightning protection (2018) has 0.35 m for class III, more than four
// down-conductors, masonry and 10 m.
func TestSeparationDistance(t *testing.T) {
	for _, c := range []struct {
		class, gap   string
		down, length float64
		want         float64
	}{{"III", "air", 2, 10, 0.264}, {"III", "masonry", 2, 10, 0.528}, {"I", "air", 1, 5, 0.4}, {"II", "air", 3, 10, 0.264}, {"IV", "air", 12, 20, 0.352}, {"III", "masonry", 5, 10, 0.352}} {
		doc := house()
		facttest.At(doc, "earthing")["lightning_protection"] = object{"fitted": true, "class": c.class, "down_conductors": c.down, "gap_material": c.gap, "length_to_bond_m": c.length}
		facttest.Near(t, c.class+" "+c.gap, derive(t, doc).System.SeparationM, c.want, 1e-9)
	}
	n := derive(t, house()).System.SeparationM
	facttest.Wants(t, "nothing stated", n, "/earthing/lightning_protection/class", "/earthing/lightning_protection/down_conductors",
		"/earthing/lightning_protection/gap_material", "/earthing/lightning_protection/length_to_bond_m")
}

// A longer way to the bond never allows a smaller distance, and masonry never a
// smaller one than air.
func TestLongerNeverLowersSeparation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lp := object{"fitted": true, "class": rapid.SampledFrom([]string{"I", "II", "III", "IV"}).Draw(t, "class"),
			"down_conductors": rapid.IntRange(1, 20).Draw(t, "down"), "gap_material": "air"}
		of := func(length float64, gap string) float64 {
			lp["length_to_bond_m"], lp["gap_material"] = length, gap
			doc := house()
			facttest.At(doc, "earthing")["lightning_protection"] = lp
			return derive(t, doc).System.SeparationM.Value()
		}
		l := rapid.Float64Range(0.1, 50).Draw(t, "l")
		more := l * rapid.Float64Range(1, 5).Draw(t, "more")
		if of(more, "air") < of(l, "air") || of(l, "masonry") < of(l, "air") {
			t.Errorf("s falls from %v m to %v m, or in masonry", l, more)
		}
	})
}

func tt(ohm float64) object {
	doc := house()
	facttest.At(doc, "earthing")["arrangement"] = "TT"
	facttest.At(doc, "earthing")["electrodes"] = list{object{"id": "EL1", "serves": "installation", "resistance_ohm": ohm}}
	return doc
}

func TestElectrodeReadings(t *testing.T) {
	reading := func(ohm float64, date, part string) object {
		r := object{"id": "ER" + date + part, "resistance_ohm": ohm}
		if date != "" {
			r["date"] = date
		}
		if part != "" {
			r["part"] = part
		}
		return r
	}
	for _, c := range []struct {
		name     string
		readings list
		want     float64
	}{
		{"none: as stated", list{}, 150},
		{"one", list{reading(120, "", "")}, 120},
		{"the latest", list{reading(90, "2026-05-01", "EL1"), reading(140, "2026-05-03", "EL1"), reading(100, "2026-05-02", "EL1")}, 140},
	} {
		doc := tt(150)
		doc["commissioning"] = object{"electrodes": c.readings}
		facttest.Near(t, c.name, derive(t, doc).System.ElectrodeOhm, c.want, 0)
	}
	doc := tt(150)
	doc["commissioning"] = object{"electrodes": list{reading(90, "", "EL1"), reading(140, "2026-05-03", "EL1")}}
	n := derive(t, doc).System.ElectrodeOhm
	facttest.Wants(t, "a date lacking", n, "/commissioning/electrodes/0/date")
	delete(doc, "commissioning")
	facttest.At(doc, "project")["stage"] = "as_built"
	n = derive(t, doc).System.ElectrodeOhm
	facttest.Wants(t, "built, and no readings", n, "/commissioning/electrodes")
	facttest.Near(t, "electrodes counted", derive(t, doc).System.ElectrodeCount, 1, 0)
}
