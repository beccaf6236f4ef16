package pvstring_test

import (
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"testing"

	"sunclause/facts/facttest"
	"sunclause/facts/pvstring"
)

// point is one row of the reference: a module at a cell temperature and
// 1000 W/m², solved with the single-diode model.
type point struct {
	id, technology           string
	pmax, voc, isc, vmp, imp float64 // data sheet, at STC
	beta, gamma              float64 // V/K of Voc, %/K of maximum power
	cell                     float64 // °C
	modelVoc, modelVmp       float64
	modelIsc                 float64
}

// technologies are the schema's words for those of the reference. The module
// with a high voltage for each cell behaves like a heterojunction one.
var technologies = map[string]string{
	"mono-c-Si": "mono_si", "mono-c-Si-high-Voc": "heterojunction_si", "multi-c-Si": "multi_si",
	"CdTe": "cdte", "CIGS": "cigs", "thin-film-other": "other_thin_film",
}

// reference reads the points at 1000 W/m², by cell temperature.
func reference(t *testing.T) map[float64][]point {
	t.Helper()
	file, err := os.Open("testdata/module-reference.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	points := map[float64][]point{}
	for _, row := range rows[1:] {
		number := map[string]float64{}
		for i, name := range rows[0] {
			number[name], _ = strconv.ParseFloat(row[i], 64)
		}
		if number["G_Wm2"] != 1000 {
			continue
		}
		p := point{row[0], technologies[row[1]], number["Pmp_stc_W"], number["Voc_stc_V"], number["Isc_stc_A"],
			number["Vmp_stc_V"], number["Imp_stc_A"], number["beta_voc_V_K"], number["gamma_pct_K"],
			number["Tcell_C"], number["Voc_V"], number["Vmp_V"], number["Isc_A"]}
		points[p.cell] = append(points[p.cell], p)
	}
	return points
}

// plantOf is an installation with one string of one module for each point, all
// with cold and with hot cells at the temperature of the points.
func plantOf(points []point) object {
	doc := plant(m1(), 1, 0)
	modules, strings, runs := object{}, list{}, list{}
	for i, p := range points {
		modules[p.id] = object{
			"technology": p.technology, "pmax_w": p.pmax, "voc_v": p.voc, "isc_a": p.isc, "vmp_v": p.vmp, "imp_a": p.imp,
			"voc_coeff_v_per_k": p.beta, "pmax_coeff_pct_per_k": p.gamma, "bifacial": false,
		}
		id := fmt.Sprintf("S%d", i+1)
		strings = append(strings, object{"id": id, "module": p.id, "modules_in_series": 1, "mounting": "on_roof"})
		runs = append(runs, object{"id": "R" + id, "from": id, "to": "INV1.1", "service": "pv_string"})
	}
	doc["site"] = object{"temp_min_c": points[0].cell, "temp_max_c": points[0].cell - onRoofRise}
	facttest.At(doc, "datasheets")["modules"] = modules
	doc["strings"], doc["cables"] = strings, runs
	return doc
}

// band is the range in which a formula may lie off the reference, in %. The
// bounds are those found for the formula when the reference was made, and half
// of their last digit.
type band struct{ low, high float64 }

func (b band) holds(t *testing.T, p point, what string, got, model float64) {
	t.Helper()
	const halfDigit = 0.005
	if off := 100 * (got/model - 1); off < b.low-halfDigit || off > b.high+halfDigit {
		t.Errorf("%s at %v °C: %s = %v against %v of the model, %+.3f %% off; the formula lies within %+.2f … %+.2f %%",
			p.id, p.cell, what, got, model, off, b.low, b.high)
	}
}

// The open-circuit voltage linear in the temperature, with the coefficient of
// the data sheet, errs on the high and so safe side by at most 0.27 % from −25
// to 85 °C, on the cold side by at most 0.14 %.
var (
	vocBand     = band{0, 0.27}
	vocColdBand = band{0, 0.14}
)

// vmpBands are for the voltage at maximum power with hot cells, 50 to 85 °C, by
// the coefficient of maximum power. Crystalline silicon lies within 3.6 %,
// mostly low: the five-parameter refit keeps to the voltage coefficient and
// leaves that of power free, so that this is no tight test of the formula. CIGS
// lies within 1.1 %. On CdTe the formula reads up to 7 % too high, and the lower of it
// and the one by the voltage coefficient within 1.2 %. For other thin film it is as
// much as 25 % off, and nothing is derived.
var vmpBands = map[string]band{
	"mono_si": {-3.52, 1.30}, "multi_si": {-3.52, 1.30}, "heterojunction_si": {-3.52, 1.30},
	"cigs": {-1.06, 0.59}, "cdte": {0.41, 1.12},
}

// cdteColdBand is for the same with cold cells on CdTe, −25 to 10 °C: the higher of both
// coefficients still reads a little low, that of the power alone up to 4 %.
var cdteColdBand = band{-0.9, 0}

func TestAgainstSingleDiodeModel(t *testing.T) {
	byTemperature := reference(t)
	if len(byTemperature) != 8 {
		t.Fatalf("the reference has %d cell temperatures, want 8", len(byTemperature))
	}
	for cell, points := range byTemperature {
		if len(points) != 14 {
			t.Errorf("the reference has %d modules at %v °C, want 14", len(points), cell)
		}
		f := derive(t, plantOf(points), rules("coefficient"))
		for i, p := range points {
			holdsVoc(t, p, &f.Strings[i])
			holdsVmp(t, p, &f.Strings[i])
			holdsIsc(t, p, &f.Strings[i])
		}
	}
}

func holdsVoc(t *testing.T, p point, s *pvstring.String) {
	t.Helper()
	b := vocBand
	if p.cell <= 25 {
		b = vocColdBand
	}
	b.holds(t, p, "cold voltage", s.VocCoefficientV.Value(), p.modelVoc)
	b.holds(t, p, "hot voltage", s.VocHotV.Value(), p.modelVoc)
	if s.VocMaxV.Value() != s.VocCoefficientV.Value() {
		t.Errorf("%s: maximum voltage %v is not that of the method chosen", p.id, s.VocMaxV.Value())
	}
}

func holdsVmp(t *testing.T, p point, s *pvstring.String) {
	t.Helper()
	if p.technology == "other_thin_film" {
		if s.VmpHotV.Known() || s.VmpColdV.Known() {
			t.Errorf("%s: a voltage at maximum power was derived for thin film", p.id)
		}
		return
	}
	if p.technology == "cdte" && p.cell < 25 {
		cdteColdBand.holds(t, p, "cold voltage at maximum power", s.VmpColdV.Value(), p.modelVmp)
	}
	if p.cell >= 50 {
		vmpBands[p.technology].holds(t, p, "hot voltage at maximum power", s.VmpHotV.Value(), p.modelVmp)
	}
}

// The short-circuit current is taken at STC, where the refit honours the data
// sheet, and no term for the temperature is derived. The factor 1.25 of the
// design current has to cover that term up to the hottest cell.
func holdsIsc(t *testing.T, p point, s *pvstring.String) {
	t.Helper()
	if p.cell == 25 {
		band{-0.005, 0.005}.holds(t, p, "short-circuit current", s.IscStcA.Value(), p.modelIsc)
	}
	if s.IscMaxA.Value() < p.modelIsc {
		t.Errorf("%s at %v °C: design current %v is below %v of the model", p.id, p.cell, s.IscMaxA.Value(), p.modelIsc)
	}
}
