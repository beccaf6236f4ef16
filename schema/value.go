package schema

import "time"

// Pointer is where a value stands in the document, or would stand had it been
// stated. Every value and every part of the mirror carries one, so that a
// quantity derived from it can name the line it came from, and one that could
// not be derived can name the member that was missing.
type Pointer struct {
	at     string
	stated bool
	blank  bool // of a blank part, whose members all stand where it does
}

// At is the JSON pointer (RFC 6901) of the value.
func (p Pointer) At() string { return p.at }

// Stated reports whether the document has the value at all.
func (p Pointer) Stated() bool { return p.stated }

// Member is the place of a member below this one, stated or not. Below a blank
// part there is none: it is the place at which something is missing.
func (p Pointer) Member(name string) string {
	if p.blank {
		return p.at
	}
	return p.at + "/" + escape(name)
}

// Number is a quantity of the document. Its unit stands in the member's name.
// Value means nothing unless the number is stated: a quantity left out is
// unknown, not zero.
type Number struct {
	Pointer
	Value float64
}

// Text is a word, id or remark of the document. An enumerated word is a Text.
type Text struct {
	Pointer
	Value string
}

// Flag is a yes or no of the document. Left out it is unknown, not no.
type Flag struct {
	Pointer
	Value bool
}

// Is reports whether the text is stated and reads so.
func (t Text) Is(word string) bool { return t.stated && t.Value == word }

// Yes reports whether the flag is stated and true.
func (f Flag) Yes() bool { return f.stated && f.Value }

// NewNumber makes a stated number for programs and tests that build an
// installation without a document.
func NewNumber(at string, v float64) Number {
	return Number{Pointer{at: at, stated: true}, v}
}

// NewText makes a stated text, as NewNumber does.
func NewText(at, v string) Text { return Text{Pointer{at: at, stated: true}, v} }

// NewFlag makes a stated flag, as NewNumber does.
func NewFlag(at string, v bool) Flag { return Flag{Pointer{at: at, stated: true}, v} }

// NewPointer makes the place of a part, as NewNumber does for a number.
func NewPointer(at string) Pointer { return Pointer{at: at, stated: true} }

// IsDay reports whether a text is a day of the calendar as documents and rule sets
// write it, 2026-03-02.
func IsDay(text string) bool {
	_, err := time.Parse(time.DateOnly, text)
	return err == nil
}
