package cable

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Connector holds the facts of one pair of plug connectors.
type Connector struct {
	working.Subject

	SameType        working.Flag   `json:"same_type" words:"whether both halves are of one maker and type"`
	ListedForMating working.Flag   `json:"listed_for_mating" words:"whether the maker or a listing allows the two to be mated"`
	Standard        working.Text   `json:"standard" words:"product standard, without edition and national prefix"`
	VoltageMaxV     working.Number `json:"voltage_max_v" words:"rated voltage"`
	CurrentMaxA     working.Number `json:"current_max_a" words:"rated current"`
	VocMaxV         working.Number `json:"voc_max_v" words:"greatest maximum voltage of the strings on its run"`
	DesignCurrentA  working.Number `json:"design_current_a" words:"design current of its run"`
	Accessible      working.Flag   `json:"readily_accessible" words:"whether ordinary people can reach it"`
	ToolToOpen      working.Flag   `json:"tool_to_open" words:"whether it opens only with a tool"`
	LoadBreak       working.Flag   `json:"load_break" words:"whether it is rated to be opened under load"`
	Disconnects     working.Flag   `json:"disconnection_point" words:"whether it is the means of disconnecting the string"`
	IsolatorsInPath working.Number `json:"isolators_in_path" words:"fewest DC isolators between a string on its run and the tracking input"`
	RestsInWater    working.Flag   `json:"rests_in_water" words:"whether it can lie in water or wet dirt"`
}

func (p *plan) connectors(f *Run, i int) []Connector {
	r := &p.in.Cables[i]
	var isolators []working.Number
	for _, s := range p.strings[i] {
		isolators = append(isolators, s.IsolatorsInPath)
	}
	fewest := working.Least("n_iso", "", isolators...)
	if !f.Strings.Known() {
		fewest = working.Unknown("n_iso", "", f.Strings.Missing()...)
	}
	if r.Connectors == nil && p.circuit.CarriesPV(i) {
		return []Connector{unstatedConnectors(f, r)}
	}
	var all []Connector
	for _, c := range r.Connectors {
		all = append(all, Connector{
			Subject:         working.Subject{ID: c.ID.Value, At: c.At(), Name: "connector " + c.ID.Value},
			SameType:        working.Same(working.StatedText(c.Connector), working.StatedText(c.Mate)),
			ListedForMating: working.StatedFlag(c.ListedForMating),
			Standard:        standardOf(c.Standard),
			VoltageMaxV:     working.Stated("U_con", "V", c.VoltageMaxV),
			CurrentMaxA:     working.Stated("I_con", "A", c.CurrentMaxA),
			VocMaxV:         f.VocMaxV,
			DesignCurrentA:  f.DesignCurrentA,
			Accessible:      working.StatedFlag(c.ReadilyAccessible),
			ToolToOpen:      working.StatedFlag(c.ToolToOpen),
			LoadBreak:       working.StatedFlag(c.LoadBreak),
			Disconnects:     working.StatedFlag(c.DisconnectionPoint),
			IsolatorsInPath: fewest,
			RestsInWater:    working.StatedFlag(c.RestsInWater),
		})
	}
	return all
}

// unstatedConnectors stands for the connectors of a run of the PV side that does not
// state whether there are any.
func unstatedConnectors(f *Run, r *schema.Run) Connector {
	var c Connector
	working.Blank(&c, r.Member("connectors"))
	c.Subject = working.Subject{ID: f.ID + ".connectors", At: r.At(), Name: "connectors of " + f.Name}
	return c
}
