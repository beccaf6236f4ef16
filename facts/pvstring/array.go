package pvstring

import (
	"strings"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Array holds the facts of one PV array: where strings are put in parallel, in
// a junction box or with branch connectors.
type Array struct {
	working.Subject

	JoinedBy        working.Text   `json:"joined_by" words:"what joins its strings: junction_box or branch_connectors"`
	Strings         working.Names  `json:"strings" words:"strings that pass through it"`
	StringsParallel working.Number `json:"strings_in_parallel" words:"strings that pass through it: how many"`
	VocMaxV         working.Number `json:"voc_max_v" words:"greatest maximum voltage among them"`
	StringIscA      working.Number `json:"string_isc_stc_a" words:"greatest short-circuit current at STC of one of them"`
	PolesSegregated working.Flag   `json:"poles_segregated" words:"whether positive and negative are kept apart so that no single fault bridges them"`
	Outdoors        working.Flag   `json:"outdoors" words:"whether it stands in the open"`
	IPSolids        working.Number `json:"ip_solids" words:"first figure of the box's IP code"`
	IPWater         working.Number `json:"ip_water" words:"second figure of the box's IP code"`
	BlockingDiodes  working.Flag   `json:"blocking_diodes" words:"whether blocking diodes are fitted"`
	DiodeVoltageV   working.Number `json:"diode_voltage_v" words:"rated reverse voltage of a blocking diode"`
	DiodeCurrentA   working.Number `json:"diode_current_a" words:"rated forward current of a blocking diode"`
}

// arrays derives the facts of every array; nil when the document states none.
func (f *Facts) arrays(in *schema.Installation, c *circuit.Circuit) []Array {
	if in.Arrays == nil {
		return nil
	}
	through := f.throughArrays(in, c)
	all := make([]Array, len(in.Arrays))
	for i, a := range in.Arrays {
		all[i] = Array{
			Subject:         working.Subject{ID: a.ID.Value, At: a.At(), Name: "array " + a.ID.Value},
			JoinedBy:        working.StatedText(a.JoinedBy),
			PolesSegregated: working.StatedFlag(a.PolesSegregated),
			Outdoors:        working.Outdoors(a.Place),
			IPSolids:        working.IPFigure("IP_1", a.IP, working.IPSolids),
			IPWater:         working.IPFigure("IP_2", a.IP, working.IPWater),
			BlockingDiodes:  working.StatedFlag(a.BlockingDiodes),
			DiodeVoltageV:   working.Stated("U_R", "V", a.DiodeVoltageV),
			DiodeCurrentA:   working.Stated("I_F", "A", a.DiodeCurrentA),
		}
		all[i].joins(through[a.ID.Value], f.Untraced)
	}
	return all
}

// throughArrays lists, for each array, the strings whose runs enter it.
func (f *Facts) throughArrays(in *schema.Installation, c *circuit.Circuit) map[string][]*String {
	through := map[string][]*String{}
	for i := range f.Strings {
		s := &f.Strings[i]
		for _, r := range c.From(s.ID).Runs {
			if id, way, _ := strings.Cut(in.Cables[r].To.Value, "."); way != "out" {
				through[id] = append(through[id], s)
			}
		}
	}
	return through
}

// joins takes what the strings put on the array. As long as some string was not
// traced nothing can be said of it, and an array that no string passes through
// lacks the runs to it.
func (a *Array) joins(fed []*String, untraced []working.Gap) {
	missing := untraced
	if missing == nil && len(fed) == 0 {
		missing = []working.Gap{working.Unstated("/cables")}
	}
	if missing != nil {
		a.Strings = working.UnknownList(missing...)
		a.StringsParallel = working.Unknown("N_p", "", missing...)
		a.VocMaxV = working.Unknown("U_oc,max", "V", missing...)
		a.StringIscA = working.Unknown("I_sc", "A", missing...)
		return
	}
	var ids []string
	var voltages, currents []working.Number
	for _, s := range fed {
		ids = append(ids, s.ID)
		voltages, currents = append(voltages, s.VocMaxV), append(currents, s.IscStcA)
	}
	a.Strings = working.List(ids...)
	a.StringsParallel = working.Counted("N_p", len(ids), a.At)
	a.VocMaxV = working.Greatest("U_oc,max", "V", voltages...)
	a.StringIscA = working.Greatest("I_sc", "A", currents...)
}
