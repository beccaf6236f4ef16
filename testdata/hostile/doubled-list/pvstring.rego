package doubled_list.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: doubled-list/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	x0 := [1, 2, 3, 4]
	x1 := array.concat(x0, x0)
	x2 := array.concat(x1, x1)
	x3 := array.concat(x2, x2)
	x4 := array.concat(x3, x3)
	x5 := array.concat(x4, x4)
	x6 := array.concat(x5, x5)
	x7 := array.concat(x6, x6)
	x8 := array.concat(x7, x7)
	x9 := array.concat(x8, x8)
	x10 := array.concat(x9, x9)
	x11 := array.concat(x10, x10)
	x12 := array.concat(x11, x11)
	x13 := array.concat(x12, x12)
	x14 := array.concat(x13, x13)
	x15 := array.concat(x14, x14)
	x16 := array.concat(x15, x15)
	x17 := array.concat(x16, x16)
	x18 := array.concat(x17, x17)
	x19 := array.concat(x18, x18)
	x20 := array.concat(x19, x19)
	x21 := array.concat(x20, x20)
	x22 := array.concat(x21, x21)
	x23 := array.concat(x22, x22)
	x24 := array.concat(x23, x23)
	x25 := array.concat(x24, x24)
	x26 := array.concat(x25, x25)
	x27 := array.concat(x26, x26)
	x28 := array.concat(x27, x27)
	x29 := array.concat(x28, x28)
	x30 := array.concat(x29, x29)
	x31 := array.concat(x30, x30)
	x32 := array.concat(x31, x31)
	x33 := array.concat(x32, x32)
	x34 := array.concat(x33, x33)
	x35 := array.concat(x34, x34)
	x36 := array.concat(x35, x35)
	x37 := array.concat(x36, x36)
	x38 := array.concat(x37, x37)
	x39 := array.concat(x38, x38)
	count(x39) > 0
	f := {"id": "doubled-list/a-rule", "subject": s.id}
}
