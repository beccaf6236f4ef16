package policies_test

import (
	"math"
	"strconv"
	"testing"
)

// TestLoopTable holds the rows of circuit-breakers against the formula
// 230 V · 0.95 / Ia, which gives every value of BS 7671 Table 41.3 within
// 0.005 Ω.
func TestLoopTable(t *testing.T) {
	set := load(t, "gb")
	multiples := map[byte][2]float64{}
	for _, row := range set.Book.Tables["breaker_operation"].Rows {
		multiples[row["characteristic"].(string)[0]] = [2]float64{row["within_0_4_s"].(float64), row["within_5_s"].(float64)}
	}
	tried := 0
	for _, row := range set.Book.Tables["zs_limits"].Rows {
		device := row["device"].(string)
		rated, err := strconv.ParseFloat(device[1:], 64)
		if err != nil {
			continue // a fuse
		}
		for i, column := range []string{"within_0_4_s", "within_5_s"} {
			if printed, ok := row[column].(float64); ok {
				tried++
				if want := 230 * 0.95 / (multiples[device[0]][i] * rated); math.Abs(printed-want) > 0.0055 {
					t.Errorf("%s %s: %v Ω, the formula gives %v Ω", device, column, printed, want)
				}
			}
		}
	}
	if tried < 60 {
		t.Errorf("%d values of circuit-breakers compared", tried)
	}
}
