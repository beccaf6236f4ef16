package long_message.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: long-message/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	x0 := "aaaaaaaaaaaaaaaa"
	x1 := $"{x0}{x0}{x0}{x0}"
	x2 := $"{x1}{x1}{x1}{x1}"
	x3 := $"{x2}{x2}{x2}{x2}"
	x4 := $"{x3}{x3}{x3}{x3}"
	x5 := $"{x4}{x4}{x4}{x4}"
	x6 := $"{x5}{x5}{x5}{x5}"
	x7 := $"{x6}{x6}{x6}{x6}"
	x8 := $"{x7}{x7}{x7}{x7}"
	f := {"id": "long-message/a-rule", "subject": s.id, "message": x8}
}
