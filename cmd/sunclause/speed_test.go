//go:build unix

package main

import (
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/policies"
	"sunclause/schema"
)

// These benchmarks start the program and the opa command in turn, on the same
// rules and facts, and give the medians of the ratios pair by pair: a machine
// that gets slower in between slows both. docs/speed.sh runs them and
// docs/speed.md has figures. They are skipped where there is no opa command.

// jobForSpeed is the job that is judged.
const jobForSpeed = "testdata/gb-island-cottage/installation.json"

// BenchmarkCold holds one check against opa eval.
func BenchmarkCold(b *testing.B) {
	s := newSpeed(b, 1)
	b.Chdir("../..")
	s.beside(b,
		exec.Command(s.program, "check", "--format", "json", jobForSpeed),
		exec.Command(s.opa, "eval", "-d", filepath.Join(s.dir, "rules"), "-i", filepath.Join(s.dir, "input.json"), s.query))
}

// BenchmarkBatch holds a check of twenty jobs against opa exec on as many inputs.
func BenchmarkBatch(b *testing.B) {
	const jobs = 20
	s := newSpeed(b, jobs)
	b.Chdir("../..")
	inputs := filepath.Join(s.dir, "inputs")
	s.beside(b,
		exec.Command(s.program, "check", "--format", "json", filepath.Join(s.dir, "jobs")),
		exec.Command(s.opa, "exec", "-b", filepath.Join(s.dir, "rules"), "--decision", "lib/limit/broken", inputs))
}

// BenchmarkManyJobs gives the memory that batches of different sizes take.
func BenchmarkManyJobs(b *testing.B) {
	for _, n := range []int{20, 200, 2000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			s := newSpeed(b, n)
			b.Chdir("../..")
			s.beside(b, exec.Command(s.program, "check", "--format", "json", filepath.Join(s.dir, "jobs")), nil)
		})
	}
}

// speed is what the programs need to be run side by side.
type speed struct {
	dir, program, opa, query string
}

// newSpeed builds the program and writes jobs, and for opa their facts and the
// rules that judge them.
func newSpeed(b *testing.B, jobs int) speed {
	b.Helper()
	opa, err := exec.LookPath("opa")
	if err != nil {
		b.Skip("there is no opa command here")
	}
	s := speed{dir: b.TempDir(), opa: opa}
	s.program = filepath.Join(s.dir, "sunclause")
	if out, err := exec.Command("go", "build", "-trimpath", "-ldflags=-s -w", "-o", s.program, ".").CombinedOutput(); err != nil {
		b.Fatalf("%v\n%s", err, out)
	}
	set, err := ruleset.Load(context.Background(), policies.FS, "gb")
	if err != nil {
		b.Fatal(err)
	}
	raw, err := os.ReadFile("../../" + jobForSpeed)
	if err != nil {
		b.Fatal(err)
	}
	doc, err := schema.Decode(jobForSpeed, raw)
	if err != nil {
		b.Fatal(err)
	}
	if s.query, err = set.WriteForOPA(s.dir, facts.Derive(&doc.Installation, set.Book)); err != nil {
		b.Fatal(err)
	}
	input, err := os.ReadFile(filepath.Join(s.dir, "input.json"))
	if err != nil {
		b.Fatal(err)
	}
	for i := range jobs {
		write(b, filepath.Join(s.dir, "jobs", fmt.Sprintf("%05d.installation.json", i)), raw)
		if jobs <= 20 {
			write(b, filepath.Join(s.dir, "inputs", fmt.Sprintf("%05d.json", i)), input)
		}
	}
	return s
}

func write(b *testing.B, name string, text []byte) {
	b.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		b.Fatal(err)
	}
	if err := os.WriteFile(name, text, 0o644); err != nil {
		b.Fatal(err)
	}
}

// cost is what one run of a command took.
type cost struct {
	wall, processor time.Duration
	peakMB          float64
}

// beside runs two commands in turn, ours first, and reports medians: of our cost,
// and of its ratio to the other's, where there is another.
func (s speed) beside(b *testing.B, ours, other *exec.Cmd) {
	var wall, processor, peak, ms, cpu []float64
	for b.Loop() {
		x := s.run(b, ours)
		peak, ms, cpu = append(peak, x.peakMB), append(ms, x.wall.Seconds()*1e3), append(cpu, x.processor.Seconds()*1e3)
		if other != nil {
			y := s.run(b, other)
			wall, processor = append(wall, x.wall.Seconds()/y.wall.Seconds()), append(processor, x.processor.Seconds()/y.processor.Seconds())
		}
	}
	b.ReportMetric(0, "ns/op") // of both together, which says nothing
	b.ReportMetric(median(ms), "wall-ms")
	b.ReportMetric(median(cpu), "cpu-ms")
	b.ReportMetric(median(peak), "peak-MB")
	if other != nil {
		b.ReportMetric(median(wall), "wall/opa")
		b.ReportMetric(median(processor), "cpu/opa")
	}
}

// run runs a command anew. Exit status 1 is a job that does not pass.
func (s speed) run(b *testing.B, c *exec.Cmd) cost {
	b.Helper()
	fresh := exec.Command(c.Path, c.Args[1:]...)
	var errs strings.Builder
	fresh.Stderr = &errs
	start := time.Now()
	if err := fresh.Run(); fresh.ProcessState == nil || fresh.ProcessState.ExitCode() > 1 {
		b.Fatalf("%v\n%s", err, errs.String())
	}
	usage := fresh.ProcessState.SysUsage().(*syscall.Rusage)
	peak := float64(usage.Maxrss) / 1024
	if runtime.GOOS == "darwin" {
		peak /= 1024 // in bytes there
	}
	return cost{time.Since(start), fresh.ProcessState.UserTime() + fresh.ProcessState.SystemTime(), peak}
}

func median(all []float64) float64 {
	slices.Sort(all)
	return all[len(all)/2]
}
