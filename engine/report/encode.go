package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"unicode/utf16"
	"unicode/utf8"
)

// encode writes a value as JSON that ends with a line feed, on one line or
// indented. Characters that would act on whoever looks at the text are written
// as \u and their number, which means the same to a program.
func encode(w io.Writer, v any, indent string) error {
	var text bytes.Buffer
	e := json.NewEncoder(&text)
	e.SetEscapeHTML(false)
	e.SetIndent("", indent)
	if err := e.Encode(v); err != nil {
		return err
	}
	_, err := w.Write(spellOut(text.Bytes()))
	return err
}

// spellOut replaces what acts in a JSON text. Outside ASCII that can only stand
// inside of strings; in ASCII the encoder has left nothing but DEL.
func spellOut(text []byte) []byte {
	if bytes.IndexFunc(text, actsInJSON) < 0 {
		return text
	}
	out := make([]byte, 0, len(text)+64)
	for len(text) > 0 {
		r, size := utf8.DecodeRune(text)
		switch high, low := utf16.EncodeRune(r); {
		case !actsInJSON(r):
			out = append(out, text[:size]...)
		case r > 0xffff:
			out = fmt.Appendf(out, `\u%04x\u%04x`, high, low)
		default:
			out = fmt.Appendf(out, `\u%04x`, r)
		}
		text = text[size:]
	}
	return out
}

func actsInJSON(r rune) bool { return r != '\n' && acts(r) }
