package conflict.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: conflict/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	verdict == 1
	f := {"id": "conflict/a-rule", "subject": s.id}
}

verdict := v if {
	some v in [1, 2]
}
