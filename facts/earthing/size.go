package earthing

import (
	"sunclause/facts/book"
	"sunclause/facts/working"
)

// Sources of the sizes of protective conductors.
var (
	adiabatic      = working.Source{Document: "IEC 60364-5-54", Edition: "2011", Clause: "543.1.2", How: working.Memory}
	protectiveSize = working.Source{Document: "IEC 60364-5-54", Edition: "2011", Clause: "Table 54.2 (in BS 7671 Table 54.7)", How: working.Read}
)

var adiabaticSize = working.NewFormula("S", "mm²", "√(I² · t) / k", adiabatic)

// Adiabatic is the least cross-section that stands a fault current for a time,
// with no heat lost on the way: the square root of I²t, over k. It holds from
// 0.1 s to 5 s; below, the let-through energy of the device counts.
func Adiabatic(symbol string, current, time, k working.Number) working.Number {
	return adiabaticSize.Of(current.For("I"), time.For("t"), k.For("k")).As(symbol)
}

// ProtectiveSize is the cross-section of a protective conductor selected by
// that of the line conductor of the same metal, as a size that is made: as
// large up to 16 mm², 16 mm² up to 35 mm², half of it above.
func ProtectiveSize(symbol string, line working.Number, b book.Book) working.Number {
	f := working.Lookup{Symbol: "S_tab", Unit: "mm²", Source: protectiveSize,
		Text: "all of " + line.Symbol() + " to 16 mm², 16 mm² to 35 mm², half of it above"}
	return StandardSize(symbol, f.Of(func(x ...float64) float64 {
		switch {
		case x[0] <= 16:
			return x[0]
		case x[0] <= 35:
			return 16
		}
		return x[0] / 2
	}, line), b)
}

// StandardSize is the least cross-section made that is not below the one
// worked out.
func StandardSize(symbol string, size working.Number, b book.Book) working.Number {
	return covering(b, "conductor_sizes", "size_mm2", size, "size_mm2", symbol)
}

// covering takes from a table the cell of the first row that reaches as far as
// a quantity. What the quantity lacks is what is missing.
func covering(b book.Book, table, key string, of working.Number, want, symbol string) working.Number {
	n := b.Pick(table, book.UpTo(key, of)).Number(want, symbol)
	if !of.Known() {
		return working.Unknown(symbol, n.Unit(), of.Missing()...)
	}
	return n
}
