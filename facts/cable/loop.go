package cable

import (
	"strings"

	"sunclause/facts/circuit"
	"sunclause/facts/working"
)

// Loop holds the facts of runs by which more than one way leads on: what hangs on them
// cannot be followed, so that nothing is known of the currents in them.
type Loop struct {
	working.Subject

	Kind working.Text   `json:"kind" words:"kind of circuit: pv_dc, battery_dc or ac"`
	On   working.Text   `json:"several_ways" words:"runs and parts on more than one way; none, where there is one only"`
	Ends working.Number `json:"ends" words:"inputs, batteries or supplies that it joins"`
}

// loopsOf lists the loops of the graph.
func loopsOf(c *circuit.Circuit) []Loop {
	all := []Loop{}
	for _, l := range c.Loops() {
		names := circuit.Several(l.Names)
		all = append(all, Loop{
			Subject: working.Subject{ID: "loop@" + l.Names[0], At: l.At, Name: "more than one way at " + l.Names[0]},
			Kind:    l.Kind,
			On:      working.KnownText(strings.Join(names, ", "), l.At),
			Ends:    working.Counted("n_ends", len(l.Ends), l.At),
		})
	}
	return all
}
