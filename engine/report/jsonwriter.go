package report

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"strconv"
	"unicode/utf8"
)

// jsonWriter writes JSON in the very bytes that encode would, without
// reflection: a report states thousands of outcomes. It hands on what it has
// whenever that is more than a piece, so that no report is ever kept whole.
type jsonWriter struct {
	w    io.Writer
	made []byte // not yet handed on
	err  error  // of the first piece that could not be written
}

// piece is from how many bytes on they are handed on.
const piece = 64 << 10

func newJSONWriter(w io.Writer) *jsonWriter {
	return &jsonWriter{w: w, made: make([]byte, 0, piece+piece/4)}
}

// begin opens an object or a list, as the value of a member or as an item.
func (j *jsonWriter) begin(bracket byte) { j.made = append(j.made, bracket) }

// end closes it.
func (j *jsonWriter) end(bracket byte) { j.made = append(j.made, bracket) }

// item begins an item of a list.
func (j *jsonWriter) item() {
	// The text is handed on between items only: where nothing is left of it, an item went before.
	if n := len(j.made); n > 0 && (j.made[n-1] == '{' || j.made[n-1] == '[') {
		return
	}
	j.made = append(j.made, ',')
}

// member begins a member of an object; its name is one of ours and needs no
// escape.
func (j *jsonWriter) member(name string) {
	j.item()
	j.made = append(j.made, '"')
	j.made = append(j.made, name...)
	j.made = append(j.made, '"', ':')
}

func (j *jsonWriter) string(s string) {
	if !isPlain(s) {
		j.encoded(s)
		return
	}
	j.made = append(j.made, '"')
	j.made = append(j.made, s...)
	j.made = append(j.made, '"')
}

// isPlain reports whether a text stands in JSON as it is.
func isPlain(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < ' ' || c >= 0x7f || c == '"' || c == '\\' {
			return isPlainBeyondASCII(s)
		}
	}
	return true
}

// isPlainBeyondASCII is the slower way to the same answer, for a text that has
// other letters than those of ASCII.
func isPlainBeyondASCII(s string) bool {
	for i, r := range s {
		if r == '"' || r == '\\' || acts(r) {
			return false
		}
		if r == utf8.RuneError {
			if _, size := utf8.DecodeRuneInString(s[i:]); size == 1 {
				return false
			}
		}
	}
	return true
}

// text writes a member that is a text.
func (j *jsonWriter) text(name, s string) {
	j.member(name)
	j.string(s)
}

// textIfAny leaves the member out where the text is empty.
func (j *jsonWriter) textIfAny(name, s string) {
	if s != "" {
		j.text(name, s)
	}
}

func (j *jsonWriter) strings(list []string) {
	j.begin('[')
	for _, s := range list {
		j.item()
		j.string(s)
	}
	j.end(']')
}

func (j *jsonWriter) int(n int) { j.made = strconv.AppendInt(j.made, int64(n), 10) }

func (j *jsonWriter) null() { j.made = append(j.made, "null"...) }

func (j *jsonWriter) bool(b bool) { j.made = strconv.AppendBool(j.made, b) }

func (j *jsonWriter) number(v float64) {
	if a := math.Abs(v); a != 0 && (a < 1e-6 || a >= 1e21) || math.IsInf(v, 0) || math.IsNaN(v) {
		j.encoded(v) // with an exponent, or refused
		return
	}
	j.made = strconv.AppendFloat(j.made, v, 'f', -1, 64)
}

// value writes what a fact or a limit is: a number, a text, yes or no, a list of
// texts, or null.
func (j *jsonWriter) value(v any) {
	switch v := v.(type) {
	case float64:
		j.number(v)
	case string:
		j.string(v)
	case bool:
		j.bool(v)
	case []string:
		if v == nil {
			j.null()
			return
		}
		j.strings(v)
	default:
		j.encoded(v)
	}
}

// encoded writes anything else by reflection.
func (j *jsonWriter) encoded(v any) {
	var text bytes.Buffer
	if err := encode(&text, v, ""); err != nil {
		j.fail(err)
		return
	}
	j.made = append(j.made, bytes.TrimSuffix(text.Bytes(), []byte("\n"))...)
}

func (j *jsonWriter) fail(err error) {
	if j.err == nil {
		j.err = err
	}
}

// pause hands on what is written once it is a piece; it may be called only
// after an item.
func (j *jsonWriter) pause() {
	if len(j.made) >= piece {
		j.flush()
	}
}

func (j *jsonWriter) flush() {
	if j.err == nil {
		_, j.err = j.w.Write(j.made)
	}
	j.made = j.made[:0]
}

// close ends the line and hands on the rest.
func (j *jsonWriter) close() error {
	j.made = append(j.made, '\n')
	j.flush()
	if j.err != nil {
		return fmt.Errorf("cannot write it as JSON: %w", j.err)
	}
	return nil
}
