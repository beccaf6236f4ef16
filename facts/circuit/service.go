package circuit

import (
	"slices"
	"strings"

	"sunclause/facts/working"
	"sunclause/schema"
)

// PowerServices are the services of runs that carry current in service.
var PowerServices = []string{"pv_string", "pv_array", "battery", "ac"}

// ProtectiveServices are the services of conductors that end at earthing bars, frames and
// electrodes; a run between the bodies of parts may be one for control as well.
var ProtectiveServices = []string{"protective", "bonding", "earthing"}

// carriesPower reports whether the document calls a run one that carries current.
// Protective, bonding, earthing and control conductors join parts, but feed nothing.
func carriesPower(r schema.Run) bool { return slices.Contains(PowerServices, r.Service.Value) }

// Service is what a run serves: the word of the document where the circuit bears it
// out.
func (c *Circuit) Service(run int) working.Text {
	return working.Confirmed(working.StatedText(c.runs[run].Service), c.ServiceMade(run))
}

// ServiceMade is what the circuit makes of a run, by the terminals that it joins and
// the strings whose current it carries. Where several words would do, the one that
// the document has is taken. It is unknown where nothing decides.
func (c *Circuit) ServiceMade(run int) working.Text {
	r := &c.runs[run]
	words, made := c.services(run)
	switch {
	case !made.Known():
		return made
	case slices.Contains(words, r.Service.Value):
		return working.KnownText(r.Service.Value, made.At())
	}
	return working.KnownText(words[0], made.At())
}

// services lists the words that would do for a run, and the part that makes it so.
func (c *Circuit) services(run int) ([]string, working.Text) {
	r := &c.runs[run]
	switch {
	case c.earthed[Part(r.From.Value)] != "":
		return ProtectiveServices, working.KnownText(ProtectiveServices[0], c.earthed[Part(r.From.Value)])
	case c.earthed[Part(r.To.Value)] != "":
		return ProtectiveServices, working.KnownText(ProtectiveServices[0], c.earthed[Part(r.To.Value)])
	case c.feeds[run] < 0 && c.betweenLive(r): // other runs join its ends
		return nil, working.UnknownText[string]()
	case c.feeds[run] < 0:
		return append(slices.Clone(ProtectiveServices), "control"), working.KnownText(ProtectiveServices[0], r.At())
	}
	kind := c.Kind(r.At(), r.From.Value, r.To.Value)
	switch kind.Value() {
	case PV:
		return c.pvServices(run), kind
	case Battery:
		return []string{"battery"}, kind
	}
	return []string{"ac"}, kind
}

// pvServices are the words for a run of the PV side: the cable of a string carries
// one, that of an array several. One string behind a box is an array of its own.
func (c *Circuit) pvServices(run int) []string {
	switch on := c.carried[run]; {
	case on.strings == 1 && !on.boxed:
		return []string{"pv_string"}
	case on.strings > 1:
		return []string{"pv_array"}
	}
	return []string{"pv_string", "pv_array"}
}

// load is what is known of the strings on a run.
type load struct {
	strings int
	boxed   bool // behind an array, where strings come together
}

// count counts the strings on each run. A run on which a string may lie that was not
// traced has none.
func (c *Circuit) count(in *schema.Installation) {
	boxes := map[string]bool{}
	for _, a := range in.Arrays {
		boxes[a.ID.Value] = true
	}
	c.carried = make([]load, len(c.runs))
	for _, s := range in.Strings {
		p := c.From(s.ID.Value)
		if p.Untraced != nil {
			continue
		}
		boxed := false
		for _, r := range p.Runs {
			boxed = boxed || strings.HasSuffix(c.runs[r].From.Value, ".out") && boxes[Part(c.runs[r].From.Value)] ||
				strings.HasSuffix(c.runs[r].To.Value, ".out") && boxes[Part(c.runs[r].To.Value)]
			c.carried[r].strings++
			c.carried[r].boxed = boxed
		}
	}
}

// earthedParts are the parts to which protective conductors go and no others, and
// where they stand.
func earthedParts(e *schema.Earthing) map[string]string {
	parts := map[string]string{e.MainTerminal.ID.Value: e.MainTerminal.At()}
	for _, t := range e.Terminals {
		parts[t.ID.Value] = t.At()
	}
	for _, f := range e.Frames {
		parts[f.ID.Value] = f.At()
	}
	for _, x := range e.Electrodes {
		parts[x.ID.Value] = x.At()
	}
	delete(parts, "")
	return parts
}
