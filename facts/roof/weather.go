package roof

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Weather holds what the site states of wind and snow.
type Weather struct {
	TerrainStated  working.Text   `json:"terrain_stated" words:"terrain category as stated"`
	DistanceToSea  working.Number `json:"distance_to_sea_km" words:"distance to the shore upwind"`
	DistanceToTown working.Number `json:"distance_into_town_km" words:"distance from the upwind edge of the town"`
	Orography      working.Flag   `json:"orography_significant" words:"whether a hill or escarpment speeds the wind up"`
	WindMap        working.Number `json:"wind_vb_map_m_per_s" words:"basic wind velocity from the map"`
	SnowGround     working.Number `json:"snow_sk_kn_per_m2" words:"characteristic snow load on the ground"`
	SnowLeast      working.Number `json:"snow_sk_least_kn_per_m2" words:"snow load on the ground in the mildest zone of the map, at this altitude"`
	WindSource     working.Flag   `json:"wind_source_given" words:"whether it is said where the wind velocity comes from"`
	SnowSource     working.Flag   `json:"snow_source_given" words:"whether it is said where the snow load comes from"`
}

func weatherOf(in *schema.Installation, b book.Book) Weather {
	return Weather{
		TerrainStated:  working.StatedText(in.Site.Terrain),
		DistanceToSea:  working.Stated("x_sea", "km", in.Site.DistanceToSeaKm),
		DistanceToTown: working.Stated("x_town", "km", in.Site.DistanceIntoTownKm),
		Orography:      working.StatedFlag(in.Site.OrographySignificant),
		WindMap:        working.Stated("v_b,map", "m/s", in.Site.WindVbMapMPerS),
		SnowGround:     working.Stated("s_k", "kN/m²", in.Site.SnowSkKnPerM2),
		SnowLeast:      groundSnow(in, b.Number("snow_zone_mildest", "Z")),
		WindSource:     working.IsStated(in.Site.WindSource),
		SnowSource:     working.IsStated(in.Site.SnowSource),
	}
}

var snowByZone = working.NewFormula("s_k", "kN/m²", "0.15 + 0.1 · Z + 0.05 + (A − 100) / 525",
	working.Source{Document: "NA to BS EN 1991-1-3", Edition: "2003, corrected 2007", Clause: "(NA.1)", How: working.Read})

// groundSnow is the snow on the ground in a zone of the British map.
func groundSnow(in *schema.Installation, zone working.Number) working.Number {
	return snowByZone.Of(zone, working.Stated("A", "m", in.Site.AltitudeM))
}

// categories are the terrain categories from the smoothest to the roughest, and
// the words of the document that mean one of them.
var categories = map[string]string{"0": "0", "I": "I", "II": "II", "III": "III", "IV": "IV", "sea": "0", "country": "II", "town": "III"}

// terrain is the category that counts: the one stated, or a smoother one close
// to the shore or to the edge of the town (EN 1991-1-4, annex A.2, procedure 1).
func (s *slope) terrain() working.Text {
	site := s.in.Site
	if !site.Terrain.Stated() {
		return working.UnknownText(site.Terrain.At())
	}
	category := categories[site.Terrain.Value]
	if category == "0" {
		return working.KnownText("0", site.Terrain.At())
	}
	bySea := s.nearer("x_sea", site.DistanceToSeaKm, "terrain_sea_distance_km")
	if working.MayHold(bySea) {
		return wordWhere(bySea, "0")
	}
	if category == "III" || category == "IV" {
		if byEdge := s.nearer("x_town", site.DistanceIntoTownKm, "terrain_town_distance_km"); working.MayHold(byEdge) {
			return wordWhere(byEdge, "II")
		}
	}
	return working.KnownText(category, site.Terrain.At())
}

// wordWhere is a word where a flag is known, and unknown where the flag is.
func wordWhere(f working.Flag, word string) working.Text {
	if !f.Known() {
		return working.UnknownText(f.Missing()...)
	}
	return working.KnownText(word, f.At())
}

// nearer reports whether a distance is less than one of the rule set.
func (s *slope) nearer(symbol string, km schema.Number, parameter string) working.Flag {
	return working.Not(working.AtLeast(working.Stated(symbol, "km", km), s.param(parameter, symbol)))
}
