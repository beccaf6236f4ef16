// Code generated from trial.schema.json by go generate; DO NOT EDIT.

package trial

import "sunclause/schema"

// testsFile mirrors trial: tests/NAME.yaml: for each requirement the outcomes that it must give for facts put in by hand, and for small installations the facts that the set's figures must give.
type testsFile struct {
	schema.Pointer
	Requirements []requirementFile `json:"requirements"` // tests of requirements
	Figures      []figuresFile     `json:"figures"`      // tests of the parameters and tables that facts are worked out with
}

// requirementFile mirrors trial: one requirement with the cases that try it.
type requirementFile struct {
	schema.Pointer
	Requirement schema.Text `json:"requirement"` // requirement that is tried
	Cases       []caseFile  `json:"cases"`       // cases
}

// caseFile mirrors trial_case: facts of one subject, and the outcome they must give. A fact left out is not known.
type caseFile struct {
	schema.Pointer
	Says         schema.Text                 `json:"says"`         // what the case is about
	Outcome      schema.Text                 `json:"outcome"`      // outcome that it must give
	Facts        map[string]any              `json:"facts"`        // facts of the subject
	Installation map[string]any              `json:"installation"` // facts of the whole installation
	Others       map[string][]map[string]any `json:"others"`       // other parts, by list: id and facts of each
}

// figuresFile mirrors figure_trial: a small installation and the facts that the set's figures must give for it.
type figuresFile struct {
	schema.Pointer
	Says         schema.Text `json:"says"`         // what the test is about
	Installation any         `json:"installation"` // an installation, as in a document
	Gives        []givenFile `json:"gives"`        // facts that it must give
}

// givenFile mirrors given: one fact of one part and its value; within is how far it may be off.
type givenFile struct {
	schema.Pointer
	Subject schema.Text   `json:"subject"` // list of facts
	ID      schema.Text   `json:"id"`      // id of the part
	Fact    schema.Text   `json:"fact"`    // name of the fact
	Value   any           `json:"value"`   // value that it must have
	Within  schema.Number `json:"within"`  // how far a number may be off; not at all when left out
}
