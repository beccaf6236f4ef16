package working

import (
	"slices"

	"sunclause/schema"
)

// Text is a word that is known or not: a kind, a category, an id.
type Text struct {
	value   string
	known   bool
	at      string
	missing []Gap
}

// StatedText takes a text of the document.
func StatedText(t schema.Text) Text {
	w := Text{value: t.Value, known: t.Stated(), at: t.At()}
	if !w.known {
		w.missing = []Gap{Unstated(t.At())}
	}
	return w
}

// KnownText makes a known text that stands at, or was derived at, a place.
func KnownText(value, at string) Text { return Text{value: value, known: true, at: at} }

// UnknownText makes a text that is unknown for some reasons: members that are not
// stated, or gaps.
func UnknownText[R Reason](why ...R) Text { return Text{missing: gapsOf(why)} }

// Known reports whether the text has a value.
func (t Text) Known() bool { return t.known }

// Value is the text itself; it means nothing unless known.
func (t Text) Value() string { return t.value }

// Missing says why the text is not known.
func (t Text) Missing() []Gap { return t.missing }

// At is the JSON pointer of the text.
func (t Text) At() string { return t.at }

// Flag is a yes or no that is known or not.
type Flag struct {
	value   bool
	known   bool
	at      string
	missing []Gap
}

// StatedFlag takes a flag of the document.
func StatedFlag(f schema.Flag) Flag {
	w := Flag{value: f.Value, known: f.Stated(), at: f.At()}
	if !w.known {
		w.missing = []Gap{Unstated(f.At())}
	}
	return w
}

// IsStated reports that the document states a text, whatever it says. Of one left
// out nobody knows: what it would tell may yet be there.
func IsStated(t schema.Text) Flag {
	if !t.Stated() {
		return UnknownFlag(t.At())
	}
	return KnownFlag(true, t.At())
}

// KnownFlag makes a known flag that was derived at a place.
func KnownFlag(value bool, at string) Flag { return Flag{value: value, known: true, at: at} }

// UnknownFlag makes a flag that is unknown for some reasons: members that are not
// stated, or gaps.
func UnknownFlag[R Reason](why ...R) Flag { return Flag{missing: gapsOf(why)} }

// Known reports whether the flag has a value.
func (f Flag) Known() bool { return f.known }

// Value is the flag itself; it means nothing unless known.
func (f Flag) Value() bool { return f.value }

// Missing says why the flag is not known.
func (f Flag) Missing() []Gap { return f.missing }

// At is the JSON pointer of the flag.
func (f Flag) At() string { return f.at }

// Names is a list of ids that is known or not, in order.
type Names struct {
	values  []string
	known   bool
	missing []Gap
}

// List makes a known list; the ids are sorted and stand once each.
func List(ids ...string) Names {
	return Names{values: sortedUnique(slices.Clone(ids)), known: true}
}

// UnknownList makes a list that is unknown for some reasons: members that are not
// stated, or gaps.
func UnknownList[R Reason](why ...R) Names { return Names{missing: gapsOf(why)} }

// Known reports whether the list has a value.
func (n Names) Known() bool { return n.known }

// Values are the ids; they mean nothing unless known.
func (n Names) Values() []string { return n.values }

// Missing says why the list is not known.
func (n Names) Missing() []Gap { return n.missing }

// Subject is the part of the installation that a set of facts is about. Every
// facts struct that rules can judge embeds one.
type Subject struct {
	ID   string `json:"id"`
	At   string `json:"-"` // JSON pointer of the part
	Name string `json:"-"` // the part in words, as in "string S1"
}
