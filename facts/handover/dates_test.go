package handover_test

import (
	"testing"

	"sunclause/facts/book"
	"sunclause/facts/facttest"
	"sunclause/facts/handover"
)

// order is what becomes of one row of the table of dates.
func order(t *testing.T, doc object, row object) handover.Order {
	t.Helper()
	b := figures()
	b.Tables["dates"] = &book.Table{Name: "dates", Rows: []map[string]any{row}}
	r := facttest.Derive(t, doc, b)
	return handover.Derive(r.Installation, r.Circuit, r.Strings, b).Orders[0]
}

// TestOrdersOfDates works the days out by hand on the calendar.
func TestOrdersOfDates(t *testing.T) {
	doc := premises(1)
	doc["project"].(object)["design_date"] = "2026-02-10"
	doc["commissioning"] = object{
		"tests_complete": "2026-05-05",
		"steps":          list{object{"id": "ST1", "test": "polarity", "date": "2026-05-05"}},
		"torques":        list{object{"id": "T1", "part": "SUP", "date": "2026-05-08"}, object{"id": "T2", "part": "SUP", "date": "2026-05-07"}},
	}
	doc["handover"] = object{"notifications": list{}, "start_of_work": "2026-04-27", "documents": list{
		object{"id": "D1", "kind": "contract", "date": "2026-02-14", "given": "2026-02-13"},
		object{"id": "D2", "kind": "user_manual", "date": "2026-02-12"},
		object{"id": "D3", "kind": "warranties", "date": "2026-05-05", "given": "2026-05-07"},
	}}
	const start, complete = "/handover/start_of_work", "/commissioning/tests_complete"
	for _, c := range []struct {
		what        string
		row         object
		out, beyond float64
		at          string
	}{
		{"in order", object{"earlier": "/project/design_date", "later": start, "least_d": 0.0}, 0, 0, "/handover"},
		{"76 days, of which 60 are usual", object{"earlier": "/project/design_date", "later": start, "usual_most_d": 60.0}, 0, 16, start},
		{"and 90 are", object{"earlier": "/project/design_date", "later": start, "usual_least_d": 90.0}, 0, 14, start},
		{"the reading furthest out of two", object{"earlier": "/commissioning/*/*/date", "later": complete, "least_d": 0.0}, 3, 0, complete},
		{"each part by itself", object{"earlier": "/handover/documents/*/date", "later": "/handover/documents/*/given", "least_d": 0.0}, 1, 0, "/handover/documents/0/given"},
		{"parts of one kind", object{"earlier": start, "later": "/handover/documents/kind=warranties/date", "most_d": 5.0}, 3, 0, "/handover/documents/2/date"},
		{"a date of the table", object{"earlier": "2026-02-12", "later": "/project/design_date", "least_d": 0.0}, 2, 0, "/project/design_date"},
		{"nothing that has an order", object{"earlier": start, "later": "/handover/end_of_work", "least_d": 0.0}, 0, 0, "/handover"},
	} {
		o := order(t, doc, c.row)
		facttest.Near(t, c.what+": out of order", o.OutDays, c.out, 0)
		facttest.Near(t, c.what+": beyond what is usual", o.BeyondDays, c.beyond, 0)
		if o.At != c.at {
			t.Errorf("%s: it stands at %s, want %s", c.what, o.At, c.at)
		}
	}
}

// A finding names both dates and where they stand.
func TestOrderNamesBothDates(t *testing.T) {
	doc := premises(1)
	doc["project"].(object)["design_date"] = "2026-02-10"
	doc["handover"].(object)["start_of_work"] = "2026-02-09"
	for _, c := range []struct{ earlier, want string }{
		{"/project/design_date", "design before work: 2026-02-10 project.design_date, but 2026-02-09 handover.start_of_work"},
		{"2026-03-01", "design before work: 2026-03-01, but 2026-02-09 handover.start_of_work"},
		{"2026-02-01", "design before work"},
	} {
		o := order(t, doc, object{"title": "design before work", "earlier": c.earlier, "later": "/handover/start_of_work", "least_d": 0.0})
		if o.Name != c.want {
			t.Errorf("it is called %q, want %q", o.Name, c.want)
		}
	}
}

// A date that is due and not stated leaves the order open, unless others break it.
func TestOrderOfDatesDue(t *testing.T) {
	doc := premises(1)
	doc["commissioning"] = object{"torques": list{object{"id": "T1", "part": "SUP"}, object{"id": "T2", "part": "SUP", "date": "2026-05-07"}}}
	doc["handover"] = object{"notifications": list{}, "start_of_work": "2026-04-27"}
	row := object{"earlier": "/handover/start_of_work", "later": "/commissioning/*/*/date", "least_d": 0.0}
	facttest.Near(t, "a date that nobody asks for", order(t, doc, row).OutDays, 0, 0)
	row["due"] = "/handover/start_of_work /commissioning/*/*/date /commissioning/strings/*/date"
	facttest.Wants(t, "a date, and a list", order(t, doc, row).OutDays, "/commissioning/strings", "/commissioning/torques/0/date")
	facttest.Near(t, "what is usual", order(t, doc, row).BeyondDays, 0, 0)
	doc["project"].(object)["stage"] = "design"
	facttest.Near(t, "at design", order(t, doc, row).OutDays, 0, 0)
	doc["project"].(object)["stage"] = "as_built"
	doc["handover"].(object)["start_of_work"] = "2026-05-09"
	facttest.Near(t, "another is out already", order(t, doc, row).OutDays, 2, 0)
	delete(doc["handover"].(object), "start_of_work")
	facttest.Wants(t, "the date that all are held to", order(t, doc, row).OutDays, "/commissioning/strings", "/commissioning/torques/0/date", "/handover/start_of_work")
	facttest.Is[bool](t, "an order that must be", order(t, doc, row).Ordered, true)
	facttest.Is[bool](t, "one that is only usual", order(t, doc, object{"earlier": "1990-01-01", "later": "/handover/date", "usual_most_d": 3.0}).Ordered, false)
}
