package label

import "sunclause/facts/working"

// earthTerminals are the earthing bars outside switchgear: one that stands in a
// board needs no label, since it cannot be taken for anything else there.
func earthTerminals(j *job) (all []site, missing []working.Gap) {
	e := &j.in.Earthing
	missing = append(unstated(!e.MainTerminal.Stated(), e.MainTerminal.At()), unstated(e.Terminals == nil, "/earthing/terminals")...)
	if t := &e.MainTerminal; t.ID.Stated() && !t.Board.Stated() {
		all = append(all, site{part: t.ID.Value, at: t.At(), fits: always(t.At())})
	}
	for i := range e.Terminals {
		if t := &e.Terminals[i]; !t.Board.Stated() {
			all = append(all, site{part: t.ID.Value, at: t.At(), fits: always(t.At())})
		}
	}
	return all, missing
}

func earthElectrodes(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.Earthing.Electrodes {
		e := &j.in.Earthing.Electrodes[i]
		all = append(all, site{part: e.ID.Value, at: e.At(), fits: always(e.At())})
	}
	return all, unstated(j.in.Earthing.Electrodes == nil, "/earthing/electrodes")
}

// frames are the array frames that are joined to earth. Whether their joints
// carry a label may be stated of the frame itself.
func frames(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.Earthing.Frames {
		f := &j.in.Earthing.Frames[i]
		fits := working.StatedText(f.Connection).OneOf("functional_earth", "protective_conductor", "main_bonding", "lightning_bonding")
		all = append(all, site{part: f.ID.Value, at: f.At(), fits: fits, marked: working.StatedFlag(f.JointsLabelled)})
	}
	return all, unstated(j.in.Earthing.Frames == nil, "/earthing/frames")
}
