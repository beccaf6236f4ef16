package schema

import (
	"encoding/json"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"go.yaml.in/yaml/v3"
)

// readYAML reads a YAML text of a rule set into the same tree as readJSON, with
// the same limits. Anchors, aliases, tags and merge keys are refused: a rule
// set is plain data, and an alias can blow a small text up without bound.
func readYAML(name string, raw []byte) (*Source, Problems) {
	s := newSource(name, raw)
	if len(raw) > maxBytes {
		return s, Problems{s.problem(0, "", fmt.Sprintf("the text has %d bytes; at most %d are read", len(raw), maxBytes), "")}
	}
	if !utf8.Valid(raw) {
		return s, Problems{s.problem(0, "", "the text is not UTF-8", "save it as UTF-8")}
	}
	var doc yaml.Node
	if err := yaml.Unmarshal(raw, &doc); err != nil {
		return s, Problems{s.yamlBroken(err)}
	}
	if len(doc.Content) == 0 {
		return s, Problems{s.problem(0, "", "the text is empty", "")}
	}
	r := &yamlReader{source: s}
	s.root = r.value(doc.Content[0], "", -1, 0)
	return s, r.problems
}

var yamlLine = regexp.MustCompile(`line (\d+): `)

func (s *Source) yamlBroken(err error) Problem {
	offset, text := 0, strings.TrimPrefix(err.Error(), "yaml: ")
	if m := yamlLine.FindStringSubmatch(text); m != nil {
		if n, _ := strconv.Atoi(m[1]); n >= 1 && n <= len(s.lines) {
			offset = s.lines[n-1]
		}
		text = strings.Replace(text, m[0], "", 1)
	}
	return s.problem(offset, "", "this is not YAML: "+text, "look at the indentation and the quotes just before this place")
}

type yamlReader struct {
	source   *Source
	problems Problems
}

// offset turns the line and column of a node into a byte offset.
func (r *yamlReader) offset(n *yaml.Node) int {
	if n.Line < 1 || n.Line > len(r.source.lines) {
		return 0
	}
	at := r.source.lines[n.Line-1]
	for c := 1; c < n.Column && at < len(r.source.Raw); c++ {
		_, size := utf8.DecodeRune(r.source.Raw[at:])
		at += size
	}
	return at
}

func (r *yamlReader) refuse(n *yaml.Node, at, what, remedy string) any {
	r.problems = append(r.problems, r.source.problem(r.offset(n), at, what, remedy))
	return nil
}

func (r *yamlReader) value(n *yaml.Node, at string, name, depth int) any {
	r.source.offsets[at] = mark{r.offset(n), name}
	switch {
	case depth > maxDepth:
		return r.refuse(n, at, fmt.Sprintf("lists and objects stand more than %d deep one in the other", maxDepth), "")
	case n.Anchor != "" || n.Kind == yaml.AliasNode:
		return r.refuse(n, at, "an anchor or alias (& or *)", "write the value out; a rule set is plain data")
	case n.Style&yaml.TaggedStyle != 0:
		return r.refuse(n, at, "a tag ("+n.Tag+")", "write the value plainly")
	}
	switch n.Kind {
	case yaml.MappingNode:
		return r.object(n, at, depth)
	case yaml.SequenceNode:
		items := []any{}
		for i, c := range n.Content {
			items = append(items, r.value(c, at+"/"+strconv.Itoa(i), -1, depth+1))
		}
		return items
	}
	return r.scalar(n, at)
}

func (r *yamlReader) object(n *yaml.Node, at string, depth int) any {
	members := map[string]any{}
	for i := 0; i+1 < len(n.Content); i += 2 {
		key := n.Content[i]
		if key.Kind != yaml.ScalarNode || key.Tag == "!!merge" || key.Anchor != "" {
			r.refuse(key, at, "a member name that is not plain text", "")
			continue
		}
		child := at + "/" + escape(key.Value)
		if _, twice := members[key.Value]; twice {
			r.refuse(key, child, fmt.Sprintf("member %q stands twice", key.Value), "keep one of the two")
			continue
		}
		members[key.Value] = r.value(n.Content[i+1], child, r.offset(key), depth+1)
	}
	return members
}

func (r *yamlReader) scalar(n *yaml.Node, at string) any {
	switch n.Tag {
	case "!!int", "!!float":
		if !json.Valid([]byte(n.Value)) {
			return r.refuse(n, at, fmt.Sprintf("the number %s", n.Value), "write it as a plain decimal number, or in quotes if it is a text")
		}
		if ok, why := bounded(n.Value); !ok {
			return r.refuse(n, at, why, "write it as a plain decimal number")
		}
		return json.Number(n.Value)
	case "!!bool":
		return strings.EqualFold(n.Value, "true")
	case "!!null":
		return nil
	}
	return n.Value
}
