package drawing

import (
	"encoding/xml"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// TestSVGHoldsAnyText puts any text in every place where one can stand, and reads
// the drawing as XML: it has the elements that were drawn and no more, and each
// text comes back, but for what XML has no character for.
func TestSVGHoldsAnyText(t *testing.T) {
	letters := rapid.RuneFrom([]rune("`|\\<>&'\"/=;#!-[]{}% aé1\n\r\t\x00\x01\x1b\x7f\u0085\u00a0\u202e\u200b\ufffe\U000e0041"))
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.OneOf(rapid.StringOf(letters), rapid.SampledFrom([]string{
			`"/><script>alert(1)</script>`, "</text></svg>", "]]>", "<!--", "&lt;", "&#60;", `\"`, "a\u00a0b", `" onload="alert(1)`, "\xff\xfe",
		})).Draw(t, "text")
		var s svg
		s.width, s.height = 10, 10
		s.line(text, 0, 0, 1, 1)
		s.path(text, text, 0, 0)
		s.rect(text, 0, 0, 1, 1)
		s.circle(text, 0, 0, 1)
		s.text(text, 0, 0, text, text, 0)
		want := strings.Map(func(r rune) rune {
			if r == '\ufffe' || r < ' ' && r != '\n' && r != '\r' && r != '\t' {
				return '\ufffd'
			}
			return r // a byte that is no UTF-8 comes as U+FFFD
		}, text)
		var names, texts []string
		d := xml.NewDecoder(strings.NewReader(string(s.done("x", text))))
		for {
			token, err := d.Token()
			if token == nil {
				if err != nil && err.Error() != "EOF" {
					t.Fatalf("%q: %v", text, err)
				}
				break
			}
			if e, ok := token.(xml.StartElement); ok {
				names = append(names, e.Name.Local)
				for _, a := range e.Attr {
					if a.Name.Local == "class" && e.Name.Local != "svg" || a.Name.Local == "aria-label" || a.Name.Local == "text-anchor" {
						texts = append(texts, a.Value)
					}
				}
			}
			if c, ok := token.(xml.CharData); ok && len(names) > 0 && names[len(names)-1] == "text" && len(texts) < 8 {
				texts = append(texts, string(c))
			}
		}
		if got := strings.Join(names, " "); got != "svg path path rect circle text" {
			t.Errorf("%q: the drawing has %s", text, got)
		}
		for _, got := range texts {
			if got != want && !(want == "" && got == "\n") {
				t.Errorf("%q came back as %q", text, got)
			}
		}
	})
}
