# METADATA
# title: Limit rows
# description: >-
#   Judges every limit row of a rule set, and every condition under which a
#   requirement applies. A row is data: subject, measure, comparison, limit.
package lib.limit

# broken holds the rows whose limit a subject does not keep.
broken contains {"id": row.id, "subject": s.id} if {
	some row in data.rows
	some s in subjects[row.subject]
	value := fact(s, row.measure)
	limit := operand(s, row.limit)
	not holds(row.comparison, value, limit)
}

# failed holds for each condition the subjects for which it is known not to
# hold. Many requirements share a condition; it is judged once.
failed contains {"condition": condition.id, "subject": s.id} if {
	some condition in data.conditions
	some s in subjects[condition.subject]
	value := fact(s, condition.fact)
	limit := operand(s, condition.limit)
	not holds(condition.comparison, value, limit)
}

# subjects are the lists that rows judge; the whole installation is a list of one.
subjects := object.union(input, {"installation": [input.installation]})

fact(s, name) := s[name.own]

fact(_, name) := input.installation[name.installation]

operand(s, limit) := fact(s, limit.fact)

operand(_, limit) := limit.value

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
