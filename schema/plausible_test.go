package schema

import (
	"encoding/json"
	"os"
	"slices"
	"strings"
	"testing"
)

// argued are the numbers without a range, and why.
var argued = map[string]string{
	"departure.value": "it says again what another member states, and that member has a range",
}

// TestEveryNumberIsPlausible makes sure that each number of the document has a
// range in which it is believed, unless it is one of a closed list, which is
// narrower than any range; and that the description says the range.
func TestEveryNumberIsPlausible(t *testing.T) {
	n := 0
	for _, s := range everyShape() {
		if s.members == nil {
			continue
		}
		file, name, _ := strings.Cut(s.defined, "#/$defs/")
		for _, m := range s.members {
			if m.kind != isNumber || m.words != nil {
				continue
			}
			n++
			p := m.plausible
			if argued[name+"."+m.name] != "" {
				continue
			}
			if p == nil {
				t.Errorf("%s: %s.%s has no x-plausible", file, name, m.name)
				continue
			}
			for _, narrower := range append(p.where, plausibleWhere{"all", nil, *p}) {
				q := narrower.plausible
				if q.from > q.to || q.from < m.least || q.to > m.greatest || q.from < p.from && narrower.member == "country" || slices.ContainsFunc(q.usual, func(v float64) bool { return v < q.from || v > q.to }) {
					t.Errorf("%s: %s.%s: %v is no part of what is allowed", file, name, m.name, q)
				}
			}
			description := objects(t)[name].props[m.name].(map[string]any)["description"].(string)
			if _, says, _ := strings.Cut(description, plausibleWords); says != p.words() {
				t.Errorf("%s: %s.%s: the description ends with %q; it has to with %q", file, name, m.name, says, p.words())
			}
		}
	}
	if n < 480 {
		t.Errorf("only %d numbers", n)
	}
}

// words are what a description says of the values that are believed.
func (p *plausible) words() string {
	text := p.String()
	for _, w := range p.where {
		text += "; " + strings.Join(w.words, ", ") + ": " + w.plausible.String()
	}
	return text
}

// TestUnlikely looks at values at the ends of their ranges, at those that are
// narrower by technology and by country, and at steps.
func TestUnlikely(t *testing.T) {
	raw, err := os.ReadFile("../testdata/gb-island-cottage/installation.json")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		path  []any // members and numbers of items
		value any
		name  string // "" where it is believed
		says  string
	}{
		{[]any{"site", "temp_min_c"}, -28, "", ""},
		{[]any{"site", "temp_min_c"}, -28.1, "site.temp_min_c", "from -28 to -3"},
		{[]any{"site", "altitude_m"}, 0, "", ""},
		{[]any{"site", "altitude_m"}, 601, "site.altitude_m", "from -5 to 600, or 0"},
		{[]any{"datasheets", "modules", "mod440", "voc_v"}, 95, "", ""},
		{[]any{"datasheets", "modules", "mod440", "voc_v"}, 96, "datasheets.modules.mod440.voc_v", "from 15 to 95"},
		{[]any{"datasheets", "modules", "mod440", "system_voltage_max_v"}, 1100, "datasheets.modules.mod440.system_voltage_max_v", "one of 600, 1000, 1500"},
		{[]any{"datasheets", "modules", "mod440", "design_load_push_pa"}, 5400, "datasheets.modules.mod440.design_load_push_pa", "from 1600 to 5399"},
		{[]any{"ac", "supply", "frequency_hz"}, 5, "ac.supply.frequency_hz", "50"},
		{[]any{"roof", "planes", 0, "modules", 0, "x_mm"}, 0.9, "roof.planes.P-SE.modules.SE1.x_mm", "from -2000 to 200000, or 0, but not nearer to it than 10"},
		{[]any{"roof", "planes", 0, "modules", 0, "x_mm"}, 0, "", ""},
		{[]any{"project", "country"}, "NO", "", ""},
	} {
		var doc any
		if err := json.Unmarshal(raw, &doc); err != nil {
			t.Fatal(err)
		}
		at := doc
		for _, step := range c.path[:len(c.path)-1] {
			switch step := step.(type) {
			case string:
				at = at.(map[string]any)[step]
			case int:
				at = at.([]any)[step]
			}
		}
		at.(map[string]any)[c.path[len(c.path)-1].(string)] = c.value
		text, err := json.Marshal(doc)
		if err != nil {
			t.Fatal(err)
		}
		d, err := Decode("installation.json", text)
		if err != nil {
			t.Fatal(err)
		}
		switch found := d.Unlikely(); {
		case c.name == "" && len(found) > 0, c.name != "" && len(found) != 1:
			t.Errorf("%v = %v: %+v", c.path, c.value, found)
		case c.name != "" && (found[0].Name != c.name || found[0].Plausible != c.says || found[0].Words == "" || found[0].Ground == ""):
			t.Errorf("%v = %v: %+v", c.path, c.value, found[0])
		}
	}
}
