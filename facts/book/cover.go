package book

import "sunclause/facts/working"

// Cover looks a quantity up in a table whose key column says how far each row
// reaches: it takes the row with the least key that is not below the quantity,
// and from it the cell of the wanted column. Beyond the last row the table has
// no answer, and the result is unknown.
func (b Book) Cover(table, key string, of working.Number, want, symbol string) working.Number {
	t, ok := b.Tables[table]
	if !ok {
		return working.Unknown(symbol, "", lacks("table", table))
	}
	var best map[string]any
	for _, row := range t.Rows {
		k, isNumber := row[key].(float64)
		if isNumber && k >= of.Value() && (best == nil || k < best[key].(float64)) {
			best = row
		}
	}
	return t.cell(best, want, symbol, of)
}
