package working_test

import (
	"slices"
	"testing"

	"sunclause/facts/working"
	"sunclause/schema"
)

func TestNames(t *testing.T) {
	given := []string{"S2", "S1", "S2"}
	if n := working.List(given...); !n.Known() || !slices.Equal(n.Values(), []string{"S1", "S2"}) {
		t.Errorf("list of %v is %v", given, n.Values())
	}
	if !slices.Equal(given, []string{"S2", "S1", "S2"}) {
		t.Errorf("the ids given were put into another order: %v", given)
	}
	if n := working.List(); !n.Known() || len(n.Values()) != 0 {
		t.Error("an empty list is not known to be empty")
	}
	if n := working.UnknownList("/cables"); n.Known() || !slices.Equal(working.Pointers(n.Missing()), []string{"/cables"}) {
		t.Error("an unknown list is known, or does not say why not")
	}
}

func TestStatedWords(t *testing.T) {
	if w := working.StatedText(schema.NewText("/t", "mono_si")); !w.Known() || w.Value() != "mono_si" || w.At() != "/t" || w.Missing() != nil {
		t.Errorf("stated text: %+v", w)
	}
	if w := working.StatedText(schema.Text{}); w.Known() || len(w.Missing()) != 1 {
		t.Errorf("text left out: %+v", w)
	}
	if f := working.StatedFlag(schema.NewFlag("/f", false)); !f.Known() || f.Value() || f.At() != "/f" || f.Missing() != nil {
		t.Errorf("stated flag: %+v", f)
	}
	if f := working.StatedFlag(schema.Flag{}); f.Known() || len(f.Missing()) != 1 {
		t.Errorf("flag left out: %+v", f)
	}
}

func TestIsStated(t *testing.T) {
	if f := working.IsStated(schema.NewText("/t", "no")); !f.Known() || !f.Value() || f.At() != "/t" {
		t.Errorf("a text that is stated: %+v", f)
	}
	if f := working.IsStated(schema.Text{}); f.Known() || len(f.Missing()) != 1 {
		t.Errorf("a text left out: %+v", f)
	}
}

func TestLength(t *testing.T) {
	if n := working.Length("n", []string{"a", "b"}, "/list"); !n.Known() || n.Value() != 2 || n.Symbol() != "n" || n.At() != "/list" {
		t.Errorf("a list of two: %+v", n)
	}
	if n := working.Length("n", []string{}, "/list"); !n.Known() || n.Value() != 0 {
		t.Errorf("a list stated empty: %+v", n)
	}
	if n := working.Length[string]("n", nil, "/list"); n.Known() || !slices.Equal(working.Pointers(n.Missing()), []string{"/list"}) {
		t.Errorf("a list left out: %+v", n)
	}
}
