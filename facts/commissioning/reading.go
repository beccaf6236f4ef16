package commissioning

import "sunclause/schema"

// latest finds for each string the reading that counts: the last by date and
// time.
func (d *deriver) latest() map[string]*schema.StringReading {
	of := map[string][]*schema.StringReading{}
	for i := range d.in.Commissioning.Strings {
		r := &d.in.Commissioning.Strings[i]
		of[r.String.Value] = append(of[r.String.Value], r)
	}
	latest := map[string]*schema.StringReading{}
	for i := range d.pv.Strings {
		id := d.pv.Strings[i].ID
		latest[id] = lastOf(of[id], d.at("strings"))
	}
	return latest
}

// lastOf picks the last of some readings. Where one of several has no date or
// time, none can be said to be it, and the reading is a blank one.
func lastOf(readings []*schema.StringReading, list string) *schema.StringReading {
	if len(readings) == 0 {
		return schema.Blank[schema.StringReading](list)
	}
	last := readings[0]
	for _, r := range readings[1:] {
		for _, t := range []schema.Text{last.Date, last.Time, r.Date, r.Time} {
			if !t.Stated() {
				return schema.Blank[schema.StringReading](t.At())
			}
		}
		if r.Date.Value+r.Time.Value >= last.Date.Value+last.Time.Value {
			last = r
		}
	}
	return last
}
