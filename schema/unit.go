package schema

import "strings"

// endings are the endings of names that say the unit of a number. All names keep to
// them: members of the document, facts, parameters and columns of tables.
var endings = map[string]string{
	"v": "V", "kv": "kV", "a": "A", "ka": "kA", "ma": "mA", "w": "W", "kw": "kW", "va": "VA", "kva": "kVA",
	"wh": "Wh", "kwh": "kWh", "hz": "Hz", "s": "s", "ms": "ms", "h": "h", "days": "d", "yr": "a", "c": "°C", "k": "K",
	"m": "m", "mm": "mm", "mm2": "mm²", "m2": "m²", "km": "km", "um": "µm", "deg": "°", "pct": "%",
	"ohm": "Ω", "kohm": "kΩ", "megohm": "MΩ", "n": "N", "kn": "kN", "kn_m": "kN·m", "n_m": "N·m", "pa": "Pa", "kg": "kg",
	"a2s": "A²s", "v_per_k": "V/K", "a_per_k": "A/K", "pct_per_k": "%/K", "per_k": "1/K",
	"m_per_s": "m/s", "w_per_m2": "W/m²", "kn_per_m": "kN/m", "kn_per_m2": "kN/m²", "n_per_m": "N/m", "n_per_mm2": "N/mm²",
	"kg_per_m": "kg/m", "kg_per_m2": "kg/m²", "kg_per_m3": "kg/m³", "per_m": "1/m", "ohm_per_km": "Ω/km",
	"mv_per_a_m": "mV/(A·m)", "k_m_per_w": "K·m/W", "kwh_per_kw": "kWh/kW", "per_yr": "1/a", "per_km2_yr": "1/(km²·a)",
	"hz_per_s": "Hz/s", "pct_per_min": "%/min", "mm_per_kn": "mm/kN", "um_per_m_per_k": "µm/(m·K)",
}

// UnitOf is the unit that the ending of a name says, the longest ending that is
// known; "" where it says none, as those of counts, factors and words.
func UnitOf(name string) string {
	for rest := name; ; {
		_, after, more := strings.Cut(rest, "_")
		if unit, ok := endings[rest]; ok {
			return unit
		}
		if !more {
			return ""
		}
		rest = after
	}
}
