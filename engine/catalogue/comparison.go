package catalogue

import "slices"

// comparisons that each kind of fact allows.
var comparisons = map[Kind][]string{
	Number: {"at_most", "at_least", "below", "above", "equals", "differs", "one_of", "none_of"},
	Text:   {"equals", "differs", "one_of", "none_of", "since", "until"},
	Flag:   {"equals", "differs"},
	List:   {"includes", "lacks"},
}

// Comparisons lists the comparisons that a kind of fact allows.
func (k Kind) Comparisons() []string { return comparisons[k] }

// Allows reports whether facts of the kind can be compared so.
func (k Kind) Allows(comparison string) bool { return slices.Contains(comparisons[k], comparison) }

// Comparisons lists all that a row or condition may say, in order.
func Comparisons() []string {
	var all []string
	for _, names := range comparisons {
		all = append(all, names...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// Holds reports whether a known value stands to a known limit as a comparison
// says. Words are compared as words, so that days, which are written year first,
// come in their order.
func Holds(comparison string, value, limit Value) bool {
	switch comparison {
	case "at_most":
		return value.Number <= limit.Number
	case "at_least":
		return value.Number >= limit.Number
	case "below":
		return value.Number < limit.Number
	case "above":
		return value.Number > limit.Number
	case "equals":
		return value.equals(limit)
	case "differs":
		return !value.equals(limit)
	case "one_of":
		return limit.lists(value)
	case "none_of":
		return !limit.lists(value)
	case "includes":
		return slices.Contains(value.List, limit.Text)
	case "lacks":
		return !slices.Contains(value.List, limit.Text)
	case "since":
		return value.Text >= limit.Text
	case "until":
		return value.Text <= limit.Text
	}
	return false
}

// lists reports whether a word or number is among those of a list.
func (v Value) lists(o Value) bool {
	if o.Kind == Number {
		return slices.Contains(v.Numbers, o.Number)
	}
	return slices.Contains(v.List, o.Text)
}

func (v Value) equals(o Value) bool {
	if v.Kind != o.Kind {
		return false
	}
	switch v.Kind {
	case Number:
		return v.Number == o.Number
	case Text:
		return v.Text == o.Text
	case Flag:
		return v.Flag == o.Flag
	}
	return slices.Equal(v.List, o.List)
}
