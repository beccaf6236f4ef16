package schema

import (
	"slices"
	"strconv"
	"strings"
)

// A value can be allowed and yet be one at which somebody competent would look
// again: 0.44 W of a module, a roof of 78 degrees. The schemas say for each number
// which values are believed (x-plausible), and on what that rests.

// plausibleWords begin what the description of a number says of them, for those
// who write a document with an editor.
const plausibleWords = "; plausible "

// plausible are the values of a number that nobody has to look at again.
type plausible struct {
	from, to float64
	usual    []float64        // the values in which it comes; any within the span where there are none
	zero     bool             // 0 says that there is none, and is believed
	near     float64          // a value nearer to zero than this, other than 0, is not believed
	where    []plausibleWhere // narrower spans; the first that fits counts
	slips    string           // what a value beyond often is instead
	ground   string           // measured, standard, common practice, memory
	source   string
}

// plausibleWhere are the values for some technologies, as the member beside the
// number says, or for the countries of some jobs.
type plausibleWhere struct {
	member string
	words  []string
	plausible
}

// Unlikely is a number of a document at which somebody has to look again.
type Unlikely struct {
	At        string // JSON pointer
	Name      string // as people say it, parts by their ids: strings.S1.modules_in_series
	Value     string // as it is written
	Words     string // what the schema calls it
	Plausible string // the values that are believed, in words
	Slips     string // what such a value often is instead; "" where nothing is known
	Ground    string // on what that rests: measured, standard, common practice, memory
	Source    string // "" where there is none
}

// Unlikely lists the numbers of an installation that are outside the values
// which the schema calls plausible, in the order of the text.
func (s *Source) Unlikely() []Unlikely {
	if s.root == nil {
		return nil
	}
	w := unlikelyWalk{source: s}
	if country, rest := s.nearest("/project/country"); rest == "" {
		w.country = country.text
	}
	w.walk(&shapeOfInstallation, s.root, "")
	return w.found
}

type unlikelyWalk struct {
	source  *Source
	country string
	found   []Unlikely
}

// walk looks at all numbers below a value. It has passed its shape.
func (w *unlikelyWalk) walk(s *shape, n *node, at string) {
	for i := range n.children {
		c := &n.children[i]
		switch {
		case n.kind == isList:
			w.walk(s.each, c, at+"/"+strconv.Itoa(i))
		case s.each != nil:
			w.walk(s.each, c, at+"/"+escape(c.name))
		default:
			m := s.member(c.name)
			if m == nil {
				continue
			}
			if c.kind == isNumber && m.plausible != nil {
				w.look(m.plausible, n, c, at)
				continue
			}
			if len(c.children) > 0 {
				w.walk(m.shape, c, at+"/"+escape(c.name))
			}
		}
	}
}

// look takes in a number that is not believed. The object is that of the number,
// at a JSON pointer.
func (w *unlikelyWalk) look(p *plausible, object, number *node, at string) {
	v, err := strconv.ParseFloat(number.text, 64)
	p = p.of(object, w.country)
	if err != nil || p.believes(v) {
		return
	}
	at += "/" + escape(number.name)
	w.found = append(w.found, Unlikely{at, w.source.named(at), number.text, Words(at), p.String(), p.slips, p.ground, p.source})
}

// of is what is plausible for an object in a country.
func (p *plausible) of(object *node, country string) *plausible {
	for i := range p.where {
		where := &p.where[i]
		word := country
		if where.member != "country" {
			word = ""
			if m := object.member(where.member); m != nil {
				word = m.text
			}
		}
		if slices.Contains(where.words, word) {
			return &where.plausible
		}
	}
	return p
}

// believes reports whether nobody has to look at a value again.
func (p *plausible) believes(v float64) bool {
	switch {
	case v == 0 && p.zero:
		return true
	case v < p.from || v > p.to, v > -p.near && v < p.near:
		return false
	}
	return len(p.usual) == 0 || slices.Contains(p.usual, v)
}

// String says which values are believed: from 60 to 760.
func (p *plausible) String() string {
	text := "from " + written(p.from) + " to " + written(p.to)
	if len(p.usual) > 0 {
		all := make([]string, len(p.usual))
		for i, v := range p.usual {
			all[i] = written(v)
		}
		text = strings.Join(all, ", ")
		if len(all) > 1 {
			text = "one of " + text
		}
	}
	if p.zero {
		text += ", or 0"
	}
	if p.near > 0 {
		text += ", but not nearer to it than " + written(p.near)
	}
	return text
}

func written(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
