package earthing_test

import (
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/facttest"
)

func add(doc object, runs ...object) object {
	for _, r := range runs {
		doc["cables"] = append(doc["cables"].(list), r)
	}
	return doc
}

func TestBondSize(t *testing.T) {
	for _, c := range []struct {
		name string
		doc  object
		want float64
	}{
		{"thinnest on the way", house(), 10},
		{"a second way by a thicker conductor", add(house(), run("R5", "FR1", "MET", "bonding", "c16")), 16},
		{"a second way by a thinner conductor", add(house(), run("R5", "FR1", "MET", "bonding", "c4")), 10},
		{"a second way of unknown size", add(house(), run("R5", "FR1", "MET", "bonding", "unknown")), 10},
	} {
		facttest.Near(t, c.name, derive(t, c.doc).Frames[0].BondMm2, c.want, 0)
	}
	doc := house()
	facttest.At(doc, "cables", 2)["cable"] = "al16"
	facttest.Near(t, "16 mm² of aluminium as copper", derive(t, doc).Frames[0].BondMm2, 9.76, 1e-9)
	facttest.At(doc, "cables", 2)["conductors_per_pole"] = 2
	facttest.Near(t, "two of them; the earthing conductor is thinner", derive(t, doc).Frames[0].BondMm2, 16, 1e-9)
}

func TestBondUnknown(t *testing.T) {
	doc := house()
	doc["cables"] = doc["cables"].(list)[:2]
	f := derive(t, doc).Frames[0]
	facttest.Wants(t, "no run to the frame", f.BondMm2, "/cables")
	facttest.Wants(t, "what it is earthed through", f.EarthedThrough, "/cables")
	doc = house()
	delete(facttest.At(doc, "cables", 2), "cable")
	f = derive(t, doc).Frames[0]
	facttest.Wants(t, "cable not stated", f.BondMm2, "/cables/2/cable")
	doc = house()
	facttest.At(doc, "cables", 2)["cable"] = "unknown"
	f = derive(t, doc).Frames[0]
	facttest.Wants(t, "metal not stated", f.BondMm2, "/datasheets/cables/unknown/conductor")
}

func TestEarthedThrough(t *testing.T) {
	if got := derive(t, house()).Frames[0].EarthedThrough.Value(); got != "main_terminal" {
		t.Errorf("earthed through %q", got)
	}
	doc := house()
	facttest.At(doc, "earthing")["electrodes"] = list{object{"id": "EL1", "serves": "array"}}
	facttest.At(doc, "cables", 2)["from"] = "EL1"
	if got := derive(t, doc).Frames[0].EarthedThrough.Value(); got != "electrode" {
		t.Errorf("earthed through %q", got)
	}
}

func TestLaidBesidePower(t *testing.T) {
	doc := house()
	f := derive(t, doc).Frames[0].BesidePower
	facttest.Wants(t, "not stated", f, "/cables/1/laid_with", "/cables/2/laid_with")
	facttest.At(doc, "cables", 1)["laid_with"], facttest.At(doc, "cables", 2)["laid_with"] = "R4", "R1"
	facttest.Is(t, "beside DC and AC", derive(t, doc).Frames[0].BesidePower, true)
	facttest.At(doc, "cables", 2)["laid_with"] = "R2"
	facttest.Is(t, "beside an earthing conductor only", derive(t, doc).Frames[0].BesidePower, false)
}

// A thicker conductor anywhere never makes the way to earth thinner.
func TestThickerIsNeverWorse(t *testing.T) {
	sizes := []string{"c4", "c6", "c10", "c16"}
	rapid.Check(t, func(t *rapid.T) {
		doc := add(house(), run("R5", "FR1", "MET", "bonding", ""), run("R6", "FR1", "EB1", "bonding", ""))
		own := []int{1, 2, 4, 5}
		for _, i := range own {
			facttest.At(doc, "cables", i)["cable"] = rapid.SampledFrom(sizes).Draw(t, "size")
		}
		before := derive(t, doc).Frames[0].BondMm2.Value()
		facttest.At(doc, "cables", rapid.SampledFrom(own).Draw(t, "run"))["cable"] = "c16"
		if after := derive(t, doc).Frames[0].BondMm2.Value(); after < before {
			t.Errorf("%v mm² with one run thicker, %v before", after, before)
		}
	})
}
