package schema

import (
	"os"
	"path/filepath"
	"testing"
)

// TestRoomsAgreeWithTheWhole makes sure that a document which is accepted room
// by room is accepted by the whole schema, and the other way round.
func TestRoomsAgreeWithTheWhole(t *testing.T) {
	accepted := 0
	for _, pattern := range []string{"../testdata/*/installation.json", "../testdata/broken/*.json", "../facts/testdata/*.json"} {
		names, _ := filepath.Glob(pattern)
		for _, name := range names {
			raw, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			s, found := readJSON(name, raw)
			if s.root == nil {
				continue
			}
			sch, err := compile(InstallationSchema)
			if err != nil {
				t.Fatal(err)
			}
			whole, byRoom := sch.Validate(s.root) == nil, acceptable(s.root)
			if whole != byRoom {
				t.Errorf("%s: the whole schema says %v, the rooms say %v (%d found before)", name, whole, byRoom, len(found.list))
			}
			if byRoom {
				accepted++
			}
		}
	}
	if accepted < 3 {
		t.Errorf("only %d documents were accepted", accepted)
	}
}

// TestEveryTopMemberHasARoom makes sure that no member of the document has to
// be held against the whole schema.
func TestEveryTopMemberHasARoom(t *testing.T) {
	for name := range plainSchema(InstallationSchema)["properties"].(map[string]any) {
		if _, ok := rooms()[name]; !ok && name != "$schema" {
			t.Errorf("%s has no room", name)
		}
	}
}
