package report

import (
	"strings"

	"sunclause/engine/judge"
)

// unjudgedWords head the list of what is stated and judged by nothing.
const unjudgedWords = "Stated, judged by no rule of this set"

// unjudgedOf is what is stated of parts of one kind and judged by nothing: labels[]:
// lettering, reflective.
func unjudgedOf(r *judge.Result) []string {
	var kinds, lines []string
	members := map[string][]string{}
	for _, u := range r.Unjudged {
		i := strings.LastIndexByte(u.Member, '.')
		kind, name := u.Member[:max(i, 0)], u.Member[i+1:]
		if members[kind] == nil {
			kinds = append(kinds, kind)
		}
		members[kind] = append(members[kind], name)
	}
	for _, kind := range kinds {
		lines = append(lines, kind+": "+strings.Join(members[kind], ", "))
	}
	return lines
}

// beside are the notes of a report, for formats that have no place of their own for
// what nothing judges.
func beside(r *judge.Result) []string {
	if len(r.Unjudged) == 0 {
		return r.Notes
	}
	return append([]string{unjudgedWords + ": " + strings.Join(unjudgedOf(r), "; ")}, r.Notes...)
}

func (p *page) unjudged(r *judge.Result) {
	if len(r.Unjudged) == 0 {
		return
	}
	p.line(0, bold, unjudgedWords)
	for _, line := range unjudgedOf(r) {
		p.line(2, plain, line)
	}
	p.blank()
}

func (j *jsonWriter) unjudged(all []judge.Unjudged) {
	if len(all) == 0 {
		return
	}
	j.member("judged_by_no_rule")
	j.begin('[')
	for _, u := range all {
		j.item()
		j.begin('{')
		j.text("member", u.Member)
		j.text("at", u.At)
		j.member("places")
		j.int(u.Places)
		j.end('}')
	}
	j.end(']')
}
