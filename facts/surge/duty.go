package surge

import (
	"slices"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// duty works out what the circuit at the device's terminal puts on it: the
// strings that meet there, their voltage and current, and how much cable lies
// between it and the inverter.
func (f *SPD) duty(in *schema.Installation, at connection, w *wiring) {
	f.AtOrigin = atOrigin(in, at.terminal)
	missing := w.pv.Untraced
	if missing == nil && !at.traced() {
		missing = at.path.Untraced
	}
	if f.Circuit.Value() != circuit.PV {
		missing = f.Circuit.Missing()
	}
	f.Strings = working.UnknownList(missing...)
	f.StringsMet = working.Unknown("N_p", "", missing...)
	f.VocMaxV = working.Unknown("U_oc,max", "V", missing...)
	f.IscMaxA = working.Unknown("I_sc,max", "A", missing...)
	f.UcpvOverVocStc = working.Unknown("U_cpv/U_oc", "", missing...)
	f.DistanceM = working.Unknown("d", "m", missing...)
	if f.Circuit.Value() == circuit.PV && len(missing) == 0 {
		f.load(w.loads[at.path.Input])
		f.DistanceM = w.length("d", at.path.Runs)
	}
}

func (f *SPD) load(l load) {
	f.Strings = l.strings
	f.StringsMet = working.Counted("N_p", len(l.strings.Values()), f.At)
	f.VocMaxV, f.IscMaxA = l.voltage, l.current
	f.UcpvOverVocStc = working.Ratio("U_cpv/U_oc", f.UcpvV, l.voltageSTC)
}

// atOrigin reports whether a terminal belongs to the origin of the installation:
// the supply, a meter or a main board.
func atOrigin(in *schema.Installation, terminal string) working.Flag {
	id := circuit.Part(terminal)
	if id == in.AC.Supply.ID.Value {
		return working.KnownFlag(true, in.AC.Supply.At())
	}
	for _, m := range in.AC.Meters {
		if m.ID.Value == id {
			return working.KnownFlag(true, m.At())
		}
	}
	for _, b := range in.AC.Boards {
		if b.ID.Value == id && !b.Role.Stated() {
			return working.UnknownFlag(b.Role.At())
		} else if b.ID.Value == id {
			return working.KnownFlag(b.Role.Is("main"), b.Role.At())
		}
	}
	return working.KnownFlag(false, "")
}

// parts are parts of the installation by id.
type parts struct {
	ids     map[string]bool
	missing []working.Gap // what would have to be stated to know of the others
}

// earthedParts finds the parts from which protective, bonding or earthing
// conductors, or the protective conductor of an AC cable, lead to the main
// earthing terminal.
func earthedParts(in *schema.Installation, c *circuit.Circuit) parts {
	main := in.Earthing.MainTerminal
	if !main.ID.Stated() {
		return parts{missing: []working.Gap{working.Unstated(main.ID.At())}}
	}
	found := parts{ids: map[string]bool{main.ID.Value: true}, missing: []working.Gap{working.Unstated("/cables")}}
	if main.Board.Stated() {
		found.ids[main.Board.Value] = true
	}
	joined := map[string][]string{}
	for i, r := range in.Cables {
		if s := c.Service(i).Value(); slices.Contains(circuit.ProtectiveServices, s) || s == circuit.AC && r.ProtectiveInService.Value {
			a, b := circuit.Part(r.From.Value), circuit.Part(r.To.Value)
			joined[a], joined[b] = append(joined[a], b), append(joined[b], a)
		}
	}
	queue := []string{main.ID.Value, main.Board.Value}
	for ; len(queue) > 0; queue = queue[1:] {
		for _, next := range joined[queue[0]] {
			if !found.ids[next] {
				found.ids[next] = true
				queue = append(queue, next)
			}
		}
	}
	return found
}

// have reports whether the part of a terminal is among those found. One that is
// not may still be earthed by a conductor that the document leaves out.
func (p parts) have(terminal schema.Text) working.Flag {
	if !terminal.Stated() {
		return working.UnknownFlag(terminal.At())
	}
	if p.ids[circuit.Part(terminal.Value)] {
		return working.KnownFlag(true, terminal.At())
	}
	return working.UnknownFlag(p.missing...)
}
