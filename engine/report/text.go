package report

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
)

// Text writes the report for an installer's eye: by part of the installation,
// worst first, each value against its limit with the clause and what would put
// it right. It stays readable on 60 columns.
func Text(w io.Writer, r *judge.Result, o Options) error {
	p := newPage(w, o)
	p.head(r)
	p.unlikely(r.Unlikely)
	p.unstated(r)
	for _, part := range byPart(r, o) {
		p.part(r, part)
	}
	p.eitherWay(r)
	p.unjudged(r)
	p.notes(r.Notes)
	p.cautions()
	return p.err
}

// textUnchecked writes in place of a report why there is none.
func textUnchecked(w io.Writer, u Unchecked, o Options) error {
	p := newPage(w, o)
	p.line(0, bold, u.Path)
	p.blank()
	p.line(0, bad, strings.ToUpper(uncheckedWords))
	for _, e := range u.Errors {
		p.line(2, plain, e.String())
	}
	p.blank()
	p.cautions()
	return p.err
}

// textReports puts reports one under the other, a line between them.
type textReports struct {
	w       io.Writer
	options Options
	more    bool // than none
}

func collectText(w io.Writer, o Options) Collector { return &textReports{w: w, options: o} }

func (t *textReports) Add(write func(io.Writer) error) error {
	if t.more {
		if err := t.divide(); err != nil {
			return err
		}
	}
	t.more = true
	return write(t.w)
}

func (t *textReports) divide() error {
	_, err := io.WriteString(t.w, "\n"+strings.Repeat("-", 30)+"\n\n")
	return err
}

func (t *textReports) End(_ *ruleset.RuleSet, summary *Summary) error {
	if summary == nil {
		return nil
	}
	if err := t.divide(); err != nil {
		return err
	}
	p := newPage(t.w, t.options)
	p.summary(summary)
	return p.err
}

// partOf is the judgments of one part of the installation.
type partOf struct {
	subject   working.Subject
	judgments []judge.Judgment
}

// byPart groups the judgments to be listed by part, worst part first and worst
// judgment first.
// What the document says nothing at all of is told before, unless all is listed.
func byPart(r *judge.Result, o Options) []partOf {
	var parts []partOf
	index := map[string]int{}
	for _, j := range r.Judgments {
		if !o.All && (!j.IsFinding() || onlyMissingSections(r, j)) {
			continue
		}
		i, ok := index[j.Subject.ID]
		if !ok {
			i = len(parts)
			index[j.Subject.ID] = i
			parts = append(parts, partOf{subject: j.Subject})
		}
		parts[i].judgments = append(parts[i].judgments, j)
	}
	for _, p := range parts {
		slices.SortStableFunc(p.judgments, func(a, b judge.Judgment) int { return worst(a, b, o) })
	}
	slices.SortStableFunc(parts, func(a, b partOf) int { return worst(a.judgments[0], b.judgments[0], o) })
	return parts
}

// worst compares two judgments, the worse being the less: what does more harm
// stands before what does less.
func worst(a, b judge.Judgment, o Options) int {
	return cmp.Or(cmp.Compare(badness(a, o), badness(b, o)), byHarm(a.Requirement, b.Requirement))
}

// badness orders judgments, the worst being the least.
func badness(j judge.Judgment, o Options) int {
	n := 7
	switch j.Outcome {
	case judge.NotMet:
		n = 0
	case judge.NotShown:
		n = 2
	case judge.Met:
		n = 6
	}
	if n < 6 && !j.FailsCheck(o.Strict) {
		n += 3
	}
	return n
}

func (p *page) head(r *judge.Result) {
	project := r.Document.Installation.Project
	stage := strings.ReplaceAll(project.Stage.Value, "_", " ")
	p.line(0, bold, fmt.Sprintf("%s, %s", project.Reference.Value, stage))
	p.line(0, plain, r.Document.Name)
	p.line(0, plain, "by "+layersOf(r.RuleSet))
	if c := r.RuleSet.Changes; len(c) > 0 {
		p.line(0, plain, changesOf(c))
	}
	p.blank()
	p.line(0, verdictStyle(r), verdict(r))
	p.line(0, plain, counts(Count(r)))
	if sources := sourcesOf(r); sources != "" {
		p.line(0, faint, sources)
	}
	p.blank()
}

func layersOf(s *ruleset.RuleSet) string { return layerNames(s.Layers) }

func layerNames(layers []ruleset.LayerInfo) string {
	names := make([]string, len(layers))
	for i, l := range layers {
		names[i] = l.Name + " " + l.Version
	}
	return strings.Join(names, " over ")
}

// changesOf says how much the sets above changed in those below, so that
// nothing is loosened unseen.
func changesOf(changes []ruleset.Change) string {
	var loosened []string
	for _, c := range changes {
		if c.Loosens {
			loosened = append(loosened, cmp.Or(c.Requirement, c.Parameter, c.Table))
		}
	}
	text := "with " + judge.Many(len(changes), "change") + " to the sets below"
	if len(loosened) > 0 {
		text += ", a shall loosened by that of " + judge.Some(loosened)
	}
	return text + "; sunclause rules lists them"
}

func verdict(r *judge.Result) string {
	words := strings.ToUpper(VerdictOf(r).Words())
	if r.NothingToCheck() {
		words += ": THERE WAS NOTHING TO CHECK"
	}
	return words
}

func verdictStyle(r *judge.Result) style {
	if r.Passes {
		return good
	}
	return bad
}

func counts(s Counts) string {
	text := fmt.Sprintf("%d not met, %d not shown, %d met, %d not applicable", s.NotMet, s.NotShown, s.Met, s.NotApplicable)
	if s.Unlikely > 0 {
		text = fmt.Sprintf("%d unlikely, ", s.Unlikely) + text
	}
	if s.Departures > 0 {
		of := "not met"
		if s.Unlikely > 0 {
			of += " and unlikely"
		}
		text += fmt.Sprintf("; %d of the %s accepted in writing", s.Departures, of)
	}
	if s.EitherWay > 0 {
		text += fmt.Sprintf("; %d of the met whether they apply or not", s.EitherWay)
	}
	return text
}

func (p *page) part(r *judge.Result, part partOf) {
	line := r.Document.Position(part.subject.At).Line
	p.line(0, bold, fmt.Sprintf("%s (line %d)", upperFirst(part.subject.Name), line))
	for _, together := range part.alike(p.options) {
		if len(together) == 1 {
			p.judgment(r, together[0])
		} else {
			p.together(r, together)
		}
	}
	p.blank()
}

// alike keeps the order of the judgments, and puts with the first that is not
// shown all others that lack the same.
func (part partOf) alike(o Options) [][]judge.Judgment {
	var all [][]judge.Judgment
	index := map[string]int{}
	for _, j := range part.judgments {
		if j.Outcome == judge.NotShown && !o.All {
			same := fmt.Sprint(j.FailsCheck(o.Strict), j.Requirement.Level, j.Missing)
			if i, seen := index[same]; seen {
				all[i] = append(all[i], j)
				continue
			}
			index[same] = len(all)
		}
		all = append(all, []judge.Judgment{j})
	}
	return all
}

// together tells of several requirements that are not shown because the same is
// missing.
func (p *page) together(r *judge.Result, all []judge.Judgment) {
	first := all[0]
	words := fmt.Sprintf("%s: %d requirements", outcomeWords[first.Outcome], len(all))
	if !first.FailsCheck(p.options.Strict) {
		words += " (should)"
	}
	p.line(2, p.styleOf(first), words)
	p.line(4, plain, upperFirst(first.SayMissing()))
	p.missing(r, first)
	ids := make([]string, len(all))
	for i, j := range all {
		ids[i] = j.Requirement.ID
	}
	p.line(4, faint, strings.Join(ids, ", "))
}

// upperFirst makes a sentence begin with a capital, unless it begins with the
// name of a member, which is written as in the document.
func upperFirst(s string) string {
	first, size := utf8.DecodeRuneInString(s)
	word, _, _ := strings.Cut(s, " ")
	if first == utf8.RuneError || strings.ContainsAny(strings.TrimRight(word, ".,:"), "._[") {
		return s
	}
	return string(unicode.ToUpper(first)) + s[size:]
}

var outcomeWords = map[judge.Outcome]string{
	judge.Met: "met", judge.NotMet: "NOT MET", judge.NotShown: "NOT SHOWN", judge.NotApplicable: "does not apply",
}

// standing is the outcome of a judgment in words, with what weakens it.
func standing(j judge.Judgment) string {
	words := outcomeWords[j.Outcome]
	if j.Departure != nil {
		words += ", departure"
	}
	if j.Requirement.Level == ruleset.Should && j.IsFinding() {
		words += " (should)"
	}
	return words
}

// sayJudgment says what was measured against what, or what is not stated.
func sayJudgment(j judge.Judgment) string {
	return upperFirst(strings.TrimPrefix(j.Describe(), "not shown: "))
}

func (p *page) judgment(r *judge.Result, j judge.Judgment) {
	q := j.Requirement
	p.line(2, p.styleOf(j), standing(j)+": "+q.Title)
	if j.Outcome == judge.NotApplicable {
		return
	}
	p.line(4, plain, sayJudgment(j))
	if j.Outcome == judge.Met {
		p.line(4, faint, idOf(j)+", "+Cite(q.Source))
		return
	}
	p.missing(r, j)
	if q.Remedy != "" && j.Outcome == judge.NotMet {
		p.line(4, plain, "To put it right: "+q.Remedy)
	}
	if d := j.Departure; d != nil {
		p.line(4, plain, sayDeparture(d))
	}
	p.line(4, faint, idOf(j))
	p.line(4, faint, Cite(q.Source))
	for _, c := range q.Changes {
		p.line(4, faint, sayChange(c))
	}
}

// idOf names the requirement, and the fact to look for in the working.
func idOf(j judge.Judgment) string {
	if j.Measured == nil {
		return j.Requirement.ID
	}
	return j.Requirement.ID + " (" + j.Measured.Fact + ")"
}

func sayChange(c ruleset.Change) string {
	what := c.Parameter
	if what == "" {
		what = c.Table
	}
	return strings.TrimSpace("changed by "+c.Set+" on "+c.Date+": "+what) + fmt.Sprintf(" %s, was %s. %s", c.To, c.From, c.Reason)
}

func (p *page) styleOf(j judge.Judgment) style {
	switch {
	case j.Outcome == judge.Met:
		return good
	case j.Outcome == judge.NotApplicable:
		return faint
	case j.FailsCheck(p.options.Strict) && j.Outcome == judge.NotMet:
		return bad
	}
	return doubt
}

// placesOf lists the places in the document that some gaps name, those with which
// something disagrees too.
func placesOf(gaps []working.Gap) []string {
	var all []string
	for _, g := range gaps {
		for _, at := range []string{g.At, g.With} {
			if strings.HasPrefix(at, "/") {
				all = append(all, at)
			}
		}
	}
	return all
}

// missing says on which lines the missing members would stand, and those with which
// something is the matter.
func (p *page) missing(r *judge.Result, j judge.Judgment) {
	if j.Outcome != judge.NotShown {
		return
	}
	var lines []int
	for _, at := range placesOf(j.Missing) {
		lines = append(lines, r.Document.Position(at).Line)
	}
	slices.Sort(lines)
	lines = slices.Compact(lines)
	lines = lines[:min(len(lines), 5)]
	if len(lines) > 0 {
		p.line(4, plain, "Look at line "+strings.Trim(strings.ReplaceAll(fmt.Sprint(lines), " ", ", "), "[]"))
	}
}

func sayDeparture(d *judge.Departure) string {
	text := fmt.Sprintf("Departure accepted by %s on %s: %s", d.Author, d.Date, d.Reason)
	if d.Until != "" {
		text += " (until " + d.Until + ")"
	}
	if d.Void != "" {
		text += "; it does not count: " + d.Void
	}
	return text
}

// Cite writes a source in one line, and says how far it can be trusted.
func Cite(s working.Source) string {
	text := s.Document
	switch {
	case s.Edition == "":
	case strings.Contains(s.Edition, " "):
		text += ", " + s.Edition
	default:
		text += ":" + s.Edition
	}
	if s.Clause != "" {
		text += ", " + s.Clause
	}
	switch {
	case s.Verified || s.How == working.Definition:
		return text
	case s.How == working.CommonPractice:
		return text + " (common practice, no published source)"
	case s.How == working.Memory:
		return text + " (clause from memory, check your copy)"
	case s.How == working.Read:
		return text + " (read second-hand, check your copy)"
	}
	return text
}

func (p *page) notes(notes []string) {
	if len(notes) == 0 {
		return
	}
	p.line(0, bold, "Notes")
	for _, n := range notes {
		p.line(2, plain, n)
	}
	p.blank()
}

func (p *page) cautions() {
	p.line(0, bold, "Cautions")
	for _, c := range Cautions {
		p.line(2, plain, c)
	}
}
