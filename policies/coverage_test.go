package policies_test

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"

	"sunclause/engine/catalogue"
	"sunclause/engine/ruleset"
	"sunclause/policies"
)

var update = flag.Bool("update", false, "write docs/coverage-gb.md anew")

// item is one entry of the trade's list of what to look at, and what becomes of
// it: requirements that judge it, facts that answer it, or why neither can.
type item struct {
	Item     string   `yaml:"item"`
	Says     string   `yaml:"says"`
	JudgedBy []string `yaml:"judged_by"`
	Facts    []string `yaml:"facts"`
	Reason   string   `yaml:"reason"`
}

// chapter is a run of items with one letter, as many as the list has.
type chapter struct {
	letter, title, file string
	items               int
}

var chapters = []chapter{
	{"V", "Voltage of the array and window of the inverter", "pvstring", 19},
	{"C", "Current, string fuses, reverse current", "pvstring", 18},
	{"D", "DC cable and connectors", "cable", 18},
	{"I", "DC isolators", "isolator", 15},
	{"S", "Surge protection", "surge", 18},
	{"E", "Earthing and bonding", "earthing", 19},
	{"A", "AC circuit", "accircuit", 20},
	{"L", "Labels and notices", "label", 28},
	{"P", "Batteries", "storage", 10},
	{"T", "Tests before going into service", "commissioning", 25},
	{"H", "Papers and handover", "handover", 26},
	{"N", "Network operator", "handover", 16},
	{"B", "Building regulations and planning", "handover", 5},
	{"RF", "The roof: loads, fixings, places, covering", "roof", 56},
}

// absent are the numbers that a list leaves out, from the first to the last.
var absent = map[string][2]int{"H": {14, 19}}

// TestCoveragePage keeps docs/coverage-gb.md true: every item of the list is
// there once, in order, and what it names exists.
func TestCoveragePage(t *testing.T) {
	var b strings.Builder
	b.WriteString("<!-- Written by go test ./policies -update from policies/gb/coverage. Do not edit. -->\n\n" +
		"# What the set for Great Britain covers\n\n" +
		"Our working list of what BS 7671, the IEC standards behind it and the guides of the trade ask of a rooftop installation,\n" +
		"item by item: which requirements judge it, which facts answer it, or why a document cannot show it. The numbers are ours.\n" +
		"Each requirement is in [rules-gb.md](rules-gb.md), [rules-iec.md](rules-iec.md) or [rules-house-example.md](rules-house-example.md) with its clause.\n")
	known := knownRequirements(t)
	facts := knownFacts()
	for _, c := range chapters {
		items := c.read(t)
		fmt.Fprintf(&b, "\n## %s: %s\n\n| no. | what is asked | judged by, or why not |\n|---|---|---|\n", c.letter, c.title)
		for _, i := range items {
			i.check(t, known, facts)
			fmt.Fprintf(&b, "| %s | %s | %s |\n", i.Item, i.Says, i.answer())
		}
	}
	const page = "../docs/coverage-gb.md"
	if *update {
		if err := os.WriteFile(page, []byte(b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if got, _ := os.ReadFile(page); !bytes.Equal(got, []byte(b.String())) {
		t.Errorf("%s is not what policies/gb/coverage says; run go test ./policies -run TestCoveragePage -update", page)
	}
}

// read takes the items of a chapter and holds them to be all there, in order.
func (c chapter) read(t *testing.T) []item {
	raw, err := os.ReadFile("gb/coverage/" + c.file + ".yaml")
	if err != nil {
		t.Fatal(err)
	}
	d := yaml.NewDecoder(bytes.NewReader(raw))
	d.KnownFields(true)
	var all, own []item
	if err := d.Decode(&all); err != nil {
		t.Fatal(c.file, err)
	}
	for _, i := range all {
		if strings.HasPrefix(i.Item, c.letter+"-") {
			own = append(own, i)
		}
	}
	for n := range max(len(own), c.items) {
		number := n + 1
		if gap, ok := absent[c.letter]; ok && number >= gap[0] {
			number += gap[1] - gap[0] + 1
		}
		want := c.letter + "-" + fmt.Sprintf("%02d", number)
		if n >= len(own) || n >= c.items || own[n].Item != want {
			t.Errorf("%s.yaml: item %d is not %s of %s", c.file, n+1, want, c.letter+"-"+strconv.Itoa(c.items))
			break
		}
	}
	return own
}

var factName = regexp.MustCompile(`^[a-z_]+\.[a-z0-9_]+$`)

func (i item) check(t *testing.T, requirements, facts map[string]bool) {
	if i.Says == "" || len(i.JudgedBy) == 0 && len(i.Facts) == 0 && i.Reason == "" {
		t.Errorf("%s says nothing of what becomes of it", i.Item)
	}
	for _, id := range i.JudgedBy {
		if !requirements[id] {
			t.Errorf("%s: there is no requirement %s", i.Item, id)
		}
	}
	for _, f := range i.Facts {
		if !facts[f] || !factName.MatchString(f) {
			t.Errorf("%s: there is no fact %s", i.Item, f)
		}
	}
}

// answer is what stands in the last column.
func (i item) answer() string {
	var words []string
	for _, id := range i.JudgedBy {
		words = append(words, "`"+id+"`")
	}
	if len(i.Facts) > 0 {
		words = append(words, "facts `"+strings.Join(i.Facts, "`, `")+"`")
	}
	answer := strings.Join(words, ", ")
	switch {
	case i.Reason == "":
		return answer
	case answer == "":
		return "*not judged:* " + i.Reason
	case len(i.JudgedBy) == 0:
		return "*not judged:* " + i.Reason + "; " + answer
	}
	return answer + "; " + i.Reason
}

func knownRequirements(t *testing.T) map[string]bool {
	known := map[string]bool{}
	for _, name := range ruleset.Embedded(policies.FS) {
		for _, q := range load(t, name).Requirements {
			known[q.ID] = true
		}
	}
	return known
}

func knownFacts() map[string]bool {
	known := map[string]bool{}
	for _, s := range catalogue.Subjects() {
		for _, f := range s.Facts {
			known[s.Name+"."+f.Name] = true
		}
	}
	return known
}
