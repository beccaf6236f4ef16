package regex.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: regex/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	regex.match(`(a*)*b{1000}`, s.id)
	f := {"id": "regex/a-rule", "subject": s.id}
}
