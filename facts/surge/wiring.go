package surge

import (
	"slices"

	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// wiring is what this room follows from terminal to terminal.
type wiring struct {
	c           *circuit.Circuit
	pv          pvstring.Facts
	runs        []cable.Run
	connections []connection
	feeding     map[string][]*pvstring.String // strings by the tracking input they feed; every input has a key
	onInput     map[string][]connection       // DC devices by the tracking input they lead to
	loads       map[string]load               // by tracking input
	behind      map[int]bool                  // runs between a DC device and its tracking input
}

// connection is where an SPD is connected: the tracking input or supply that its
// terminal leads to, and the runs on the way there.
type connection struct {
	terminal string
	circuit  working.Text
	path     circuit.Path
}

func wiringOf(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts) *wiring {
	w := &wiring{c: c, pv: pv, runs: cables.Runs, feeding: map[string][]*pvstring.String{},
		onInput: map[string][]connection{}, loads: map[string]load{}, behind: map[int]bool{}}
	for i := range pv.Mppts {
		w.feeding[pv.Mppts[i].ID] = nil
	}
	for i := range pv.Strings {
		if s := &pv.Strings[i]; s.Mppt.Known() {
			w.feeding[s.Mppt.Value()] = append(w.feeding[s.Mppt.Value()], s)
		}
	}
	for input, fed := range w.feeding {
		w.loads[input] = loadOf(fed)
	}
	for _, s := range in.SPDs {
		at := w.connectionOf(in, s)
		w.connections = append(w.connections, at)
		if at.circuit.Value() == circuit.PV && at.traced() {
			w.onInput[at.path.Input] = append(w.onInput[at.path.Input], at)
			for _, r := range at.path.Runs {
				w.behind[r] = true
			}
		}
	}
	return w
}

func (w *wiring) connectionOf(in *schema.Installation, s schema.SPD) connection {
	at := connection{terminal: s.ConnectedAt.Value, circuit: w.c.Protects(&s)}
	_, isInput := w.feeding[at.terminal]
	switch of := at.circuit.Value(); {
	case of == circuit.PV && isInput, of == circuit.AC && at.terminal == in.AC.Supply.ID.Value:
		at.path = circuit.Path{Input: at.terminal}
	case of == circuit.PV:
		at.path = w.c.From(at.terminal)
	case of == circuit.AC:
		at.path = w.c.ToSupply(at.terminal)
	}
	return at
}

// traced reports whether the terminal leads to one end on one way.
func (c connection) traced() bool { return c.path.Untraced == nil }

// length adds the lengths of runs.
func (w *wiring) length(symbol string, runs []int) working.Number {
	lengths := make([]working.Number, len(runs))
	for i, r := range runs {
		lengths[i] = w.runs[r].LengthM
	}
	return working.Sum(symbol, "m", lengths...)
}

// measure adds the lengths of runs without their working, and names what is
// missing. One not known counts as none.
func (w *wiring) measure(runs []int) (total float64, missing []working.Gap) {
	for _, r := range runs {
		if l := &w.runs[r].LengthM; l.Known() {
			total += l.Value()
		} else {
			missing = append(missing, l.Missing()...)
		}
	}
	return total, missing
}

// between lists the runs between two parts whose paths lead to the same end:
// those that only one of the paths takes.
func between(a, b []int) []int {
	for len(a) > 0 && len(b) > 0 && a[len(a)-1] == b[len(b)-1] {
		a, b = a[:len(a)-1], b[:len(b)-1]
	}
	return slices.Concat(a, b)
}

// load is what the strings of a tracking input put on a device.
type load struct {
	strings                      working.Names
	voltage, voltageSTC, current working.Number
}

func loadOf(fed []*pvstring.String) load {
	var l load
	var ids []string
	var voltages, currents, atSTC []working.Number
	for _, s := range fed {
		ids = append(ids, s.ID)
		voltages, currents, atSTC = append(voltages, s.VocMaxV), append(currents, s.IscMaxA), append(atSTC, s.VocStcV)
	}
	l.strings = working.List(ids...)
	l.voltage = working.Greatest("U_oc,max", "V", voltages...)
	l.voltageSTC = working.Greatest("U_oc", "V", atSTC...)
	l.current = working.Sum("I_sc,max", "A", currents...)
	return l
}
