package roof

import (
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

var (
	hookDeflection  = working.NewFormula("δ", "mm", "c_δ · F_k", statics)
	loadedClearance = working.NewFormula("d_loaded", "mm", "d_tile − δ", statics)
)

// overTile works out what the fixing does to the tiles; pushed is the load under
// which it bends towards them.
func (s *slope) overTile(f *Fixing, doc *schema.Fixing, hook *schema.HookDatasheet, pushed working.Number) {
	f.OverTiles = s.tiled()
	f.RestsOnTile = working.StatedFlag(doc.RestsOnTile)
	f.MadeToRest = working.StatedFlag(hook.RestsOnTileByDesign)
	f.ClearanceMm = working.Stated("d_tile", "mm", doc.TileClearanceMm)
	f.ClearanceMinMm = working.Stated("d_min", "mm", hook.TileClearanceMinMm)
	f.DeflectionMm = hookDeflection.Of(working.Stated("c_δ", "mm/kN", hook.DeflectionMmPerKn), pushed)
	f.ClearanceUnderMm = loadedClearance.Of(f.ClearanceMm, f.DeflectionMm)
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
// the rule set names.
func (s *slope) certified(sheet *schema.FixingDatasheet) working.Flag {
	standard := s.book.Word("mounting_kit_standard")
	switch {
	case !sheet.Certificate.Stated():
		return working.UnknownFlag(sheet.Certificate.At())
	case !standard.Known():
		return working.UnknownFlag(standard.Missing()...)
	}
	return working.KnownFlag(strings.Contains(sheet.Certificate.Value, standard.Value()), sheet.Certificate.At())
}
