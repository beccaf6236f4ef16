package working

import (
	"slices"
	"strconv"

	"sunclause/schema"
)

// outdoorPlaces are the places in the open, of parts and of stretches of cable.
var outdoorPlaces = []string{"roof_surface", "outdoor_wall", "outdoor_ground", "behind_modules"}

// Outdoors reports whether a part stands, or a stretch of cable lies, in the open.
func Outdoors(place schema.Text) Flag {
	if !place.Stated() {
		return UnknownFlag(place.At())
	}
	return KnownFlag(slices.Contains(outdoorPlaces, place.Value), place.At())
}

// Positions of the two figures in an IP code.
const (
	IPSolids = 2 // against solids
	IPWater  = 3 // against water
)

// IPFigure reads one figure of an IP code. X means not stated.
func IPFigure(symbol string, code schema.Text, position int) Number {
	if !code.Stated() || len(code.Value) <= position {
		return Unknown(symbol, "", code.At())
	}
	v, err := strconv.Atoi(code.Value[position : position+1])
	if err != nil {
		return Unknown(symbol, "", code.At())
	}
	return Counted(symbol, v, code.At())
}
