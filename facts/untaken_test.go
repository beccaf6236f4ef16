package facts_test

import (
	"flag"
	"go/ast"
	"go/build"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"sunclause/schema"
)

var update = flag.Bool("update", false, "write the list of members anew that no fact takes up")

// TestUntaken keeps the list of members that nothing in the facts, or in what judges
// them, looks at: a member that a fact takes up leaves it, a new one that none takes
// up has to be in it, and a person sees so when the change is read.
func TestUntaken(t *testing.T) {
	taken := takenUp(t)
	var list strings.Builder
	for _, name := range schema.StatementNames() {
		if !taken[name] {
			list.WriteString(name + "\n")
		}
	}
	if *update {
		if err := os.WriteFile("untaken.txt", []byte(list.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	raw, err := os.ReadFile("untaken.txt")
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(strings.Split(string(raw), "\n"), strings.Split(list.String(), "\n")); d != "" {
		t.Errorf("untaken.txt is not what the facts leave aside; if that is meant, go test ./facts -run TestUntaken -update (- listed, + found):\n%s", d)
	}
}

var mirrors = regexp.MustCompile(`(?m)^// (\w+) mirrors (\w+)`)

// takenUp are the members that some expression outside the schema selects, by the
// names under which their objects are defined.
func takenUp(t *testing.T) map[string]bool {
	t.Helper()
	m := &sources{files: token.NewFileSet(), known: map[string]*types.Package{}, selected: map[types.Object]bool{}}
	for _, path := range []string{"sunclause/facts", "sunclause/engine/judge"} {
		if _, err := m.Import(path); err != nil {
			t.Fatal(err)
		}
	}
	document := m.known[schemaPath].Scope()
	taken := map[string]bool{}
	found, err := filepath.Glob("../schema/*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range found {
		raw, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, match := range mirrors.FindAllStringSubmatch(string(raw), -1) {
			of, ok := document.Lookup(match[1]).Type().Underlying().(*types.Struct)
			for i := 0; ok && i < of.NumFields(); i++ {
				name, _, _ := strings.Cut(reflect.StructTag(of.Tag(i)).Get("json"), ",")
				if m.selected[of.Field(i)] {
					taken[match[2]+"."+name] = true
				}
			}
		}
	}
	return taken
}

const schemaPath = "sunclause/schema"

// sources are packages of this module as their source has them. What they take from
// elsewhere is left blank: it selects no member of a document.
type sources struct {
	files    *token.FileSet
	known    map[string]*types.Package
	selected map[types.Object]bool // fields of the mirror
}

func (s *sources) Import(path string) (*types.Package, error) {
	if p := s.known[path]; p != nil {
		return p, nil
	}
	below, ours := strings.CutPrefix(path, "sunclause/")
	if !ours {
		s.known[path] = types.NewPackage(path, filepath.Base(path))
		s.known[path].MarkComplete()
		return s.known[path], nil
	}
	files, err := s.parsed(filepath.Join("..", below))
	if err != nil {
		return nil, err
	}
	info := &types.Info{Selections: map[*ast.SelectorExpr]*types.Selection{}}
	blanksAreNoErrors := func(error) {}
	conf := types.Config{Importer: s, Error: blanksAreNoErrors, IgnoreFuncBodies: path == schemaPath}
	s.known[path], _ = conf.Check(path, s.files, files, info)
	for _, selection := range info.Selections {
		if of := selection.Obj(); of.Pkg() != nil && of.Pkg().Path() == schemaPath {
			s.selected[of] = true
		}
	}
	return s.known[path], nil
}

func (s *sources) parsed(dir string) ([]*ast.File, error) {
	in, err := build.ImportDir(dir, 0)
	if err != nil {
		return nil, err
	}
	var files []*ast.File
	for _, name := range in.GoFiles {
		f, err := parser.ParseFile(s.files, filepath.Join(dir, name), nil, parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		files = append(files, f)
	}
	return files, nil
}
