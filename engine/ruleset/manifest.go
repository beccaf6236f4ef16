package ruleset

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// manifest mirrors ruleset.yaml.
type manifest struct {
	schema.Pointer
	Name       schema.Text     `json:"name"`
	Title      schema.Text     `json:"title"`
	Version    schema.Text     `json:"version"`
	Extends    schema.Text     `json:"extends"`
	Parameters []parameterFile `json:"parameters"`
	Changes    []changeFile    `json:"changes"`
}

// parameterFile mirrors one parameter of ruleset.yaml.
type parameterFile struct {
	schema.Pointer
	Name   schema.Text `json:"name"`
	Title  schema.Text `json:"title"`
	Value  any         `json:"value"`
	Unit   schema.Text `json:"unit"`
	Source sourceFile  `json:"source"`
}

// changeFile mirrors one change of ruleset.yaml.
type changeFile struct {
	schema.Pointer
	Parameter   schema.Text    `json:"parameter"`
	Value       any            `json:"value"`
	Requirement schema.Text    `json:"requirement"`
	Level       schema.Text    `json:"level"`
	Off         schema.Flag    `json:"off"`
	Table       schema.Text    `json:"table"`
	Row         map[string]any `json:"row"`
	Cells       map[string]any `json:"cells"`
	Reason      schema.Text    `json:"reason"`
	Date        schema.Text    `json:"date"`
	Source      sourceFile     `json:"source"`
}

// sourceFile mirrors a source.
type sourceFile struct {
	schema.Pointer
	Document schema.Text `json:"document"`
	Edition  schema.Text `json:"edition"`
	Clause   schema.Text `json:"clause"`
	How      schema.Text `json:"how"`
	Verified schema.Flag `json:"verified"`
}

func (s sourceFile) source() working.Source {
	return working.Source{
		Document: s.Document.Value, Edition: s.Edition.Value, Clause: s.Clause.Value,
		How: working.How(s.How.Value), Verified: s.Verified.Yes(),
	}
}

// requirementsFile mirrors a file of limit rows.
type requirementsFile struct {
	schema.Pointer
	Parameters   []parameterFile `json:"parameters"`
	Requirements []cardFile      `json:"requirements"`
}

// cardFile mirrors a limit row, and the custom block of a Rego rule's METADATA,
// which has the same members but for what is compared.
type cardFile struct {
	schema.Pointer
	ID      schema.Text `json:"id"`
	Title   schema.Text `json:"title"`
	Level   schema.Text `json:"level"`
	Subject schema.Text `json:"subject"`
	Stage   schema.Text `json:"stage"`
	When    []any       `json:"when"` // each a line, or an object with any_of
	Since   schema.Text `json:"since"`
	Until   schema.Text `json:"until"`
	Require any         `json:"require"` // of a row: likewise
	Measure schema.Text `json:"measure"` // of a Rego rule
	Broken  schema.Text `json:"broken"`
	Remedy  schema.Text `json:"remedy"`
	Source  sourceFile  `json:"source"`
}

// tableFile mirrors a file of tables/.
type tableFile struct {
	schema.Pointer
	Title    schema.Text      `json:"title"`
	Note     schema.Text      `json:"note"`
	Source   sourceFile       `json:"source"`
	Replaces replacesFile     `json:"replaces"`
	Columns  []columnFile     `json:"columns"`
	Rows     []map[string]any `json:"rows"`
}

// replacesFile mirrors what a table says of the one it stands in place of.
type replacesFile struct {
	schema.Pointer
	Reason schema.Text `json:"reason"`
	Date   schema.Text `json:"date"`
}

// columnFile mirrors one column of a table.
type columnFile struct {
	schema.Pointer
	Name  schema.Text `json:"name"`
	Unit  schema.Text `json:"unit"`
	Title schema.Text `json:"title"`
}
