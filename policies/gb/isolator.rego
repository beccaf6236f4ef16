# METADATA
# title: Isolators
# description: What a limit row cannot say of isolators.
package gb.isolator

# METADATA
# title: No second isolator where the inverter has one built in
# custom:
#   id: gb/isolator-not-doubled
#   level: should
#   subject: isolators
#   when:
#     - {fact: circuit, comparison: equals, limit: {value: pv_dc}}
#     - {fact: built_in, comparison: equals, limit: {value: false}}
#   broken: the inverter that it stands before has a DC isolator built in
#   remedy: Leave it out where the maker's built-in isolator serves; an extra one is one more place for a fire to start.
#   source: {document: "IET Wiring Matters 109, solar photovoltaic DC switch-disconnectors", edition: "2026", how: read}
findings contains f if {
	some s in input.isolators
	some m in input.mppts
	m.isolator_built_in
	some id in m.strings
	id in s.strings
	f := {"id": "gb/isolator-not-doubled", "subject": s.id}
}
