package pvstring

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Mppt holds the facts of one maximum power point tracking input.
type Mppt struct {
	working.Subject

	Strings          working.Names  `json:"strings" words:"strings that feed it"`
	StringsParallel  working.Number `json:"strings_in_parallel" words:"strings in parallel: those that feed it"`
	StringInputs     working.Number `json:"string_inputs" words:"pairs of connectors of the input"`
	IscStcA          working.Number `json:"isc_stc_a" words:"short-circuit current at STC of all its strings"`
	IscMaxA          working.Number `json:"isc_max_a" words:"design short-circuit current of all its strings"`
	ImpA             working.Number `json:"imp_a" words:"current at maximum power of all its strings"`
	IscRatedA        working.Number `json:"isc_rated_a" words:"maximum PV short-circuit current of the input"`
	CurrentRatedA    working.Number `json:"current_rated_a" words:"maximum operating current of the input"`
	VocMaxV          working.Number `json:"voc_max_v" words:"greatest maximum voltage among its strings"`
	VocMismatchPct   working.Number `json:"voc_mismatch_pct" words:"spread of the strings' open-circuit voltages over their greatest"`
	SeriesSpread     working.Number `json:"modules_in_series_spread" words:"difference of the numbers of modules in series"`
	ModuleTypes      working.Number `json:"module_types" words:"different modules among its strings"`
	Planes           working.Number `json:"planes" words:"different roof planes among its strings"`
	AzimuthSpreadDeg working.Number `json:"azimuth_spread_deg" words:"widest angle between the directions that its strings face"`
	PitchSpreadDeg   working.Number `json:"pitch_spread_deg" words:"difference of the pitches of its strings' planes"`
	LiveWithAllOpen  working.Flag   `json:"live_with_all_open" words:"whether it is live in daylight with every isolator open"`
	IsolatorBuiltIn  working.Flag   `json:"isolator_built_in" words:"whether the inverter has a DC switch-disconnector inside"`
}

// input is a tracking input as the datasheet has it.
type input struct {
	terminal string
	inv      *schema.Inverter
	sheet    *schema.InverterDatasheet
	mppt     *schema.MPPTDatasheet
}

// inputs are the tracking inputs of every inverter, in document order.
type inputs struct {
	list []*input
	at   map[string]*input // by terminal
}

func inputsOf(in *schema.Installation) inputs {
	all := inputs{at: map[string]*input{}}
	for n := range in.Inverters {
		inv := &in.Inverters[n]
		sheet := inv.Datasheet.To()
		for m := range sheet.MPPTs {
			i := &input{circuit.Input(inv.ID.Value, m), inv, sheet, &sheet.MPPTs[m]}
			all.list = append(all.list, i)
			all.at[i.terminal] = i
		}
	}
	return all
}

// feeder is a string that feeds an input: what the document states of it, and
// its facts.
type feeder struct {
	*String
	stated *schema.String
}

// mpptOf derives the facts of one input from the strings that feed it.
func mpptOf(i *input, fed []feeder, dark circuit.State) Mppt {
	m := Mppt{
		Subject:         working.Subject{ID: i.terminal, At: i.inv.At(), Name: "input " + i.terminal},
		StringInputs:    working.Stated("n_in", "", i.mppt.StringInputs),
		IscRatedA:       working.Stated("I_sc,PV", "A", i.mppt.IscMaxA),
		CurrentRatedA:   working.Stated("I_max,PV", "A", i.mppt.CurrentMaxA),
		LiveWithAllOpen: dark.Terminal(i.terminal, i.inv.At()),
		IsolatorBuiltIn: working.StatedFlag(i.sheet.DCIsolatorBuiltIn),
	}
	var ids []string
	for _, s := range fed {
		ids = append(ids, s.ID)
	}
	m.Strings = working.List(ids...)
	m.StringsParallel = working.Counted("N_p", len(fed), i.inv.At())
	m.IscStcA = working.Sum("I_sc,tot", "A", each(fed, func(s *String) working.Number { return s.IscStcA })...)
	m.IscMaxA = working.Sum("I_sc,max,tot", "A", each(fed, func(s *String) working.Number { return s.IscMaxA })...)
	m.ImpA = working.Sum("I_mp,tot", "A", each(fed, func(s *String) working.Number { return s.ImpA })...)
	m.VocMaxV = working.Greatest("U_oc,max", "V", each(fed, func(s *String) working.Number { return s.VocMaxV })...)
	m.match(fed)
	return m
}

func each(fed []feeder, member func(*String) working.Number) []working.Number {
	all := make([]working.Number, len(fed))
	for i, s := range fed {
		all[i] = member(s.String)
	}
	return all
}
