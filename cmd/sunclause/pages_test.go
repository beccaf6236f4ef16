package main

import (
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"
)

// pageCommands goes into a new folder with a job, and gives the commands of a
// page of docs, in order.
func pageCommands(t *testing.T, page string) []string {
	t.Helper()
	text, err := os.ReadFile("../../docs/" + page)
	if err != nil {
		t.Fatal(err)
	}
	job, err := os.ReadFile("../../testdata/gb-island-cottage/installation.json")
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir(t.TempDir())
	writeTest(t, "job.json", job)
	var commands []string
	for _, c := range regexp.MustCompile(`(?m)^    ((?:openssl|sunclause) .*)$`).FindAllStringSubmatch(string(text), -1) {
		commands = append(commands, c[1])
	}
	return commands
}

// runLine runs a command of a page, which has to be able to do its work, and
// gives its exit status.
func runLine(t *testing.T, line string) (status int) {
	t.Helper()
	fields := strings.Fields(line)
	if fields[0] != "sunclause" {
		if text, err := exec.Command(fields[0], fields[1:]...).CombinedOutput(); err != nil {
			t.Fatalf("%s: %v\n%s", line, err, text)
		}
		return passes
	}
	_, errs, status := typed(t, fields[1:]...)
	if status == exitError {
		t.Fatalf("%s: %s", line, errs)
	}
	return status
}

// withoutOpenssl reports whether a command is left out because there is no openssl. The
// keys that it would make are then made in Go.
func withoutOpenssl(t *testing.T, line string, makeKeys func(*testing.T)) bool {
	t.Helper()
	if _, err := exec.LookPath("openssl"); err == nil || !strings.HasPrefix(line, "openssl ") {
		return false
	}
	t.Logf("not run, as there is no openssl: %s", line)
	if strings.Contains(line, " genpkey ") || strings.Contains(line, " -genkey ") {
		makeKeys(t)
	}
	return true
}

// checkRefused makes sure that commands cannot be done, and say why.
func checkRefused(t *testing.T, says map[string]string) {
	t.Helper()
	for args, why := range says {
		_, errs, status := typed(t, strings.Fields(args)...)
		if status != exitError || !strings.Contains(errs, why) {
			t.Errorf("sunclause %s: status %d: %s; it should say: %s", args, status, errs, why)
		}
	}
}

func writeTest(t *testing.T, name string, text []byte) {
	t.Helper()
	if err := os.WriteFile(name, text, 0o600); err != nil {
		t.Fatal(err)
	}
}
