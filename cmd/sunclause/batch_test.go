package main

import (
	"bufio"
	"bytes"
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"
)

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
		c := exec.CommandContext(t.Context(), "sunclause", args...)
		stdin, err := c.StdinPipe()
		if err != nil {
			t.Fatal(err)
		}
		stdout, err := c.StdoutPipe()
		if err != nil {
			t.Fatal(err)
		}
		stderr, err := c.StderrPipe()
		if err != nil {
			t.Fatal(err)
		}
		if err := c.Start(); err != nil {
			t.Fatal(err)
		}
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
		if c.ProcessState.ExitCode() != couldNot || !strings.HasPrefix(string(word), "interrupted") {
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
