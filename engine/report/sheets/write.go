package sheets

import (
	"encoding/csv"
	"fmt"
	"io"
	"strings"

	"sunclause/engine/report"
)

// Markdown writes a sheet as a page with a table. What comes from the document
// is escaped, so that it stays in its cell.
func (s Sheet) Markdown(w io.Writer) error {
	var b strings.Builder
	b.WriteString("# " + s.Title + "\n\n")
	for _, n := range s.Notes {
		b.WriteString(escaped(n) + "\n\n")
	}
	b.WriteString(row(s.Columns))
	b.WriteString("|" + strings.Repeat("---|", len(s.Columns)) + "\n")
	for _, r := range s.Rows {
		b.WriteString(row(r))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func row(cells []string) string {
	var b strings.Builder
	for _, c := range cells {
		b.WriteString("| " + escaped(c) + " ")
	}
	return b.String() + "|\n"
}

// markup is what Markdown would take for more than text.
var markup = strings.NewReplacer("\\", "\\\\", "|", "\\|", "<", "&lt;", "&", "&amp;", "*", "\\*", "[", "\\[", "]", "\\]", "`", "\\`", "#", "\\#", "\n", " ")

func escaped(s string) string {
	if s == Blank {
		return s
	}
	return markup.Replace(report.Visible(s))
}

// CSV writes a sheet as RFC 4180 has it, the columns in its first record. A
// cell that a spreadsheet would take for a formula is kept from being one.
func (s Sheet) CSV(w io.Writer) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	records := append([][]string{s.Columns}, s.Rows...)
	for _, r := range records {
		safe := make([]string, len(r))
		for i, c := range r {
			safe[i] = noFormula(report.Visible(c))
		}
		if err := out.Write(safe); err != nil {
			return fmt.Errorf("sheet %s: %w", s.Name, err)
		}
	}
	out.Flush()
	return out.Error()
}

// noFormula puts an apostrophe before what begins like a formula and is no
// number.
func noFormula(c string) string {
	if c == "" || !strings.ContainsRune("=+@-\t\r", rune(c[0])) || len(c) > 1 && c[0] == '-' && c[1] >= '0' && c[1] <= '9' {
		return c
	}
	return "'" + c
}
