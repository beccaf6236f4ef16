package schema

import (
	"bytes"
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/go-json-experiment/json/jsontext"
)

// notJSON knows files that are no JSON text at all, by how they begin.
func notJSON(raw []byte) (what, remedy string) {
	for _, k := range []struct{ begins, what, remedy string }{
		{"\ufeff", "the text begins with a byte order mark", "save the file as UTF-8 without a byte order mark"},
		{"\xff\xfe", "the text is in UTF-16", "save the file as UTF-8"},
		{"\xfe\xff", "the text is in UTF-16", "save the file as UTF-8"},
		{"PK\x03\x04", "this is a word processor, spreadsheet or zip file, not a JSON text", "save the document as plain text"},
		{"%PDF", "this is a PDF, not a JSON text", "give the JSON document itself"},
	} {
		if bytes.HasPrefix(raw, []byte(k.begins)) {
			return k.what, k.remedy
		}
	}
	return "", ""
}

// syntaxBreak is the place at which a text stopped being JSON.
type syntaxBreak struct {
	raw    []byte
	open   string // the bracket that is not closed yet, and where; may be empty
	ended  int    // offset at which the token before ended
	start  int    // of the token that could not be read
	offset int    // of the character that could not be
	why    string // in the words of the reader
	found  rune   // that character; 0 at the end of the text
}

func (r *jsonReader) newBreak(err *jsontext.SyntacticError) *syntaxBreak {
	raw := r.source.Raw
	b := &syntaxBreak{raw: raw, open: r.lastOpen(), ended: int(r.tokens.InputOffset()), start: r.start(), offset: min(int(err.ByteOffset), len(raw)), why: "it cannot be read"}
	if err.Err != nil {
		b.why = strings.TrimPrefix(err.Err.Error(), "jsontext: ")
	}
	if b.offset < len(raw) {
		b.found, _ = utf8.DecodeRune(raw[b.offset:])
	}
	return b
}

// explain says in plain words what is wrong at the break and what to do. It
// may move the place back to where the mistake was made.
func (b *syntaxBreak) explain() (what, remedy string) {
	for _, known := range []func(*syntaxBreak) (string, string){
		encoding, curlyQuote, openText, escaped, decimalComma, comma, inNumber,
		bareWord, strangeSign, afterName, afterValue,
	} {
		if what, remedy := known(b); what != "" {
			return what, remedy
		}
	}
	return "this is not JSON: " + b.why, "look for a comma, a quote or a bracket too many or too few just before this place"
}

// before is the last character before the break that is not white space.
func (b *syntaxBreak) before() byte {
	text := bytes.TrimRight(b.raw[:b.offset], " \t\r\n")
	if len(text) == 0 {
		return 0
	}
	return text[len(text)-1]
}

// next is the first character after the one at the break that is not white space.
func (b *syntaxBreak) next() byte {
	text := bytes.TrimLeft(b.raw[min(b.offset+1, len(b.raw)):], " \t\r\n")
	if len(text) == 0 {
		return 0
	}
	return text[0]
}

func (b *syntaxBreak) says(words string) bool { return strings.Contains(b.why, words) }

func encoding(b *syntaxBreak) (string, string) {
	if b.found != utf8.RuneError && !b.says("invalid UTF-8") {
		return "", ""
	}
	return "the text is not UTF-8 here", "save the file as UTF-8"
}

const curly = "“”„‟‘’‚«»″"

func curlyQuote(b *syntaxBreak) (string, string) {
	if b.found == 0 || !strings.ContainsRune(curly, b.found) {
		from, to := b.textBefore()
		i := bytes.IndexAny(b.raw[from:to], curly)
		if i < 0 {
			return "", ""
		}
		b.offset = from + i
		b.found, _ = utf8.DecodeRune(b.raw[b.offset:])
	}
	return fmt.Sprintf("found a curly quote %c", b.found), `write straight quotes "; a word processor makes them curly, a plain text editor does not`
}

// textBefore is the stretch of the text in quotes that ran on too far: one that
// a line end broke off, or one that ended where another should have begun.
func (b *syntaxBreak) textBefore() (from, to int) {
	switch {
	case b.says("in string") && (b.found == '\n' || b.found == '\r'):
		return b.start, b.offset
	case b.says("after") && b.ended > 1 && b.raw[b.ended-1] == '"' && unicode.IsLetter(b.found):
		return max(0, bytes.LastIndexByte(b.raw[:b.ended-1], '"')), b.ended
	}
	return 0, 0
}

func openText(b *syntaxBreak) (string, string) {
	switch {
	case !b.says("in string (expecting non-control"):
		return "", ""
	case b.found == '\n' || b.found == '\r':
		b.offset = b.start
		return `a text begins here with " and is not closed on its line`, `put the missing " at its end`
	case b.found == '\t':
		return "a tab stands in a text", `put a space in its place`
	}
	return fmt.Sprintf("the control character U+%04X stands in a text", b.found), "take it out"
}

func escaped(b *syntaxBreak) (string, string) {
	switch {
	case b.says("surrogate"):
		return "half a character stands in a text (a lone surrogate)", "write the character itself"
	case b.says("invalid escape"):
		return `a \ stands in a text before a character it cannot go with`, `write \\ for a \ and \" for a quote inside a text`
	}
	return "", ""
}

var commaInNumber = lazily(`-?[0-9]+$`)

func decimalComma(b *syntaxBreak) (string, string) {
	if b.offset < 2 || b.found < '0' || b.found > '9' || b.raw[b.offset-1] != ',' {
		return "", ""
	}
	whole := commaInNumber().Find(b.raw[max(0, b.offset-1-maxDigits) : b.offset-1])
	if whole == nil {
		return "", ""
	}
	rest := b.raw[b.offset:]
	end := bytes.IndexFunc(rest, func(r rune) bool { return r < '0' || r > '9' })
	if end < 0 || end > maxDigits {
		return "", ""
	}
	b.offset -= len(whole) + 1
	return fmt.Sprintf("a comma stands in the number %s,%s", whole, rest[:end]), fmt.Sprintf("the decimal sign is a point: write %s.%s", whole, rest[:end])
}

func comma(b *syntaxBreak) (string, string) {
	if b.found != ',' {
		return "", ""
	}
	switch next := b.next(); {
	case next == '}' || next == ']':
		return fmt.Sprintf("a comma stands before the closing %c", next), "take the comma away"
	case b.before() == ',', next == ',':
		return "two commas stand in a row", "take one away"
	}
	return "a comma stands where a value should", "take the comma away, or write the value before it"
}

func inNumber(b *syntaxBreak) (string, string) {
	switch {
	case b.says("in number"):
		b.offset = b.start
		return "a number breaks off", "write it whole, as in 5 or 5.2"
	case b.found == '.' && b.says("start of value"):
		return "a number begins with a point", "write the 0 before it, as in 0.5"
	case b.found == '+':
		return "a number begins with +", "leave the + out"
	case b.found >= '0' && b.found <= '9' && b.offset > 0 && b.raw[b.offset-1] == '0' && b.says("after"):
		b.offset--
		return "a number begins with 0 and goes on", "leave the leading 0 out; put a number that is a name or a date in quotes"
	}
	return "", ""
}

var word = lazily(`^[\pL_][\pL\pN_.-]{0,39}`)

// bareWord speaks of a word that stands outside quotes where a value or the
// name of a member should begin.
func bareWord(b *syntaxBreak) (string, string) {
	if b.says("after") && !b.says("missing value") || !b.says("start of value") && !b.says("in literal") {
		return "", ""
	}
	w := word().Find(b.raw[b.start:])
	if w == nil {
		return "", ""
	}
	b.offset = b.start
	what := fmt.Sprintf("the word %s stands without quotes", w)
	switch strings.ToLower(string(w)) {
	case "true", "yes":
		return what, "write true"
	case "false", "no":
		return what, "write false"
	}
	if notKnown[strings.ToLower(string(w))] {
		return what, "leave the member out if it is not known"
	}
	if bytes.HasPrefix(b.raw[b.start+len(w):], []byte{'"'}) {
		return fmt.Sprintf("the text %s has no quote before it", w), fmt.Sprintf(`write "%s"`, w)
	}
	return what, fmt.Sprintf(`write "%s"`, w)
}

func strangeSign(b *syntaxBreak) (string, string) {
	switch {
	case b.found == '\'':
		return "found a single quote '", `write double quotes "`
	case b.found == '/' && b.offset+1 < len(b.raw) && (b.raw[b.offset+1] == '/' || b.raw[b.offset+1] == '*'), b.found == '#':
		return "found a comment", `JSON has none; put remarks in a member "note"`
	case b.found > 0x7f && unicode.IsSpace(b.found), b.found == '\u200b', b.found == '\ufeff':
		return fmt.Sprintf("found a space that is not a plain one (U+%04X)", b.found), "type it again as a plain space"
	case b.says("missing value"):
		return "a member has no value", "write its value, or leave the member out"
	case b.says("name must be a string") && b.found != 0:
		return fmt.Sprintf("found %s where a member name in quotes should stand", quote(string(b.found))), `write "name": value`
	}
	return "", ""
}

func afterName(b *syntaxBreak) (string, string) {
	if !b.says("after object name") {
		return "", ""
	}
	if b.found == ',' || b.found == '}' {
		return "a member has no value", "write its value after a colon, or leave the member out"
	}
	return fmt.Sprintf("found %s where a colon should stand", quote(string(b.found))), `write "name": value; look for a quote too many or too few before this place`
}

func afterValue(b *syntaxBreak) (string, string) {
	before := b.before()
	switch {
	case !b.says("after object value") && !b.says("after array element"):
		return "", ""
	case b.found == '}' || b.found == ']':
		return fmt.Sprintf("found %c, but %s is not closed yet", b.found, b.open), "close that first; look for a bracket of the wrong kind, or one missing"
	case strings.ContainsRune(`"{[`, b.found), b.found == ';':
		return fmt.Sprintf("found %c where a comma should stand", b.found), "put a comma after the value before it"
	case before == '"':
		return "a text goes on after its closing quote", `write a quote inside a text as \"`
	case before >= '0' && before <= '9' && strings.ContainsRune("-/.:", b.found):
		return "a number goes on in a way that numbers do not", "put a date, a time or a name in quotes"
	case before >= '0' && before <= '9' && (unicode.IsLetter(b.found) || strings.ContainsRune("%°", b.found)):
		return fmt.Sprintf("found %s after a number", quote(string(b.found))), "write the number alone; its unit stands in the name of the member"
	}
	return fmt.Sprintf("found %s where a comma should stand", quote(string(b.found))), "look for a comma or a quote too many or too few just before this place"
}
