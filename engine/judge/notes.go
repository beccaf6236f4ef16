package judge

import (
	"fmt"

	"sunclause/facts"
)

// derivedNotes are what the reader should know of how facts were derived.
func derivedNotes(f *facts.Facts) []string {
	var ids []string
	for i := range f.Strings {
		if s := &f.Strings[i]; s.VmpBy.Value() == "worse_of_power_and_voc_coefficient" {
			ids = append(ids, s.ID)
		}
	}
	if ids == nil {
		return nil
	}
	return []string{fmt.Sprintf("strings %s are of CdTe, of which the coefficient of power reads high with hot cells: the voltage at maximum power is the lower hot, and the higher cold, of what that and the coefficient of the open-circuit voltage give; one that the sheet prints for the voltage at maximum power would be taken before both", Some(ids))}
}
