# METADATA
# title: Isolators
# description: What a limit row cannot say of isolators.
package iec.isolator

# METADATA
# title: An isolator opens strings of one inverter only
# custom:
#   id: iec/isolator-one-inverter
#   level: should
#   subject: isolators
#   when:
#     - {fact: circuit, comparison: equals, limit: {value: pv_dc}}
#   broken: the strings it opens feed different inverters, so that working on one shuts down the other
#   remedy: Give the strings of each inverter an isolator of their own.
#   source: {document: design practice, how: common practice}
findings contains f if {
	some s in input.isolators
	some a in input.strings
	some b in input.strings
	a.id in s.strings
	b.id in s.strings
	a.inverter != b.inverter
	f := {"id": "iec/isolator-one-inverter", "subject": s.id}
}
