package sheets

import (
	"fmt"

	"sunclause/engine/judge"
	"sunclause/facts/commissioning"
	"sunclause/facts/working"
	"sunclause/schema"
)

// testSheet has a row of blanks for each string, with what the insulation test
// needs.
func testSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "tests", Title: "Tests of the strings", Columns: []string{
		"string", "polarity", "open-circuit voltage read", "short-circuit current read", "irradiance", "cell temperature", "time",
		"insulation test voltage", "least resistance", "+ to earth", "− to earth", "tester"},
		Notes: []string{"Polarity before anything is closed. What to expect is on the sheet of expected readings; an irradiance below 400 W/m² says little.",
			"Disconnect the inverter and surge protective devices before the insulation test, and write down that they are back."}}
	for i := range r.Facts.Strings {
		f := &r.Facts.Strings[i]
		voltage, least := commissioning.InsulationRequired(f.VocStcV, r.RuleSet.Book)
		s.Rows = append(s.Rows, []string{f.ID, Blank, Blank, Blank, Blank, Blank, Blank, number(voltage), number(least), Blank, Blank, Blank})
	}
	return s
}

// Conditions for which readings are worked out, in W/m² and °C.
var (
	irradiances  = []float64{400, 600, 800, 1000}
	temperatures = []float64{10, 25, 40, 55}
)

// expectedSheet says what each string should read.
func expectedSheet(r *judge.Result) Sheet {
	s := Sheet{Name: "expected-readings", Title: "Expected readings of the strings", Columns: []string{"string", "cell temperature"},
		Notes: []string{"Find the row nearest to the cell temperature and the column nearest to the irradiance. Cells are warmer than the back of the module, and much warmer than the air."}}
	for _, g := range irradiances {
		s.Columns = append(s.Columns, fmt.Sprintf("voltage at %.0f W/m²", g), fmt.Sprintf("current at %.0f W/m²", g))
	}
	in := &r.Document.Installation
	for i := range r.Facts.Strings {
		f := &r.Facts.Strings[i]
		module := in.Strings[i].Module.To()
		for _, t := range temperatures {
			row := []string{f.ID, fmt.Sprintf("%.0f °C", t)}
			for _, g := range irradiances {
				at, sun := condition("T", "°C", t), condition("G", "W/m²", g)
				row = append(row, number(commissioning.ExpectedVoltage(&f.String, at, sun, r.RuleSet.Book)), number(commissioning.ExpectedCurrent(module, at, sun)))
			}
			s.Rows = append(s.Rows, row)
		}
	}
	return s
}

// condition is a round figure for which readings are worked out.
func condition(symbol, unit string, v float64) working.Number {
	return working.Stated(symbol, unit, schema.NewNumber("", v))
}
