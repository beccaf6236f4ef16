package ruleset_test

import (
	"archive/tar"
	"bytes"
	"compress/gzip"
	"context"
	"crypto/ecdsa"
	"crypto/elliptic"
	"crypto/rand"
	"crypto/rsa"
	"crypto/x509"
	"encoding/json"
	"encoding/pem"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/open-policy-agent/opa/v1/bundle"

	"sunclause/engine/ruleset"
	"sunclause/policies"
)

const houseManifest = "name: house\ntitle: An invented house set\nversion: 1.0.0\nextends: iec\nparameters: {}\nchanges: []\n"

// house is an invented rule set with a file of every kind.
func house() fstest.MapFS {
	return fstest.MapFS{
		"ruleset.yaml": {Data: []byte(houseManifest)},
		"pvstring.yaml": {Data: []byte(`requirements:
  - id: house/string-not-too-long
    title: No more modules in a string than we handle
    level: should
    subject: strings
    require: modules_in_series at_most 20
    remedy: Make two strings of it.
    source: {document: house rule, how: house rule}
`)},
		"tables/strings.yaml": {Data: []byte(`title: An invented table
source: {document: house rule, how: house rule}
columns:
  - {name: modules, title: modules in the string}
rows:
  - {modules: 20}
`)},
		"pvstring.rego":       {Data: []byte("package house.pvstring\n")},
		"pvstring_test.rego":  {Data: []byte("package house.pvstring_test\n")},
		"tests/pvstring.yaml": {Data: []byte("requirements: {}\n")},
		"README.md":           {Data: []byte("not judged by\n")},
	}
}

// keys makes a pair of keys in PEM.
func keys(t *testing.T, curve elliptic.Curve) (private, public []byte) {
	t.Helper()
	key, err := ecdsa.GenerateKey(curve, rand.Reader)
	if err != nil {
		t.Fatal(err)
	}
	der, err := x509.MarshalECPrivateKey(key)
	if err != nil {
		t.Fatal(err)
	}
	return asPEM("EC PRIVATE KEY", der), publicPEM(t, &key.PublicKey)
}

func publicPEM(t *testing.T, key any) []byte {
	t.Helper()
	der, err := x509.MarshalPKIXPublicKey(key)
	if err != nil {
		t.Fatal(err)
	}
	return asPEM("PUBLIC KEY", der)
}

func asPEM(kind string, der []byte) []byte {
	return pem.EncodeToMemory(&pem.Block{Type: kind, Bytes: der})
}

func seal(t *testing.T, fsys fstest.MapFS, private []byte) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := ruleset.Seal(&b, fsys, "house", private); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// entry is one entry of an archive.
type entry struct {
	tar.Header
	text string
}

func file(name, text string) entry {
	return entry{tar.Header{Name: name, Typeflag: tar.TypeReg, Mode: 0o644, Size: int64(len(text))}, text}
}

func entriesOf(t *testing.T, packed []byte) []entry {
	t.Helper()
	zip, err := gzip.NewReader(bytes.NewReader(packed))
	if err != nil {
		t.Fatal(err)
	}
	var all []entry
	for r := tar.NewReader(zip); ; {
		h, err := r.Next()
		if err == io.EOF {
			return all
		}
		if err != nil {
			t.Fatal(err)
		}
		text, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, entry{*h, string(text)})
	}
}

func packed(t *testing.T, all []entry) []byte {
	t.Helper()
	var b bytes.Buffer
	zip := gzip.NewWriter(&b)
	w := tar.NewWriter(zip)
	for _, e := range all {
		if e.Typeflag == tar.TypeReg {
			e.Size = int64(len(e.text))
		}
		if err := w.WriteHeader(&e.Header); err != nil {
			t.Fatal(err)
		}
		if _, err := io.WriteString(w, e.text); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	if err := zip.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// open loads an archive; a nil key is none.
func open(t *testing.T, archive, key []byte) (*ruleset.RuleSet, error) {
	t.Helper()
	name := filepath.Join(t.TempDir(), "house.tar.gz")
	if err := os.WriteFile(name, archive, 0o600); err != nil {
		t.Fatal(err)
	}
	if key == nil {
		return ruleset.Load(context.Background(), policies.FS, name)
	}
	return ruleset.Load(context.Background(), policies.FS, name, ruleset.WithKey(key))
}

// TestSealed holds a sealed set against the folder it was sealed from.
func TestSealed(t *testing.T) {
	private, public := keys(t, elliptic.P256())
	dir := t.TempDir()
	if err := os.CopyFS(dir, house()); err != nil {
		t.Fatal(err)
	}
	folder, err := ruleset.Load(context.Background(), policies.FS, dir)
	if err != nil {
		t.Fatal(err)
	}
	first, second := seal(t, house(), private), seal(t, house(), private)
	for _, archive := range [][]byte{first, second} {
		set, err := open(t, archive, public)
		if err != nil {
			t.Fatal(err)
		}
		if set.SHA256 != folder.SHA256 || set.Layers[0] != folder.Layers[0] {
			t.Errorf("sealed it is %s, as a folder %s", set.SHA256, folder.SHA256)
		}
	}
	a, b := entriesOf(t, first), entriesOf(t, second)
	names := ""
	for i := range a {
		names += a[i].Name + " "
		if same := a[i].text == b[i].text; same == (a[i].Name == ".signatures.json") {
			t.Errorf("%s: the same in both seals: %v", a[i].Name, same)
		}
		if a[i].ModTime.Unix() != 0 || a[i].Mode != 0o644 || a[i].Uname != "" {
			t.Errorf("%s tells when or by whom it was sealed: %+v", a[i].Name, a[i].Header)
		}
	}
	if names != "pvstring.rego pvstring.yaml ruleset.yaml tables/strings.yaml .signatures.json " {
		t.Errorf("the archive holds %s", names)
	}
}

// TestSealedAsOPA has OPA's own verification agree on what is signed.
func TestSealedAsOPA(t *testing.T) {
	private, public := keys(t, elliptic.P256())
	all := entriesOf(t, seal(t, house(), private))
	var s bundle.SignaturesConfig
	if err := json.Unmarshal([]byte(all[len(all)-1].text), &s); err != nil {
		t.Fatal(err)
	}
	config := bundle.NewVerificationConfig(map[string]*bundle.KeyConfig{"ruleset": {Key: string(public), Algorithm: "ES256"}}, "", "", nil)
	signed, err := bundle.VerifyBundleSignature(s, config)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range all[:len(all)-1] {
		if err := bundle.VerifyBundleFile(e.Name, *bytes.NewBufferString(e.text), signed); err != nil {
			t.Error(err)
		}
	}
	if len(signed) > 0 {
		t.Errorf("signed and not in the archive: %v", signed)
	}
}

// TestTampered lists what is done to archives, and what is said of it.
func TestTampered(t *testing.T) {
	private, public := keys(t, elliptic.P256())
	otherPrivate, otherPublic := keys(t, elliptic.P256())
	_, p384 := keys(t, elliptic.P384())
	rsaKey, err := rsa.GenerateKey(rand.Reader, 2048)
	if err != nil {
		t.Fatal(err)
	}
	good := seal(t, house(), private)
	others := entriesOf(t, seal(t, house(), otherPrivate))
	entries := func() []entry { return entriesOf(t, good) } // rego, rows, manifest, table, signature
	with := func(change func([]entry) []entry) []byte { return packed(t, change(entries())) }
	adding := func(e entry) []byte { return with(func(all []entry) []entry { return append(all, e) }) }
	signature := func(change func(string) string) []byte {
		return with(func(all []entry) []entry { all[4].text = change(all[4].text); return all })
	}
	rsaSigned := func() []byte {
		key := asPEM("RSA PRIVATE KEY", x509.MarshalPKCS1PrivateKey(rsaKey))
		token, err := bundle.GenerateSignedToken(nil, bundle.NewSigningConfig(string(key), "RS256", ""), "ruleset")
		if err != nil {
			t.Fatal(err)
		}
		return signature(func(string) string { return `{"signatures": ["` + token + `"]}` })
	}
	// A signature with the public key for its secret: refused, whatever it says.
	hmacSigned := func() []byte {
		token, err := bundle.GenerateSignedToken(nil, bundle.NewSigningConfig(string(public), "HS256", ""), "ruleset")
		if err != nil {
			t.Fatal(err)
		}
		return signature(func(string) string { return `{"signatures": ["` + token + `"]}` })
	}
	md5Signed := func() []byte {
		infos := []bundle.FileInfo{bundle.NewFile("pvstring.rego", "00", "MD5")}
		token, err := bundle.GenerateSignedToken(infos, bundle.NewSigningConfig(string(private), "ES256", ""), "ruleset")
		if err != nil {
			t.Fatal(err)
		}
		return signature(func(string) string { return `{"signatures": ["` + token + `"]}` })
	}
	for _, c := range []struct {
		does    string
		archive []byte
		key     []byte
		says    string
	}{
		{"no key", good, nil, "this archive is sealed; name the public key with --key"},
		{"another key", good, otherPublic, "sealed with another key"},
		{"a key of another curve", good, p384, "not an EC key on the curve P-256"},
		{"a key of another kind", good, publicPEM(t, &rsaKey.PublicKey), "not an EC key on the curve P-256"},
		{"the private key", good, private, "the key is a private one"},
		{"no key in the file", good, []byte("hello"), "no public key in PEM"},
		{"unsigned", with(func(all []entry) []entry { return all[:4] }), public, "this archive is not sealed"},
		{"unsigned, no key", with(func(all []entry) []entry { return all[:4] }), nil, "this archive is not sealed"},
		{"signature of another", with(func(all []entry) []entry { return append(all[:4], others[4]) }), public, "sealed with another key"},
		{"signature damaged", signature(func(s string) string { return s[:40] }), public, "does not hold one signature"},
		{"two signatures", signature(func(string) string { return `{"signatures": ["a", "b"]}` }), public, "does not hold one signature"},
		{"no token", signature(func(string) string { return `{"signatures": ["a"]}` }), public, `algorithm "none"`},
		{"signed by RS256", rsaSigned(), public, `algorithm "RS256"; only ES256`},
		{"signed by HS256", hmacSigned(), public, `algorithm "HS256"; only ES256`},
		{"hashed by MD5", md5Signed(), public, `hash of the kind "MD5"`},
		{"rows altered", with(func(all []entry) []entry {
			all[1].text = strings.Replace(all[1].text, "20", "29", 1)
			return all
		}), public, "after sealing, pvstring.yaml was altered"},
		{"Rego altered", with(func(all []entry) []entry { all[0].text += "x := 1\n"; return all }), public, "pvstring.rego was altered"},
		{"table altered", with(func(all []entry) []entry { all[3].text += "  - {modules: 30}\n"; return all }), public, "tables/strings.yaml was altered"},
		{"manifest altered by a comment", with(func(all []entry) []entry { all[2].text += "# x\n"; return all }), public, "ruleset.yaml was altered"},
		{"rows that cannot be parsed", with(func(all []entry) []entry { all[1].text = "]["; return all }), public, "pvstring.yaml was altered"},
		{"file added", adding(file("cable.yaml", "requirements: {}\n")), public, "cable.yaml was added"},
		{"table added", adding(file("tables/t.yaml", "x")), public, "tables/t.yaml was added"},
		{"file removed", with(func(all []entry) []entry { return all[1:] }), public, "pvstring.rego was removed"},
		{"file renamed", with(func(all []entry) []entry { all[0].Name = "cable.rego"; return all }), public, "cable.rego was added, pvstring.rego was removed"},
		{"file twice", adding(file("ruleset.yaml", houseManifest)), public, "two files called ruleset.yaml"},
		{"signature twice", adding(file(".signatures.json", "{}")), public, "two files called .signatures.json"},
		{"a test", adding(file("tests/pvstring.yaml", "x")), public, "no part of a rule set"},
		{"a name that leads out", adding(file("../house.yaml", "x")), public, "must lead neither out"},
		{"an absolute name", adding(file("/etc/house.yaml", "x")), public, "must lead neither out"},
		{"a name with a dot in it", adding(file("./house.yaml", "x")), public, "must lead neither out"},
		{"a link", adding(entry{tar.Header{Name: "cable.yaml", Typeflag: tar.TypeSymlink, Linkname: "/etc/passwd"}, ""}), public, "not a plain file"},
		{"a folder", adding(entry{tar.Header{Name: "tables", Typeflag: tar.TypeDir}, ""}), public, "not a plain file"},
		{"a large file", adding(file("cable.yaml", strings.Repeat(" ", 1<<20+1))), public, "at most 1048576 are read"},
		{"too large", with(func(all []entry) []entry {
			for _, n := range []string{"a", "b", "c", "d", "e"} {
				all = append(all, file(n+".yaml", strings.Repeat(" ", 1<<20)))
			}
			return all
		}), public, "too large"},
		{"too many files", with(func(all []entry) []entry {
			for i := range 501 {
				all = append(all, file("f"+strings.Repeat("x", i%90)+string(rune('a'+i/90))+".yaml", ""))
			}
			return all
		}), public, "more than 500 files"},
		{"cut short", good[:len(good)/2], public, "damaged"},
		{"no archive", []byte("hello, world"), public, "neither a folder nor an archive"},
		{"nothing", nil, public, "neither a folder nor an archive"},
		{"packed, but no archive", gzipped(t, strings.Repeat("hello ", 200)), public, "neither a folder nor an archive"},
		{"an empty archive", packed(t, nil), public, "not sealed"},
	} {
		t.Run(c.does, func(t *testing.T) {
			_, err := open(t, c.archive, c.key)
			if err == nil || !strings.Contains(err.Error(), c.says) {
				t.Errorf("%v; it should say: %s", err, c.says)
			}
		})
	}
}

func gzipped(t *testing.T, text string) []byte {
	t.Helper()
	var b bytes.Buffer
	zip := gzip.NewWriter(&b)
	if _, err := io.WriteString(zip, text); err != nil {
		t.Fatal(err)
	}
	if err := zip.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// TestNotSealable lists what cannot be sealed, or not with that key.
func TestNotSealable(t *testing.T) {
	private, public := keys(t, elliptic.P256())
	p384, _ := keys(t, elliptic.P384())
	manifest := func(text string) fstest.MapFS {
		set := house()
		set["ruleset.yaml"] = &fstest.MapFile{Data: []byte(text)}
		return set
	}
	for _, c := range []struct {
		does string
		set  fstest.MapFS
		key  []byte
		says string
	}{
		{"the public key", house(), public, "no private key in PEM"},
		{"a key of another curve", house(), p384, "of another kind"},
		{"a key that is none", house(), asPEM("PRIVATE KEY", []byte("x")), "cannot be read"},
		{"a path for a key", house(), []byte("private.pem"), "no private key in PEM"},
		{"builds on a folder", manifest(strings.Replace(houseManifest, "extends: iec", "extends: ../iec", 1)), private, `a sealed set cannot build on "../iec"`},
		{"no set", fstest.MapFS{}, private, "there is no ruleset.yaml"},
		{"a broken set", manifest("name: [\n"), private, "ruleset.yaml"},
	} {
		err := ruleset.Seal(io.Discard, c.set, "house", c.key)
		if err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v; it should say: %s", c.does, err, c.says)
		}
	}
}

// TestSealedAlone keeps a sealed set from building on a folder that happens to
// lie about where it is opened.
func TestSealedAlone(t *testing.T) {
	private, public := keys(t, elliptic.P256())
	set := house()
	set["ruleset.yaml"] = &fstest.MapFile{Data: []byte(strings.Replace(houseManifest, "extends: iec", "extends: nearby", 1))}
	_, err := open(t, seal(t, set, private), public)
	if err == nil || !strings.Contains(err.Error(), `a sealed set cannot build on "nearby"`) {
		t.Error(err)
	}
}

// TestKeyWithoutSeal keeps a key from seeming to verify what is not sealed.
func TestKeyWithoutSeal(t *testing.T) {
	_, public := keys(t, elliptic.P256())
	_, err := ruleset.Load(context.Background(), policies.FS, "iec", ruleset.WithKey(public))
	if err == nil || !strings.Contains(err.Error(), "there is nothing to verify with --key") {
		t.Error(err)
	}
}

// TestOnSealed has a folder build on a sealed set: the key is for that one.
func TestOnSealed(t *testing.T) {
	private, public := keys(t, elliptic.P256())
	dir := t.TempDir()
	write := func(name, text string) {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Mkdir(filepath.Join(dir, "branch"), 0o700); err != nil {
		t.Fatal(err)
	}
	write("house.tar.gz", string(seal(t, house(), private)))
	write("branch/ruleset.yaml", strings.NewReplacer("name: house", "name: branch", "extends: iec", "extends: ../house.tar.gz").Replace(houseManifest))
	branch := filepath.Join(dir, "branch")
	if _, err := ruleset.Load(context.Background(), policies.FS, branch); err == nil || !strings.Contains(err.Error(), "this archive is sealed") {
		t.Error(err)
	}
	set, err := ruleset.Load(context.Background(), policies.FS, branch, ruleset.WithKey(public))
	if err != nil {
		t.Fatal(err)
	}
	if len(set.Layers) != 3 || set.Layers[1].Name != "house" {
		t.Errorf("%+v", set.Layers)
	}
}
