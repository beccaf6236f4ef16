package circuit

// Through lists, for each isolator and each of its ways, the strings whose
// current passes through it. The strings are named by their terminals and
// listed by their indexes.
func (c *Circuit) Through(strings []string) [][][]int {
	through := make([][][]int, len(c.ways))
	for i, ways := range c.ways {
		through[i] = make([][]int, len(ways))
	}
	for s, terminal := range strings {
		for _, w := range c.From(terminal).ways {
			through[w.isolator][w.index] = append(through[w.isolator][w.index], s)
		}
	}
	return through
}
