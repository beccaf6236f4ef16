package schema

import (
	"encoding/json"
	"fmt"
	"maps"
	"net/url"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"github.com/santhosh-tekuri/jsonschema/v5"
)

// explainer turns failed keywords of a schema into findings that say in the
// words of the trade where, what was found, and what is allowed.
type explainer struct {
	source  *Source
	found   *findings
	settled map[int]bool // places of which something worse was said before
	schema  string
	rules   map[string]rule // by keyword location
}

// leaf adds what one failed keyword has to say. Missing and unknown members
// are a finding each.
func (e *explainer) leaf(leaf *jsonschema.ValidationError) {
	at, location := pointerOf(leaf.InstanceLocation), leaf.KeywordLocation
	if e.settled[e.source.offset(at)] && at != "" {
		return
	}
	r := e.ruleAt(location)
	switch keyword := location[strings.LastIndexByte(location, '/')+1:]; {
	case keyword == "required":
		e.missing(at, r)
	case keyword == "additionalProperties":
		e.unknown(at, r)
	case strings.Contains(location, "/propertyNames"):
		e.badKey(at, location, r)
	default:
		e.found.add(e.source.offset(at), location, func() Problem { return e.failed(at, keyword, r) })
	}
}

// pointerOf undoes the escaping as of a URL that the library adds to pointers.
func pointerOf(location string) string {
	if at, err := url.PathUnescape(location); err == nil {
		return at
	}
	return location
}

func (e *explainer) ruleAt(location string) rule {
	r, ok := e.rules[location]
	if !ok {
		r = ruleAt(e.schema, location)
		e.rules[location] = r
	}
	return r
}

// maxListed is how many words a problem lists when it can name the one that
// was meant.
const maxListed = 20

// failed speaks of a value that is not as it must be.
func (e *explainer) failed(at, keyword string, r rule) Problem {
	value := e.source.at(at).brief()
	words, may, remedy := inWords(at, r), allowed(keyword, r), suggestion(at, keyword, value, r)
	if r.words == may {
		words = ""
	}
	if n := len(stringsOf(r.limits["enum"])); n > maxListed && keyword == "enum" && remedy != "" {
		may = fmt.Sprintf("one of %d words", n) // the one that was meant is in the remedy
	}
	what := fmt.Sprintf("%s%s: found %s, allowed %s", Spoken(at), words, describe(value), may)
	return e.source.ProblemAt(at, what, remedy)
}

func (e *explainer) missing(at string, r rule) {
	object := e.source.at(at)
	for _, n := range stringsOf(r.limits["required"]) {
		if object.member(n) != nil {
			continue
		}
		e.found.add(e.source.offset(at), n, func() Problem {
			what := fmt.Sprintf("%s lacks %q%s", Spoken(at), n, inWords("", rule{words: wordsOf(r.limits, n)}))
			return e.source.ProblemAt(at, what, "add it")
		})
	}
}

func (e *explainer) unknown(at string, r rule) {
	known := knownMembers(r.limits)
	for _, m := range e.source.at(at).children {
		if slices.Contains(known, m.name) {
			continue
		}
		child := at + "/" + escape(m.name)
		e.found.add(int(m.named), m.name, func() Problem {
			what := fmt.Sprintf("%s has no member %s", Spoken(at), quote(m.name))
			return e.source.problem(int(m.named), child, what, otherMember(m.name, known, r))
		})
	}
}

// badKey speaks of the key of a member that cannot be an id.
func (e *explainer) badKey(at, location string, r rule) {
	if e.source.at(at).member("") != nil && isForm(lastName(at), r) {
		at += "/" // the library leaves an empty key out of its pointers
	}
	offset := e.source.offsetOfName(at)
	e.found.add(offset, location, func() Problem {
		what := fmt.Sprintf("%s: found the key %s, allowed %s", Spoken(parent(at)), quote(lastName(at)), patternWords(r))
		return e.source.problem(offset, at, what, "give it such a key")
	})
}

// isForm reports whether a text has the form that a rule asks for.
func isForm(text string, r rule) bool {
	pattern, _ := r.limits["pattern"].(string)
	ok, err := regexp.MatchString(pattern, text)
	return ok && err == nil
}

func knownMembers(limits map[string]any) []string {
	props, _ := limits["properties"].(map[string]any)
	return slices.Sorted(maps.Keys(props))
}

// wordsOf finds the description of a member.
func wordsOf(limits map[string]any, name string) string {
	props, _ := limits["properties"].(map[string]any)
	p, _ := props[name].(map[string]any)
	d, _ := p["description"].(string)
	return d
}

func inWords(at string, r rule) string {
	if r.words == "" || at == "" && r.limits != nil || strings.HasSuffix(at, "/id") {
		return ""
	}
	return " (" + firstSentence(r.words) + ")"
}

// firstSentence cuts what is said of an object as a whole to what fits within
// a sentence.
func firstSentence(words string) string {
	words, _, _ = strings.Cut(words, ". ")
	words, _, _ = strings.Cut(words, plausibleWords)
	words = strings.TrimSuffix(words, ".")
	if len(words) > 1 && (words[1] == ' ' || unicode.IsLower(rune(words[1]))) {
		words = strings.ToLower(words[:1]) + words[1:]
	}
	return words
}

// describe writes a value as it stands in the document, shortened.
func describe(v any) string {
	switch v := v.(type) {
	case map[string]any:
		return "an object { }"
	case []any:
		if len(v) == 1 {
			return "a list of one"
		}
		return fmt.Sprintf("a list of %d", len(v))
	case nil:
		return "null"
	case json.Number:
		return v.String()
	case string:
		return quote(v)
	}
	return fmt.Sprint(v)
}

var kinds = map[string]string{
	"number": "a number", "integer": "a whole number", "string": "a text in quotes",
	"boolean": "true or false", "array": "a list [ ]", "object": "an object { }",
}

func allowed(keyword string, r rule) string {
	limit := r.limits[keyword]
	switch keyword {
	case "type":
		return kindWords(limit)
	case "enum":
		return oneOf(stringsOf(limit))
	case "minimum":
		return fmt.Sprintf("%v or more", limit)
	case "maximum":
		return fmt.Sprintf("%v or less", limit)
	case "exclusiveMinimum":
		return fmt.Sprintf("more than %v", limit)
	case "minItems":
		return fmt.Sprintf("%v or more", limit)
	case "maxItems", "maxProperties":
		return fmt.Sprintf("at most %v", limit)
	case "minLength":
		return "a text that is not empty"
	case "maxLength":
		return fmt.Sprintf("at most %v characters", limit)
	case "pattern":
		return patternWords(r)
	}
	return fmt.Sprintf("%s %v", keyword, limit)
}

func kindWords(types any) string {
	if t, ok := types.(string); ok {
		return kinds[t]
	}
	words := stringsOf(types)
	for i, t := range words {
		words[i] = kinds[t]
	}
	return strings.Join(words, " or ")
}

func oneOf(words []string) string {
	if len(words) == 1 {
		return words[0]
	}
	return "one of " + strings.Join(words, ", ")
}

// patternWords takes the description that stands beside the pattern. A pattern
// without one shows itself, which is a fault of the schema.
func patternWords(r rule) string {
	if d, ok := r.limits["description"].(string); ok {
		return d
	}
	return fmt.Sprintf("what fits %v", r.limits["pattern"])
}

func stringsOf(v any) []string {
	list, _ := v.([]any)
	words := make([]string, len(list))
	for i, w := range list {
		words[i] = fmt.Sprint(w)
	}
	return words
}
