package facts

import (
	_ "embed"
	"strings"

	"sunclause/facts/commissioning"
)

//go:generate go test . -run ^TestUntaken$ -update

//go:embed untaken.txt
var untaken string

// Untaken are the members of the document that no fact takes up by itself, by the
// names under which their objects are defined, as array_shutdown.time_s. Where one is
// an object or a list, nothing in it is taken up there. A table of a rule set may
// still name one, and facts follow what a table names.
func Untaken() map[string]bool {
	all := map[string]bool{}
	for name := range strings.FieldsSeq(untaken) {
		all[name] = true
	}
	return all
}

// Followed are the paths to members that facts follow whatever the tables name.
var Followed = []string{commissioning.DatesOfReadings}
