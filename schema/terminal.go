package schema

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// terminal checks a reference to the terminal of a part, as in ISO1.1.in. A
// part's bare id stands for its body, to which protective conductors go.
func (c *references) terminal(t Text) {
	id, rest, _ := strings.Cut(t.Value, ".")
	if _, ok := c.parts[id]; !ok {
		c.add(t, func() (string, string) {
			return fmt.Sprintf("%s: there is no part with the id %q", Spoken(t.At()), id), closest(id, c.idsOf(anyPart), "describe it")
		})
		return
	}
	if rest == "" {
		return
	}
	if names := c.terminals(id); !slices.Contains(names, rest) {
		c.unknownTerminal(t, id, names)
	}
}

func (c *references) unknownTerminal(t Text, id string, names []string) {
	c.add(t, func() (string, string) {
		what := fmt.Sprintf("%s: the %s %s has no terminal %q", Spoken(t.At()), inPlainWords(c.parts[id].kind), id, t.Value)
		if t.Value == id {
			what = fmt.Sprintf("%s: the %s %s has several terminals, and the run must say which", Spoken(t.At()), inPlainWords(c.parts[id].kind), id)
		}
		if len(names) == 0 {
			return what, fmt.Sprintf("write %q", id)
		}
		return what, fmt.Sprintf("it has %s.%s", id, strings.Join(names[:min(len(names), 12)], ", "+id+"."))
	})
}

// terminals lists the terminals that a part has by name, none for a part that
// is its own only terminal.
func (c *references) terminals(id string) []string {
	names, ok := c.ends[id]
	if !ok {
		names = terminals(c.parts[id].is)
		c.ends[id] = names
	}
	return names
}

func terminals(part any) []string {
	switch p := part.(type) {
	case *Array:
		return append(numbered(int(p.Ways.Value)), "out")
	case *Isolator:
		var names []string
		for _, w := range p.Ways {
			names = append(names, w.ID.Value+".in", w.ID.Value+".out")
		}
		return names
	case *Inverter:
		return append(numbered(len(p.Datasheet.To().MPPTs)), "battery", "ac", "backup")
	case *Board:
		names := []string{"in"}
		for _, w := range p.Ways {
			names = append(names, w.ID.Value)
		}
		return names
	case *Meter:
		return []string{"in", "out"}
	case *Changeover:
		return []string{"grid", "source", "load"}
	case *Battery:
		return []string{"ac"}
	}
	return nil
}

// numbered are the names 1, 2, … n.
func numbered(n int) []string {
	var names []string
	for i := 1; i <= n; i++ {
		names = append(names, strconv.Itoa(i))
	}
	return names
}

// checkRuns makes sure that a run that carries power ends at named terminals,
// and that it does not begin where it ends.
func (c *references) checkRuns() {
	for _, r := range c.doc.Installation.Cables {
		if slices.Contains([]string{"protective", "bonding", "earthing", "control"}, r.Service.Value) {
			continue
		}
		for _, t := range []Text{r.From, r.To} {
			names := c.terminals(t.Value)
			if len(names) > 0 && c.parts[t.Value].kind != "battery" {
				c.unknownTerminal(t, t.Value, names)
			}
		}
		if r.From.Value == r.To.Value {
			c.add(r.To, func() (string, string) {
				return fmt.Sprintf("%s: run %s ends at %s, where it begins", Spoken(r.To.At()), r.ID.Value, r.To.Value), "name the terminal at its other end"
			})
		}
	}
}

// checkSheets makes sure that a figure is stated in one unit only: two statements
// of one thing can disagree, and nobody could say which holds.
func (c *references) checkSheets() {
	for _, m := range c.doc.Installation.Datasheets.Modules {
		c.oneOf(m.VocCoeffPctPerK, m.VocCoeffVPerK)
		c.oneOf(m.IscCoeffPctPerK, m.IscCoeffAPerK)
	}
	for _, s := range c.doc.Installation.Datasheets.Cables {
		c.oneOf(s.BendRadiusMinDiameters, s.BendRadiusMinMm)
	}
}

// checkDepartures makes sure that each departure is from one requirement, or from
// the plausible values of one member and for one value.
func (c *references) checkDepartures() {
	for _, d := range c.doc.Installation.Handover.Departures {
		switch {
		case d.Requirement.Stated() && d.Member.Stated():
			c.add(d.Member, func() (string, string) {
				return fmt.Sprintf("%s: the departure is from a requirement already", Spoken(d.Member.At())), "make two departures of it"
			})
		case !d.Requirement.Stated() && !d.Member.Stated():
			c.add(d, func() (string, string) {
				return fmt.Sprintf("%s does not say what it departs from", Spoken(d.At())), "state the requirement, or the member whose value is unlikely"
			})
		case d.Member.Stated() && !d.Value.Stated():
			c.add(d, func() (string, string) {
				return fmt.Sprintf("%s does not say which value it accepts", Spoken(d.At())), "state as value what stands at the member"
			})
		case d.Value.Stated() && !d.Member.Stated():
			c.add(d.Value, func() (string, string) {
				return fmt.Sprintf("%s: the departure is from a requirement, which has no value of its own", Spoken(d.Value.At())), "leave it out, or state the member instead of the requirement"
			})
		}
	}
}

func (c *references) oneOf(a, b Number) {
	if a.Stated() && b.Stated() {
		c.add(b, func() (string, string) {
			return fmt.Sprintf("%s states what %s has stated already", Spoken(b.At()), Spoken(a.At())), "keep the one that the sheet prints"
		})
	}
}
