package ruleset

import (
	"fmt"
	"io/fs"
	"regexp"
	"slices"
	"strings"

	"sunclause/schema"
)

// scaffoldSchemas are the schemas that an editor needs to complete and check
// the files of a rule set.
var scaffoldSchemas = []string{
	schema.RuleSetSchema, schema.RequirementsSchema, schema.TableSchema, schema.TrialSchema, "quantity.schema.json",
}

var setName = regexp.MustCompile(`^[a-z][a-z0-9-]{0,39}$`)

// Scaffold makes the files of a new rule set that builds on an embedded one: a
// manifest, one limit row, the tests of that row, and the schemas for an
// editor. The set passes its own tests as it stands.
func Scaffold(embedded fs.FS, name, extends string) (map[string]string, error) {
	if !setName.MatchString(name) {
		return nil, fmt.Errorf("a rule set cannot be called %q; its folder's name has small letters, digits and -, and begins with a letter", name)
	}
	if known := Embedded(embedded); !slices.Contains(known, extends) {
		return nil, fmt.Errorf("there is no embedded rule set %q to build on; there are %s", extends, strings.Join(known, ", "))
	}
	fill := strings.NewReplacer("NAME", name, "EXTENDS", extends)
	files := map[string]string{}
	for file, text := range scaffoldFiles {
		files[file] = fill.Replace(text)
	}
	for _, s := range scaffoldSchemas {
		raw, err := schema.File(s)
		if err != nil {
			return nil, err
		}
		files[".schema/"+s] = string(raw)
	}
	return files, nil
}

var scaffoldFiles = map[string]string{
	"ruleset.yaml": `# yaml-language-server: $schema=.schema/ruleset.schema.json
name: NAME
title: House rules of our firm
version: 0.1.0
extends: EXTENDS

# Figures of our own. Rows name them, and the report shows them.
parameters:
  modules_in_string_max:
    title: Most modules in one string
    value: 20
    source: {document: house rule, how: house rule}

# What we change in the sets below. sunclause rules lists what there is.
# changes:
#   - parameter: voc_mismatch_max_pct
#     value: 3
#     reason: why, in one sentence
#     date: 2026-01-31
changes: []
`,
	"pvstring.yaml": `# yaml-language-server: $schema=.schema/requirements.schema.json
requirements:
  - id: NAME/string-not-too-long
    title: No more modules in a string than we handle
    level: should
    require: strings.modules_in_series at_most modules_in_string_max
    remedy: Make two strings of it.
    source: {document: house rule, how: house rule}
`,
	"tests/pvstring.yaml": `# yaml-language-server: $schema=../.schema/trial.schema.json
# What is not met says what is different from what is met.
requirements:
  NAME/string-not-too-long: {met: {modules_in_series: 20}, not_met: {modules_in_series: 21}}
`,
}
