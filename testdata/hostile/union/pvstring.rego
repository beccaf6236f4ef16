package union.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: union/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	count(union({{1}, {2}})) > 0
	f := {"id": "union/a-rule", "subject": s.id}
}
