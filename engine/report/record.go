package report

import (
	"io"

	"sunclause/engine/record"
)

// Record writes a record as schema/record.schema.json describes it, indented,
// since it is kept and looked at for years.
func Record(w io.Writer, rec *record.Record) error { return encode(w, rec, "  ") }
