package schema_test

import (
	"errors"
	"fmt"

	"sunclause/schema"
)

// A document that is in order: what is stated and what is not are told apart.
func ExampleDecode() {
	doc, err := schema.Decode("cottage.json", []byte(`{
  "project": { "reference": "EX-1", "stage": "design", "country": "GB" },
  "site": { "temp_min_c": -8 }
}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	site := doc.Installation.Site
	fmt.Println(site.TempMinC.Value, "°C on line", doc.Position(site.TempMinC.At()).Line)
	fmt.Println(schema.Spoken(site.TempMaxC.At()), "stated:", site.TempMaxC.Stated())
	// Output:
	// -8 °C on line 3
	// site.temp_max_c stated: false
}

// A document that is refused: everything that is wrong with it, in its order.
func ExampleDecode_refused() {
	_, err := schema.Decode("cottage.json", []byte(`{
  "project": { "reference": "EX-1", "stage": "desing", "country": "GB" },
  "strings": [
    { "id": "S1", "module": "mod440", "modules_in_series": -3 }
  ],
  "site": { "temp_min": -8 }
}`))
	var problems schema.Problems
	if errors.As(err, &problems) {
		for _, p := range problems {
			fmt.Println(p)
		}
	}
	// Output:
	// cottage.json:2:46: project.stage (how far the job has come): found "desing", allowed one of design, as_built; did you mean "design"?
	// cottage.json:4:60: strings[0].modules_in_series (modules in series): found -3, allowed 1 or more
	// cottage.json:6:13: site has no member "temp_min"; did you mean "temp_min_c" (lowest expected ambient temperature)?
}
