package pvstring

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	reverseTest = working.NewFormula("I_rev,test", "A", "k_test · I_OCPR", working.Source{Document: "IEC 61730-2", Clause: "reverse current overload test", How: working.Read})
	inAmps      = working.NewFormula("I_cn", "A", "1000 · I_cn", working.ByDefinition) // the sheet prints kA
)

// overcurrent takes what is fitted in the string against reverse current, and
// its rating.
func (f *String) overcurrent(s *schema.String, b book.Book) {
	o := s.Overcurrent
	f.FuseFitted = working.StatedFlag(o.Fitted)
	f.FusePoles = working.StatedText(o.Poles)
	f.FuseWithoutTool = working.StatedFlag(o.AccessibleWithoutTool)
	f.FuseAmbientC = working.Stated("T_amb", "°C", o.AmbientMaxC)
	f.ReverseWithstand = reverseTest.Of(b.Number("ocpr_test_factor", "k_test"), f.OcprMaxA)
	d := o.Device.To()
	f.FuseRatedA = working.Stated("I_n", "A", d.RatedA)
	f.FuseRatedV = working.Stated("U_n", "V", d.VoltageDCV)
	f.FuseKind = working.StatedText(d.Kind)
	f.FuseCharacteristic = working.StatedText(d.Characteristic)
	f.FuseStandard = working.StatedText(d.Standard)
	f.FusePolarity = working.StatedFlag(d.PolaritySensitive)
	f.FuseBreakingA = inAmps.Of(working.Stated("I_cn", "kA", d.BreakingCapacityDCKa))
}
