package sheets

import (
	"cmp"
	"io"
	"math"
	"strings"
	"unicode"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/facts/label"
	"sunclause/schema"
)

// sticker is one label as it is printed.
type sticker struct {
	ID, Words             string
	Ground, Ink           string  // colours
	Width, Height, Letter float64 // mm; of a letter, the height of its capitals
	Fits                  bool    // whether the words have room at that height
	Wrong                 string  // what in the words is wrong: they are not printed; "" for nothing
}

// Size of a label for which the document states none, and the room left free
// along its edges, in mm.
const (
	usualWidth, usualHeight = 100, 60
	margin                  = 2
)

// letterHeights are tried, the largest first, where the document states none, in
// mm: common practice, no published source. Smaller ones cannot be read from
// where a person stands.
var letterHeights = []float64{5, 4, 3.5, 3, 2.5, 2}

// Stickers writes the labels of the document that have words, at true size.
// Labels alike are printed once for each place, and none whose words are wrong.
func Stickers(w io.Writer, r *judge.Result) error {
	var all []sticker
	wrong := wrongWords(r)
	for _, l := range r.Document.Installation.Labels {
		if l.Text.Stated() {
			s := stickerOf(l)
			s.Wrong = report.Visible(wrong[l.ID.Value])
			all = append(all, s)
		}
	}
	unlikely := report.UnlikelyLines(r)
	for i, u := range unlikely {
		unlikely[i] = report.Visible(u)
	}
	return pageTemplates().ExecuteTemplate(w, "stickers.tmpl", map[string]any{
		"Title": report.Visible(r.Document.Installation.Project.Reference.Value), "Labels": all, "Passes": r.Passes, "Unlikely": unlikely})
}

// wrongWords says of labels, by their ids, what in their words is not what it should be.
func wrongWords(r *judge.Result) map[string]string {
	wrong := map[string]string{}
	for _, l := range r.Facts.Labels {
		if says := l.WordsUnlike.Value(); says != "" && says != label.AllAgree {
			wrong[l.ID] = says
		}
	}
	return wrong
}

func stickerOf(l schema.Label) sticker {
	s := sticker{ID: l.ID.Value, Words: report.Visible(l.Text.Value), Width: usualWidth, Height: usualHeight}
	if l.WidthMm.Stated() && l.HeightMm.Stated() {
		s.Width, s.Height = l.WidthMm.Value, l.HeightMm.Value
	}
	s.Ground = colour(l.Background, "white")
	s.Ink = colour(l.Lettering, inkOn[s.Ground])
	heights := letterHeights
	if stated := cmp.Or(l.LetterHeightMm.Value, math.Round(l.SmallLetterHeightMm.Value/small*10)/10); stated > 0 {
		heights = []float64{stated}
	}
	for _, s.Letter = range heights {
		if s.Fits = s.fits(); s.Fits {
			break
		}
	}
	return s
}

// colours of a document as they are printed; green is that of safety signs, so
// that white letters can be read on it.
var colours = map[string]string{
	"black": "#000", "brown": "#5d3a1a", "red": "#b3140c", "orange": "#f08a24", "yellow": "#ffe14d",
	"green": "#00693e", "blue": "#005387", "white": "#fff", "grey": "#8a8f94",
}

// inkOn is the colour that can be read on a ground, where the document states none.
var inkOn = map[string]string{
	colours["black"]: "white", colours["brown"]: "white", colours["red"]: "white", colours["green"]: "white", colours["blue"]: "white",
}

// Plain reports whether the words can be told from the ground at all.
func (s sticker) Plain() bool { return s.Ground != s.Ink }

// colour is a colour of the document, or another where it is not stated or not
// one that can be printed.
func colour(stated schema.Text, other string) string {
	return cmp.Or(colours[stated.Value], colours[other], colours["black"])
}

// Proportions of bold letters without serifs: the height of capitals and of a line
// over the size of the type, and the height of small letters over capitals.
const (
	capital = 0.72
	line    = 1.25
	small   = 0.75
)

// letterWidth is the width of a letter over the size of the type, on the safe side.
func letterWidth(r rune) float64 {
	switch {
	case strings.ContainsRune("MWmw@%", r), r >= 0x1100: // from there on come signs as broad as high
		return 1.15
	case unicode.IsUpper(r):
		return 0.9
	}
	return 0.72
}

// Wide reports whether a label is too wide for upright paper, with its margins.
func (s sticker) Wide() bool { return s.Width > 190 }

// Size is the size of the type that gives capitals of the height wanted, in mm.
func (s sticker) Size() float64 { return s.Letter / capital }

// fits breaks the words as a browser would, and reports whether the lines have
// room. A word wider than the label does not fit.
func (s sticker) fits() bool {
	room, lines, at := s.Width-2*margin, 1, 0.0
	for _, word := range strings.Fields(s.Words) {
		width := 0.0
		for _, r := range word {
			width += letterWidth(r) * s.Size()
		}
		if width > room {
			return false
		}
		if at > 0 {
			at += letterWidth(' ') * s.Size()
		}
		if at > 0 && at+width > room {
			lines, at = lines+1, 0
		}
		at += width
	}
	return float64(lines)*line*s.Size() <= s.Height-2*margin
}
