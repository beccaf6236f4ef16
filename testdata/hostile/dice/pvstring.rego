package dice.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: dice/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	rand.intn("a", 10) > 5
	f := {"id": "dice/a-rule", "subject": s.id}
}
