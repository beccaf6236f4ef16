package roof

import (
	"math"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	screwInside = working.NewFormula("l_in", "mm", "l_screw − t_between, at least 0", working.ByDefinition)
	offLine     = working.NewFormula("d_t", "mm", "|x − x_r|", working.ByDefinition)
)

// depth is how much thread is inside the timber: what lies between the head and
// the timber is taken off the length of the screw.
func (s *slope) depth(doc *schema.Fixing, hook *schema.HookDatasheet, screw *schema.ScrewDatasheet, t timber) working.Number {
	between := []working.Number{working.Stated("t_plate", "mm", hook.PlateThicknessMm), working.Stated("t_packing", "mm", doc.PackingMm)}
	c := s.doc.Covering
	sarking := working.Stated("t_boards", "mm", c.SarkingThicknessMm)
	counter := working.Stated("t_counter", "mm", c.CounterBattenThicknessMm)
	switch doc.PlateOn.Value {
	case "timber":
	case "sarking":
		between = append(between, sarking)
	case "counter_batten":
		between = append(between, counter, sarking)
	case "batten":
		between = append(between, working.Stated("t_batten", "mm", c.BattenThicknessMm), counter, sarking)
	default: // not stated, or on a sheet with a profile of its own
		between = append(between, working.Unknown("t", "mm", doc.PlateOn.At()))
	}
	inside := screwInside.Of(working.Stated("l_screw", "mm", screw.LengthMm), working.Sum("t_between", "mm", between...))
	return working.Least("l_ef", "mm", inside, working.Stated("l_thread", "mm", screw.ThreadLengthMm), t.height.As("h"))
}

// timberOf finds the timber that a fixing is in.
func (s *slope) timberOf(doc *schema.Fixing, noggin *schema.Noggin) timber {
	r := s.doc.Rafters
	t := timber{
		width: working.Stated("b", "mm", r.WidthMm), height: working.Stated("h", "mm", r.HeightMm),
		density: s.material("density_kg_per_m3", "ρ_k", r.TimberClass, r.TimberDensityKgPerM3),
	}
	if line := s.lineBelow(doc); line != nil {
		if line.WidthMm.Stated() {
			t.width = working.Stated("b", "mm", line.WidthMm)
		}
		if line.HeightMm.Stated() {
			t.height = working.Stated("h", "mm", line.HeightMm)
		}
	}
	if noggin.Stated() {
		t.width, t.height = working.Stated("b", "mm", noggin.WidthMm), working.Stated("h", "mm", noggin.HeightMm)
		t.density = s.ofClass(noggin.TimberClass, "density_kg_per_m3", "ρ_k")
	}
	return t
}

// material takes a figure of the timber from the table of strength classes, or
// from the document where the timber has no class of the table. Where both are there,
// they have to agree.
func (s *slope) material(column, symbol string, class schema.Text, stated schema.Number) working.Number {
	n := s.ofClass(class, column, symbol)
	if !stated.Stated() {
		return n
	}
	return working.AgreedNumber(working.Stated(symbol, n.Unit(), stated), n, timberAgreement)
}

// ofClass takes a figure of a strength class from the table of the usual classes, or from
// that of the others.
func (s *slope) ofClass(class schema.Text, column, symbol string) working.Number {
	usual := s.book.Keyed("timber_classes", "class", working.StatedText(class), column, symbol)
	if other := s.book.Keyed("timber_classes_more", "class", working.StatedText(class), column, symbol); !usual.Known() && other.Known() {
		return other
	}
	return usual
}

// timberAgreement is the share by which a figure stated beside a strength class may
// differ from that of the class: rounding.
const timberAgreement = 0.01

// duration is the factor for the duration of a load and the moisture of the
// timber.
func (s *slope) duration(parameter string) working.Number {
	class := s.book.Word(parameter)
	if !class.Known() {
		return working.Unknown("k_mod", "", class.Missing()...)
	}
	return s.book.Step("timber_duration", "service_class", working.Stated("SC", "", s.doc.Rafters.ServiceClass), class.Value(), "k_mod")
}

// inTimber reports whether a fixing is in timber of the roof. That it is in something
// else counts only where the plane shows such a thing: much falls away by that word.
func (s *slope) inTimber(member schema.Text) working.Flag {
	r, c := s.doc.Rafters, s.doc.Covering
	switch member.Value {
	case "":
		return working.UnknownFlag(member.At())
	case "noggin":
		return working.KnownFlag(true, member.At())
	case "rafter", "purlin":
		return s.ofTimber()
	case "batten":
		return s.notInTimber(member, working.StatedText(c.Kind), c.BattenThicknessMm.Value > 0)
	case "sarking":
		return s.notInTimber(member, working.StatedText(c.Kind), c.SarkingThicknessMm.Value > 0)
	case "sheet", "standing_seam":
		return s.notInTimber(member, working.StatedText(c.Kind), strings.HasSuffix(c.Kind.Value, "sheet") || c.Kind.Is("standing_seam"))
	case "concrete", "masonry":
		return s.notInTimber(member, working.StatedText(r.Structure), r.Structure.Is("concrete_deck") || r.Structure.Is("other"))
	case "ballast":
		return s.notInTimber(member, working.KnownText("no ballast", s.doc.BallastMassKg.At()), s.doc.BallastMassKg.Value > 0)
	}
	return working.UnknownFlag(member.At())
}

// notInTimber reports that a fixing is not in timber, where the plane shows what it is
// said to be in.
func (s *slope) notInTimber(member schema.Text, shows working.Text, there bool) working.Flag {
	switch {
	case there:
		return working.KnownFlag(false, member.At())
	case !shows.Known():
		return working.UnknownFlag(shows.Missing()...)
	}
	return working.UnknownFlag(working.Disagreement(working.StatedText(member), shows))
}

// memberShown reports whether the plane has what a fixing is said to be in: not where
// another word of the document speaks against it.
func memberShown(inTimber working.Flag, at string) working.Flag {
	if inTimber.Known() {
		return working.KnownFlag(true, at)
	}
	if doubts := working.Doubts(inTimber.Missing()); len(doubts) > 0 {
		return working.KnownFlag(false, doubts[0].With)
	}
	return working.UnknownFlag(inTimber.Missing()...)
}

// plateShown reports whether the plane has what a plate is said to lie on: boards or
// battens that are stated as 0 mm thick are not there.
func (s *slope) plateShown(on schema.Text) working.Flag {
	c := s.doc.Covering
	thick := map[string]schema.Number{"sarking": c.SarkingThicknessMm, "counter_batten": c.CounterBattenThicknessMm, "batten": c.BattenThicknessMm}
	switch n, isLayer := thick[on.Value]; {
	case !on.Stated():
		return working.UnknownFlag(on.At())
	case on.Is("sheet"):
		return working.Not(s.tiled())
	case !isLayer:
		return working.KnownFlag(true, on.At())
	case !n.Stated():
		return working.UnknownFlag(n.At())
	default:
		return working.KnownFlag(n.Value > 0, n.At())
	}
}

// ofTimber reports whether the structure is of timber. It is not of steel or concrete
// where the document states a strength class of timber for it.
func (s *slope) ofTimber() working.Flag {
	r := s.doc.Rafters
	if !r.Structure.Stated() {
		return working.UnknownFlag(r.Structure.At())
	}
	timber := !r.Structure.Is("steel_frame") && !r.Structure.Is("concrete_deck")
	if !timber && r.TimberClass.Stated() {
		return working.UnknownFlag(working.Disagreement(working.StatedText(r.Structure), working.StatedText(r.TimberClass)))
	}
	return working.KnownFlag(timber, r.Structure.At())
}

// offTimber is how far a fixing is from the middle line of the nearest rafter,
// or from the noggin that it names.
func (s *slope) offTimber(doc *schema.Fixing, noggin *schema.Noggin) working.Number {
	if doc.Member.Is("noggin") {
		return s.offNoggin(doc, noggin)
	}
	at := s.acrossTimber(doc).As("x")
	if line := s.lineBelow(doc); line != nil {
		return offLine.Of(at, working.Stated("x_r", "mm", line.AtMm))
	}
	r := s.doc.Rafters
	nearest := working.Lookup{Symbol: "d_t", Unit: "mm", Text: "distance to the nearest middle line", Source: working.ByDefinition}
	return nearest.Of(func(x ...float64) float64 {
		k := math.Max(0, math.Min(math.Round((x[0]-x[1])/x[2]), x[3]-1)) // the nearest of the n
		return math.Abs(x[0] - x[1] - k*x[2])
	}, at, working.Stated("x_0", "mm", r.FirstMm), working.Stated("s_r", "mm", r.SpacingMm), working.Stated("n_r", "", r.Count))
}

// timbersRun is the direction of the timbers: up the slope, unless stated otherwise.
func (s *slope) timbersRun() working.Text {
	if d := s.doc.Rafters.Direction; d.Stated() {
		return working.StatedText(d)
	}
	return working.KnownText("up_slope", s.doc.Rafters.Direction.At())
}

// acrossTimber is where a fixing stands square to the timbers, which run up the slope
// unless stated otherwise.
func (s *slope) acrossTimber(doc *schema.Fixing) working.Number {
	if s.doc.Rafters.Direction.Is("across_slope") {
		return working.Stated("x", "mm", doc.YMm)
	}
	return working.Stated("x", "mm", doc.XMm)
}

// lineBelow is the timber below a fixing where the timbers are stated one by
// one.
func (s *slope) lineBelow(doc *schema.Fixing) *schema.RafterLine {
	at := s.acrossTimber(doc)
	var best *schema.RafterLine
	for i := range s.doc.Rafters.Lines {
		l := &s.doc.Rafters.Lines[i]
		if best == nil || math.Abs(l.AtMm.Value-at.Value()) < math.Abs(best.AtMm.Value-at.Value()) {
			best = l
		}
	}
	return best
}

// nogginOf is the noggin that a fixing in one names; a blank one for any other.
func (s *slope) nogginOf(doc *schema.Fixing) *schema.Noggin {
	for i := range s.doc.Noggins {
		if n := &s.doc.Noggins[i]; doc.Member.Is("noggin") && doc.Noggin.Is(n.ID.Value) {
			return n
		}
	}
	return schema.Blank[schema.Noggin](doc.Noggin.At())
}

// offNoggin is how far a fixing is from the middle line of its noggin, beyond its
// ends counted too. A noggin lies square to the timbers.
func (s *slope) offNoggin(doc *schema.Fixing, noggin *schema.Noggin) working.Number {
	if !noggin.Stated() {
		return working.Unknown("d_t", "mm", doc.Noggin.At())
	}
	f := working.Lookup{Symbol: "d_t", Unit: "mm", Text: "distance to the middle line of the noggin", Source: working.ByDefinition}
	across := s.doc.Rafters.Direction.Is("across_slope")
	return f.Of(func(x ...float64) float64 {
		along, square := math.Abs(x[0]-x[2]), math.Abs(x[1]-x[3])
		if across {
			along, square = square, along
		}
		return math.Max(square, along-x[4]/2)
	}, working.Stated("x", "mm", doc.XMm), working.Stated("y", "mm", doc.YMm),
		working.Stated("x_n", "mm", noggin.XMm), working.Stated("y_n", "mm", noggin.YMm), working.Stated("l_n", "mm", noggin.LengthMm))
}
