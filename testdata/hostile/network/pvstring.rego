package network.pvstring

# METADATA
# title: A hostile rule
# custom:
#   id: network/a-rule
#   level: shall
#   subject: strings
#   broken: it is broken
#   source: {document: house rule, how: house rule}
findings contains f if {
	some s in input.strings
	http.send({"method": "get", "url": "http://localhost"}).status_code == 200
	f := {"id": "network/a-rule", "subject": s.id}
}
