package working

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"sunclause/schema"
)

// Gap is one reason why something is not known: a place to look at, and what is
// the matter there. Mostly a member is not stated, and the place says it all.
type Gap struct {
	At     string `json:"at"`               // JSON pointer of the member, or what the rule set lacks
	Why    Why    `json:"why"`              // what is the matter
	Stated string `json:"stated,omitempty"` // what is stated there, with its unit; "" where nothing is
	With   string `json:"with,omitempty"`   // what it is held against: the JSON pointer of another place, or the title of a table
	Says   string `json:"says,omitempty"`   // what that other place says, or what would be expected
}

// Why is what is the matter with a member, as reports in JSON write it.
type Why string

// What can be the matter.
const (
	NotStated   Why = "not_stated"
	Disagrees   Why = "disagrees"       // with another place, which says otherwise
	Unconfirmed Why = "unconfirmed"     // it rests on a word that nothing else bears out
	OffTable    Why = "off_table"       // the table has no row for it
	LacksKind   Why = "lacks_kind"      // a list is stated, and what is needed is not in it
	Unlikely    Why = "unlikely"        // outside what such a quantity can plausibly be
	Several     Why = "several_answers" // the parts named lead to more than one
	NoAnswer    Why = "no_answer"       // the arithmetic gives none with it
)

// Reason is how a maker of something unknown says why: the JSON pointer of a member
// that is not stated, or a Gap, mostly one that something else has.
type Reason interface{ string | Gap }

// Unstated is the gap of a member that is not stated, or of what the rule set lacks.
func Unstated(at string) Gap { return Gap{At: at, Why: NotStated} }

// Disagreement is the gap between two texts that should say the same.
func Disagreement(stated, with Text) Gap {
	return Gap{At: stated.at, Why: Disagrees, Stated: stated.value, With: with.at, Says: with.value}
}

// SeveralAnswers is the gap of a part from which more than one way leads on: the
// ids name what lies on them.
func SeveralAnswers(at string, ids ...string) Gap {
	return Gap{At: at, Why: Several, Says: strings.Join(ids, ", ")}
}

// OffList is the gap of a list that is stated and has none of the kind in question.
func OffList(at, kind string) Gap { return Gap{At: at, Why: LacksKind, Says: kind} }

// String is the place, and what is the matter unless the member is only missing.
func (g Gap) String() string {
	if g.Why == NotStated {
		return g.At
	}
	words := []string{g.At, string(g.Why)}
	for _, w := range []string{g.Stated, g.With, g.Says} {
		if w != "" {
			words = append(words, w)
		}
	}
	return strings.Join(words, " ")
}

// Spoken says in a sentence without its full stop why something is not known: what
// is the matter with what is stated first, then what is not stated.
func Spoken(gaps []Gap) string {
	var says, unstated []string
	doubts := Doubts(gaps)
	slices.SortStableFunc(doubts, func(a, b Gap) int {
		return cmp.Or(cmp.Compare(a.Why, b.Why), cmp.Compare(a.With, b.With), cmp.Compare(a.Says, b.Says))
	})
	for len(doubts) > 0 {
		same := 1
		for same < len(doubts) && doubts[0].Why == OffTable && doubts[same].Why == OffTable && doubts[same].With == doubts[0].With && doubts[same].Says == doubts[0].Says {
			same++
		}
		says = append(says, spokenDoubts(doubts[:same]))
		doubts = doubts[same:]
	}
	for _, g := range gaps {
		if g.Why == NotStated {
			unstated = append(unstated, SpokenPlace(g.At))
		}
	}
	switch len(unstated) {
	case 0:
	case 1:
		says = append(says, unstated[0]+" is not stated")
	default:
		says = append(says, listed(unstated)+" are not stated")
	}
	if len(says) == 0 {
		return "what it depends on is not known"
	}
	if len(says) > mostSpoken {
		says = append(says[:mostSpoken], fmt.Sprintf("and %d more", len(says)-mostSpoken))
	}
	return strings.Join(says, "; ")
}

// mostSpoken is how many members, or doubts, a sentence names.
const mostSpoken = 4

// listed names up to so many members, and counts the others.
func listed(names []string) string {
	if len(names) > mostSpoken {
		names = append(slices.Clone(names[:mostSpoken]), fmt.Sprintf("%d more", len(names)-mostSpoken))
	}
	last := len(names) - 1
	if last == 0 {
		return names[0]
	}
	return strings.Join(names[:last], ", ") + " and " + names[last]
}

// spokenDoubts says what is the matter with what is stated at one place, or with all
// that led off a table together.
func spokenDoubts(gaps []Gap) string {
	stated := make([]string, len(gaps))
	for i, g := range gaps {
		stated[i] = SpokenPlace(g.At)
		if g.Stated != "" {
			stated[i] += " is stated as " + g.Stated
		}
	}
	g, what := gaps[0], listed(stated)
	switch g.Why {
	case Disagrees:
		return fmt.Sprintf("%s, but by %s it is %s", what, SpokenPlace(g.With), g.Says)
	case Unconfirmed:
		return what + ", and nothing else bears it out"
	case OffTable:
		if g.Says != "" {
			what += ": that makes " + g.Says
		}
		return fmt.Sprintf("%s, for which the table “%s” has no row", what, g.With)
	case LacksKind:
		lacks := fmt.Sprintf("%s is stated, and has no %s", what, g.Says)
		if g.With != "" {
			lacks += ", of which " + SpokenPlace(g.With) + " speaks"
		}
		return lacks
	case Unlikely:
		return fmt.Sprintf("%s, which is unlikely (expected: %s)", what, g.Says)
	case Several:
		return fmt.Sprintf("%s leads on by more than one way: %s", what, g.Says)
	}
	return what + ", with which there is no answer"
}

// SpokenPlace writes the place of a gap as people say it: a JSON pointer by its names;
// what the rule set lacks is in words already.
func SpokenPlace(at string) string {
	if strings.HasPrefix(at, "/") {
		return schema.Spoken(at)
	}
	return at
}

// Pointers lists the places of some gaps, in their order.
func Pointers(gaps []Gap) []string {
	if gaps == nil {
		return nil
	}
	all := make([]string, len(gaps))
	for i, g := range gaps {
		all[i] = g.At
	}
	return slices.Compact(all)
}

// Doubts are the gaps that are more than a member not stated.
func Doubts(gaps []Gap) []Gap {
	var all []Gap
	for _, g := range gaps {
		if g.Why != NotStated {
			all = append(all, g)
		}
	}
	return all
}

// Gaps sorts some gaps and leaves each standing once.
func Gaps(gaps []Gap) []Gap {
	slices.SortFunc(gaps, Gap.compare)
	return slices.Compact(gaps)
}

func (g Gap) compare(o Gap) int {
	return cmp.Or(cmp.Compare(g.At, o.At), cmp.Compare(g.Why, o.Why), cmp.Compare(g.With, o.With), cmp.Compare(g.Stated, o.Stated), cmp.Compare(g.Says, o.Says))
}

// gapsOf makes gaps of reasons: a plain text is a member that is not stated.
func gapsOf[R Reason](reasons []R) []Gap {
	switch r := any(reasons).(type) {
	case []Gap:
		return slices.Clone(r)
	case []string:
		gaps := make([]Gap, len(r))
		for i, at := range r {
			gaps[i] = Unstated(at)
		}
		return gaps
	}
	return nil
}

// Agreed takes what the document states where it agrees with what is derived. Where
// they differ it is unknown, and both places are named. Where only one of them is
// known, that one stands: nothing speaks against it.
func Agreed(stated, derived Text) Text {
	switch {
	case !derived.known:
		return stated
	case !stated.known:
		return derived
	case stated.value != derived.value:
		return UnknownText(Disagreement(stated, derived))
	}
	return stated
}

// Confirmed is Agreed for a word by which requirements fall away: where nothing is
// derived that bears it out, it is not known.
func Confirmed(stated, derived Text) Text {
	if stated.known && !derived.known {
		return UnknownText(append(gapsOf(derived.missing), Gap{At: stated.at, Why: Unconfirmed, Stated: stated.value})...)
	}
	return Agreed(stated, derived)
}

// AgreedFlag is Agreed for a yes or no.
func AgreedFlag(stated, derived Flag) Flag { return Agreed(stated.text(), derived.text()).flag() }

// ConfirmedFlag is Confirmed for a yes or no.
func ConfirmedFlag(stated, derived Flag) Flag {
	return Confirmed(stated.text(), derived.text()).flag()
}

func (f Flag) text() Text {
	word := "no"
	if f.value {
		word = "yes"
	}
	return Text{value: word, known: f.known, at: f.at, missing: f.missing}
}

func (t Text) flag() Flag {
	return Flag{value: t.known && t.value == "yes", known: t.known, at: t.at, missing: t.missing}
}

// AgreedNumber takes the number that the document states where it is not further
// from the one that is derived than a share of it, 0.1 being a tenth.
func AgreedNumber(stated, derived Number, within float64) Number {
	switch {
	case !derived.known:
		return stated
	case !stated.known:
		return derived
	case math.Abs(stated.value-derived.value) > within*math.Abs(derived.value):
		return Unknown(stated.symbol, stated.unit, Gap{
			At: stated.at, Why: Disagrees, Stated: stated.Written(), With: derived.place(), Says: derived.Written(),
		})
	}
	return stated
}

// place is where a number stands, or the first of the members it came from.
func (n Number) place() string {
	if all := n.Pointers(); len(all) > 0 {
		return all[0]
	}
	return ""
}

// Written is the value with its unit, as people write it.
func (n Number) Written() string { return strings.TrimSpace(Plain(Round(n.value)) + " " + n.unit) }

// Doubted makes a gap of each member that a known number came from: what is the
// matter with it, what it is held against, and what that says.
func (n Number) Doubted(why Why, with, says string) []Gap {
	var all []Gap
	n.doubt(Gap{Why: why, With: with, Says: says}, &all)
	return Gaps(all)
}

func (n *Number) doubt(g Gap, all *[]Gap) {
	if n.at != "" {
		g.At, g.Stated = n.at, ""
		if n.from == nil {
			g.Stated = n.Written()
		}
		*all = append(*all, g)
	}
	for i := range n.inputs {
		n.inputs[i].doubt(g, all)
	}
}
