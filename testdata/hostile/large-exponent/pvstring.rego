package large_exponent.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: large-exponent/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	1e400000 != 1
	f := {"id": "large-exponent/a-rule", "subject": s.id}
}
