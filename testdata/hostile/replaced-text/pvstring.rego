package replaced_text.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: replaced-text/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	x0 := "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa"
	x1 := replace(x0, "a", "aaaaaaaaaaaaaaaa")
	x2 := replace(x1, "a", "aaaaaaaaaaaaaaaa")
	x3 := replace(x2, "a", "aaaaaaaaaaaaaaaa")
	x4 := replace(x3, "a", "aaaaaaaaaaaaaaaa")
	x5 := replace(x4, "a", "aaaaaaaaaaaaaaaa")
	x6 := replace(x5, "a", "aaaaaaaaaaaaaaaa")
	x7 := replace(x6, "a", "aaaaaaaaaaaaaaaa")
	x8 := replace(x7, "a", "aaaaaaaaaaaaaaaa")
	x9 := replace(x8, "a", "aaaaaaaaaaaaaaaa")
	x10 := replace(x9, "a", "aaaaaaaaaaaaaaaa")
	x11 := replace(x10, "a", "aaaaaaaaaaaaaaaa")
	x11 != ""
	f := {"id": "replaced-text/a-rule", "subject": s.id}
}
