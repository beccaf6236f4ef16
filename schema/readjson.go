package schema

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// Limits on a text from a stranger. They are above any real installation: 5,000
// strings with all that belongs to them can be read.
const (
	maxBytes    = 192 << 20  // of the whole text
	maxDepth    = 32         // lists and objects one in the other
	maxDigits   = 40         // characters of one number
	maxName     = 100        // bytes of a member name
	maxItems    = 100_000    // of one list
	maxFields   = 10_000     // members of one object
	maxSegments = 50_000     // of all runs of cable together
	maxFaults   = 10_000     // after which the reading stops
	maxValues   = 10_000_000 // of the whole text, some hundred bytes each
)

// readJSON reads a JSON text into a tree. Member names that stand twice and
// numbers out of range are problems; so is anything that is not JSON (RFC 8259)
// in UTF-8, after which nothing more can be said of the text: the root is then
// nil.
func readJSON(name string, raw []byte) (*Source, *findings) {
	if len(raw) > maxBytes {
		s := newSource(name, nil)
		f := &findings{source: s}
		f.say(0, "", fmt.Sprintf("the text has %d bytes; at most %d are read", len(raw), maxBytes), "split the job into several documents")
		return s, f
	}
	s := newSource(name, raw)
	f := &findings{source: s}
	if what, remedy := notJSON(raw); what != "" {
		f.say(0, "", what, remedy)
		return s, f
	}
	r := &jsonReader{source: s, found: f, text: string(raw), tokens: jsontext.NewDecoder(bytes.NewBuffer(raw), jsontext.AllowDuplicateNames(true))}
	root, err := r.value(1)
	if err == nil {
		err = r.end()
	}
	if err != nil {
		r.broken(err)
		return s, f
	}
	s.root = &root
	return s, f
}

type jsonReader struct {
	source *Source
	found  *findings
	tokens *jsontext.Decoder
	text   string     // the whole of it, of which the texts of the values are parts
	values int        // read so far
	path   []pathStep // from the root to the value that is being read
	open   []int      // offsets of the { and [ that are not closed yet
	within []node     // children of those, as far as they are read
}

// pathStep is one of the steps to a value: a member by name, or an item by number.
type pathStep struct {
	name   string
	number int
}

// at is the JSON pointer of the value that is being read.
func (r *jsonReader) at() string {
	var at strings.Builder
	for _, s := range r.path {
		if s.name == "" && s.number >= 0 {
			at.WriteString("/" + strconv.Itoa(s.number))
			continue
		}
		at.WriteString("/" + escape(s.name))
	}
	return at.String()
}

// refusal stops the reading at a place, for a reason other than syntax.
type refusal struct {
	offset       int
	what, remedy string
}

func (r *refusal) Error() string { return r.what }

// errEnough stops the reading of a text that has faults without end.
var errEnough = errors.New("enough")

func (r *jsonReader) tooMany(what string, most int) error {
	return &refusal{r.start(), fmt.Sprintf("%s has more than %d %s", Spoken(r.at()), most, what), "split the job into several documents"}
}

// start is the offset of the token that comes next.
func (r *jsonReader) start() int {
	i := int(r.tokens.InputOffset())
	for i < len(r.source.Raw) && strings.IndexByte(" \t\r\n,:", r.source.Raw[i]) >= 0 {
		i++
	}
	return i
}

// value reads the next value. A list or object would be the depth-th one inside
// the other.
func (r *jsonReader) value(depth int) (node, error) {
	n := node{start: int32(r.start()), named: -1}
	t, err := r.tokens.ReadToken()
	if err != nil {
		return n, err
	}
	if r.values++; r.values > maxValues {
		return n, &refusal{int(n.start), "the document holds more values than are read", "split the job into several documents"}
	}
	if len(r.found.list) >= maxFaults {
		return n, errEnough
	}
	n.kind = kind(t.Kind())
	switch n.kind {
	case isObject, isList:
		n.children, err = r.children(n.kind, int(n.start), depth)
	case isText:
		n.text = r.textOf(t, int(n.start))
		r.checkText(n)
	case isNumber:
		n.text = r.number(int(n.start))
	}
	return n, err
}

// textOf is what a text or member name says: the part of the whole text between
// its quotes, unless something in it is escaped.
func (r *jsonReader) textOf(t jsontext.Token, start int) string {
	quoted := r.text[start:r.tokens.InputOffset()]
	if strings.IndexByte(quoted, '\\') < 0 {
		return quoted[1 : len(quoted)-1]
	}
	return t.String()
}

// children reads the members or items of the object or list that was opened last.
func (r *jsonReader) children(k kind, start, depth int) ([]node, error) {
	if depth > maxDepth {
		return nil, &refusal{start, fmt.Sprintf("lists and objects stand more than %d deep one in the other", maxDepth), "no document needs that; look for brackets too many"}
	}
	r.open = append(r.open, start)
	before := len(r.within)
	var err error
	if k == isObject {
		err = r.object(before, depth)
	} else {
		err = r.list(before, depth)
	}
	if err != nil {
		return nil, err
	}
	if _, err := r.tokens.ReadToken(); err != nil {
		return nil, err
	}
	r.open = r.open[:len(r.open)-1]
	own := slices.Clone(r.within[before:])
	r.within = r.within[:before]
	return own, nil
}

// manyMembers is from how many members on they are looked up, to see whether one
// stands twice, by a table and not one by one.
const manyMembers = 50

func (r *jsonReader) object(before, depth int) error {
	var table map[string]int // offset of a member's name
	for r.tokens.PeekKind() != '}' {
		members := r.within[before:]
		switch {
		case len(members) == maxFields:
			return r.tooMany("members", maxFields)
		case len(members) == manyMembers:
			table = make(map[string]int, 2*manyMembers)
			for i := range members {
				table[members[i].name] = int(members[i].named)
			}
		}
		start := r.start()
		t, err := r.tokens.ReadToken()
		if err != nil {
			return err
		}
		name := r.textOf(t, start)
		kept := r.checkName(name, start, members, table)
		if err := r.member(name, start, depth, kept); err != nil {
			return err
		}
		if table != nil && kept {
			table[name] = start
		}
	}
	return nil
}

// checkName notes a member name that is too long, or stands twice in its object.
func (r *jsonReader) checkName(name string, start int, members []node, table map[string]int) bool {
	if len(name) > maxName {
		what := fmt.Sprintf("a member name of %d bytes in %s: %s", len(name), Spoken(r.at()), quote(name))
		r.found.say(start, r.at(), what, "look for a quote missing at its end")
		return false
	}
	first, twice := table[name]
	if table == nil {
		i := slices.IndexFunc(members, func(n node) bool { return n.name == name })
		if twice = i >= 0; twice {
			first = int(members[i].named)
		}
	}
	if twice {
		what := fmt.Sprintf("member %s stands twice in %s; the first is on line %d", quote(name), Spoken(r.at()), r.source.line(first))
		r.found.say(start, r.at()+"/"+escape(name), what, "keep one of the two")
	}
	return !twice
}

// member reads the value of a member. One that is not kept is read under the
// same limits.
func (r *jsonReader) member(name string, start, depth int, kept bool) error {
	if len(name) <= maxName {
		r.path = append(r.path, pathStep{name, -1})
		defer func() { r.path = r.path[:len(r.path)-1] }()
	}
	n, err := r.value(depth + 1)
	if kept {
		n.name, n.named = name, int32(start)
		r.within = append(r.within, n)
	}
	return err
}

func (r *jsonReader) list(before, depth int) error {
	for r.tokens.PeekKind() != ']' {
		number := len(r.within) - before
		if number == maxItems {
			return r.tooMany("items", maxItems)
		}
		r.path = append(r.path, pathStep{number: number})
		n, err := r.value(depth + 1)
		if err != nil {
			return err
		}
		r.path = r.path[:len(r.path)-1]
		r.within = append(r.within, n)
	}
	return nil
}

// checkText refuses control characters, with which a text could steer the
// terminal or printer that shows it.
func (r *jsonReader) checkText(n node) {
	for _, c := range n.text {
		if c < ' ' && c != '\t' && c != '\n' && c != '\r' || c >= 0x7f && c < 0xa0 {
			r.found.say(int(n.start), r.at(), fmt.Sprintf("%s: the text holds the control character U+%04X", Spoken(r.at()), c), "take it out")
			break
		}
	}
}

// number bounds a number before anything computes with it: an enormous
// exponent would stall or crash exact arithmetic further on.
func (r *jsonReader) number(start int) string {
	token := r.text[start:r.tokens.InputOffset()]
	if why := unbounded(token); why != "" {
		r.found.say(start, r.at(), Spoken(r.at())+": "+why, plainNumber)
		return "1"
	}
	return token
}

const plainNumber = "write it as a plain decimal number"

// unbounded says why a number is not read; "" when it is.
func unbounded(token string) string {
	if len(token) > maxDigits {
		return fmt.Sprintf("a number of %d characters; at most %d are read", len(token), maxDigits)
	}
	v, err := strconv.ParseFloat(token, 64)
	exponent := strings.IndexAny(token, "eE")
	switch {
	case err != nil, math.Abs(v) > 1e15, v != 0 && math.Abs(v) < 1e-15,
		v == 0 && strings.ContainsAny(strings.SplitAfter(strings.ToLower(token), "e")[0], "123456789"),
		exponent >= 0 && len(token)-exponent > 5:
		return fmt.Sprintf("the number %s is out of any range that a quantity can have", token)
	}
	return ""
}

// end makes sure that nothing follows the document.
func (r *jsonReader) end() error {
	offset := r.start()
	if _, err := r.tokens.ReadToken(); err == io.EOF {
		return nil
	}
	return &refusal{offset, "there is more text after the end of the document", "one file holds one installation; remove what follows, or the bracket that closes it too early"}
}

// broken says where and why the reading stopped.
func (r *jsonReader) broken(err error) {
	var no *refusal
	var syntax *jsontext.SyntacticError
	switch {
	case errors.Is(err, errEnough):
		r.found.cut = true
	case errors.As(err, &no):
		r.found.say(no.offset, "", no.what, no.remedy)
	case errors.Is(err, io.EOF), errors.Is(err, io.ErrUnexpectedEOF):
		r.breaksOff()
	case errors.As(err, &syntax):
		b := r.newBreak(syntax)
		what, remedy := b.explain()
		r.found.say(b.offset, string(syntax.JSONPointer), what, remedy)
	default:
		r.found.say(r.start(), "", err.Error(), "")
	}
}

// lastOpen names the innermost bracket that is not closed yet.
func (r *jsonReader) lastOpen() string {
	if len(r.open) == 0 {
		return ""
	}
	i := r.open[len(r.open)-1]
	pos := r.source.position(i)
	return fmt.Sprintf("the %c on line %d, column %d,", r.source.Raw[i], pos.Line, pos.Column)
}

// breaksOff speaks of a text that ends too early.
func (r *jsonReader) breaksOff() {
	raw, end := r.source.Raw, len(r.source.Raw)
	if len(bytes.TrimSpace(raw)) == 0 {
		r.found.say(0, "", "the text is empty", "an installation is one JSON object that begins with {")
		return
	}
	if i := r.start(); i < end && raw[i] == '"' && !json.Valid(raw[i:]) {
		r.found.say(i, "", `a text begins here with " and is never closed`, `put the missing " at its end`)
		return
	}
	remedy := "finish it"
	if open := r.lastOpen(); open != "" {
		remedy = open + " is not closed; write the bracket that closes it"
	}
	r.found.say(end, "", "the text ends before the document does", remedy)
}
