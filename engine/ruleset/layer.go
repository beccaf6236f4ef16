package ruleset

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"sort"
	"strings"
	"sync"

	"sunclause/schema"
)

// layer is one rule set as it stands in its folder, before it is merged with
// the sets it builds on.
type layer struct {
	manifest manifest
	source   *schema.Source // of the manifest
	rows     []rowsOf
	tables   []tableOf
	modules  []moduleText
	digest   string
	embedded bool
	sealed   bool // from an archive whose signature is right
}

// rowsOf are the limit rows of one room.
type rowsOf struct {
	room   string
	source *schema.Source
	file   requirementsFile
}

// tableOf is one table.
type tableOf struct {
	name   string
	source *schema.Source
	file   tableFile
}

// moduleText is one Rego module.
type moduleText struct {
	room string
	name string // as shown in errors
	text string
}

const manifestName = "ruleset.yaml"

// Limits on a rule set from a stranger.
const (
	maxFiles     = 500
	maxFileBytes = 1 << 20
	maxSetBytes  = 4 << 20 // of all its files
)

// readLayer reads the rule set in a folder. An embedded set has been held
// against its schemas by the tests of sunclause and is not held against them
// again at every start.
func readLayer(fsys fs.FS, shown string, embedded bool) (*layer, error) {
	files, err := readFiles(fsys, shown)
	if err != nil {
		return nil, err
	}
	return newLayer(files, shown, embedded)
}

// setFile is one file of a rule set.
type setFile struct {
	name string // inside the set
	raw  []byte
}

// readFiles reads the files that make up a rule set, in order.
func readFiles(fsys fs.FS, shown string) ([]setFile, error) {
	names, err := filesOf(fsys, shown)
	if err != nil {
		return nil, err
	}
	files := make([]setFile, 0, len(names))
	for _, name := range names {
		raw, err := fs.ReadFile(fsys, name)
		if err != nil {
			return nil, fmt.Errorf("rule set %s: %w", shown, err)
		}
		files = append(files, setFile{name, raw})
	}
	return files, nil
}

// newLayer makes a layer of the files of a rule set.
func newLayer(files []setFile, shown string, embedded bool) (*layer, error) {
	l := &layer{embedded: embedded}
	sum := sha256.New()
	parts, errs := make([]part, len(files)), make([]error, len(files))
	var readers sync.WaitGroup
	for i, f := range files {
		fmt.Fprintf(sum, "%s %d\n", f.name, len(f.raw))
		sum.Write(f.raw)
		readers.Go(func() { parts[i], errs[i] = l.read(f.name, path.Join(shown, f.name), f.raw) })
	}
	readers.Wait()
	if err := allProblems(errs); err != nil {
		return nil, err
	}
	for _, p := range parts {
		l.add(p)
	}
	if l.source == nil {
		return nil, fmt.Errorf("rule set %s: there is no %s in it", shown, manifestName)
	}
	l.digest = hex.EncodeToString(sum.Sum(nil))
	return l, l.checkName()
}

// allProblems is what is wrong with all files together, up to a bound; of what is not
// wrong with a text, the first.
func allProblems(errs []error) error {
	var all schema.Problems
	for _, err := range errs {
		var problems schema.Problems
		if !errors.As(err, &problems) && err != nil {
			return err
		}
		all = append(all, problems...)
	}
	if len(all) == 0 {
		return nil
	}
	return all.First()
}

// filesOf lists the files that make up a rule set, in order.
func filesOf(fsys fs.FS, shown string) ([]string, error) {
	var names []string
	var total int64
	err := fs.WalkDir(fsys, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			return skipFolder(name)
		}
		if !belongs(name) {
			return nil
		}
		info, err := d.Info()
		switch {
		case err != nil:
			return err
		case !info.Mode().IsRegular():
			return fmt.Errorf("%s is not a plain file", name)
		case info.Size() > maxFileBytes:
			return fmt.Errorf("%s has %d bytes; at most %d are read", name, info.Size(), maxFileBytes)
		}
		if names = append(names, name); len(names) > maxFiles {
			return fmt.Errorf("it has more than %d files; put what belongs together into one", maxFiles)
		}
		if total += info.Size(); total > maxSetBytes {
			return fmt.Errorf("its files have more than %d bytes together; no book of rules needs that", maxSetBytes)
		}
		return nil
	})
	if errors.Is(err, fs.ErrNotExist) {
		return nil, fmt.Errorf("rule set %s: there is no such folder", shown)
	}
	if err != nil {
		return nil, fmt.Errorf("rule set %s: %w", shown, err)
	}
	sort.Strings(names)
	return names, nil
}

// skipFolder keeps to the folder of the set and its tables: tests and anything
// hidden are not part of what judges.
func skipFolder(name string) error {
	if name == "." || name == "tables" {
		return nil
	}
	return fs.SkipDir
}

// belongs reports whether a file is part of what judges.
func belongs(name string) bool {
	base := path.Base(name)
	if strings.HasPrefix(base, ".") {
		return false
	}
	switch path.Ext(name) {
	case ".yaml":
		return true
	case ".rego":
		return !strings.HasSuffix(name, "_test.rego")
	}
	return false
}

// part is one file of a layer as read: exactly one of its members is set.
type part struct {
	manifest *manifest
	source   *schema.Source // of the manifest
	rows     *rowsOf
	table    *tableOf
	module   *moduleText
}

// read reads one file.
func (l *layer) read(name, shown string, raw []byte) (part, error) {
	room := strings.TrimSuffix(path.Base(name), path.Ext(name))
	var p part
	var err error
	switch {
	case name == manifestName:
		p.manifest = &manifest{}
		p.source, err = schema.ReadYAML(shown, raw, l.schema(schema.RuleSetSchema), p.manifest)
		err = orOlder(err, p.source)
	case path.Dir(name) == "tables" && path.Ext(name) == ".yaml":
		p.table = &tableOf{name: room}
		p.table.source, err = schema.ReadYAML(shown, raw, l.schema(schema.TableSchema), &p.table.file)
	case path.Ext(name) == ".yaml":
		p.rows = &rowsOf{room: room}
		p.rows.source, err = schema.ReadYAML(shown, raw, l.schema(schema.RequirementsSchema), &p.rows.file)
		err = orOlder(err, p.rows.source)
	default:
		p.module = &moduleText{room, shown, string(raw)}
	}
	return p, err
}

// orOlder says of what is wrong with a file, where that is its older form, what it
// would be in the present one.
func orOlder(err error, src *schema.Source) error {
	if err == nil || src == nil {
		return err
	}
	if old := append(oldParameters(src), oldRows(src)...); len(old) > 0 {
		return old
	}
	return err
}

// add takes a file that was read into the layer.
func (l *layer) add(p part) {
	switch {
	case p.manifest != nil:
		l.manifest, l.source = *p.manifest, p.source
	case p.rows != nil:
		l.rows = append(l.rows, *p.rows)
	case p.table != nil:
		l.tables = append(l.tables, *p.table)
	default:
		l.modules = append(l.modules, *p.module)
	}
}

func (l *layer) schema(name string) string {
	if l.embedded {
		return ""
	}
	return name
}

func (l *layer) name() string { return l.manifest.Name.Value }

// namespace is the Rego package of the set's modules.
func (l *layer) namespace() string { return namespaceOf(l.name()) }

func namespaceOf(set string) string { return strings.ReplaceAll(set, "-", "_") }

// ownNames are what lies beside the sets in the data that rules see.
var ownNames = []string{"lib", "comparisons", "between", "groups", "parameters", "tables"}

// checkName refuses names that a set may not take.
func (l *layer) checkName() error {
	if slices.Contains(ownNames, l.name()) {
		return schema.Problems{l.source.ProblemAt("/name", fmt.Sprintf("a rule set cannot be called %q", l.name()), "that is the name of something that rules of all sets look at; take another")}
	}
	return nil
}
