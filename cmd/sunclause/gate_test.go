package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"

	"sunclause/schema/examples"
)

// TestGatePage does what docs/gate.md says, in a repository in which
// installations are added, altered, broken and taken away.
func TestGatePage(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	for _, needed := range []string{"git", "sh"} {
		if _, err := exec.LookPath(needed); err != nil {
			t.Skip("there is no ", needed)
		}
	}
	for _, name := range []string{"GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE"} { // set where a hook of git runs the tests
		t.Setenv(name, "")
		os.Unsetenv(name)
	}
	page, err := os.ReadFile("../../docs/gate.md")
	if err != nil {
		t.Fatal(err)
	}
	sound, faulty := examples.Text(t, examples.Cottage), examples.Text(t, examples.Faulty)
	t.Chdir(t.TempDir())
	for _, m := range fenced.FindAllStringSubmatch(string(page), -1) {
		writeGuideFile(t, m[2], m[3])
	}
	holdGateYAML(t)
	writeTest(t, "job.json", sound)
	record := strings.TrimSpace(string(page)[strings.Index(string(page), "    sunclause record"):])
	runLine(t, strings.Split(record, "\n")[0])

	git(t, "init", "-q")
	writeGuideFile(t, "jobs/old/installation.json", string(faulty)) // was there before; not looked at
	writeGuideFile(t, "jobs/gone.installation.json", string(sound))
	base := commit(t)
	gate(t, base, passes, "no installation has changed")

	writeGuideFile(t, "jobs/my house/installation.json", string(sound))
	writeGuideFile(t, "-v.installation.json", string(sound))
	git(t, "rm", "-q", "jobs/gone.installation.json")
	commit(t)
	gate(t, base, passes, "")
	holds(t, "sunclause.sarif", `"uri": "jobs/my%20house/installation.json"`, `"uri": "-v.installation.json"`)
	holds(t, "sunclause.junit.xml", `<testsuites name="sunclause"`)
	holds(t, "sunclause.md", "## Passes: GB-EX-01, as built")

	writeGuideFile(t, "jobs/new.installation.json", string(faulty))
	commit(t)
	gate(t, base, doesNotPass, "")
	holds(t, "sunclause.sarif", `"ruleId": "iec/string-voltage-inverter"`)
	holds(t, "sunclause.md", "## Does not pass: GB-EX-01, as built")

	writeGuideFile(t, "jobs/new.installation.json", "{")
	commit(t)
	gate(t, base, exitError, "jobs/new.installation.json:1:2: ")
	holds(t, "sunclause.sarif", `"executionSuccessful": false`, `"uri": "jobs/my%20house/installation.json"`)
	holds(t, "sunclause.junit.xml", `<failure type="could_not_be_checked"`)
	holds(t, "sunclause.md", "## Passes: GB-EX-01, as built", "## Could not be checked: `jobs/new.installation.json`", "2 pass, 0 do not pass, 1 could not be checked")
}

// holdGateYAML makes sure that the sketch of a job is YAML and runs the script.
func holdGateYAML(t *testing.T) {
	t.Helper()
	var job struct {
		Gate struct {
			Run     []string
			Publish map[string]string `yaml:"publish even if it fails"`
		}
	}
	if err := yaml.Unmarshal(readTest(t, "gate.yaml"), &job); err != nil {
		t.Fatal(err)
	}
	if len(job.Gate.Run) != 1 || job.Gate.Run[0] != `sh gate.sh "$BASE"` || len(job.Gate.Publish) != 3 {
		t.Errorf("%+v", job)
	}
	script := string(readTest(t, "gate.sh"))
	for _, name := range job.Gate.Publish {
		if !strings.Contains(script, "--output "+name) {
			t.Errorf("the script does not write %s", name)
		}
	}
}

func readTest(t *testing.T, name string) []byte {
	t.Helper()
	raw, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

// gate runs the script and looks at its exit status and what it says.
func gate(t *testing.T, base string, want int, says string) {
	t.Helper()
	c := exec.Command("sh", "gate.sh", base)
	text, err := c.CombinedOutput()
	if c.ProcessState == nil {
		t.Fatal(err)
	}
	if got := c.ProcessState.ExitCode(); got != want || !strings.Contains(string(text), says) {
		t.Errorf("exit status %d, not %d; it says: %s", got, want, text)
	}
}

func holds(t *testing.T, name string, texts ...string) {
	t.Helper()
	raw := string(readTest(t, name))
	for _, text := range texts {
		if !strings.Contains(raw, text) {
			t.Errorf("%s does not say %s", name, text)
		}
	}
}

// commit commits everything and gives the id of the commit.
func commit(t *testing.T) string {
	t.Helper()
	git(t, "add", "-A")
	git(t, "commit", "-q", "-m", "a change")
	return git(t, "rev-parse", "HEAD")
}

// git runs git by no settings but these.
func git(t *testing.T, args ...string) string {
	t.Helper()
	c := exec.Command("git", append([]string{"-c", "user.name=tester", "-c", "user.email=tester@test.invalid", "-c", "commit.gpgsign=false"}, args...)...)
	dir, err := filepath.Abs(".")
	if err != nil {
		t.Fatal(err)
	}
	c.Env = append(os.Environ(), "GIT_CONFIG_GLOBAL="+os.DevNull, "GIT_CONFIG_SYSTEM="+os.DevNull, "GIT_CEILING_DIRECTORIES="+filepath.Dir(dir))
	text, err := c.CombinedOutput()
	if err != nil {
		t.Fatalf("git %v: %v\n%s", args, err, text)
	}
	return strings.TrimSpace(string(text))
}
