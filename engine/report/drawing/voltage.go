package drawing

import (
	"cmp"
	"fmt"
	"html/template"
	"math"
	"slices"

	"sunclause/engine/judge"
	"sunclause/facts"
	"sunclause/facts/working"
)

// voltageDrawings show for each tracking input how the voltages of its strings
// run with the temperature of the cells, against what the input takes. Inputs
// that come out alike share a picture.
func voltageDrawings(r *judge.Result) []Drawing {
	var inputs []*inputVoltages
	index := map[string]*inputVoltages{}
	for i := range r.Facts.Strings {
		s := &r.Facts.Strings[i]
		if !drawable(s) {
			continue
		}
		in := index[s.Mppt.Value()]
		if in == nil {
			in = &inputVoltages{names: []string{s.Mppt.Value()}, window: windowOf(s)}
			index[s.Mppt.Value()] = in
			inputs = append(inputs, in)
		}
		in.add(s)
	}
	slices.SortStableFunc(inputs, func(a, b *inputVoltages) int { return naturally(a.names[0], b.names[0]) })
	var all []Drawing
	for _, in := range alikeOnce(inputs) {
		all = append(all, Drawing{Name: "voltage-" + in.names[0], Title: "Voltage over cell temperature", Words: in.words(), SVG: in.draw()})
	}
	return all
}

// drawable reports whether all is known that the picture shows.
func drawable(s *facts.String) bool {
	for _, n := range []working.Number{s.TempMinC, s.CellTempMaxC, s.VocCoefficientV, s.VocStcV, s.VocHotV, s.VmpColdV, s.VmpStcV, s.VmpHotV, s.InverterDcMaxV, s.MpptMinV, s.MpptMaxV, s.VocMaxV} {
		if !n.Known() {
			return false
		}
	}
	return s.Mppt.Known() && s.CellTempMaxC.Value() > s.TempMinC.Value()
}

// inputVoltages are what one picture is drawn from.
type inputVoltages struct {
	names, strings []string
	window         window
	kinds          []stringVoltages // strings alike stand once, the highest first
}

// window is what an input takes, in V.
type window struct{ dcMax, mpMin, mpMax float64 }

func windowOf(s *facts.String) window {
	return window{s.InverterDcMaxV.Value(), s.MpptMinV.Value(), s.MpptMaxV.Value()}
}

// stringVoltages are the voltages of a string at its coldest and hottest cells.
type stringVoltages struct {
	cold, hot float64    // °C
	oc, mp    [2]float64 // V
	highest   float64    // V, as the rule set works it out
}

func voltagesOf(s *facts.String) stringVoltages {
	return stringVoltages{
		cold: s.TempMinC.Value(), hot: s.CellTempMaxC.Value(), highest: s.VocMaxV.Value(),
		oc: [2]float64{s.VocCoefficientV.Value(), s.VocHotV.Value()}, mp: [2]float64{s.VmpColdV.Value(), s.VmpHotV.Value()},
	}
}

func (in *inputVoltages) add(s *facts.String) {
	in.strings = append(in.strings, s.ID)
	if v := voltagesOf(s); !slices.Contains(in.kinds, v) {
		in.kinds = append(in.kinds, v)
		slices.SortStableFunc(in.kinds, func(a, b stringVoltages) int { return cmp.Compare(b.highest, a.highest) })
	}
}

// alikeOnce puts inputs that come out alike together.
func alikeOnce(inputs []*inputVoltages) []*inputVoltages {
	var all []*inputVoltages
	for _, in := range inputs {
		i := slices.IndexFunc(all, func(a *inputVoltages) bool { return a.window == in.window && slices.Equal(a.kinds, in.kinds) })
		if i < 0 {
			all = append(all, in)
			continue
		}
		all[i].names = append(all[i].names, in.names...)
		all[i].strings = append(all[i].strings, in.strings...)
	}
	return all
}

func (in *inputVoltages) words() string {
	return fmt.Sprintf("at %s %s: %s %s. The dot at the coldest is the highest voltage that the rule set reckons with; the one at the hottest the lowest at maximum power.",
		judge.Plural(len(in.names), "input"), judge.Some(in.names), judge.Plural(len(in.strings), "string"), judge.Some(in.strings))
}

// plot is the frame of the picture: margins, and how values become places.
type plot struct {
	svg
	left, top, right, bottom float64
	t0, t1, u1               float64
}

func (p *plot) x(t float64) float64 {
	return p.left + (t-p.t0)/(p.t1-p.t0)*(p.width-p.left-p.right)
}

func (p *plot) y(u float64) float64 {
	return p.height - p.bottom - u/p.u1*(p.height-p.top-p.bottom)
}

func (in *inputVoltages) draw() template.HTML {
	p := &plot{svg: svg{width: 662, height: 300}, left: 52, top: 14, right: 172, bottom: 40}
	first, last := in.kinds[0], in.kinds[len(in.kinds)-1]
	p.t0, p.t1, p.u1 = first.cold, first.hot, max(in.window.dcMax, first.highest, in.window.mpMax)
	for _, v := range in.kinds {
		p.t0, p.t1 = min(p.t0, v.cold), max(p.t1, v.hot)
	}
	p.t0, p.t1, p.u1 = 10*math.Floor(p.t0/10), 10*math.Ceil(p.t1/10), 1.08*p.u1
	p.rect("window", p.left, p.y(in.window.mpMax), p.width-p.left-p.right, p.y(in.window.mpMin)-p.y(in.window.mpMax))
	p.axes()
	p.levels(in.window)
	for _, v := range in.kinds {
		p.line("oc", p.x(v.cold), p.y(v.oc[0]), p.x(v.hot), p.y(v.oc[1]))
		p.line("mp", p.x(v.cold), p.y(v.mp[0]), p.x(v.hot), p.y(v.mp[1]))
		p.circle("mark", p.x(v.cold), p.y(v.highest), 4)
		p.circle("mark", p.x(v.hot), p.y(v.mp[1]), 4)
	}
	p.beside(first, first.oc, "open circuit", -7)
	p.beside(last, last.mp, "maximum power", 15)
	p.text("small", p.x(first.cold)+8, p.y(first.highest)-5, "start", fmt.Sprintf("highest %.1f V", first.highest), 0)
	return p.done("plot", "Voltages over the temperature of the cells")
}

func (p *plot) axes() {
	p.line("axis", p.left, p.top, p.left, p.height-p.bottom)
	p.line("axis", p.left, p.height-p.bottom, p.width-p.right, p.height-p.bottom)
	for t := p.t0; t <= p.t1; t += 10 {
		p.line("axis", p.x(t), p.height-p.bottom, p.x(t), p.height-p.bottom+4)
		p.text("small", p.x(t), p.height-p.bottom+16, "middle", working.Plain(t), 0)
	}
	for u := 0.0; u <= p.u1; u += 100 * math.Ceil(p.u1/700) {
		p.line("axis", p.left-4, p.y(u), p.left, p.y(u))
		p.text("small", p.left-8, p.y(u)+4, "end", working.Plain(u), 0)
	}
	p.text("small", (p.left+p.width-p.right)/2, p.height-6, "middle", "cell temperature in °C", 0)
	p.text("small", 4, p.top, "start", "V", 0)
}

// leastStep keeps the words of two levels from lying on each other.
const leastStep = 14

// levels draws what the input takes across the picture, from the highest down.
func (p *plot) levels(w window) {
	type level struct {
		class, words string
		u            float64
	}
	all := []level{{"limit", "inverter maximum", w.dcMax}, {"edge", "tracking up to", w.mpMax}, {"edge", "tracking from", w.mpMin}}
	slices.SortStableFunc(all, func(a, b level) int { return cmp.Compare(b.u, a.u) })
	words := p.top
	for _, l := range all {
		p.line(l.class, p.left, p.y(l.u), p.width-p.right, p.y(l.u))
		words = max(words+leastStep, p.y(l.u)+4)
		p.text("small", p.width-p.right+6, words, "start", fmt.Sprintf("%s %s V", l.words, working.Plain(l.u)), 0)
	}
}

// beside writes words at the middle of a voltage's line.
func (p *plot) beside(v stringVoltages, u [2]float64, words string, below float64) {
	p.text("small", p.x((v.cold+v.hot)/2), p.y((u[0]+u[1])/2)+below, "middle", words, 0)
}
