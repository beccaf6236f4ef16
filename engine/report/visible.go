package report

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Visible spells out the characters of a text that would act instead of being
// seen: those that a terminal obeys, those that turn the direction of what
// follows, and those that have no width. A document can have any of them in its
// texts, and a report is shown to people who have not read the document. Breaks
// of lines become spaces.
func Visible(s string) string {
	if strings.IndexFunc(s, acts) < 0 && utf8.ValidString(s) {
		return s
	}
	var b strings.Builder
	for _, r := range s { // a byte that is no UTF-8 comes out as U+FFFD
		switch {
		case r == '\n' || r == '\r' || r == '\t':
			b.WriteByte(' ')
		case acts(r):
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// acts reports whether a character does something other than be seen: controls,
// invisible formatting with the marks of direction, and separators of lines.
func acts(r rune) bool {
	if r < utf8.RuneSelf { // nearly all are; of them only controls act
		return r < ' ' || r == 0x7f
	}
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp)
}
