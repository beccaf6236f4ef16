package label

import (
	"maps"
	"slices"
	"strings"

	"sunclause/facts/working"
)

// Place is one place where a label table of the rule set asks for a label. Its
// id is the legend and the part, as in dual_supply@B1.
type Place struct {
	working.Subject

	Legend      working.Text   `json:"legend" words:"legend that the label table asks for"`
	Kind        working.Text   `json:"place" words:"kind of place, as a word of the label table"`
	Part        working.Text   `json:"part" words:"part on which it is due, or the word for the location"`
	Where       working.Text   `json:"where" words:"where on it, in words of the label table"`
	Prints      working.Text   `json:"prints" words:"what must be printed on it beside the words, as the label table has it"`
	Due         working.Flag   `json:"due" words:"yes where the label is due; unknown where that cannot be told"`
	Present     working.Flag   `json:"present" words:"whether a label with that legend is there"`
	ServedBy    working.Names  `json:"served_by" words:"labels that serve"`
	OnFixed     working.Flag   `json:"on_fixed_part" words:"whether one of them is on something that stays when a cover is taken off"`
	VoltageDueV working.Number `json:"voltage_due_v" words:"maximum voltage to be printed"`
	CurrentDueA working.Number `json:"current_due_a" words:"design short-circuit current to be printed"`
}

// site is one place of a kind on this installation.
type site struct {
	part      string // id, or the word for a location
	at        string
	fits      working.Flag // whether a label is due there, as far as the place decides
	parts     []string     // further parts on which it serves as well
	locations []string     // locations that stand for it
	undecided string       // member that decides whether main_board stands for it
	marked    working.Flag // member that says that it is marked, label or not
	least     int          // labels of the legend that must be on the part; 0 means one
}

// schedule lists the labels that the rule set's tables ask for on this very
// installation, each place once. Where it is unknown whether a label is due, it is
// listed, and whether it is there counts only if it is due.
func (j *job) schedule(markings []Marking) []Place {
	all := []Place{}
	seen := map[string]bool{}
	for _, a := range j.rows {
		sites, missing := j.sites(a.place, markings)
		if missing != nil {
			sites = append(sites, site{part: a.place, at: pointerOf(missing), fits: working.UnknownFlag(missing...)})
		}
		for _, s := range sites {
			due := working.All(s.fits, j.dueWhen(a.due))
			id := a.legend + "@" + s.part
			if seen[id] || due.Known() && !due.Value() {
				continue
			}
			seen[id] = true
			all = append(all, j.place(id, a, s, due))
		}
	}
	return all
}

// pointerOf is the first of what is missing that is a member of the document.
func pointerOf(missing []working.Gap) string {
	for _, m := range missing {
		if strings.HasPrefix(m.At, "/") {
			return m.At
		}
	}
	return "/labels"
}

func (j *job) place(id string, a scheduleRow, s site, due working.Flag) Place {
	p := Place{
		Subject: working.Subject{ID: id, At: s.at, Name: "label " + a.legend + " at " + s.part},
		Legend:  working.KnownText(a.legend, ""),
		Kind:    working.KnownText(a.place, ""),
		Part:    working.KnownText(s.part, s.at),
		Where:   working.KnownText(a.where, ""),
		Prints:  working.KnownText(a.prints, ""),
		Due:     due,
	}
	p.VoltageDueV, p.CurrentDueA = j.toPrint(a, s)
	if j.in.Labels == nil {
		p.Present, p.ServedBy, p.OnFixed = working.UnknownFlag("/labels"), working.UnknownList("/labels"), working.UnknownFlag("/labels")
	} else {
		j.serve(&p, a.legend, s)
	}
	if s.marked.Known() && s.marked.Value() {
		if !p.Present.Value() { // the mark is on the joint or the way itself
			p.OnFixed = s.marked
		}
		p.Present = s.marked
	}
	if !due.Known() {
		p.Present = working.Any(p.Present, due)
	}
	return p
}

// toPrint is what a label must say of the strings behind its part.
func (j *job) toPrint(a scheduleRow, s site) (voltage, current working.Number) {
	voltage, current = working.NoNumber("U_oc,max", "V"), working.NoNumber("I_sc,max", "A")
	for _, word := range strings.Fields(a.prints) {
		switch word {
		case "voltage_max":
			voltage = j.behind(s.part).vocMax
		case "current_max":
			current = j.behind(s.part).iscMax
		}
	}
	return voltage, current
}

// serve finds the labels with the legend that are on the part, on one that
// serves as well, or at a location that stands for it.
func (j *job) serve(p *Place, legend string, s site) {
	var ids []string
	var fixed []working.Flag
	for _, i := range j.carriedBy(s, legend) {
		l := &j.in.Labels[i]
		ids = append(ids, l.ID.Value)
		fixed = append(fixed, working.Not(working.StatedText(l.FixedTo).OneOf(removable...)))
	}
	p.ServedBy, p.OnFixed = working.List(ids...), working.Any(fixed...)
	p.Present = working.KnownFlag(len(ids) >= max(s.least, 1), s.at)
	atMainBoard := j.hung[hanging{legend: legend, location: mainBoard}] // which this place may be
	if len(atMainBoard) > 0 && !slices.Contains(s.locations, mainBoard) && s.undecided != "" {
		p.Present = working.Any(p.Present, working.UnknownFlag(s.undecided))
	}
}

// mainBoard is a location of labels.
const mainBoard = "main_board"

// carriedBy lists the labels of a legend that a place has, in the order of the
// document.
func (j *job) carriedBy(s site, legend string) []int {
	all := slices.Concat(j.hung[hanging{legend: legend, on: s.part}], j.hung[hanging{legend: legend, run: s.part}])
	for _, part := range s.parts {
		all = append(all, j.hung[hanging{legend: legend, on: part}]...)
	}
	for _, location := range s.locations {
		all = append(all, j.hung[hanging{legend: legend, location: location}]...)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// removable are the carriers that are not there when the work is done.
var removable = []string{"removable_cover", "door_inside"}

// sites lists the places of a kind, and what is missing to know them all.
func (j *job) sites(kind string, markings []Marking) ([]site, []working.Gap) {
	if kind == pvCable {
		return j.cableSites(markings)
	}
	list, known := kinds[kind]
	if !known {
		return nil, []working.Gap{working.Unstated(unknownWord("place", kind, slices.Sorted(maps.Keys(kinds))))}
	}
	return list(j)
}
