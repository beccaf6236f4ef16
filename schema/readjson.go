package schema

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// Limits on a text from a stranger. They are far above any real installation.
const (
	maxBytes    = 32 << 20  // of the whole text
	maxDepth    = 32        // lists and objects one in the other
	maxDigits   = 40        // characters of one number
	maxName     = 100       // bytes of a member name
	maxItems    = 25_000    // of one list
	maxFields   = 10_000    // members of one object
	maxSegments = 10_000    // of all runs of cable together
	maxFaults   = 10_000    // after which the reading stops
	maxRoom     = 128 << 20 // bytes, roughly, for keeping the values and their places
	valueRoom   = 100       // bytes, roughly, for one value beside its JSON pointer
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
	r := &jsonReader{source: s, found: f, tokens: jsontext.NewDecoder(bytes.NewBuffer(raw), jsontext.AllowDuplicateNames(true))}
	root, err := r.value("", 1)
	if err == nil {
		err = r.end()
	}
	if err != nil {
		r.broken(err)
		return s, f
	}
	s.root = root
	return s, f
}

type jsonReader struct {
	source *Source
	found  *findings
	tokens *jsontext.Decoder
	open   []int // offsets of the { and [ that are not closed yet
	room   int   // taken up so far
}

// refusal stops the reading at a place, for a reason other than syntax.
type refusal struct {
	offset       int
	what, remedy string
}

func (r *refusal) Error() string { return r.what }

// errEnough stops the reading of a text that has faults without end.
var errEnough = errors.New("enough")

func tooMany(offset int, at, what string, most int) error {
	return &refusal{offset, fmt.Sprintf("%s has more than %d %s", Spoken(at), most, what), "split the job into several documents"}
}

// start is the offset of the token that comes next.
func (r *jsonReader) start() int {
	i := int(r.tokens.InputOffset())
	for i < len(r.source.Raw) && strings.IndexByte(" \t\r\n,:", r.source.Raw[i]) >= 0 {
		i++
	}
	return i
}

// value reads the value at a JSON pointer. A list or object in it would be the
// depth-th one inside the other.
func (r *jsonReader) value(at string, depth int) (any, error) {
	offset := r.start()
	t, err := r.tokens.ReadToken()
	if err != nil {
		return nil, err
	}
	if err := r.keep(at, offset); err != nil {
		return nil, err
	}
	switch t.Kind() {
	case '{', '[':
		return r.within(t.Kind(), at, offset, depth)
	case '"':
		return r.text(at, offset, t.String()), nil
	case '0':
		return r.number(at, offset), nil
	case 't', 'f':
		return t.Bool(), nil
	default:
		return nil, nil
	}
}

// keep notes where a value starts, as long as there is room for it.
func (r *jsonReader) keep(at string, offset int) error {
	if r.room += valueRoom + len(at); r.room > maxRoom {
		return &refusal{offset, "the document holds more values than are read", "split the job into several documents"}
	}
	if len(r.found.list) >= maxFaults {
		return errEnough
	}
	m, ok := r.source.offsets[at]
	if !ok {
		m.name = -1
	}
	m.value = offset
	r.source.offsets[at] = m
	return nil
}

func (r *jsonReader) within(kind jsontext.Kind, at string, offset, depth int) (v any, err error) {
	if depth > maxDepth {
		return nil, &refusal{offset, fmt.Sprintf("lists and objects stand more than %d deep one in the other", maxDepth), "no document needs that; look for brackets too many"}
	}
	r.open = append(r.open, offset)
	if kind == '{' {
		v, err = r.object(at, depth)
	} else {
		v, err = r.list(at, depth)
	}
	if err != nil {
		return nil, err
	}
	if _, err := r.tokens.ReadToken(); err != nil {
		return nil, err
	}
	r.open = r.open[:len(r.open)-1]
	return v, nil
}

func (r *jsonReader) object(at string, depth int) (any, error) {
	members := map[string]any{}
	for r.tokens.PeekKind() != '}' {
		offset := r.start()
		if len(members) == maxFields {
			return nil, tooMany(offset, at, "members", maxFields)
		}
		t, err := r.tokens.ReadToken()
		if err != nil {
			return nil, err
		}
		if err := r.member(members, at, t.String(), offset, depth); err != nil {
			return nil, err
		}
	}
	return members, nil
}

func (r *jsonReader) member(members map[string]any, at, name string, offset, depth int) (err error) {
	if len(name) > maxName {
		what := fmt.Sprintf("a member name of %d bytes in %s: %s", len(name), Spoken(at), quote(name))
		r.found.say(offset, at, what, "look for a quote missing at its end")
		return r.pass(at, depth)
	}
	child := at + "/" + escape(name)
	if _, twice := members[name]; twice {
		what := fmt.Sprintf("member %s stands twice in %s; the first is on line %d", quote(name), Spoken(at), r.source.line(r.source.offsetOfName(child)))
		r.found.say(offset, child, what, "keep one of the two")
		return r.pass(child, depth)
	}
	r.source.offsets[child] = mark{name: offset}
	members[name], err = r.value(child, depth+1)
	return err
}

// pass reads a value that is not kept, under the same limits.
func (r *jsonReader) pass(at string, depth int) error {
	kept := r.source.offsets
	r.source.offsets = map[string]mark{}
	defer func() { r.source.offsets = kept }()
	_, err := r.value(at, depth+1)
	return err
}

func (r *jsonReader) list(at string, depth int) (any, error) {
	items := []any{}
	for r.tokens.PeekKind() != ']' {
		if len(items) == maxItems {
			return nil, tooMany(r.start(), at, "items", maxItems)
		}
		v, err := r.value(at+"/"+strconv.Itoa(len(items)), depth+1)
		if err != nil {
			return nil, err
		}
		items = append(items, v)
	}
	return items, nil
}

// text refuses control characters, with which a text could steer the terminal
// or printer that shows it.
func (r *jsonReader) text(at string, offset int, s string) string {
	for _, c := range s {
		if c < ' ' && c != '\t' && c != '\n' && c != '\r' || c >= 0x7f && c < 0xa0 {
			r.found.say(offset, at, fmt.Sprintf("%s: the text holds the control character U+%04X", Spoken(at), c), "take it out")
			break
		}
	}
	return s
}

// number bounds a number before anything computes with it: an enormous
// exponent would stall or crash exact arithmetic further on.
func (r *jsonReader) number(at string, offset int) any {
	token := string(r.source.Raw[offset:r.tokens.InputOffset()])
	if why := unbounded(token); why != "" {
		r.found.say(offset, at, Spoken(at)+": "+why, plainNumber)
		return json.Number("1")
	}
	return json.Number(token)
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
