package schema

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"go.yaml.in/yaml/v3"
)

// maxYAML is the size of one file of a rule set, far above any real one.
const maxYAML = 1 << 20

// readYAML reads a YAML text of a rule set into the same tree as readJSON, with
// the same limits. Anchors, aliases, tags and merge keys are refused: a rule
// set is plain data, and an alias can blow a small text up without bound.
func readYAML(name string, raw []byte) (*Source, *findings) {
	if len(raw) > maxYAML {
		s := newSource(name, nil)
		f := &findings{source: s}
		f.say(0, "", fmt.Sprintf("the text has %d bytes; at most %d are read", len(raw), maxYAML), "split it into several files")
		return s, f
	}
	s := newSource(name, raw)
	f := &findings{source: s}
	if !utf8.Valid(raw) {
		f.say(0, "", "the text is not UTF-8", "save it as UTF-8")
		return s, f
	}
	doc, err := parseYAML(raw)
	switch {
	case err != nil:
		f.brokenYAML(err)
	case len(doc.Content) == 0:
		f.say(0, "", "the text is empty", "remove the file, or write what it is for")
	default:
		r := &yamlReader{source: s, found: f, line: 1, column: 1}
		root := r.value(doc.Content[0], "", -1, 1)
		s.root = &root
	}
	return s, f
}

var errTwo = errors.New("a second document begins after ---")

// parseYAML reads the one document of a text. A fault of the YAML library is
// an error like any other.
func parseYAML(raw []byte) (doc yaml.Node, err error) {
	defer func() {
		if r := recover(); r != nil {
			err = fmt.Errorf("it cannot be read: %v", r)
		}
	}()
	d := yaml.NewDecoder(bytes.NewReader(raw))
	if err := d.Decode(&doc); err != nil && err != io.EOF {
		return doc, err
	}
	var more yaml.Node
	if err := d.Decode(&more); err == nil {
		return doc, errTwo
	} else if err != io.EOF {
		return doc, err
	}
	return doc, nil
}

var yamlLine = lazily(`line (\d+): `)

func (f *findings) brokenYAML(err error) {
	offset, text := 0, strings.TrimPrefix(err.Error(), "yaml: ")
	if m := yamlLine().FindStringSubmatch(text); m != nil {
		if n, _ := strconv.Atoi(m[1]); n >= 1 && n <= len(f.source.lines) {
			offset = f.source.lines[n-1]
		}
		text = strings.Replace(text, m[0], "", 1)
	}
	if errors.Is(err, errTwo) {
		f.say(offset, "", text, "one file holds one document; split it")
		return
	}
	f.say(offset, "", "this is not YAML: "+shown(text), "look at the indentation and the quotes just before this place")
}

// shown makes the words of the YAML library, which may repeat any part of the
// text, fit to be read.
func shown(words string) string {
	words = strings.Map(func(r rune) rune {
		if unicode.IsPrint(r) {
			return r
		}
		return '?'
	}, words)
	if len(words) > maxName {
		words = truncate(words)
	}
	return words
}

type yamlReader struct {
	source *Source
	found  *findings

	// where the last node was found, from which the next is not far
	line, column, at int
}

// offset turns the line and column of a node into a byte offset.
func (r *yamlReader) offset(n *yaml.Node) int {
	if n.Line < 1 || n.Line > len(r.source.lines) {
		return 0
	}
	if n.Line != r.line || n.Column < r.column {
		r.line, r.column, r.at = n.Line, 1, r.source.lines[n.Line-1]
	}
	for r.column < n.Column && r.at < len(r.source.Raw) {
		_, size := utf8.DecodeRune(r.source.Raw[r.at:])
		r.at += size
		r.column++
	}
	return r.at
}

// refuse says why a value is not read; it is as if it were not stated.
func (r *yamlReader) refuse(n *yaml.Node, at, what, remedy string) {
	r.found.say(r.offset(n), at, what, remedy)
}

func (r *yamlReader) value(y *yaml.Node, at string, named, depth int) node {
	n := node{kind: isNull, start: int32(r.offset(y)), named: int32(named)}
	switch {
	case y.Anchor != "" || y.Kind == yaml.AliasNode:
		r.refuse(y, at, Spoken(at)+": an anchor or alias (& or *)", "write the value out; put a text that begins so in quotes")
	case y.Style&yaml.TaggedStyle != 0:
		r.refuse(y, at, Spoken(at)+": a tag "+quote(y.Tag), "write the value without it; put a text that begins with ! in quotes")
	case y.Kind == yaml.ScalarNode:
		n.kind, n.text = r.scalar(y, at)
	case depth > maxDepth || len(at) > maxDepth*maxName:
		r.refuse(y, at, fmt.Sprintf("lists and objects stand more than %d deep one in the other", maxDepth), "no rule set needs that")
	case y.Kind == yaml.MappingNode:
		n.kind, n.children = isObject, r.members(y, at, depth)
	default:
		n.kind, n.children = isList, make([]node, len(y.Content))
		for i, c := range y.Content {
			n.children[i] = r.value(c, at+"/"+strconv.Itoa(i), -1, depth+1)
		}
	}
	return n
}

func (r *yamlReader) members(y *yaml.Node, at string, depth int) []node {
	members := make([]node, 0, len(y.Content)/2)
	first := make(map[string]int, len(y.Content)/2) // offset of each name
	for i := 0; i+1 < len(y.Content); i += 2 {
		key := y.Content[i]
		if key.Kind != yaml.ScalarNode || key.Tag == "!!merge" || key.Anchor != "" || key.Style&yaml.TaggedStyle != 0 || len(key.Value) > maxName {
			r.refuse(key, at, Spoken(at)+": a member name that is not a plain word", "write the name of the member as it stands in the guide")
			continue
		}
		child := at + "/" + escape(key.Value)
		if before, twice := first[key.Value]; twice {
			r.refuse(key, child, fmt.Sprintf("member %s stands twice in %s; the first is on line %d", quote(key.Value), Spoken(at), r.source.line(before)), "keep one of the two")
			continue
		}
		first[key.Value] = r.offset(key)
		n := r.value(y.Content[i+1], child, first[key.Value], depth+1)
		n.name = key.Value
		members = append(members, n)
	}
	return members
}

func (r *yamlReader) scalar(y *yaml.Node, at string) (kind, string) {
	switch y.Tag {
	case "!!int", "!!float":
		if !json.Valid([]byte(y.Value)) {
			r.refuse(y, at, fmt.Sprintf("%s: the number %s", Spoken(at), truncate(y.Value)), plainNumber+", or in quotes if it is a text")
			return isNull, ""
		}
		if why := unbounded(y.Value); why != "" {
			r.refuse(y, at, Spoken(at)+": "+why, plainNumber)
			return isNull, ""
		}
		return isNumber, y.Value
	case "!!bool":
		if strings.EqualFold(y.Value, "true") {
			return isTrue, ""
		}
		return isFalse, ""
	case "!!null":
		return isNull, ""
	}
	return isText, y.Value
}
