package main

import (
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/x509"
	"encoding/pem"
	"os"
	"testing"
)

// TestSealingPage runs every command of docs/sealing.md, in order, in a folder
// with a new rule set and a job.
func TestSealingPage(t *testing.T) {
	commands := pageCommands(t, "sealing.md")
	if len(commands) != 7 {
		t.Fatalf("the page has %d commands", len(commands))
	}
	runLine(t, "sunclause ruleset new our-house")
	for _, line := range commands {
		if !withoutOpenssl(t, line, makeKeys) {
			runLine(t, line)
		}
	}
	altered, err := os.ReadFile("our-house.tar.gz")
	if err != nil {
		t.Fatal(err)
	}
	altered[len(altered)/2] ^= 1
	writeTest(t, "our-house.tar.gz", altered)
	checkRefused(t, map[string]string{
		"check --rules our-house.tar.gz --key public.pem job.json":  "the archive is damaged",
		"facts --rules our-house.tar.gz job.json":                   "the archive is damaged",
		"rules --rules our-house.tar.gz --key no-such.pem":          "key no-such.pem: no such file",
		"check --key public.pem job.json":                           "nothing to verify with --key",
		"ruleset seal our-house --key private.pem":                  "name a folder, a key and an archive",
		"ruleset seal gb --key private.pem --output gb.tar.gz":      "only a folder can be sealed",
		"ruleset seal our-house --key public.pem --output x.tar.gz": "no private key in PEM",
	})
	if _, err := os.Stat("x.tar.gz"); err == nil {
		t.Error("an archive was written although it could not be sealed")
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
