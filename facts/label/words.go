package label

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// What the words of a label print is read and held against what is worked out or
// stated elsewhere: figures with a unit, dates, steps and ids of parts. Words go up
// on the wall as they stand, whatever else the document says.

// AllAgree is what there is to say of words in which nothing is amiss.
const AllAgree = "none"

// figure is a quantity in the words of a label.
type figure struct {
	value   float64 // in the unit of its kind
	kind    string  // V, A, kWh, s, Hz or Hz/s
	current string  // ac or dc where the words say so, else ""
	written string
}

// unitsOf are the units that figures are read in, each with its kind and how many of
// the unit of the kind it is.
var unitsOf = map[string]struct {
	kind string
	of   float64
}{
	"V": {"V", 1}, "kV": {"V", 1000}, "A": {"A", 1}, "mA": {"A", 0.001}, "kA": {"A", 1000}, "Wh": {"kWh", 0.001}, "kWh": {"kWh", 1}, "MWh": {"kWh", 1000},
	"s": {"s", 1}, "sec": {"s", 1}, "second": {"s", 1}, "seconds": {"s", 1}, "min": {"s", 60}, "mins": {"s", 60}, "minute": {"s", 60}, "minutes": {"s", 60}, "Hz": {"Hz", 1}, "Hz/s": {"Hz/s", 1},
}

var (
	figures  = regexp.MustCompile(`(?:^|[^\w.,-])(\d{1,3}(?:,\d{3})+|\d+(?:[.,]\d+)?)\s?(Hz/s|[kmM]?[A-Za-z]+)(?:\s?(a\.?c\.?|d\.?c\.?|A\.?C\.?|D\.?C\.?))?`)
	dates    = regexp.MustCompile(`\b\d{4}-\d{2}(?:-\d{2})?\b`)
	stepNos  = regexp.MustCompile(`(?:^|[.;:] )(\d+) `)
	idsRead  = regexp.MustCompile(`[A-Za-z][\w-]*`)
	unNumber = regexp.MustCompile(`\bUN ?(\d+(?:\.\d+)?)\b`)
	digits   = regexp.MustCompile(`\d+`)
)

// figuresIn reads the figures in some words.
func figuresIn(words string) []figure {
	var all []figure
	for _, m := range figures.FindAllStringSubmatch(words, -1) {
		unit, is := unitsOf[m[2]]
		if !is {
			continue
		}
		number := m[1]
		if strings.Count(number, ",") == 1 && len(number)-strings.Index(number, ",") != 4 {
			number = strings.Replace(number, ",", ".", 1) // a decimal comma
		}
		v, err := strconv.ParseFloat(strings.ReplaceAll(number, ",", ""), 64)
		if err != nil {
			continue
		}
		current := strings.ToLower(strings.ReplaceAll(m[3], ".", ""))
		all = append(all, figure{v * unit.of, unit.kind, current, m[1] + " " + m[2]})
	}
	return all
}

// due is a quantity that a figure may be: one that the document states as printed,
// or one that is worked out for the part.
type due struct {
	of      working.Number
	kind    string
	current string  // ac or dc, "" for what is neither
	times   float64 // by which the quantity is brought to the unit of its kind
	printed bool    // whether the document states it as printed on the label, so that it has to be among the figures
	own     bool    // whether it is one that such a label is about
	free    bool    // whether it is still to be chosen, and may be anything
}

// Span in which a figure agrees with a quantity. What is stated as printed is
// printed so; what is worked out is rounded, and a maximum may be that of the
// equipment instead of that of the strings.
const (
	printedWithin   = 0.005
	derivedLeast    = 0.99
	derivedGreatest = 3
)

// alike reports whether a figure may be the quantity by its unit.
func (d due) alike(f figure) bool {
	return f.kind == d.kind && (f.current == "" || d.current == "" || f.current == d.current)
}

func (d due) fits(f figure) bool {
	if !d.alike(f) || !d.of.Known() {
		return false
	}
	v := d.times * d.of.Value()
	if d.printed || d.current != "dc" {
		return math.Abs(f.value-v) <= printedWithin*math.Abs(v)
	}
	return f.value >= derivedLeast*v && f.value <= derivedGreatest*v
}

// wordsUnlike says what in the words of a label is not what it should be. Of words
// that are not stated nothing is known once they are up; at design they are still to
// be written.
func (j *job) wordsUnlike(f *Label, l *schema.Label) working.Text {
	if !l.Text.Stated() {
		if j.in.Project.Stage.Is("design") {
			return working.KnownText(AllAgree, l.At())
		}
		return working.UnknownText(l.Text.At())
	}
	r := &reading{words: l.Text.Value}
	r.figures(j.dues(f, l))
	r.dates(l)
	r.steps(l)
	r.parts(j, l)
	r.un(l)
	switch {
	case len(r.unlike) > 0:
		return working.KnownText(strings.Join(r.unlike, ", "), l.Text.At())
	case len(r.missing) > 0:
		return working.UnknownText(working.Gaps(r.missing)...)
	}
	return working.KnownText(AllAgree, l.Text.At())
}

// reading is what comes of reading the words of a label.
type reading struct {
	words   string
	unlike  []string
	missing []working.Gap // what would have to be known to tell
}

func (r *reading) lacks(of ...working.Gap) { r.missing = append(r.missing, of...) }

// figures holds each figure to what it may be, and looks for each that is stated as
// printed among those of its kind.
func (r *reading) figures(dues []due) {
	read := figuresIn(r.words)
	var open []due // what is known to be printed, and is not
	for _, d := range dues {
		if d.own && d.of.Known() && slices.ContainsFunc(read, d.alike) && !slices.ContainsFunc(read, d.fits) {
			open = append(open, d)
		}
	}
	for _, f := range read {
		of := only(dues, f)
		speaks := func(d due) bool { return d.own || d.free || d.current != "ac" || f.current == "ac" }
		if !slices.ContainsFunc(of, speaks) || slices.ContainsFunc(of, func(d due) bool { return d.fits(f) }) {
			continue // nothing is known of what it should be, or it is that
		}
		switch wanted := only(open, f); {
		case len(wanted) > 0:
			of = wanted
		case slices.ContainsFunc(of, func(d due) bool { return d.free }):
			continue
		}
		var gaps []working.Gap
		for _, d := range of {
			gaps = append(gaps, d.of.Missing()...)
		}
		if len(gaps) > 0 {
			r.lacks(gaps...)
			continue
		}
		r.unlike = append(r.unlike, f.written+", not "+alternatives(of))
	}
	for _, d := range open {
		if d.printed && len(r.unlike) == 0 {
			r.unlike = append(r.unlike, "no "+d.of.Written())
		}
	}
}

// only takes those of some quantities that a figure may be by its unit.
func only(dues []due, f figure) []due {
	var of []due
	for _, d := range dues {
		if d.alike(f) {
			of = append(of, d)
		}
	}
	return of
}

// alternatives names the first few of some quantities.
func alternatives(of []due) string {
	var all []string
	for _, d := range of {
		if w := d.of.Written(); !slices.Contains(all, w) {
			all = append(all, w)
		}
	}
	if len(all) > 3 {
		all = append(all[:3], "…")
	}
	return strings.Join(all, " or ")
}

// dues are the quantities that figures on a label may be.
func (j *job) dues(f *Label, l *schema.Label) []due {
	var all []due
	printed := func(of working.Number, kind, current string, times float64) {
		all = append(all, due{of: of, kind: kind, current: current, times: times, printed: true, own: true})
	}
	either := func(printsIt bool, n schema.Number, of working.Number, kind, current string, times float64, derived working.Number) {
		switch {
		case printsIt || n.Stated():
			printed(of, kind, current, times)
		case derived.Known() || len(derived.Missing()) > 0:
			all = append(all, due{of: derived, kind: kind, current: current, times: times})
		}
	}
	if l.ACVoltageV.Stated() {
		printed(working.Stated("U_lab", "V", l.ACVoltageV), "V", "ac", 1)
	}
	if l.ACCurrentA.Stated() {
		printed(working.Stated("I_lab", "A", l.ACCurrentA), "A", "ac", 1)
	}
	if l.FaultCurrentKa.Stated() {
		printed(working.Stated("I_k", "kA", l.FaultCurrentKa), "A", "ac", 1000)
	}
	if l.Legend.Is("protection_settings") {
		return append(all, j.settings()...)
	}
	supply, behind := j.in.AC.Supply, j.behind(f.On.Value())
	all = append(all, due{of: working.Stated("U_0", "V", supply.VoltageV), kind: "V", current: "ac", times: 1},
		due{of: working.Stated("U_n", "V", supply.VoltageBetweenLinesV), kind: "V", current: "ac", times: 1})
	values, data := l.Legend.Is("dc_maximum_values"), l.Legend.Is("battery_data")
	either(values, l.VoltageMaxV, f.VoltagePrintedV, "V", "dc", 1, behind.vocMax)
	either(values, l.CurrentMaxA, f.CurrentPrintedA, "A", "dc", 1, behind.iscMax)
	either(l.Legend.Is("capacitor_discharge"), l.DischargeWaitMin, f.DischargeWaitMin, "s", "", 60, f.DischargeMakerMin)
	either(data, l.EnergyKwh, f.EnergyPrintedKwh, "kWh", "", 1, f.EnergyDerivedKwh)
	either(data, l.BatteryVoltageV, f.BatteryPrintedV, "V", "dc", 1, f.BatteryNominalV)
	return all
}

// settings are those of the protection of the interface with the supply, of all
// devices, each value once. What is not stated there is left to be chosen at design.
func (j *job) settings() []due {
	if j.protection == nil {
		j.protection = j.settingsOfAll()
	}
	return j.protection
}

func (j *job) settingsOfAll() []due {
	devices := []*schema.GridSettings{&j.in.AC.InterfaceProtection.Settings}
	for i := range j.in.Inverters {
		devices = append(devices, &j.in.Inverters[i].Settings)
	}
	var all []due
	for _, kind := range kindsOfSettings {
		stated := map[float64]bool{}
		for _, s := range devices {
			for _, n := range settingsOf(s)[kind] {
				if n.Stated() && !stated[n.Value] {
					stated[n.Value] = true
					all = append(all, due{of: working.Stated("x_set", kind, n), kind: kind, times: 1, own: true})
				}
			}
		}
		all = append(all, due{of: working.Unknown("x_set", kind, devices[len(devices)-1].At()), kind: kind, times: 1, free: j.in.Project.Stage.Is("design")})
	}
	return all
}

var kindsOfSettings = []string{"V", "s", "Hz", "Hz/s"}

// settingsOf are the settings of one device, by the unit of their kind.
func settingsOf(s *schema.GridSettings) map[string][]schema.Number {
	return map[string][]schema.Number{
		"V":    {s.UnderVoltage1V, s.UnderVoltage2V, s.OverVoltage1V, s.OverVoltage2V, s.OverVoltageMeanV},
		"s":    {s.UnderVoltage1S, s.UnderVoltage2S, s.OverVoltage1S, s.OverVoltage2S, s.UnderFrequency1S, s.UnderFrequency2S, s.OverFrequency1S, s.OverFrequency2S, s.RocofS, s.ReconnectionS},
		"Hz":   {s.UnderFrequency1Hz, s.UnderFrequency2Hz, s.OverFrequency1Hz, s.OverFrequency2Hz, s.PowerReductionFromHz},
		"Hz/s": {s.RocofHzPerS},
	}
}

// dates looks for the date that is stated as printed among those in the words.
func (r *reading) dates(l *schema.Label) {
	read := dates.FindAllString(r.words, -1)
	switch {
	case len(read) == 0:
	case !l.DatePrinted.Stated():
		if l.Legend.Is("next_inspection") || l.Legend.Is("first_certified") {
			r.lacks(working.Unstated(l.DatePrinted.At()))
		}
	case !slices.ContainsFunc(read, func(d string) bool { return strings.HasPrefix(l.DatePrinted.Value, d) }):
		r.unlike = append(r.unlike, fmt.Sprintf("%s, not %s", strings.Join(read, " and "), l.DatePrinted.Value))
	}
}

// steps holds the numbers of the steps of a procedure to how many there are.
func (r *reading) steps(l *schema.Label) {
	read := stepNos.FindAllStringSubmatch(r.words, -1)
	if !l.Legend.Is("shutdown_procedure") || len(read) == 0 {
		return
	}
	if !l.Steps.Stated() {
		r.lacks(working.Unstated(l.Steps.At()))
		return
	}
	inOrder := len(read) == int(l.Steps.Value)
	for i, m := range read {
		inOrder = inOrder && m[1] == strconv.Itoa(i+1)
	}
	if !inOrder {
		r.unlike = append(r.unlike, fmt.Sprintf("%d numbered steps, not 1 to %d", len(read), int(l.Steps.Value)))
	}
}

// naming are the legends that have to name parts.
var naming = []string{"dual_supply", "multiple_dc_sources", "circuit_diagram", "shutdown_procedure", "inverter_isolate_both", "inverter_location"}

// parts holds the ids in the words to the parts there are, and to those that the
// document states as named.
func (r *reading) parts(j *job, l *schema.Label) {
	named := partsNamed(l)
	var read []string
	for _, word := range idsRead.FindAllString(r.words, -1) {
		_, is := j.places[word]
		switch {
		case is:
			read = append(read, word)
		case strings.ContainsAny(word, "0123456789") && j.numbered[digits.ReplaceAllString(word, "#")]:
			r.unlike = append(r.unlike, word+", which is no part")
		}
	}
	switch {
	case len(read) == 0 || slices.ContainsFunc(read, func(id string) bool { return named[id] }):
	case l.PartsNamed != nil:
		r.unlike = append(r.unlike, strings.Join(slices.Compact(read), " and ")+", not among the parts named")
	case slices.Contains(naming, l.Legend.Value):
		r.lacks(working.Unstated(l.Member("parts_named")))
	}
}

// un holds the UN number of a battery in the words to the one stated.
func (r *reading) un(l *schema.Label) {
	for _, m := range unNumber.FindAllStringSubmatch(r.words, -1) {
		if l.UnNumber.Stated() && strings.TrimPrefix(l.UnNumber.Value, "UN") != m[1] {
			r.unlike = append(r.unlike, fmt.Sprintf("UN%s, not %s", m[1], l.UnNumber.Value))
		}
	}
}
