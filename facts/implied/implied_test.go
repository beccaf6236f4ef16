package implied_test

import (
	"encoding/json"
	"testing"

	"sunclause/facts/implied"
	"sunclause/facts/working"
	"sunclause/schema"
	"sunclause/schema/examples"
	"sunclause/schema/slips"
)

// TestImplied takes parts out of the cottage of which something else speaks, or lets
// something speak of parts that are not there, and holds what is said of the list.
func TestImplied(t *testing.T) {
	type members = map[string]any
	for name, c := range map[string]struct {
		gone   string // list that is emptied, with what refers to its parts
		change func(doc, plane members)
		list   string
		lacks  string // "" where the list is complete
	}{
		"as it stands": {"", func(doc, plane members) {}, "frames", ""},
		"no frames": {"/earthing/frames", func(doc, plane members) {}, "frames",
			"earthing.frames is stated, and has no frame that carries string S1, of which datasheets.modules.mod440.conductive_frame speaks; " +
				"earthing.frames is stated, and has no frame that carries string S2, of which datasheets.modules.mod440.conductive_frame speaks"},
		"frames not stated": {"/earthing/frames", func(doc, plane members) { delete(doc["earthing"].(members), "frames") }, "frames", "earthing.frames is not stated"},
		"a frame may carry any": {"", func(doc, plane members) { delete(doc["earthing"].(members)["frames"].([]any)[1].(members), "strings") }, "frames",
			"earthing.frames[1].strings is not stated"},
		"modules without a frame": {"/earthing/frames", func(doc, plane members) {
			doc["datasheets"].(members)["modules"].(members)["mod440"].(members)["conductive_frame"] = false
		}, "frames", "nothing speaks of it"},
		"no bond on TN-C-S": {"/earthing/main_bonds", func(doc, plane members) {}, "main_bonds",
			"earthing.main_bonds is stated, and has no main bond, for which a supply asks that earths through its neutral, of which earthing.arrangement speaks"},
		"no bond on TT": {"/earthing/main_bonds", func(doc, plane members) {
			doc["earthing"].(members)["arrangement"] = "TT"
		}, "main_bonds", "nothing speaks of it"},
		"frame touches steel on TT": {"/earthing/main_bonds", func(doc, plane members) {
			doc["earthing"].(members)["arrangement"] = "TT"
			doc["earthing"].(members)["frames"].([]any)[0].(members)["touches_building_metal"] = true
		}, "main_bonds", "earthing.main_bonds is stated, and has no main bond of the metal that frame FR1 touches, of which earthing.frames[0].touches_building_metal speaks"},
		"connectors at the other end": {"", func(doc, plane members) {
			for _, c := range doc["cables"].([]any)[0].(members)["connectors"].([]any) {
				c.(members)["position_m"] = 6.5
			}
		}, "R1.connectors", "cables[0].connectors is stated, and has no pair of connectors where it meets string S1, of which strings[0].connector_mate speaks"},
		"hipped without hips": {"", func(doc, plane members) { doc["roof"].(members)["shape"] = "hipped" }, "P-SE.edges",
			"roof.planes[0].edges is stated, and has no hip, of which roof.shape speaks"},
		"point without lines": {"", func(doc, plane members) { plane["top_edge"] = "point" }, "P-SE.edges",
			"roof.planes[0].edges is stated, and has no line that leads up to the point, of which roof.planes[0].top_edge speaks"},
		"a duct of cables may be of any": {"", func(doc, plane members) {
			first := plane["penetrations"].([]any)[0].(members)
			first["kind"] = "conduit"
			delete(first, "run")
		}, "penetrations", ""},
		"nobody there at design": {"", func(doc, plane members) {
			doc["project"].(members)["stage"] = "design"
			doc["handover"].(members)["attendances"] = []any{}
		}, "attendances", "nothing speaks of it"},
		"no loop read": {"", func(doc, plane members) { doc["commissioning"].(members)["loops"] = []any{} }, "loops",
			"commissioning.loops is stated, and has no loop impedance read, of which commissioning.steps[1].test speaks"},
	} {
		t.Run(name, func(t *testing.T) {
			doc := members{}
			if err := json.Unmarshal(examples.Text(t, examples.Cottage), &doc); err != nil {
				t.Fatal(err)
			}
			if c.gone != "" {
				doc = emptied(t, doc, c.gone)
			}
			c.change(doc, doc["roof"].(members)["planes"].([]any)[0].(members))
			if got := lacking(t, doc, c.list); got != c.lacks {
				t.Errorf("%q, want %q", got, c.lacks)
			}
		})
	}
}

// emptied is a document in which a list is empty, and nothing refers to its parts.
func emptied(t *testing.T, doc map[string]any, list string) map[string]any {
	t.Helper()
	all, err := slips.OfLists(doc)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range all {
		if s.Class == slips.EmptiedAll && s.Pointer == list {
			return s.In(doc)
		}
	}
	t.Fatalf("%s: there is no such list", list)
	return nil
}

// lacking says what a list lacks of a document.
func lacking(t *testing.T, doc map[string]any, list string) string {
	t.Helper()
	raw, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	d, err := schema.Decode("installation.json", raw)
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range implied.Derive(&d.Installation) {
		if l.ID == list {
			if l.Complete.Known() {
				return ""
			}
			return working.Spoken(l.Complete.Missing())
		}
	}
	return "nothing speaks of it"
}
