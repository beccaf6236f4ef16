package surge_test

import (
	"testing"

	"pgregory.net/rapid"

	"sunclause/facts/facttest"
	"sunclause/facts/surge"
)

// need is by how much a route exceeds its critical length.
func need(r surge.Route) float64 { return r.DcRouteM.Value() / r.DcLcritM.Value() }

// A longer run, or more lightning, never lowers the need of surge protection,
// and a longer run never leaves fewer places without a device.
func TestMoreCableNeverLowersTheNeed(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		doc := site()
		run := rapid.IntRange(0, 2).Draw(rt, "run")
		length := rapid.Float64Range(0.1, 200).Draw(rt, "length")
		facttest.At(doc, "cables", run, "segments", 0)["length_m"] = length
		before := derive(t, doc).Routes[0]
		facttest.At(doc, "cables", run, "segments", 0)["length_m"] = length + rapid.Float64Range(0.1, 200).Draw(rt, "more")
		after := derive(t, doc).Routes[0]
		if need(after) < need(before) {
			rt.Errorf("need %v became %v", need(before), need(after))
		}
		if after.DcInputsBare.Value() < before.DcInputsBare.Value() {
			rt.Errorf("inputs without a device: %v became %v", before.DcInputsBare.Value(), after.DcInputsBare.Value())
		}
		facttest.At(doc, "site")["lightning_ng_per_km2_yr"] = rapid.Float64Range(0.7, 20).Draw(rt, "flashes")
		if stormy := derive(t, doc).Routes[0]; need(stormy) < need(after) {
			rt.Errorf("with more lightning, need %v became %v", need(after), need(stormy))
		}
	})
}

// A device more never leaves more places without one; a better device never
// changes what is asked of it.
func TestDevicesNeverHarm(t *testing.T) {
	places := []string{"S1", "S2", "Q1.1.in", "Q1.1.out", "INV1.1", "INV1.2"}
	rapid.Check(t, func(rt *rapid.T) {
		doc := site()
		facttest.At(doc, "cables", 0, "segments", 0)["length_m"] = rapid.Float64Range(0.1, 60).Draw(rt, "length")
		before := derive(t, doc).Routes[0]
		doc["spds"] = append(doc["spds"].(list), object{"id": "P9", "circuit": "pv_dc", "datasheet": "DC", "connected_at": rapid.SampledFrom(places).Draw(rt, "place")})
		after := derive(t, doc)
		if after.Routes[0].DcInputsBare.Value() > before.DcInputsBare.Value() || after.Routes[0].DcArrayEndsBare.Value() > before.DcArrayEndsBare.Value() {
			rt.Error("a device more leaves more places without one")
		}
		facttest.At(doc, "datasheets", "spds", "DC")["ucpv_v"] = rapid.Float64Range(600, 1500).Draw(rt, "U_cpv")
		better := derive(t, doc).SPDs[0]
		if better.VocMaxV.Value() != after.SPDs[0].VocMaxV.Value() || better.UcpvOverVocStc.Value() < after.SPDs[0].UcpvOverVocStc.Value() {
			rt.Error("a higher voltage of the device makes it worse")
		}
	})
}
