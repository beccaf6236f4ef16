package slips

import (
	"maps"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"
)

// number notes the slips of a figure.
func (g *generator) number(v float64, n *node, at place) {
	if len(n.Enum) > 0 {
		g.words(v, n, at)
		return
	}
	for _, s := range []struct {
		class  string
		factor float64
	}{{tenTimes, 10}, {tenth, 0.1}, {thousandTimes, 1000}, {thousandth, 0.001}, {sign, -1}} {
		to := exact(v * s.factor)
		if n.Type != "integer" || to == math.Trunc(to) { // a part of a whole number is no slip: it cannot be written
			g.change(s.class, at, v, to)
		}
	}
	if unit := unitOf(at.name()); isPosition(at.name()) {
		g.change(moved, at, v, exact(v+10/millimetres[unit]))
		g.change(movedFar, at, v, exact(v+g.moduleWidth()/millimetres[unit]))
	}
}

// exact rounds to twelve digits, so that a tenth of 3 is 0.3.
func exact(v float64) float64 {
	rounded, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 12, 64), 64) // what was written just now
	return rounded
}

// unitOf is the unit in the name of a member: v of voc_v, pct_per_k of voc_coeff_pct_per_k.
func unitOf(name string) string {
	tokens := strings.Split(name, "_")
	from := len(tokens) - 1
	if per := slices.Index(tokens, "per"); per > 0 {
		from = per - 1
	}
	if from == 0 {
		return ""
	}
	return strings.Join(tokens[from:], "_")
}

var millimetres = map[string]float64{"mm": 1, "m": 1000}

// isPosition reports whether a member says where something is: x_mm, from_y_mm, position_m.
func isPosition(name string) bool {
	tokens := strings.Split(name, "_")
	is := func(t string) bool { return t == "x" || t == "y" || t == "position" || t == "corner" }
	return millimetres[unitOf(name)] > 0 && slices.ContainsFunc(tokens, is)
}

// moduleWidth is that of the first module sheet, or of a usual module.
func (g *generator) moduleWidth() float64 {
	sheets, _ := g.document["datasheets"].(map[string]any)
	modules, _ := sheets["modules"].(map[string]any)
	for _, m := range modules {
		if width, ok := m.(map[string]any)["width_mm"].(float64); ok {
			return width
		}
	}
	return 1134
}

// words notes the other words of a list of words.
func (g *generator) words(v any, n *node, at place) {
	for _, other := range n.Enum {
		g.change(word, at, v, other)
	}
}

// Forms of texts that the schema knows by their patterns alone.
const (
	timeOfDay  = "^([01][0-9]|2[0-3]):[0-5][0-9]$"
	twoLetters = "^[A-Z]{2}$"
)

// text notes the slips of a text, by what the schema says that it is.
func (g *generator) text(v string, n *node, at place) {
	switch {
	case len(n.Enum) > 0:
		g.words(v, n, at)
	case n.RefersTo != "":
		g.reference(v, at)
	case n.form == "date":
		g.date(v, at)
	case n.Pattern == timeOfDay:
		g.time(v, at)
	case n.form == "ip":
		g.change(word, at, v, otherOf(v, "IP20", "IP65"))
	case n.Pattern == twoLetters:
		g.change(word, at, v, otherOf(v, "FR", "GB"))
	case n.form == "text":
		g.change(blank, at, v, "")
		if at.shape == "/labels/[]/text" {
			g.figures(v, at)
		}
	}
}

func otherOf(v, one, other string) string {
	if v == one {
		return other
	}
	return one
}

var figure = regexp.MustCompile(`\d+(\.\d+)?`)

// figures notes that a figure in the words of a label is another one.
func (g *generator) figures(v string, at place) {
	for _, i := range figure.FindAllStringIndex(v, -1) {
		n, _ := strconv.ParseFloat(v[i[0]:i[1]], 64) // the pattern is that of a number
		for _, factor := range []float64{0.1, 10, 0.7} {
			to := strconv.FormatFloat(exact(n*factor), 'f', -1, 64)
			g.change(printed, at, v, v[:i[0]]+to+v[i[1]:])
		}
	}
}

func (g *generator) date(v string, at place) {
	t, err := time.Parse(time.DateOnly, v)
	if err != nil {
		return // the document has to pass; this one would not
	}
	for _, sense := range []int{-1, 1} {
		for _, s := range []struct {
			class       string
			years, days int
		}{{day, 0, 1}, {year, 1, 0}, {century, 100, 0}} {
			g.change(s.class, at, v, t.AddDate(sense*s.years, 0, sense*s.days).Format(time.DateOnly))
		}
	}
}

func (g *generator) time(v string, at place) {
	t, err := time.Parse("15:04", v)
	if err != nil {
		return
	}
	for _, by := range []time.Duration{-time.Hour, time.Hour, 12 * time.Hour} {
		g.change(hour, at, v, t.Add(by).Format("15:04"))
	}
}

// pairs notes that two members of an object stand for each other: x and y, dates,
// and values of a sheet that have one unit.
func (g *generator) pairs(v map[string]any, n *node, at place) {
	names := slices.Sorted(maps.Keys(v))
	for i, a := range names {
		for _, b := range names[i+1:] {
			if class := pairOf(n, at, a, b); class != "" && v[a] != v[b] {
				pair := place{at.path, at.shape + "/" + a + "+" + b}
				g.add(class, pair, "each for the other", set(at.member(a, a), v[b]), set(at.member(b, b), v[a]))
			}
		}
	}
}

// pairOf is the class of a slip that puts each of two members in the place of the
// other, "" where they are nothing alike.
func pairOf(n *node, at place, a, b string) string {
	of, errA := n.below(a)
	other, errB := n.below(b)
	if errA != nil || errB != nil || n.Properties[a] == nil {
		return ""
	}
	number := func(n *node) bool { return (n.Type == "number" || n.Type == "integer") && len(n.Enum) == 0 }
	switch {
	case isPosition(a) && strings.Replace("_"+a, "_x_", "_y_", 1) == "_"+b:
		return turned
	case of.form == "date" && other.form == "date":
		return dates
	case len(at.path) > 1 && at.path[0] == "datasheets" && number(of) && number(other) && unitOf(a) != "" && unitOf(a) == unitOf(b):
		return swapped
	}
	return ""
}
