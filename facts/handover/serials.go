package handover

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// serials holds the serial numbers recorded on site against the document.
func (p *Papers) serials(in *schema.Installation) {
	list, at := in.Handover.AsBuilt.Serials, in.Handover.AsBuilt.Member("serials")
	p.Unwritten = unwritten(in.Handover)
	if list == nil {
		for _, n := range []*working.Number{&p.SerialsUnlike, &p.SerialsTwice, &p.ModuleSerials} {
			*n = working.Unknown("n", "", at)
		}
		return
	}
	recorded, parts := map[string]string{}, map[string]int{}
	for _, s := range list {
		recorded[s.Part.Value] = s.Serial.Value
		parts[s.Serial.Value]++
	}
	twice := 0
	for _, n := range parts {
		if n > 1 {
			twice++
		}
	}
	p.SerialsTwice = working.Counted("n", twice, at)
	p.SerialsUnlike = unlike(in, recorded, at)
	p.ModuleSerials = modulesRecorded(in, recorded, at)
}

// unlike counts the inverters and batteries whose serial number was recorded as
// another than the document has, or not at all.
func unlike(in *schema.Installation, recorded map[string]string, at string) working.Number {
	if in.Inverters == nil {
		return working.Unknown("n", "", "/inverters")
	}
	if in.Storage.Batteries == nil {
		return working.Unknown("n", "", in.Storage.Member("batteries"))
	}
	n := 0
	check := func(id, serial schema.Text) (stated bool) {
		if recorded[id.Value] != serial.Value {
			n++
		}
		return serial.Stated()
	}
	for _, inv := range in.Inverters {
		if !check(inv.ID, inv.Serial) {
			return working.Unknown("n", "", inv.Serial.At())
		}
	}
	for _, b := range in.Storage.Batteries {
		if !check(b.ID, b.Serial) {
			return working.Unknown("n", "", b.Serial.At())
		}
	}
	return working.Counted("n", n, at)
}

func modulesRecorded(in *schema.Installation, recorded map[string]string, at string) working.Number {
	if in.Roof.Planes == nil {
		return working.Unknown("n", "", in.Roof.Member("planes"))
	}
	n := 0
	for _, plane := range in.Roof.Planes {
		if plane.Modules == nil {
			return working.Unknown("n", "", plane.Member("modules"))
		}
		for _, m := range plane.Modules {
			if _, ok := recorded[m.ID.Value]; ok {
				n++
			}
		}
	}
	return working.Counted("n", n, at)
}

// unwritten counts the decisions of the customer that are not in writing.
func unwritten(h schema.Handover) working.Number {
	if h.Decisions == nil {
		return working.Unknown("n", "", h.Member("decisions"))
	}
	n := 0
	for _, d := range h.Decisions {
		if !d.InWriting.Stated() {
			return working.Unknown("n", "", d.InWriting.At())
		}
		if !d.InWriting.Value {
			n++
		}
	}
	return working.Counted("n", n, h.Member("decisions"))
}
