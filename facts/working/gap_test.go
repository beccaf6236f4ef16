package working_test

import (
	"fmt"
	"testing"

	"sunclause/facts/working"
	"sunclause/schema"
)

// TestSpoken holds the sentence of each reason: what is stated and why it does not
// serve, and after it what is not stated.
func TestSpoken(t *testing.T) {
	service := working.KnownText("ac", "/cables/0/service")
	path := working.KnownText("pv_string", "/strings/0")
	for want, gaps := range map[string][]working.Gap{
		"what it depends on is not known":                  {},
		"strings is not stated":                            {working.Unstated("/strings")},
		"a, b, c, d and 2 more are not stated":             {working.Unstated("/a"), working.Unstated("/b"), working.Unstated("/c"), working.Unstated("/d"), working.Unstated("/e"), working.Unstated("/f")},
		"the rule set has no table t is not stated":        {working.Unstated("the rule set has no table t")},
		"strings[0] leads on by more than one way: R1, R2": {working.SeveralAnswers("/strings/0", "R1", "R2")},
		"cables[0].service is stated as ac, but by strings[0] it is pv_string; site is not stated": {
			working.Unstated("/site"), working.Disagreement(service, path)},
		"a is stated as x and b is stated as y, for which the table “T” has no row": {
			{At: "/a", Why: working.OffTable, Stated: "x", With: "T"}, {At: "/b", Why: working.OffTable, Stated: "y", With: "T"}},
		"l is stated as 9 m: that makes n = 3, for which the table “T” has no row": {{At: "/l", Why: working.OffTable, Stated: "9 m", With: "T", Says: "n = 3"}},
		"a is stated, and has no row of kind x":                                    {working.OffList("/a", "row of kind x")},
		"frames is stated, and has no frame of S1, of which strings[0] speaks":     {{At: "/frames", Why: working.LacksKind, Says: "frame of S1", With: "/strings/0"}},
		"f is stated as 5 Hz, which is unlikely (expected: 45 to 65 Hz)":           {{At: "/f", Why: working.Unlikely, Stated: "5 Hz", Says: "45 to 65 Hz"}},
		"s is stated as ac, and nothing else bears it out":                         {{At: "/s", Why: working.Unconfirmed, Stated: "ac"}},
		"n is stated as 0, with which there is no answer":                          {{At: "/n", Why: working.NoAnswer, Stated: "0"}},
	} {
		if got := working.Spoken(gaps); got != want {
			t.Errorf("%v: %q, want %q", gaps, got, want)
		}
	}
}

// TestWordAgainstDerived holds a word of the document against what is derived, in
// every state of both.
func TestWordAgainstDerived(t *testing.T) {
	ac, dc := working.KnownText("ac", "/word"), working.KnownText("dc", "/graph")
	acToo, noWord, noGraph := working.KnownText("ac", "/graph"), working.UnknownText("/word"), working.UnknownText("/cables")
	for name, c := range map[string]struct {
		stated, derived   working.Text
		agreed, confirmed string
	}{
		"they agree":       {ac, acToo, "ac", "ac"},
		"they disagree":    {ac, dc, "[/word disagrees ac /graph dc]", "[/word disagrees ac /graph dc]"},
		"only the word":    {ac, noGraph, "ac", "[/cables /word unconfirmed ac]"},
		"only the circuit": {noWord, dc, "dc", "dc"},
		"neither":          {noWord, noGraph, "[/word]", "[/word]"},
	} {
		if got := shownText(working.Agreed(c.stated, c.derived)); got != c.agreed {
			t.Errorf("%s: agreed on %s, want %s", name, got, c.agreed)
		}
		if got := shownText(working.Confirmed(c.stated, c.derived)); got != c.confirmed {
			t.Errorf("%s: confirmed is %s, want %s", name, got, c.confirmed)
		}
	}
}

func shownText(w working.Text) string {
	if w.Known() {
		return w.Value()
	}
	return fmt.Sprint(w.Missing())
}

func TestFlagAgainstDerived(t *testing.T) {
	yes, no := working.KnownFlag(true, "/word"), working.KnownFlag(false, "/circuits")
	if f := working.AgreedFlag(yes, no); f.Known() || fmt.Sprint(f.Missing()) != "[/word disagrees yes /circuits no]" {
		t.Errorf("yes against no: %v", f)
	}
	if f := working.AgreedFlag(yes, working.UnknownFlag("/circuits")); !f.Known() || !f.Value() || f.At() != "/word" {
		t.Errorf("yes against nothing: %v", f)
	}
	if f := working.ConfirmedFlag(yes, working.UnknownFlag("/circuits")); f.Known() {
		t.Errorf("a word alone is confirmed: %v", f)
	}
	if f := working.ConfirmedFlag(working.UnknownFlag("/word"), no); !f.Known() || f.Value() {
		t.Errorf("what is derived, without a word: %v", f)
	}
}

func TestNumberAgainstDerived(t *testing.T) {
	ten := working.Stated("l", "m", schema.NewNumber("/word", 10))
	for derived, known := range map[float64]bool{9.1: true, 11.2: false, 8.8: false} {
		n := working.AgreedNumber(ten, working.Stated("d", "m", schema.NewNumber("/plan", derived)), 0.1)
		if n.Known() != known || known && n.Value() != 10 {
			t.Errorf("10 m against %v m: known is %t", derived, n.Known())
		}
		if want := fmt.Sprintf("[/word disagrees 10 m /plan %s m]", working.Plain(derived)); !known && fmt.Sprint(n.Missing()) != want {
			t.Errorf("10 m against %v m: %v, want %s", derived, n.Missing(), want)
		}
	}
	if n := working.AgreedNumber(ten, working.Unknown("d", "m", "/plan"), 0.1); n.Value() != 10 {
		t.Errorf("10 m against nothing: %v", n.Value())
	}
}
