package rows.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: rows/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	f := {"id": "rows/a-rule", "subject": s.id}
}
