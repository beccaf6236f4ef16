package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"os/signal"
	"slices"
	"strings"
	"sync"
	"syscall"

	"github.com/schollz/progressbar/v3"
	"github.com/spf13/pflag"
	"golang.org/x/term"

	"sunclause/engine/judge"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/policies"
	"sunclause/schema"
)

// checkOptions are the options of check.
type checkOptions struct {
	rulesOptions
	format, output string
	date, designed string
	strict, all    bool
	width          int
}

func (o *checkOptions) flags(f *pflag.FlagSet) {
	o.declare(f, defaultRules, rulesHelp())
	f.StringVar(&o.format, "format", "text", "format of the report: "+strings.Join(formatNames(), ", "))
	f.StringVar(&o.output, "output", "", "file to write the report to, instead of the screen; for several installations in HTML, the folder")
	f.BoolVar(&o.strict, "strict", false, strictHelp)
	f.BoolVar(&o.all, "all", false, "list also what is met, and in the text report what does not apply")
	f.StringVar(&o.date, "date", "", dateHelp)
	f.StringVar(&o.designed, "designed", "", designedHelp)
	f.IntVar(&o.width, "width", 0, "columns of the text report; the width of the terminal when not given")
}

// What several commands say of the same options.
const (
	strictHelp   = "let a requirement with should count as one with shall"
	designedHelp = "day of design by which rules are chosen, as 2026-03-02; the document's when not given"
	dateHelp     = "day on which departures are held against their term, as 2026-03-02; the design date when not given"
)

func rulesHelp() string {
	return "rule set: " + strings.Join(ruleset.Embedded(policies.FS), ", ") + ", a folder or a sealed archive"
}

func formatNames() []string { return slices.Sorted(maps.Keys(report.Formats)) }

func (o *checkOptions) check() error {
	if _, ok := report.Formats[o.format]; !ok {
		return fmt.Errorf("there is no format %q; there are %s", o.format, strings.Join(formatNames(), ", "))
	}
	return o.checkDays()
}

func (o *checkOptions) checkDays() error {
	for _, given := range [][2]string{{"date", o.date}, {"designed", o.designed}} {
		if given[1] != "" && !schema.IsDay(given[1]) {
			return fmt.Errorf("--%s %q is no day; write it as 2026-03-02", given[0], given[1])
		}
	}
	return nil
}

// engine is the part of the options that decides outcomes.
func (o *checkOptions) engine() judge.Options {
	return judge.Options{Strict: o.strict, Date: o.date, Designed: o.designed}
}

func runCheck(ctx context.Context, env *environment, args []string) (int, error) {
	var o checkOptions
	f := env.flags("check")
	o.flags(f)
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if err := o.check(); err != nil {
		return exitError, err
	}
	if f.NArg() == 0 {
		return exitError, errors.New("name the installation to check, a folder of them, or - for the standard input")
	}
	docs, err := env.batchOf(f.Args())
	if err != nil {
		return exitError, err
	}
	return env.check(ctx, docs, o)
}

// check judges documents on all processors and reports them in their order, each
// as soon as it is its turn. One that could not be checked is reported in its
// place. An interrupt ends the work between two reports.
func (env *environment) check(ctx context.Context, docs batch, o checkOptions) (int, error) {
	ctx, stop := signal.NotifyContext(ctx, os.Interrupt, syscall.SIGTERM)
	defer context.AfterFunc(ctx, stop)() // a second interrupt ends the program at once
	defer stop()
	out, err := env.outlet(docs, o)
	if err != nil {
		return exitError, err
	}
	defer out.to.abandon()
	// The rule set is loaded beside the reading of the first document.
	load := sync.OnceValues(func() (*ruleset.RuleSet, error) { return env.loadNamed(ctx, o.rulesOptions) })
	go load()
	tick := env.progress(docs.total)
	if docs.many {
		collectBy(ofBatch)
	}
	err = inOrder(ctx, docs.all, func(s source) checked { return env.checkOne(ctx, load, s, docs.many, o) }, func(c checked) error {
		defer tick()
		return env.report(out, c)
	})
	if err != nil {
		return exitError, out.interrupted(err)
	}
	set, err := load()
	if err != nil {
		return exitError, err
	}
	if err := out.end(set, docs.many); err != nil {
		return exitError, err
	}
	switch {
	case out.summary.NotChecked > 0:
		return exitError, nil
	case out.summary.DoNotPass > 0:
		return doesNotPass, nil
	}
	return passes, nil
}

// loading waits for the rule set.
type loading func() (*ruleset.RuleSet, error)

// checked is one document that has been looked at.
type checked struct {
	job   report.Job
	write func(io.Writer) error // what the report says of it
	wrong error                 // why it could not be checked
	fatal error                 // why nothing can be checked
}

// checkOne judges one document. Of many the report is made at once, so that
// nothing else has to be kept until its turn comes.
func (env *environment) checkOne(ctx context.Context, load loading, s source, many bool, o checkOptions) checked {
	format, options := report.Formats[o.format], env.reportOptions(o)
	raw, r, err := env.judgeSource(ctx, load, s, o)
	var c checked
	if err == nil {
		c.job.Verdict = report.VerdictOf(r)
		if many {
			c.job = report.JobOf(r, options)
		}
		c.write = func(w io.Writer) error { return format.Part(w, r, options) }
	} else {
		if _, broken := load(); broken != nil {
			return checked{fatal: broken} // nothing can be checked, and this need not be told of one document
		}
		u := report.UncheckedOf(s.name, raw, err)
		c.job, c.wrong = u.Job(), err
		c.write = func(w io.Writer) error { return format.Unchecked(w, u, options) }
	}
	if many {
		c.write, c.fatal = written(c.write)
	}
	return c
}

// judgeSource reads and judges one document. The text is nil where it cannot be
// read.
func (env *environment) judgeSource(ctx context.Context, load loading, s source, o checkOptions) ([]byte, *judge.Result, error) {
	raw, name, err := s.read(env)
	if err != nil {
		return nil, nil, err
	}
	doc, err := schema.Decode(name, raw)
	if err != nil {
		return raw, nil, err
	}
	set, err := load()
	if err != nil {
		return raw, nil, err
	}
	r, err := env.checkBy(ctx, set, doc, o)
	return raw, r, err
}

// texts are kept for the next report.
var texts = sync.Pool{New: func() any { return new(bytes.Buffer) }}

// written writes what there is to write, and gives back what hands it on, once.
func written(write func(io.Writer) error) (func(io.Writer) error, error) {
	text := texts.Get().(*bytes.Buffer)
	text.Reset()
	if err := write(text); err != nil {
		return nil, err
	}
	return func(w io.Writer) error {
		defer texts.Put(text)
		_, err := w.Write(text.Bytes())
		return err
	}, nil
}

// outlet is where the reports of a check go, and what has come of it so far.
type outlet struct {
	to      destination
	all     report.Collector
	summary report.Summary
	atEnd   bool // nothing is written before the end: a file or folder, and some formats
	said    bool // whether whoever sees the standard error sees the reports as well
}

// outlet opens where the reports go. In HTML those of many documents are a folder.
func (env *environment) outlet(docs batch, o checkOptions) (*outlet, error) {
	if o.format == "html" && docs.many {
		if o.output == "" {
			return nil, errors.New("several installations in HTML are a folder with a page each; name the folder with --output")
		}
		folder, err := newWholeFolder(o.output)
		if err != nil {
			return nil, err
		}
		return &outlet{to: folder, all: report.Pages(folder.create), atEnd: true}, nil
	}
	to, err := env.page(o.output, append(docs.files, o.rules)...)
	if err != nil {
		return nil, err
	}
	_, reportsSeen := terminalWidth(env.stdout)
	_, errorsSeen := terminalWidth(env.stderr)
	return &outlet{
		to: to, all: report.Formats[o.format].Collect(to, env.reportOptions(o)), atEnd: o.output != "" || report.Formats[o.format].AtEnd,
		said: o.output == "" && o.format == "text" && reportsSeen && errorsSeen,
	}, nil
}

// report writes what there is to say of one document. Why one could not be checked
// is told on the standard error too, unless that is the screen on which the report
// has just said it.
func (env *environment) report(out *outlet, c checked) error {
	if c.fatal != nil {
		return c.fatal
	}
	out.summary.Add(c.job)
	if err := out.all.Add(c.write); err != nil {
		return err
	}
	if err := out.to.flush(); err != nil {
		return err
	}
	if c.wrong != nil && !out.said {
		env.tell(c.wrong)
	}
	return nil
}

func (out *outlet) end(set *ruleset.RuleSet, many bool) error {
	var summary *report.Summary
	if many {
		summary = &out.summary
	}
	if err := out.all.End(set, summary); err != nil {
		return err
	}
	return out.to.finish()
}

// interrupted says what is there when a check was interrupted.
func (out *outlet) interrupted(err error) error {
	switch {
	case !errors.Is(err, context.Canceled):
		return err
	case out.atEnd:
		return errors.New("interrupted; nothing is written")
	}
	return fmt.Errorf("interrupted after %s; what is written so far is whole", judge.Many(len(out.summary.Jobs), "installation"))
}

func (env *environment) reportOptions(o checkOptions) report.Options {
	width, onTerminal := terminalWidth(env.stdout)
	if o.width > 0 {
		width = o.width
	}
	return report.Options{
		Width: width, All: o.all, Strict: o.strict,
		Colour:  onTerminal && o.output == "" && os.Getenv("NO_COLOR") == "",
		Version: toolVersion(),
	}
}

// terminalWidth is the width of the terminal that is written to; 0 when it is
// none.
func terminalWidth(w io.Writer) (int, bool) {
	f, ok := w.(*os.File)
	if !ok || !term.IsTerminal(int(f.Fd())) {
		return 0, false
	}
	width, _, err := term.GetSize(int(f.Fd()))
	if err != nil {
		return 0, true
	}
	return width, true
}

// longBatch is from how many documents on progress is shown.
const longBatch = 20

// progress shows how far a long batch has come, where someone is watching. It may
// not be known how many there are: -1.
func (env *environment) progress(n int) (tick func()) {
	if _, watched := terminalWidth(env.stderr); n >= 0 && n < longBatch || !watched {
		return func() {}
	}
	bar := progressbar.NewOptions(n, progressbar.OptionSetWriter(env.stderr), progressbar.OptionClearOnFinish(),
		progressbar.OptionSetDescription("checking"), progressbar.OptionShowCount())
	return func() { _ = bar.Add(1) } // a progress bar that cannot be drawn is no reason to stop
}
