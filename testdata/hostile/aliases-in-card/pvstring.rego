package aliases_in_card.pvstring

# METADATA
# title: A hostile rule
# custom:
#   b0: &b0 [1, 1, 1, 1, 1, 1, 1, 1, 1]
#   b1: &b1 [*b0, *b0, *b0, *b0, *b0, *b0, *b0, *b0, *b0]
#   b2: &b2 [*b1, *b1, *b1, *b1, *b1, *b1, *b1, *b1, *b1]
#   b3: &b3 [*b2, *b2, *b2, *b2, *b2, *b2, *b2, *b2, *b2]
#   b4: &b4 [*b3, *b3, *b3, *b3, *b3, *b3, *b3, *b3, *b3]
#   b5: &b5 [*b4, *b4, *b4, *b4, *b4, *b4, *b4, *b4, *b4]
#   b6: &b6 [*b5, *b5, *b5, *b5, *b5, *b5, *b5, *b5, *b5]
#   b7: &b7 [*b6, *b6, *b6, *b6, *b6, *b6, *b6, *b6, *b6]
#   id: aliases-in-card/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	f := {"id": "aliases-in-card/a-rule", "subject": s.id}
}
