package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"
)

// plausible is the keyword x-plausible of a number: the values that nobody has
// to look at again, and on what they rest.
type plausible struct {
	span
	Zero  bool        `json:"zero"`  // 0 says that there is none
	Near  json.Number `json:"near"`  // a value nearer to zero is not believed, other than 0
	Slips string      `json:"slips"` // what such a value often is instead
	Where []where     `json:"where"` // narrower spans; the first that fits counts
}

// span is a stretch of values, or the values in which a quantity comes.
type span struct {
	From   json.Number   `json:"from"`
	To     json.Number   `json:"to"`
	Usual  []json.Number `json:"usual"`
	Ground string        `json:"ground"` // measured, standard, common practice, memory
	Source string        `json:"source"`
}

// where is the span for some technologies, whose member stands beside the number,
// or for some countries.
type where struct {
	span
	Technology []string `json:"technology"`
	Country    []string `json:"country"`
}

// UnmarshalJSON refuses words that the keyword has not.
func (p *plausible) UnmarshalJSON(raw []byte) error {
	type plain plausible
	d := json.NewDecoder(bytes.NewReader(raw))
	d.DisallowUnknownFields()
	return d.Decode((*plain)(p))
}

// grounds are what a span can rest on.
const grounds = "measured, standard, common practice, memory"

// plausibleOf writes the Go expression for what is plausible of a member.
func plausibleOf(p *plausible) (string, error) {
	if p == nil {
		return "nil", nil
	}
	if p.From == "" || p.To == "" || p.Ground == "" || !strings.Contains(grounds, p.Ground) {
		return "", fmt.Errorf("it needs from, to, and a ground: one of %s", grounds)
	}
	text := "&plausible{" + p.literal(p.span)
	if p.Where != nil {
		text += ", where: []plausibleWhere{\n"
		for _, w := range p.Where {
			if (w.Technology == nil) == (w.Country == nil) {
				return "", fmt.Errorf("where is about technology or country")
			}
			member, words := "technology", w.Technology
			if w.Country != nil {
				member, words = "country", w.Country
			}
			text += fmt.Sprintf("{%q, %#v, plausible{%s}},\n", member, words, p.literal(p.narrowed(w.span)))
		}
		text += "}"
	}
	return text + "}", nil
}

// narrowed is the span of a where, which is as that of all in what it does not say.
func (p *plausible) narrowed(s span) span {
	if s.From == "" {
		s.From, s.To = p.From, p.To
	}
	if s.Usual == nil {
		s.Usual = p.Usual
	}
	if s.Ground == "" {
		s.Ground, s.Source = p.Ground, p.Source
	}
	return s
}

// literal writes the members of a Go plausible with a span, which is that of all or
// a narrower one.
func (p *plausible) literal(s span) string {
	text := fmt.Sprintf("from: %s, to: %s", s.From, s.To)
	if len(s.Usual) > 0 {
		all := make([]string, len(s.Usual))
		for i, v := range s.Usual {
			all[i] = v.String()
		}
		text += ", usual: []float64{" + strings.Join(all, ", ") + "}"
	}
	text += fmt.Sprintf(", ground: %q, source: %q", s.Ground, s.Source)
	if p.Zero {
		text += ", zero: true"
	}
	if p.Near != "" {
		text += ", near: " + p.Near.String()
	}
	if p.Slips != "" {
		text += fmt.Sprintf(", slips: %q", p.Slips)
	}
	return text
}

// withoutPlausible is a description without what it says for an editor's eye of
// the plausible values, which stand in the keyword.
func withoutPlausible(description string) string {
	words, _, _ := strings.Cut(description, "; plausible ")
	return words
}
