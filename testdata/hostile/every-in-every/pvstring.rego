package every_in_every.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: every-in-every/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	every_rule
	f := {"id": "every-in-every/a-rule", "subject": s.id}
}

every_rule if {
	every a in [1] { every b in [1] { every c in [1] { every d in [1] { every e in [1] { a+b+c+d+e > 0 } } } } }
}
