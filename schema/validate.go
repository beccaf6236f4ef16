package schema

import (
	"bytes"
	"embed"
	"encoding/json"
	"fmt"
	"io"
	"path"
	"strings"
	"sync"

	"github.com/santhosh-tekuri/jsonschema/v5"
)

//go:embed *.schema.json
var files embed.FS

// Names of the schemas that a text can be held against.
const (
	InstallationSchema = "installation.schema.json"
	ReportSchema       = "report.schema.json"
	SummarySchema      = "summary.schema.json"
	RecordSchema       = "record.schema.json"
	CompareSchema      = "compare.schema.json"
	CompareDocsSchema  = "compare-documents.schema.json"
	ReproduceSchema    = "reproduce.schema.json"
	FactsSchema        = "facts.schema.json"
	RulesSchema        = "rules.schema.json"
	RuleSetSchema      = "ruleset.schema.json"
	RequirementsSchema = "requirements.schema.json"
	TableSchema        = "table.schema.json"
	TrialSchema        = "trial.schema.json"
	CardSchema         = "requirements.schema.json#/$defs/card"
)

// File returns one of the JSON Schemas by name, for those who want to give it
// to an editor or another program.
func File(name string) ([]byte, error) { return files.ReadFile(name) }

// compiled keeps each schema compiled once for the whole process.
var compiled sync.Map // name -> func() (*jsonschema.Schema, error)

func compile(name string) (*jsonschema.Schema, error) {
	once, _ := compiled.LoadOrStore(name, sync.OnceValues(func() (*jsonschema.Schema, error) {
		compiler.Lock()
		defer compiler.Unlock()
		return compiler.made().Compile(base + name)
	}))
	return once.(func() (*jsonschema.Schema, error))()
}

// compiler is for one at a time. What it has compiled once, such as the kinds of
// quantity, serves whatever it compiles after.
var compiler = struct {
	sync.Mutex
	made func() *jsonschema.Compiler
}{made: sync.OnceValue(func() *jsonschema.Compiler {
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft7
	c.LoadURL = loadEmbedded
	return c
})}

// base gives the embedded files an address of their own, so that a reference
// between them can never be taken for a file or a host.
const base = "embedded:///"

func loadEmbedded(url string) (io.ReadCloser, error) {
	if !strings.HasPrefix(url, base) {
		return nil, fmt.Errorf("schema %s is not one of the embedded ones", url)
	}
	raw, err := files.ReadFile(strings.TrimPrefix(url, base))
	if err != nil {
		return nil, err
	}
	return io.NopCloser(bytes.NewReader(bytes.Replace(raw, inFile, inMemory, 1))), nil
}

// The library holds each schema that it compiles to the meta-schema of its draft,
// and to that of 2020-12 it takes six times as long as to that of draft 7. The
// keywords that the files use mean the same in both, which a test makes sure
// of, so they are read as draft 7.
var (
	inFile   = []byte(`"https://json-schema.org/draft/2020-12/schema"`)
	inMemory = []byte(`"http://json-schema.org/draft-07/schema#"`)
)

// validate holds the source against a schema and adds what is wrong with the
// source to what was found before. Breakage of the schema itself is an error.
func (s *Source) validate(name string, found *findings) (err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("schema %s: %v", name, r)
		}
	}()
	tree := s.plain
	if name == InstallationSchema {
		if shapeOfInstallation.fits(s.root) {
			return nil
		}
		tree = func() any { return s.clipped(found) }
	}
	sch, err := compile(name)
	if err != nil {
		return fmt.Errorf("schema %s: %w", name, err)
	}
	err = sch.Validate(tree())
	if err == nil {
		return nil
	}
	failure, ok := err.(*jsonschema.ValidationError)
	if !ok {
		return fmt.Errorf("schema %s: %w", name, err)
	}
	e := &explainer{source: s, found: found, settled: found.places(), schema: name, rules: map[string]rule{}}
	leaves(failure, e.leaf)
	return nil
}

// clipped is what of the document the library is asked about.
func (s *Source) clipped(found *findings) any {
	c := clipper{left: maxDoubtful}
	clipped := c.clip(&shapeOfInstallation, s.root)
	found.cut = found.cut || c.cut
	return clipped
}

func leaves(e *jsonschema.ValidationError, visit func(*jsonschema.ValidationError)) {
	if len(e.Causes) == 0 {
		visit(e)
	}
	for _, c := range e.Causes {
		leaves(c, visit)
	}
}

// plainSchemas keeps each schema as plain values, for the words that explain a
// failure. They must not be changed.
var plainSchemas sync.Map // file name -> map[string]any

func plainSchema(name string) map[string]any {
	if v, ok := plainSchemas.Load(name); ok {
		return v.(map[string]any)
	}
	raw, err := files.ReadFile(name)
	if err != nil {
		return nil
	}
	d := json.NewDecoder(bytes.NewReader(raw))
	d.UseNumber()
	var v map[string]any
	if d.Decode(&v) != nil {
		return nil
	}
	plainSchemas.Store(name, v)
	return v
}

// rule is the part of the schema that a value failed.
type rule struct {
	words  string         // the nearest description of the value
	limits map[string]any // the subschema that holds the failed keyword
}

// ruleAt walks a keyword location, following each $ref, and keeps the nearest
// description on the way. What a member says of itself counts for more than
// what is said of its kind, to which it refers.
func ruleAt(name, location string) rule {
	file, node := follow(name, map[string]any{"$ref": name})
	var r rule
	described := false
	for _, token := range split(location) {
		if m, ok := node.(map[string]any); ok {
			r.limits = m
			d, ok := m["description"].(string)
			if ok && !described {
				r.words = d
			}
			described = token == "$ref" && (ok || described)
		}
		if token == "$ref" {
			file, node = follow(file, r.limits)
			continue
		}
		node = step(node, token)
	}
	return r
}

func step(node any, token string) any {
	switch n := node.(type) {
	case map[string]any:
		return n[token]
	case []any:
		var i int
		if _, err := fmt.Sscanf(token, "%d", &i); err == nil && i < len(n) {
			return n[i]
		}
	}
	return nil
}

func follow(file string, m map[string]any) (string, any) {
	ref, _ := m["$ref"].(string)
	target, fragment, _ := strings.Cut(ref, "#")
	if target != "" {
		file = path.Base(target)
	}
	node := any(plainSchema(file))
	for _, token := range split(fragment) {
		node = step(node, token)
	}
	return file, node
}
