// Package earthing derives the facts of earthing and bonding: the system
// earthing, the array frames, the conductors and their sizes, lightning
// protection, poles earthed on purpose, and how earth faults are noticed.
package earthing

import (
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/pvstring"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Sources of the formulas of this room. None of these texts was at hand when
// the formulas were written down, so none is marked verified.
var (
	extraneousPart = working.Source{Document: "IET Guidance Note 8, Earthing and Bonding", Clause: "extraneous-conductive-parts", How: working.Read}
	mainBonding    = working.Source{Document: "IEC 60364-5-54", Edition: "2011", Clause: "544.1", How: working.Memory}
	separation     = working.Source{Document: "IEC 62305-3", Edition: "2010", Clause: "6.3", How: working.Read}
	faultAtOrigin  = working.Source{Document: "IEC 60364-4-41", Clause: "411.4.4", How: working.Memory}
	insulationTest = working.Source{Document: "IEC 62109-2", Edition: "2011", Clause: "4.8.2", How: working.Memory}
	sameConduction = working.Source{Document: "BS 7671", Edition: "2018+A2:2022", Clause: "544.1.1, same conductance in another metal", How: working.Memory}
)

// Facts are the facts of the earthing of an installation. A list is nil when
// the document does not state the parts it is about.
type Facts struct {
	System     System
	Frames     []Frame
	MainBonds  []MainBond
	Electrodes []Electrode
	Poles      []Pole
	Alarms     []Alarm
	Watches    []Watch      // by inverter
	Strings    []StringPole // by string
}

// Derive derives the facts of earthing.
func Derive(in *schema.Installation, c *circuit.Circuit, pv pvstring.Facts, cables cable.Facts, b book.Book) Facts {
	n := networkOf(in, c, b)
	f := Facts{
		MainBonds:  mainBonds(in, b),
		Electrodes: electrodes(in, b),
		Frames:     frames(in, pv, n, b),
		Poles:      poles(in),
		Alarms:     alarms(in),
		Watches:    watches(in, c, pv, cables, n, b),
		Strings:    stringPoles(in, pv),
	}
	f.System = systemOf(in, f, b)
	return f
}
