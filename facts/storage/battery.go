package storage

import (
	"regexp"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Battery holds the facts of one battery.
type Battery struct {
	working.Subject
	Surroundings
	Backup

	SecondLife     working.Flag   `json:"second_life" words:"whether its cells served before elsewhere"`
	Chemistry      working.Text   `json:"chemistry" words:"chemistry"`
	Standards      working.Names  `json:"standards" words:"numbers of the product standards printed on it, as 62619"`
	Shrouded       working.Flag   `json:"terminals_shrouded" words:"whether live parts cannot be touched in use and in upkeep"`
	Coupling       working.Text   `json:"coupling" words:"side on which its maker connects it: dc or ac"`
	EnergyKwh      working.Number `json:"energy_kwh" words:"rated energy of all its units"`
	VoltageMaxV    working.Number `json:"voltage_max_v" words:"highest voltage at its terminals"`
	CurrentMaxA    working.Number `json:"current_max_a" words:"greater of its maximum charging and discharging currents"`
	DischargeMaxA  working.Number `json:"discharge_max_a" words:"maximum discharging current"`
	ShortCircuitKa working.Number `json:"short_circuit_ka" words:"prospective short-circuit current at its terminals"`
	Wiring
	Isolation
	Protection
}

// batteryOf takes what the battery and its datasheet state.
func batteryOf(s *schema.Battery, sheet *schema.BatteryDatasheet) Battery {
	return Battery{
		Subject:      working.Subject{ID: s.ID.Value, At: s.At(), Name: "battery " + s.ID.Value},
		Surroundings: surroundingsOf(s, sheet),
		SecondLife:   working.StatedFlag(s.SecondLife),
		Chemistry:    working.StatedText(sheet.Chemistry),
		Standards:    standards(sheet.Standard),
		Shrouded:     working.StatedFlag(s.TerminalsShrouded),
		Coupling:     working.StatedText(sheet.Coupling),
	}
}

var standardNumber = regexp.MustCompile(`\b[0-9]{4,5}(-[0-9]+)*\b`)

// standards finds the numbers of the standards in what is printed; a year after
// a colon is none.
func standards(printed schema.Text) working.Names {
	if !printed.Stated() {
		return working.UnknownList(printed.At())
	}
	withoutYears := regexp.MustCompile(`:[0-9]{4}`).ReplaceAllString(printed.Value, "")
	return working.List(standardNumber.FindAllString(withoutYears, -1)...)
}

// rate works out energy, voltage and currents of all units: in series their
// voltages add up, in parallel their currents.
func (f *Battery) rate(s *schema.Battery, sheet *schema.BatteryDatasheet) {
	n := working.Stated("n", "", s.Units)
	inSeries, inParallel := joined(s, n, "series", "n_s"), joined(s, n, "parallel", "n_p")
	all := func(symbol, unit string, n, each working.Number) working.Number {
		return working.Product(symbol, unit, working.ByDefinition, n, each)
	}
	f.EnergyKwh = all("E", "kWh", n, working.Stated("E_unit", "kWh", sheet.EnergyKwh))
	f.VoltageMaxV = all("U_max", "V", inSeries, working.Stated("U_unit", "V", sheet.VoltageMaxV))
	f.DischargeMaxA = all("I_dis", "A", inParallel, working.Stated("I_unit", "A", sheet.DischargeCurrentMaxA))
	f.CurrentMaxA = working.Greatest("I_max", "A", f.DischargeMaxA, all("I_ch", "A", inParallel, working.Stated("I_unit", "A", sheet.ChargeCurrentMaxA)))
	f.ShortCircuitKa = all("I_k", "kA", inParallel, working.Stated("I_k,unit", "kA", sheet.ShortCircuitKa))
}

// joined is the number of units joined in one way; 1 when they are joined in
// the other. One unit need not say.
func joined(s *schema.Battery, n working.Number, way, symbol string) working.Number {
	switch {
	case !n.Known() || n.Value() == 1 || s.UnitsJoined.Is(way):
		return n.As(symbol)
	case !s.UnitsJoined.Stated():
		return working.Unknown(symbol, "", s.UnitsJoined.At())
	}
	return working.Counted(symbol, 1, s.UnitsJoined.At())
}
