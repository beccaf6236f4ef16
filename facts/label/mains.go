package label

import (
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// origin is the cut-out or the service equipment. A label at it may be stated to
// be on the supply, or at the location.
func origin(j *job) ([]site, []working.Gap) {
	s := site{part: "origin", at: "/ac/supply", fits: always("/ac/supply"), locations: []string{"origin", "service_equipment"}}
	if id := j.in.AC.Supply.ID; id.Stated() {
		s.part = id.Value
	}
	return []site{s}, nil
}

// meters are the meters of the supply; one of generation needs no warning.
func meters(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.AC.Meters {
		m := &j.in.AC.Meters[i]
		if !m.Purpose.Is("generation") && !m.Purpose.Is("battery") {
			all = append(all, site{part: m.ID.Value, at: m.At(), fits: always(m.At()), locations: []string{"meter"}})
		}
	}
	return all, unstated(j.in.AC.Meters == nil, "/ac/meters")
}

// board is the place that a board is. The main board may be stated as a
// location.
func board(b *schema.Board, fits working.Flag) site {
	s := site{part: b.ID.Value, at: b.At(), fits: fits}
	switch {
	case !b.Role.Stated():
		s.undecided = b.Role.At()
	case b.Role.Value == "main":
		s.locations = []string{"main_board"}
	}
	return s
}

// pvBoards are the boards on the way from an inverter to the supply.
func pvBoards(j *job) (all []site, missing []working.Gap) {
	fed, others := j.fedBoards()
	for i := range j.in.AC.Boards {
		b := &j.in.AC.Boards[i]
		all = append(all, board(b, working.Any(working.KnownFlag(fed[b.ID.Value], b.At()), others)))
	}
	return all, unstated(j.in.AC.Boards == nil, "/ac/boards")
}

// fedBoards are the boards through which inverters feed, and whether others are
// too: unknown where the way of some inverter could not be followed.
func (j *job) fedBoards() (fed map[string]bool, others working.Flag) {
	fed = map[string]bool{}
	var missing []working.Gap
	if j.in.Inverters == nil {
		missing = []working.Gap{working.Unstated("/inverters")}
	}
	for _, inv := range j.in.Inverters {
		p := j.c.ToSupply(inv.ID.Value + ".ac")
		missing = append(missing, p.Untraced...)
		for _, outlet := range p.Ways {
			fed[circuit.Part(outlet)] = true
		}
	}
	if missing != nil {
		return fed, working.UnknownFlag(missing...)
	}
	return fed, working.KnownFlag(false, "/inverters")
}

// mainBoards are the boards that are, or may be, the main one.
func mainBoards(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.AC.Boards {
		b := &j.in.AC.Boards[i]
		all = append(all, board(b, working.StatedText(b.Role).OneOf("main")))
	}
	return all, unstated(j.in.AC.Boards == nil, "/ac/boards")
}

// rcdBoards are the boards with a residual current device, as far as the
// document states which devices they hold.
func rcdBoards(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.AC.Boards {
		b := &j.in.AC.Boards[i]
		var withRCD []working.Flag
		if b.IncomingDevice.Stated() {
			withRCD = append(withRCD, circuit.OpensOnResidual(b.IncomingDevice.To()))
		}
		if b.Ways == nil {
			withRCD = append(withRCD, working.UnknownFlag(b.Member("ways")))
		}
		for k := range b.Ways {
			withRCD = append(withRCD, residualDevice(&b.Ways[k]))
		}
		all = append(all, board(b, working.Any(withRCD...)))
	}
	return all, unstated(j.in.AC.Boards == nil, "/ac/boards")
}

// residualDevice reports whether a way has a residual current device. A spare way
// without a device has none.
func residualDevice(w *schema.BoardWay) working.Flag {
	switch {
	case w.RCD.Stated():
		return working.Any(circuit.OpensOnResidual(w.RCD.To()), circuit.OpensOnResidual(w.Device.To()))
	case !w.Device.Stated() && w.Serves.Is("spare"):
		return working.KnownFlag(false, w.At())
	}
	return circuit.OpensOnResidual(w.Device.To())
}

// pvWays are the ways of boards that generators feed. Ways have no id of their
// own, so that their labels are on the board: as many as there are such ways.
func pvWays(j *job) (all []site, missing []working.Gap) {
	missing = unstated(j.in.AC.Boards == nil, "/ac/boards")
	for i := range j.in.AC.Boards {
		b := &j.in.AC.Boards[i]
		missing = append(missing, unstated(b.Ways == nil, b.Member("ways"))...)
		var own []site
		for k := range b.Ways {
			w := &b.Ways[k]
			fits := j.c.Serves(b.ID.Value+"."+w.ID.Value).OneOf("pv_supply", "hybrid_supply")
			if working.MayHold(fits) {
				own = append(own, site{part: b.ID.Value + "." + w.ID.Value, at: w.At(), fits: fits,
					parts: []string{b.ID.Value}, marked: working.StatedFlag(w.Identified)})
			}
		}
		for k := range own {
			own[k].least = len(own)
		}
		all = append(all, own...)
	}
	return all, missing
}

// interconnection is where the generator meets the supply: near the main board
// or meter.
func interconnection(j *job) ([]site, []working.Gap) {
	s := site{part: "interconnection", at: "/ac", fits: always("/ac"), locations: []string{"origin", "meter", "main_board", "service_equipment"}}
	if id := j.in.AC.Supply.ID; id.Stated() {
		s.parts = append(s.parts, id.Value)
	}
	for _, m := range j.in.AC.Meters {
		s.parts = append(s.parts, m.ID.Value)
	}
	for _, b := range j.in.AC.Boards {
		s.parts = append(s.parts, b.ID.Value)
	}
	return []site{s}, nil
}

func interconnectionOrInverter(j *job) ([]site, []working.Gap) {
	all, _ := interconnection(j)
	for _, inv := range j.in.Inverters {
		all[0].parts = append(all[0].parts, inv.ID.Value)
	}
	return all, nil
}

// outside is where people who come from outside look first.
func outside(j *job) ([]site, []working.Gap) {
	all, _ := interconnection(j)
	all[0].part, all[0].parts = "outside", nil
	all[0].locations = []string{"outside_wall", "meter", "origin", "building_entrance"}
	if id := j.in.AC.Supply.ID; id.Stated() {
		all[0].parts = append(all[0].parts, id.Value)
	}
	for _, m := range j.in.AC.Meters {
		all[0].parts = append(all[0].parts, m.ID.Value)
	}
	return all, nil
}

// backups are the changeover switches and the boards that another source feeds;
// where there are none, the inverters and batteries that can.
func backups(j *job) (all []site, missing []working.Gap) {
	for i := range j.in.AC.Changeovers {
		x := &j.in.AC.Changeovers[i]
		all = append(all, site{part: x.ID.Value, at: x.At(), fits: always(x.At())})
	}
	for i := range j.in.AC.Boards {
		if b := &j.in.AC.Boards[i]; b.Role.Is("backup") {
			all = append(all, board(b, always(b.At())))
		}
	}
	if all == nil {
		all = []site{{part: "backup", at: "/inverters", fits: always("/inverters"), locations: []string{"main_board"}}}
		for _, inv := range j.in.Inverters {
			all[0].parts = append(all[0].parts, inv.ID.Value)
		}
		for _, b := range j.in.AC.Boards {
			all[0].parts = append(all[0].parts, b.ID.Value)
		}
	}
	return all, nil
}
