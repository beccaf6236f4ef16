package main

import (
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/x509"
	"encoding/pem"
	"os"
	"os/exec"
	"regexp"
	"strings"
	"testing"
)

// TestSealingPage runs every command of docs/sealing.md, in order, in a folder
// with a new rule set and a job.
func TestSealingPage(t *testing.T) {
	page, err := os.ReadFile("../../docs/sealing.md")
	if err != nil {
		t.Fatal(err)
	}
	job, err := os.ReadFile("../../testdata/gb-island-cottage/installation.json")
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir(t.TempDir())
	writeTest(t, "job.json", job)
	runLine(t, "sunclause ruleset new our-house")
	commands := regexp.MustCompile(`(?m)^    ((?:openssl|sunclause) .*)$`).FindAllStringSubmatch(string(page), -1)
	if len(commands) != 7 {
		t.Fatalf("the page has %d commands", len(commands))
	}
	for _, c := range commands {
		runLine(t, c[1])
	}
	altered, err := os.ReadFile("our-house.tar.gz")
	if err != nil {
		t.Fatal(err)
	}
	altered[len(altered)/2] ^= 1
	writeTest(t, "our-house.tar.gz", altered)
	for args, says := range map[string]string{
		"check --rules our-house.tar.gz --key public.pem job.json":  "the archive is damaged",
		"facts --rules our-house.tar.gz job.json":                   "the archive is damaged",
		"rules --rules our-house.tar.gz --key no-such.pem":          "key no-such.pem: no such file",
		"check --key public.pem job.json":                           "nothing to verify with --key",
		"ruleset seal our-house --key private.pem":                  "name a folder, a key and an archive",
		"ruleset seal gb --key private.pem --output gb.tar.gz":      "only a folder can be sealed",
		"ruleset seal our-house --key public.pem --output x.tar.gz": "no private key in PEM",
	} {
		_, errs, status := typed(t, strings.Fields(args)...)
		if status != couldNot || !strings.Contains(errs, says) {
			t.Errorf("sunclause %s: status %d: %s; it should say: %s", args, status, errs, says)
		}
	}
	if _, err := os.Stat("x.tar.gz"); err == nil {
		t.Error("an archive was written although it could not be sealed")
	}
}

func runLine(t *testing.T, line string) {
	t.Helper()
	if args, ours := strings.CutPrefix(line, "sunclause "); ours {
		if _, errs, status := typed(t, strings.Fields(args)...); status == couldNot {
			t.Fatalf("%s: %s", line, errs)
		}
		return
	}
	fields := strings.Fields(line)
	if _, err := exec.LookPath(fields[0]); err != nil {
		t.Logf("not run, for want of %s; keys made in Go: %s", fields[0], line)
		makeKeys(t)
		return
	}
	if text, err := exec.Command(fields[0], fields[1:]...).CombinedOutput(); err != nil {
		t.Fatalf("%s: %v\n%s", line, err, text)
	}
}

// makeKeys makes the keys as openssl would.
func makeKeys(t *testing.T) {
	t.Helper()
	key, err := ecdsa.GenerateKey(elliptic.P256(), rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	private, err := x509.MarshalECPrivateKey(key)
	if err != nil {
		t.Fatal(err)
	}
	public, err := x509.MarshalPKIXPublicKey(&key.PublicKey)
	if err != nil {
		t.Fatal(err)
	}
	writeTest(t, "private.pem", pem.EncodeToMemory(&pem.Block{Type: "EC PRIVATE KEY", Bytes: private}))
	writeTest(t, "public.pem", pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: public}))
}

func writeTest(t *testing.T, name string, text []byte) {
	t.Helper()
	if err := os.WriteFile(name, text, 0o600); err != nil {
		t.Fatal(err)
	}
}
