package report

import (
	"strings"

	"sunclause/engine/judge"
	"sunclause/facts/working"
)

// workingLine is one step of a working, and the steps it came from.
type workingLine struct {
	Text, Source string
	From         []workingLine
}

// workingOf is the working of what was measured, and of the fact it was held
// against.
func workingOf(r *judge.Result, j judge.Judgment) []workingLine {
	var all []workingLine
	for _, n := range []*working.Number{r.Number(j), r.LimitNumber(j)} {
		if n != nil && n.Known() && n.Formula() != "" {
			all = append(all, stepOf(r, *n, 0))
		}
	}
	return all
}

// deepest is how far a working is followed: deeper than this it is the same
// story again.
const deepest = 6

func stepOf(r *judge.Result, n working.Number, depth int) workingLine {
	if n.Formula() == "" {
		return workingLine{Text: n.Symbol() + " = " + withUnit(n) + " " + whence(r.Document, n)}
	}
	line := workingLine{Text: n.Symbol() + " = " + n.Formula() + " = " + n.Filled() + " = " + withUnit(n)}
	if n.Source().How != working.Definition {
		line.Source = Cite(n.Source())
	}
	if depth == deepest {
		return line
	}
	for _, in := range n.Inputs() {
		line.From = append(line.From, stepOf(r, in, depth+1))
	}
	return line
}

// excerpt is a few lines of the document around one that the report points at.
type excerpt struct {
	Lines []excerptLine
}

type excerptLine struct {
	Number int
	Text   string
	Marked bool
}

// around is how many lines an excerpt shows before and after.
const around = 2

// longestLine keeps a document written on one line from filling the report.
const longestLine = 240

// excerpts cuts out of the document the lines that the report points at.
func excerpts(raw []byte, wanted map[int]bool) []excerpt {
	text := strings.Split(string(raw), "\n")
	var all []excerpt
	last := -1
	for n := 1; n <= len(text); n++ {
		if !near(wanted, n) {
			continue
		}
		if n != last+1 || all == nil {
			all = append(all, excerpt{})
		}
		e := &all[len(all)-1]
		e.Lines = append(e.Lines, excerptLine{n, cut(text[n-1]), wanted[n]})
		last = n
	}
	return all
}

func near(wanted map[int]bool, n int) bool {
	for d := -around; d <= around; d++ {
		if wanted[n+d] {
			return true
		}
	}
	return false
}

func cut(line string) string {
	runes := []rune(strings.TrimRight(line, "\r"))
	if len(runes) > longestLine {
		return string(runes[:longestLine]) + " …"
	}
	return string(runes)
}
