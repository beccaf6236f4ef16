package report

import (
	"errors"
	"fmt"

	"sunclause/engine/ruleset"
	"sunclause/schema"
)

// Unchecked is a document that could not be checked. It is reported in its place
// among the others.
type Unchecked struct {
	Path   string // as it was named
	SHA256 string // of the text as it was read; "" where it could not be read
	Errors []Error
}

// Error is one reason why a document could not be checked.
type Error struct {
	File    string `json:"file,omitempty"`
	Line    int    `json:"line,omitempty"` // 0 where the reason is not in a line
	Column  int    `json:"column,omitempty"`
	Message string `json:"message"`
	Remedy  string `json:"remedy,omitempty"`
}

// uncheckedWords is the verdict on such a document.
const uncheckedWords = "could not be checked"

// UncheckedOf takes the reasons out of an error: what is wrong with the text of
// the document, each with its line, or else the error as it stands. Raw is the
// text; nil where it could not be read.
func UncheckedOf(path string, raw []byte, err error) Unchecked {
	u := Unchecked{Path: path}
	if raw != nil {
		u.SHA256 = ruleset.Hash(raw)
	}
	var problems schema.Problems
	if !errors.As(err, &problems) {
		u.Errors = []Error{{Message: err.Error()}}
		return u
	}
	for _, p := range problems {
		u.Errors = append(u.Errors, Error{p.File, p.Line, p.Column, p.What, p.Remedy})
	}
	return u
}

// String writes the reason as a command would tell it.
func (e Error) String() string {
	if e.Line == 0 {
		return e.says()
	}
	return fmt.Sprintf("%s:%d:%d: %s", e.File, e.Line, e.Column, e.says())
}

// says is the reason without its place.
func (e Error) says() string {
	if e.Remedy == "" {
		return e.Message
	}
	return e.Message + "; " + e.Remedy
}
