package surge

import (
	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
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

// routeOf derives them for one inverter.
func (w *walks) routeOf(in *schema.Installation, inv schema.Inverter, spots []spot, b book.Book) Route {
	var r Route
	reach := b.Number("spd_reach_m", "d_max")
	r.dc(w, in, inv, spots, reach)
	r.ac(w, in, inv, spots)
	return r
}

// dc works out the DC side, input by input. As long as some string was not
// traced, or some device may be on any circuit, it is unknown.
func (r *Route) dc(w *walks, in *schema.Installation, inv schema.Inverter, spots []spot, reach working.Number) {
	if w.pv.Untraced != nil {
		r.DcRouteM = working.Unknown("L", "m", w.pv.Untraced...)
		r.unknownDC(w.pv.Untraced)
		return
	}
	missing := unplaced(in, spots, "pv_dc")
	var routes, bareInputs, bareEnds []working.Number
	devices := 0
	for i := range in.Datasheets.Inverters[inv.Datasheet.Value].MPPTs {
		input := circuit.Input(inv.ID.Value, i)
		fed, on := w.feeding(input), onInput(spots, input)
		devices += len(on)
		for _, s := range fed {
			routes = append(routes, w.length("L_string", w.c.From(s.ID).Runs))
			bareEnds = append(bareEnds, w.arrayEndBare(s, on, reach))
		}
		if len(fed) > 0 {
			bareInputs = append(bareInputs, w.inputBare(on, reach))
		}
	}
	r.DcRouteM = working.Greatest("L", "m", routes...)
	if routes == nil { // no strings, no route
		r.DcRouteM = working.Sum("L", "m")
	}
	if len(missing) > 0 {
		r.unknownDC(missing)
		return
	}
	r.DcSPDs = working.Counted("n_SPD", devices, inv.At())
	r.DcInputsBare = working.Sum("n_bare", "", bareInputs...)
	r.DcArrayEndsBare = working.Sum("n_ends", "", bareEnds...)
}

func (r *Route) unknownDC(missing []string) {
	r.DcSPDs = working.Unknown("n_SPD", "", missing...)
	r.DcInputsBare = working.Unknown("n_bare", "", missing...)
	r.DcArrayEndsBare = working.Unknown("n_ends", "", missing...)
}

// unplaced names what is missing to know which devices are on a circuit: the
// list of devices, a device's circuit, or the runs that lead from its terminal.
func unplaced(in *schema.Installation, spots []spot, of string) []string {
	if in.SPDs == nil {
		return []string{"/spds"}
	}
	var missing []string
	for _, s := range spots {
		if !s.circuit.Stated() {
			missing = append(missing, s.circuit.At())
		} else if s.circuit.Value == of && !s.leads() {
			missing = append(missing, "/cables")
		}
	}
	return missing
}

func onInput(spots []spot, input string) []spot {
	var on []spot
	for _, s := range spots {
		if s.circuit.Value == "pv_dc" && s.leads() && s.path.Input == input {
			on = append(on, s)
		}
	}
	return on
}

// inputBare is 0 for a tracking input that has a device within reach, else 1.
func (w *walks) inputBare(on []spot, reach working.Number) working.Number {
	distances := make([]working.Number, len(on))
	for i, s := range on {
		distances[i] = w.length("d", s.path.Runs)
	}
	if len(on) == 0 {
		return working.Counted("n_input", 1, "/spds")
	}
	f := working.Formula{Symbol: "n_input", Text: "0 where d ≤ d_max, else 1", Source: placing, Lookup: true}
	return f.Of(func(x ...float64) float64 { return zeroIf(x[0] <= x[1]) }, working.Least("d", "m", distances...), reach)
}

// arrayEndBare is 1 for a string whose route is longer than a device reaches and
// that has none nearer to it than to the inverter.
func (w *walks) arrayEndBare(s *pvstring.String, on []spot, reach working.Number) working.Number {
	path := w.c.From(s.ID).Runs
	f := working.Formula{Symbol: "n_end", Text: "0 where L ≤ d_max, else 1", Source: placing, Lookup: true}
	long := f.Of(func(x ...float64) float64 { return zeroIf(x[0] <= x[1]) }, w.length("L", path), reach)
	nearer := []working.Number{long}
	for _, at := range on {
		g := working.Formula{Symbol: "n_end", Text: "0 where d_array < d_inverter, else 1", Source: placing, Lookup: true}
		nearer = append(nearer, g.Of(func(x ...float64) float64 { return zeroIf(x[0] < x[1]) },
			w.length("d_array", between(path, at.path.Runs)), w.length("d_inverter", at.path.Runs)))
	}
	return working.Least("n_end", "", nearer...)
}

func zeroIf(holds bool) float64 {
	if holds {
		return 0
	}
	return 1
}

// ac works out the devices on the AC side, and the cable to the nearest.
func (r *Route) ac(w *walks, in *schema.Installation, inv schema.Inverter, spots []spot) {
	missing := unplaced(in, spots, "ac")
	way := w.c.ToSupply(inv.ID.Value + ".ac")
	if way.Input == "" || way.Ambiguous {
		missing = append(missing, "/cables")
	}
	if len(missing) > 0 {
		r.AcSPDs, r.AcSPDDistanceM = working.Unknown("n_SPD", "", missing...), working.Unknown("d_AC", "m", missing...)
		return
	}
	var distances []working.Number
	for _, s := range spots {
		if s.circuit.Value == "ac" && s.path.Input == way.Input {
			distances = append(distances, w.length("d", between(way.Runs, s.path.Runs)))
		}
	}
	r.AcSPDs = working.Counted("n_SPD", len(distances), inv.At())
	r.AcSPDDistanceM = working.Least("d_AC", "m", distances...)
	if distances == nil {
		r.AcSPDDistanceM = working.Unknown("d_AC", "m", "/spds")
	}
}

var placing = working.Source{Document: "EN 50539-12, now IEC 61643-32", Clause: "location of SPDs", How: working.Read}
