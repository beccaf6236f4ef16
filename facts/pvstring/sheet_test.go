package pvstring_test

import (
	"testing"

	"sunclause/facts/facttest"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
)

// byDefinition is the source of what is worked out by hand from the sheet below.
const byDefinition = "worked out by hand from the values of the sheet"

// printed is an invented sheet of 108 half cells with all that its relations need.
func printed() object {
	return with(m1(), object{
		"pmax_w": 440, "voc_v": 38.8, "isc_a": 14.2, "vmp_v": 32.6, "imp_a": 13.5, "isc_coeff_pct_per_k": 0.045, "cells": 108,
		"length_mm": 1730, "width_mm": 1140, "mass_kg": 21, "bifaciality_fraction": 0, "design_load_push_pa": 3600,
		"clamp_zones": list{object{"side": "long", "from_mm": 300, "to_mm": 450}},
	})
}

func sheet(t *testing.T, module object) pvstring.Sheet {
	t.Helper()
	return derive(t, plant(module, 10, 1), rules("coefficient")).Sheets[0]
}

func TestSheet(t *testing.T) {
	for _, c := range []struct {
		name   string
		module object
		fact   func(pvstring.Sheet) working.Number
		want   float64
	}{
		{"voltages", printed(), func(s pvstring.Sheet) working.Number { return s.VmpOverVoc }, 0.84021},
		{"currents", printed(), func(s pvstring.Sheet) working.Number { return s.ImpOverIsc }, 0.95070},
		{"fill factor", printed(), func(s pvstring.Sheet) working.Number { return s.FillFactor }, 0.79879},
		{"power over its product", printed(), func(s pvstring.Sheet) working.Number { return s.PowerDeviationPct }, 0.02272},
		{"power under its product", with(printed(), object{"pmax_w": 396}), func(s pvstring.Sheet) working.Number { return s.PowerDeviationPct }, 10.0204},
		{"coefficient of the current in %/K", printed(), func(s pvstring.Sheet) working.Number { return s.IscCoeffPctPerK }, 0.045},
		{"coefficients", printed(), func(s pvstring.Sheet) working.Number { return s.PmaxOverVocCoeff }, 1.16},
		{"half cells", printed(), func(s pvstring.Sheet) working.Number { return s.CellVoltageV }, 0.71852},
		{"whole cells", with(printed(), object{"cells": 54}), func(s pvstring.Sheet) working.Number { return s.CellVoltageV }, 0.71852},
		{"third cells", with(printed(), object{"cells": 162}), func(s pvstring.Sheet) working.Number { return s.CellVoltageV }, 0.71852},
		{"power of the area", printed(), func(s pvstring.Sheet) working.Number { return s.PowerWPerM2 }, 223.101},
		{"mass of the area", printed(), func(s pvstring.Sheet) working.Number { return s.MassKgPerM2 }, 10.648},
		{"fuse", printed(), func(s pvstring.Sheet) working.Number { return s.OcprOverIsc }, 1.76056},
		{"sides", printed(), func(s pvstring.Sheet) working.Number { return s.LengthOverWidth }, 1.51754},
		{"coefficient of the voltage in V/K", r01050, func(s pvstring.Sheet) working.Number { return s.VocCoeffPctPerK }, -0.3583},
	} {
		t.Run(c.name, func(t *testing.T) {
			facttest.Near(t, byDefinition, c.fact(sheet(t, c.module)), c.want, 2e-5*max(1, c.want))
		})
	}
	s := sheet(t, with(m1(), object{"isc_coeff_a_per_k": 0.00695}))
	facttest.Near(t, "coefficient of the current in A/K", s.IscCoeffPctPerK, 0.05, 1e-9)
	facttest.Wants(t, "mass of the area", s.MassKgPerM2, "/datasheets/modules/M/length_mm", "/datasheets/modules/M/mass_kg", "/datasheets/modules/M/width_mm")
	facttest.Wants(t, "clamp zones", s.ClampZonesOnSide, "/datasheets/modules/M/clamp_zones")
}

func TestClampZonesOfASheet(t *testing.T) {
	for _, c := range []struct {
		zone            object
		ordered, onSide bool
	}{
		{object{"side": "long", "from_mm": 300, "to_mm": 865}, true, true},
		{object{"side": "long", "from_mm": 300, "to_mm": 866}, true, false},
		{object{"side": "short", "from_mm": 100, "to_mm": 570}, true, true},
		{object{"side": "short", "from_mm": 100, "to_mm": 571}, true, false},
		{object{"side": "long", "from_mm": 450, "to_mm": 450}, false, true},
		{object{"side": "long", "from_mm": 450, "to_mm": 300}, false, true},
	} {
		s := sheet(t, with(printed(), object{"clamp_zones": list{c.zone}}))
		facttest.Is(t, "ordered", s.ClampZonesOrdered, c.ordered)
		facttest.Is(t, "on the side", s.ClampZonesOnSide, c.onSide)
	}
}

// A module whose sheet says one thing of its rear side by a word and another by a
// number is designed for neither.
func TestBifacialByWordAndByNumber(t *testing.T) {
	for _, c := range []struct {
		name    string
		module  object
		want    float64 // design current in A; 0 where there is none
		missing string
	}{
		{"not, and no response", with(m1(), object{"bifaciality_fraction": 0}), 17.375, ""},
		{"not, and a response", with(m1(), object{"bifaciality_fraction": 0.7}), 0, "/datasheets/modules/M/bifacial"},
		{"bifacial, and no response", with(m1(), object{"bifacial": true, "bifaciality_fraction": 0}), 0, "/datasheets/modules/M/bifacial"},
		{"bifacial, and a response", with(m1(), object{"bifacial": true, "bifaciality_fraction": 0.8}), 1.25 * 13.9 * 1.108, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			n := derive(t, plant(c.module, 10, 1), rules("coefficient")).Strings[0].IscMaxA
			if c.missing == "" {
				facttest.Near(t, iec712B, n, c.want, 1e-9)
				return
			}
			if g := n.Missing(); len(g) != 1 || g[0].At != c.missing || g[0].Why != working.Disagrees || g[0].With != "/datasheets/modules/M/bifaciality_fraction" {
				t.Errorf("missing is %v", g)
			}
		})
	}
}
