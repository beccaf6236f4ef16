package main

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "write the goldens anew")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"sunclause": main})
}

// TestScripts runs what a user would type. The scripts see the repository as
// $REPO.
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
			return os.Symlink(filepath.Join(repo, "testdata"), filepath.Join(e.WorkDir, "testdata"))
		},
	})
}
