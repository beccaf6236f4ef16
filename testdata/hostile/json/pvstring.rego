package json.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: json/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	json.unmarshal("[]") == []
	f := {"id": "json/a-rule", "subject": s.id}
}
