package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"slices"

	"sunclause/engine/record"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/policies"
)

// reproduceOptions are the options of reproduce.
type reproduceOptions struct {
	checkOptions
	signedBy, signature string
}

func runReproduce(ctx context.Context, env *environment, args []string) (int, error) {
	var o reproduceOptions
	f := env.flags("reproduce")
	o.declare(f, "", "rule set to judge by; when not given, the embedded one that the record names")
	f.StringVar(&o.signedBy, "signed-by", "", "public Ed25519 key, in PEM, that the record must have been signed with")
	f.StringVar(&o.signature, "signature", "", "file with the signature; RECORD.sig when not given")
	f.StringVar(&o.format, "format", "text", "format: json, text")
	f.IntVar(&o.width, "width", 0, "columns of the text; the width of the terminal when not given")
	if err := parse(f, args); err != nil {
		return exitError, err
	}
	if f.NArg() != 2 {
		return exitError, errors.New("name a record and the installation it is about, as in sunclause reproduce record.json job.json")
	}
	if err := textOrJSON(o.format); err != nil {
		return exitError, err
	}
	before, signature, err := env.readRecord(f.Arg(0), o)
	if err != nil {
		return exitError, err
	}
	if o.rules == "" {
		if o.rules = before.RuleSet.Name; !slices.Contains(ruleset.Embedded(policies.FS), o.rules) {
			return exitError, fmt.Errorf("the record was made by rule set %q, which is not an embedded one; name it with --rules", o.rules)
		}
	}
	o.strict, o.date, o.designed = before.Options.Strict, before.Options.Date, before.Options.Designed
	r, err := env.checkNamed(ctx, f.Arg(1), o.checkOptions)
	if err != nil {
		return exitError, err
	}
	came := record.Reproduce(before, recordOf(r, o.checkOptions))
	var text bytes.Buffer
	if o.format == "json" {
		err = report.ReproductionJSON(&text, came, signature)
	} else {
		err = report.ReproductionText(&text, came, signature, env.reportOptions(o.checkOptions))
	}
	if err != nil {
		return exitError, err
	}
	if came.Identical {
		return passes, env.deliver(text.Bytes(), "")
	}
	return doesNotPass, env.deliver(text.Bytes(), "")
}

// readRecord reads a record, after its signature where one is to be verified:
// nothing of a record that does not fit its signature is looked at.
func (env *environment) readRecord(name string, o reproduceOptions) (rec *record.Record, signature string, err error) {
	raw, shown, err := env.readText(name)
	if err != nil {
		return nil, "", err
	}
	signature = "not looked at; --signed-by verifies it"
	if o.signedBy != "" {
		if err := verifyRecord(raw, name, o); err != nil {
			return nil, "", fmt.Errorf("%s: %w", shown, err)
		}
		signature = "fits the key"
	} else if o.signature != "" {
		return nil, "", errors.New("a signature is verified with a key; name it with --signed-by")
	}
	if rec, err = record.Read(shown, raw); err != nil {
		return nil, "", err
	}
	return rec, signature, nil
}

func verifyRecord(raw []byte, name string, o reproduceOptions) error {
	if o.signature == "" {
		o.signature = name + signatureEnd
	}
	key, err := readKey(o.signedBy)
	if err != nil {
		return err
	}
	signature, err := os.ReadFile(o.signature)
	if err != nil {
		return fmt.Errorf("signature %s: %w", o.signature, plainError(err))
	}
	return record.Verify(raw, signature, key)
}
