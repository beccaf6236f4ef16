package overwritten_input.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: overwritten-input/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	count(data.lib.limit.broken) > 0 with data.comparisons as {}
	f := {"id": "overwritten-input/a-rule", "subject": s.id}
}
