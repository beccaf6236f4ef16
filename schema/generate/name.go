package main

import (
	"strings"
	"unicode"
)

// initials are words that Go writes in capitals, with the plurals of some.
var initials = map[string]string{
	"ac": "AC", "dc": "DC", "id": "ID", "ip": "IP", "mppt": "MPPT", "mppts": "MPPTs", "nmot": "NMOT", "ocpd": "OCPD",
	"ocpr": "OCPR", "pv": "PV", "rcd": "RCD", "spd": "SPD", "spds": "SPDs", "uv": "UV", "va": "VA",
}

// goName writes a name of the document as Go does: voc_v is VocV.
func goName(name string) string {
	var b strings.Builder
	for word := range strings.SplitSeq(name, "_") {
		if capitals, ok := initials[word]; ok {
			b.WriteString(capitals)
			continue
		}
		for i, r := range word {
			if i == 0 {
				r = unicode.ToUpper(r)
			}
			b.WriteRune(r)
		}
	}
	return b.String()
}

// sentence is a description as it goes on after a colon: its first word begins
// with a small letter, unless it has capitals within.
func sentence(description string) string {
	first, rest, _ := strings.Cut(description, " ")
	if first == "" || strings.ToLower(first[1:]) != first[1:] {
		return description
	}
	return strings.TrimSpace(strings.ToLower(first) + " " + rest)
}
