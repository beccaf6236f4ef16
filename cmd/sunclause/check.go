package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"runtime"
	"runtime/debug"
	"slices"
	"strings"
	"sync"

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
	f.StringVar(&o.output, "output", "", "file to write the report to, instead of the screen")
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
		return couldNot, err
	}
	if err := o.check(); err != nil {
		return couldNot, err
	}
	if f.NArg() == 0 {
		return couldNot, errors.New("name the installation to check, a folder of them, or - for the standard input")
	}
	names, err := documentsNamed(f.Args())
	if err != nil {
		return couldNot, err
	}
	// The rule set is loaded beside the reading of the first document.
	load := sync.OnceValues(func() (*ruleset.RuleSet, error) { return env.loadNamed(ctx, o.rulesOptions) })
	go load()
	results, err := env.checkAll(ctx, load, names, o)
	if err != nil {
		return couldNot, err
	}
	set, err := load()
	if err != nil {
		return couldNot, err
	}
	return env.writeResults(set, results, o)
}

// checked is one document's report, ready to be written.
type checked struct {
	report []byte
	passes bool
	err    error
}

// loading waits for the rule set.
type loading func() (*ruleset.RuleSet, error)

// checkAll checks documents on all processors and keeps their order. What is
// wrong with any of them is told for all of them, and then nothing is reported.
func (env *environment) checkAll(ctx context.Context, load loading, names []string, o checkOptions) ([]checked, error) {
	results := make([]checked, len(names))
	env.eachInOrder(len(names), func(i int) { results[i] = env.checkOne(ctx, load, names[i], o) })
	if _, err := load(); err != nil {
		return nil, err
	}
	var wrong []error
	for _, r := range results {
		if r.err != nil {
			wrong = append(wrong, r.err)
		}
	}
	return results, errors.Join(wrong...)
}

// eachInOrder does a piece of work for each of n documents, beginning them in
// order and using all processors.
func (env *environment) eachInOrder(n int, work func(i int)) {
	next := make(chan int)
	tick := env.progress(n)
	var workers sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), n) {
		workers.Go(func() {
			for i := range next {
				work(i)
				tick()
			}
		})
	}
	for i := range n {
		next <- i
		if i == 0 && n > 1 {
			debug.SetGCPercent(400) // from here on there is garbage worth collecting
		}
	}
	close(next)
	workers.Wait()
}

func (env *environment) checkOne(ctx context.Context, load loading, name string, o checkOptions) checked {
	doc, err := env.readDocument(name)
	if err != nil {
		return checked{err: err}
	}
	set, err := load()
	if err != nil {
		return checked{}
	}
	r, err := env.checkBy(ctx, set, doc, o)
	if err != nil {
		return checked{err: err}
	}
	var text bytes.Buffer
	err = report.Formats[o.format].Part(&text, r, env.reportOptions(o))
	return checked{text.Bytes(), r.Passes, err}
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

// progress shows how far a long batch has come, where someone is watching.
func (env *environment) progress(n int) (tick func()) {
	if _, watched := terminalWidth(env.stderr); n < longBatch || !watched {
		return func() {}
	}
	bar := progressbar.NewOptions(n, progressbar.OptionSetWriter(env.stderr), progressbar.OptionClearOnFinish(),
		progressbar.OptionSetDescription("checking"), progressbar.OptionShowCount())
	return func() { _ = bar.Add(1) } // a progress bar that cannot be drawn is no reason to stop
}

func (env *environment) writeResults(set *ruleset.RuleSet, results []checked, o checkOptions) (int, error) {
	status := passes
	parts := make([][]byte, len(results))
	for i, r := range results {
		parts[i] = r.report
		if !r.passes {
			status = doesNotPass
		}
	}
	var all bytes.Buffer
	if err := report.Formats[o.format].Whole(&all, set, parts, env.reportOptions(o)); err != nil {
		return couldNot, err
	}
	return status, env.deliver(all.Bytes(), o.output)
}

// deliver writes a text to a file, or to the screen when none is named.
func (env *environment) deliver(text []byte, output string) error {
	if output != "" {
		return writeWhole(output, text)
	}
	if _, err := env.stdout.Write(text); err != nil {
		return fmt.Errorf("cannot write the report: %w", err)
	}
	return nil
}
