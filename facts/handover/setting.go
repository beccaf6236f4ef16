package handover

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Interface holds what one inverter is set to, beside the settings that the
// table of the rule set names.
type Interface struct {
	TypeTestStandard working.Text   `json:"type_test_standard" words:"standard to which it is type tested for connection, without its edition"`
	TypeTestOnFile   working.Flag   `json:"type_test_referenced" words:"whether the type test's reference in the register is recorded"`
	VectorShift      working.Flag   `json:"vector_shift_used" words:"whether vector shift trips it"`
	ReconnectionSet  working.Number `json:"reconnection_set_s" words:"time in range that it is set to wait before it reconnects"`
	Locked           working.Flag   `json:"grid_settings_locked" words:"whether only skilled people can change its settings"`
	ReductionFromHz  working.Number `json:"power_reduction_from_hz" words:"frequency above which it is set to reduce power"`
	DroopPct         working.Number `json:"droop_pct" words:"droop of that reduction"`
	DCInjectionPct   working.Number `json:"dc_injection_max_pct" words:"greatest DC injection, in share of rated current"`
}

// Setting holds one setting of the protection of one interface, and what the
// table of the rule set allows.
type Setting struct {
	working.Subject

	Setting working.Text   `json:"setting" words:"which setting, by its name in the document"`
	Value   working.Number `json:"value" words:"value it is set to"`
	Set     working.Number `json:"value_set" words:"value that the table of the rule set asks"`
	Least   working.Number `json:"value_min" words:"that less the tolerance"`
	Most    working.Number `json:"value_max" words:"that with the tolerance"`
}

// interfaces derives the facts of the interface of every inverter.
func interfaces(in *schema.Installation) []Interface {
	all := make([]Interface, len(in.Inverters))
	for i, inv := range in.Inverters {
		s, sheet := inv.Settings, inv.Datasheet.To()
		all[i] = Interface{
			TypeTestStandard: firstWord(sheet.GridTypeTest),
			TypeTestOnFile:   working.IsStated(sheet.GridTypeTestReference),
			VectorShift:      working.StatedFlag(s.VectorShiftUsed),
			ReconnectionSet:  working.Stated("t_set", "s", s.ReconnectionS),
			Locked:           working.StatedFlag(s.Locked),
			ReductionFromHz:  working.Stated("f", "Hz", s.PowerReductionFromHz),
			DroopPct:         working.Stated("droop", "%", s.DroopPct),
			DCInjectionPct:   working.Stated("I_dc", "%", s.DCInjectionMaxPct),
		}
	}
	return all
}

// settings derives every setting that the table names, of every inverter and of
// the protection outside them where there is one.
func settings(in *schema.Installation, b book.Book) []Setting {
	if in.Inverters == nil {
		return nil
	}
	all := []Setting{}
	for _, inv := range in.Inverters {
		all = append(all, settingsOf(inv.ID.Value, inv.ID.Value, &inv.Settings, inv.At(), b)...)
	}
	if p := in.AC.InterfaceProtection; p.Fitted.Yes() {
		all = append(all, settingsOf("ac.interface_protection", "the interface protection", &p.Settings, p.At(), b)...)
	}
	return all
}

// settingsOf derives the settings of one protection. Its id has a point in it where it is
// no part, since an inverter may bear any name without one.
func settingsOf(id, part string, s *schema.GridSettings, at string, b book.Book) []Setting {
	t := b.Tables["grid_settings"]
	if t == nil {
		return nil
	}
	if s.Stated() {
		at = s.At()
	}
	var all []Setting
	for _, row := range t.Rows {
		name, _ := row["setting"].(string)
		value, ok := schema.NumberNamed(s, name)
		if !ok {
			continue
		}
		f := Setting{
			Subject: working.Subject{ID: id + "." + name, At: at, Name: "setting " + name + " of " + part},
			Setting: working.KnownText(name, at),
			Value:   working.Stated("x", schema.UnitOf(name), value),
		}
		f.allowed(b)
		all = append(all, f)
	}
	return all
}

// allowed looks up what the table requires of the setting, and how far it may be off.
func (f *Setting) allowed(b book.Book) {
	cell := func(column, symbol string) working.Number {
		return b.Keyed("grid_settings", "setting", f.Setting, column, symbol)
	}
	unit := f.Value.Unit()
	f.Set = cell("set", "x_set")
	f.Least = working.Difference("x_min", unit, f.Set, cell("below", "δ_below"))
	f.Most = working.Sum("x_max", unit, f.Set, cell("above", "δ_above"))
}
