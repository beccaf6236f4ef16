package environment.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: environment/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	opa.runtime().env.HOME != ""
	f := {"id": "environment/a-rule", "subject": s.id}
}
