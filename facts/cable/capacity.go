package cable

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Capacity holds the current-carrying capacity of a stretch with its factors.
type Capacity struct {
	Method           working.Text   `json:"method" words:"reference method of installation"`
	Formation        working.Text   `json:"formation" words:"how the conductors lie to each other"`
	TabulatedA       working.Number `json:"capacity_tabulated_a" words:"capacity by the table, before any factor"`
	Table            working.Text   `json:"capacity_table" words:"table of the rule set that the capacity comes from"`
	RatingConductorC working.Number `json:"rating_conductor_c" words:"conductor temperature of that table"`
	ConductorLimitC  working.Number `json:"conductor_limit_c" words:"highest conductor temperature of its cable, for a limited life where the sheet gives one"`
	AmbientC         working.Number `json:"ambient_c" words:"highest ambient temperature as stated, without roof and sun"`
	RiseK            working.Number `json:"ambient_rise_k" words:"what roof and sun add to it"`
	SurroundingsC    working.Number `json:"surroundings_c" words:"temperature around the cable: of the air with roof and sun, or of the ground"`
	AmbientFactor    working.Number `json:"ambient_factor" words:"factor for the temperature around it"`
	Grouped          working.Number `json:"grouped_circuits" words:"circuits side by side that heat each other, lightly loaded ones left out"`
	GroupingFactor   working.Number `json:"grouping_factor" words:"factor for circuits side by side"`
	Insulated        working.Text   `json:"thermal_insulation" words:"thermal insulation around it: none, one_side or surrounded"`
	InsulationFactor working.Number `json:"insulation_factor" words:"factor for thermal insulation all round"`
	SoilFactor       working.Number `json:"soil_factor" words:"factor for the thermal resistivity of the soil"`
	Factors          working.Number `json:"factors" words:"product of all factors"`
	CapacityA        working.Number `json:"capacity_a" words:"current-carrying capacity, all factors applied"`
	ConductorTempC   working.Number `json:"conductor_temp_c" words:"conductor temperature at the design current"`
}

var (
	derating  = working.Source{Document: "IEC 60364-5-52", Edition: "2009", Clause: "523", How: working.Memory}
	heatingUp = working.Source{Document: "IEC 60287-1-1", Clause: "heating goes with the square of the current", How: working.Memory}
)

var (
	airAround       = working.NewFormula("T_s", "°C", "T_a + ΔT_a", working.ByDefinition)
	heatingCircuits = working.NewFormula("n", "", "n_all − n_light", derating)
	conductorHeat   = working.NewFormula("T_con", "°C", "T_s + (T_table − T_s) · (I_b / I_z)²", heatingUp)
)

// capacity looks the stretch up in the tables of the rule set.
func (p *plan) capacity(f *Run, r *schema.Run, s *schema.Segment) Capacity {
	method := working.StatedText(s.Method)
	table := p.book.Pick("cable_capacity_tables", book.Is("kind", f.Kind), book.Is("insulation", f.CableInsulation),
		book.Is("conductor", f.ConductorMetal), book.Equals("loaded", f.Loaded), book.Is("method", method))
	column := p.book.Pick("cable_capacity_columns", book.Is("kind", f.Kind), book.Is("method", method), book.Is("formation", working.StatedText(s.Formation)))
	c := Capacity{
		Method:           method,
		Formation:        working.StatedText(s.Formation),
		Table:            table.Word("table"),
		RatingConductorC: table.Number("conductor_c", "T_table"),
		AmbientC:         working.Stated("T_a", "°C", s.AmbientC),
		Insulated:        working.StatedText(s.ThermalInsulation),
	}
	c.ConductorLimitC = limitOf(r.Cable.To(), f.ConductorMaxC, c.RatingConductorC)
	c.TabulatedA = p.tabulated(f, r, s, table, column)
	c.surroundings(p, s, table, column)
	c.grouping(p, s)
	c.insulation(p, s)
	c.Factors = working.Product("C", "", derating, c.AmbientFactor, c.GroupingFactor, c.InsulationFactor, c.SoilFactor)
	many := working.Stated("n_par", "", r.ConductorsPerPole)
	c.CapacityA = working.Product("I_z", c.TabulatedA.Unit(), derating, c.TabulatedA, c.Factors, many)
	c.ConductorTempC = c.conductorAt(f.DesignCurrentA)
	return c
}

// limitOf is the temperature up to which the conductor may be rated at all. The
// one for a limited life counts only where it is needed, and then has to be
// stated.
func limitOf(s *schema.CableDatasheet, continuous, rating working.Number) working.Number {
	short := working.Stated("T_con,short", "°C", s.ConductorShortTermC)
	if short.Known() || continuous.Known() && rating.Known() && rating.Value() > continuous.Value() {
		return working.Greatest("T_con,limit", "°C", continuous, short)
	}
	return working.Greatest("T_con,limit", "°C", continuous)
}

// tabulated is the capacity in the table of the rule set. Where the table has no
// such size, a rating printed by the maker for the same conditions stands in.
func (p *plan) tabulated(f *Run, r *schema.Run, s *schema.Segment, table, column book.Row) working.Number {
	name, cell := table.Word("table"), column.Word("column")
	if !name.Known() || !cell.Known() {
		return working.Unknown("I_t", "A", slices.Concat(name.Missing(), cell.Missing())...)
	}
	n := p.book.Pick(name.Value(), book.Equals("csa_mm2", f.CsaMm2)).Number(cell.Value(), "I_t")
	if n.Known() || !f.CsaMm2.Known() {
		return n
	}
	for _, rating := range r.Cable.To().Ratings {
		if rating.Method.Is(s.Method.Value) && same(rating.LoadedConductors, f.Loaded) &&
			same(rating.ConductorC, table.Number("conductor_c", "")) && same(rating.AmbientC, table.Number("reference_c", "")) {
			return working.Greatest("I_t", "A", working.Stated("I_maker", "A", rating.CurrentA))
		}
	}
	return n
}

func same(stated schema.Number, n working.Number) bool {
	return stated.Stated() && n.Known() && stated.Value == n.Value()
}

// surroundings takes the temperature around the cable and its factor; in the ground the
// soil as well.
func (c *Capacity) surroundings(p *plan, s *schema.Segment, table, column book.Row) {
	c.RiseK = p.book.Pick("cable_ambient_rises", book.Is("place", working.StatedText(s.Place)), book.Is("in_direct_sun", yesNo(s.InDirectSun))).Number("rise_k", "ΔT_a")
	factors, where, soil := table.Word("air_column"), column.Word("surroundings"), column.Word("soil")
	switch where.Value() {
	case "ground":
		c.SurroundingsC = working.Stated("T_g", "°C", s.GroundC)
		c.AmbientFactor = p.ambientFactor("ambient_ground_factors", factors, c.SurroundingsC)
		c.SoilFactor = p.book.Pick("soil_factors", book.UpTo("at_most_k_m_per_w", working.Stated("ρ_T", "K·m/W", s.SoilResistivityKMPerW))).Number(soil.Value(), "C_s")
	default:
		c.SurroundingsC = airAround.Of(c.AmbientC, c.RiseK)
		c.AmbientFactor = p.ambientFactor(table.Word("air_table").Value(), factors, c.SurroundingsC)
		c.SoilFactor = working.Counted("C_s", 1, s.At())
	}
	if !where.Known() || !factors.Known() {
		c.AmbientFactor = working.Unknown("C_a", "", slices.Concat(where.Missing(), factors.Missing())...)
	}
}

func (p *plan) ambientFactor(table string, column working.Text, around working.Number) working.Number {
	return p.book.Pick(table, book.UpTo("at_most_c", around)).Number(column.Value(), "C_a")
}

func yesNo(f schema.Flag) working.Text {
	switch {
	case !f.Stated():
		return working.UnknownText(f.At())
	case f.Value:
		return working.KnownText("yes", f.At())
	}
	return working.KnownText("no", f.At())
}

// grouping counts the circuits that heat each other and takes their factor. With a
// wide enough gap there is none.
func (c *Capacity) grouping(p *plan, s *schema.Segment) {
	all, light := working.Stated("n_all", "", s.GroupedCircuits), working.Counted("n_light", 0, "")
	if s.GroupedLightlyLoaded.Stated() {
		light = working.Stated("n_light", "", s.GroupedLightlyLoaded)
	}
	c.Grouped = heatingCircuits.Of(all, light)
	if c.Grouped.Known() && c.Grouped.Value() < 1 {
		c.Grouped = working.Counted("n", 1, s.At()) // its own circuit is always one
	}
	free := p.book.Number("group_spacing_free_diameters", "n_D")
	if gap := s.GroupSpacingDiameters; gap.Stated() && free.Known() && gap.Value > free.Value() {
		c.GroupingFactor = working.Counted("C_g", 1, gap.At())
		return
	}
	c.GroupingFactor = p.book.Pick("grouping_factors", book.Is("arrangement", working.StatedText(s.GroupArrangement)),
		book.Is("method", c.Method), book.UpTo("circuits", c.Grouped)).Number("factor", "C_g")
}

// insulation takes the factor for thermal insulation all round. Insulation on one
// side is allowed for by the reference method.
func (c *Capacity) insulation(p *plan, s *schema.Segment) {
	switch {
	case !s.ThermalInsulation.Stated():
		c.InsulationFactor = working.Unknown("C_i", "", s.ThermalInsulation.At())
	case s.ThermalInsulation.Value == "surrounded":
		c.InsulationFactor = p.book.Pick("thermal_insulation_factors", book.UpTo("at_most_mm", working.Stated("l_ins", "mm", s.ThermalInsulationLengthMm))).Number("factor", "C_i")
	default:
		c.InsulationFactor = working.Counted("C_i", 1, s.ThermalInsulation.At())
	}
}

// conductorAt is the temperature that the conductor takes on at a current.
func (c *Capacity) conductorAt(current working.Number) working.Number {
	return conductorHeat.Of(c.SurroundingsC.As("T_s"), c.RatingConductorC, current.As("I_b"), c.CapacityA)
}
