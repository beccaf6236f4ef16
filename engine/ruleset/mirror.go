// Code generated from requirements.schema.json, ruleset.schema.json, table.schema.json by go generate; DO NOT EDIT.

package ruleset

import "sunclause/schema"

// requirementsFile mirrors requirements: ROOM.yaml: requirements that hold a fact of each subject to a limit, one line each, and the figures of that room.
type requirementsFile struct {
	schema.Pointer
	Parameters   map[string]parameterFile `json:"parameters"`   // figures and words of the room that a set above may change, by name, as those of ruleset.yaml
	Requirements []cardFile               `json:"requirements"` // limit rows
}

// cardFile mirrors row, card: one requirement.
type cardFile struct {
	schema.Pointer
	ID      schema.Text `json:"id"`      // readable id
	Title   schema.Text `json:"title"`   // what is required, in one line
	Level   schema.Text `json:"level"`   // how binding it is; shall when left out
	Subject schema.Text `json:"subject"` // list of facts that is judged, one by one; left out where require begins with its name, as in strings.voc_max_v at_most 600
	Stage   schema.Text `json:"stage"`
	When    []any       `json:"when"`
	Since   schema.Text `json:"since"` // first day of design to which it applies
	Until   schema.Text `json:"until"` // last day of design to which it applies
	Require any         `json:"require"`
	Remedy  schema.Text `json:"remedy"` // what would put it right
	Source  sourceFile  `json:"source"`
	Measure schema.Text `json:"measure"` // fact shown as the value, alone or with its limit, as in voc_max_v at_most 600; the rule decides
	Broken  schema.Text `json:"broken"`  // what is wrong when the rule speaks, in one line
}

// manifest mirrors ruleset: ruleset.yaml: what a rule set is called, what it builds on, its figures, and what it changes in the sets below it.
type manifest struct {
	schema.Pointer
	Name       schema.Text              `json:"name"`       // name of the set; its requirements are called name/…
	Title      schema.Text              `json:"title"`      // the set in one line
	Version    schema.Text              `json:"version"`    // version of the set, as in 1.2.0
	Extends    schema.Text              `json:"extends"`    // set that it builds on: the name of an embedded one, or ./ or ../ and a folder
	Parameters map[string]parameterFile `json:"parameters"` // figures and words of the set that a set above it may change, by name
	Changes    []changeFile             `json:"changes"`    // what the set changes in the sets below it
}

// parameterFile mirrors parameter: a figure or word that a region or firm may change. Rows, rules and facts know it by the name under which it stands.
type parameterFile struct {
	schema.Pointer
	Title  schema.Text `json:"title"` // the parameter in words
	Value  any         `json:"value"` // a number or a word
	Unit   schema.Text `json:"unit"`  // unit of a number; left out for counts and factors, and where the name ends in it, as in fuse_ambient_max_c
	Source sourceFile  `json:"source"`
}

// changeFile mirrors change: one change to the sets below: a parameter's value, a requirement's level, a requirement switched off, or a row of a table. Each says why and since when.
type changeFile struct {
	schema.Pointer
	Parameter   schema.Text    `json:"parameter"`   // parameter that changes
	Value       any            `json:"value"`       // its new value: a number or a word
	Requirement schema.Text    `json:"requirement"` // requirement that changes, as in gb/string-voltage-cold
	Level       schema.Text    `json:"level"`       // its new level
	Off         schema.Flag    `json:"off"`         // whether it is switched off
	Table       schema.Text    `json:"table"`       // table of which a row changes
	Row         map[string]any `json:"row"`         // cells by which the row is found
	Cells       map[string]any `json:"cells"`       // its new cells
	Reason      schema.Text    `json:"reason"`      // why, in writing
	Date        schema.Text    `json:"date"`        // since when
	Source      sourceFile     `json:"source"`
}

// sourceFile mirrors source: where a requirement, figure or table comes from.
type sourceFile struct {
	schema.Pointer
	Document schema.Text `json:"document"` // document, or house rule
	Edition  schema.Text `json:"edition"`  // edition
	Clause   schema.Text `json:"clause"`   // clause or table
	How      schema.Text `json:"how"`      // in what way it is known; definition is what follows from physics, geometry or the meaning of what is stated
	Verified schema.Flag `json:"verified"` // whether someone read that clause in that document
}

// tableFile mirrors table: tables/NAME.yaml: one table of the book.
type tableFile struct {
	schema.Pointer
	Title        schema.Text      `json:"title"` // the table in words
	Note         schema.Text      `json:"note"`  // a remark for readers
	Source       sourceFile       `json:"source"`
	Replaces     replacesFile     `json:"replaces"`
	Columns      []columnFile     `json:"columns"`      // columns, in order
	Requirements []askedFile      `json:"requirements"` // of a table of labels or papers: the requirements that its rows name in the column requirement
	Rows         []map[string]any `json:"rows"`         // rows: each an object of cells, numbers or words, by column
}

// replacesFile mirrors replacement: says that the table stands in place of one of the same name in a set below, why, and since when.
type replacesFile struct {
	schema.Pointer
	Reason schema.Text `json:"reason"` // why, in writing
	Date   schema.Text `json:"date"`   // since when
}

// askedFile mirrors asked: a requirement that asks for what the rows name it for: a label at each place where it is due, or a paper.
type askedFile struct {
	schema.Pointer
	ID     schema.Text `json:"id"`    // readable id
	Title  schema.Text `json:"title"` // what is required, in one line
	Level  schema.Text `json:"level"` // how binding it is; shall when left out
	When   []any       `json:"when"`
	Since  schema.Text `json:"since"`  // first day of design to which it applies
	Until  schema.Text `json:"until"`  // last day of design to which it applies
	Remedy schema.Text `json:"remedy"` // what would put it right
	Source sourceFile  `json:"source"`
}

// columnFile mirrors column: one column.
type columnFile struct {
	schema.Pointer
	Name  schema.Text `json:"name"`  // name of the column
	Unit  schema.Text `json:"unit"`  // unit of its numbers
	Title schema.Text `json:"title"` // the column in words
}
