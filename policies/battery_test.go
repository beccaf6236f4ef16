package policies_test

import (
	"bytes"
	"encoding/json"
	"os"
	"testing"
)

// TestBatteryExample keeps the example with a battery true to what it is: the
// cottage, and a patch that puts the battery in.
func TestBatteryExample(t *testing.T) {
	patch, err := os.ReadFile("../testdata/gb-battery/patch.json")
	if err != nil {
		t.Fatal(err)
	}
	raw := fault{Patch: patch}.apply(t, example(t, "gb-island-cottage"))
	var want bytes.Buffer
	if err := json.Indent(&want, raw, "", "  "); err != nil {
		t.Fatal(err)
	}
	want.WriteByte('\n')
	name := "../testdata/gb-battery/installation.json"
	if *update {
		if err := os.WriteFile(name, want.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(name)
	if err != nil || !bytes.Equal(got, want.Bytes()) {
		t.Errorf("%s is not the cottage with its battery (%v); go test ./policies -update writes it", name, err)
	}
}
