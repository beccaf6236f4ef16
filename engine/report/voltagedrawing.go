package report

import (
	"fmt"
	"html/template"
	"math"

	"sunclause/engine"
	"sunclause/facts"
	"sunclause/facts/working"
)

// voltageDrawings are, for each kind of string on an inverter, how its voltages
// run with the temperature of the cells, against what the input takes.
func voltageDrawings(r *engine.Result) []Drawing {
	var all []Drawing
	seen := map[string]int{}
	for i := range r.Facts.Strings {
		s := &r.Facts.Strings[i]
		if !drawable(s) {
			continue
		}
		v := voltagesOf(s)
		if n, again := seen[v.key()]; again {
			all[n].Words += ", " + s.ID
			continue
		}
		seen[v.key()] = len(all)
		all = append(all, Drawing{Name: "voltage-" + s.ID, Title: "Voltage over cell temperature", Words: "for string " + s.ID, SVG: v.draw()})
	}
	return all
}

// drawable tells whether all is known that the picture shows.
func drawable(s *facts.String) bool {
	for _, n := range []working.Number{s.TempMinC, s.CellTempMaxC, s.VocCoefficientV, s.VocStcV, s.VocHotV, s.VmpColdV, s.VmpStcV, s.VmpHotV, s.InverterDcMaxV, s.MpptMinV, s.MpptMaxV, s.VocMaxV} {
		if !n.Known() {
			return false
		}
	}
	return s.CellTempMaxC.Value() > s.TempMinC.Value()
}

// voltages are what the picture is drawn from.
type voltages struct {
	cold, hot                    float64 // temperatures
	oc, mp                       [2]float64
	highest, dcMax, mpMin, mpMax float64
}

func voltagesOf(s *facts.String) voltages {
	return voltages{
		cold: s.TempMinC.Value(), hot: s.CellTempMaxC.Value(),
		oc: [2]float64{s.VocCoefficientV.Value(), s.VocHotV.Value()}, mp: [2]float64{s.VmpColdV.Value(), s.VmpHotV.Value()},
		highest: s.VocMaxV.Value(), dcMax: s.InverterDcMaxV.Value(), mpMin: s.MpptMinV.Value(), mpMax: s.MpptMaxV.Value(),
	}
}

func (v voltages) key() string { return fmt.Sprint(v) }

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

func (v voltages) draw() template.HTML {
	p := &plot{svg: svg{width: 662, height: 300}, left: 52, top: 14, right: 172, bottom: 40}
	p.t0, p.t1 = 10*math.Floor(v.cold/10), 10*math.Ceil(v.hot/10)
	p.u1 = 1.08 * max(v.dcMax, v.highest, v.mpMax)
	p.rect("window", p.left, p.y(v.mpMax), p.width-p.left-p.right, p.y(v.mpMin)-p.y(v.mpMax))
	p.axes()
	p.level("limit", v.dcMax, fmt.Sprintf("inverter maximum %s V", working.Plain(v.dcMax)))
	p.level("edge", v.mpMax, fmt.Sprintf("tracking up to %s V", working.Plain(v.mpMax)))
	p.level("edge", v.mpMin, fmt.Sprintf("tracking from %s V", working.Plain(v.mpMin)))
	p.curve("oc", v, v.oc, "open circuit", -7)
	p.curve("mp", v, v.mp, "maximum power", 15)
	p.circle("mark", p.x(v.cold), p.y(v.highest), 4)
	p.text("small", p.x(v.cold)+8, p.y(v.highest)-5, "start", fmt.Sprintf("highest %.1f V", v.highest), 0)
	p.circle("mark", p.x(v.hot), p.y(v.mp[1]), 4)
	return p.done("plot", "Voltages of the string over the temperature of its cells")
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

// level draws a limit across the picture.
func (p *plot) level(class string, u float64, words string) {
	p.line(class, p.left, p.y(u), p.width-p.right, p.y(u))
	p.text("small", p.width-p.right+6, p.y(u)+4, "start", words, 0)
}

// curve draws a voltage from the coldest to the hottest cells.
func (p *plot) curve(class string, v voltages, u [2]float64, words string, below float64) {
	p.line(class, p.x(v.cold), p.y(u[0]), p.x(v.hot), p.y(u[1]))
	p.text("small", p.x((v.cold+v.hot)/2), p.y((u[0]+u[1])/2)+below, "middle", words, 0)
}
