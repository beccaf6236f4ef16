package doubled_text.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: doubled-text/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	x0 := "aaaaaaaaaaaaaaaa"
	x1 := concat("", [x0, x0])
	x2 := concat("", [x1, x1])
	x3 := concat("", [x2, x2])
	x4 := concat("", [x3, x3])
	x5 := concat("", [x4, x4])
	x6 := concat("", [x5, x5])
	x7 := concat("", [x6, x6])
	x8 := concat("", [x7, x7])
	x9 := concat("", [x8, x8])
	x10 := concat("", [x9, x9])
	x11 := concat("", [x10, x10])
	x12 := concat("", [x11, x11])
	x13 := concat("", [x12, x12])
	x14 := concat("", [x13, x13])
	x15 := concat("", [x14, x14])
	x16 := concat("", [x15, x15])
	x17 := concat("", [x16, x16])
	x18 := concat("", [x17, x17])
	x19 := concat("", [x18, x18])
	x20 := concat("", [x19, x19])
	x21 := concat("", [x20, x20])
	x22 := concat("", [x21, x21])
	x23 := concat("", [x22, x22])
	x24 := concat("", [x23, x23])
	x25 := concat("", [x24, x24])
	x26 := concat("", [x25, x25])
	x27 := concat("", [x26, x26])
	x28 := concat("", [x27, x27])
	x29 := concat("", [x28, x28])
	x30 := concat("", [x29, x29])
	x31 := concat("", [x30, x30])
	x32 := concat("", [x31, x31])
	x33 := concat("", [x32, x32])
	x34 := concat("", [x33, x33])
	x35 := concat("", [x34, x34])
	x36 := concat("", [x35, x35])
	x37 := concat("", [x36, x36])
	x38 := concat("", [x37, x37])
	x39 := concat("", [x38, x38])
	x39 != ""
	f := {"id": "doubled-text/a-rule", "subject": s.id}
}
