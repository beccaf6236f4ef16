package facts_test

import (
	"fmt"
	"log"
	"os"

	"sunclause/facts"
	"sunclause/schema"
)

// The cold voltage of a string, with how it came about.
func Example() {
	text, err := os.ReadFile("testdata/one-string.installation.json")
	if err != nil {
		log.Fatal(err)
	}
	doc, err := schema.Decode("one-string.installation.json", text)
	if err != nil {
		log.Fatal(err)
	}
	f := facts.Derive(&doc.Installation, rules("coefficient"))
	cold := f.Strings[0].VocMaxV
	fmt.Printf("%s = %s\n", cold.Symbol(), cold.Formula())
	fmt.Printf("%s = %s = %v %s\n", cold.Symbol(), cold.Filled(), cold.Value(), cold.Unit())
	for _, in := range cold.Inputs() {
		fmt.Printf("  %s = %v, %s on line %d\n", in.Symbol(), in.Value(), in.At(), doc.Position(in.At()).Line)
	}
	// Output:
	// U_oc,cold = N_s · U_oc · (1 + β/100 · (T_min − 25))
	// U_oc,cold = 10 · 49.5 · (1 + −0.25/100 · (−10 − 25)) = 538.3125 V
	//   N_s = 10, /strings/0/modules_in_series on line 15
	//   U_oc = 49.5, /datasheets/modules/mod540/voc_v on line 6
	//   β = -0.25, /datasheets/modules/mod540/voc_coeff_pct_per_k on line 6
	//   T_min = -10, /site/temp_min_c on line 3
}
