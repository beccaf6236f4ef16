package ruleset

import (
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"sunclause/engine/rego"
	"sunclause/facts/book"
	"sunclause/schema"
)

// Shipped is an embedded rule set in the form in which sunclause ships it: merged
// with all that it builds on, as plain data that a Go file can hold. Its YAML
// need not be read when the program starts.
type Shipped struct {
	Name, Title, Version string
	SHA256               string
	Layers               []LayerInfo
	Requirements         []*Requirement // in the order of their ids
	Off, Changes         []Change
	Parameters           []*book.Parameter // in the order of their names
	Tables               []*ShippedTable   // likewise
}

// ShippedTable is a table with its rows as lists of cells, in the order of the
// columns; a cell that a row has not got is nil.
type ShippedTable struct {
	book.Table
	Cells [][]any
}

// shipper is a file system of rule sets that has shipped forms of them.
type shipper interface {
	Shipped(name string) (*Shipped, bool)
}

// shippedForm finds the shipped form of an embedded set; nil when there is none.
func shippedForm(embedded fs.FS, ref string) *Shipped {
	if s, ok := embedded.(shipper); ok && isEmbedded(embedded, ref) {
		form, _ := s.Shipped(ref)
		return form
	}
	return nil
}

// Ship puts a set that was loaded from its files into the form in which it ships.
func (s *RuleSet) Ship() *Shipped {
	out := &Shipped{Name: s.Name, Title: s.Title, Version: s.Version, SHA256: s.SHA256, Layers: s.Layers, Requirements: s.Requirements, Off: s.Off, Changes: s.Changes}
	for _, p := range s.Parameters() {
		out.Parameters = append(out.Parameters, &p)
	}
	for _, name := range slices.Sorted(maps.Keys(s.Book.Tables)) {
		t := &ShippedTable{Table: *s.Book.Tables[name]}
		for _, row := range t.Rows {
			cells := make([]any, len(t.Columns))
			for i, c := range t.Columns {
				cells[i] = row[c.Name]
			}
			t.Cells = append(t.Cells, cells)
		}
		t.Rows = nil
		out.Tables = append(out.Tables, t)
	}
	return out
}

// begin makes a set of the shipped form, or an empty one where there is none. What
// the form holds is shared by the forms of several sets, and is copied.
func (form *Shipped) begin() *RuleSet {
	s := &RuleSet{byID: map[string]*Requirement{}, written: map[[2]string]int{}, Book: book.Book{Parameters: map[string]book.Parameter{}, Tables: map[string]*book.Table{}}}
	if form == nil {
		return s
	}
	s.Name, s.Title, s.Version, s.SHA256 = form.Name, form.Title, form.Version, form.SHA256
	s.Layers, s.Off, s.Changes = form.Layers, slices.Clip(form.Off), slices.Clip(form.Changes)
	own := make([]Requirement, len(form.Requirements))
	s.Requirements = make([]*Requirement, len(own))
	s.byID = make(map[string]*Requirement, len(own))
	for i := range own {
		r := &own[i]
		*r = *form.Requirements[i]
		r.Changes = slices.Clip(r.Changes)
		s.Requirements[i], s.byID[r.ID] = r, r
	}
	for _, p := range form.Parameters {
		s.Book.Parameters[p.Name] = *p
	}
	for _, t := range form.Tables {
		s.Book.Tables[t.Name] = t.table()
	}
	return s
}

// table is the table with its rows by the names of the columns.
func (t *ShippedTable) table() *book.Table {
	out := t.Table
	out.Rows = make([]map[string]any, len(t.Cells))
	for i, cells := range t.Cells {
		row := make(map[string]any, len(cells))
		for j, cell := range cells {
			if cell != nil {
				row[t.Columns[j].Name] = cell
			}
		}
		out.Rows[i] = row
	}
	return &out
}

// names are the names of the sets in the form.
func (form *Shipped) names() []string {
	if form == nil {
		return nil
	}
	names := make([]string, len(form.Layers))
	for i, l := range form.Layers {
		names[i] = l.Name
	}
	return names
}

// apartFrom refuses a layer that has the name of a set in the form.
func (form *Shipped) apartFrom(layers []*layer) error {
	for _, l := range layers {
		if slices.Contains(form.names(), l.name()) {
			return l.nameTaken()
		}
	}
	return nil
}

func (l *layer) nameTaken() error {
	return schema.Problems{l.source.ProblemAt("/extends", fmt.Sprintf("the set builds on a set called %q, which is its own name or one met before", l.name()), "give each set a name of its own, and let none build on itself")}
}

// modules reads the Rego modules of the sets in the form, from the lowest up.
func (form *Shipped) modules(embedded fs.FS) ([]rego.Module, error) {
	var all []rego.Module
	for _, set := range slices.Backward(form.names()) {
		files, err := fs.Glob(embedded, set+"/*.rego")
		if err != nil {
			return nil, fmt.Errorf("rule set %s: %w", set, err)
		}
		for _, file := range files {
			if !belongs(file) {
				continue
			}
			text, err := fs.ReadFile(embedded, file)
			if err != nil {
				return nil, fmt.Errorf("rule set %s: %w", set, err)
			}
			room := strings.TrimSuffix(path.Base(file), ".rego")
			all = append(all, rego.Module{Name: path.Join("embedded", file), Room: room, Package: namespaceOf(set) + "." + room, Text: string(text)})
		}
	}
	return all, nil
}
