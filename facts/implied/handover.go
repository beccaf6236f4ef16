package implied

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// attendances wants somebody on site for the work and for the tests, where dates say
// that they were done and the list is stated. Nothing asks for the list itself.
func attendances(in *schema.Installation) []want {
	h := in.Handover
	if h.Attendances == nil || !in.Project.Stage.Is("as_built") {
		return nil
	}
	var all []want
	for _, p := range []struct {
		phase, words string
		done         schema.Text
	}{
		{"during_installation", "attendance during the installation", h.EndOfWork},
		{"testing_and_commissioning", "attendance at the tests", in.Commissioning.TestsComplete},
	} {
		if p.done.Stated() {
			there := working.Among(h.Attendances, h.Member("attendances"), func(a *schema.SiteAttendance) bool { return a.Phase.Is(p.phase) })
			all = append(all, want{p.words, p.done.At(), there})
		}
	}
	return all
}
