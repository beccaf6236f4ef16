package templates.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: templates/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	t := $"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{$"{s.id}"}"}"}"}"}"}"}"}"}"}"}"}"}"}"}"}"}"}"}"
	t != ""
	f := {"id": "templates/a-rule", "subject": s.id}
}
