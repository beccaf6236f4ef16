package schema

// clipper makes plain values of a document that may not be in order, for the
// library to say what is wrong with it. What fits its shape is cut down to little
// that fits too, and of what does not fit only so much is kept: everybody knows
// enough after the first hundred problems, and a text from a stranger has a
// million.
type clipper struct {
	left int  // values that may be kept yet
	cut  bool // whether something that does not fit was left out
}

// maxDoubtful is how many values, roughly, the library is asked about.
const maxDoubtful = 300_000

func (c *clipper) clip(s *shape, n *node) any {
	c.left--
	switch {
	case n.kind == isList && s.kind == isList:
		return c.list(s, n)
	case n.kind == isObject && s.kind == isObject && s.each != nil:
		return c.keyed(s, n)
	case n.kind == isObject && s.kind == isObject:
		return c.object(s, n)
	}
	return n.brief()
}

// list keeps the items up to the last that was asked for, so that each keeps its
// number. All that fit are the same one.
func (c *clipper) list(s *shape, n *node) any {
	children := n.children
	if s.fits(n) {
		children = children[:s.fewest]
	}
	items := make([]any, 0, len(children))
	var fitting any
	for i := range children {
		child := &children[i]
		switch fits := s.each.fits(child); {
		case fits && fitting == nil:
			fitting = c.clip(s.each, child)
			items = append(items, fitting)
		case fits:
			items = append(items, fitting)
		case c.left <= 0:
			c.cut = true
			return items
		default:
			items = append(items, c.clip(s.each, child))
		}
	}
	return items
}

func (c *clipper) keyed(s *shape, n *node) any {
	members := map[string]any{}
	for i := range n.children {
		child := &n.children[i]
		fits := s.form(child.name) && s.each.fits(child)
		switch {
		case fits && len(n.children) <= s.most:
		case c.left <= 0 && !fits:
			c.cut = true
			return members
		default:
			members[child.name] = c.clip(s.each, child)
		}
	}
	return members
}

func (c *clipper) object(s *shape, n *node) any {
	members := make(map[string]any, len(n.children))
	for i := range n.children {
		child := &n.children[i]
		if m := s.member(child.name); m != nil {
			members[child.name] = c.clip(m.shape, child)
		} else {
			members[child.name] = nil // unknown, whatever it is
		}
	}
	return members
}
