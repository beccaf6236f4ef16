package lib.limit

# METADATA
# title: A hostile rule
# custom:
#   id: other-package/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	f := {"id": "other-package/a-rule", "subject": s.id}
}
