package recursion.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: recursion/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	again(s.id)
	f := {"id": "recursion/a-rule", "subject": s.id}
}

again(x) if again(concat("", [x, "a"]))
