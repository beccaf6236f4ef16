package squared_number.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: squared-number/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	x0 := 123456789
	x1 := x0 * x0
	x2 := x1 * x1
	x3 := x2 * x2
	x4 := x3 * x3
	x5 := x4 * x4
	x6 := x5 * x5
	x7 := x6 * x6
	x8 := x7 * x7
	x9 := x8 * x8
	x10 := x9 * x9
	x11 := x10 * x10
	x12 := x11 * x11
	x13 := x12 * x12
	x14 := x13 * x13
	x15 := x14 * x14
	x16 := x15 * x15
	x17 := x16 * x16
	x18 := x17 * x17
	x19 := x18 * x18
	x20 := x19 * x19
	x21 := x20 * x20
	x22 := x21 * x21
	x23 := x22 * x22
	x24 := x23 * x23
	x25 := x24 * x24
	x26 := x25 * x25
	x27 := x26 * x26
	x28 := x27 * x27
	x29 := x28 * x28
	x30 := x29 * x29
	x31 := x30 * x30
	x32 := x31 * x31
	x33 := x32 * x32
	x34 := x33 * x33
	x35 := x34 * x34
	x36 := x35 * x35
	x37 := x36 * x36
	x38 := x37 * x37
	x39 := x38 * x38
	x39 > 0
	f := {"id": "squared-number/a-rule", "subject": s.id}
}
