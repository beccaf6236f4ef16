package report

import (
	"io"
	"iter"
	"slices"
	"strings"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
)

// reportVersion is raised when a member changes its meaning or goes; a new
// member does not raise it.
const reportVersion = 3

type jsonDocument struct {
	Path      string `json:"path"`
	SHA256    string `json:"sha256"`
	Reference string `json:"reference"`
	Stage     string `json:"stage"`
}

// Counts are the judgments counted by outcome, beside the unlikely values.
// Departures are also counted as not met or unlikely, and what holds either way as
// met.
type Counts struct {
	Met           int `json:"met"`
	NotMet        int `json:"not_met"`
	NotShown      int `json:"not_shown"`
	NotApplicable int `json:"not_applicable"`
	Departures    int `json:"departures"`
	EitherWay     int `json:"holds_either_way"` // of those that are met
	Unlikely      int `json:"unlikely"`         // values
}

type jsonMeasured struct {
	Value any    `json:"value"`
	Unit  string `json:"unit"`
	Fact  string `json:"fact"`
}

type jsonLimit struct {
	Comparison string `json:"comparison"`
	Value      any    `json:"value"`
	Unit       string `json:"unit"`
	Fact       string `json:"fact,omitempty"`
	Parameter  string `json:"parameter,omitempty"`
}

// JSON writes the report as one JSON object on one line, so that the reports of
// several documents make one object a line (NDJSON). Each requirement stands in
// it once, as a card; the outcomes stand by part and name their requirement.
func JSON(w io.Writer, r *judge.Result, _ Options) error {
	p := r.Document.Installation.Project
	j := newJSONWriter(w)
	j.begin('{')
	j.member("report_version")
	j.int(reportVersion)
	j.member("document")
	j.encoded(jsonDocument{r.Document.Name, ruleset.Hash(r.Document.Raw), p.Reference.Value, p.Stage.Value})
	j.member("rule_sets")
	j.encoded([]record.RuleSet{record.RuleSetOf(r.RuleSet)})
	j.member("summary")
	j.encoded(Count(r))
	j.member("passes")
	j.bool(r.Passes)
	if r.NothingToCheck() {
		j.member("nothing_to_check")
		j.bool(true)
	}
	j.unlikely(r.Unlikely)
	j.cards(r.RuleSet)
	j.parts(r)
	j.notApplicable(r)
	j.unjudged(r.Unjudged)
	j.member("notes")
	j.strings(r.Notes)
	j.member("cautions")
	j.strings(Cautions)
	j.end('}')
	return j.close()
}

// jsonUnchecked writes in place of a report why there is none.
func jsonUnchecked(w io.Writer, u Unchecked, _ Options) error {
	j := newJSONWriter(w)
	j.begin('{')
	j.member("report_version")
	j.int(reportVersion)
	j.member("document")
	j.begin('{')
	j.text("path", u.Path)
	j.textIfAny("sha256", u.SHA256)
	j.end('}')
	j.member("passes")
	j.bool(false)
	j.member("errors")
	j.encoded(u.Errors)
	j.member("cautions")
	j.strings(Cautions)
	j.end('}')
	return j.close()
}

// jsonLines puts reports one a line, and the summary on the last.
type jsonLines struct{ w io.Writer }

func collectJSON(w io.Writer, _ Options) Collector { return jsonLines{w} }

func (l jsonLines) Add(write func(io.Writer) error) error { return write(l.w) }

func (l jsonLines) End(s *ruleset.RuleSet, summary *Summary) error {
	if summary == nil {
		return nil
	}
	return encode(l.w, struct {
		SummaryVersion int            `json:"summary_version"`
		RuleSet        record.RuleSet `json:"rule_set"`
		*Summary
		Cautions []string `json:"cautions"`
	}{summaryVersion, record.RuleSetOf(s), summary, Cautions}, "")
}

// cards states every requirement of the set once.
func (j *jsonWriter) cards(set *ruleset.RuleSet) {
	j.member("requirements")
	j.begin('[')
	for _, q := range set.Requirements {
		j.item()
		j.begin('{')
		for _, m := range [][2]string{{"id", q.ID}, {"title", q.Title}, {"room", q.Room}, {"level", string(q.Level)}, {"list", q.Subject}} {
			j.text(m[0], m[1])
		}
		j.compared(set, q.Condition)
		j.text("remedy", q.Remedy)
		j.member("source")
		j.source(q.Source)
		if len(q.Changes) > 0 {
			j.member("changes")
			j.encoded(q.Changes)
		}
		j.end('}')
		j.pause()
	}
	j.end(']')
}

// compared states what a row compares, or the comparisons of a group.
func (j *jsonWriter) compared(set *ruleset.RuleSet, c ruleset.Condition) {
	if c.AnyOf == nil {
		j.textIfAny("measure", c.Fact)
		j.textIfAny("comparison", c.Comparison)
		j.limitOf(set, c.Limit)
		return
	}
	j.member("any_of")
	j.begin('[')
	for _, one := range c.AnyOf {
		j.item()
		j.begin('{')
		j.compared(set, one)
		j.end('}')
	}
	j.end(']')
}

func (j *jsonWriter) source(s working.Source) {
	j.begin('{')
	j.text("document", s.Document)
	j.textIfAny("edition", s.Edition)
	j.textIfAny("clause", s.Clause)
	j.text("how", string(s.How))
	j.member("verified")
	j.bool(s.Verified)
	j.end('}')
}

// limitOf states a limit as the row has it: a value, a fact, the cell of a table, or
// a parameter with its present value; and the factor that it is taken times.
func (j *jsonWriter) limitOf(set *ruleset.RuleSet, limit ruleset.Operand) {
	plain := set.Value(limit)
	if plain == nil && limit.Fact == "" && limit.Cell == nil {
		return
	}
	j.member("limit")
	j.begin('{')
	j.textIfAny("fact", limit.Fact)
	j.textIfAny("parameter", limit.Parameter)
	if limit.Cell != nil {
		j.text("cell", limit.Cell.String())
	}
	if plain != nil {
		j.member("value")
		j.value(plain)
	}
	if limit.Factor != nil {
		j.member("factor")
		j.number(set.FactorOf(limit))
	}
	j.textIfAny("unit", set.Book.Parameters[limit.Parameter].Unit)
	j.end('}')
}

// statesWhole reports whether the card of a row says its limit whole: a value or a
// parameter, by itself.
func statesWhole(limit ruleset.Operand) bool {
	return limit.Fact == "" && limit.Cell == nil && limit.Factor == nil
}

// parts states what applies, part by part in the order of the document.
func (j *jsonWriter) parts(r *judge.Result) {
	j.member("parts")
	j.begin('[')
	for part := range partsOf(r.Judgments) {
		if !slices.ContainsFunc(part, applies) {
			continue
		}
		j.item()
		j.begin('{')
		j.text("id", part[0].Subject.ID)
		j.text("name", part[0].Subject.Name)
		j.text("at", part[0].Subject.At)
		j.member("line")
		j.int(part[0].Position.Line)
		j.member("column")
		j.int(part[0].Position.Column)
		j.member("outcomes")
		j.begin('[')
		for _, one := range part {
			if applies(one) {
				j.item()
				j.outcome(one)
			}
		}
		j.end(']')
		j.end('}')
		j.pause()
	}
	j.end(']')
}

func applies(j judge.Judgment) bool { return j.Outcome != judge.NotApplicable }

// partsOf cuts judgments, which stand in the order of the document, into those of
// one part each.
func partsOf(all []judge.Judgment) iter.Seq[[]judge.Judgment] {
	return func(yield func([]judge.Judgment) bool) {
		for len(all) > 0 {
			n := 1
			for n < len(all) && all[n].Subject.ID == all[0].Subject.ID && all[n].Subject.At == all[0].Subject.At {
				n++
			}
			if !yield(all[:n]) {
				return
			}
			all = all[n:]
		}
	}
}

// outcome states one outcome. The limit stands in it where the card does not say
// it: where it is a fact of the part, or is worked out from one. Of a group the
// outcome says which comparison decided.
func (j *jsonWriter) outcome(one judge.Judgment) {
	j.begin('{')
	j.text("requirement", one.Requirement.ID)
	j.text("outcome", string(one.Outcome))
	if one.EitherWay {
		j.member("holds_either_way")
		j.bool(true)
	}
	c := one.Compared()
	group := one.Requirement.AnyOf != nil
	if group {
		j.text("measure", c.Fact)
		j.text("comparison", c.Comparison)
	}
	unit := ""
	if m := one.Measured; m != nil {
		unit = m.Unit
		j.member("value")
		j.value(m.Value)
		j.textIfAny("unit", unit)
	}
	if l := one.Limit; l != nil && (group || !statesWhole(c.Limit)) {
		j.member("limit")
		j.value(l.Value)
		if l.Unit != unit {
			j.text("limit_unit", l.Unit)
		}
	}
	if one.MarginPct != nil {
		j.member("margin_pct")
		j.number(*one.MarginPct)
	}
	if one.IsFinding() {
		j.text("message", one.Describe())
	}
	if len(one.Missing) > 0 {
		j.member("missing")
		j.strings(working.Pointers(one.Missing))
	}
	if doubts := working.Doubts(one.Missing); doubts != nil {
		j.member("reasons")
		j.encoded(doubts)
	}
	if one.Departure != nil {
		j.member("departure")
		j.encoded(one.Departure)
	}
	j.end('}')
}

// notApplicable names what does not apply to which parts. Parts of one kind share
// their list of requirements: on a large roof there are thousands of parts and
// some eighty lists.
func (j *jsonWriter) notApplicable(r *judge.Result) {
	type idle struct{ requirements, parts []string }
	var all []*idle
	byList := map[string]*idle{}
	var ids []string
	for part := range partsOf(r.Judgments) {
		ids = ids[:0]
		for _, one := range part {
			if !applies(one) {
				ids = append(ids, one.Requirement.ID)
			}
		}
		if len(ids) == 0 {
			continue
		}
		list := strings.Join(ids, " ")
		known := byList[list]
		if known == nil {
			known = &idle{requirements: slices.Clone(ids)}
			byList[list] = known
			all = append(all, known)
		}
		known.parts = append(known.parts, part[0].Subject.ID)
	}
	j.member("not_applicable")
	j.begin('[')
	for _, one := range all {
		j.item()
		j.begin('{')
		j.member("requirements")
		j.strings(one.requirements)
		j.member("parts")
		j.strings(one.parts)
		j.end('}')
		j.pause()
	}
	j.end(']')
}

func measuredOf(m *judge.Quantity) *jsonMeasured {
	if m == nil {
		return nil
	}
	return &jsonMeasured{m.Value, m.Unit, m.Fact}
}

func limitOf(comparison string, l *judge.Quantity) *jsonLimit {
	if l == nil {
		return nil
	}
	return &jsonLimit{comparison, l.Value, l.Unit, l.Fact, l.From}
}

// Count counts the judgments of a result by outcome.
func Count(r *judge.Result) Counts {
	s := Counts{Unlikely: len(r.Unlikely)}
	for _, u := range r.Unlikely {
		if !u.FailsCheck() {
			s.Departures++
		}
	}
	for _, j := range r.Judgments {
		switch j.Outcome {
		case judge.Met:
			s.Met++
		case judge.NotMet:
			s.NotMet++
		case judge.NotShown:
			s.NotShown++
		default:
			s.NotApplicable++
		}
		if j.Departure.Counts() {
			s.Departures++
		}
		if j.EitherWay {
			s.EitherWay++
		}
	}
	return s
}
