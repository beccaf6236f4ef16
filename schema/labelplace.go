package schema

import "fmt"

// checkLabels makes sure that each label hangs in one place: on a part, along a
// run, or at a location. A label that hangs nowhere would serve nowhere, and of
// one in two places nobody could say which it is.
func (c *references) checkLabels() {
	for i := range c.doc.Installation.Labels {
		l := &c.doc.Installation.Labels[i]
		var stated []Text
		for _, t := range []Text{l.On, l.Run.Text, l.Location} {
			if t.Stated() {
				stated = append(stated, t)
			}
		}
		switch {
		case len(stated) == 0:
			c.add(l.ID, func() (string, string) {
				return fmt.Sprintf("label %s does not say where it hangs", l.ID.Value), "name a part (on), a run of cable (run) or a location"
			})
		case len(stated) > 1:
			c.add(stated[1], func() (string, string) {
				return fmt.Sprintf("%s: label %s hangs somewhere else already, by %s", Spoken(stated[1].At()), l.ID.Value, Spoken(stated[0].At())),
					"keep one of the two, or describe two labels"
			})
		}
		if l.PositionM.Stated() && !l.Run.Stated() {
			c.add(l.PositionM, func() (string, string) {
				return fmt.Sprintf("%s: a position is measured along a run, and label %s names none", Spoken(l.PositionM.At()), l.ID.Value), "name the run, or leave the position out"
			})
		}
	}
}
