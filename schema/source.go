package schema

import (
	"bytes"
	"encoding/binary"
	"math/bits"
	"sort"
	"strconv"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"
)

// Source is a text in JSON or YAML, read into a tree of values, with the place of
// each value kept.
type Source struct {
	Name string // as the user named it; shown in front of every problem
	Raw  []byte

	root       *node        // nil where the text could not be read
	plain      func() any   // the tree as plain values, made when first asked for
	lines      []int        // offset of the first byte of each line
	characters func() []int // how many characters begin before each block of the text
	before     int          // lines that stand before the text in its file
}

// Position is a place in a text for people: both count from 1, the column in
// characters.
type Position struct{ Line, Column int }

func newSource(name string, raw []byte) *Source {
	s := &Source{Name: name, Raw: raw, lines: lineStarts(raw)}
	s.characters = sync.OnceValue(func() []int { return charactersBefore(raw) })
	s.plain = sync.OnceValue(func() any {
		if s.root == nil {
			return nil
		}
		return s.root.plain()
	})
	return s
}

func lineStarts(raw []byte) []int {
	starts := make([]int, 1, bytes.Count(raw, []byte{'\n'})+1)
	for at := 0; ; {
		i := bytes.IndexByte(raw[at:], '\n')
		if i < 0 {
			return starts
		}
		at += i + 1
		starts = append(starts, at)
	}
}

// block is the number of bytes between two counts of characters. With the
// counts, a column is found as fast in a text of one endless line as in any.
const block = 4096

func charactersBefore(raw []byte) []int {
	counts := make([]int, 1, len(raw)/block+1)
	for i := block; i <= len(raw); i += block {
		counts = append(counts, counts[len(counts)-1]+countCharacters(raw[i-block:i]))
	}
	return counts
}

// countCharacters counts the bytes that begin a character of UTF-8, eight at a time:
// all but those whose first two bits are 1 and 0.
func countCharacters(raw []byte) int {
	const ones = 0x0101010101010101
	n := len(raw)
	for ; len(raw) >= 8; raw = raw[8:] {
		eight := binary.LittleEndian.Uint64(raw)
		n -= bits.OnesCount64(eight >> 7 &^ (eight >> 6) & ones)
	}
	for _, b := range raw {
		if !utf8.RuneStart(b) {
			n--
		}
	}
	return n
}

// Root is the whole text as plain values: map[string]any, []any, json.Number,
// string, bool or nil. It must not be changed.
func (s *Source) Root() any { return s.plain() }

// Has reports whether there is a value at a JSON pointer.
func (s *Source) Has(pointer string) bool { return s.at(pointer) != nil }

// at is the value at a JSON pointer, nil where there is none.
func (s *Source) at(pointer string) *node {
	if n, rest := s.nearest(pointer); s.root != nil && rest == "" {
		return n
	}
	return nil
}

// Position finds the value at a JSON pointer; where there is none, the nearest
// enclosing value that exists.
func (s *Source) Position(pointer string) Position { return s.position(s.offset(pointer)) }

func (s *Source) offset(pointer string) int {
	n, _ := s.nearest(pointer)
	return int(n.start)
}

// offsetOfName finds the member name of the value at a JSON pointer.
func (s *Source) offsetOfName(pointer string) int {
	if n, rest := s.nearest(pointer); rest == "" && n.named >= 0 {
		return int(n.named)
	}
	return s.offset(pointer)
}

// nearest follows a JSON pointer as far as there are values, and says what of it
// is left over.
func (s *Source) nearest(pointer string) (n *node, rest string) {
	if s.root == nil {
		return &node{named: -1}, pointer
	}
	for n = s.root; strings.HasPrefix(pointer, "/"); {
		token, rest := pointer[1:], ""
		if i := strings.IndexByte(token, '/'); i >= 0 {
			token, rest = token[:i], token[i:]
		}
		next := n.child(token)
		if next == nil {
			return n, pointer
		}
		n, pointer = next, rest
	}
	return n, pointer
}

func (s *Source) position(offset int) Position {
	offset = min(max(offset, 0), len(s.Raw))
	line := s.line(offset)
	return Position{s.before + line, s.charactersFrom(s.lines[line-1], offset) + 1}
}

// line is the number of the line, within the text, on which an offset lies.
func (s *Source) line(offset int) int { return sort.SearchInts(s.lines, offset+1) }

// charactersFrom counts the characters between two offsets, the start of a line
// and one on it.
func (s *Source) charactersFrom(start, offset int) int {
	if offset-start <= block {
		return countCharacters(s.Raw[start:offset])
	}
	return s.charactersTo(offset) - s.charactersTo(start)
}

func (s *Source) charactersTo(offset int) int {
	i := offset / block
	return s.characters()[i] + countCharacters(s.Raw[i*block:offset])
}

// split cuts a JSON pointer into its unescaped tokens.
func split(pointer string) []string {
	if pointer == "" {
		return nil
	}
	tokens := strings.Split(pointer[1:], "/")
	for i, t := range tokens {
		tokens[i] = strings.ReplaceAll(strings.ReplaceAll(t, "~1", "/"), "~0", "~")
	}
	return tokens
}

// parent is the pointer of the value around another, "" around the outermost.
func parent(pointer string) string { return pointer[:max(0, strings.LastIndexByte(pointer, '/'))] }

// lastName is the name of the member, or the number of the item, that a
// pointer leads to.
func lastName(pointer string) string { return split(pointer[len(parent(pointer)):])[0] }

func escape(token string) string {
	if !strings.ContainsAny(token, "~/") {
		return token
	}
	return strings.ReplaceAll(strings.ReplaceAll(token, "~", "~0"), "/", "~1")
}

// Spoken writes a JSON pointer as people say it: strings[0].voc_v.
func Spoken(pointer string) string {
	var b strings.Builder
	for _, t := range split(pointer) {
		if _, err := strconv.Atoi(t); err == nil {
			b.WriteString("[" + t + "]")
			continue
		}
		if b.Len() > 0 {
			b.WriteByte('.')
		}
		b.WriteString(spokenName(t))
	}
	if b.Len() == 0 {
		return "the document"
	}
	return b.String()
}

// named writes a JSON pointer as people say it, and the parts of a list by their
// ids: strings.S1.voc_v.
func (s *Source) named(pointer string) string {
	var b strings.Builder
	n := s.root
	for _, t := range split(pointer) {
		list := n.kind == isList
		n = n.child(escape(t))
		switch id := n.member("id"); {
		case list && id != nil:
			b.WriteString("." + spokenName(id.text))
		case list:
			b.WriteString("[" + t + "]")
		default:
			b.WriteString("." + spokenName(t))
		}
	}
	return b.String()[1:]
}

// spokenName is the member name itself, in quotes when it is not a plain word.
func spokenName(name string) string {
	for _, r := range name {
		if r != '_' && r != '-' && r != '$' && !unicode.IsLetter(r) && !unicode.IsDigit(r) {
			return quote(name)
		}
	}
	if name == "" {
		return `""`
	}
	return truncate(name)
}

// Placed makes a source of what a file has from a line on, for problems with
// something that was read out of the middle of it.
func Placed(name, text string, line int) *Source {
	for range line - 1 {
		_, text, _ = strings.Cut(text, "\n")
	}
	s := newSource(name, []byte(text))
	s.before = line - 1
	return s
}

// Member is a member of an object: its name, and where the name begins, in bytes
// from the start of the text.
type Member struct {
	Name   string
	Offset int
}

// Members lists the members of the object at a JSON pointer in the order of the
// text, for those who change a text and keep what they do not change.
func (s *Source) Members(pointer string) []Member {
	n, rest := s.nearest(pointer)
	if rest != "" || n.kind != isObject {
		return nil
	}
	all := make([]Member, len(n.children))
	for i, c := range n.children {
		all[i] = Member{c.name, int(c.named)}
	}
	return all
}

// Offset is where the value at a JSON pointer begins, in bytes from the start of
// the text.
func (s *Source) Offset(pointer string) int { return s.offset(pointer) }
