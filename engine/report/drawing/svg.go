package drawing

import (
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

func (s *svg) add(format string, args ...any) { fmt.Fprintf(&s.b, format+"\n", args...) }

func (s *svg) line(class string, x1, y1, x2, y2 float64) {
	s.add(`<path class=%q d="M%s %sL%s %s"/>`, class, num(x1), num(y1), num(x2), num(y2))
}

// path draws a path in the notation of SVG, moved to a place.
func (s *svg) path(class, d string, x, y float64) {
	s.add(`<path class=%q transform="translate(%s %s)" d=%q/>`, class, num(x), num(y), d)
}

func (s *svg) rect(class string, x, y, w, h float64) {
	s.add(`<rect class=%q x="%s" y="%s" width="%s" height="%s"/>`, class, num(x), num(y), num(w), num(h))
}

func (s *svg) circle(class string, x, y, r float64) {
	s.add(`<circle class=%q cx="%s" cy="%s" r="%s"/>`, class, num(x), num(y), num(r))
}

// text writes words that may come from a document: they are escaped, shortened
// to what fits, and kept from turning the text around them.
func (s *svg) text(class string, x, y float64, anchor, words string, most int) {
	s.add(`<text class=%q x="%s" y="%s" text-anchor=%q unicode-bidi="isolate">%s</text>`, class, num(x), num(y), anchor, template.HTMLEscapeString(shortened(words, most)))
}

// shortened keeps a text to the width of so many small letters.
func shortened(words string, most int) string {
	if most <= 0 || letters(words) <= float64(most) {
		return words
	}
	width := 1.0 // of the sign that something is left out
	for i, r := range words {
		if width += breadth(r); width > float64(most) {
			return words[:i] + "…"
		}
	}
	return words
}

// letters is the width of a text in small letters, on the safe side.
func letters(words string) float64 {
	width := 0.0
	for _, r := range words {
		width += breadth(r)
	}
	return width
}

func breadth(r rune) float64 {
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
	return template.HTML(fmt.Sprintf("<svg class=\"drawing %s\" viewBox=\"0 0 %s %s\" style=\"max-width:%spx\" role=\"img\" aria-label=%q>\n%s</svg>",
		class, num(s.width), num(s.height), num(s.width), template.HTMLEscapeString(title), s.b.String()))
}
