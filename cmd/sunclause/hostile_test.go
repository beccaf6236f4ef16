//go:build unix

package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"
	"time"

	"sunclause/engine/report"
)

// What a hostile rule set may cost the whole command.
const (
	hostileTime = 2 * time.Second // of the processor, whatever else the machine does
	hostileKiB  = 512 << 10
)

// cottage is the installation that the hostile sets are to judge.
const cottage = "../../testdata/gb-island-cottage/installation.json"

// TestHostile lets rule sets judge that were written to do harm. Each is
// refused in a plain line and in bounded processor time and memory.
func TestHostile(t *testing.T) {
	if testing.Short() {
		t.Skip("a process for each hostile set takes its time")
	}
	sets, err := filepath.Glob("../../testdata/hostile/*")
	if err != nil || len(sets) < 20 {
		t.Fatal(len(sets), "hostile sets", err)
	}
	for _, dir := range sets {
		t.Run(filepath.Base(dir), func(t *testing.T) { refused(t, dir) })
	}
}

// TestHostileMade does the same with sets that are too large or too odd to be
// kept as files.
func TestHostileMade(t *testing.T) {
	if testing.Short() {
		t.Skip("a process for each hostile set takes its time")
	}
	for name, write := range hostileSets {
		t.Run(name, func(t *testing.T) {
			dir := filepath.Join(t.TempDir(), "made")
			write(maker{t, dir})
			refused(t, dir)
		})
	}
}

// TestHouseWithinLimits holds the limits off a good rule set of a firm: it
// judges in a small part of the time.
func TestHouseWithinLimits(t *testing.T) {
	r := checkBy(t, "../../policies/house-example")
	if r.status == exitError || len(r.stdout) == 0 {
		t.Errorf("exit status %d: %s", r.status, r.stderr)
	}
	if r.took > hostileTime/2*slack {
		t.Errorf("took %v", r.took)
	}
}

// ran is how one run of the command went.
type ran struct {
	status         int
	stdout, stderr string
	took           time.Duration // of the processor
	peakKiB        int64
}

func refused(t *testing.T, dir string) {
	t.Helper()
	r := checkBy(t, dir)
	t.Logf("%v, %d KiB: %s", r.took.Round(10*time.Millisecond), r.peakKiB, firstLine(r.stderr))
	if r.status != exitError {
		t.Errorf("exit status %d", r.status)
	}
	if r.stdout != "" && !saysNothingElse(r) {
		t.Errorf("on the standard output: %.200s", r.stdout)
	}
	if r.took > hostileTime*slack {
		t.Errorf("took %v", r.took)
	}
	if r.peakKiB > hostileKiB*slack {
		t.Errorf("took %d KiB", r.peakKiB)
	}
	sayPlainly(t, r.stderr)
}

// saysNothingElse reports whether a report says only that the document could not be
// checked, and why: what stands on the standard error, and no outcome.
func saysNothingElse(r ran) bool {
	words := func(s string) string { return strings.Join(strings.Fields(s), " ") }
	verdict, why, _ := strings.Cut(words(r.stdout), "COULD NOT BE CHECKED ")
	why, cautions, _ := strings.Cut(why, " Cautions ")
	return verdict == words(cottage)+" " && why == words(r.stderr) && cautions == strings.Join(report.Cautions, " ")
}

// sayPlainly holds an error to a few lines that a person can read.
func sayPlainly(t *testing.T, text string) {
	t.Helper()
	if n := strings.Count(text, "\n"); n < 1 || n > 10 {
		t.Errorf("said in %d lines: %.400s", n, text)
	}
	if first := firstLine(text); len(first) > 400 {
		t.Errorf("a line of %d bytes: %.400s", len(first), first)
	}
	for _, word := range []string{"goroutine", "panic", "runtime error", ".go:"} {
		if strings.Contains(text, word) {
			t.Errorf("the error has %q in it: %.400s", word, text)
		}
	}
}

func firstLine(text string) string {
	first, _, _ := strings.Cut(text, "\n")
	return first
}

// checkBy checks the cottage by a rule set.
func checkBy(t *testing.T, rules string) ran {
	t.Helper()
	return started(t, "check", "--rules", rules, cottage)
}

// started runs a command in a process of its own, which may have to end it.
func started(t *testing.T, args ...string) ran {
	t.Helper()
	var stdout, stderr bytes.Buffer
	c := exec.CommandContext(t.Context(), "sunclause", args...)
	c.Stdout, c.Stderr = &stdout, &stderr
	if err := c.Run(); c.ProcessState == nil {
		t.Fatal(err)
	}
	usage := c.ProcessState.SysUsage().(*syscall.Rusage)
	peak := int64(usage.Maxrss)
	if runtime.GOOS == "darwin" {
		peak >>= 10 // in bytes there
	}
	took := c.ProcessState.UserTime() + c.ProcessState.SystemTime()
	return ran{c.ProcessState.ExitCode(), stdout.String(), stderr.String(), took, peak}
}

// maker writes one hostile rule set.
type maker struct {
	t   *testing.T
	dir string
}

func (m maker) file(name, text string) {
	m.t.Helper()
	path := filepath.Join(m.dir, name)
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		m.t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		m.t.Fatal(err)
	}
}

func (m maker) manifest(more string) {
	m.file("ruleset.yaml", "name: made\ntitle: A hostile rule set\nversion: 0.1.0\nextends: iec\n"+more)
}

// rule writes a set of one Rego rule, with more lines in its body and after it.
func (m maker) rule(body, after string) {
	m.manifest("")
	m.file("pvstring.rego", `package made.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: made/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: `+houseSource+`
findings contains f if {
	some s in input.strings
`+body+`	f := {"id": "made/a-rule", "subject": s.id}
}
`+after)
}

func (m maker) must(err error) {
	m.t.Helper()
	if err != nil {
		m.t.Fatal(err)
	}
}

const houseSource = "{document: house rule, how: house rule}"

var hostileSets = map[string]func(maker){
	"deep list": func(m maker) {
		m.manifest("parameters: " + strings.Repeat("[", 9000) + strings.Repeat("]", 9000) + "\n")
	},
	"deeper list": func(m maker) { m.manifest("parameters: " + strings.Repeat("[", 500_000) + "\n") },
	"deep objects": func(m maker) {
		var b strings.Builder
		for i := range 1000 {
			b.WriteString(strings.Repeat(" ", i) + "a:\n")
		}
		m.manifest(b.String())
	},
	"large manifest": func(m maker) { m.manifest("# " + strings.Repeat("a", 10<<20) + "\n") },
	"long line":      func(m maker) { m.manifest("title: " + strings.Repeat("a", 900_000) + "\n") },
	"large rules": func(m maker) {
		m.manifest("")
		m.file("pvstring.rego", "package made.pvstring\n"+strings.Repeat("# a\n", 20_000))
	},
	"many files": func(m maker) {
		m.manifest("")
		for i := range 5000 {
			m.file(fmt.Sprintf("room%d.yaml", i), "requirements: []\n")
		}
	},
	"many bytes": func(m maker) {
		m.manifest("")
		for i := range 10 {
			m.file(fmt.Sprintf("room%d.yaml", i), "requirements: []\n#"+strings.Repeat("a", 1<<19))
		}
	},
	"many modules": func(m maker) {
		m.manifest("")
		for i := range 60 {
			text := fmt.Sprintf("package made.room%d\n\n", i)
			for k := range 250 {
				text += fmt.Sprintf("r%d contains x if {\n\tsome s in input.strings\n\tx := {s.id: [y | some r in input.runs; y := r.id]}\n}\n\n", k)
			}
			m.file(fmt.Sprintf("room%d.rego", i), text)
		}
		m.file("pvstring.rego", "package made.pvstring\n\nx := time.now_ns()\n")
	},
	"many rows": func(m maker) {
		m.manifest("")
		var b strings.Builder
		b.WriteString("requirements:\n")
		for i := range 2001 {
			fmt.Fprintf(&b, "  - {id: made/row-%d, title: A row, level: shall, subject: runs, require: length_m at_most 1, source: %s}\n", i, houseSource)
		}
		m.file("cable.yaml", b.String())
	},
	"many cells": func(m maker) {
		m.manifest("")
		m.file("tables/large.yaml", "title: A table\nsource: "+houseSource+"\ncolumns: [{name: a}]\nrows:\n"+strings.Repeat("  - {a: 1}\n", 5001))
	},
	"many anchors": func(m maker) {
		m.manifest("parameters:\n" + strings.Repeat("  - &a [*a]\n", 5))
	},
	"huge number": func(m maker) {
		m.manifest("parameters:\n  a: {title: A, value: " + strings.Repeat("9", 100_000) + ", source: " + houseSource + "}\n")
	},
	"long chain": func(m maker) {
		m.manifest("")
		for i := range 20 {
			next := fmt.Sprintf("../made%d", i+1)
			if i == 19 {
				next = "iec"
			}
			m.file(fmt.Sprintf("../made%d/ruleset.yaml", i), fmt.Sprintf("name: made%d\ntitle: T\nversion: 0.1.0\nextends: %s\n", i, next))
		}
		m.file("ruleset.yaml", "name: made\ntitle: T\nversion: 0.1.0\nextends: ../made0\n")
	},
	"link out": func(m maker) {
		m.manifest("")
		m.must(os.Symlink("/etc/passwd", filepath.Join(m.dir, "pvstring.yaml")))
	},
	"linked manifest": func(m maker) {
		m.must(os.MkdirAll(m.dir, 0o755))
		m.must(os.Symlink("/dev/zero", filepath.Join(m.dir, "ruleset.yaml")))
	},
	"pipe": func(m maker) {
		m.manifest("")
		m.must(syscall.Mkfifo(filepath.Join(m.dir, "pvstring.yaml"), 0o644))
	},
	"folder as file": func(m maker) {
		m.manifest("")
		m.file("pvstring.yaml/a.yaml", "")
		m.file("cable.rego", "not rego")
	},
	"many rules": func(m maker) {
		var b strings.Builder
		for i := range 2000 {
			fmt.Fprintf(&b, "\nr%d := %d\n", i, i)
		}
		m.rule("", b.String())
	},
	"else chain": func(m maker) {
		var b strings.Builder
		b.WriteString("\nc(x) := 0 if {\n\tx == 0\n}")
		for i := range 1500 {
			fmt.Fprintf(&b, " else := %d if {\n\tx == %d\n}", i+1, i+1)
		}
		m.rule("\tc(1) == 1\n", b.String()+"\n")
	},
	"reversed": func(m maker) {
		var b strings.Builder
		for i := range 1000 {
			fmt.Fprintf(&b, "\tv%d := v%d\n", i, i+1)
		}
		m.rule(b.String()+"\tv1000 := 1\n", "")
	},
	"unreadable yaml": func(m maker) { m.manifest("? [a\n: {b: - c\n\t- d: *x\n%YAML 9\n---\n...\n---\n") },
}
