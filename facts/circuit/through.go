package circuit

// Through lists, for each way of an isolator, the strings whose current passes
// through it. The strings are named by their terminals.
func (c *Circuit) Through(isolator int, strings []string) [][]string {
	var ways []*way
	for _, e := range c.edges {
		if e.way != nil && e.way.isolator == isolator {
			ways = append(ways, e.way)
		}
	}
	through := make([][]string, len(ways))
	for _, s := range strings {
		for _, w := range c.path(s).ways {
			for i := range ways {
				if ways[i] == w {
					through[i] = append(through[i], s)
				}
			}
		}
	}
	return through
}
