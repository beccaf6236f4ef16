package schema

import "testing"

func TestNumberNamed(t *testing.T) {
	s := GridSettings{UnderVoltage1V: NewNumber("/settings/under_voltage_1_v", 184)}
	if n, ok := NumberNamed(&s, "under_voltage_1_v"); !ok || n != s.UnderVoltage1V {
		t.Errorf("a number that is stated is %v, %t", n, ok)
	}
	if n, ok := NumberNamed(&s, "droop_pct"); !ok || n.Stated() {
		t.Errorf("a number left out is %v, %t", n, ok)
	}
	for _, name := range []string{"locked", "no_such_member", "UnderVoltage1V"} {
		if _, ok := NumberNamed(&s, name); ok {
			t.Errorf("%s is a number", name)
		}
	}
}
