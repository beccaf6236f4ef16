package schema

import "strings"

// Words says what the schema calls the value at a JSON pointer of an
// installation, as in "open-circuit voltage"; "" where it calls it nothing.
func Words(pointer string) string {
	file, node := follow(InstallationSchema, map[string]any{"$ref": InstallationSchema})
	words := ""
	for _, token := range split(pointer) {
		at, _ := node.(map[string]any)
		next := subschemaOf(at, token)
		if next == nil {
			return ""
		}
		words = shortName(next)
		for next["$ref"] != nil {
			file, node = follow(file, next)
			next, _ = node.(map[string]any)
			if words == "" {
				words = shortName(next)
			}
		}
		node = next
	}
	return words
}

// subschemaOf is the subschema of a member or an item.
func subschemaOf(node map[string]any, token string) map[string]any {
	members, _ := node["properties"].(map[string]any)
	for _, sub := range []any{members[token], node["items"], node["additionalProperties"]} {
		if m, ok := sub.(map[string]any); ok {
			return m
		}
	}
	return nil
}

// shortName is what a subschema says of itself: a few words, or its name.
func shortName(node map[string]any) string {
	description, _ := node["description"].(string)
	title, _ := node["title"].(string)
	if description == "" || title != "" {
		return title
	}
	head, _, _ := strings.Cut(description, ";")
	return strings.TrimSuffix(head, ".")
}
