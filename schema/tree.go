package schema

import (
	"encoding/json"
	"strconv"
	"strings"
)

// node is a value of a text in JSON or YAML, with its place.
type node struct {
	kind     kind
	name     string // of a member of an object
	text     string // of a text, or of a number as it is written
	children []node // members or items, in the order of the text
	start    int32  // offset of the value
	named    int32  // offset of the member's name; -1 where it has none
}

// kind is a kind of value, by the character that begins it in JSON.
type kind byte

const (
	isNull   kind = 'n'
	isFalse  kind = 'f'
	isTrue   kind = 't'
	isNumber kind = '0'
	isText   kind = '"'
	isList   kind = '['
	isObject kind = '{'
)

// member is a member of an object by name, nil where it has no such member.
func (n *node) member(name string) *node {
	if n.kind == isObject {
		for i := range n.children {
			if n.children[i].name == name {
				return &n.children[i]
			}
		}
	}
	return nil
}

// child is the member or item that a token of a JSON pointer leads to.
func (n *node) child(token string) *node {
	if n.kind != isList {
		return n.member(strings.ReplaceAll(strings.ReplaceAll(token, "~1", "/"), "~0", "~"))
	}
	if i, err := strconv.Atoi(token); err == nil && i >= 0 && i < len(n.children) {
		return &n.children[i]
	}
	return nil
}

// brief is the value itself, but of a list or object no more than its size.
func (n *node) brief() any {
	switch n.kind {
	case isList:
		return make([]any, len(n.children))
	case isObject:
		return map[string]any{}
	}
	return n.plain()
}

// plain is the value as maps, lists, json.Numbers, texts, truth values and nil.
func (n *node) plain() any {
	switch n.kind {
	case isFalse, isTrue:
		return n.kind == isTrue
	case isNumber:
		return json.Number(n.text)
	case isText:
		return n.text
	case isList:
		items := make([]any, len(n.children))
		for i := range n.children {
			items[i] = n.children[i].plain()
		}
		return items
	case isObject:
		members := make(map[string]any, len(n.children))
		for i := range n.children {
			members[n.children[i].name] = n.children[i].plain()
		}
		return members
	}
	return nil
}
