package report

import (
	"io"

	"sunclause/engine"
)

// Record writes a record as schema/record.schema.json describes it, indented,
// since it is kept and looked at for years.
func Record(w io.Writer, rec *engine.Record) error { return encode(w, rec, "  ") }
