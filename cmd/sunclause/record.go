package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"time"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/schema"
)

// recordOptions are the options of record.
type recordOptions struct {
	checkOptions
	time, sign string
	now        bool
}

func runRecord(ctx context.Context, env *environment, args []string) (int, error) {
	var o recordOptions
	f := env.flags("record")
	o.declare(f, defaultRules, rulesHelp())
	f.StringVar(&o.output, "output", "", "file to write the record to, instead of the screen")
	f.StringVar(&o.time, "time", "", "time of the check to state in the record, as 2026-03-02T10:30:00Z; none when not given")
	f.BoolVar(&o.now, "now", false, "state the time of this machine's clock in the record")
	f.StringVar(&o.sign, "sign", "", "private Ed25519 key, in PEM, to sign the record with; the signature goes beside it, into OUTPUT.sig")
	f.BoolVar(&o.strict, "strict", false, strictHelp)
	f.StringVar(&o.date, "date", "", dateHelp)
	f.StringVar(&o.designed, "designed", "", designedHelp)
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() != 1 {
		return exitError, errors.New("name one installation to make a record of, or - for the standard input")
	}
	if err := o.settle(time.Now); err != nil {
		return exitError, err
	}
	r, err := env.checkNamed(ctx, f.Arg(0), o.checkOptions)
	if err != nil {
		return exitError, err
	}
	rec := recordOf(r, o.checkOptions)
	rec.Time = o.time
	var text bytes.Buffer
	if err := report.Record(&text, rec); err != nil {
		return exitError, err
	}
	if err := env.deliverSigned(text.Bytes(), o, f.Arg(0), o.rules, o.sign); err != nil {
		return exitError, err
	}
	if r.Passes {
		return passes, nil
	}
	return doesNotPass, nil
}

// settle holds the options to one another, and looks at the clock if and only
// if that is asked for.
func (o *recordOptions) settle(clock func() time.Time) error {
	if err := o.checkDays(); err != nil {
		return err
	}
	switch {
	case o.sign != "" && o.output == "":
		return errors.New("a signature stands beside the record; name a file with --output")
	case o.now && o.time != "":
		return errors.New("--time and --now both state the time; give one of them")
	case o.now:
		o.time = clock().UTC().Format(time.RFC3339)
	case o.time != "":
		if _, err := time.Parse(time.RFC3339, o.time); err != nil {
			return fmt.Errorf("--time %q is no time; write it as 2026-03-02T10:30:00Z", o.time)
		}
	}
	return nil
}

// deliverSigned writes a record, and the signature first: a record is never
// there without the signature that was asked for. Neither takes the place of one of
// the inputs.
func (env *environment) deliverSigned(text []byte, o recordOptions, inputs ...string) error {
	if o.sign == "" {
		return env.deliver(text, o.output, inputs...)
	}
	key, err := readKey(o.sign)
	if err != nil {
		return err
	}
	signature, err := record.Sign(text, key)
	if err != nil {
		return err
	}
	if err := writeWhole(o.output+signatureEnd, signature, inputs...); err != nil {
		return err
	}
	if err := writeWhole(o.output, text, inputs...); err != nil {
		os.Remove(o.output + signatureEnd) // of a record that is not there; the error says the rest
		return err
	}
	return nil
}

// signatureEnd is what the name of a signature has more than that of its record.
const signatureEnd = ".sig"

// checkNamed judges one document that is named on the command line.
func (env *environment) checkNamed(ctx context.Context, name string, o checkOptions) (*judge.Result, error) {
	set, doc, err := env.loadWithDocument(ctx, o.rulesOptions, name)
	if err != nil {
		return nil, err
	}
	return env.checkBy(ctx, set, doc, o)
}

// checkBy judges one document, within limits unless the rule set is embedded.
func (env *environment) checkBy(ctx context.Context, set *ruleset.RuleSet, doc *schema.Document, o checkOptions) (*judge.Result, error) {
	r, err := judge.Check(ctx, set, doc, o.engine())
	if err != nil {
		return nil, fmt.Errorf("%s: %w", doc.Name, err)
	}
	return r, nil
}
