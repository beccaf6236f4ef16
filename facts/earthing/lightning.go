package earthing

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

// Lightning holds the facts of the lightning protection system of the building.
type Lightning struct {
	LightningFitted working.Flag   `json:"lightning_protection_fitted" words:"whether the building has a lightning protection system"`
	LightningClass  working.Text   `json:"lightning_protection_class" words:"class of the lightning protection system"`
	DownConductors  working.Number `json:"lightning_down_conductors" words:"down-conductors of the lightning protection system"`
	SeparationM     working.Number `json:"lightning_separation_m" words:"separation distance between the array and the lightning protection system"`
	ArrayInZone     working.Flag   `json:"array_in_lightning_protected_zone" words:"whether the array stands within the zone that the air terminals protect"`
	RiskAssessment  working.Text   `json:"lightning_risk_assessment" words:"what a risk assessment to IEC 62305-2 says"`
}

var separationDistance = working.NewFormula("s", "m", "k_i · k_c / k_m · l", separation)

// lightningOf takes what is stated of the system, and works out the separation
// distance: k_i by its class, k_c by how many down-conductors share the current,
// k_m by what fills the gap, and the length to the nearest equipotential bonding.
func lightningOf(in *schema.Installation, b book.Book) Lightning {
	lp := in.Earthing.LightningProtection
	down := working.Stated("n_down", "", lp.DownConductors)
	return Lightning{
		LightningFitted: working.StatedFlag(lp.Fitted),
		LightningClass:  working.StatedText(lp.Class),
		DownConductors:  down,
		SeparationM: separationDistance.Of(
			b.Keyed("lightning_class", "class", working.StatedText(lp.Class), "k_i", "k_i"),
			b.Step("lightning_down_conductors", "from", down, "k_c", "k_c"),
			b.Keyed("lightning_gap", "material", working.StatedText(lp.GapMaterial), "k_m", "k_m"),
			working.Stated("l", "m", lp.LengthToBondM)),
		ArrayInZone:    working.StatedFlag(lp.ArrayInProtectedZone),
		RiskAssessment: working.StatedText(lp.RiskAssessment),
	}
}
