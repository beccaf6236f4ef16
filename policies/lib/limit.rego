# METADATA
# title: Comparisons
# description: >-
#   Holds every part to every comparison of a rule set: the limit of a row, or a
#   condition under which a requirement applies. Many requirements share a
#   condition, which stands here once. A comparison is data: subject, fact and
#   limit, listed by how it compares.
package lib.limit

# broken holds the comparisons that a part does not keep, by number and part.
broken := single | group

# A group is broken where every one of its comparisons is.
group contains [g.number, s.id] if {
	some g in data.groups
	some s in subjects[g.subject]
	every c in g.any_of {
		[c.number, about(c, s)] in single
	}
}

about(c, s) := s.id if not c.whole

about(c, _) := "installation" if c.whole

# single holds the comparisons that are no group. A fact that is unknown is not
# there, and breaks nothing.
single contains [c.number, s.id] if {
	some c in data.comparisons.at_most
	some s in subjects[c.subject]
	value := s[c.fact]
	value > c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.at_least
	some s in subjects[c.subject]
	value := s[c.fact]
	value < c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.below
	some s in subjects[c.subject]
	value := s[c.fact]
	value >= c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.above
	some s in subjects[c.subject]
	value := s[c.fact]
	value <= c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.equals
	some s in subjects[c.subject]
	value := s[c.fact]
	value != c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.differs
	some s in subjects[c.subject]
	value := s[c.fact]
	value == c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.one_of
	some s in subjects[c.subject]
	value := s[c.fact]
	not value in c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.none_of
	some s in subjects[c.subject]
	value := s[c.fact]
	value in c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.includes
	some s in subjects[c.subject]
	value := s[c.fact]
	not c.limit in value
}

single contains [c.number, s.id] if {
	some c in data.comparisons.lacks
	some s in subjects[c.subject]
	value := s[c.fact]
	c.limit in value
}

# Dates are year-month-day, which sort as words do.
single contains [c.number, s.id] if {
	some c in data.comparisons.since
	some s in subjects[c.subject]
	value := s[c.fact]
	value < c.limit
}

single contains [c.number, s.id] if {
	some c in data.comparisons.until
	some s in subjects[c.subject]
	value := s[c.fact]
	value > c.limit
}

# Of comparisons of two facts, or of a fact with the cell of a table, there are few.
single contains [c.number, s.id] if {
	some c in data.between
	some s in subjects[c.subject]
	value := fact(s, c.fact)
	limit := times(limit_of(s, c.limit), c.factor)
	suits(value, limit)
	not holds(c.comparison, value, limit)
}

# A table that was replaced may hold words where numbers were, and limits nothing.
suits(value, limit) if type_name(value) == type_name(limit)

suits(value, _) if is_array(value)

limit_of(s, name) := fact(s, name)

# A cell stands in the first row that every key holds for; among steps in the
# nearest of them.
limit_of(s, cell) := nearest(cell, rows)[cell.column] if {
	count([k | some k in cell.keys; fact(s, k.fact)]) == count(cell.keys)
	rows := [row |
		some row in data.tables[cell.table].rows
		every k in cell.keys {
			fits(k.comparison, row[k.column], fact(s, k.fact))
		}
	]
}

# A key holds for every fact where the cell is the word any.
fits(_, "any", _)

fits("equals", cell, value) if cell == value

fits("at_least", cell, value) if {
	is_number(cell)
	cell >= value
}

fits("at_most", cell, value) if {
	is_number(cell)
	cell <= value
}

nearest(cell, rows) := rows[0] if count(steps(cell, rows)) == 0

nearest(cell, rows) := [row | some row in rows; row[step_of(cell).column] == best][0] if {
	best := closest(step_of(cell).comparison, steps(cell, rows))
}

step_of(cell) := [k | some k in cell.keys; k.comparison != "equals"][0]

# steps are those among the rows; there are none where a row before all others
# holds for any.
steps(cell, rows) := [row[step_of(cell).column] |
	rows[0][step_of(cell).column] != "any"
	some row in rows
	row[step_of(cell).column] != "any"
]

closest("at_least", all) := min(all)

closest("at_most", all) := max(all)

# A product has twelve significant digits, as every fact has.
times(value, 1) := value

times(value, factor) := product if {
	factor != 1
	product := value * factor
	product == round(product)
}

times(value, factor) := to_number(sprintf("%.12g", [value * factor])) if {
	factor != 1
	value * factor != round(value * factor)
}

# subjects are the lists that are judged; the whole installation is a list of one.
subjects := object.union(input, {"installation": [input.installation]})

fact(s, name) := s[name.own]

fact(_, name) := input.installation[name.installation]

holds("at_most", value, limit) if value <= limit

holds("at_least", value, limit) if value >= limit

holds("below", value, limit) if value < limit

holds("above", value, limit) if value > limit

holds("equals", value, limit) if value == limit

holds("differs", value, limit) if value != limit

holds("one_of", value, limit) if value in limit

holds("none_of", value, limit) if not value in limit

holds("includes", value, limit) if limit in value

holds("lacks", value, limit) if not limit in value

holds("since", value, limit) if value >= limit

holds("until", value, limit) if value <= limit
