// Package facts derives everything that rules judge from an installation and
// the figures of a rule set. Each trade subject has a room of its own below
// this package; here they are put in reading order.
//
// Facts are raw quantities, never verdicts: the same array is right in one
// country and wrong in another.
package facts

import (
	"sunclause/facts/accircuit"
	"sunclause/facts/book"
	"sunclause/facts/cable"
	"sunclause/facts/circuit"
	"sunclause/facts/earthing"
	"sunclause/facts/isolator"
	"sunclause/facts/label"
	"sunclause/facts/pvstring"
	"sunclause/facts/roof"
	"sunclause/facts/storage"
	"sunclause/facts/surge"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Facts are all facts of one installation. A list is nil when the document does
// not state the parts it is about, which is not the same as having none.
type Facts struct {
	Installation Installation        `json:"installation" words:"the installation as a whole"`
	Strings      []String            `json:"strings" words:"PV strings"`
	Mppts        []pvstring.Mppt     `json:"mppts" words:"tracking inputs of the inverters"`
	Inverters    []Inverter          `json:"inverters" words:"inverters"`
	Arrays       []pvstring.Array    `json:"arrays" words:"arrays: strings put in parallel before the inverter"`
	Isolators    []isolator.Isolator `json:"isolators" words:"isolators"`
	Runs         []Run               `json:"runs" words:"runs of cable"`
	Segments     []cable.Segment     `json:"segments" words:"stretches of runs with the same conditions all along"`
	SPDs         []surge.SPD         `json:"spds" words:"surge protective devices"`
	Frames       []earthing.Frame    `json:"frames" words:"array frames and other metal of the PV work"`
	Labels       []label.Label       `json:"labels" words:"labels and notices put up"`
	LabelPlaces  []label.Place       `json:"label_places" words:"places where the label table asks for a label"`
	Circuits     []accircuit.Circuit `json:"circuits" words:"AC circuits of the generators"`
	Boards       []accircuit.Board   `json:"boards" words:"distribution boards"`
	Batteries    []storage.Battery   `json:"batteries" words:"batteries"`
	Planes       []roof.Plane        `json:"planes" words:"planes of the roof"`
	Modules      []roof.Module       `json:"modules" words:"modules where they lie on the roof"`
	Rails        []roof.Rail         `json:"rails" words:"rails"`
	Fixings      []roof.Fixing       `json:"fixings" words:"hooks and other fixings to the building"`
	Clamps       []roof.Clamp        `json:"clamps" words:"clamps that hold the modules"`
	Openings     []roof.Opening      `json:"openings" words:"roof windows, chimneys and whatever else comes through a plane"`
	Penetrations []roof.Penetration  `json:"penetrations" words:"places where something goes through the covering"`
}

// Lists tells for each list of facts the member of the document that its parts
// come from: what is missing when the list is.
var Lists = map[string]string{
	"strings": "/strings", "mppts": "/inverters", "inverters": "/inverters", "isolators": "/isolators", "arrays": "/arrays",
	"runs": "/cables", "segments": "/cables", "spds": "/spds", "frames": "/earthing/frames",
	"labels": "/labels", "label_places": "/labels", "circuits": "/ac/circuits", "boards": "/ac/boards",
	"batteries": "/storage/batteries",
	"planes":    "/roof/planes", "modules": "/roof/planes", "rails": "/roof/planes", "fixings": "/roof/planes", "clamps": "/roof/planes",
	"openings": "/roof/planes", "penetrations": "/roof/planes",
}

// String puts together what the rooms know of one string.
type String struct {
	pvstring.String
	cable.Drop
}

// Inverter puts together what the rooms know of one inverter.
type Inverter struct {
	pvstring.Inverter
	surge.Route
	earthing.Watch
	accircuit.Output
}

// Run puts together what the rooms know of one run of cable.
type Run struct {
	cable.Run
	label.Marking
}

// Derive derives all facts, room by room.
func Derive(in *schema.Installation, b book.Book) *Facts {
	c := circuit.Of(in)
	pv := pvstring.Derive(in, c, b)
	cables := cable.Derive(in, c, pv, b)
	surges := surge.Derive(in, c, pv, cables, b)
	earth := earthing.Derive(in, c, pv, cables, b)
	labels := label.Derive(in, c, pv, cables, b)
	ac := accircuit.Derive(in, c, pv, cables, b)
	store := storage.Derive(in, c, pv, cables, b)
	top := roof.Derive(in, b)
	f := &Facts{
		Mppts:       pv.Mppts,
		Arrays:      pv.Arrays,
		Isolators:   isolator.Derive(in, c, pv),
		Segments:    cables.Segments,
		SPDs:        surges.SPDs,
		Frames:      earth.Frames,
		Labels:      labels.Labels,
		LabelPlaces: labels.Places,
		Circuits:    ac.Circuits,
		Boards:      ac.Boards,
		Batteries:   store.Batteries,

		Planes: top.Planes, Modules: top.Modules, Rails: top.Rails, Fixings: top.Fixings, Clamps: top.Clamps,
		Openings: top.Openings, Penetrations: top.Penetrations,
	}
	for i, s := range pv.Strings {
		f.Strings = append(f.Strings, String{s, cables.Drops[i]})
	}
	for i, v := range pv.Inverters {
		f.Inverters = append(f.Inverters, Inverter{v, surges.Routes[i], earth.Watches[i], ac.Outputs[i]})
	}
	for i, r := range cables.Runs {
		f.Runs = append(f.Runs, Run{r, labels.Markings[i]})
	}
	f.Installation = installationOf(in, f)
	f.Installation.Site, f.Installation.System, f.Installation.Supply, f.Installation.Provision = surges.Site, earth.System, ac.Supply, store.Provision
	f.Installation.Legends = labels.Legends
	f.Installation.Weather, f.Installation.Survey = top.Weather, top.Survey
	f.keepStated(in)
	return f
}

// keepStated makes lists that the document states empty come out empty, not nil.
func (f *Facts) keepStated(in *schema.Installation) {
	if in.Strings != nil && f.Strings == nil {
		f.Strings = []String{}
	}
	if in.Inverters != nil && f.Inverters == nil {
		f.Inverters = []Inverter{}
	}
	if in.Cables != nil && f.Runs == nil {
		f.Runs = []Run{}
	}
}

// Installation holds the facts of the installation as a whole.
type Installation struct {
	working.Subject
	surge.Site
	earthing.System
	accircuit.Supply
	storage.Provision
	roof.Weather
	roof.Survey

	Stage      working.Text   `json:"stage" words:"design or as_built"`
	Premises   working.Text   `json:"premises" words:"kind of premises"`
	Country    working.Text   `json:"country" words:"country, two letters"`
	DesignDate working.Text   `json:"design_date" words:"date of the design"`
	Strings    working.Number `json:"strings" words:"PV strings"`
	DcPowerW   working.Number `json:"dc_power_w" words:"rated power of all modules"`
	VocMaxV    working.Number `json:"voc_max_v" words:"greatest maximum voltage of any string"`
	Legends    working.Names  `json:"label_legends" words:"legends of the labels put up"`
}

func installationOf(in *schema.Installation, f *Facts) Installation {
	v := Installation{
		Subject:    working.Subject{ID: "installation", At: "", Name: "the installation"},
		Stage:      working.StatedText(in.Project.Stage),
		Premises:   working.StatedText(in.Project.Premises),
		Country:    working.StatedText(in.Project.Country),
		DesignDate: working.StatedText(in.Project.DesignDate),
		Strings:    working.Counted("n", len(f.Strings), "/strings"),
	}
	var power, voltage []working.Number
	for i := range f.Strings {
		power = append(power, f.Strings[i].PowerW)
		voltage = append(voltage, f.Strings[i].VocMaxV)
	}
	v.DcPowerW = working.Sum("P_dc", "W", power...)
	v.VocMaxV = working.Greatest("U_oc,max", "V", voltage...)
	if f.Strings == nil {
		v.Strings = working.Unknown("n", "", "/strings")
		v.DcPowerW = working.Unknown("P_dc", "W", "/strings")
		v.VocMaxV = working.Unknown("U_oc,max", "V", "/strings")
	}
	return v
}
