package range.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: range/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	count(numbers.range(1, 1000000000)) > 0
	f := {"id": "range/a-rule", "subject": s.id}
}
