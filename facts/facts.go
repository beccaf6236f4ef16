// Package facts derives everything that rules judge from an installation and
// the figures of a rule set. Each trade subject has a room of its own below
// this package; here they are put in reading order.
//
// Facts are raw quantities, never verdicts: the same array is right in one
// country and wrong in another.
package facts

import (
	"sunclause/facts/accircuit"
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/commissioning"
	"sunclause/facts/earthing"
	"sunclause/facts/handover"
	"sunclause/facts/implied"
	"sunclause/facts/isolator"
	"sunclause/facts/label"
	"sunclause/facts/pvstring"
	"sunclause/facts/relation"
	"sunclause/facts/roof"
	"sunclause/facts/storage"
	"sunclause/facts/surge"
	"sunclause/schema"
)

// rooms are what each room derives.
type rooms struct {
	pv     pvstring.Facts
	cables cable.Facts
	surges surge.Facts
	earth  earthing.Facts
	labels label.Facts
	ac     accircuit.Facts
	store  storage.Facts
	top    roof.Facts
	tests  commissioning.Facts
	papers handover.Facts
}

// Derive derives all facts, room by room, and puts together what the rooms know
// of one part.
func Derive(in *schema.Installation, b book.Book) *Facts {
	c := circuit.Of(in)
	var r rooms
	r.pv = pvstring.Derive(in, c, b)
	r.cables = cable.Derive(in, c, r.pv, b)
	r.surges = surge.Derive(in, c, r.pv, r.cables, b)
	r.earth = earthing.Derive(in, c, r.pv, r.cables, b)
	r.labels = label.Derive(in, c, r.pv, r.cables, b)
	r.ac = accircuit.Derive(in, c, r.pv, r.cables, b)
	r.store = storage.Derive(in, c, r.pv, r.cables, b)
	r.top = roof.Derive(in, b)
	r.tests = commissioning.Derive(in, c, r.pv, r.cables, b)
	r.papers = handover.Derive(in, c, r.pv, b)
	f := r.lists()
	f.Isolators = isolator.Derive(in, c, r.pv, b)
	f.ImpliedLists = implied.Derive(in)
	f.Relations = relation.Derive(in)
	f.Installation = r.installation(in, f)
	return f
}

// lists takes the lists of the rooms.
func (r *rooms) lists() *Facts {
	return &Facts{
		ModuleSheets: r.pv.Sheets, CableSheets: r.cables.Sheets, FixingSheets: r.top.Sheets,
		Strings: r.strings(), Mppts: r.pv.Mppts, Inverters: r.inverters(), Arrays: r.pv.Arrays,
		Runs: r.runs(), Segments: r.cables.Segments, Loops: r.cables.Loops, Connectors: r.cables.Connectors,
		SPDs:   r.surges.SPDs,
		Frames: r.earth.Frames, MainBonds: r.earth.MainBonds, Electrodes: r.earth.Electrodes,
		EarthedPoles: r.earth.Poles, Alarms: r.earth.Alarms,
		Labels: r.labels.Labels, LabelPlaces: r.labels.Places,
		Circuits: r.ac.Circuits, Boards: r.ac.Boards, BoardWays: r.ac.Ways, Meters: r.ac.Meters, Changeovers: r.ac.Changeovers,
		Batteries: r.store.Batteries,
		Planes:    r.top.Planes, Modules: r.top.Modules, Rails: r.top.Rails, Fixings: r.top.Fixings, Clamps: r.top.Clamps,
		Openings: r.top.Openings, Penetrations: r.top.Penetrations,
		StringTests: r.tests.Strings, CombinerTests: r.tests.Combiners, CurveTests: r.tests.Curves,
		InsulationTests: r.tests.Insulation, ContinuityTests: r.tests.Continuity,
		CircuitTests: r.tests.Circuits, RCDTests: r.tests.RCDs, Instruments: r.tests.Instruments,
		Fits: r.tests.Fits, Dates: r.papers.Orders, Notices: r.papers.Notices, GridSettings: r.papers.Settings,
	}
}

func (r *rooms) strings() []String {
	if r.pv.Strings == nil {
		return nil
	}
	all := make([]String, len(r.pv.Strings))
	for i, s := range r.pv.Strings {
		all[i] = String{s, r.cables.Drops[i], r.earth.Strings[i]}
	}
	return all
}

func (r *rooms) inverters() []Inverter {
	if r.pv.Inverters == nil {
		return nil
	}
	all := make([]Inverter, len(r.pv.Inverters))
	for i, v := range r.pv.Inverters {
		all[i] = Inverter{v, r.surges.Routes[i], r.earth.Watches[i], r.ac.Outputs[i], r.store.Ports[i], r.tests.Proofs[i], r.papers.Interfaces[i]}
	}
	return all
}

func (r *rooms) runs() []Run {
	if r.cables.Runs == nil {
		return nil
	}
	all := make([]Run, len(r.cables.Runs))
	for i, run := range r.cables.Runs {
		all[i] = Run{run, r.labels.Markings[i]}
	}
	return all
}
