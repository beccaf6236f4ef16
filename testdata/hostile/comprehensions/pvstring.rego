package comprehensions.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: comprehensions/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	count([x24 | some x24 in [x23 | some x23 in [x22 | some x22 in [x21 | some x21 in [x20 | some x20 in [x19 | some x19 in [x18 | some x18 in [x17 | some x17 in [x16 | some x16 in [x15 | some x15 in [x14 | some x14 in [x13 | some x13 in [x12 | some x12 in [x11 | some x11 in [x10 | some x10 in [x9 | some x9 in [x8 | some x8 in [x7 | some x7 in [x6 | some x6 in [x5 | some x5 in [x4 | some x4 in [x3 | some x3 in [x2 | some x2 in [x1 | some x1 in [x0 | x0 := 1]]]]]]]]]]]]]]]]]]]]]]]]]) > 0
	f := {"id": "comprehensions/a-rule", "subject": s.id}
}
