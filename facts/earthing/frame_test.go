package earthing_test

import (
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/facttest"
)

// The method and the limits of 22 kΩ at 10 mA and 6.67 kΩ at 30 mA are those of
// IET Guidance Note 8 as forums of the trade quote them; 459 kΩ at 0.5 mA too.
func TestExtraneousLimit(t *testing.T) {
	for _, c := range []struct{ milliamps, want float64 }{{10, 22}, {30, 6.667}, {0.5, 459}} {
		b := rules()
		p := b.Parameters["body_current_max_ma"]
		p.Number = c.milliamps
		b.Parameters["body_current_max_ma"] = p
		facttest.Near(t, "limit", deriveBy(t, house(), b).Frames[0].LimitKohm, c.want, 0.001)
	}
}

func TestExtraneous(t *testing.T) {
	for _, c := range []struct {
		name    string
		kohm    float64
		touches any
		want    bool
	}{
		{"far above", 1800, false, false},
		{"just above", 22.1, false, false},
		{"at the limit", 22, false, true},
		{"touches metal, as if measured high", 1800, true, true},
		{"low, though nothing is said to touch", 0.001, nil, true},
	} {
		doc := house()
		frame(doc)["resistance_to_main_terminal_kohm"] = c.kohm
		if frame(doc)["touches_building_metal"] = c.touches; c.touches == nil {
			delete(frame(doc), "touches_building_metal")
		}
		facttest.Is(t, c.name, derive(t, doc).Frames[0].Extraneous, c.want)
	}
}

func TestExtraneousUnknown(t *testing.T) {
	doc := house()
	facttest.At(doc, "project")["stage"] = "as_built"
	delete(frame(doc), "resistance_to_main_terminal_kohm")
	f := derive(t, doc).Frames[0].Extraneous
	facttest.Wants(t, "not measured", f, "/earthing/frames/0/resistance_to_main_terminal_kohm")
	doc = house()
	delete(frame(doc), "touches_building_metal")
	f = derive(t, doc).Frames[0].Extraneous
	facttest.Wants(t, "measured high, touching not known", f, "/earthing/frames/0/touches_building_metal")
	doc = house()
	delete(facttest.At(doc, "ac", "supply"), "voltage_v")
	f = derive(t, doc).Frames[0].Extraneous
	facttest.Wants(t, "no voltage", f, "/ac/supply/voltage_v")
}

// A design asks for no reading: the connection decides. As built only the reading does.
func TestExtraneousAtDesign(t *testing.T) {
	for _, c := range []struct {
		connection, stage string
		want              bool
	}{{"main_bonding", "design", true}, {"lightning_bonding", "design", true}, {"none", "design", false}} {
		doc := house()
		facttest.At(doc, "project")["stage"] = c.stage
		delete(frame(doc), "resistance_to_main_terminal_kohm")
		frame(doc)["connection"] = c.connection
		facttest.Is(t, c.connection, derive(t, doc).Frames[0].Extraneous, c.want)
		facttest.At(doc, "project")["stage"] = "as_built"
		facttest.Wants(t, "as built", derive(t, doc).Frames[0].Extraneous, "/earthing/frames/0/resistance_to_main_terminal_kohm")
		frame(doc)["resistance_to_main_terminal_kohm"] = 5
		facttest.At(doc, "project")["stage"] = "design"
		facttest.Is(t, "read at design", derive(t, doc).Frames[0].Extraneous, true)
		delete(frame(doc), "resistance_to_main_terminal_kohm")
		delete(frame(doc), "connection")
		facttest.Wants(t, "connection not stated", derive(t, doc).Frames[0].Extraneous, "/earthing/frames/0/connection")
	}
}

// A lower resistance never makes a part less extraneous.
func TestLowerResistanceNeverHelps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		high := rapid.Float64Range(0.001, 100).Draw(t, "kΩ")
		low := high * rapid.Float64Range(0.001, 1).Draw(t, "share")
		of := func(kohm float64) bool {
			doc := house()
			frame(doc)["resistance_to_main_terminal_kohm"] = kohm
			return derive(t, doc).Frames[0].Extraneous.Value()
		}
		if of(high) && !of(low) {
			t.Errorf("extraneous at %v kΩ and not at %v", high, low)
		}
	})
}

func TestExposed(t *testing.T) {
	for class, want := range map[string]bool{"II": false, "III": false, "I": true, "0": true} {
		doc := house()
		facttest.At(doc, "datasheets", "modules", "M")["protection_class"] = class
		facttest.Is(t, "class "+class, derive(t, doc).Frames[0].Exposed, want)
	}
	doc := house()
	delete(facttest.At(doc, "datasheets", "modules", "M"), "protection_class")
	f := derive(t, doc).Frames[0].Exposed
	facttest.Wants(t, "class not stated", f, "/datasheets/modules/M/protection_class")
	doc = house()
	delete(frame(doc), "strings")
	f = derive(t, doc).Frames[0].Exposed
	facttest.Wants(t, "strings not stated", f, "/earthing/frames/0/strings")
}

func TestInvertersSeparated(t *testing.T) {
	for word, want := range map[string]bool{"none": false, "simple": true, "transformer": true} {
		doc := house()
		facttest.At(doc, "datasheets", "inverters", "I")["separation"] = word
		facttest.Is(t, word, derive(t, doc).Frames[0].InvertersSplit, want)
	}
	doc := house()
	delete(facttest.At(doc, "datasheets", "inverters", "I"), "separation")
	f := derive(t, doc).Frames[0].InvertersSplit
	facttest.Wants(t, "separation not stated", f, "/datasheets/inverters/I/separation")
	doc = house()
	doc["cables"] = doc["cables"].(list)[1:]
	f = derive(t, doc).Frames[0].InvertersSplit
	facttest.Wants(t, "string not traced", f, "/cables")
}
