package main

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"sunclause/schema/examples"
)

var update = flag.Bool("update", false, "write the goldens anew")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"sunclause": main})
}

// TestScripts runs what a user would type. The scripts see the repository as
// $REPO, and in testdata all examples and the small job of the formats.
func TestScripts(t *testing.T) {
	repo, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(e *testscript.Env) error {
			e.Setenv("REPO", repo)
			testdata := filepath.Join(e.WorkDir, "testdata")
			if err := examples.Write(testdata); err != nil {
				return err
			}
			return os.Symlink(filepath.Join(repo, "testdata/formats"), filepath.Join(testdata, "formats"))
		},
	})
}
