package iec.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: neighbour-package/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	f := {"id": "neighbour-package/a-rule", "subject": s.id}
}
