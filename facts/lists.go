package facts

import (
	"reflect"

	"sunclause/facts/accircuit"
	"sunclause/facts/cable"
	"sunclause/facts/commissioning"
	"sunclause/facts/earthing"
	"sunclause/facts/handover"
	"sunclause/facts/implied"
	"sunclause/facts/isolator"
	"sunclause/facts/label"
	"sunclause/facts/pvstring"
	"sunclause/facts/relation"
	"sunclause/facts/roof"
	"sunclause/facts/storage"
	"sunclause/facts/surge"
)

// Facts are all facts of one installation. A list is nil when the document does
// not state the parts it is about, which is not the same as having none. From is
// the member of the document that the parts of a list come from.
type Facts struct {
	Installation Installation `json:"installation" words:"the installation as a whole"`

	ImpliedLists []implied.List `json:"implied_lists" from:"/project" words:"lists of the document of whose parts something else speaks"`

	Relations []relation.Relation `json:"relations" from:"/datasheets" words:"values stated beside each other on sheets of the AC side, of the supply and of circuits, and how they go together"`

	ModuleSheets []pvstring.Sheet `json:"module_sheets" from:"/datasheets/modules" words:"datasheets of modules"`
	CableSheets  []cable.Sheet    `json:"cable_sheets" from:"/datasheets/cables" words:"datasheets of cables"`
	FixingSheets []roof.Sheet     `json:"fixing_sheets" from:"/datasheets/fixings" words:"datasheets of hooks, screws, rails and clamps"`

	Strings    []String            `json:"strings" from:"/strings" words:"PV strings"`
	Mppts      []pvstring.Mppt     `json:"mppts" from:"/inverters" words:"tracking inputs of the inverters"`
	Inverters  []Inverter          `json:"inverters" from:"/inverters" words:"inverters"`
	Arrays     []pvstring.Array    `json:"arrays" from:"/arrays" words:"arrays: strings put in parallel before the inverter"`
	Isolators  []isolator.Isolator `json:"isolators" from:"/isolators" words:"isolators"`
	Runs       []Run               `json:"runs" from:"/cables" words:"runs of cable"`
	Segments   []cable.Segment     `json:"segments" from:"/cables" words:"stretches of runs with the same conditions all along"`
	Loops      []cable.Loop        `json:"loops" from:"/cables" words:"places where more than one way leads on: loops, forks and runs in parallel"`
	Connectors []cable.Connector   `json:"connectors" from:"/cables" words:"pairs of plug connectors in runs of cable"`

	SPDs         []surge.SPD          `json:"spds" from:"/spds" words:"surge protective devices"`
	Frames       []earthing.Frame     `json:"frames" from:"/earthing/frames" words:"array frames and other metal of the PV work"`
	MainBonds    []earthing.MainBond  `json:"main_bonds" from:"/earthing/main_bonds" words:"main bonding conductors of the building"`
	Electrodes   []earthing.Electrode `json:"electrodes" from:"/earthing/electrodes" words:"earth electrodes"`
	EarthedPoles []earthing.Pole      `json:"earthed_poles" from:"/earthing/poles" words:"poles of arrays earthed on purpose"`
	Alarms       []earthing.Alarm     `json:"alarms" from:"/earthing/alarms" words:"earth-fault alarms"`

	Labels      []label.Label          `json:"labels" from:"/labels" words:"labels and notices put up"`
	LabelPlaces []label.Place          `json:"label_places" from:"/labels" words:"places where the label table asks for a label"`
	Circuits    []accircuit.Circuit    `json:"circuits" from:"/inverters" words:"AC circuits of the generators"`
	Boards      []accircuit.Board      `json:"boards" from:"/ac/boards" words:"distribution boards"`
	BoardWays   []accircuit.Way        `json:"board_ways" from:"/ac/boards" words:"ways of distribution boards"`
	Meters      []accircuit.Meter      `json:"meters" from:"/ac/meters" words:"meters"`
	Changeovers []accircuit.Changeover `json:"changeovers" from:"/ac/changeovers" words:"switches between the public supply and another source"`
	Batteries   []storage.Battery      `json:"batteries" from:"/storage/batteries" words:"batteries"`

	Planes       []roof.Plane       `json:"planes" from:"/roof/planes" words:"planes of the roof"`
	Modules      []roof.Module      `json:"modules" from:"/roof/planes" words:"modules where they lie on the roof"`
	Rails        []roof.Rail        `json:"rails" from:"/roof/planes" words:"rails"`
	Fixings      []roof.Fixing      `json:"fixings" from:"/roof/planes" words:"hooks and other fixings to the building"`
	Clamps       []roof.Clamp       `json:"clamps" from:"/roof/planes" words:"clamps that hold the modules"`
	Openings     []roof.Opening     `json:"openings" from:"/roof/planes" words:"roof windows, chimneys and whatever else comes through a plane"`
	Penetrations []roof.Penetration `json:"penetrations" from:"/roof/planes" words:"places where something goes through the covering"`

	StringTests     []commissioning.StringTest     `json:"string_tests" from:"/strings" words:"readings on PV strings, one for each string of the document"`
	CombinerTests   []commissioning.CombinerTest   `json:"combiner_tests" from:"/commissioning/combiners" words:"polarity readings where strings are put in parallel"`
	CurveTests      []commissioning.CurveTest      `json:"curve_tests" from:"/commissioning/curves" words:"current-voltage curves"`
	InsulationTests []commissioning.InsulationTest `json:"insulation_tests" from:"/commissioning/insulation" words:"readings of insulation resistance"`
	ContinuityTests []commissioning.ContinuityTest `json:"continuity_tests" from:"/commissioning/continuity" words:"readings of continuity"`
	CircuitTests    []commissioning.CircuitTest    `json:"circuit_tests" from:"/ac/circuits" words:"tests of the AC circuits, one for each circuit of the document"`
	RCDTests        []commissioning.RCDTest        `json:"rcd_tests" from:"/commissioning/rcds" words:"tests of residual current devices"`
	Instruments     []commissioning.Instrument     `json:"instruments" from:"/commissioning/instruments" words:"test instruments"`

	Fits         []commissioning.Fit `json:"fits" from:"/commissioning" words:"words of the records and papers that have to fit what they are about"`
	Dates        []handover.Order    `json:"dates" from:"/handover" words:"orders in which the dates of the document have to stand"`
	Notices      []handover.Notice   `json:"notices" from:"/handover/notifications" words:"notifications and applications"`
	GridSettings []handover.Setting  `json:"grid_settings" from:"/inverters" words:"settings of the protection of the interface with the supply"`
}

// Lists tells for each list of facts the member of the document that its parts
// come from: what is missing when the list is.
var Lists = func() map[string]string {
	lists := map[string]string{}
	t := reflect.TypeFor[Facts]()
	for i := range t.NumField() {
		if f := t.Field(i); f.Type.Kind() == reflect.Slice {
			lists[f.Tag.Get("json")] = f.Tag.Get("from")
		}
	}
	return lists
}()

// String puts together what the rooms know of one string.
type String struct {
	pvstring.String
	cable.Drop
	earthing.StringPole
}

// Inverter puts together what the rooms know of one inverter.
type Inverter struct {
	pvstring.Inverter
	surge.Route
	earthing.Watch
	accircuit.Output
	storage.Port
	commissioning.Proof
	handover.Interface
}

// Run puts together what the rooms know of one run of cable.
type Run struct {
	cable.Run
	label.Marking
}
