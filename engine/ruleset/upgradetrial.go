package ruleset

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"sunclause/schema"
)

// longestTrial is how many characters the cases of a requirement, or those of one
// outcome, may take on one line.
const longestTrial = 140

// upgradedTrials are the files of tests of the set in a folder that are in the older
// form, each in the present one.
func upgradedTrials(dir string) ([]Upgraded, error) {
	fsys := os.DirFS(dir)
	names, err := fs.Glob(fsys, "tests/*.yaml")
	if err != nil {
		return nil, err
	}
	var changed []Upgraded
	for _, name := range names {
		raw, err := fs.ReadFile(fsys, name)
		if err != nil {
			return nil, err
		}
		text, n, err := upgradedTests(path.Join(filepath.ToSlash(dir), name), raw)
		if err != nil {
			return nil, err
		}
		if n > 0 {
			changed = append(changed, Upgraded{Name: name, Text: text, Trials: n})
		}
	}
	return changed, nil
}

// upgradedTests puts a file of tests into the present form, with its comments, and
// counts the requirements that are tried in it; 0 when it is in that form already.
func upgradedTests(shown string, raw []byte) ([]byte, int, error) {
	plain := bytes.ReplaceAll(raw, []byte("\r\n"), []byte("\n"))
	var anything any
	src, err := schema.ReadYAML(shown, plain, "", &anything)
	if err != nil {
		return nil, 0, err
	}
	trials := oldTrials(src)
	if len(trials) == 0 {
		return nil, 0, nil
	}
	e, err := trialsText{src: src, trials: trials}.edit()
	if err != nil {
		return nil, 0, err
	}
	text := apply(plain, []edit{e})
	if _, err := schema.ReadYAML(shown, text, schema.TrialSchema, &anything); err != nil {
		return nil, 0, fmt.Errorf("rewritten, the tests could not be used:\n%w", err)
	}
	if len(plain) < len(raw) {
		text = bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))
	}
	return text, len(merged(trials)), nil
}

// trialsText are tests of requirements as they stand in a text.
type trialsText struct {
	src    *schema.Source
	trials []oldTrial
}

// edit rewrites them all.
func (t trialsText) edit() (edit, error) {
	raw := string(t.src.Raw)
	from := t.src.Offset("/requirements")
	if raw[from] == '[' {
		return edit{}, schema.Problems{t.src.ProblemAt("/requirements", "it cannot be upgraded: the list stands in brackets", "write one requirement on a line, with - before it")}
	}
	from = strings.LastIndexByte(raw[:from], '\n') + 1
	to := len(raw)
	for _, m := range t.src.Members("") {
		if m.Offset > from {
			to = min(to, m.Offset)
		}
	}
	rest := t.takeNotes(from, to)
	var out []string
	for _, one := range merged(t.trials) {
		out = append(out, one.lines()...)
	}
	return edit{from, to, strings.Join(append(out, rest...), "\n") + "\n"}, nil
}

// takeNotes gives each requirement and each case the comments on it, and hands out
// those that stand after all of them.
func (t trialsText) takeNotes(from, to int) (rest []string) {
	begin := map[int]*notes{} // by the line on which it begins
	line := func(at string) int { return strings.Count(string(t.src.Raw[from:t.src.Offset(at)]), "\n") }
	for i := range t.trials {
		at := fmt.Sprintf("/requirements/%d", i)
		for j := range t.trials[i].cases {
			begin[line(fmt.Sprintf("%s/cases/%d", at, j))] = &t.trials[i].cases[j].notes
		}
		begin[line(at)] = &t.trials[i].notes
	}
	var of *notes
	var waiting []string
	for n, text := range strings.Split(strings.TrimSuffix(string(t.src.Raw[from:to]), "\n"), "\n") {
		code, comment := splitComment(text)
		alone := strings.TrimSpace(code) == ""
		if begin[n] != nil {
			of = begin[n]
			of.above, waiting = append(of.above, waiting...), nil
		}
		switch {
		case alone:
			waiting = append(waiting, text)
		case comment == "":
		case of.beside == "":
			of.beside = comment
		default:
			of.above = append(of.above, comment)
		}
	}
	return waiting
}

// merged lets each requirement be tried in one place, the first.
func merged(trials []oldTrial) []oldTrial {
	var all []oldTrial
	for _, t := range trials {
		i := slices.IndexFunc(all, func(before oldTrial) bool { return before.id == t.id })
		if i < 0 {
			all = append(all, t)
			continue
		}
		all[i].notes.above = append(all[i].notes.above, append(t.notes.above, comments(t.notes.beside)...)...)
		all[i].cases = append(all[i].cases, t.cases...)
	}
	return all
}

func comments(beside string) []string {
	if beside == "" {
		return nil
	}
	return []string{beside}
}

// lines writes the requirement with its cases: on one line where that is not too
// long, else one line an outcome, or one a case.
func (t oldTrial) lines() []string {
	changes := t.changes()
	lines := indented("  ", t.notes.above)
	if one := "  " + t.line(); len(one) <= longestTrial && !slices.ContainsFunc(changes, newCases.hasNotes) {
		return append(lines, withComment(one, t.notes.beside))
	}
	lines = append(lines, withComment("  "+t.id+":", t.notes.beside))
	for _, n := range changes {
		lines = append(lines, n.lines()...)
	}
	return lines
}

func (n newCases) lines() []string {
	one := "    " + n.line()
	switch {
	case len(n.cases) == 1:
		return append(indented("    ", n.notes[0].above), withComment(one, n.notes[0].beside))
	case len(one) <= longestTrial && !n.hasNotes():
		return []string{one}
	}
	lines := []string{"    " + n.outcome + ":"}
	for i, c := range n.cases {
		lines = append(append(lines, indented("      ", n.notes[i].above)...), withComment("      - "+c, n.notes[i].beside))
	}
	return lines
}

// indented are comments and blank lines, where they belong.
func indented(by string, comments []string) []string {
	var all []string
	for _, c := range comments {
		all = append(all, strings.TrimRight(by+strings.TrimSpace(c), " "))
	}
	return all
}
