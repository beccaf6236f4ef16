package cable_test

import "testing"

// TestWhereabouts leads a run of two stretches between an inverter and a board, from
// place to place. Which passage leads where is plain from the building: roof and outer
// walls part inside from outside, inner walls and floors do not.
func TestWhereabouts(t *testing.T) {
	for _, c := range []struct {
		inverter, first, through, second, board string
		sides, rooms                            bool
	}{
		{"plant_room", "indoors_surface", "", "indoors_surface", "plant_room", true, true},
		{"plant_room", "indoors_surface", "", "indoors_surface", "cupboard", true, false},
		{"plant_room", "indoors_surface", "inner_wall", "indoors_surface", "cupboard", true, true},
		{"garage", "indoors_surface", "outer_wall", "outdoor_wall", "outdoor_wall", true, true},
		{"garage", "indoors_surface", "", "outdoor_wall", "outdoor_wall", false, true},
		{"garage", "indoors_surface", "inner_wall", "outdoor_wall", "outdoor_wall", false, true},
		{"garage", "indoors_surface", "outer_wall", "indoors_surface", "cupboard", false, true},
		{"roof_surface", "behind_modules", "roof", "roof_space", "roof_space", true, true},
		{"roof_space", "roof_space", "floor", "indoors_surface", "cupboard", true, true},
		{"roof_space", "roof_space", "", "indoors_surface", "cupboard", false, true},
		{"roof_space", "indoors_surface", "", "indoors_surface", "cupboard", false, true}, // not where the inverter stands
		{"cellar", "indoors_surface", "", "indoors_surface", "outdoor_wall", false, true}, // nor the board
		{"cellar", "wall_cavity", "", "wall_cavity", "outdoor_wall", true, true},          // within the wall it may lead anywhere
		{"", "indoors_surface", "", "indoors_surface", "", true, true},                    // the parts do not say
	} {
		stretch := func(place, through string) object {
			s := object{"length_m": 3, "place": place, "ends_at": "straight_on"}
			if through != "" {
				s["passage"] = object{"through": through}
			}
			return s
		}
		placed := func(part object, place string) object {
			if place != "" {
				part["place"] = place
			}
			return part
		}
		r := derive(t, object{
			"project":    object{"reference": "test", "stage": "design", "country": "GB"},
			"datasheets": object{"inverters": object{"I": object{"dc_voltage_max_v": 1, "ac_power_rated_w": 1, "phases": 1, "mppts": []any{object{}}}}},
			"inverters":  []any{placed(object{"id": "INV", "datasheet": "I"}, c.inverter)},
			"ac":         object{"boards": []any{placed(object{"id": "B", "ways": []any{object{"id": "1"}}}, c.board)}},
			"cables": []any{object{"id": "R1", "from": "INV.ac", "to": "B.1", "service": "ac",
				"segments": []any{stretch(c.first, c.through), stretch(c.second, "")}}},
		})[0]
		if r.SidesAgree.Known() != c.sides || r.RoomsAgree.Known() != c.rooms {
			t.Errorf("%+v: sides agree %t, rooms agree %t", c, r.SidesAgree.Known(), r.RoomsAgree.Known())
		}
	}
}
