package drawing

import (
	"encoding/xml"
	"fmt"
	"html/template"
	"math"
	"strconv"
	"strings"
	"unicode"
)

// svg writes a drawing. Colours come from the classes in the report's style
// sheet, so that a drawing follows light, dark and print.
type svg struct {
	b             strings.Builder
	width, height float64
}

// num writes a coordinate with one decimal at most.
func num(v float64) string { return strconv.FormatFloat(math.Round(10*v)/10, 'f', -1, 64) }

// add writes a line. Every argument is escaped for XML: a text of a document may
// stand wherever a text does.
func (s *svg) add(format string, args ...string) { s.b.WriteString(filled(format, args) + "\n") }

// filled puts texts into a line of XML, in which no text can be markup. What XML
// has no character for becomes U+FFFD.
func filled(format string, texts []string) string {
	escaped := make([]any, len(texts))
	for i, text := range texts {
		var b strings.Builder
		_ = xml.EscapeText(&b, []byte(text)) // a builder takes everything
		escaped[i] = b.String()
	}
	return fmt.Sprintf(format, escaped...)
}

func (s *svg) line(class string, x1, y1, x2, y2 float64) {
	s.add(`<path class="%s" d="M%s %sL%s %s"/>`, class, num(x1), num(y1), num(x2), num(y2))
}

// path draws a path in the notation of SVG, moved to a place.
func (s *svg) path(class, d string, x, y float64) {
	s.add(`<path class="%s" transform="translate(%s %s)" d="%s"/>`, class, num(x), num(y), d)
}

func (s *svg) rect(class string, x, y, w, h float64) {
	s.add(`<rect class="%s" x="%s" y="%s" width="%s" height="%s"/>`, class, num(x), num(y), num(w), num(h))
}

func (s *svg) circle(class string, x, y, r float64) {
	s.add(`<circle class="%s" cx="%s" cy="%s" r="%s"/>`, class, num(x), num(y), num(r))
}

// text writes words that may come from a document: they are shortened to what fits
// and kept from turning the text around them.
func (s *svg) text(class string, x, y float64, anchor, words string, most int) {
	s.add(`<text class="%s" x="%s" y="%s" text-anchor="%s" unicode-bidi="isolate">%s</text>`, class, num(x), num(y), anchor, shortened(words, most))
}

// shortened keeps a text to the width of so many small letters.
func shortened(words string, most int) string {
	if most <= 0 || letters(words) <= float64(most) {
		return words
	}
	width := 1.0 // of the sign that something is left out
	for i, r := range words {
		if width += letterWidth(r); width > float64(most) {
			return words[:i] + "…"
		}
	}
	return words
}

// letters is the width of a text in small letters, on the safe side.
func letters(words string) float64 {
	width := 0.0
	for _, r := range words {
		width += letterWidth(r)
	}
	return width
}

func letterWidth(r rune) float64 {
	switch {
	case strings.ContainsRune("MWmw@%", r), r >= 0x1100: // from there on come signs as broad as high
		return 1.7
	case unicode.IsUpper(r):
		return 1.25
	}
	return 1
}

// done closes the drawing. Title and words are read out to those who cannot
// see it.
func (s *svg) done(class, title string) template.HTML {
	head := filled(`<svg class="drawing %s" viewBox="0 0 %s %s" style="max-width:%spx" role="img" aria-label="%s">`,
		[]string{class, num(s.width), num(s.height), num(s.width), title})
	return template.HTML(head + "\n" + s.b.String() + "</svg>")
}
