package type_names.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: type-names/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	x0 := {"a": s.id, "b": 1}
	x1 := {"a": x0, "b": [x0, 1]}
	x2 := {"a": x1, "b": [x1, 2]}
	x3 := {"a": x2, "b": [x2, 3]}
	x4 := {"a": x3, "b": [x3, 4]}
	x5 := {"a": x4, "b": [x4, 5]}
	x6 := {"a": x5, "b": [x5, 6]}
	x7 := {"a": x6, "b": [x6, 7]}
	x8 := {"a": x7, "b": [x7, 8]}
	x9 := {"a": x8, "b": [x8, 9]}
	x10 := {"a": x9, "b": [x9, 10]}
	x11 := {"a": x10, "b": [x10, 11]}
	x12 := {"a": x11, "b": [x11, 12]}
	x13 := {"a": x12, "b": [x12, 13]}
	x14 := {"a": x13, "b": [x13, 14]}
	x15 := {"a": x14, "b": [x14, 15]}
	x16 := {"a": x15, "b": [x15, 16]}
	x17 := {"a": x16, "b": [x16, 17]}
	x18 := {"a": x17, "b": [x17, 18]}
	x19 := {"a": x18, "b": [x18, 19]}
	x20 := {"a": x19, "b": [x19, 20]}
	x21 := {"a": x20, "b": [x20, 21]}
	x22 := {"a": x21, "b": [x21, 22]}
	x23 := {"a": x22, "b": [x22, 23]}
	x24 := {"a": x23, "b": [x23, 24]}
	x25 := {"a": x24, "b": [x24, 25]}
	x25.c == 1
	f := {"id": "type-names/a-rule", "subject": s.id}
}
