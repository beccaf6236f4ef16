package record_test

import (
	"bytes"
	"context"
	"crypto/ed25519"
	"crypto/x509"
	"encoding/json"
	"encoding/pem"
	"fmt"
	"os"
	"strings"
	"testing"

	"sunclause/engine/judge"
	"sunclause/engine/record"
	"sunclause/engine/report"
	"sunclause/engine/ruleset"
	"sunclause/facts/facttest"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// recorded judges a document and makes the record of it.
func recorded(t testing.TB, rules, name string, text []byte, o judge.Options) *record.Record {
	t.Helper()
	set, err := ruleset.Load(context.Background(), policies.FS, rules)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := schema.Decode(name, text)
	if err != nil {
		t.Fatal(err)
	}
	r, err := judge.Check(context.Background(), set, doc, o)
	if err != nil {
		t.Fatal(err)
	}
	return record.Of(r, o, "0.0.0", report.Cautions)
}

const shedRules = "../../testdata/formats/rules"

func shed(t testing.TB) []byte {
	t.Helper()
	text, err := os.ReadFile("../../testdata/formats/job.json")
	if err != nil {
		t.Fatal(err)
	}
	return text
}

func shedRecord(t testing.TB) *record.Record {
	t.Helper()
	return recorded(t, shedRules, "job.json", shed(t), judge.Options{})
}

func writtenRecord(t testing.TB, rec *record.Record) []byte {
	t.Helper()
	var text bytes.Buffer
	if err := report.Record(&text, rec); err != nil {
		t.Fatal(err)
	}
	return text.Bytes()
}

// TestRecordKeepsItsSchema writes records, reads them back under their schema,
// and finds each identical to what it was made of.
func TestRecordKeepsItsSchema(t *testing.T) {
	for _, c := range []struct {
		rules, name string
		text        []byte
		options     judge.Options
	}{
		{shedRules, "job.json", shed(t), judge.Options{}},
		{shedRules, "job.json", shed(t), judge.Options{Strict: true, Date: "2026-05-01"}},
		{"gb", examples.Cottage, examples.Text(t, examples.Cottage), judge.Options{}},
		{"gb", examples.Faulty, examples.Text(t, examples.Faulty), judge.Options{}},
		{"../../policies/house-example", examples.Faulty, examples.Text(t, examples.Faulty), judge.Options{}},
		{"gb", examples.Warehouse, examples.Text(t, examples.Warehouse), judge.Options{}},
	} {
		if c.name == examples.Warehouse && !facttest.Thorough() {
			continue // it is large
		}
		rec := recorded(t, c.rules, c.name, c.text, c.options)
		rec.Time = "2026-03-02T10:30:00+01:00"
		back, err := record.Read("record.json", writtenRecord(t, rec))
		if err != nil {
			t.Fatalf("%s by %s: %v", c.name, c.rules, err)
		}
		if back.Options != rec.Options || back.Time != rec.Time {
			t.Errorf("%s by %s: options or time got lost", c.name, c.rules)
		}
		if came := record.Reproduce(back, recorded(t, c.rules, c.name, c.text, c.options)); !came.Identical || len(came.Notes) > 0 {
			t.Errorf("%s by %s: %+v", c.name, c.rules, came)
		}
	}
}

// stated are the members of a record that say what its maker states, and that
// no new check can bear out.
var stated = map[string]bool{"time": true, "tool.version": true, "document.file": true, "options.strict": true, "options.date": true}

// TestReproduceSeesEveryChange changes a record in one place at a time: in each
// it is refused, or found to differ.
func TestReproduceSeesEveryChange(t *testing.T) {
	anew := shedRecord(t)
	var tree any
	if err := json.Unmarshal(writtenRecord(t, shedRecord(t)), &tree); err != nil {
		t.Fatal(err)
	}
	tried := 0
	eachLeaf(tree, "", func(path string, set func(any), was any) {
		if stated[path] || strings.HasPrefix(path, "cautions") {
			return
		}
		tried++
		defer set(was)
		set(altered(was))
		text, err := json.Marshal(tree)
		if err != nil {
			t.Fatal(err)
		}
		rec, err := record.Read("record.json", text)
		if err == nil && record.Reproduce(rec, anew).Identical {
			t.Errorf("%s: %v for %v is not seen", path, altered(was), was)
		}
	})
	if tried < 80 {
		t.Errorf("only %d places tried", tried)
	}
}

// eachLeaf visits the values of a tree that have none below them.
func eachLeaf(v any, path string, visit func(path string, set func(any), was any)) {
	step := func(name string, sub any, set func(any)) {
		at := strings.TrimPrefix(path+"."+name, ".")
		switch sub.(type) {
		case map[string]any, []any:
			eachLeaf(sub, at, visit)
		default:
			visit(at, set, sub)
		}
	}
	switch v := v.(type) {
	case map[string]any:
		for name, sub := range v {
			step(name, sub, func(x any) { v[name] = x })
		}
	case []any:
		for i, sub := range v {
			step(fmt.Sprint(i), sub, func(x any) { v[i] = x })
		}
	}
}

func altered(was any) any {
	switch v := was.(type) {
	case string:
		return v + "x"
	case float64:
		return v + 1e-9
	case bool:
		return !v
	}
	return "x"
}

// TestReproduceTakesAwayAndAdds takes outcomes out of a record, states one
// twice, and adds what there is not.
func TestReproduceTakesAwayAndAdds(t *testing.T) {
	anew := shedRecord(t)
	for what, change := range map[string]func(*record.Record){
		"an outcome taken out": func(r *record.Record) { r.Parts[1].Outcomes = r.Parts[1].Outcomes[1:] },
		"a part taken out":     func(r *record.Record) { r.Parts = r.Parts[1:] },
		"an outcome twice": func(r *record.Record) {
			r.Parts[1].Outcomes = append(r.Parts[1].Outcomes, r.Parts[1].Outcomes[0])
		},
		"a part added": func(r *record.Record) {
			r.Parts = append(r.Parts, record.Part{Subject: "S9", Outcomes: r.Parts[1].Outcomes})
		},
		"another rule set":   func(r *record.Record) { r.RuleSet.Layers = append(r.RuleSet.Layers, ruleset.LayerInfo{Name: "x"}) },
		"a change of a rule": func(r *record.Record) { r.RuleSet.Changes = append(r.RuleSet.Changes, ruleset.Change{Set: "x"}) },
	} {
		rec := shedRecord(t)
		change(rec)
		if record.Reproduce(rec, anew).Identical {
			t.Errorf("%s is not seen", what)
		}
	}
}

// TestReproduceNotesTheVersion makes sure that another release is told and is
// no difference.
func TestReproduceNotesTheVersion(t *testing.T) {
	old := shedRecord(t)
	old.Tool.Version = "0.0.1"
	came := record.Reproduce(old, shedRecord(t))
	if !came.Identical || len(came.Notes) != 1 || came.Notes[0] != "the record was made by sunclause 0.0.1, and reproduced by 0.0.0" {
		t.Errorf("%+v", came)
	}
}

// TestReadRecordRefuses refuses what is no record, with the place.
func TestReadRecordRefuses(t *testing.T) {
	sound := string(writtenRecord(t, shedRecord(t)))
	for _, c := range []struct{ old, new, says string }{
		{sound, "{}", `lacks "record_version"`},
		{sound, "", "record.json:1:1: "},
		{`"passes": false`, `"passes": false, "passes": true`, `"passes" stands twice`},
		{`"passes": false`, `"passed": false`, "record.json:"},
		{`"record_version": 2`, `"record_version": 3`, "record_version"},
		{`"outcome": "met"`, `"outcome": "fine"`, "outcome"},
	} {
		_, err := record.Read("record.json", []byte(strings.Replace(sound, c.old, c.new, 1)))
		if err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%.40s: %v", c.new, err)
		}
	}
}

// signingKeys makes an Ed25519 pair in PEM out of a seed.
func signingKeys(t testing.TB, seed byte) (private, public []byte) {
	t.Helper()
	key := ed25519.NewKeyFromSeed(bytes.Repeat([]byte{seed}, ed25519.SeedSize))
	der, err := x509.MarshalPKCS8PrivateKey(key)
	if err != nil {
		t.Fatal(err)
	}
	open, err := x509.MarshalPKIXPublicKey(key.Public())
	if err != nil {
		t.Fatal(err)
	}
	return pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: der}), pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: open})
}

func TestSignRecord(t *testing.T) {
	private, public := signingKeys(t, 1)
	_, other := signingKeys(t, 2)
	raw := writtenRecord(t, shedRecord(t))
	signature, err := record.Sign(raw, private)
	if err != nil {
		t.Fatal(err)
	}
	if again, _ := record.Sign(raw, private); !bytes.Equal(signature, again) {
		t.Error("two signatures of the same differ")
	}
	if err := record.Verify(raw, signature, public); err != nil {
		t.Error(err)
	}
	altered := bytes.Replace(raw, []byte("not_met"), []byte("met"), 1)
	for _, c := range []struct {
		what           string
		raw, sig, open []byte
		says           string
	}{
		{"an altered record", altered, signature, public, "the signature does not fit"},
		{"a longer record", append(bytes.Clone(raw), '\n'), signature, public, "the signature does not fit"},
		{"another key", raw, signature, other, "the signature does not fit"},
		{"a short signature", raw, signature[1:], public, "the signature does not fit"},
		{"no signature", raw, nil, public, "the signature does not fit"},
		{"the private key", raw, signature, private, "the key is a private one"},
		{"no key", raw, signature, []byte("x"), "no public key in PEM"},
		{"a damaged key", raw, signature, pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: []byte("x")}), "cannot be read"},
	} {
		if err := record.Verify(c.raw, c.sig, c.open); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v", c.what, err)
		}
	}
	for key, says := range map[string]string{
		string(public): "no private key in PEM",
		string(pem.EncodeToMemory(&pem.Block{Type: "PRIVATE KEY", Bytes: []byte("x")})): "cannot be read",
	} {
		if _, err := record.Sign(raw, []byte(key)); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%v", err)
		}
	}
}
