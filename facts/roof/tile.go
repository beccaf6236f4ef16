package roof

import (
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// overTile works out what the fixing does to the tiles; pushed is the load under
// which it bends towards them.
func (s *slope) overTile(f *Fixing, doc *schema.Fixing, sheet *schema.FixingDatasheet, pushed working.Number) {
	f.OverTiles = s.tiled()
	f.RestsOnTile = working.StatedFlag(doc.RestsOnTile)
	f.MadeToRest = sheetFlag(sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Flag { return s.Hook.RestsOnTileByDesign })
	f.ClearanceMm = working.Stated("d_tile", "mm", doc.TileClearanceMm)
	f.ClearanceMinMm = sheetNumber("d_min", "mm", sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Hook.TileClearanceMinMm })
	rate := sheetNumber("c_δ", "mm/kN", sheet, doc.Datasheet.Text, func(s *schema.FixingDatasheet) schema.Number { return s.Hook.DeflectionMmPerKn })
	f.DeflectionMm = working.Closure{Symbol: "δ", Unit: "mm", Text: "c_δ · F_k", Source: statics}.Of(
		func(x ...float64) float64 { return x[0] * x[1] }, rate, pushed)
	f.ClearanceUnderMm = working.Closure{Symbol: "d_loaded", Unit: "mm", Text: "d_tile − δ", Source: statics}.Of(
		func(x ...float64) float64 { return x[0] - x[1] }, f.ClearanceMm, f.DeflectionMm)
	f.TileNotched, f.TileLiesFlat = working.StatedFlag(doc.TileNotched), working.StatedFlag(doc.TileLiesFlat)
	f.Weathering = working.StatedText(doc.Weathering)
}

// tiled reports whether the covering is of tiles or slates.
func (s *slope) tiled() working.Flag {
	kind := s.doc.Covering.Kind
	if !kind.Stated() {
		return working.UnknownFlag(kind.At())
	}
	small := strings.HasSuffix(kind.Value, "tile") || strings.HasSuffix(kind.Value, "slate")
	return working.KnownFlag(small, kind.At())
}

// certified reports whether the certificate of a fixing names the standard that
// the rule set wants.
func (s *slope) certified(sheet *schema.FixingDatasheet, ref schema.Text) working.Flag {
	standard := s.book.Word("mounting_kit_standard")
	switch {
	case sheet == nil:
		return working.UnknownFlag(ref.At())
	case !sheet.Certificate.Stated():
		return working.UnknownFlag(sheet.Certificate.At())
	case !standard.Known():
		return working.UnknownFlag(standard.Missing()...)
	}
	return working.KnownFlag(strings.Contains(sheet.Certificate.Value, standard.Value()), sheet.Certificate.At())
}
