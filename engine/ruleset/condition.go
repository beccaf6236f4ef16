package ruleset

import (
	"regexp"
	"strconv"
	"strings"
)

// Condition holds a fact to a limit; or it is a group of such, of which one has
// to hold. A row asks for one, and applies where others hold.
type Condition struct {
	Fact       string // of the subject, or installation.FACT
	Comparison string
	Limit      Operand
	AnyOf      []Condition // of a group; then nothing else is set, here and in Limit
}

// Operand is what a fact is compared with: a plain value, another fact, a
// parameter of the set, or the cell of a table. Exactly one of them is set. A
// number may be taken times a factor.
type Operand struct {
	Value     any // float64, string, bool, []string or []float64
	Fact      string
	Parameter string
	Cell      *Cell
	Factor    *Factor // nil where there is none
}

// Factor is what a limit is multiplied with: a number, or a parameter of the set.
type Factor struct {
	Number    float64
	Parameter string // "" for a number that is written out
}

// Cell is a number or word in a column of a table, in the row that facts pick.
type Cell struct {
	Table  string
	Column string
	Keys   []Key
}

// Key holds the cells of a column to a fact: equals, or one with the nearest step
// that is at_least or at_most the fact.
type Key struct {
	Column     string
	Comparison string
	Fact       string
}

// Each are the comparisons that a condition consists of: itself, or those of the
// group.
func (c Condition) Each() []Condition {
	if c.AnyOf != nil {
		return c.AnyOf
	}
	return []Condition{c}
}

// Facts are the names of all facts that a condition looks at, limits too.
func (c Condition) Facts() []string {
	var names []string
	for _, one := range c.Each() {
		names = append(names, one.Fact)
		if one.Limit.Fact != "" {
			names = append(names, one.Limit.Fact)
		}
		if cell := one.Limit.Cell; cell != nil {
			for _, k := range cell.Keys {
				names = append(names, k.Fact)
			}
		}
	}
	return names
}

// uses reports whether a condition looks at a parameter.
func (c Condition) uses(parameter string) bool {
	for _, one := range c.Each() {
		if one.Limit.Parameter == parameter || one.Limit.Factor != nil && one.Limit.Factor.Parameter == parameter {
			return true
		}
	}
	return false
}

// looksUp reports whether a condition takes its limit from a table.
func (c Condition) looksUp(table string) bool {
	for _, one := range c.Each() {
		if one.Limit.Cell != nil && one.Limit.Cell.Table == table {
			return true
		}
	}
	return false
}

// String writes a condition so that another means the same only if it is written
// the same. Names are written out, so that it can be read as a row as well.
func (c Condition) String() string {
	if c.AnyOf != nil {
		each := make([]string, len(c.AnyOf))
		for i, one := range c.AnyOf {
			each[i] = one.String()
		}
		return strings.Join(each, " or ")
	}
	switch yes, isFlag := c.Limit.Value.(bool); {
	case isFlag && c.Comparison == "equals" && yes:
		return c.Fact
	case isFlag && c.Comparison == "equals":
		return "not " + c.Fact
	}
	return c.Fact + " " + c.Comparison + " " + c.Limit.String()
}

func (o Operand) String() string {
	text := ""
	if f := o.Factor; f != nil && f.Parameter != "" {
		text = parameterPrefix + f.Parameter + " times "
	} else if f != nil {
		text = number(f.Number) + " times "
	}
	switch {
	case o.Fact != "":
		return text + o.Fact
	case o.Parameter != "":
		return text + parameterPrefix + o.Parameter
	case o.Cell != nil:
		return text + o.Cell.String()
	}
	switch v := o.Value.(type) {
	case float64:
		return text + number(v)
	case bool:
		if v {
			return "yes"
		}
		return "no"
	case string:
		return quoted(v)
	case []string:
		all := make([]string, len(v))
		for i, w := range v {
			all[i] = quoted(w)
		}
		return strings.Join(all, " ")
	case []float64:
		all := make([]string, len(v))
		for i, n := range v {
			all[i] = number(n)
		}
		return strings.Join(all, " ")
	}
	return ""
}

func (c Cell) String() string {
	keys := make([]string, len(c.Keys))
	for i, k := range c.Keys {
		keys[i] = k.Column + " " + k.Comparison + " " + k.Fact
	}
	return c.Table + "." + c.Column + " where " + strings.Join(keys, " and ")
}

func number(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

var oneWord = regexp.MustCompile(`^[^\s'"]+$`)

// quoted writes a word as a row has it: in quotes where it would else be several,
// or a name.
func quoted(word string) string {
	if oneWord.MatchString(word) && !beginsAsName(word) {
		return word
	}
	return inQuotes(word)
}

// inQuotes writes a word in the quotes that it has not got in it.
func inQuotes(word string) string {
	if strings.Contains(word, "'") {
		return `"` + word + `"`
	}
	return "'" + word + "'"
}
