package parameters.voc_factor

# METADATA
# title: A hostile rule
# custom:
#   id: parameters/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	f := {"id": "parameters/a-rule", "subject": s.id}
}
