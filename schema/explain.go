package schema

import (
	"encoding/json"
	"fmt"
	"slices"
	"sort"
	"strconv"
	"strings"

	"github.com/agnivade/levenshtein"
	"github.com/santhosh-tekuri/jsonschema/v5"
)

// explain turns one failed keyword into problems in the words of the trade:
// where, what was met, what is allowed.
func (s *Source) explain(schemaName string, leaf *jsonschema.ValidationError) Problems {
	at := leaf.InstanceLocation
	r := ruleAt(schemaName, leaf.KeywordLocation)
	value, _ := s.lookup(at)
	keyword := leaf.KeywordLocation[strings.LastIndexByte(leaf.KeywordLocation, '/')+1:]
	switch keyword {
	case "required":
		return s.explainMissing(at, value, r)
	case "additionalProperties":
		return s.explainUnknown(at, value, r)
	}
	if strings.Contains(leaf.KeywordLocation, "/propertyNames") {
		return Problems{s.problemAt(at, fmt.Sprintf("%s: a key that is not %s", Spoken(at), r.words), "use letters, digits, - and _")}
	}
	what := fmt.Sprintf("%s%s: met %s, allowed %s", Spoken(at), inWords(at, r), met(value), allowed(keyword, r))
	return Problems{s.problemAt(at, what, suggestion(keyword, value, r))}
}

func (s *Source) explainMissing(at string, value any, r rule) Problems {
	have, _ := value.(map[string]any)
	var ps Problems
	for _, n := range stringsOf(r.limits["required"]) {
		if _, ok := have[n]; ok {
			continue
		}
		what := fmt.Sprintf("%s lacks the member %q%s", Spoken(at), n, inWords("", rule{words: wordsOf(r.limits, n)}))
		ps = append(ps, s.problemAt(at, what, "add it; without it this part cannot be told from others"))
	}
	return ps
}

func (s *Source) explainUnknown(at string, value any, r rule) Problems {
	have, _ := value.(map[string]any)
	known := knownMembers(r.limits)
	var ps Problems
	for n := range have {
		if slices.Contains(known, n) {
			continue
		}
		remedy := "remove it"
		if near := nearest(n, known); near != "" {
			remedy = fmt.Sprintf("did you mean %q?", near)
		} else if len(known) <= 12 {
			remedy = "it can have " + strings.Join(known, ", ")
		}
		ps = append(ps, s.problemAtName(at+"/"+escape(n), fmt.Sprintf("%s has no member %q", Spoken(at), n), remedy))
	}
	return ps
}

func knownMembers(limits map[string]any) []string {
	props, _ := limits["properties"].(map[string]any)
	names := make([]string, 0, len(props))
	for n := range props {
		names = append(names, n)
	}
	sort.Strings(names)
	return names
}

// wordsOf finds the description of a member, its own or that of what it refers to.
func wordsOf(limits map[string]any, name string) string {
	props, _ := limits["properties"].(map[string]any)
	p, _ := props[name].(map[string]any)
	d, _ := p["description"].(string)
	return d
}

func inWords(at string, r rule) string {
	if r.words == "" || strings.HasSuffix(at, "/id") {
		return ""
	}
	return " (" + r.words + ")"
}

// met writes a value as it stands in the document, shortened.
func met(v any) string {
	switch v := v.(type) {
	case map[string]any:
		return "an object"
	case []any:
		return fmt.Sprintf("a list of %d", len(v))
	case nil:
		return "null"
	case json.Number:
		return v.String()
	case string:
		if r := []rune(v); len(r) > 40 {
			v = string(r[:40]) + "…"
		}
		return strconv.Quote(v)
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
		if t, ok := limit.(string); ok {
			return kinds[t]
		}
		var words []string
		for _, t := range stringsOf(limit) {
			words = append(words, kinds[t])
		}
		return strings.Join(words, " or ")
	case "enum":
		return "one of " + strings.Join(stringsOf(limit), ", ")
	case "minimum":
		return fmt.Sprintf("%v or more", limit)
	case "maximum":
		return fmt.Sprintf("%v or less", limit)
	case "exclusiveMinimum":
		return fmt.Sprintf("more than %v", limit)
	case "minItems":
		return fmt.Sprintf("at least %v", limit)
	case "maxItems", "maxProperties":
		return fmt.Sprintf("at most %v", limit)
	case "minLength":
		return "a text that is not empty"
	case "maxLength":
		return fmt.Sprintf("at most %v characters", limit)
	case "pattern":
		if d, ok := r.limits["description"].(string); ok {
			return d
		}
	}
	return fmt.Sprintf("%s %v", keyword, limit)
}

func suggestion(keyword string, value any, r rule) string {
	word, isText := value.(string)
	switch {
	case keyword == "enum" && isText:
		if near := nearest(word, stringsOf(r.limits["enum"])); near != "" {
			return fmt.Sprintf("did you mean %q?", near)
		}
	case keyword == "type" && value == nil:
		return "leave the member out if it is not known"
	case keyword == "type" && isText:
		if _, err := strconv.ParseFloat(word, 64); err == nil {
			return "write the number without quotes"
		}
	}
	return ""
}

func stringsOf(v any) []string {
	list, _ := v.([]any)
	words := make([]string, len(list))
	for i, w := range list {
		words[i] = fmt.Sprint(w)
	}
	return words
}

// Nearest finds the candidate most like a word that is not among them; "" when
// none is near enough to be what was meant.
func Nearest(word string, candidates []string) string { return nearest(word, candidates) }

func nearest(word string, candidates []string) string {
	best, distance := "", max(2, len(word)/3)+1
	for _, c := range candidates {
		if d := levenshtein.ComputeDistance(strings.ToLower(word), strings.ToLower(c)); d < distance {
			best, distance = c, d
		}
	}
	return best
}
