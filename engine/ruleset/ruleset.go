// Package ruleset loads rule sets.
//
// A rule set is a folder of data, or a sealed archive of one: a manifest with
// parameters, limit rows, tables, and Rego rules for what a row cannot say. Sets
// build on one another in layers: what a set changes in those below it is kept
// with its reason. A set that cannot be used whole is refused whole. Once loaded
// it does not change; what alters a set hands out another.
package ruleset

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"sort"
	"strings"

	"sunclause/engine/rego"
	"sunclause/facts"
	"sunclause/facts/book"
)

// RuleSet is a rule set with the sets it builds on, merged and ready to judge. It
// does not change, and may be used from several goroutines.
type RuleSet struct {
	Name         string
	Title        string
	Version      string
	SHA256       string      // of the set with all it builds on and the shared modules
	Layers       []LayerInfo // the set itself first, then what it builds on
	Requirements []*Requirement
	Off          []Change // requirements switched off, with the reasons
	Changes      []Change // everything that sets changed in the sets below them
	Book         book.Book

	embedded    fs.FS
	byID        map[string]*Requirement
	comparisons map[string]*Comparison // by what they compare
	rules       *rego.Rules            // nil when no layer has any
	written     map[[2]string]int      // requirements by set and room, while layers are put together
	library     []moduleText
}

// LayerInfo tells one layer of a rule set from others: two sets with the same
// digest judge alike.
type LayerInfo struct {
	Name    string `json:"name"`
	Title   string `json:"title"`
	Version string `json:"version"`
	SHA256  string `json:"sha256"`
}

// Requirement finds a requirement of the set by its id.
func (s *RuleSet) Requirement(id string) (*Requirement, bool) {
	r, ok := s.byID[id]
	return r, ok
}

// Load reads a rule set by the name of an embedded one, or from a folder or a
// sealed archive, with all sets that it builds on. A set that cannot be used
// whole is refused whole: Problems for its data files, errors of the Rego
// compiler for its rules. One that is not embedded is held to rego.LoadLimits.
func Load(ctx context.Context, embedded fs.FS, ref string, options ...LoadOption) (*RuleSet, error) {
	var o loadOptions
	for _, option := range options {
		option(&o)
	}
	if isEmbedded(embedded, ref) {
		return load(ctx, embedded, ref, o)
	}
	var s *RuleSet
	err := rego.Within(ctx, rego.LoadLimits(), func(ctx context.Context) (err error) {
		s, err = load(ctx, embedded, ref, o)
		return err
	})
	if err != nil {
		return nil, err
	}
	return s, nil
}

func load(ctx context.Context, embedded fs.FS, ref string, o loadOptions) (*RuleSet, error) {
	layers, base, err := readLayers(embedded, ref, o)
	if err != nil {
		return nil, err
	}
	library, err := readLibrary(embedded)
	if err != nil {
		return nil, err
	}
	s := base.begin()
	s.embedded, s.library = embedded, library
	if err := s.build(base, layers); err != nil {
		return nil, err
	}
	s.resolve()
	return s, s.prepareRules(ctx)
}

// build puts layers, the topmost first, on top of what the set has from its
// shipped form.
func (s *RuleSet) build(base *Shipped, layers []*layer) error {
	if len(layers) == 0 {
		return s.addRules(base, nil)
	}
	var infos []LayerInfo
	for _, l := range layers {
		infos = append(infos, LayerInfo{l.name(), l.manifest.Title.Value, l.manifest.Version.Value, l.digest})
	}
	s.Layers = append(infos, s.Layers...)
	s.Name, s.Title, s.Version = infos[0].Name, infos[0].Title, infos[0].Version
	s.SHA256 = digestOf(s.Layers, s.library)
	if err := s.merge(layers); err != nil {
		return err
	}
	if err := s.addRules(base, layers); err != nil {
		return err
	}
	if err := s.applyChanges(base, layers); err != nil {
		return err
	}
	s.order()
	return nil
}

// order puts the requirements in the order of their ids.
func (s *RuleSet) order() {
	sort.Slice(s.Requirements, func(i, j int) bool { return s.Requirements[i].ID < s.Requirements[j].ID })
}

// digestOf sums up everything that decides how a set judges.
func digestOf(layers []LayerInfo, library []moduleText) string {
	sum := sha256.New()
	for _, l := range layers {
		fmt.Fprintln(sum, l.Name, l.SHA256)
	}
	for _, m := range library {
		fmt.Fprintln(sum, m.name, len(m.text), m.text)
	}
	return hex.EncodeToString(sum.Sum(nil))
}

const maxLayers = 8

// readLayers reads a set and what it builds on, the set itself first, as far
// down as there is a shipped form of the rest.
func readLayers(embedded fs.FS, ref string, o loadOptions) ([]*layer, *Shipped, error) {
	var layers []*layer
	var base *Shipped
	asked := ref
	for ref != "" {
		if o.files == nil || len(layers) > 0 {
			if base = shippedForm(embedded, ref); base != nil {
				break
			}
		}
		var l *layer
		var err error
		if o.files != nil && len(layers) == 0 {
			l, err = newLayer(o.files, filepath.ToSlash(ref), false)
		} else {
			l, err = openLayer(embedded, ref, o.key)
		}
		if err != nil {
			return nil, nil, err
		}
		if slices.ContainsFunc(layers, func(o *layer) bool { return o.name() == l.name() }) {
			return nil, nil, l.nameTaken()
		}
		if layers = append(layers, l); len(layers) > maxLayers {
			return nil, nil, fmt.Errorf("rule set %s: more than %d sets build one on the other", ref, maxLayers)
		}
		next := l.manifest.Extends.Value
		if l.sealed && next != "" && !slices.Contains(Embedded(embedded), next) {
			return nil, nil, l.notAlone()
		}
		if strings.HasPrefix(next, ".") {
			next = filepath.Join(ref, next)
		}
		ref = next
	}
	if o.key != nil && !slices.ContainsFunc(layers, func(l *layer) bool { return l.sealed }) {
		return nil, nil, fmt.Errorf("rule set %s: it is not sealed, so there is nothing to verify with --key; leave --key out or name the sealed archive", asked)
	}
	return layers, base, base.apartFrom(layers)
}

// openLayer finds a set: a name without a slash or dot is an embedded one
// unless only a folder of that name exists.
func openLayer(embedded fs.FS, ref string, key []byte) (*layer, error) {
	if isEmbedded(embedded, ref) {
		sub, err := fs.Sub(embedded, ref)
		if err != nil {
			return nil, err
		}
		return readLayer(sub, path.Join("embedded", ref), true)
	}
	info, err := os.Stat(ref)
	switch {
	case err == nil && info.Mode().IsRegular():
		return openArchive(ref, key)
	case err != nil || !info.IsDir():
		return nil, fmt.Errorf("rule set %s: it is neither one of the embedded sets (%s) nor a folder or sealed archive", ref, strings.Join(Embedded(embedded), ", "))
	}
	return readLayer(os.DirFS(ref), filepath.ToSlash(ref), false)
}

// isEmbedded reports whether a set is named that is one of the embedded ones.
func isEmbedded(embedded fs.FS, ref string) bool {
	if strings.ContainsAny(ref, `/\.`) || ref == "lib" {
		return false
	}
	_, err := fs.Stat(embedded, path.Join(ref, manifestName))
	return err == nil
}

// Embedded lists the names of the rule sets in a file system of sets.
func Embedded(embedded fs.FS) []string {
	found, _ := fs.Glob(embedded, "*/"+manifestName)
	names := make([]string, len(found))
	for i, f := range found {
		names[i] = path.Dir(f)
	}
	return names
}

// readLibrary reads the Rego modules that all sets share.
func readLibrary(embedded fs.FS) ([]moduleText, error) {
	found, err := fs.Glob(embedded, "lib/*.rego")
	if err != nil {
		return nil, err
	}
	var modules []moduleText
	for _, f := range found {
		if strings.HasSuffix(f, "_test.rego") {
			continue
		}
		raw, err := fs.ReadFile(embedded, f)
		if err != nil {
			return nil, fmt.Errorf("library of rules: %w", err)
		}
		modules = append(modules, moduleText{"lib", "embedded/" + f, string(raw)})
	}
	return modules, nil
}

// Own lists the requirements that the set itself wrote, not those it builds on.
func (s *RuleSet) Own() []*Requirement {
	var own []*Requirement
	for _, q := range s.Requirements {
		if q.Set == s.Name {
			own = append(own, q)
		}
	}
	return own
}

// Rego is what the rest of the engine needs of rules that are written in Rego.
type Rego interface {
	// Broken lists the requirements that rules find broken, with what each says.
	Broken(ctx context.Context, f *facts.Facts) (map[rego.Key]string, error)
	// Reads is what the rule of a requirement looks at.
	Reads(id string) rego.Reads
	// Mutants are the rules with one small change in that of a requirement.
	Mutants(id string) []rego.Mutant
}

// Rules are the Rego rules of the set; nil when it has none.
func (s *RuleSet) Rules() Rego {
	if s.rules == nil {
		return nil
	}
	return s.rules
}

// Comparisons is how many distinct comparisons the set has.
func (s *RuleSet) Comparisons() int { return len(s.comparisons) }

// Parameters lists the parameters of the set with their present values, by name.
func (s *RuleSet) Parameters() []book.Parameter {
	var all []book.Parameter
	for _, n := range s.parameterNames() {
		all = append(all, s.Book.Parameters[n])
	}
	return all
}
