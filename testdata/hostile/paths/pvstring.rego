package paths.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: paths/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	count(graph.reachable_paths({"a": ["b"], "b": ["a"]}, ["a"])) > 0
	f := {"id": "paths/a-rule", "subject": s.id}
}
