package schema_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"sunclause/schema"
	"sunclause/schema/examples"
)

// TestLargeRoof makes sure that a roof of 5,000 strings can be read, and that one mistake
// in it is told as in a small one.
func TestLargeRoof(t *testing.T) {
	if testing.Short() {
		t.Skip("forty megabytes")
	}
	text := examples.Larger(t, 125)
	before := processorTime(t)
	doc, err := schema.Decode("roof.json", text)
	if err != nil {
		t.Fatal(err)
	}
	t.Logf("%d MB read in %v", len(text)>>20, processorTime(t)-before)
	if n := len(doc.Installation.Strings); n != 5000 {
		t.Errorf("%d strings", n)
	}
	last := doc.Installation.Strings[4999]
	if !last.Module.To().VocV.Stated() || doc.Position(last.ModulesInSeries.At()).Column < 1000 {
		t.Errorf("the last string is %v", last)
	}
	doc = nil
	const length = `"modules_in_series":`
	wrong := strings.LastIndex(string(text), length) + len(length)
	_, err = schema.Decode("roof.json", append(append(slices.Clone(text[:wrong]), '-'), text[wrong:]...))
	if want := fmt.Sprintf("roof.json:1:%d: strings[4999].modules_in_series (modules in series): found -", wrong+1); err == nil || !strings.HasPrefix(err.Error(), want) || strings.Contains(err.Error(), "\n") {
		t.Errorf("got %.300v\nwant %s", err, want)
	}
}
