package earthing

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Alarm holds the facts of one earth-fault alarm.
type Alarm struct {
	working.Subject

	Inverter     working.Text   `json:"inverter" words:"inverter that watches the array"`
	Signal       working.Text   `json:"signal" words:"how it tells people"`
	Noticed      working.Flag   `json:"noticed" words:"whether the owner will notice it where it is"`
	Persists     working.Flag   `json:"persists" words:"whether it lasts until the fault is cleared"`
	RepeatMin    working.Number `json:"repeat_min" words:"minutes between repeats"`
	Instructions working.Flag   `json:"instructions_given" words:"whether the owner has written instructions what to do"`
}

func alarms(in *schema.Installation) []Alarm {
	if in.Earthing.Alarms == nil {
		return nil
	}
	all := make([]Alarm, len(in.Earthing.Alarms))
	for i, a := range in.Earthing.Alarms {
		all[i] = Alarm{
			Subject:      working.Subject{ID: a.ID.Value, At: a.At(), Name: "earth-fault alarm " + a.ID.Value},
			Inverter:     working.StatedText(a.Inverter.Text),
			Signal:       working.StatedText(a.Signal),
			Noticed:      working.StatedFlag(a.Noticed),
			Persists:     working.StatedFlag(a.Persists),
			RepeatMin:    working.Stated("t", "min", a.RepeatMin),
			Instructions: working.StatedFlag(a.InstructionsGiven),
		}
	}
	return all
}
