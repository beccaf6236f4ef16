package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"sunclause/facts/facttest"
	"sunclause/schema/examples"
)

// atWork is the program at work, with its three standard streams.
func atWork(t *testing.T, args ...string) (c *exec.Cmd, stdin io.WriteCloser, stdout, stderr io.Reader) {
	t.Helper()
	c = exec.CommandContext(t.Context(), "sunclause", args...)
	var errs [4]error
	stdin, errs[0] = c.StdinPipe()
	stdout, errs[1] = c.StdoutPipe()
	stderr, errs[2] = c.StderrPipe()
	errs[3] = c.Start()
	if err := errors.Join(errs[:]...); err != nil {
		t.Fatal(err)
	}
	return c, stdin, stdout, stderr
}

// TestInterruptedBatch holds that an interrupt leaves whole lines on the standard
// output, no file that was not finished, exit status 2, and a word on why.
func TestInterruptedBatch(t *testing.T) {
	const job = `{"project": {"reference": "A", "stage": "design", "country": "GB"}}` + "\n"
	for _, output := range []string{"", "report.json"} {
		t.Chdir(t.TempDir())
		args := []string{"check", "--format", "json", "-"}
		if output != "" {
			args = append(args, "--output", output)
		}
		c, stdin, stdout, stderr := atWork(t, args...)
		bad := strings.Replace(job, "design", "desing", 1) // told on the standard error when its turn comes
		if _, err := io.WriteString(stdin, job+bad); err != nil {
			t.Fatal(err)
		}
		written := make(chan []byte)
		go func() {
			text, _ := io.ReadAll(stdout)
			written <- text
		}()
		says := bufio.NewReader(stderr)
		if line, err := says.ReadString('\n'); err != nil || !strings.HasPrefix(line, "standard input:2:") {
			t.Fatalf("%s: %v", line, err)
		}
		if err := c.Process.Signal(os.Interrupt); err != nil {
			t.Fatal(err)
		}
		word, err := io.ReadAll(says)
		if err != nil {
			t.Fatal(err)
		}
		text := <-written
		_ = c.Wait() // the status says it
		if c.ProcessState.ExitCode() != exitError || !strings.HasPrefix(string(word), "interrupted") {
			t.Errorf("exit status %d: %s", c.ProcessState.ExitCode(), word)
		}
		lines := bytes.SplitAfter(text, []byte("\n"))
		if output == "" && len(lines) != 3 || len(lines[len(lines)-1]) > 0 {
			t.Errorf("%d lines, want two whole ones: %.100s", len(lines)-1, text)
		}
		if left, err := os.ReadDir("."); err != nil || len(left) > 0 {
			t.Error(left, err)
		}
	}
}

// TestBatchMemoryIsFlat holds that a batch of any length takes the memory of a
// short one: reports are handed on, and nothing of a document is kept.
func TestBatchMemoryIsFlat(t *testing.T) {
	if testing.Short() {
		t.Skip("a hundred and more documents")
	}
	if _, err := os.Stat("/proc/self/status"); err != nil {
		t.Skip("this system does not say how much memory a process has had")
	}
	var job bytes.Buffer
	if err := json.Compact(&job, examples.Text(t, examples.Cottage)); err != nil {
		t.Fatal(err)
	}
	job.WriteByte('\n')
	c, stdin, stdout, _ := atWork(t, "check", "--format", "json", "-")
	reports := bufio.NewReader(stdout)
	feed := func(n int) (peakKiB int) {
		go func() {
			for range n {
				_, _ = stdin.Write(job.Bytes()) // that it has come shows in the reports
			}
		}()
		for range n {
			for more := true; more; {
				_, err := reports.ReadSlice('\n')
				if more = errors.Is(err, bufio.ErrBufferFull); err != nil && !more {
					t.Fatal(err)
				}
			}
		}
		return mostMemory(t, c.Process.Pid)
	}
	short, long := feed(20), feed(100)
	t.Logf("%d KiB for 20 documents, %d KiB for 120", short, long)
	if long > short*4/3 {
		t.Errorf("%d KiB for 20 documents, %d KiB for 120", short, long)
	}
	stdin.Close()
	if _, err := io.Copy(io.Discard, reports); err != nil {
		t.Error(err)
	}
	if err := c.Wait(); err != nil {
		t.Error(err)
	}
}

// mostMemory is how much a process that is running has had at most, in KiB.
func mostMemory(t *testing.T, pid int) int {
	t.Helper()
	_, rest, _ := strings.Cut(string(readTest(t, fmt.Sprintf("/proc/%d/status", pid))), "VmHWM:")
	var n int
	if _, err := fmt.Sscan(rest, &n); err != nil {
		t.Fatal(err)
	}
	return n
}

// TestLargeRoofIsJudged holds that 5,000 strings can be judged, and that the time
// for it grows little faster than the roof.
func TestLargeRoofIsJudged(t *testing.T) {
	if !facttest.Thorough() {
		t.Skip("forty megabytes; -thorough judges them")
	}
	took := func(strings int) float64 {
		name := filepath.Join(t.TempDir(), "roof.json")
		writeTest(t, name, examples.Larger(t, strings/40))
		r := started(t, "check", "--format", "json", "--output", filepath.Join(t.TempDir(), "report"), name)
		if r.status == exitError {
			t.Fatal(r.stderr)
		}
		t.Logf("%d strings: %v of the processor", strings, r.took)
		return r.took.Seconds()
	}
	exponent := math.Log(took(5000)/took(400)) / math.Log(5000.0/400)
	t.Logf("exponent %.2f", exponent)
	if exponent > 1.3 {
		t.Errorf("the time grows with the number of strings to the power of %.2f", exponent)
	}
}
