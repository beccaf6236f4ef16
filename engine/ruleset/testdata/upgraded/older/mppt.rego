# METADATA
# title: Tracking inputs
package older.mppt

# A comment of no card.
# METADATA
# title: No input left empty
# custom:
#   id: older/inputs
#   level: should
#   subject: mppts
#   # above the conditions
#   stage: design
#   when:
#     - strings_in_parallel at_least 2 # why
#   measure: strings_in_parallel at_most 1
#   remedy: Move a string.
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.mppts
	s.strings_in_parallel > 1 # not a card: {fact: x}
	f := {"id": "older/inputs", "subject": s.id}
}

# METADATA
# title: Shown alone
# custom:
#   id: older/shown
#   level: should
#   subject: mppts
#   measure: strings_in_parallel
#   broken: too many
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.mppts
	s.strings_in_parallel > 3
	f := {"id": "older/shown", "subject": s.id}
}
