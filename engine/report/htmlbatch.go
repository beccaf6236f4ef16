package report

import (
	"cmp"
	"errors"
	"fmt"
	"html/template"
	"io"

	"sunclause/engine/judge"
	"sunclause/engine/ruleset"
)

// htmlUnchecked writes a page in place of a report that says why there is none.
func htmlUnchecked(w io.Writer, u Unchecked, _ Options) error {
	return writePage(w, "unchecked", struct {
		Unchecked
		Verdict  string
		Style    template.CSS
		Cautions []string
	}{u, uncheckedWords, Style(), Cautions})
}

// htmlOne is for one page alone; those of several stand in a folder, which Pages
// writes.
type htmlOne struct {
	w    io.Writer
	some bool
}

func collectHTML(w io.Writer, _ Options) Collector { return &htmlOne{w: w} }

var errOnePage = errors.New("a page in HTML is about one installation; several make a folder")

func (h *htmlOne) Add(write func(io.Writer) error) error {
	if h.some {
		return errOnePage
	}
	h.some = true
	return write(h.w)
}

func (h *htmlOne) End(_ *ruleset.RuleSet, summary *Summary) error {
	if summary != nil {
		return errOnePage
	}
	return nil
}

// Pages collects the reports of several documents in HTML: a page each, and one
// that lists them. Create makes a file of a folder.
func Pages(create func(name string) (io.WriteCloser, error)) Collector {
	return &htmlPages{create: create}
}

type htmlPages struct {
	create func(name string) (io.WriteCloser, error)
	n      int
}

// pageName is the file of the page of a document, counted from 1.
func pageName(n int) string { return fmt.Sprintf("job-%04d.html", n) }

func (h *htmlPages) Add(write func(io.Writer) error) error {
	h.n++
	return h.write(pageName(h.n), write)
}

func (h *htmlPages) write(name string, write func(io.Writer) error) error {
	f, err := h.create(name)
	if err != nil {
		return err
	}
	err = write(f)
	if closing := f.Close(); err == nil {
		err = closing
	}
	return err
}

// htmlJob is a line of the page that lists the others.
type htmlJob struct {
	Job
	Page, Class, Name, Below string
}

func (h *htmlPages) End(s *ruleset.RuleSet, summary *Summary) error {
	jobs := make([]htmlJob, len(summary.Jobs))
	classes := map[Verdict]string{Passes: "met", DoesNotPass: "broken", NotChecked: "unshown"}
	for i, job := range summary.Jobs {
		jobs[i] = htmlJob{Job: job, Page: pageName(i + 1), Class: classes[job.Verdict], Name: cmp.Or(job.Reference, job.Path)}
		if job.Reference != "" {
			jobs[i].Below = job.Path
		}
	}
	return h.write("index.html", func(w io.Writer) error {
		return writePage(w, "index", struct {
			*Summary
			Jobs          []htmlJob
			Installations string
			RuleSets      string
			Style         template.CSS
			Cautions      []string
		}{summary, jobs, judge.Many(len(jobs), "installation"), layersOf(s), Style(), Cautions})
	})
}
