package earthing

import (
	"slices"

	"sunclause/facts/book"
	"sunclause/facts/circuit"
	"sunclause/facts/working"
	"sunclause/schema"
)

// network is the runs of cable that earth and bond, walked from the main
// earthing terminal and from the electrodes. Where several ways lead to a part,
// the one whose thinnest conductor is thickest counts.
type network struct {
	in     *schema.Installation
	sizes  map[int]working.Number // by run
	toward map[string]step        // from a part toward its root
	roots  map[string]string      // what a part hangs on: main_terminal or electrode
}

// step is a run and the terminal to which it leads.
type step struct {
	run int
	to  string
}

func networkOf(in *schema.Installation, c *circuit.Circuit, b book.Book) network {
	n := network{in: in, sizes: map[int]working.Number{}, toward: map[string]step{}, roots: map[string]string{}}
	var order []int
	for i := range in.Cables {
		if slices.Contains(circuit.ProtectiveServices, c.Service(i).Value()) {
			n.sizes[i] = runSize(&in.Cables[i], b)
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(x, y int) int { return thicker(n.sizes[x], n.sizes[y]) })
	tree := n.span(order)
	if id := in.Earthing.MainTerminal.ID; id.Stated() {
		n.walk(id.Value, "main_terminal", tree)
	}
	for _, e := range in.Earthing.Electrodes {
		n.walk(e.ID.Value, "electrode", tree)
	}
	return n
}

// thicker puts the thicker conductor first, and one of unknown size last.
func thicker(x, y working.Number) int {
	switch {
	case x.Known() != y.Known():
		if x.Known() {
			return -1
		}
		return 1
	case x.Value() > y.Value():
		return -1
	case x.Value() < y.Value():
		return 1
	}
	return 0
}

var sizeInParallel = working.NewFormula("S", "mm²", "n · S", working.ByDefinition)

// runSize is the copper cross-section of a run. Conductors in parallel count
// where they are stated; one is the fewest there can be.
func runSize(r *schema.Run, b book.Book) working.Number {
	sheet := r.Cable.To()
	size := copperSize("S", working.Stated("S_c", "mm²", sheet.CsaMm2), working.StatedText(sheet.Conductor), b)
	if !r.ConductorsPerPole.Stated() {
		return size
	}
	return sizeInParallel.Of(working.Stated("n", "", r.ConductorsPerPole), size)
}

// span keeps of the runs, taken in order, those that join what was apart.
func (n network) span(order []int) map[string][]step {
	group := map[string]string{}
	var find func(t string) string
	find = func(t string) string {
		if g, ok := group[t]; ok && g != t {
			group[t] = find(g)
			return group[t]
		}
		return t
	}
	tree := map[string][]step{}
	for _, i := range order {
		from, to := n.in.Cables[i].From.Value, n.in.Cables[i].To.Value
		if a, b := find(from), find(to); a != b {
			group[a] = b
			tree[from] = append(tree[from], step{i, to})
			tree[to] = append(tree[to], step{i, from})
		}
	}
	return tree
}

// walk notes for every terminal that hangs on a root which run leads nearer to it.
func (n network) walk(root, kind string, tree map[string][]step) {
	if n.roots[root] != "" {
		return
	}
	n.roots[root] = kind
	for queue := []string{root}; len(queue) > 0; queue = queue[1:] {
		for _, s := range tree[queue[0]] {
			if n.roots[s.to] == "" {
				n.roots[s.to], n.toward[s.to] = kind, step{s.run, queue[0]}
				queue = append(queue, s.to)
			}
		}
	}
}

// root is what a part is earthed by.
func (n network) root(part string) working.Text {
	if kind := n.roots[part]; kind != "" {
		return working.KnownText(kind, "/cables")
	}
	return working.UnknownText(n.missing()...)
}

// missing names what to state when no way was found from a part to earth.
func (n network) missing() []working.Gap {
	return append(unstated(n.in.Earthing.MainTerminal.ID.Pointer), working.Unstated("/cables"))
}

// path lists the runs from a part to its root.
func (n network) path(part string) []int {
	var runs []int
	for s, ok := n.toward[part]; ok; s, ok = n.toward[s.to] {
		runs = append(runs, s.run)
	}
	return runs
}

// size is the cross-section of the thinnest conductor on the way from a part
// to its root.
func (n network) size(symbol, part string) working.Number {
	var sizes []working.Number
	for _, r := range n.path(part) {
		sizes = append(sizes, n.sizes[r])
	}
	if len(sizes) == 0 {
		return working.Unknown(symbol, "mm²", n.missing()...)
	}
	return working.Least(symbol, "mm²", sizes...)
}

// besidePower reports whether all conductors on the way are laid along with a run
// that carries power.
func (n network) besidePower(part string) working.Flag {
	path := n.path(part)
	if len(path) == 0 {
		return working.UnknownFlag(n.missing()...)
	}
	var beside []working.Flag
	for _, i := range path {
		other := n.in.Cables[i].LaidWith.To()
		beside = append(beside, working.StatedText(other.Service).OneOf(circuit.PowerServices...))
	}
	return working.All(beside...)
}

// enclosed reports whether runs lie all their way in an enclosure that guards them
// against damage, or within switchgear.
func (n network) enclosed(runs []int) working.Flag {
	var guarded []working.Flag
	for _, i := range runs {
		r := &n.in.Cables[i]
		if r.Segments == nil {
			guarded = append(guarded, working.UnknownFlag(r.Member("segments")))
		}
		for j := range r.Segments {
			guarded = append(guarded, enclosedStretch(&r.Segments[j]))
		}
	}
	return working.All(guarded...)
}

// enclosedStretch takes a stretch whose place is not stated for one outside of
// switchgear.
func enclosedStretch(s *schema.Segment) working.Flag {
	if s.Place.Is("switchgear") {
		return working.KnownFlag(true, s.Place.At())
	}
	closed := working.StatedText(s.Enclosure).OneOf("conduit", "flexible_conduit", "trunking", "ducting")
	return working.All(closed, working.StatedFlag(s.MechanicallyProtected))
}
