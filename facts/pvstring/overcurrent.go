package pvstring

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// overcurrent takes what is fitted in the string against reverse current, and
// how its rating stands to the string's own current.
func (f *String) overcurrent(in *schema.Installation, s *schema.String, b book.Book) {
	o := s.Overcurrent
	f.FuseFitted = working.StatedFlag(o.Fitted)
	f.FusePoles = working.StatedText(o.Poles)
	f.FuseWithoutTool = working.StatedFlag(o.AccessibleWithoutTool)
	f.FuseAmbientC = working.Stated("T_amb", "°C", o.AmbientMaxC)
	f.ReverseWithstand = times("I_rev,test", "A", b.Number("ocpr_test_factor", "k_test"), f.OcprMaxA,
		working.Source{Document: "IEC 61730-2", Clause: "reverse current overload test", How: working.Read})
	if !o.Device.Stated() {
		f.noDevice(o.Device.At())
		return
	}
	d := in.Datasheets.ProtectiveDevices[o.Device.Value]
	f.FuseRatedA = working.Stated("I_n", "A", d.RatedA)
	f.FuseRatedV = working.Stated("U_n", "V", d.VoltageDCV)
	f.FuseKind = working.StatedText(d.Kind)
	f.FuseCharacteristic = working.StatedText(d.Characteristic)
	f.FuseStandard = working.StatedText(d.Standard)
	f.FusePolarity = working.StatedFlag(d.PolaritySensitive)
	f.FuseBreakingA = kiloAmps(working.Stated("I_cn", "kA", d.BreakingCapacityDCKa))
	f.FuseOverIsc = ratio("I_n/I_sc", f.FuseRatedA, f.IscStcA)
	f.FuseOverIscMax = ratio("I_n/I_sc,max", f.FuseRatedA, f.IscMaxA)
}

// noDevice leaves the device's facts unknown: for want of the reference.
func (f *String) noDevice(missing string) {
	f.FuseKind, f.FuseCharacteristic, f.FuseStandard = working.UnknownText(missing), working.UnknownText(missing), working.UnknownText(missing)
	f.FusePolarity = working.UnknownFlag(missing)
	for _, n := range []*working.Number{&f.FuseRatedA, &f.FuseRatedV, &f.FuseOverIsc, &f.FuseOverIscMax, &f.FuseBreakingA} {
		*n = working.Unknown("", "", missing)
	}
}

func kiloAmps(ka working.Number) working.Number {
	f := working.Formula{Symbol: "I_cn", Unit: "A", Text: "1000 · " + ka.Symbol(), Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return 1000 * x[0] }, ka)
}

func ratio(symbol string, a, b working.Number) working.Number {
	f := working.Formula{Symbol: symbol, Text: a.Symbol() + " / " + b.Symbol(), Source: working.ByDefinition}
	return f.Of(func(x ...float64) float64 { return x[0] / x[1] }, a, b)
}

// sameConnector compares the types of the two halves of a connection.
func sameConnector(module, mate schema.Text) working.Flag {
	switch {
	case !module.Stated():
		return working.UnknownFlag(module.At())
	case !mate.Stated():
		return working.UnknownFlag(mate.At())
	}
	return working.Is(module.Value == mate.Value, mate.At())
}
