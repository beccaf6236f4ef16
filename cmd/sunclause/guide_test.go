package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

var fenced = regexp.MustCompile("(?ms)^```(\\w+) ?([^\n]*)\n(.*?)^```$")

// TestGuides does what the guides say, in an empty folder with a job in it: it
// writes the files they show and runs their commands. What they show of the
// output must come out, in that order.
func TestGuides(t *testing.T) {
	repo, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"writing-rules.md", "comparing.md", "first-job.md", "sheets.md"} {
		t.Run(name, func(t *testing.T) {
			raw, err := os.ReadFile(filepath.Join(repo, "docs", name))
			if err != nil {
				t.Fatal(err)
			}
			job, err := os.ReadFile(filepath.Join(repo, "testdata/gb-island-cottage/installation.json"))
			if err != nil {
				t.Fatal(err)
			}
			t.Chdir(t.TempDir())
			writeGuideFile(t, "job.json", string(job))
			for _, m := range fenced.FindAllStringSubmatch(string(raw), -1) {
				switch m[1] {
				case "console":
					console(t, m[3])
				case "csv": // what a command before has written
					if got, err := os.ReadFile(m[2]); err != nil || !strings.HasPrefix(strings.ReplaceAll(string(got), "\r\n", "\n"), m[3]) {
						t.Errorf("%s does not begin with\n%s: %v", m[2], m[3], err)
					}
				default:
					writeGuideFile(t, m[2], m[3])
				}
			}
		})
	}
}

func writeGuideFile(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// console runs the commands of a block and looks for the lines below each in
// what it wrote.
func console(t *testing.T, block string) {
	t.Helper()
	rest := ""
	for line := range strings.Lines(block) {
		line = strings.TrimSpace(line)
		command, ok := strings.CutPrefix(line, "$ sunclause ")
		if !ok {
			i := strings.Index(rest, line)
			if i < 0 {
				t.Fatalf("%q does not come out, or not in this order, of\n%s", line, rest)
			}
			rest = rest[i+len(line):]
			continue
		}
		var out, errs bytes.Buffer
		status := dispatch(context.Background(), &environment{strings.NewReader(""), &out, &errs}, strings.Fields(command))
		if status == exitError {
			t.Fatalf("sunclause %s: %s", command, errs.String())
		}
		rest = out.String()
	}
}
