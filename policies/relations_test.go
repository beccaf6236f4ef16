package policies_test

import (
	"slices"
	"testing"

	"sunclause/facts"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// TestRelationsJudged makes sure that each relation of the examples stands in the table
// of relations, and that each bound of the table is one by which a row judges.
func TestRelationsJudged(t *testing.T) {
	set := load(t, "iec")
	table := set.Book.Tables["relations"]
	bounds := map[string]string{
		"least_possible": "iec/values-possible-least", "greatest_possible": "iec/values-possible-greatest",
		"least": "iec/values-usual-least", "greatest": "iec/values-usual-greatest",
	}
	inTable := map[string]bool{}
	for _, row := range table.Rows {
		relation := row["relation"].(string)
		inTable[relation] = true
		for bound, id := range bounds {
			q, ok := set.Requirement(id)
			if !ok {
				t.Fatalf("there is no %s", id)
			}
			judged := slices.Contains(q.When[0].Limit.Value.([]string), relation)
			if bounded := row[bound] != nil; bounded != judged {
				t.Errorf("%s has %s: %v, and %s judges it: %v", relation, bound, bounded, id, judged)
			}
		}
	}
	for _, name := range examples.Names {
		d, err := schema.Decode("installation.json", examples.Text(t, name))
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range facts.Derive(&d.Installation, set.Book).Relations {
			if !inTable[r.Relation.Value()] {
				t.Errorf("%s: %s is not in the table", r.ID, r.Relation.Value())
			}
		}
	}
}
