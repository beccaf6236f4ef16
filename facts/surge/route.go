package surge

import (
	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Route holds what surge protection asks of the sides of one inverter.
type Route struct {
	DcRouteM        working.Number `json:"dc_route_m" words:"longest route of DC cable from the connection point of a string to the inverter"`
	DcLcritM        working.Number `json:"dc_lcrit_m" words:"critical length: of a longer route, surge protection on the DC side is due"`
	DcSPDs          working.Number `json:"dc_spds" words:"surge protective devices on its DC side"`
	DcInputsBare    working.Number `json:"dc_inputs_without_spd" words:"tracking inputs in use that no DC device protects within the length of cable that one reaches"`
	DcArrayEndsBare working.Number `json:"dc_array_ends_without_spd" words:"strings whose route is longer than one device reaches and that have none nearer to the array than to the inverter"`
	AcSPDs          working.Number `json:"ac_spds" words:"surge protective devices on the AC side of the premises that it feeds"`
	AcSPDDistanceM  working.Number `json:"ac_spd_distance_m" words:"length of cable from its AC terminals to the nearest of them"`
}

// side is the DC side of an inverter as it is followed: what was counted, and
// what was missing to count all.
type side struct {
	reach                 working.Number
	devices, inputs, ends int
	longest               []int // runs of the longest route
	missing, unmeasured   []working.Gap
}

// dcSide follows the DC side of an inverter, input by input. As long as some string
// was not traced, or some device may be on any circuit, nothing is known.
func (w *wiring) dcSide(r *Route, in *schema.Installation, inv schema.Inverter, b book.Book) {
	s := side{reach: b.Number("spd_reach_m", "d_max"), missing: unplaced(in, w.connections, circuit.PV), unmeasured: w.pv.Untraced}
	s.missing = append(s.missing, w.pv.Untraced...)
	s.missing = append(s.missing, s.reach.Missing()...)
	for i := range inv.Datasheet.To().MPPTs {
		w.input(&s, circuit.Input(inv.ID.Value, i))
	}
	r.DcRouteM = w.length("L", s.longest)
	if s.unmeasured != nil {
		r.DcRouteM = working.Unknown("L", "m", s.unmeasured...)
	}
	r.DcSPDs = counted("n_SPD", s.devices, inv, unplaced(in, w.connections, circuit.PV), w.pv.Untraced)
	r.DcInputsBare = counted("n_inputs", s.inputs, inv, s.missing)
	r.DcArrayEndsBare = counted("n_ends", s.ends, inv, s.missing, s.unmeasured)
}

// counted is a count, unless something was missing to count all.
func counted(symbol string, n int, inv schema.Inverter, missing ...[]working.Gap) working.Number {
	var all []working.Gap
	for _, m := range missing {
		all = append(all, m...)
	}
	if all != nil {
		return working.Unknown(symbol, "", all...)
	}
	return working.Counted(symbol, n, inv.At())
}

// input adds what one tracking input has to the DC side.
func (w *wiring) input(s *side, input string) {
	on := w.onInput[input]
	s.devices += len(on)
	for _, str := range w.feeding[input] {
		w.route(s, w.c.From(str.ID).Runs)
	}
	if len(w.feeding[input]) == 0 {
		return
	}
	var unmeasured []working.Gap
	for _, at := range on {
		d, missing := w.measure(at.path.Runs)
		if missing == nil && d <= s.reach.Value() {
			return
		}
		unmeasured = append(unmeasured, missing...)
	}
	s.inputs++
	s.missing = append(s.missing, unmeasured...)
}

// route adds the route of one string. Of the devices along it the one that
// joins it first is nearest to the array; what it hangs on makes no difference
// to which end is nearer.
func (w *wiring) route(s *side, runs []int) {
	all, missing := w.measure(runs)
	if missing != nil {
		s.unmeasured = append(s.unmeasured, missing...)
		return
	}
	if longest, _ := w.measure(s.longest); all > longest {
		s.longest = runs
	}
	first := 0
	for first < len(runs) && !w.behind[runs[first]] {
		first++
	}
	if toArray, _ := w.measure(runs[:first]); all > s.reach.Value() && toArray >= all-toArray {
		s.ends++
	}
}

// unplaced names what is missing to know which devices are on a circuit: the
// list of devices, a device's circuit, or the runs that lead from its terminal.
func unplaced(in *schema.Installation, connections []connection, of string) []working.Gap {
	if in.SPDs == nil {
		return []working.Gap{working.Unstated("/spds")}
	}
	var missing []working.Gap
	for _, s := range connections {
		if !s.circuit.Known() {
			missing = append(missing, s.circuit.Missing()...)
		} else if s.circuit.Value() == of && !s.traced() {
			missing = append(missing, s.path.Untraced...)
		}
	}
	return missing
}

// acSide finds the devices on the AC side, and the cable to the nearest. A length
// that is not known counts as none while looking for it: then the nearest may
// turn out unknown, but is never another.
func (w *wiring) acSide(r *Route, in *schema.Installation, inv schema.Inverter) {
	way := w.c.ToSupply(inv.ID.Value + ".ac")
	missing := unplaced(in, w.connections, circuit.AC)
	missing = append(missing, way.Untraced...)
	if len(missing) > 0 {
		r.AcSPDs, r.AcSPDDistanceM = working.Unknown("n_SPD", "", missing...), working.Unknown("d_AC", "m", missing...)
		return
	}
	n, nearest, least := 0, []int(nil), 0.0
	for _, s := range w.connections {
		if s.circuit.Value() != circuit.AC || s.path.Input != way.Input {
			continue
		}
		n++
		runs := between(way.Runs, s.path.Runs)
		if d, _ := w.measure(runs); n == 1 || d < least {
			nearest, least = runs, d
		}
	}
	r.AcSPDs = working.Counted("n_SPD", n, inv.At())
	r.AcSPDDistanceM = w.length("d_AC", nearest)
	if n == 0 {
		r.AcSPDDistanceM = working.Unknown("d_AC", "m", "/spds")
	}
}
