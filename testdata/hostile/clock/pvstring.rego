package clock.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: clock/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	time.now_ns() > 1700000000000000000
	f := {"id": "clock/a-rule", "subject": s.id}
}
