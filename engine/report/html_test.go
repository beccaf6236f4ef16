package report_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"html/template"
	"io"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"sunclause/engine/report"

	"sunclause/schema/examples"
)

// elements reads a page strictly, as XML with the entities of HTML: every tag
// must be closed in its order.
func elements(t testing.TB, page []byte) []xml.StartElement {
	t.Helper()
	d := xml.NewDecoder(bytes.NewReader(page))
	d.Entity = xml.HTMLEntity
	var all []xml.StartElement
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return all
		}
		if err != nil {
			t.Fatal(err)
		}
		if e, ok := token.(xml.StartElement); ok {
			all = append(all, e.Copy())
		}
	}
}

func attribute(e xml.StartElement, name string) string {
	for _, a := range e.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// TestHTMLLinks makes sure that every link within the page leads somewhere,
// that ids stand once, and that nothing is fetched from elsewhere or runs.
func TestHTMLLinks(t *testing.T) {
	all := elements(t, htmlOf(t, examples.Faulty))
	ids := map[string]bool{}
	for _, e := range all {
		if id := attribute(e, "id"); id != "" {
			if ids[id] {
				t.Errorf("the id %s stands twice", id)
			}
			ids[id] = true
		}
	}
	links := 0
	for _, e := range all {
		for _, a := range e.Attr {
			switch {
			case a.Name.Local == "href" && !ids[strings.TrimPrefix(a.Value, "#")]:
				t.Errorf("the link %s leads nowhere", a.Value)
			case a.Name.Local == "src", strings.HasPrefix(a.Name.Local, "on"), strings.Contains(a.Value, "://"):
				t.Errorf("<%s %s=%q> reaches out of the page or runs", e.Name.Local, a.Name.Local, a.Value)
			case a.Name.Local == "aria-labelledby" && !ids[a.Value]:
				t.Errorf("the label %s is not there", a.Value)
			case a.Name.Local == "href":
				links++
			}
		}
		if e.Name.Local == "script" || e.Name.Local == "link" || e.Name.Local == "iframe" {
			t.Errorf("the page has a <%s>", e.Name.Local)
		}
	}
	if links < 10 {
		t.Errorf("only %d links", links)
	}
}

// TestHTMLPutsRightFirst holds that what does harm is told before what is only
// not written down, each room once before any room twice.
func TestHTMLPutsRightFirst(t *testing.T) {
	page := string(htmlOf(t, examples.Faulty))
	_, list, _ := strings.Cut(page, `<ol class="first">`)
	list, _, _ = strings.Cut(list, "</ol>")
	rooms := map[string]string{}
	for _, q := range result(t, "gb-island-cottage-faulty").RuleSet.Requirements {
		rooms[template.HTMLEscapeString(q.Title)] = q.Room
	}
	var got []string
	for _, m := range regexp.MustCompile(`</a>: (.*?)(?: <small>and at \d+ more</small>)?<br/>`).FindAllStringSubmatch(list, -1) {
		got = append(got, rooms[m[1]])
	}
	want := []string{"pvstring", "isolator", "roof", "cable", "accircuit", "earthing", "storage", "surge"}
	if !slices.Equal(got, want) {
		t.Errorf("put right first: %v, want %v", got, want)
	}
}

// TestHTMLAll holds that where all is asked for, each requirement that is met
// stands at the part that meets it, beside what is found there.
func TestHTMLAll(t *testing.T) {
	r := result(t, "gb-battery")
	page := written(t, "html", report.Options{All: true}, r)
	rows := strings.Count(string(page), `<tr class="met">`+"\n"+`<td class="outcome">`)
	if want := report.Count(r).Met; rows != want || rows == 0 {
		t.Errorf("%d rows of what is met, want %d", rows, want)
	}
}

// TestHTMLOutline holds what people with a screen reader go by: landmarks,
// headings without a gap, table headers with a scope, words for every drawing.
func TestHTMLOutline(t *testing.T) {
	count := map[string]int{}
	last := 0
	for _, e := range elements(t, htmlOf(t, examples.Faulty)) {
		name := e.Name.Local
		count[name]++
		if regexp.MustCompile(`^h[1-6]$`).MatchString(name) {
			level := int(name[1] - '0')
			if level > last+1 {
				t.Errorf("a heading of level %d follows one of level %d", level, last)
			}
			last = level
		}
		if name == "th" && attribute(e, "scope") == "" {
			t.Error("a table header has no scope")
		}
		if name == "svg" && (attribute(e, "role") != "img" || attribute(e, "aria-label") == "") {
			t.Error("a drawing has no words for those who cannot see it")
		}
	}
	for name, n := range map[string]int{"main": 1, "header": 1, "footer": 1, "nav": 1, "h1": 1, "title": 1} {
		if count[name] != n {
			t.Errorf("%d <%s>, want %d", count[name], name, n)
		}
	}
}

// hostileHTML: no text becomes an element, an attribute or a way out of the
// page.
func hostileHTML(t testing.TB, text string, got []byte) {
	harmless.Do(func() { harmlessElements = counted(t, written(t, "html", report.Options{All: true}, shed(t))) })
	want, found := harmlessElements, counted(t, got)
	for _, name := range []string{"script", "img", "a", "table", "tr", "td", "section", "article", "svg", "style", "b", "h1", "li"} {
		if found[name] != want[name] {
			t.Errorf("%+.30q: %d <%s>, want %d", text, found[name], name, want[name])
		}
	}
}

// harmlessElements are the elements of the small job's page with its own texts.
var (
	harmless         sync.Once
	harmlessElements map[string]int
)

func counted(t testing.TB, page []byte) map[string]int {
	t.Helper()
	found := map[string]int{}
	for _, e := range elements(t, page) {
		found[e.Name.Local]++
	}
	return found
}

func pageOf(t *testing.T, raw []byte) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := report.HTML(&b, byBritishSet(t, raw), report.Options{}); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// leastContrast is what WCAG 2.1 asks of ordinary text, success criterion 1.4.3.
const leastContrast = 4.5

// TestHTMLContrast works out the contrast of every colour of text on both
// grounds, light and dark.
func TestHTMLContrast(t *testing.T) {
	css, err := os.ReadFile("drawing/palette.css")
	if err != nil {
		t.Fatal(err)
	}
	themes := regexp.MustCompile(`:root \{[^}]*\}`).FindAllString(string(css), -1)
	if len(themes) != 3 {
		t.Fatalf("%d themes, want light, dark and print", len(themes))
	}
	for i, theme := range themes {
		colours := map[string]float64{}
		for _, m := range regexp.MustCompile(`--([a-z]+): (#[0-9a-f]{3,6})`).FindAllStringSubmatch(theme, -1) {
			colours[m[1]] = luminance(t, m[2])
		}
		for _, ground := range []string{"paper", "panel"} {
			for _, ink := range []string{"ink", "faint", "met", "broken", "unshown", "idle", "link"} {
				hi, lo := math.Max(colours[ground], colours[ink]), math.Min(colours[ground], colours[ink])
				if c := (hi + 0.05) / (lo + 0.05); c < leastContrast {
					t.Errorf("theme %d: %s on %s has a contrast of %.1f", i+1, ink, ground, c)
				}
			}
		}
	}
}

// luminance is the relative luminance of a colour, as WCAG 2.1 defines it.
func luminance(t *testing.T, hex string) float64 {
	hex = strings.TrimPrefix(hex, "#")
	if len(hex) == 3 {
		hex = fmt.Sprintf("%c%c%c%c%c%c", hex[0], hex[0], hex[1], hex[1], hex[2], hex[2])
	}
	total := 0.0
	for i, weight := range []float64{0.2126, 0.7152, 0.0722} {
		v, err := strconv.ParseUint(hex[2*i:2*i+2], 16, 8)
		if err != nil {
			t.Fatal(err)
		}
		c := float64(v) / 255
		if c <= 0.03928 {
			c /= 12.92
		} else {
			c = math.Pow((c+0.055)/1.055, 2.4)
		}
		total += weight * c
	}
	return total
}
