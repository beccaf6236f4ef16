package accircuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// WayDevice holds the device of a way, and the residual current devices that the way is
// behind.
type WayDevice struct {
	DeviceA          working.Number `json:"device_a" words:"rated current of its device"`
	DevicePoles      working.Number `json:"device_poles" words:"poles of its device"`
	LockableStated   working.Flag   `json:"lockable_stated" words:"whether its device is said to be lockable open"`
	DeviceLockable   working.Flag   `json:"device_lockable" words:"whether the sheet of its device says that it can be locked open"`
	NeutralStated    working.Text   `json:"neutral_stated" words:"whether the sheet of its device says that it opens the neutral"`
	NeutralByPoles   working.Text   `json:"neutral_by_poles" words:"the same by its poles: one without an overcurrent release is that of the neutral; the word of the sheet where the poles decide nothing"`
	AdditionalStated working.Flag   `json:"additional_protection_stated" words:"whether its circuit is said to need additional protection"`
	WayRCDFitted     working.Flag   `json:"rcd_fitted" words:"whether a residual current device protects it: its own, one that it names or one before its board"`
	WayRCDType       working.Text   `json:"rcd_type" words:"type of that device"`
	WayResidualMa    working.Number `json:"residual_current_ma" words:"rated residual operating current of that device"`
	WayRCDDelayed    working.Flag   `json:"rcd_delayed" words:"whether that device is selective or delayed"`
}

func (m *mains) wayDevice(o outlet, entry *schema.ACCircuit) WayDevice {
	d := o.way.Device.To()
	poles := working.Stated("n_poles", "", d.Poles)
	f := WayDevice{
		DeviceA:          working.Stated("I_n", "A", d.RatedA),
		DevicePoles:      poles,
		LockableStated:   working.KnownFlag(o.way.LockableOff.Yes(), o.way.LockableOff.At()),
		DeviceLockable:   working.StatedFlag(d.LockableOff),
		NeutralStated:    word(working.StatedFlag(d.OpensNeutral)),
		AdditionalStated: working.KnownFlag(entry.AdditionalProtectionNeeded.Yes(), entry.AdditionalProtectionNeeded.At()),
	}
	f.NeutralByPoles = neutralByPoles(d, f.NeutralStated)
	l := link{way: o.way, device: d, before: m.circuit.Before(o.board.ID.Value + "." + o.way.ID.Value)}
	r := l.residualDevices()
	f.WayRCDFitted, f.WayRCDType, f.WayResidualMa, f.WayRCDDelayed = r.RCDFitted, r.RCDType, r.ResidualMa, r.RCDDelayed
	return f
}

// neutralByPoles reports whether a device opens the neutral by its poles: one more than
// have an overcurrent release is that of the neutral, and where there is a single one
// it is that of the line.
func neutralByPoles(d *schema.ProtectiveDevice, stated working.Text) working.Text {
	poles, protected := d.Poles, d.ProtectedPoles
	switch {
	case !poles.Stated():
		return stated
	case poles.Value == 1:
		return working.KnownText("no", poles.At())
	case !protected.Stated():
		return working.UnknownText(protected.At())
	case protected.Value > 0 && protected.Value < poles.Value:
		return working.KnownText("yes", protected.At())
	}
	return stated
}
