package commissioning

import (
	"sunclause/facts/working"
	"sunclause/schema"
)

// reading is the latest reading of a string, or what is missing to tell it.
type reading struct {
	*schema.StringReading
	missing []string
}

// latest finds for each string the reading that counts: the last by date and
// time.
func (d *deriver) latest() map[string]reading {
	of := map[string][]*schema.StringReading{}
	for i := range d.in.Commissioning.Strings {
		r := &d.in.Commissioning.Strings[i]
		of[r.String.Value] = append(of[r.String.Value], r)
	}
	latest := map[string]reading{}
	for i := range d.pv.Strings {
		id := d.pv.Strings[i].ID
		latest[id] = lastOf(of[id], d.at("strings"))
	}
	return latest
}

// lastOf picks the last of some readings. Where one of several has no date or
// time, none can be told to be it.
func lastOf(readings []*schema.StringReading, list string) reading {
	if len(readings) == 0 {
		return reading{missing: []string{list}}
	}
	last := readings[0]
	for _, r := range readings[1:] {
		for _, t := range []schema.Text{last.Date, last.Time, r.Date, r.Time} {
			if !t.Stated() {
				return reading{missing: []string{t.At()}}
			}
		}
		if r.Date.Value+r.Time.Value >= last.Date.Value+last.Time.Value {
			last = r
		}
	}
	return reading{StringReading: last}
}

func (r reading) number(symbol, unit string, of func(*schema.StringReading) schema.Number) working.Number {
	if r.StringReading == nil {
		return working.Unknown(symbol, unit, r.missing...)
	}
	return working.Stated(symbol, unit, of(r.StringReading))
}

func (r reading) text(of func(*schema.StringReading) schema.Text) working.Text {
	if r.StringReading == nil {
		return working.UnknownText(r.missing...)
	}
	return working.StatedText(of(r.StringReading))
}

func (r reading) flag(of func(*schema.StringReading) schema.Flag) working.Flag {
	if r.StringReading == nil {
		return working.UnknownFlag(r.missing...)
	}
	return working.StatedFlag(of(r.StringReading))
}
