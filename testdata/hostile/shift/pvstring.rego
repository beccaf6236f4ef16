package shift.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: shift/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	bits.lsh(1, 10000000000) > 0
	f := {"id": "shift/a-rule", "subject": s.id}
}
