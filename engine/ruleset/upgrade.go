package ruleset

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"sunclause/schema"
)

// Upgraded is a file of a rule set that was put into the present form.
type Upgraded struct {
	Name    string // inside the set
	Text    []byte
	Cards   int // rows and cards of rules that were rewritten
	Figures int // parameters that were
	Rows    int // rows of tables that were given their requirement

	Trials int // requirements whose tests were rewritten
}

// Upgrade puts the rule set in a folder into the present form: rows, the cards of
// Rego rules, parameters, and tests. It writes nothing: it hands out the files that change, each whole,
// with comments, order and blank lines kept. The set as it would be is loaded; one
// that cannot be used then, or has something that cannot be put otherwise, is an
// error. Schemas for an editor that lie in the set are brought up to date with it.
func Upgrade(ctx context.Context, embedded fs.FS, dir string) ([]Upgraded, error) {
	files, err := readFiles(os.DirFS(dir), filepath.ToSlash(dir))
	if err != nil {
		return nil, err
	}
	up, err := newUpgrader(ctx, embedded, dir, files)
	if err != nil {
		return nil, err
	}
	var changed []Upgraded
	var errs []error
	for i, f := range files {
		up.shown, up.cards, up.figures, up.rows = path.Join(filepath.ToSlash(dir), f.name), map[string]bool{}, map[string]bool{}, 0
		text, err := up.file(f)
		if err != nil {
			errs = append(errs, err)
		} else if !bytes.Equal(text, f.raw) {
			files[i].raw = text
			changed = append(changed, Upgraded{Name: f.name, Text: text, Cards: len(up.cards), Figures: len(up.figures), Rows: up.rows})
		}
	}
	if len(errs) > 0 {
		return nil, errors.Join(errs...)
	}
	if _, err := load(ctx, embedded, dir, loadOptions{files: files}); err != nil {
		return nil, fmt.Errorf("rewritten, the set could not be used:\n%w", err)
	}
	tests, err := upgradedTrials(dir)
	if err != nil {
		return nil, err
	}
	schemas, err := staleSchemas(dir)
	return slices.Concat(changed, tests, schemas), err
}

// staleSchemas lists the schemas for an editor that lie in a set and are older than
// ours.
func staleSchemas(dir string) ([]Upgraded, error) {
	var stale []Upgraded
	for _, name := range scaffoldSchemas {
		now, err := schema.File(name)
		if err != nil {
			return nil, err
		}
		name = ".schema/" + name
		if had, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(name))); err == nil && !bytes.Equal(had, now) {
			stale = append(stale, Upgraded{Name: name, Text: now})
		}
	}
	return stale, nil
}

// upgrader rewrites the files of a set, one after the other.
type upgrader struct {
	parameters map[string]bool // names of those of the set and of those below it
	askers     []asker         // the requirements of the same that ask for labels

	shown   string          // the file in hand
	cards   map[string]bool // of it that were rewritten, by id
	figures map[string]bool // of it that were, by name
	rows    int
}

// newUpgrader looks a set and those below it through for what decides how a line
// is written.
func newUpgrader(ctx context.Context, embedded fs.FS, dir string, files []setFile) (*upgrader, error) {
	u := &upgrader{parameters: map[string]bool{}}
	below := ""
	for _, f := range files {
		if path.Ext(f.name) != ".yaml" || path.Dir(f.name) != "." {
			continue
		}
		var anything any
		src, err := schema.ReadYAML(path.Join(filepath.ToSlash(dir), f.name), f.raw, "", &anything)
		if err != nil {
			return nil, err
		}
		root, _ := src.Root().(map[string]any)
		older, name := listed(src)
		for i := range older {
			u.parameters[name(i)] = true
		}
		parameters, _ := root["parameters"].(map[string]any)
		for name := range parameters {
			u.parameters[name] = true
		}
		rows, _ := root["requirements"].([]any)
		for _, row := range rows {
			if a, ok := u.askerOf(row); ok {
				u.askers = append(u.askers, a)
			}
		}
		if f.name == manifestName {
			below, _ = root["extends"].(string)
		}
	}
	if below == "" {
		return u, nil
	}
	if strings.HasPrefix(below, ".") {
		below = filepath.Join(dir, below)
	}
	set, err := Load(ctx, embedded, below)
	if err != nil {
		return nil, fmt.Errorf("the set that it builds on cannot be used; upgrade that one first:\n%w", err)
	}
	for _, name := range set.parameterNames() {
		u.parameters[name] = true
	}
	u.askers = append(u.askers, askersOf(set)...)
	return u, nil
}

// file rewrites a file, and keeps how its lines end.
func (u *upgrader) file(f setFile) ([]byte, error) {
	plain := bytes.ReplaceAll(f.raw, []byte("\r\n"), []byte("\n"))
	text, err := u.rewritten(setFile{f.name, plain})
	switch {
	case err != nil || bytes.Equal(text, plain):
		return f.raw, err
	case len(plain) < len(f.raw):
		text = bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))
	}
	return text, nil
}

func (u *upgrader) rewritten(f setFile) ([]byte, error) {
	if path.Ext(f.name) == ".rego" {
		return u.rules(f.raw)
	}
	steps := []func(*schema.Source) ([]edit, error){u.olderRows, u.levels, u.subjects, u.indented, u.mapped, u.units}
	if path.Dir(f.name) == "tables" {
		steps = []func(*schema.Source) ([]edit, error){u.table, u.levels}
	}
	text := f.raw
	for _, step := range steps {
		var anything any
		src, err := schema.ReadYAML(u.shown, text, "", &anything)
		if err != nil {
			return nil, err
		}
		edits, err := step(src)
		if err != nil {
			return nil, err
		}
		text = apply(text, edits)
	}
	return text, nil
}

// olderRows puts rows whose comparison takes three members on one line.
func (u *upgrader) olderRows(src *schema.Source) ([]edit, error) {
	root, _ := src.Root().(map[string]any)
	rows, _ := root["requirements"].([]any)
	var edits []edit
	for i, row := range rows {
		more, err := u.card(src, fmt.Sprintf("/requirements/%d", i), row, false)
		if err != nil {
			return nil, err
		}
		edits = append(edits, more...)
	}
	return edits, nil
}

// card rewrites one row or card.
func (u *upgrader) card(src *schema.Source, at string, card any, isRule bool) ([]edit, error) {
	members, _ := card.(map[string]any)
	subject, _ := members["subject"].(string)
	old := oldCard{subject, isRule, members, u.parameters}
	if !old.isOld() {
		return nil, nil
	}
	refused := func(err error) error {
		return schema.Problems{src.ProblemAt(at, "it cannot be upgraded: "+err.Error(), "")}
	}
	n, err := old.upgraded()
	if err != nil {
		return nil, refused(err)
	}
	edits, err := cardText{src, at, isRule, n}.edits()
	if err != nil {
		return nil, refused(err)
	}
	u.cards[fmt.Sprint(members["id"])] = true
	return edits, nil
}

const metadata = "# METADATA"

// rules rewrites the cards of a Rego module: YAML in the comments that METADATA
// begins.
func (u *upgrader) rules(raw []byte) ([]byte, error) {
	lines := strings.SplitAfter(string(raw), "\n")
	var out strings.Builder
	for len(lines) > 0 {
		line := lines[0]
		out.WriteString(line)
		lines = lines[1:]
		if strings.TrimSpace(line) != metadata {
			continue
		}
		end := slices.IndexFunc(lines, func(l string) bool { return !strings.HasPrefix(l, "#") })
		if end < 0 {
			end = len(lines)
		}
		text, err := u.metadata(lines[:end])
		if err != nil {
			return nil, err
		}
		out.WriteString(text)
		lines = lines[end:]
	}
	return []byte(out.String()), nil
}

// metadata rewrites the card in one block of comments.
func (u *upgrader) metadata(block []string) (string, error) {
	var plain strings.Builder
	for _, l := range block {
		plain.WriteString(strings.TrimPrefix(strings.TrimPrefix(l, "#"), " "))
	}
	var anything any
	src, err := schema.ReadYAML(u.shown, []byte(plain.String()), "", &anything)
	if err != nil {
		return strings.Join(block, ""), nil // no card of ours; the compiler will say what is wrong
	}
	root, _ := src.Root().(map[string]any)
	edits, err := u.card(src, "/custom", root["custom"], true)
	if err != nil || len(edits) == 0 {
		return strings.Join(block, ""), err
	}
	var out strings.Builder
	for line := range strings.Lines(string(apply(src.Raw, edits))) {
		out.WriteString(strings.TrimRight("# "+line, " \n") + "\n")
	}
	return out.String(), nil
}
