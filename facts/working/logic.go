package working

import "slices"

// All holds where every flag does. One that is known not to settles it, whatever
// is unknown of the others; else it is unknown as soon as one is, and names what
// all unknown ones lack. Of none at all it holds.
func All(flags ...Flag) Flag { return settle(false, flags) }

// Any holds where one flag does. One that is known to settles it, whatever is
// unknown of the others; else it is unknown as soon as one is, and names what all
// unknown ones lack. Of none at all it does not hold.
func Any(flags ...Flag) Flag { return settle(true, flags) }

// Not holds where the flag does not, and is unknown where the flag is.
func Not(f Flag) Flag {
	f.value = f.known && !f.value
	return f
}

// Count counts the flags that hold. It is unknown as soon as one is, and names
// what all unknown ones lack. At is the place of what is counted over.
func Count(symbol, at string, flags ...Flag) Number {
	missing, unknown := lacking(flags)
	if unknown {
		return Unknown(symbol, "", missing...)
	}
	n := 0
	for i := range flags {
		if flags[i].value {
			n++
		}
	}
	return Counted(symbol, n, at)
}

// MayHold reports whether one of some flags holds, or is not known not to.
func MayHold(flags ...Flag) bool {
	one := Any(flags...)
	return !one.known || one.value
}

// settle takes the first flag that is known to have the value which decides, and
// without one the other value, if that is known of all. It stands at the place of
// the flag that decides, or of the last.
func settle(by bool, flags []Flag) Flag {
	for _, f := range flags {
		if f.known && f.value == by {
			return f
		}
	}
	if missing, unknown := lacking(flags); unknown {
		return UnknownFlag(missing...)
	}
	at := ""
	if len(flags) > 0 {
		at = flags[len(flags)-1].at
	}
	return KnownFlag(!by, at)
}

// lacking reports whether one of the flags is unknown, and what they lack.
func lacking(flags []Flag) (missing []Gap, unknown bool) {
	for i := range flags {
		if !flags[i].known {
			unknown = true
			missing = append(missing, flags[i].missing...)
		}
	}
	return Gaps(missing), unknown
}

// Among reports whether a list of the document holds a part of some kind. A list left
// out, and so nil, could hold one.
func Among[T any](list []T, at string, is func(*T) bool) Flag {
	for i := range list {
		if is(&list[i]) {
			return KnownFlag(true, at)
		}
	}
	if list == nil {
		return UnknownFlag(at)
	}
	return KnownFlag(false, at)
}

// OneOf reports whether the text is one of some words.
func (t Text) OneOf(words ...string) Flag {
	if !t.known {
		return UnknownFlag(t.missing...)
	}
	return KnownFlag(slices.Contains(words, t.value), t.at)
}

// AtMost reports whether a number is not above another of the same unit. It is
// unknown as soon as one of them is, and names what both lack.
func AtMost(n, limit Number) Flag {
	if !n.known || !limit.known {
		return UnknownFlag(Gaps(slices.Concat(n.missing, limit.missing))...)
	}
	return KnownFlag(n.value <= limit.value, n.at)
}

// AtLeast reports whether a number is not below another of the same unit, as AtMost
// does for one above.
func AtLeast(n, limit Number) Flag { return AtMost(limit, n) }

// Same reports whether two texts are equal. It is unknown as soon as one of them
// is, and names what both lack.
func Same(a, b Text) Flag {
	if !a.known || !b.known {
		return UnknownFlag(Gaps(slices.Concat(a.missing, b.missing))...)
	}
	return KnownFlag(a.value == b.value, b.at)
}
