// Package report writes the result of a check in the formats that people and
// programs read, one file a format.
package report

import (
	"io"

	"sunclause/engine"
)

// Options are choices of how a report looks.
type Options struct {
	Width  int  // columns of the text report; 0 is 80
	Colour bool // whether the text report may use colour
	All    bool // whether the text report lists what is met and what does not apply
	Strict bool // whether the check counted should as shall
}

// Format writes one result.
type Format func(w io.Writer, r *engine.Result, o Options) error

// Formats are the formats there are, by the name that the command line uses.
var Formats = map[string]Format{
	"text": Text,
	"json": JSON,
	"html": HTML,
}

// Cautions stand under every report.
var Cautions = []string{
	"A PV string is live whenever there is light on it; opening an isolator does not make it dead.",
	"Work on roofs kills. Plan the access and the fall protection before anyone climbs.",
	"This is a check of what the document states, not of the roof. Local codes, the makers' instructions and licensed people decide.",
}
