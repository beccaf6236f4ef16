package schema

import "strings"

// The forms of texts, as the patterns of the schemas say them, without the cost
// of a regular expression. A test holds each against its pattern.

// isID reports whether a text is an id: ^[A-Za-z0-9][A-Za-z0-9_-]{0,39}$
func isID(text string) bool {
	if len(text) < 1 || len(text) > 40 || text[0] == '_' || text[0] == '-' {
		return false
	}
	for i := range len(text) {
		if c := text[i]; !isDigit(c) && !isLetter(c) && c != '_' && c != '-' {
			return false
		}
	}
	return true
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

func isLetter(c byte) bool { return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' }

// isTerminal reports whether a text is one to three ids with points between them.
func isTerminal(text string) bool {
	if strings.Count(text, ".") > 2 {
		return false
	}
	for id := range strings.SplitSeq(text, ".") {
		if !isID(id) {
			return false
		}
	}
	return true
}

// digits reports whether a text is like another in which each 0 stands for any digit.
func digits(text, like string) bool {
	if len(text) != len(like) {
		return false
	}
	for i := range len(text) {
		if text[i] != like[i] && (like[i] != '0' || !isDigit(text[i])) {
			return false
		}
	}
	return true
}

// isDate reports whether a text has the form of a date: 2026-03-02.
func isDate(text string) bool {
	if !digits(text, "0000-00-00") {
		return false
	}
	month, day := text[5:7], text[8:]
	return month >= "01" && month <= "12" && day >= "01" && day <= "31"
}

// isTime reports whether a text is a time of day: 14:05.
func isTime(text string) bool {
	return digits(text, "00:00") && text[:2] <= "23" && text[3:] <= "59"
}

// isCountry reports whether a text has the form of a country's code: GB.
func isCountry(text string) bool {
	return len(text) == 2 && text[0] >= 'A' && text[0] <= 'Z' && text[1] >= 'A' && text[1] <= 'Z'
}

// isIP reports whether a text is an IP code: ^IP[0-6X][0-9X]K?[A-D]?[HMSW]?(NW)?$
func isIP(text string) bool {
	if len(text) < 4 || text[:2] != "IP" || !strings.Contains("0123456X", text[2:3]) || !strings.Contains("0123456789X", text[3:4]) {
		return false
	}
	rest := strings.TrimPrefix(text[4:], "K")
	for _, letters := range []string{"ABCD", "HMSW"} {
		if rest != "" && strings.Contains(letters, rest[:1]) {
			rest = rest[1:]
		}
	}
	return rest == "" || rest == "NW"
}
