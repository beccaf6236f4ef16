package walk.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: walk/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	some path, _ in walk(input)
	count(path) > 3
	f := {"id": "walk/a-rule", "subject": s.id}
}
