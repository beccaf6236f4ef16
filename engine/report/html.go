package report

import (
	"embed"
	"fmt"
	"html/template"
	"io"
	"math"
	"slices"
	"sort"
	"strings"
	"sync"

	"sunclause/engine/judge"
	"sunclause/engine/report/drawing"
	"sunclause/engine/ruleset"
	"sunclause/facts/working"
)

//go:embed html.tmpl batch.tmpl
var htmlFiles embed.FS

//go:embed html.css
var htmlStyle string

// htmlTemplate escapes whatever comes from a document or a rule set. It is read
// when a page is asked for, and not at every start.
var htmlTemplate = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("html.tmpl").Funcs(template.FuncMap{"soft": soft}).ParseFS(htmlFiles, "*.tmpl"))
})

// soft lets a browser break names such as emergency_shutdown where their words
// meet, and not in the middle of one.
func soft(words string) template.HTML {
	return template.HTML(strings.ReplaceAll(template.HTMLEscapeString(words), "_", "_<wbr/>"))
}

// HTML writes the report as one file that needs nothing else: no script, no
// picture, no font from elsewhere. It prints on A4 and Letter.
func HTML(w io.Writer, r *judge.Result, o Options) error {
	page := htmlPage(r, o)
	page.Style = Style()
	return writePage(w, "html.tmpl", page)
}

// writePage fills one of the templates in.
func writePage(w io.Writer, name string, page any) error {
	var text strings.Builder
	if err := htmlTemplate().ExecuteTemplate(&text, name, page); err != nil {
		return err
	}
	// U+FFFE and U+FFFF are no characters; a strict reader of the page would stop at them.
	for line := range strings.Lines(strings.NewReplacer("\ufffe", "\ufffd", "\uffff", "\ufffd").Replace(text.String())) {
		if _, err := io.WriteString(w, Visible(strings.TrimSuffix(line, "\n"))+"\n"); err != nil {
			return err
		}
	}
	return nil
}

// Style is the style sheet of the pages and drawings.
func Style() template.CSS { return drawing.Style() + template.CSS(htmlStyle) }

// htmlReport is what the template shows.
type htmlReport struct {
	Style              template.CSS
	Title, Stage       string
	Scope, Remark      string
	Document, RuleSets string
	Sources            string
	Changes            string
	Passes             bool
	Verdict            string
	Counts             Counts
	Unlikely           []htmlUnlikely
	LookAgain          string
	First              []htmlFirst
	Drawings           []drawing.Drawing
	Rest               int // findings that count, beyond the first
	Unstated           []Unstated
	Advice             string // on what is not stated
	Parts              []htmlPart
	Met                []htmlMet
	Idle               int // requirements that apply to no part
	EitherWay          []EitherWay
	Unjudged           []string
	Excerpts           []excerpt
	Notes, Cautions    []string
}

// htmlPart is what needs a look at one part, and where all is asked for, what is
// met there.
type htmlPart struct {
	Name, Anchor  string
	Line          int
	Findings, Met []htmlRow
}

// htmlMet is a requirement that is met wherever it applies, shown for the part
// that has least in hand.
type htmlMet struct {
	Room, Part string
	Parts      int
	htmlRow
}

// htmlRow is one requirement of one part.
type htmlRow struct {
	Outcome, Class string
	Should         bool
	Title, ID      string
	Says           string
	About          string // what a bare word, yes or no is about
	Value, Limit   string
	Margin         *marginBar
	Clause, Remedy string
	Departure      string
	Changes        []string
	Lines          []int
	Linked         bool // whether those lines stand in the report
	Working        []workingLine
	Alike          []htmlRow // requirements that are not shown because the same is missing, this one first
}

func htmlPage(r *judge.Result, o Options) htmlReport {
	project := r.Document.Installation.Project
	page := htmlReport{
		Sources: upperFirst(sourcesOf(r)), Scope: scopeOf(r), Remark: project.Note.Value,
		Title: Visible(project.Reference.Value), Stage: strings.ReplaceAll(project.Stage.Value, "_", " "),
		Document: r.Document.Name, RuleSets: layersOf(r.RuleSet), Passes: r.Passes, Verdict: verdict(r), Counts: Count(r),
		Notes: r.Notes, Cautions: Cautions, Drawings: Drawings(r), EitherWay: AllEitherWay(r),
		Unjudged: unjudgedOf(r),
	}
	if c := r.RuleSet.Changes; len(c) > 0 {
		page.Changes = changesOf(c)
	}
	lines := map[int]bool{}
	page.Unlikely, page.LookAgain = htmlUnlikelyOf(r, lines), judge.LookAgain
	page.Unstated = AllUnstated(r)
	page.Advice = adviceOn(page.Unstated)
	for i, part := range byPart(r, o) {
		if p := htmlPartOf(r, part, o, fmt.Sprintf("part-%d", i+1), lines); len(p.Findings)+len(p.Met) > 0 {
			page.Parts = append(page.Parts, p)
		}
	}
	page.first(r, o)
	page.Met, page.Idle = metOf(r)
	page.Excerpts = excerpts(r.Document.Raw, lines)
	return page
}

// whatToDo is the remedy, or for what is not shown the members to state.
func whatToDo(j judge.Judgment) string {
	if j.Outcome == judge.NotShown {
		return upperFirst(j.SayMissing()) + "."
	}
	return j.Requirement.Remedy
}

func htmlPartOf(r *judge.Result, part partOf, o Options, anchor string, lines map[int]bool) htmlPart {
	p := htmlPart{Name: upperFirst(part.subject.Name), Anchor: anchor, Line: r.Document.Position(part.subject.At).Line}
	for _, together := range part.alike(o) {
		switch j := together[0]; {
		case j.Outcome == judge.Met:
			p.Met = append(p.Met, htmlRowOf(r, j)) // without working, which would be a hundred megabytes for a large roof
		case j.IsFinding():
			row := findingRow(r, together)
			p.Findings = append(p.Findings, row)
			for _, l := range append(row.Lines, p.Line) {
				lines[l] = true
			}
		}
	}
	return p
}

// findingRow is one requirement that is not met or not shown, or several that are
// not shown because the same is missing.
func findingRow(r *judge.Result, together []judge.Judgment) htmlRow {
	row := htmlRowOf(r, together[0])
	row.Linked, row.Working = true, workingOf(r, together[0])
	if len(together) == 1 {
		return row
	}
	for _, j := range together {
		row.Alike = append(row.Alike, htmlRowOf(r, j))
	}
	row.Value, row.Limit, row.About, row.Margin, row.Working = "", "", "", nil, nil
	return row
}

// metOf lists the requirements that are met wherever they apply, by room, and
// counts those that apply nowhere.
func metOf(r *judge.Result) (all []htmlMet, idle int) {
	least, parts, found := map[string]judge.Judgment{}, map[string]int{}, map[string]bool{}
	for _, j := range r.Judgments {
		id := j.Requirement.ID
		switch j.Outcome {
		case judge.Met:
			parts[id]++
			if known, seen := least[id]; !seen || marginOf(j) < marginOf(known) {
				least[id] = j
			}
		case judge.NotMet, judge.NotShown:
			found[id] = true
		}
	}
	for _, q := range slices.SortedStableFunc(slices.Values(r.RuleSet.Requirements), byHarm) {
		switch j, met := least[q.ID]; {
		case met && !found[q.ID]:
			row := htmlRowOf(r, j)
			row.Working = workingOf(r, j)
			all = append(all, htmlMet{roomWords(q.Room), upperFirst(j.Subject.Name), parts[q.ID], row})
		case !met && !found[q.ID]:
			idle++
		}
	}
	return all, idle
}

// marginOf orders what is met: the one with least in hand first.
func marginOf(j judge.Judgment) float64 {
	if j.MarginPct == nil {
		return math.Inf(1)
	}
	return *j.MarginPct
}

var htmlClasses = map[judge.Outcome]string{
	judge.Met: "met", judge.NotMet: "broken", judge.NotShown: "unshown",
}

func htmlRowOf(r *judge.Result, j judge.Judgment) htmlRow {
	q := j.Requirement
	row := htmlRow{
		Outcome: strings.ToLower(outcomeWords[j.Outcome]), Class: htmlClasses[j.Outcome], Should: q.Level == ruleset.Should,
		Title: q.Title, ID: idOf(j), Clause: Cite(q.Source), Remedy: whatToDo(j),
	}
	if j.Outcome == judge.Met {
		row.Remedy = ""
	}
	if j.Outcome == judge.NotMet && j.Message != "" {
		row.Says = j.Message
	}
	row.Value, row.Limit = j.ValueAndLimit()
	row.About = j.About()
	row.Margin = marginBarOf(j)
	if d := j.Departure; d != nil {
		row.Departure = sayDeparture(d)
	}
	for _, c := range q.Changes {
		row.Changes = append(row.Changes, sayChange(c))
	}
	row.Lines = linesOf(r, j)
	return row
}

// linesOf lists the lines of the document that a judgment rests on, or where
// what it lacks would stand.
func linesOf(r *judge.Result, j judge.Judgment) []int {
	pointers := placesOf(j.Missing)
	if n := r.Number(j); n != nil {
		pointers = n.Pointers()
	}
	seen := map[int]bool{}
	var lines []int
	for _, p := range pointers {
		if !strings.HasPrefix(p, "/") {
			continue
		}
		if l := r.Document.Position(p).Line; !seen[l] && len(lines) < 8 {
			seen[l] = true
			lines = append(lines, l)
		}
	}
	sort.Ints(lines)
	return lines
}

// marginBar draws how a value stands to its limit: a bar, and a tick where the
// limit is. Positions are in units of the drawing, 120 wide.
type marginBar struct {
	Length, Tick float64
	Words        string
}

const (
	barWidth = 120.0
	barTick  = 80.0
)

func marginBarOf(j judge.Judgment) *marginBar {
	if j.MarginPct == nil || j.Measured == nil || j.Limit == nil {
		return nil
	}
	v, _ := j.Measured.Value.(float64)
	l, _ := j.Limit.Value.(float64)
	b := &marginBar{Tick: barTick, Length: math.Round(10*math.Max(1, math.Min(barWidth, barTick*v/l))) / 10}
	if v < 0 || l <= 0 {
		return nil
	}
	words := func(m float64, after string) string { return working.Plain(math.Round(10*m)/10) + " % " + after }
	if *j.MarginPct < 0 {
		b.Words = words(-*j.MarginPct, "beyond")
	} else {
		b.Words = words(*j.MarginPct, "in hand")
	}
	return b
}
