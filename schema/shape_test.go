package schema

import (
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v5"
	"pgregory.net/rapid"

	"sunclause/schema/examples"
)

// trees are the documents of examples and files that can be read, by name.
func trees(t *testing.T, names []string, patterns ...string) map[string]*Source {
	t.Helper()
	all := map[string]*Source{}
	for _, name := range names {
		all[name], _ = readJSON(name, examples.Text(t, name))
	}
	for _, pattern := range patterns {
		names, _ := filepath.Glob(pattern)
		for _, name := range names {
			raw, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			if s, _ := readJSON(name, raw); s.root != nil {
				all[name] = s
			}
		}
	}
	return all
}

// TestShapesKnowSoundDocuments makes sure that a document which its schema accepts is
// known to be in order without the library, and that no other one is.
func TestShapesKnowSoundDocuments(t *testing.T) {
	library, err := compile(InstallationSchema)
	if err != nil {
		t.Fatal(err)
	}
	sound := 0
	for name, s := range trees(t, examples.Names, "../testdata/broken/*.json", "../facts/testdata/*.json", "../testdata/formats/*.json") {
		accepted, known := library.Validate(s.Root()) == nil, shapeOfInstallation.fits(s.root)
		if accepted != known {
			t.Errorf("%s: the library says %t, the shapes say %t", name, accepted, known)
		}
		if known {
			sound++
		}
	}
	if sound < 8 {
		t.Errorf("only %d documents are sound", sound)
	}
}

// TestShapesNeverSayYesAlone changes sound documents at one place, and makes sure that
// the shapes accept none that the library refuses.
func TestShapesNeverSayYesAlone(t *testing.T) {
	library, err := compile(InstallationSchema)
	if err != nil {
		t.Fatal(err)
	}
	var docs []*node
	for _, s := range trees(t, []string{examples.Battery}, "../facts/testdata/*.json") {
		docs = append(docs, s.root)
	}
	yes, no := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.SampledFrom(docs).Draw(t, "document")
		for range 20 {
			back := change(t, n)
			if shapeOfInstallation.fits(n) {
				yes++
				if err := library.Validate(n.plain()); err != nil {
					t.Errorf("the shapes accept what the library does not: %#v", err)
				}
			} else {
				no++
			}
			back()
		}
	})
	if yes < 40 || no < 100 {
		t.Errorf("%d changed documents were known to be in order, and %d were not", yes, no)
	}
}

// TestClippedTellsTheSame makes sure that the library finds the same wrong with what is
// left of a document when all that is in order is taken away.
func TestClippedTellsTheSame(t *testing.T) {
	library, err := compile(InstallationSchema)
	if err != nil {
		t.Fatal(err)
	}
	var docs []*node
	for _, s := range trees(t, []string{examples.Battery}, "../facts/testdata/*.json", "../testdata/broken/*.json") {
		docs = append(docs, s.root)
	}
	told := func(v any) []string {
		var all []string
		if failure, ok := library.Validate(v).(*jsonschema.ValidationError); ok {
			leaves(failure, func(leaf *jsonschema.ValidationError) {
				all = append(all, leaf.InstanceLocation+" "+leaf.KeywordLocation)
			})
		}
		slices.Sort(all)
		return all
	}
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.SampledFrom(docs).Draw(t, "document")
		for range rapid.IntRange(1, 5).Draw(t, "changes") {
			defer change(t, n)()
		}
		c := clipper{left: maxDoubtful}
		if diff := cmp.Diff(told(n.plain()), told(c.clip(&shapeOfInstallation, n))); diff != "" || c.cut {
			t.Errorf("of the whole (-) and the clipped document (+):\n%s", diff)
		}
	})
}

// change changes a tree at one place below a node, and hands back what undoes it.
func change(t *rapid.T, n *node) func() {
	for len(n.children) > 0 && rapid.IntRange(0, 9).Draw(t, "deeper") > 0 {
		n = &n.children[rapid.IntRange(0, len(n.children)-1).Draw(t, "child")]
	}
	before := *n
	texts := rapid.SampledFrom([]string{"", "a", "INV1", "é", "true", "a.b", "a.b.c.d", "-a", "IP65", "IP4XNW", "2026-03-02", "2026-13-02", "24:00", "14:05", "GB", "design", strings.Repeat("x", 41), strings.Repeat("é", 1001), strings.Repeat("x", 2001)})
	numbers := rapid.SampledFrom([]string{"0", "-0", "1", "-1", "0.5", "1.0", "3", "3.0", "1e2", "1E+9", "1000000000", "1000000000.0000001", "1000000001", "-90.0000000000000000001", "-90", "90", "0.000000000000001", "200", "201", "99999999999999"})
	switch rapid.IntRange(0, 7).Draw(t, "how") {
	case 0:
		*n = node{kind: rapid.SampledFrom([]kind{isNull, isFalse, isTrue, isList, isObject}).Draw(t, "kind"), name: n.name}
	case 1, 2:
		*n = node{kind: isText, name: n.name, text: texts.Draw(t, "text")}
	case 3, 4:
		*n = node{kind: isNumber, name: n.name, text: numbers.Draw(t, "number")}
	case 5:
		if len(n.children) > 0 {
			n.children = slices.Clone(n.children)
			rename(t, n, &n.children[rapid.IntRange(0, len(n.children)-1).Draw(t, "renamed")])
		}
	case 6:
		if len(n.children) > 0 {
			n.children = slices.Delete(slices.Clone(n.children), 0, 1)
		}
	case 7:
		if len(n.children) > 0 {
			one := n.children[rapid.IntRange(0, len(n.children)-1).Draw(t, "twin")]
			rename(t, n, &one)
			n.children = append(slices.Clone(n.children), one)
		}
	}
	return func() { *n = before }
}

// rename gives a member of an object a name that no other member of it has.
func rename(t *rapid.T, n, one *node) {
	if n.kind != isObject {
		return
	}
	for _, name := range rapid.Permutation([]string{"note", "id", "$schema", "a-b", "_", "", "voc_v", "place"}).Draw(t, "names") {
		if n.member(name) == nil {
			one.name = name
			return
		}
	}
}

// TestFormsAreTheirPatterns holds each form of a text against the regular expression of
// the schema, by texts that are nearly of that form.
func TestFormsAreTheirPatterns(t *testing.T) {
	held := 0
	for _, s := range everyShape() {
		if s.pattern == "" {
			continue
		}
		held++
		pattern := regexp.MustCompile(s.pattern)
		rapid.Check(t, func(t *rapid.T) {
			text := rapid.StringMatching(s.pattern).Draw(t, "text")
			for _, text := range []string{text, nearly(t, text), rapid.String().Draw(t, "any text")} {
				if s.form(text) != pattern.MatchString(text) {
					t.Errorf("%q: the form says %t, and the pattern is %s", text, s.form(text), s.pattern)
				}
			}
		})
	}
	if held < 6 {
		t.Errorf("only %d patterns", held)
	}
}

// nearly puts a character into a text, takes one out, or puts one in place of another.
func nearly(t *rapid.T, text string) string {
	from := rapid.IntRange(0, len(text)).Draw(t, "from")
	to := rapid.IntRange(from, min(from+1, len(text))).Draw(t, "to")
	return text[:from] + rapid.SampledFrom([]string{"", "0", "9", "X", "K", "A", "D", "E", "H", "N", "W", "NW", ".", "_", "-", ":", "é", "\n", strings.Repeat("a", 40)}).Draw(t, "put") + text[to:]
}

// everyShape lists the shapes of the document.
func everyShape() []*shape {
	var all []*shape
	var visit func(*shape)
	visit = func(s *shape) {
		if slices.Contains(all, s) {
			return
		}
		all = append(all, s)
		for _, m := range s.members {
			visit(m.shape)
		}
		if s.each != nil {
			visit(s.each)
		}
	}
	visit(&shapeOfInstallation)
	return all
}

// TestShapesSayWhatTheMirrorHas makes sure that an object of the mirror has the members
// of its shape, so that no member that may be stated is passed over.
func TestShapesSayWhatTheMirrorHas(t *testing.T) {
	var compare func(where string, l *layout, s *shape)
	compare = func(where string, l *layout, s *shape) {
		for _, m := range s.members {
			i, ok := l.named[m.name]
			if !ok && m.name != "$schema" {
				t.Errorf("%s: the mirror has no %s", where, m.name)
			} else if ok {
				compare(where+"."+m.name, l.fields[i].layout, m.shape)
			}
		}
		if s.each != nil {
			compare(where+"[]", l.each, s.each)
		}
	}
	compare("the document", layoutOf(reflect.TypeFor[Installation]()), &shapeOfInstallation)
}
