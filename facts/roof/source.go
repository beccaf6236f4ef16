package roof

import "sunclause/facts/working"

// en1991Wind names a clause of the wind part of Eurocode 1.
func en1991Wind(clause string, how working.How) working.Source {
	return working.Source{Document: "EN 1991-1-4", Edition: "2005+A1:2010", Clause: clause, How: how}
}

// en1991Snow names a clause of the snow part of Eurocode 1.
func en1991Snow(clause string, how working.How) working.Source {
	return working.Source{Document: "EN 1991-1-3", Edition: "2003", Clause: clause, How: how}
}

// en1995 names a clause of Eurocode 5.
func en1995(clause string, how working.How) working.Source {
	return working.Source{Document: "EN 1995-1-1", Edition: "2004+A1:2008", Clause: clause, How: how}
}

var (
	combination = working.Source{Document: "EN 1990", Edition: "2002+A1", Clause: "6.10, tables A1.2(A) and A1.2(B)", How: working.Memory}
	netSource   = working.Source{Document: "BRE Digest 489", Edition: "2004", How: working.Read}
	statics     = working.Source{Document: "equilibrium of forces", How: working.Definition}
	beams       = working.Source{Document: "trade practice, beam tables", How: working.CommonPractice}
)
