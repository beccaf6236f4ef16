package accircuit_test

import (
	"testing"

	"sunclause/facts/facttest"
)

func TestResidualDeviceFitted(t *testing.T) {
	doc := house()
	way := facttest.At(doc, "ac", "boards", 0, "ways", 1)
	facttest.Is(t, "none, as stated", one(t, doc, laid{}).RCDFitted, false)
	delete(way, "rcd_fitted")
	open(t, "nothing stated", one(t, doc, laid{}).RCDFitted)
	facttest.At(doc, "datasheets", "protective_devices")["RCD"] = object{"kind": "rccb", "rcd_type": "A", "residual_current_ma": 30, "opens_neutral": true, "flow": "unidirectional"}
	way["rcd"] = "RCD"
	f := one(t, doc, laid{})
	facttest.Is(t, "the one named", f.RCDFitted, true)
	facttest.Is(t, "one-way through it", f.OneWayOnly, true)
	facttest.Near(t, "grade of type A", f.RCDGrade, 2, 0)
	facttest.Near(t, "leakage 4 of 30 mA", f.LeakageSharePct, 13.333, 0.001)
	facttest.Is(t, "opens the neutral", f.RCDOpensNeutral, true)
	delete(way, "rcd")
	way["rcd_fitted"] = true
	f = one(t, doc, laid{})
	facttest.Wants(t, "which one is not stated", f.ResidualMa, "/ac/boards/0/ways/1/rcd")
	delete(way, "device")
	way["rcd_fitted"] = false
	open(t, "the device of the way is not stated", one(t, doc, laid{}).RCDFitted)
}

// Type B is not needed with separation, nor where the maker rules a DC fault
// current out (BS 7671 712.411.3.2.1.2, from memory).
func TestTypeBNeeded(t *testing.T) {
	for _, c := range []struct {
		separation, ruledOut any
		want                 string
	}{
		{"none", false, "yes"}, {"none", true, "no"}, {"simple", false, "no"}, {"transformer", nil, "no"},
		{nil, true, "no"}, {nil, false, "open"}, {"none", nil, "open"}, {nil, nil, "open"},
	} {
		doc := house()
		sheet := facttest.At(doc, "datasheets", "inverters", "I")
		for name, v := range map[string]any{"separation": c.separation, "rcd_type_b_not_required": c.ruledOut} {
			delete(sheet, name)
			if v != nil {
				sheet[name] = v
			}
		}
		expect(t, c, one(t, doc, laid{}).RCDTypeBNeeded, c.want)
	}
}

// A device marked line and load lets power pass one way only unless its maker
// declares otherwise (BS 7671:2018+A3:2024 530.3.201 as quoted by the trade).
func TestOneWay(t *testing.T) {
	for _, c := range []struct {
		flow, declared, marked any
		want                   string
	}{
		{"unidirectional", nil, nil, "yes"}, {"bidirectional", true, true, "no"}, {"bidirectional", false, false, "no"}, {"bidirectional", false, true, "yes"},
		{"bidirectional", nil, true, "open"}, {"bidirectional", nil, false, "no"}, {"bidirectional", nil, nil, "open"}, {"not_stated", false, true, "yes"},
		{"not_stated", false, false, "no"}, {nil, true, false, "open"},
	} {
		doc := house()
		d := facttest.At(doc, "datasheets", "protective_devices", "D")
		for name, v := range map[string]any{"flow": c.flow, "flow_declared_by_maker": c.declared, "line_load_marked": c.marked} {
			delete(d, name)
			if v != nil {
				d[name] = v
			}
		}
		expect(t, c, one(t, doc, laid{}).OneWayOnly, c.want)
	}
}

// A cable less than 50 mm deep in a wall, without protection against nails,
// needs additional protection (BS 7671 522.6.202, from memory).
func TestConcealed(t *testing.T) {
	for _, c := range []struct {
		place             any
		depth, protection any
		want              string
	}{
		{"indoors_concealed", 50, false, "no"}, {"indoors_concealed", 49, false, "yes"}, {"wall_cavity", 20, true, "no"}, {"indoors_surface", nil, nil, "no"},
		{"wall_cavity", nil, false, "open"}, {"wall_cavity", 20, nil, "open"}, {nil, 20, false, "open"}, {nil, 20, true, "no"},
	} {
		doc := house()
		s := facttest.At(doc, "cables", 1, "segments", 0)
		for name, v := range map[string]any{"place": c.place, "concealed_depth_mm": c.depth, "mechanically_protected": c.protection} {
			delete(s, name)
			if v != nil {
				s[name] = v
			}
		}
		expect(t, c, one(t, doc, laid{}).AdditionalNeeded, c.want)
	}
	doc := house()
	facttest.At(doc, "ac", "circuits", 0)["sockets"] = true
	facttest.Is(t, "with sockets", one(t, doc, laid{}).AdditionalNeeded, true)
}

// A residual current device or a one-way device before the board counts for what
// hangs on it: its fault current and its power pass it (BS 7671:2018+A3:2024 530.3.201
// as quoted by the trade; 531.3 from memory).
func TestDevicesBeforeTheBoard(t *testing.T) {
	doc := house()
	sheets := facttest.At(doc, "datasheets", "protective_devices")
	sheets["MAIN"] = object{"kind": "rccb", "rated_a": 80, "rcd_type": "AC", "residual_current_ma": 100, "opens_neutral": true, "time_delayed": true, "flow": "unidirectional"}
	board := facttest.At(doc, "ac", "boards", 0)
	board["incoming_device"] = "MAIN"
	f := derive(t, doc, laid{})
	c := f.Circuits[0]
	facttest.Is(t, "fitted", c.RCDFitted, true)
	facttest.Is(t, "found", c.RCDFound, true)
	facttest.Is(t, "as stated", c.RCDStated, false)
	facttest.Near(t, "grade of type AC", c.RCDGrade, 1, 0)
	facttest.Near(t, "its current", c.ResidualMa, 100, 0)
	facttest.Is(t, "one-way before", c.OneWayBefore, true)
	facttest.Is(t, "not that of the way", c.OneWayOnly, false)
	facttest.Is(t, "no overcurrent device", f.Boards[0].IncomingOvercurrent, false)
	facttest.Wants(t, "its rated current guards nothing", f.Boards[0].IncomingA, "/ac/boards/0/incoming_device")
	open(t, "whether way 1 is in use", c.RCDShared)
	facttest.At(doc, "ac", "boards", 0, "ways", 0)["serves"] = "spare"
	way := facttest.At(doc, "ac", "boards", 0, "ways", 1)
	facttest.Is(t, "no other way in use", one(t, doc, laid{}).RCDShared, false)

	sheets["RCD"] = object{"kind": "rccb", "rcd_type": "A", "residual_current_ma": 30, "opens_neutral": false, "flow": "bidirectional", "flow_declared_by_maker": true}
	way["rcd"], way["rcd_shared"] = "RCD", false
	c = one(t, doc, laid{})
	facttest.Near(t, "the worse type of the two", c.RCDGrade, 1, 0)
	facttest.Near(t, "the one that opens first", c.ResidualMa, 30, 0)
	facttest.Is(t, "one of them leaves the neutral", c.RCDOpensNeutral, false)
	board["incoming_device"] = "FUSE"
	facttest.Near(t, "its own alone", one(t, doc, laid{}).RCDGrade, 2, 0)
	facttest.Is(t, "a fuse has no direction", one(t, doc, laid{}).OneWayBefore, false)
	delete(board, "incoming_device")
	open(t, "what stands before is not stated", one(t, doc, laid{}).OneWayBefore)
	way["rcd"] = "D"
	board["incoming_device"] = "FUSE"
	facttest.Is(t, "the one named is none", one(t, doc, laid{}).RCDFitted, false)
}

// On a board behind another the devices of the ways farther on count too.
func TestDevicesOfTheWayBefore(t *testing.T) {
	doc := plant()
	facttest.At(doc, "datasheets", "protective_devices")["RCBO"] = object{"kind": "rcbo", "characteristic": "B", "rated_a": 125, "rcd_type": "B", "residual_current_ma": 300,
		"opens_neutral": true, "flow": "bidirectional", "flow_declared_by_maker": true}
	facttest.At(doc, "ac", "boards", 0, "ways", 0)["device"] = "RCBO"
	for _, w := range facttest.At(doc, "ac", "boards", 1)["ways"].(list) {
		w.(object)["serves"] = "pv_supply"
	}
	c := derive(t, doc, laid{}).Circuits[0]
	facttest.Is(t, "behind it", c.RCDFitted, true)
	facttest.Is(t, "as the other inverter is", c.RCDShared, true)
	facttest.Near(t, "grade of type B", c.RCDGrade, 4, 0)
}
