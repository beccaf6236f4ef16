package many_findings.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: many-findings/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	some a0 in [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
	some a1 in [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
	some a2 in [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
	some a3 in [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
	some a4 in [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
	some a5 in [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
	some a6 in [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]
	f := {"id": "many-findings/a-rule", "subject": s.id, "message": $"{a0}{a1}{a2}{a3}{a4}{a5}{a6}"}
}
