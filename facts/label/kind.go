package label

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
)

// pvCable is the kind of place that runs along a cable.
const pvCable = "pv_cable"

// kinds are the words that a label table may use for a place. Each lists the
// places of its kind, and what is missing to know them all.
var kinds = map[string]func(*job) ([]site, []working.Gap){
	pvCable:                       func(*job) ([]site, []working.Gap) { return nil, nil }, // listed with its markings
	"dc_isolator":                 isolators(circuit.PV),
	"ac_isolator":                 isolators(circuit.AC),
	"battery_isolator":            isolators(circuit.Battery),
	"inverter":                    inverters,
	"junction_box":                junctionBoxes,
	"string_fuse":                 stringFuses,
	"connector":                   connectors,
	"pv_board":                    pvBoards,
	"main_board":                  mainBoards,
	"rcd_board":                   rcdBoards,
	"pv_way":                      pvWays,
	"origin":                      origin,
	"meter":                       meters,
	"interconnection":             interconnection,
	"interconnection_or_inverter": interconnectionOrInverter,
	"entrance":                    at("entrance", "building_entrance", "fire_panel"),
	"outside":                     outside,
	"roof_access":                 roofAccess,
	"earth_terminal":              earthTerminals,
	"earth_electrode":             earthElectrodes,
	"frame":                       frames,
	"spd":                         spds,
	"battery":                     batteries,
	"backup":                      backups,
}

// always fits wherever the place is there at all.
func always(at string) working.Flag { return working.KnownFlag(true, at) }

// unstated names a list that is not stated.
func unstated(isNil bool, pointer string) []working.Gap {
	if isNil {
		return []working.Gap{working.Unstated(pointer)}
	}
	return nil
}

func isolators(kind string) func(*job) ([]site, []working.Gap) {
	return func(j *job) (all []site, missing []working.Gap) {
		for i := range j.in.Isolators {
			iso := &j.in.Isolators[i]
			opens := j.c.Opens(iso)
			missing = append(missing, opens.Missing()...)
			if opens.Value() != kind {
				continue
			}
			s := site{part: iso.ID.Value, at: iso.At(), fits: always(iso.At())}
			if iso.BuiltInto.Stated() {
				s.parts = []string{iso.BuiltInto.Value}
			}
			all = append(all, s)
		}
		return all, append(missing, unstated(j.in.Isolators == nil, "/isolators")...)
	}
}

func inverters(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.Inverters {
		inv := &j.in.Inverters[i]
		all = append(all, site{part: inv.ID.Value, at: inv.At(), fits: always(inv.At())})
	}
	return all, unstated(j.in.Inverters == nil, "/inverters")
}

func junctionBoxes(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.Arrays {
		a := &j.in.Arrays[i]
		all = append(all, site{part: a.ID.Value, at: a.At(), fits: working.StatedText(a.JoinedBy).OneOf("junction_box")})
	}
	return all, unstated(j.in.Arrays == nil, "/arrays")
}

// stringFuses stand for the holder: a label on the string, or on the box that
// the string's cable leads to.
func stringFuses(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.Strings {
		s := &j.in.Strings[i]
		one := site{part: s.ID.Value, at: s.At(), fits: working.StatedFlag(s.Overcurrent.Fitted)}
		for k := range j.in.Cables {
			if r := &j.in.Cables[k]; r.From.Is(s.ID.Value) {
				one.parts = append(one.parts, circuit.Part(r.To.Value))
			}
		}
		all = append(all, one)
	}
	return all, unstated(j.in.Strings == nil, "/strings")
}

// connectors are the plug connectors on DC that ordinary people can reach.
func connectors(j *job) (all []site, missing []working.Gap) {
	missing = unstated(j.in.Cables == nil, "/cables")
	for i := range j.in.Cables {
		r := &j.in.Cables[i]
		if !j.c.CarriesPV(i) {
			continue
		}
		if r.Connectors == nil {
			missing = append(missing, working.Unstated(r.Member("connectors")))
		}
		for k := range r.Connectors {
			c := &r.Connectors[k]
			all = append(all, site{part: c.ID.Value, at: c.At(), fits: working.StatedFlag(c.ReadilyAccessible)})
		}
	}
	return all, missing
}

func (j *job) cableSites(markings []Marking) (all []site, missing []working.Gap) {
	for i := range j.in.Cables {
		r := &j.in.Cables[i]
		if j.c.CarriesPV(i) {
			all = append(all, site{part: r.ID.Value, at: r.At(), fits: markings[i].WarningDue})
		}
	}
	return all, unstated(j.in.Cables == nil, "/cables")
}

// roofAccess is the hatch to a roof space through which PV cable runs.
func roofAccess(j *job) ([]site, []working.Gap) {
	var throughRoof []working.Flag
	if j.in.Cables == nil {
		throughRoof = append(throughRoof, working.UnknownFlag("/cables"))
	}
	for i := range j.in.Cables {
		r := &j.in.Cables[i]
		if !j.c.CarriesPV(i) {
			continue
		}
		if r.Segments == nil {
			throughRoof = append(throughRoof, working.UnknownFlag(r.Member("segments")))
		}
		for k := range r.Segments {
			throughRoof = append(throughRoof, working.StatedText(r.Segments[k].Place).OneOf("roof_space"))
		}
	}
	return []site{{part: "roof_space_access", at: "/cables", fits: working.Any(throughRoof...), locations: []string{"roof_space_access"}}}, nil
}

// spds are the surge protective devices that stand by themselves; one inside an
// inverter is looked after by the inverter. It is inside where its terminal and its
// place are those of the inverter: a word alone lets no label fall away.
func spds(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.SPDs {
		p := &j.in.SPDs[i]
		inverter := p.BuiltInto.To()
		inside := p.BuiltInto.Stated() && circuit.Part(p.ConnectedAt.Value) == p.BuiltInto.Value
		apart := p.Place.Stated() && inverter.Place.Stated() && !p.Place.Is(inverter.Place.Value)
		if !inside || apart {
			all = append(all, site{part: p.ID.Value, at: p.At(), fits: always(p.At())})
		}
	}
	return all, unstated(j.in.SPDs == nil, "/spds")
}

func batteries(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.Storage.Batteries {
		b := &j.in.Storage.Batteries[i]
		all = append(all, site{part: b.ID.Value, at: b.At(), fits: always(b.At())})
	}
	return all, unstated(j.in.Storage.Batteries == nil, "/storage/batteries")
}

// at is a kind that stands once at locations that are no part of the document.
func at(part string, locations ...string) func(*job) ([]site, []working.Gap) {
	return func(*job) ([]site, []working.Gap) {
		return []site{{part: part, at: "/labels", fits: always("/labels"), locations: locations}}, nil
	}
}
