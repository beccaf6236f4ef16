package handover

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// serials holds the serial numbers recorded on site against the document.
func (p *Papers) serials(in *schema.Installation) {
	list, at := in.Handover.AsBuilt.Serials, in.Handover.AsBuilt.Member("serials")
	p.Unwritten = decisions(in.Handover, func(d *schema.CustomerDecision) schema.Flag { return d.InWriting })
	p.Unexplained = decisions(in.Handover, func(d *schema.CustomerDecision) schema.Flag { return d.RiskExplained })
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
	var differ []working.Flag
	compare := func(id, serial schema.Text) {
		same := working.StatedText(serial).OneOf(recorded[id.Value])
		differ = append(differ, working.Not(same))
	}
	for _, inv := range in.Inverters {
		compare(inv.ID, inv.Serial)
	}
	for _, b := range in.Storage.Batteries {
		compare(b.ID, b.Serial)
	}
	return working.Count("n", at, differ...)
}

func modulesRecorded(in *schema.Installation, recorded map[string]string, at string) working.Number {
	if in.Roof.Planes == nil {
		return working.Unknown("n", "", in.Roof.Member("planes"))
	}
	n := 0
	var missing []working.Gap
	for _, plane := range in.Roof.Planes {
		if plane.Modules == nil {
			missing = append(missing, working.Unstated(plane.Member("modules")))
		}
		for _, m := range plane.Modules {
			if _, ok := recorded[m.ID.Value]; ok {
				n++
			}
		}
	}
	if missing != nil {
		return working.Unknown("n", "", missing...)
	}
	return working.Counted("n", n, at)
}

// decisions counts the decisions of the customer of which something is not so.
func decisions(h schema.Handover, is func(*schema.CustomerDecision) schema.Flag) working.Number {
	at := h.Member("decisions")
	if h.Decisions == nil {
		return working.Unknown("n", "", at)
	}
	not := make([]working.Flag, len(h.Decisions))
	for i := range h.Decisions {
		not[i] = working.Not(working.StatedFlag(is(&h.Decisions[i])))
	}
	return working.Count("n", at, not...)
}
