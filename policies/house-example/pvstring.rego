# METADATA
# title: PV strings
# description: An invented firm; an example. What a limit row cannot say of strings.
package house_example.pvstring

# METADATA
# title: Strings in parallel only where no input of the inverter is free
# custom:
#   id: house-example/string-free-input
#   level: should
#   subject: strings
#   when: [strings_in_parallel at_least 2]
#   broken: it shares its tracking input while another input of the inverter is free
#   remedy: Put the string on the free input; then no other string can drive current back into it.
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	some m in input.mppts
	m.strings_in_parallel == 0
	startswith(m.id, concat("", [s.inverter, "."]))
	f := {"id": "house-example/string-free-input", "subject": s.id}
}
