// Code generated from trial.schema.json by go generate; DO NOT EDIT.

package trial

import "sunclause/schema"

// testsFile mirrors trial: tests/NAME.yaml: for each requirement the outcomes that it must give for facts put in by hand, and for small installations the facts that the set's figures must give.
type testsFile struct {
	schema.Pointer
	Requirements map[string]requirementFile `json:"requirements"` // tests of requirements, by id
	Figures      []figuresFile              `json:"figures"`      // tests of the parameters and tables that facts are worked out with
}

// requirementFile mirrors trial: the cases that try one requirement, by the outcome that they must give. The first that is met has all its facts; others that are met, and the first that is not, have what is different from it; all others have what is different from the first that is not met.
type requirementFile struct {
	schema.Pointer
	Met           any `json:"met"`            // cases that are met
	NotMet        any `json:"not_met"`        // cases that are not met
	NotApplicable any `json:"not_applicable"` // cases to which it does not apply
	NotShown      any `json:"not_shown"`      // cases in which too little is known
}

// figuresFile mirrors figure_trial: a small installation, or what is different from the last one stated above, and the facts that the set's figures must give for it.
type figuresFile struct {
	schema.Pointer
	Says         schema.Text    `json:"says"`         // what the test is about
	Installation any            `json:"installation"` // an installation, as in a document
	Changes      map[string]any `json:"changes"`      // what is different from the last installation stated above: values by JSON pointer
	Gives        []givenFile    `json:"gives"`        // facts that it must give
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
