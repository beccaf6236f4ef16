package sprintf.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: sprintf/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	sprintf("%1000000000d", [1]) != ""
	f := {"id": "sprintf/a-rule", "subject": s.id}
}
