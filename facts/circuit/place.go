package circuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// PlacesOf lists where the parts stand that say so, by their ids. Strings and
// frames say nothing: they are on the roof.
func PlacesOf(in *schema.Installation) map[string]schema.Text {
	at := map[string]schema.Text{in.AC.Supply.ID.Value: in.AC.Supply.Place, in.Earthing.MainTerminal.ID.Value: in.Earthing.MainTerminal.Place}
	for i := range in.Isolators {
		at[in.Isolators[i].ID.Value] = in.Isolators[i].Place
	}
	for i := range in.Arrays {
		at[in.Arrays[i].ID.Value] = in.Arrays[i].Place
	}
	for i := range in.Inverters {
		at[in.Inverters[i].ID.Value] = in.Inverters[i].Place
	}
	for i := range in.SPDs {
		at[in.SPDs[i].ID.Value] = in.SPDs[i].Place
	}
	for i := range in.AC.Boards {
		at[in.AC.Boards[i].ID.Value] = in.AC.Boards[i].Place
	}
	for i := range in.AC.Meters {
		at[in.AC.Meters[i].ID.Value] = in.AC.Meters[i].Place
	}
	for i := range in.AC.Changeovers {
		at[in.AC.Changeovers[i].ID.Value] = in.AC.Changeovers[i].Place
	}
	for i := range in.Earthing.Terminals {
		at[in.Earthing.Terminals[i].ID.Value] = in.Earthing.Terminals[i].Place
	}
	for i := range in.Storage.Batteries {
		at[in.Storage.Batteries[i].ID.Value] = in.Storage.Batteries[i].Place
	}
	return at
}

// Sides of the building's skin, as Side gives them.
const (
	Outside   = "outside"
	RoofSpace = "roof_space"
	Inside    = "inside"
)

// sides says on which side of roof and outer walls a place is that is not in the open,
// of parts and of stretches of cable. Walls, ducts and passages themselves are on neither.
var sides = map[string]string{
	"roof_space": RoofSpace,
	"garage":     Inside, "plant_room": Inside, "habitable_room": Inside, "bedroom": Inside, "hallway": Inside,
	"cupboard": Inside, "cellar": Inside, "outbuilding": Inside, "indoors_surface": Inside, "indoors_concealed": Inside,
}

// Side is on which side of roof and outer walls a place is: Outside, RoofSpace or
// Inside; "" for the skin itself and for a place that is not stated.
func Side(place schema.Text) string {
	if working.Outdoors(place).Value() {
		return Outside
	}
	return sides[place.Value]
}

// Place is where a part stands; not stated where it does not say.
func (c *Circuit) Place(part string) schema.Text { return c.places[part] }
