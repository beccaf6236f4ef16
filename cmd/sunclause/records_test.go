package main

import (
	"crypto/ed25519"
	"crypto/rand"
	"crypto/x509"
	"encoding/pem"
	"os"
	"testing"
)

// TestRecordsPage runs every command of docs/records.md, in order, in a folder
// with a job.
func TestRecordsPage(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	commands := pageCommands(t, "records.md")
	if len(commands) != 8 {
		t.Fatalf("the page has %d commands", len(commands))
	}
	for _, line := range commands {
		if !withoutOpenssl(t, line, makeRecordKeys) && runLine(t, line) != passes {
			t.Fatalf("%s does not pass", line)
		}
	}
	altered, err := os.ReadFile("record.json")
	if err != nil {
		t.Fatal(err)
	}
	writeTest(t, "altered.json", append(altered, '\n'))
	checkRefused(t, map[string]string{
		"reproduce --signed-by record-public.pem --signature record.json.sig altered.json job.json": "the signature does not fit",
		"reproduce --signed-by record-public.pem altered.json job.json":                             "altered.json: signature altered.json.sig: no such file",
		"reproduce --signed-by record-private.pem record.json job.json":                             "the key is a private one",
		"record --sign record-public.pem --output x.json job.json":                                  "no private key in PEM",
	})
	for _, name := range []string{"x.json", "x.json.sig"} {
		if _, err := os.Stat(name); err == nil {
			t.Errorf("%s was written although the record could not be signed", name)
		}
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
