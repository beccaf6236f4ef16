package handover

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// Notice holds the facts of one notification or application.
type Notice struct {
	working.Subject

	To             working.Text   `json:"to" words:"who is told"`
	Route          working.Text   `json:"route" words:"which way it went"`
	Answer         working.Text   `json:"answer" words:"what they answered"`
	ServiceOffDays working.Number `json:"service_date_off_days" words:"days by which the day of going into service as told to them is off that of the tests, whichever way"`
	Referenced     working.Flag   `json:"reference_recorded" words:"whether the receiver's reference is recorded"`
}

var daysOff = working.NewFormula("|t|", "d", "|t|", working.ByDefinition)

// notices derives the facts of every notification; nil when the document states
// none.
func notices(in *schema.Installation) []Notice {
	if in.Handover.Notifications == nil {
		if in.Project.Stage.Is("design") { // nothing is built yet of which to notify anybody
			return []Notice{}
		}
		return nil
	}
	all := make([]Notice, len(in.Handover.Notifications))
	for i, n := range in.Handover.Notifications {
		all[i] = Notice{
			Subject:        working.Subject{ID: n.ID.Value, At: n.At(), Name: "notice " + n.ID.Value},
			To:             working.StatedText(n.To),
			Route:          working.StatedText(n.Route),
			Answer:         working.StatedText(n.Answer),
			ServiceOffDays: daysOff.Of(working.Days("t", in.Commissioning.Date, n.Commissioned)),
			Referenced:     working.IsStated(n.Reference),
		}
	}
	return all
}
