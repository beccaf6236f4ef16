package schema

import (
	"fmt"
	"regexp"
	"slices"
	"sort"
	"strconv"
	"strings"
)

// Problem is one thing wrong with a text: a document or a file of a rule set.
type Problem struct {
	File   string
	Line   int
	Column int
	At     string // JSON pointer; "" is the whole text
	What   string // what was found and what is allowed, in the words of the trade
	Remedy string // what to do about it; may be empty
}

// Error writes the problem as file:line:column: what; remedy.
func (p Problem) Error() string {
	text := fmt.Sprintf("%s:%d:%d: %s", p.File, p.Line, p.Column, p.What)
	if p.Remedy != "" {
		text += "; " + p.Remedy
	}
	return text
}

// Problems are all that is wrong with a text, in its order; of a great many,
// the first and the number of the rest. They are an error: a text with problems
// is not judged.
type Problems []Problem

// Error lists the problems, one a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.Error()
	}
	return strings.Join(lines, "\n")
}

// First are as many of the problems as anybody reads at once, and the number of the
// rest.
func (ps Problems) First() Problems {
	if len(ps) <= maxProblems {
		return ps
	}
	rest := ps[maxProblems]
	rest.At, rest.Remedy = "", "put the first ones right and check again"
	rest.What = fmt.Sprintf("and %d more problems from here on", len(ps)-maxProblems)
	return append(slices.Clone(ps[:maxProblems]), rest)
}

// ProblemAt is for checks that the schema cannot make: it names a value of the
// source by its JSON pointer.
func (s *Source) ProblemAt(pointer, what, remedy string) Problem {
	return s.problem(s.offset(pointer), pointer, what, remedy)
}

// ProblemAtName is one with a member of an object, at its name.
func (s *Source) ProblemAtName(pointer, what, remedy string) Problem {
	return s.problem(s.offsetOfName(pointer), pointer, what, remedy)
}

// maxText is how many bytes of a file are looked through for a text that stands
// there: a card, at most.
const maxText = 8 << 10

// ProblemAtWord names one word of a text, the last of those from the beginning of
// the text to it. Where the text is not written so, as one with escapes in it, the
// problem is with the whole of it.
func (s *Source) ProblemAtWord(pointer string, words []string, what, remedy string) Problem {
	at := s.offset(pointer)
	written := make([]string, len(words))
	for i, w := range words {
		written[i] = regexp.QuoteMeta(w)
	}
	// Between two words may be the end of a line, and in a card of a rule the sign
	// of a comment.
	pattern, err := regexp.Compile(strings.Join(written, `[\s#]+`))
	if err != nil || len(words) == 0 {
		return s.problem(at, pointer, what, remedy)
	}
	if found := pattern.FindIndex(s.Raw[min(at, len(s.Raw)):min(at+maxText, len(s.Raw))]); found != nil {
		at += found[1] - len(words[len(words)-1])
	}
	return s.problem(at, pointer, what, remedy)
}

// problem makes one at a byte offset of the source.
func (s *Source) problem(offset int, at, what, remedy string) Problem {
	pos := s.position(offset)
	return Problem{s.Name, pos.Line, pos.Column, at, what, remedy}
}

// maxProblems is how many problems of one text are put into words. Nobody
// reads more at once, and a text from a stranger can have a million.
const maxProblems = 100

// findings gathers what is wrong with a text: where, and a way to say it.
type findings struct {
	source *Source
	list   []finding
	cut    bool // whether there may be more than were gathered
}

type finding struct {
	offset int
	order  string // among findings at the same place
	tell   func() Problem
}

func (f *findings) add(offset int, order string, tell func() Problem) {
	f.list = append(f.list, finding{offset, order, tell})
}

// say adds a problem that is in words already.
func (f *findings) say(offset int, at, what, remedy string) {
	f.add(offset, "", func() Problem { return f.source.problem(offset, at, what, remedy) })
}

// places is the set of offsets at which something was found.
func (f *findings) places() map[int]bool {
	set := make(map[int]bool, len(f.list))
	for _, one := range f.list {
		set[one.offset] = true
	}
	return set
}

// problems puts the findings into words in the order of the text. One that was
// found twice is said once.
func (f *findings) problems() Problems {
	sort.SliceStable(f.list, func(i, j int) bool {
		a, b := f.list[i], f.list[j]
		if a.offset != b.offset {
			return a.offset < b.offset
		}
		return a.order < b.order
	})
	var said Problems
	for i, one := range f.list {
		if len(said) == maxProblems {
			return append(said, f.more(f.list[i:]))
		}
		p := one.tell()
		if len(said) == 0 || p != said[len(said)-1] {
			said = append(said, p)
		}
	}
	return said
}

func (f *findings) more(rest []finding) Problem {
	what := fmt.Sprintf("and %d more problems from here on", len(rest))
	if f.cut {
		what = fmt.Sprintf("and more than %d others from here on", len(rest))
	}
	return f.source.problem(rest[0].offset, "", what, "put the first ones right and check again")
}

// maxEcho is how many characters of a text of the document a problem repeats.
const maxEcho = 40

// quote repeats a text of the document in quotes: the beginning of a long one,
// and nothing that a terminal would obey.
func quote(text string) string { return strconv.Quote(truncate(text)) }

func truncate(text string) string {
	n := 0
	for i := range text {
		if n == maxEcho {
			return text[:i] + "…"
		}
		n++
	}
	return text
}
