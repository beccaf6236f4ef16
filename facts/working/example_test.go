package working_test

import (
	"fmt"

	"sunclause/facts/working"
	"sunclause/schema"
)

var annexB = working.Source{Document: "IEC 60364-7-712", Edition: "2017", Clause: "Annex B", How: working.Memory}

// A room declares its formulas once, as variables of the package.
var (
	coldVoltage = working.NewFormula("U_oc,cold", "V", "N_s · U_oc · (1 + β/100 · (T_min − 25))", annexB)
	share       = working.NewFormula("p", "%", "100 · a / b", working.ByDefinition)
)

// Numbers are put in by their symbols, in any order; one that has another symbol
// says for which it stands.
func ExampleFormula() {
	series := working.Stated("N_s", "", schema.NewNumber("/strings/0/modules_in_series", 10))
	voc := working.Stated("U_oc", "V", schema.NewNumber("/datasheets/modules/m/voc_v", 49.5))
	beta := working.Stated("β", "%/K", schema.NewNumber("/datasheets/modules/m/voc_coeff_pct_per_k", -0.25))
	least := working.Stated("T_min", "°C", schema.NewNumber("/site/temp_min_c", -10))

	cold := coldVoltage.Of(series, voc, beta, least)
	fmt.Printf("%s = %s = %s = %v %s\n", cold.Symbol(), cold.Formula(), cold.Filled(), cold.Value(), cold.Unit())

	most := working.Stated("U_dc,max", "V", schema.NewNumber("/datasheets/inverters/i/dc_voltage_max_v", 600))
	used := share.Of(cold.For("a"), most.For("b")).As("u")
	fmt.Printf("%s = %s = %s = %v %s\n", used.Symbol(), used.Formula(), used.Filled(), used.Value(), used.Unit())

	open := coldVoltage.Of(series, voc, beta, working.Unknown("T_min", "°C", "/site/temp_min_c"))
	fmt.Println(open.Known(), open.Missing())
	// Output:
	// U_oc,cold = N_s · U_oc · (1 + β/100 · (T_min − 25)) = 10 · 49.5 · (1 + −0.25/100 · (−10 − 25)) = 538.3125 V
	// u = 100 · U_oc,cold / U_dc,max = 100 · 538.3125 / 600 = 89.71875 %
	// false [/site/temp_min_c]
}

// What is found in a table or by a choice is a Lookup: its text is words.
func ExampleLookup() {
	line := working.Stated("S", "mm²", schema.NewNumber("/cables/0/csa_mm2", 25))
	table := working.Lookup{Symbol: "S_p", Unit: "mm²", Text: "table “protective conductors” at S", Source: annexB}
	size := table.Of(func(x ...float64) float64 { return min(x[0], 16) }, line)
	fmt.Printf("%s = %s = %v %s\n", size.Symbol(), size.Filled(), size.Value(), size.Unit())
	// Output: S_p = table “protective conductors” at 25 = 16 mm²
}

// Yes, no and unknown meet in All, Any, Not and Count.
func ExampleAny() {
	outdoors := working.StatedFlag(schema.NewFlag("/outdoors", false))
	exposed := working.StatedFlag(schema.Flag{Value: false})
	open := working.Any(outdoors, working.UnknownFlag("/place"))
	fmt.Println(open.Known(), open.Missing())
	sure := working.Any(working.KnownFlag(true, "/sun"), exposed)
	fmt.Println(sure.Known(), sure.Value(), sure.At())
	// Output:
	// false [/place]
	// true true /sun
}
