package report

import (
	"io"
	"strings"
	"unicode/utf8"
)

// style is how a line stands out. Without colour nothing is lost: the words say
// the same.
type style string

// The styles, as SGR sequences of ECMA-48.
const (
	plain style = ""
	bold  style = "\x1b[1m"
	faint style = "\x1b[2m"
	bad   style = "\x1b[1;31m"
	doubt style = "\x1b[33m"
	good  style = "\x1b[32m"
	reset       = "\x1b[0m"
)

// page writes lines that fit a width.
type page struct {
	w       io.Writer
	options Options
	width   int
	err     error
}

const (
	usualWidth = 80
	leastWidth = 30
)

func newPage(w io.Writer, o Options) *page {
	p := &page{w: w, options: o, width: o.Width}
	if p.width == 0 {
		p.width = usualWidth
	}
	p.width = max(p.width, leastWidth)
	return p
}

func (p *page) blank() { p.write("\n") }

func (p *page) write(s string) {
	if p.err == nil {
		_, p.err = io.WriteString(p.w, s)
	}
}

// line writes a text indented, broken between words where it gets too long;
// what follows the break stands two columns further in. Every text of a document
// comes through here, and here it is made harmless.
func (p *page) line(indent int, s style, text string) {
	for i, l := range wrap(Visible(text), p.width-indent, 2) {
		pad := strings.Repeat(" ", indent)
		if i > 0 {
			pad += "  "
		}
		if p.options.Colour && s != plain {
			l = string(s) + l + reset
		}
		p.write(pad + l + "\n")
	}
}

// wrap breaks a text between words; lines after the first are shorter by hang.
// A word longer than the line is left whole, since it is an id or a path that
// someone may want to copy.
func wrap(text string, width, hang int) []string {
	var lines []string
	current := ""
	for _, word := range strings.Fields(text) {
		room := width
		if len(lines) > 0 {
			room -= hang
		}
		switch {
		case current == "":
			current = word
		case utf8.RuneCountInString(current)+1+utf8.RuneCountInString(word) <= room:
			current += " " + word
		default:
			lines = append(lines, current)
			current = word
		}
	}
	return append(lines, current)
}
