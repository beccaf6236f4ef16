package report

import (
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
)

// The report as Markdown (CommonMark with tables), short enough for a comment
// on a change: the verdict, how many, what to put right first, the findings
// with their lines.

const (
	markdownFirst = 5   // how many findings are told in full
	markdownRows  = 50  // how many findings the table lists
	markdownCell  = 300 // characters of one text
)

// markdownPart writes what there is to say of one document.
func markdownPart(w io.Writer, r *judge.Result, o Options) error {
	var b strings.Builder
	project := r.Document.Installation.Project
	fmt.Fprintf(&b, "## %s: %s, %s\n\n", upperFirst(strings.ToLower(verdict(r))), inline(project.Reference.Value), strings.ReplaceAll(project.Stage.Value, "_", " "))
	by := layersOf(r.RuleSet)
	if c := r.RuleSet.Changes; len(c) > 0 {
		by += ", " + changesOf(c)
	}
	fmt.Fprintf(&b, "File %s, judged by %s.\n\n", inline(r.Document.Name), inline(by))
	s := Count(r)
	b.WriteString("| unlikely | not met | not shown | met | does not apply | accepted in writing |\n|--:|--:|--:|--:|--:|--:|\n")
	fmt.Fprintf(&b, "| %d | %d | %d | %d | %d | %d |\n\n", s.Unlikely, s.NotMet, s.NotShown, s.Met, s.NotApplicable, s.Departures)
	if sources := sourcesOf(r); sources != "" {
		fmt.Fprintf(&b, "%s.\n\n", upperFirst(sources))
	}
	markdownUnlikely(&b, r)
	found := worstFirst(r, o)
	markdownToPutRight(&b, putRightFirst(r, o))
	markdownFindings(&b, r.Document.Name, found)
	markdownEitherWay(&b, AllEitherWay(r))
	if len(r.Unjudged) > 0 {
		fmt.Fprintf(&b, "### %s\n\n", unjudgedWords)
		for _, line := range unjudgedOf(r) {
			fmt.Fprintf(&b, "- %s\n", inline(line))
		}
		b.WriteString("\n")
	}
	for _, n := range r.Notes {
		fmt.Fprintf(&b, "Note: %s.\n\n", inline(n))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// worstFirst lists the findings, what does harm before the others, and else in the
// order of the document.
func worstFirst(r *judge.Result, o Options) []judge.Judgment {
	var found []judge.Judgment
	for _, j := range r.Judgments {
		if j.IsFinding() {
			found = append(found, j)
		}
	}
	slices.SortStableFunc(found, func(a, b judge.Judgment) int { return worst(a, b, o) })
	return found
}

// markdownToPutRight tells what to put right first.
func markdownToPutRight(b *strings.Builder, all []failure) {
	if len(all) == 0 {
		return
	}
	b.WriteString("### To put right first\n\n")
	for i, c := range all[:min(len(all), markdownFirst)] {
		j := c.worst
		fmt.Fprintf(b, "%d. **%s**, %s: %s.", i+1, inline(j.Requirement.Title), inline(strings.TrimSpace(j.Subject.Name+" "+c.sayMore())), inline(sayJudgment(j)))
		if j.Outcome == judge.NotMet && j.Requirement.Remedy != "" {
			b.WriteString(" " + inline(j.Requirement.Remedy))
		}
		b.WriteString("\n")
	}
	b.WriteString("\n")
}

func markdownFindings(b *strings.Builder, document string, found []judge.Judgment) {
	if len(found) == 0 {
		return
	}
	b.WriteString("### Findings\n\n| outcome | requirement | part | where | what |\n|---|---|---|---|---|\n")
	for i, j := range found {
		if i == markdownRows {
			fmt.Fprintf(b, "\nAnd %d more; the report of sunclause check lists all.\n", len(found)-i)
			break
		}
		what := inline(sayJudgment(j))
		if j.Departure != nil {
			what += "; " + inline(sayDeparture(j.Departure))
		}
		where := inline(fmt.Sprintf("%s:%d", document, j.Position.Line))
		fmt.Fprintf(b, "| %s | %s | %s | %s | %s |\n", strings.ToLower(standing(j)), inline(j.Requirement.ID), inline(j.Subject.ID), where, what)
	}
	b.WriteString("\n")
}

// markdownEitherWay tells what is met although it is not known to apply.
func markdownEitherWay(b *strings.Builder, all []EitherWay) {
	if len(all) == 0 {
		return
	}
	b.WriteString("### Met whether they apply or not\n\n")
	for i, e := range all {
		if i == markdownRows {
			fmt.Fprintf(b, "- and for %d more reasons; the report of sunclause check lists all\n", len(all)-i)
			break
		}
		fmt.Fprintf(b, "- %s: %s (%s)\n", inline(e.Lacks), inline(e.Says), inline(judge.Some(e.Requirements)))
	}
	b.WriteString("\n")
}

// markdownUnchecked writes in place of a report why there is none.
func markdownUnchecked(w io.Writer, u Unchecked, _ Options) error {
	var b strings.Builder
	fmt.Fprintf(&b, "## %s: %s\n\n", upperFirst(uncheckedWords), inline(u.Path))
	for i, e := range u.Errors {
		if i == markdownRows {
			fmt.Fprintf(&b, "- and %d more\n", len(u.Errors)-i)
			break
		}
		fmt.Fprintf(&b, "- %s\n", inline(e.String()))
	}
	b.WriteString("\n")
	_, err := io.WriteString(w, b.String())
	return err
}

// markdownReports puts the documents one after the other, and the cautions under
// them.
type markdownReports struct{ w io.Writer }

func collectMarkdown(w io.Writer, _ Options) Collector { return markdownReports{w} }

func (m markdownReports) Add(write func(io.Writer) error) error { return write(m.w) }

func (m markdownReports) End(_ *ruleset.RuleSet, summary *Summary) error {
	var b strings.Builder
	if summary != nil {
		markdownSummary(&b, summary)
	}
	b.WriteString("### Cautions\n\n- " + strings.Join(Cautions, "\n- ") + "\n")
	_, err := io.WriteString(m.w, b.String())
	return err
}

func markdownSummary(b *strings.Builder, s *Summary) {
	fmt.Fprintf(b, "## Summary of %s\n\n%s.\n\n", judge.Many(len(s.Jobs), "installation"), upperFirst(s.Totals()))
	b.WriteString("| verdict | installation | not met | not shown | to put right first |\n|---|---|--:|--:|---|\n")
	for _, job := range s.Jobs {
		notMet, notShown := "", ""
		if job.Counts != nil {
			notMet, notShown = fmt.Sprint(job.Counts.NotMet), fmt.Sprint(job.Counts.NotShown)
		}
		first := make([]string, len(job.First))
		for i, d := range job.First {
			first[i] = fmt.Sprintf("%d. %s", i+1, inline(d.say()))
		}
		fmt.Fprintf(b, "| %s | %s | %s | %s | %s |\n", job.Verdict.Words(), inline(job.name()), notMet, notShown, strings.Join(first, " "))
	}
	b.WriteString("\n")
}

// Texts that are the same to every reader of Markdown, whatever it adds to the
// standard: no markup, no link, no mention of a person, no picture by name.
var (
	harmless = regexp.MustCompile(`^[\pL\pM\pN .,;:%()/+='"°²³·×≤≥–…_-]*$`)
	harmful  = regexp.MustCompile(`://|:[\w+-]+:|%\d|\pL\.\pL|(^|[^\pL\pN])_|_($|[^\pL\pN])`)
)

// inline writes a text of a document or a rule set into a line of Markdown,
// where it can neither end the line or the cell nor mean anything: as it is
// where it is harmless, else as code.
func inline(s string) string {
	s = strings.TrimSpace(Visible(s))
	if characters := []rune(s); len(characters) > markdownCell {
		s = string(characters[:markdownCell]) + "…"
	}
	switch {
	case harmless.MatchString(s) && !harmful.MatchString(s):
		return s
	case !strings.ContainsAny(s, "`|"):
		return "`" + s + "`"
	}
	// A backtick would end the code and a bar the cell, however they are written
	// in code; so the code is HTML, and whatever is no letter is a reference.
	var b strings.Builder
	for _, r := range s {
		if r < 128 && !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != ' ' {
			fmt.Fprintf(&b, "&#%d;", r)
			continue
		}
		b.WriteRune(r)
	}
	return "<code>" + b.String() + "</code>"
}
