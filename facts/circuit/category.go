package circuit

import (
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// Misused says why a utilization category does not serve a circuit of DC or AC, since
// it is one of the other: an arc of DC does not go out by itself. By is the place of
// what makes the circuit one of that current. It gives nothing where the category
// serves or is not stated.
func Misused(category schema.Text, current, by string) []working.Gap {
	if !category.Stated() || strings.HasPrefix(category.Value, current+"-") {
		return nil
	}
	return []working.Gap{{At: category.At(), Why: working.Disagrees, Stated: category.Value, With: by, Says: "one of " + current}}
}
