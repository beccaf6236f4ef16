package cable

import (
	"strconv"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Run holds the facts of one run of cable.
type Run struct {
	working.Subject

	Service         working.Text   `json:"service" words:"what it carries, where the circuit bears out what is stated: pv_string, pv_array, battery, ac, …"`
	ServiceStated   working.Text   `json:"service_stated" words:"what it carries as stated"`
	ServiceMade     working.Text   `json:"service_by_circuit" words:"what it carries by the terminals that it joins and the strings on it"`
	LengthM         working.Number `json:"length_m" words:"length of its route, one way"`
	Strings         working.Names  `json:"strings" words:"strings whose current it carries"`
	StringsParallel working.Number `json:"strings_in_parallel" words:"strings in parallel whose current it carries"`
	VocMaxV         working.Number `json:"voc_max_v" words:"greatest maximum voltage among them"`
	IscStcA         working.Number `json:"isc_stc_a" words:"short-circuit current at STC that it carries"`
	IscMaxA         working.Number `json:"isc_max_a" words:"design short-circuit current that it carries"`
	ImpA            working.Number `json:"imp_a" words:"current at maximum power that it carries"`
	ReverseMaxA     working.Number `json:"reverse_current_max_a" words:"design current that strings on the same input can drive back through it"`
	FuseRatedA      working.Number `json:"fuse_rated_a" words:"greatest rated current among the fuses of the strings it carries"`
	Fused           working.Flag   `json:"fused" words:"whether every string it carries has its own overcurrent protective device"`
	Inverters       working.Names  `json:"inverters" words:"inverters and batteries whose AC current it carries"`
	DesignCurrentA  working.Number `json:"design_current_a" words:"design current, for which its conductors must be good"`
	Loaded          working.Number `json:"loaded_conductors" words:"loaded conductors: two on DC and single-phase, three on three-phase"`
	Cores           working.Number `json:"cores" words:"cores of its cable, all counted"`
	CoresNeeded     working.Number `json:"cores_needed" words:"cores that a cable of more than one needs for its circuit: loaded conductors, and the neutral of three lines"`
	CapacityA       working.Number `json:"capacity_a" words:"current-carrying capacity of its worst stretch, all factors applied"`
	ConductorTempC  working.Number `json:"conductor_temp_c" words:"temperature of its hottest conductor at the design current"`
	U0V             working.Number `json:"u0_v" words:"voltage of the supply to earth, of an AC run"`
	UV              working.Number `json:"u_v" words:"voltage between its conductors, of an AC run"`
	DropV           working.Number `json:"drop_v" words:"voltage drop at its rated current with warm conductors; three-phase between lines"`
	DropPct         working.Number `json:"drop_pct" words:"voltage drop as a share of the lowest string voltage at maximum power, or of the supply voltage"`
	DropFactor      working.Number `json:"drop_temperature_factor" words:"factor on the drop of an AC run for conductors cooler than at full load; 1 where the rule set takes none"`
	DropBudgetPct   working.Number `json:"drop_budget_pct" words:"share of the voltage drop that the designer gave to it"`
	LoopOhm         working.Number `json:"loop_ohm" words:"resistance of line and protective conductor, warm"`
	ProtectiveMm2   working.Number `json:"protective_mm2" words:"cross-section of its protective conductor; of armour, what copper would do the same"`
	ProtectiveK     working.Number `json:"protective_k" words:"adiabatic factor k of that conductor"`
	ProtectiveA2s   working.Number `json:"protective_withstand_a2s" words:"energy that it bears, k²S²"`
	LiveWithAllOpen working.Flag   `json:"live_with_all_open" words:"whether the strings keep it live in daylight with every isolator open"`
	FedWithAllOpen  working.Names  `json:"fed_with_all_open" words:"what keeps it live with every isolator open: daylight, battery, inverter, supply"`
	Wire
	Route
	Ends
	Colours
	Whereabouts
}

// run derives the facts of one run and of its stretches.
func (p *plan) run(i int) (Run, []Segment) {
	r := &p.in.Cables[i]
	f := Run{
		Subject: working.Subject{ID: r.ID.Value, At: r.At(), Name: "run " + r.ID.Value},
		Service: p.circuit.Service(i),

		ServiceStated: working.StatedText(r.Service),
		ServiceMade:   p.circuit.ServiceMade(i),

		LengthM: lengthOf(r),
	}
	f.DropBudgetPct = working.Stated("Δu_budget", "%", r.DropBudgetPct)
	f.Wire = p.wireOf(r.Cable)
	f.load(i, r, p.strings[i], p)
	f.feeds(i, p)
	f.design(i, p)
	f.loaded(i, p)
	f.cores(r)
	segments := p.segments(&f, r)
	f.Route = p.routeOf(&f, r, segments)
	f.Ends = endsOf(r, segments)
	f.Colours = coloursOf(r)
	f.Whereabouts = p.whereabouts(r, segments)
	f.worst(segments)
	f.voltageDrop(i, r, p, segments)
	f.protect(r, p)
	return f, segments
}

// worst takes the stretch with the lowest capacity, and the hottest conductor.
func (f *Run) worst(segments []Segment) {
	var capacities, temperatures []working.Number
	for i := range segments {
		capacities = append(capacities, segments[i].CapacityA)
		temperatures = append(temperatures, segments[i].ConductorTempC)
	}
	f.CapacityA = working.Least("I_z", "A", capacities...)
	f.ConductorTempC = working.Greatest("T_con", "°C", temperatures...)
}

// lengthOf adds the lengths of the segments.
func lengthOf(r *schema.Run) working.Number {
	if r.Segments == nil {
		return working.Unknown("l", "m", r.Member("segments"))
	}
	var lengths []working.Number
	for _, s := range r.Segments {
		lengths = append(lengths, working.Stated("l_i", "m", s.LengthM))
	}
	return working.Sum("l", "m", lengths...)
}

func segmentID(run string, index int) string { return run + "." + strconv.Itoa(index+1) }
