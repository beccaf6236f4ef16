package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"iter"
)

// stream is the standard input as documents: one of any layout, or one a line.
type stream struct {
	r     *bufio.Reader
	head  []byte // the text that is read already
	lines []line // the lines of it that are not blank
	ended error  // why no more can be read: io.EOF, or what went wrong
	at    int    // lines that are read
}

// line is one line of a stream, counted from 1.
type line struct {
	number int
	text   []byte
}

const standardInput = "standard input"

// openStream reads as much as shows whether there is a document a line: up to the
// second line that is not blank.
func openStream(r io.Reader) *stream {
	s := &stream{r: bufio.NewReaderSize(r, 64<<10)}
	for len(s.lines) < 2 && s.ended == nil {
		l := s.next()
		s.head = append(s.head, l.text...)
		if !l.blank() {
			s.lines = append(s.lines, l)
		}
	}
	return s
}

// next reads a line with what ends it. Of one that is longer than a document may
// be only the beginning is kept, which the decoder refuses.
func (s *stream) next() line {
	s.at++
	l := line{number: s.at}
	for {
		piece, err := s.r.ReadSlice('\n')
		l.text = append(l.text, piece[:min(len(piece), maxDocument-len(l.text))]...)
		if !errors.Is(err, bufio.ErrBufferFull) {
			s.ended = err
			return l
		}
	}
}

func (l line) blank() bool { return len(bytes.TrimSpace(l.text)) == 0 }

// many reports whether the stream holds a document a line.
func (s *stream) many() bool {
	return len(s.lines) == 2 && aDocumentALine(bytes.TrimSpace(s.lines[0].text), bytes.TrimSpace(s.lines[1].text))
}

// aDocumentALine reports whether a line and the next that is not blank are a
// document each, right or wrong. A line is one if it is whole by itself. One that
// is not could still be the beginning of a document of many lines, unless the
// next is a whole installation, or begins an object where none can begin: in one
// document what stands before an object is an opening bracket, a comma or a colon.
func aDocumentALine(first, next []byte) bool {
	return json.Valid(first) || isInstallation(next) || next[0] == '{' && !bytes.ContainsRune([]byte("{[,:"), rune(first[len(first)-1]))
}

// isInstallation reports whether a text is one object with the member that every
// installation has, and no part of one.
func isInstallation(text []byte) bool {
	var members map[string]json.RawMessage
	return json.Unmarshal(text, &members) == nil && members["project"] != nil
}

// documents are the documents of the stream, each as it comes.
func (s *stream) documents() iter.Seq[source] {
	if s.many() {
		return s.each
	}
	return s.one
}

// each yields a document a line. Blank lines are none.
func (s *stream) each(yield func(source) bool) {
	for _, l := range s.lines {
		if !yield(l.source()) {
			return
		}
	}
	for s.ended == nil {
		if l := s.next(); !l.blank() && !yield(l.source()) {
			return
		}
	}
	if !errors.Is(s.ended, io.EOF) {
		yield(source{name: standardInput, err: fmt.Errorf("%s, after line %d: %w", standardInput, s.at, s.ended)})
	}
}

func (l line) source() source {
	return source{name: fmt.Sprintf("%s:%d", standardInput, l.number), text: bytes.TrimRight(l.text, "\r\n")}
}

// one yields the whole text as one document.
func (s *stream) one(yield func(source) bool) {
	text, err := s.head, s.ended
	if err == nil {
		text, err = io.ReadAll(io.LimitReader(io.MultiReader(bytes.NewReader(s.head), s.r), maxDocument))
	}
	if err != nil && !errors.Is(err, io.EOF) {
		yield(source{name: standardInput, err: fmt.Errorf("%s: %w", standardInput, err)})
		return
	}
	yield(source{name: standardInput, text: text})
}
