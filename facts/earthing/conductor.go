package earthing

import (
	"strings"

	"sunclause/facts/book"
	"sunclause/facts/working"
	"sunclause/schema"
)

var asCopper = working.NewFormula("S_Cu", "mm²", "S · κ", sameConduction)

// copperSize is the cross-section of copper that conducts as well as a
// conductor does.
func copperSize(symbol string, size working.Number, metal working.Text, b book.Book) working.Number {
	return asCopper.Of(size.For("S"), b.Keyed("metal_conductance", "metal", metal, "over_copper", "κ")).As(symbol)
}

// sizeOf is the copper cross-section of a conductor of the building.
func sizeOf(symbol string, c schema.EarthConductor, b book.Book) working.Number {
	return copperSize(symbol, working.Stated("S", "mm²", c.CsaMm2), working.StatedText(c.Material), b)
}

// buriedLeast is the least cross-section of a conductor laid in the ground, by
// how it is guarded. One that is guarded against both damage and corrosion has
// no least size of its own: zero.
func buriedLeast(symbol string, c schema.EarthConductor, b book.Book) working.Number {
	switch {
	case !c.CorrosionProtected.Stated():
		return working.Unknown(symbol, "mm²", c.CorrosionProtected.At())
	case !c.CorrosionProtected.Value:
		return b.Number("buried_corroding_min_mm2", symbol).ChosenBy(c.CorrosionProtected.At())
	case !c.MechanicallyProtected.Stated():
		return working.Unknown(symbol, "mm²", c.MechanicallyProtected.At())
	case !c.MechanicallyProtected.Value:
		return b.Number("buried_unguarded_min_mm2", symbol).ChosenBy(c.MechanicallyProtected.At())
	}
	return working.Counted(symbol, 0, c.MechanicallyProtected.At())
}

// adiabaticFactor is k of a conductor by its metal and whether it is insulated.
func adiabaticFactor(c schema.EarthConductor, b book.Book) working.Number {
	if !c.Material.Stated() || !c.Insulated.Stated() {
		return working.Unknown("k", "", unstated(c.Material.Pointer, c.Insulated.Pointer)...)
	}
	key := strings.TrimPrefix(c.Material.Value, "tinned_") + "_bare"
	if c.Insulated.Value {
		key = strings.TrimSuffix(key, "bare") + "insulated"
	}
	return b.Keyed("earthing_conductor_k", "conductor", working.KnownText(key, c.Material.At()), "k", "k")
}

// unstated lists the places of members that the document leaves out.
func unstated(members ...schema.Pointer) []working.Gap {
	var missing []working.Gap
	for _, m := range members {
		if !m.Stated() {
			missing = append(missing, working.Unstated(m.At()))
		}
	}
	return missing
}
