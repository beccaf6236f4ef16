package accircuit

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// part takes members of a part of the document that may not be there at all;
// then it says what is missing instead.
type part struct{ missing []string }

func (p part) number(symbol, unit string, n schema.Number) working.Number {
	if n.At() == "" {
		return working.Unknown(symbol, unit, p.missing...)
	}
	return working.Stated(symbol, unit, n)
}

func (p part) text(t schema.Text) working.Text {
	if t.At() == "" {
		return working.UnknownText(p.missing...)
	}
	return working.StatedText(t)
}

func (p part) ip(symbol string, code schema.Text, figure int) working.Number {
	if code.At() == "" {
		return working.Unknown(symbol, "", p.missing...)
	}
	return working.IPFigure(symbol, code, figure)
}

func (p part) flag(f schema.Flag) working.Flag {
	if f.At() == "" {
		return working.UnknownFlag(p.missing...)
	}
	return working.StatedFlag(f)
}

// anyOf reports whether one of some things is so: one that is known to be settles
// it, and one that is not known leaves it open.
func anyOf(at string, flags ...working.Flag) working.Flag {
	var missing []string
	for _, f := range flags {
		if f.Known() && f.Value() {
			return f
		}
		missing = append(missing, f.Missing()...)
	}
	for _, f := range flags {
		if !f.Known() {
			return working.UnknownFlag(missing...)
		}
	}
	return working.KnownFlag(false, at)
}

// allOf reports whether all of some things are so: one that is known not to be
// settles it, and one that is not known leaves it open.
func allOf(at string, flags ...working.Flag) working.Flag {
	none := anyOf(at, each(flags, func(f working.Flag) working.Flag {
		if !f.Known() {
			return f
		}
		return working.KnownFlag(!f.Value(), f.At())
	})...)
	if !none.Known() {
		return none
	}
	return working.KnownFlag(!none.Value(), none.At())
}
