package report

import (
	"fmt"
	"strings"

	"sunclause/engine/judge"
)

// summaryVersion is raised when a member of the summary changes its meaning or
// goes; a new member does not raise it.
const summaryVersion = 1

// Summary is how the documents of a batch came out, a line a job, as
// schema/summary.schema.json describes it.
type Summary struct {
	Pass       int   `json:"pass"`
	DoNotPass  int   `json:"do_not_pass"`
	NotChecked int   `json:"could_not_be_checked"`
	Jobs       []Job `json:"jobs"`
}

// Job is how one document of a batch came out.
type Job struct {
	Path      string  `json:"path"`
	Reference string  `json:"reference,omitempty"`
	Verdict   Verdict `json:"verdict"`
	Counts    *Counts `json:"counts,omitempty"` // nil where it could not be checked
	First     []ToDo  `json:"first"`
}

// Verdict is how a check of one document ended.
type Verdict string

// The verdicts.
const (
	Passes      Verdict = "passes"
	DoesNotPass Verdict = "does_not_pass"
	NotChecked  Verdict = "could_not_be_checked"
)

// VerdictOf is the verdict on a document that was judged.
func VerdictOf(r *judge.Result) Verdict {
	if r.Passes {
		return Passes
	}
	return DoesNotPass
}

// Words are the verdict as people read it.
func (v Verdict) Words() string { return strings.ReplaceAll(string(v), "_", " ") }

// ToDo is one thing to put right: an unlikely value, a requirement with the part
// that stands worst, or a reason why a document could not be checked.
type ToDo struct {
	Requirement string `json:"requirement,omitempty"`
	Part        string `json:"part,omitempty"` // id
	Line        int    `json:"line,omitempty"`
	What        string `json:"what"`
	Remedy      string `json:"remedy,omitempty"`
}

// mostToDo is how many things to put right the summary names for each job.
const mostToDo = 3

// JobOf is how a document came out that was judged. It keeps nothing of the
// document, whose texts are pieces of one large one: a batch has many.
func JobOf(r *judge.Result, o Options) Job {
	counted := Count(r)
	job := Job{r.Document.Name, strings.Clone(r.Document.Installation.Project.Reference.Value), VerdictOf(r), &counted, []ToDo{}}
	unlikely := unlikelyToDo(r)
	job.First = append(job.First, unlikely[:min(len(unlikely), mostToDo)]...)
	all := putRightFirst(r, o)
	for _, c := range all[:min(len(all), mostToDo-len(job.First))] {
		j := c.worst
		what := strings.TrimSpace(fmt.Sprintf("%s, %s %s", j.Requirement.Title, j.Subject.Name, c.sayMore()))
		job.First = append(job.First, ToDo{j.Requirement.ID, strings.Clone(j.Subject.ID), j.Position.Line, what, whatToDo(j)})
	}
	return job
}

// Job is how a document came out that could not be checked.
func (u Unchecked) Job() Job {
	job := Job{Path: u.Path, Verdict: NotChecked, First: []ToDo{}}
	for _, e := range u.Errors[:min(len(u.Errors), mostToDo)] {
		job.First = append(job.First, ToDo{Line: e.Line, What: e.Message, Remedy: e.Remedy})
	}
	return job
}

// Add takes one more job into the summary.
func (s *Summary) Add(job Job) {
	switch job.Verdict {
	case Passes:
		s.Pass++
	case DoesNotPass:
		s.DoNotPass++
	default:
		s.NotChecked++
	}
	s.Jobs = append(s.Jobs, job)
}

// Totals says in a line how many came out how.
func (s *Summary) Totals() string {
	pass, fail := "pass", "do not pass"
	if s.Pass == 1 {
		pass = "passes"
	}
	if s.DoNotPass == 1 {
		fail = "does not pass"
	}
	return fmt.Sprintf("%d %s, %d %s, %d %s", s.Pass, pass, s.DoNotPass, fail, s.NotChecked, uncheckedWords)
}

// name is the job as people know it.
func (job Job) name() string {
	if job.Reference == "" {
		return job.Path
	}
	return job.Path + ", " + job.Reference
}

// says is the job in one line, without its verdict.
func (job Job) says() string {
	if job.Counts == nil {
		return job.name()
	}
	return job.name() + ": " + counts(*job.Counts)
}

// say is one thing to put right in one line.
func (d ToDo) say() string {
	switch {
	case d.Requirement == "" && d.Line > 0:
		return fmt.Sprintf("line %d: %s", d.Line, Error{Message: d.What, Remedy: d.Remedy}.says())
	case d.Remedy != "":
		return sentence(d.What) + " " + d.Remedy
	}
	return d.What
}

// summary writes the summary of a batch for people.
func (p *page) summary(s *Summary) {
	p.line(0, bold, "Summary of "+judge.Many(len(s.Jobs), "installation"))
	p.line(0, plain, s.Totals())
	p.blank()
	for _, job := range s.Jobs {
		verdict, style := strings.ToUpper(job.Verdict.Words()), bad
		if job.Verdict == Passes {
			verdict, style = "passes", good
		}
		p.line(0, style, verdict+": "+job.says())
		for i, d := range job.First {
			p.line(2, plain, fmt.Sprintf("%d. %s", i+1, d.say()))
		}
	}
	p.blank()
	p.cautions()
}
