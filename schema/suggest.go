package schema

import (
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"github.com/agnivade/levenshtein"
)

// suggestion is the remedy for a value that is not as it must be; "" when what
// is allowed says enough.
func suggestion(at, keyword string, value any, r rule) string {
	text, isText := value.(string)
	switch {
	case value == nil, keyword == "exclusiveMinimum" && value == json.Number("0"):
		return "leave the member out if it is not known"
	case keyword == "enum" && isText:
		return nearWord(text, stringsOf(r.limits["enum"]))
	case keyword == "pattern" && isText:
		return nearForm(text, r)
	case keyword == "type":
		return otherKind(value, stringsOf([]any{r.limits["type"]})[0])
	case strings.HasSuffix(at, "_fraction"):
		return asFraction(value)
	}
	return ""
}

// lazily is a regular expression that is compiled when it is first needed: only a
// text that is not in order needs one.
func lazily(pattern string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(pattern) })
}

// meanings are what people call a thing for which the schema has a word that is not
// spelt like it: names of the trade, and what stands on devices and bills.
var meanings = map[string][]string{
	"rcd":      {"rccb"},
	"mcb":      {"circuit_breaker"},
	"mccb":     {"circuit_breaker"},
	"breaker":  {"circuit_breaker", "dc_circuit_breaker"},
	"cutout":   {"fuse"},
	"gfci":     {"rcbo", "rccb"},
	"pv":       {"pv_supply", "pv_string", "pv_dc"},
	"solar":    {"pv_supply", "pv_string", "pv_dc"},
	"inverter": {"pv_supply"},
	"battery":  {"battery_supply", "battery_dc"},
	"dc":       {"pv_string", "pv_dc"},
	"spd":      {"surge_protection"},
	"pme":      {"TN-C-S"},
	"earth":    {"protective", "earthing"},
	"single":   {"single_phase"},
	"three":    {"three_phase"},
	"smart":    {"import_and_export"},
	"mono":     {"mono_si"},
	"poly":     {"multi_si"},
	"lfp":      {"lithium_iron_phosphate"},
	"loft":     {"roof_space"},
	"attic":    {"roof_space"},
	"hall":     {"hallway"},
}

// nearWord is the word of a list that was meant: by its meaning, else by its letters.
func nearWord(text string, words []string) string {
	for _, w := range meanings[strings.ToLower(strings.TrimSpace(text))] {
		if slices.Contains(words, w) {
			return fmt.Sprintf("did you mean %q?", w)
		}
	}
	if near := nearest(text, words); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return ""
}

var dayFirst = lazily(`^([0-9]{1,2})[./ -]([0-9]{1,2})[./ -]([0-9]{4})$`)

// nearForm looks for the small thing that keeps a text from its pattern.
func nearForm(text string, r rule) string {
	if len(text) > maxName {
		return ""
	}
	if m := dayFirst().FindStringSubmatch(text); m != nil && isForm("2026-03-02", r) {
		return "write the year first, then the month, then the day: " + yearFirst(m[1], m[2], m[3])
	}
	for _, near := range []string{strings.TrimSpace(text), strings.ToUpper(text), strings.ToLower(text), strings.ReplaceAll(text, " ", ""), strings.ReplaceAll(text, " ", "-")} {
		if isForm(near, r) {
			return fmt.Sprintf("did you mean %q?", near)
		}
	}
	return ""
}

// yearFirst writes a date that stands day first, where it cannot be anything
// else; otherwise it shows an example, for the month may have come first.
func yearFirst(day, month, year string) string {
	d, _ := strconv.Atoi(day)
	m, _ := strconv.Atoi(month)
	if d > 12 && d <= 31 && m >= 1 && m <= 12 {
		return fmt.Sprintf("%s-%02d-%02d", year, m, d)
	}
	return "as in 2026-03-25"
}

var (
	numberWithComma = lazily(`^-?[0-9]+,[0-9]+$`)
	numberWithUnit  = lazily(`^-?[0-9]+(\.[0-9]+)? ?(%|°|[A-Za-zΩµ²³/]+)`)
)

// otherKind is the remedy for a value that is not of the kind it must be.
func otherKind(value any, kind string) string {
	text, isText := value.(string)
	switch {
	case (kind == "number" || kind == "integer") && isText:
		return numberIn(text)
	case kind == "boolean" && isText:
		switch strings.ToLower(text) {
		case "true", "yes", "y", "on":
			return "write true, without quotes"
		case "false", "no", "n", "off":
			return "write false, without quotes"
		}
	case kind == "string":
		if n, ok := value.(json.Number); ok {
			return fmt.Sprintf("put it in quotes: %q", n.String())
		}
	case kind == "array":
		return "put square brackets round it, even when there is only one"
	case kind == "integer":
		return "leave out what follows the point"
	}
	return ""
}

// notKnown are words that people write where they do not know a value.
var notKnown = map[string]bool{
	"": true, "-": true, "?": true, "null": true, "nil": true, "none": true, "nan": true, "n/a": true,
	"n.a": true, "n.a.": true, "na": true, "tbc": true, "tba": true, "tbd": true, "unknown": true, "not known": true,
}

// numberIn finds the number in a text that stands where a number must.
func numberIn(text string) string {
	if len(text) > maxName {
		return ""
	}
	if _, err := strconv.ParseFloat(text, 64); err == nil {
		return "write the number without quotes"
	}
	if notKnown[strings.ToLower(text)] {
		return "leave the member out if it is not known"
	}
	if numberWithComma().MatchString(text) {
		return "write " + strings.Replace(text, ",", ".", 1) + ", without quotes and with a point for the decimal sign"
	}
	if numberWithUnit().MatchString(text) {
		return "write the number alone, without quotes; its unit stands in the name of the member"
	}
	return ""
}

func asFraction(value any) string {
	n, _ := value.(json.Number)
	if v, err := n.Float64(); err == nil && v > 1 && v <= 100 {
		return fmt.Sprintf("if that is in %%, write %s", strconv.FormatFloat(v/100, 'g', 6, 64))
	}
	return ""
}

// otherMember is the remedy for a member that is not known.
func otherMember(name string, known []string, r rule) string {
	near := nearest(name, known)
	switch {
	case near == "" && len(known) > 0 && len(known) <= 12:
		return "it can have " + strings.Join(known, ", ")
	case near == "" && slices.Contains(known, "note"):
		return "remove it, or put what it says into note"
	case near == "":
		return "remove it"
	}
	remedy := fmt.Sprintf("did you mean %q%s?", near, inWords("", rule{words: wordsOf(r.limits, near)}))
	if stem, unit := cutUnit(name); unit != "" {
		if other, otherUnit := cutUnit(near); other == stem && otherUnit != unit {
			remedy += " The unit stands in the name; state the value in that unit"
		}
	}
	return remedy
}

func cutUnit(name string) (stem, unit string) {
	i := strings.LastIndexByte(name, '_')
	if i < 0 {
		return name, ""
	}
	return name[:i], name[i+1:]
}

// Nearest finds the candidate most like a word that is not among them; "" when
// none is near enough to be what was meant.
func Nearest(word string, candidates []string) string { return nearest(word, candidates) }

// nearest compares short words only: a name that anybody meant is short, and
// the work grows with the product of the lengths.
func nearest(word string, candidates []string) string {
	best, _ := nearestOf(word, candidates)
	return best
}

// nearestOf also says how many candidates are just as near as the best.
func nearestOf(word string, candidates []string) (best string, equal int) {
	if len(word) > maxName {
		return "", 0
	}
	distance := maxEdits(len(word)) + 1
	for _, c := range candidates {
		if len(c) > maxName {
			continue
		}
		switch d := editDistance(strings.ToLower(word), strings.ToLower(c)); {
		case d < distance:
			best, distance, equal = c, d, 1
		case d == distance:
			equal++
		}
	}
	return best, equal
}

// editDistance counts the letters in which a word differs from a candidate. To leave
// the unit out at the end of a name is as easily done as one letter.
func editDistance(word, candidate string) int {
	if unit, ok := strings.CutPrefix(candidate, word+"_"); ok && !strings.Contains(unit, "_") {
		return 1
	}
	return levenshtein.ComputeDistance(word, candidate)
}

// maxEdits is how many letters a word may differ in from the one that was
// meant: one in a short word, a third of a long one.
func maxEdits(length int) int {
	if length < 4 {
		return 1
	}
	return max(2, length/3)
}
