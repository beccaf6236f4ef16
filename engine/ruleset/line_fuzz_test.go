package ruleset

import (
	"strings"
	"testing"

	"sunclause/engine/catalogue"
	"sunclause/facts/book"
	"sunclause/schema"
)

// FuzzLine makes sure that any text is read or refused, and that what is read can be
// written and read again as the same.
func FuzzLine(f *testing.F) {
	for _, line := range []string{
		"fuse_fitted", "not fuse_fitted", "voc_max_v at_most 600", "voc_max_v at_most parameters.most_v", "technology one_of 'a b' c", "technology differs ''",
		"installation.design_date since 2026-01-31", "voc_max_v at_most most_v times 2", "voc_max_v below 0.9 times steps.number where word equals technology and step at_least isc_max_a",
		"not", "times", "a where", "voc_max_v at_most 1 times", "'", `technology equals "it's"`,
	} {
		f.Add(line)
	}
	set := &RuleSet{Book: book.Book{
		Parameters: map[string]book.Parameter{"most_v": {Name: "most_v", Number: 600}, "made_of": {Name: "made_of", Text: "x", IsText: true}},
		Tables:     map[string]*book.Table{"steps": {Name: "steps", Columns: []book.Column{{Name: "word"}, {Name: "step"}, {Name: "number"}}}},
	}}
	of, _ := catalogue.Of("strings")
	f.Fuzz(func(t *testing.T, text string) {
		p := cardProblems{set: set, src: schema.Placed("x.yaml", text, 1)}
		c, ok := p.line(of, "", text)
		if ok != (len(p.found) == 0) {
			t.Fatalf("%q: %t, %v", text, ok, p.found)
		}
		if !ok || strings.ContainsAny(text, "'\"") && strings.Contains(c.String(), `"`) {
			return // a word with both quotes in it can be read and not be written
		}
		again, ok := p.line(of, "", c.String())
		if !ok || again.String() != c.String() {
			t.Fatalf("%q is %q, and that is %q: %v", text, c, again, p.found)
		}
	})
}
