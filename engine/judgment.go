package engine

import (
	"cmp"
	"math"
	"reflect"
	"slices"
	"strings"

	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Outcome is what is stated of one requirement for one part.
type Outcome string

// The four outcomes.
const (
	Met           Outcome = "met"
	NotMet        Outcome = "not_met"
	NotShown      Outcome = "not_shown"
	NotApplicable Outcome = "not_applicable"
)

// Judgment is one requirement held against one part of the installation.
type Judgment struct {
	Requirement *Requirement
	Subject     working.Subject
	Position    schema.Position
	Outcome     Outcome
	Measured    *Quantity // nil when the requirement measures nothing or does not apply, or it is unknown
	Limit       *Quantity // nil likewise
	MarginPct   *float64  // how far inside the limit, in % of it; below zero when beyond
	Message     string    // for a Rego rule, what it said
	Missing     []string  // for not shown: JSON pointers of what would have to be stated
	Departure   *Departure

	facts reflect.Value // of the subject; not valid where there is none
}

// Quantity is a value that was compared, or what it was compared with.
type Quantity struct {
	Value any    // float64, string, bool or []string
	Unit  string // "" for words and counts
	Fact  string // name of the fact, as in strings.voc_max_v; "" for a plain value
	From  string // name of the parameter, when the limit is one
}

// IsFinding tells whether the judgment is one that somebody has to look at.
func (j Judgment) IsFinding() bool { return j.Outcome == NotMet || j.Outcome == NotShown }

// Counts reports whether the judgment makes a check fail.
func (j Judgment) Counts(strict bool) bool {
	if j.Requirement.Level != Shall && !strict {
		return false
	}
	return j.Outcome == NotShown || j.Outcome == NotMet && (j.Departure == nil || j.Departure.Void != "")
}

// judge states the outcome of one requirement for every part it is about.
func (r *Result) judge(q *Requirement, found findings) []Judgment {
	k := subjectKinds[q.Subject]
	parts, stated := r.partsOf(k)
	if !stated || len(parts) == 0 {
		return []Judgment{r.noSubjects(q, k, stated)}
	}
	elsewhere := r.missingElsewhere(q)
	all := make([]Judgment, len(parts))
	for i, p := range parts {
		all[i] = r.judgeOne(q, k, p, elsewhere, found)
	}
	return all
}

// judgedPart is a part with its facts and its place in the document, found once
// for all requirements.
type judgedPart struct {
	working.Subject
	facts    reflect.Value
	position schema.Position
}

func (r *Result) partsOf(k subjectKind) (parts []judgedPart, stated bool) {
	subjects, stated := subjectsOf(r.Facts, k)
	if parts, known := r.parts[k.name]; known {
		return parts, stated
	}
	for _, s := range subjects {
		who := subjectOf(s)
		parts = append(parts, judgedPart{who, s, r.Document.Position(who.At)})
	}
	if r.parts == nil {
		r.parts = map[string][]judgedPart{}
	}
	r.parts[k.name] = parts
	return parts, stated
}

// noSubjects states a requirement that is about no part: it does not apply when
// the document says there are none, and is not shown when it does not say.
func (r *Result) noSubjects(q *Requirement, k subjectKind, stated bool) Judgment {
	at := facts.Lists[k.name]
	j := Judgment{
		Requirement: q, Outcome: NotApplicable,
		Subject:  working.Subject{ID: wholeInstallation, At: at, Name: "the installation"},
		Position: r.Document.Position(at),
	}
	if !stated {
		j.Outcome, j.Missing = NotShown, []string{at}
	}
	return j
}

func (r *Result) judgeOne(q *Requirement, k subjectKind, part judgedPart, elsewhere []string, found findings) Judgment {
	j := Judgment{Requirement: q, Subject: part.Subject, Position: part.position, facts: part.facts}
	asked := r.RuleSet.asked[q]
	if found.excludes(asked, part.ID) {
		j.Outcome = NotApplicable
		return j
	}
	j.measure(r, k, part.facts)
	if lacks, missing := r.missing(q, k, part.facts); lacks || len(elsewhere) > 0 {
		j.Outcome, j.Missing = NotShown, merged(missing, elsewhere)
		return j
	}
	if f, broken := found.breaks(q, asked, part.ID); broken {
		j.Outcome, j.Message = NotMet, f.Message
		return j
	}
	j.Outcome = Met
	return j
}

// missing names what a requirement would need of its subject and has not got.
// That comes first from the conditions under which it applies, then from what
// is compared, and for a Rego rule from what the rule was seen to read.
func (r *Result) missing(q *Requirement, k subjectKind, subject reflect.Value) (bool, []string) {
	var names []string
	for _, w := range q.When {
		names = append(names, w.Fact, w.Limit.Fact)
	}
	if !q.Rego {
		names = append(names, q.Measure, q.Limit.Fact)
	}
	for _, read := range q.reads.Facts {
		if read.Own {
			names = append(names, ownName(read.Path))
		}
	}
	lacks := false
	var missing []string
	for _, name := range names {
		if v, ok := r.factOf(k, subject, name); ok && v.plain == nil {
			lacks = true
			missing = append(missing, v.missing...)
		}
	}
	return lacks, missing
}

// ownName is the fact at the end of a read: strings.*.voc_max_v. What stands
// below the whole installation is named so.
func ownName(path []string) string {
	if path[0] == wholeInstallation && len(path) == 2 {
		return wholeInstallation + "." + path[1]
	}
	if len(path) < 3 {
		return ""
	}
	return path[2]
}

// missingElsewhere names what a Rego rule reads from parts other than the one
// it judges, and some such part has not got. Then nothing it says can be relied
// upon for any part.
func (r *Result) missingElsewhere(q *Requirement) []string {
	var missing []string
	for _, read := range q.reads.Facts {
		k, ok := subjectKinds[read.Path[0]]
		if read.Own || !ok {
			continue
		}
		subjects, stated := subjectsOf(r.Facts, k)
		if !stated {
			missing = append(missing, facts.Lists[k.name])
		}
		for _, s := range subjects {
			if v, ok := r.factOf(k, s, ownName(read.Path)); ok && v.plain == nil {
				missing = append(missing, append(v.missing, subjectOf(s).At)...)
			}
		}
	}
	return missing
}

// factOf reads a fact by its name, of the subject or of the installation.
func (r *Result) factOf(k subjectKind, subject reflect.Value, name string) (value, bool) {
	subject, f, ok := r.fieldOf(k, subject, name)
	if !ok {
		return value{}, false
	}
	return valueOf(subject, f), true
}

// fieldOf finds where a fact is kept: with the subject, or with the installation.
func (r *Result) fieldOf(k subjectKind, subject reflect.Value, name string) (reflect.Value, factField, bool) {
	if whole, ok := strings.CutPrefix(name, wholeInstallation+"."); ok {
		k, name = subjectKinds[wholeInstallation], whole
		subject = reflect.ValueOf(r.Facts).Elem().Field(k.field)
	}
	f, ok := k.byName[name]
	return subject, f, ok
}

// measure fills in what was compared with what, as far as it is known.
func (j *Judgment) measure(r *Result, k subjectKind, subject reflect.Value) {
	q := j.Requirement
	if v, ok := r.factOf(k, subject, q.Measure); ok && v.plain != nil {
		j.Measured = &Quantity{Value: v.plain, Unit: v.unit, Fact: fullName(q.Subject, q.Measure)}
	}
	switch limit := q.Limit; {
	case limit.Fact != "":
		if v, ok := r.factOf(k, subject, limit.Fact); ok && v.plain != nil {
			j.Limit = &Quantity{Value: v.plain, Unit: v.unit, Fact: fullName(q.Subject, limit.Fact)}
		}
	case limit.Parameter != "":
		j.Limit = &Quantity{Value: r.RuleSet.operandValue(limit), Unit: r.RuleSet.Book.Parameters[limit.Parameter].Unit, From: limit.Parameter}
	case limit.Value != nil:
		j.Limit = &Quantity{Value: limit.Value}
		if j.Measured != nil {
			j.Limit.Unit = j.Measured.Unit
		}
	}
	j.MarginPct = margin(q.Comparison, j.Measured, j.Limit)
}

// Number is the working of what a judgment measured; nil when that is no number.
func (r *Result) Number(j Judgment) *working.Number {
	return r.numberOf(j, j.Requirement.Measure)
}

// LimitNumber is the working of the fact that a judgment was held against; nil
// when that is no fact, or no number.
func (r *Result) LimitNumber(j Judgment) *working.Number {
	return r.numberOf(j, j.Requirement.Limit.Fact)
}

func (r *Result) numberOf(j Judgment, fact string) *working.Number {
	if !j.facts.IsValid() {
		return nil
	}
	subject, f, ok := r.fieldOf(subjectKinds[j.Requirement.Subject], j.facts, fact)
	if !ok || f.kind != aNumber {
		return nil
	}
	n := subject.FieldByIndex(f.index).Interface().(working.Number)
	return &n
}

func fullName(subject, fact string) string {
	if strings.HasPrefix(fact, wholeInstallation+".") {
		return fact
	}
	return subject + "." + fact
}

// margin is how far a value is inside its limit, in % of the limit.
func margin(comparison string, measured, limit *Quantity) *float64 {
	if measured == nil || limit == nil {
		return nil
	}
	v, ok1 := measured.Value.(float64)
	l, ok2 := limit.Value.(float64)
	if !ok1 || !ok2 || l == 0 {
		return nil
	}
	var m float64
	switch comparison {
	case "at_most", "below":
		m = 100 * (l - v) / math.Abs(l)
	case "at_least", "above":
		m = 100 * (v - l) / math.Abs(l)
	default:
		return nil
	}
	m = math.Round(m*100) / 100
	return &m
}

func merged(lists ...[]string) []string {
	var all []string
	for _, l := range lists {
		all = append(all, l...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// sort puts judgments in the order of the document, and those of one part in
// the order of the requirements' ids.
func (r *Result) sort() {
	slices.SortFunc(r.Judgments, func(x, y Judgment) int {
		return cmp.Or(
			cmp.Compare(x.Position.Line, y.Position.Line), cmp.Compare(x.Position.Column, y.Position.Column),
			cmp.Compare(x.Subject.ID, y.Subject.ID), cmp.Compare(x.Requirement.ID, y.Requirement.ID))
	})
}
