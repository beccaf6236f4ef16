package loops.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: loops/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	some a0 in input.runs
	some a1 in input.runs
	some a2 in input.runs
	some a3 in input.runs
	some a4 in input.runs
	some a5 in input.runs
	some a6 in input.runs
	some a7 in input.runs
	some a8 in input.runs
	some a9 in input.runs
	some a10 in input.runs
	some a11 in input.runs
	count({a0.id, a1.id, a2.id, a3.id, a4.id, a5.id, a6.id, a7.id, a8.id, a9.id, a10.id, a11.id}) > 13
	f := {"id": "loops/a-rule", "subject": s.id}
}
