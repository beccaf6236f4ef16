package pvstring

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are the facts of this room. A list is nil when the document does not
// state the parts it is about.
type Facts struct {
	Sheets    []Sheet
	Strings   []String
	Mppts     []Mppt
	Inverters []Inverter
	Arrays    []Array

	// Untraced names what is missing when the input of some string could not be
	// found. Then nothing can be said of what any input, isolator or run carries.
	Untraced []working.Gap
}

// Inverter holds the facts of one inverter's DC side as a whole.
type Inverter struct {
	working.Subject

	Separation  working.Text   `json:"separation" words:"separation of the DC side from the AC side"`
	Strings     working.Number `json:"strings" words:"strings that feed it"`
	DcPowerW    working.Number `json:"dc_power_w" words:"rated power of the modules that feed it"`
	DcPowerMaxW working.Number `json:"dc_power_max_w" words:"greatest PV power the maker allows"`
	AcPowerW    working.Number `json:"ac_power_rated_w" words:"rated AC power"`
	DcAcRatio   working.Number `json:"dc_ac_ratio" words:"rated power of the modules over rated AC power"`
}

var (
	fromParallel   = working.Source{Document: "IEC 62548", Edition: "2016", Clause: "6.5.3", How: working.Read}
	reverseCurrent = working.NewFormula("I_rev", "A", "I_sc,tot − I_sc", fromParallel)
	reverseDesign  = working.NewFormula("I_rev,max", "A", "I_sc,max,tot − I_sc,max", fromParallel)
)

// Derive derives the facts of every string, tracking input and inverter.
func Derive(in *schema.Installation, c *circuit.Circuit, b book.Book) Facts {
	f := Facts{Sheets: working.OfSheets(in.Datasheets.Modules, sheetOf)}
	all := inputsOf(in)
	if in.Strings != nil {
		f.Strings = make([]String, len(in.Strings))
	}
	drawn := planesDrawn(in)
	for i := range in.Strings {
		f.Strings[i] = stringOf(in, &in.Strings[i], drawn, b)
		f.Strings[i].path(c, all)
	}
	fed := f.byInput(in)
	if in.Inverters != nil {
		f.Mppts, f.Inverters = []Mppt{}, []Inverter{}
	}
	dark := c.Daylight(func(int) bool { return true })
	for _, i := range all.list {
		m := mpptOf(i, fed[i.terminal], dark)
		for _, s := range fed[i.terminal] {
			s.neighbours(m)
		}
		if f.Untraced != nil {
			m.untraced(f.Untraced)
		}
		f.Mppts = append(f.Mppts, m)
	}
	f.markParallelUnknown()
	f.Arrays = f.arrays(in, c)
	for _, inv := range in.Inverters {
		f.Inverters = append(f.Inverters, f.inverterOf(inv, fed))
	}
	return f
}

// byInput groups the strings by the input they feed.
func (f *Facts) byInput(in *schema.Installation) map[string][]feeder {
	fed := map[string][]feeder{}
	if f.Strings == nil {
		f.Untraced = []working.Gap{working.Unstated("/strings")}
	}
	for i := range f.Strings {
		s := &f.Strings[i]
		switch missing := s.Mppt.Missing(); {
		case s.Mppt.Known():
			fed[s.Mppt.Value()] = append(fed[s.Mppt.Value()], feeder{s, &in.Strings[i]})
		case !slices.Equal(f.Untraced, missing): // the same is missing for every string
			f.Untraced = append(f.Untraced, missing...)
		}
	}
	return fed
}

// untraced leaves unknown what the input carries and whether it is ever dead, since a
// string that was not traced may be one of its own.
func (m *Mppt) untraced(missing []working.Gap) {
	if m.LiveWithAllOpen.Known() && !m.LiveWithAllOpen.Value() {
		m.LiveWithAllOpen = working.UnknownFlag(missing...)
	}
	m.Strings = working.UnknownList(missing...)
	for _, n := range []*working.Number{&m.StringsParallel, &m.IscStcA, &m.IscMaxA, &m.ImpA, &m.VocMaxV, &m.VocMismatchPct,
		&m.SeriesSpread, &m.ModuleTypes, &m.Planes, &m.AzimuthSpreadDeg, &m.PitchSpreadDeg} {
		*n = working.Unknown(n.Symbol(), n.Unit(), missing...)
	}
}

// neighbours adds what hangs on the other strings of the input: when one string
// is faulted, all others can feed the fault.
func (s *String) neighbours(m Mppt) {
	s.StringsParallel = m.StringsParallel
	s.ReverseA = reverseCurrent.Of(m.IscStcA, s.IscStcA)
	s.ReverseMaxA = reverseDesign.Of(m.IscMaxA, s.IscMaxA.As("I_sc,max"))
}

// markParallelUnknown leaves the facts about neighbours unknown where some string was not
// found to reach an input: it may be a neighbour of any.
func (f *Facts) markParallelUnknown() {
	if f.Untraced == nil {
		return
	}
	for i := range f.Strings {
		s := &f.Strings[i]
		s.StringsParallel = working.Unknown("N_p", "", f.Untraced...)
		s.ReverseA = working.Unknown("I_rev", "A", f.Untraced...)
		s.ReverseMaxA = working.Unknown("I_rev,max", "A", f.Untraced...)
	}
}

func (f *Facts) inverterOf(inv schema.Inverter, fed map[string][]feeder) Inverter {
	sheet := inv.Datasheet.To()
	var own []feeder
	for i := range sheet.MPPTs {
		own = append(own, fed[circuit.Input(inv.ID.Value, i)]...)
	}
	v := Inverter{
		Subject:     working.Subject{ID: inv.ID.Value, At: inv.At(), Name: "inverter " + inv.ID.Value},
		Separation:  working.StatedText(sheet.Separation),
		Strings:     working.Counted("n", len(own), inv.At()),
		DcPowerW:    working.Sum("P_dc", "W", each(own, func(s *String) working.Number { return s.PowerW })...),
		DcPowerMaxW: working.Stated("P_dc,max", "W", sheet.DCPowerMaxW),
		AcPowerW:    working.Stated("P_ac", "W", sheet.ACPowerRatedW),
	}
	if f.Untraced != nil {
		v.Strings = working.Unknown("n", "", f.Untraced...)
		v.DcPowerW = working.Unknown("P_dc", "W", f.Untraced...)
	}
	v.DcAcRatio = working.Ratio("P_dc/P_ac", v.DcPowerW, v.AcPowerW)
	return v
}
