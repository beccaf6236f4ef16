# METADATA
# title: Comparisons
# description: >-
#   Holds every part to every comparison of a rule set: the limit of a row, or a
#   condition under which a requirement applies. Many requirements share a
#   condition, which stands here once. A comparison is data: subject, fact and
#   limit, listed by how it compares.
package lib.limit

# broken holds the comparisons with a plain value that a part does not keep. A fact
# that is unknown is not there, and breaks nothing.
broken contains [c.number, s.id] if {
	some c in data.comparisons.at_most
	some s in subjects[c.subject]
	value := s[c.fact]
	value > c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.at_least
	some s in subjects[c.subject]
	value := s[c.fact]
	value < c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.below
	some s in subjects[c.subject]
	value := s[c.fact]
	value >= c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.above
	some s in subjects[c.subject]
	value := s[c.fact]
	value <= c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.equals
	some s in subjects[c.subject]
	value := s[c.fact]
	value != c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.differs
	some s in subjects[c.subject]
	value := s[c.fact]
	value == c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.one_of
	some s in subjects[c.subject]
	value := s[c.fact]
	not value in c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.none_of
	some s in subjects[c.subject]
	value := s[c.fact]
	value in c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.includes
	some s in subjects[c.subject]
	value := s[c.fact]
	not c.limit in value
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.lacks
	some s in subjects[c.subject]
	value := s[c.fact]
	c.limit in value
}

# Dates are year-month-day, which sort as words do.
broken contains [c.number, s.id] if {
	some c in data.comparisons.since
	some s in subjects[c.subject]
	value := s[c.fact]
	value < c.limit
}

broken contains [c.number, s.id] if {
	some c in data.comparisons.until
	some s in subjects[c.subject]
	value := s[c.fact]
	value > c.limit
}

# Of comparisons between two facts there are few.
broken contains [c.number, s.id] if {
	some c in data.between
	some s in subjects[c.subject]
	value := fact(s, c.fact)
	limit := fact(s, c.limit)
	not holds(c.comparison, value, limit)
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
