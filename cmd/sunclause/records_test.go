package main

import (
	"crypto/ed25519"
	"crypto/rand"
	"crypto/x509"
	"encoding/pem"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"
)

// TestRecordsPage runs every command of docs/records.md, in order, in a folder
// with a job.
func TestRecordsPage(t *testing.T) {
	page, err := os.ReadFile("../../docs/records.md")
	if err != nil {
		t.Fatal(err)
	}
	job, err := os.ReadFile("../../testdata/gb-island-cottage/installation.json")
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir(t.TempDir())
	writeTest(t, "job.json", job)
	commands := regexp.MustCompile(`(?m)^    ((?:openssl|sunclause) .*)$`).FindAllStringSubmatch(string(page), -1)
	if len(commands) != 8 {
		t.Fatalf("the page has %d commands", len(commands))
	}
	for _, c := range commands {
		runRecordLine(t, c[1])
	}
	altered, err := os.ReadFile("record.json")
	if err != nil {
		t.Fatal(err)
	}
	writeTest(t, "altered.json", append(altered, '\n'))
	for args, says := range map[string]string{
		"reproduce --signed-by record-public.pem --signature record.json.sig altered.json job.json": "the signature does not fit",
		"reproduce --signed-by record-public.pem altered.json job.json":                             "altered.json: signature altered.json.sig: no such file",
		"reproduce --signed-by record-private.pem record.json job.json":                             "the key is a private one",
		"record --sign record-public.pem --output x.json job.json":                                  "no private key in PEM",
	} {
		_, errs, status := typed(t, strings.Fields(args)...)
		if status != couldNot || !strings.Contains(errs, says) {
			t.Errorf("sunclause %s: status %d: %s; it should say: %s", args, status, errs, says)
		}
	}
	for _, name := range []string{"x.json", "x.json.sig"} {
		if _, err := os.Stat(name); err == nil {
			t.Errorf("%s was written although the record could not be signed", name)
		}
	}
}

// runRecordLine runs a command of the page. Without openssl the keys are made in
// Go, and its verification is left out.
func runRecordLine(t *testing.T, line string) {
	t.Helper()
	if args, ours := strings.CutPrefix(line, "sunclause "); ours {
		if _, errs, status := typed(t, strings.Fields(args)...); status != passes {
			t.Fatalf("%s: %s", line, errs)
		}
		return
	}
	fields := strings.Fields(line)
	if _, err := exec.LookPath(fields[0]); err != nil {
		t.Logf("not run, for want of %s: %s", fields[0], line)
		if fields[1] == "genpkey" {
			makeRecordKeys(t)
		}
		return
	}
	if text, err := exec.Command(fields[0], fields[1:]...).CombinedOutput(); err != nil {
		t.Fatalf("%s: %v\n%s", line, err, text)
	}
}

// makeRecordKeys makes the keys as openssl would.
func makeRecordKeys(t *testing.T) {
	t.Helper()
	public, private, err := ed25519.GenerateKey(rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	der, err := x509.MarshalPKCS8PrivateKey(private)
	if err != nil {
		t.Fatal(err)
	}
	open, err := x509.MarshalPKIXPublicKey(public)
	if err != nil {
		t.Fatal(err)
	}
	writeTest(t, "record-private.pem", pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: der}))
	writeTest(t, "record-public.pem", pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: open}))
}
