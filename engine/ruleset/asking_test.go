package ruleset_test

import (
	"context"
	"strings"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/policies"
)

// labelSet is a set over the international one with a table of labels, whose rows
// and requirements it is given, and a manifest with more.
func labelSet(t *testing.T, table, rows, more string) (*ruleset.RuleSet, error) {
	dir := writeSet(t, "house", map[string]string{
		"ruleset.yaml": "name: house\ntitle: t\nversion: 0.1.0\nextends: iec\n" + more,
		"tables/" + table + ".yaml": "title: t\nsource: {document: test, how: house rule}\n" +
			"columns: [{name: legend}, {name: place}, {name: where}, {name: due}, {name: requirement}, {name: paper}, {name: held}]\nrows:\n" + rows,
	})
	return ruleset.Load(context.Background(), policies.FS, dir)
}

const (
	houseSign   = "  - {id: house/sign, title: t, level: shall, remedy: r, source: {document: test, how: house rule}}\n"
	signAtBoard = "  - {legend: pv_on_roof, place: main_board, where: on it, due: always, requirement: house/sign}\n"
)

// A label is one edit in one file: a row, and the requirement that it names.
func TestTableCarriesRequirements(t *testing.T) {
	set, err := labelSet(t, "labels_house", signAtBoard+"requirements:\n"+houseSign, "")
	if err != nil {
		t.Fatal(err)
	}
	for id, want := range map[string]string{
		"house/sign":         "installation.stage equals as_built; legend equals pv_on_roof; place one_of main_board; present",
		"iec/label-pv-sign":  "installation.stage equals as_built; legend equals pv_on_roof; place one_of origin meter pv_board; present",
		"iec/label-inverter": "installation.stage equals as_built; legend equals inverter_isolate_both; present",
		"iec/papers-basic":   "stage equals as_built; papers_given includes basic_information",
	} {
		q, ok := set.Requirement(id)
		if !ok {
			t.Fatal(id)
		}
		var got []string
		for _, c := range q.Compared() {
			got = append(got, c.String())
		}
		if strings.Join(got, "; ") != want {
			t.Errorf("%s asks %s; want %s", id, strings.Join(got, "; "), want)
		}
	}
	q, _ := set.Requirement("house/sign")
	if q.Room != "label" || q.Level != "shall" || !strings.HasSuffix(q.File, "tables/labels_house.yaml") || q.Line != 7 {
		t.Errorf("%+v", q)
	}
	if _, err := labelSet(t, "labels_house", strings.Replace(signAtBoard, "house/sign", "iec/label-pv-sign", 1), ""); err != nil {
		t.Errorf("a requirement of the set below asks for the label at one place more: %v", err)
	}
	set, err = labelSet(t, "papers_house", "  - {paper: warranties, held: filed, requirement: house/sign}\nrequirements:\n"+houseSign, "")
	if q, ok := set.Requirement("house/sign"); err != nil || !ok || q.Condition.String() != "papers includes warranties" {
		t.Error(err)
	}
}

// A cell is asked for as it is written, quotation marks and all.
func TestTableQuotesItsCells(t *testing.T) {
	for _, paper := range []string{"o'clock list", `maker's "list"`} {
		set, err := labelSet(t, "papers_house", "  - {paper: '"+strings.ReplaceAll(paper, "'", "''")+"', held: filed, requirement: house/sign}\nrequirements:\n"+houseSign, "")
		if strings.Contains(paper, `"`) {
			if err == nil || !strings.Contains(err.Error(), "has both kinds of quotation marks in it; leave one kind out") {
				t.Errorf("%s: %v", paper, err)
			}
			continue
		}
		if err != nil {
			t.Fatal(err)
		}
		if q, _ := set.Requirement("house/sign"); q.Limit.Value != paper {
			t.Errorf("%q is asked for as %q", paper, q.Limit.Value)
		}
	}
}

// Neither a label without a requirement nor a requirement without a label is
// possible to write, nor can one be lost unseen.
func TestTableCarriesRequirementsRefused(t *testing.T) {
	for name, c := range map[string]struct{ table, rows, more, want string }{
		"none named":        {"labels_house", strings.Replace(signAtBoard, ", requirement: house/sign", "", 1), "", "labels_house.yaml:5:5: the row asks for pv_on_roof and names no requirement; name one in the column requirement"},
		"none there":        {"labels_house", signAtBoard, "", `labels_house.yaml:5:85: the rule set has no requirement "house/sign"`},
		"none asks for it":  {"labels_house", strings.Replace(signAtBoard, "house/sign", "iec/label-inverter", 1), "", `requirement iec/label-inverter does not ask for pv_on_roof; name one that does`},
		"another subject":   {"labels_house", strings.Replace(signAtBoard, "house/sign", "iec/string-voltage-hot", 1), "", `requirement iec/string-voltage-hot does not ask for pv_on_roof`},
		"no row":            {"labels_house", strings.Replace(signAtBoard, "house/sign", "iec/label-pv-sign", 1) + "requirements:\n" + houseSign, "", "labels_house.yaml:7:10: no row asks for what requirement house/sign is about"},
		"lacks its title":   {"labels_house", signAtBoard + "requirements:\n" + strings.Replace(houseSign, "title: t, ", "", 1), "", `labels_house.yaml:7:5: requirements[0] lacks "title"`},
		"its places":        {"labels_house", signAtBoard + "requirements:\n" + strings.Replace(houseSign, "level: shall", "level: shall, when: [place equals origin]", 1), "", "the requirement says at which places it applies, which the rows do"},
		"no table for it":   {"others", signAtBoard + "requirements:\n" + houseSign, "", "table others asks for nothing and carries no requirements; labels and papers do"},
		"replaced":          {"labels", signAtBoard + "requirements:\n" + houseSign + "replaces: {reason: r, date: 2026-01-01}\n", "", "table labels carries requirements and is not replaced; leave single rows out by a change with cells: {due: never}, and add others in a table whose name begins with labels_"},
		"its legend":        {"labels_house", signAtBoard + "requirements:\n" + houseSign, "changes: [{table: labels, row: {legend: dc_isolator}, cells: {legend: dc_cable}, reason: r, date: 2026-01-01}]\n", "legend decides what the row asks for, and is not changed; leave the row out by cells: {due: never}"},
		"its requirement":   {"labels_house", signAtBoard + "requirements:\n" + houseSign, "changes: [{table: labels, row: {legend: dc_isolator}, cells: {requirement: house/sign}, reason: r, date: 2026-01-01}]\n", "requirement decides what the row asks for"},
		"by another's name": {"labels_house", signAtBoard + "requirements:\n" + strings.Replace(houseSign, "house/sign", "iec/sign", 1), "", "no row asks for what requirement iec/sign is about"},
	} {
		if _, err := labelSet(t, c.table, c.rows, c.more); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v\nwant %s", name, err, c.want)
		}
	}
}

// A set above raises, lowers and switches off a requirement of a table as any other,
// and leaves a row out.
func TestTableRequirementsAreChanged(t *testing.T) {
	changes := `changes:
  - {requirement: iec/label-dc-isolator, level: should, reason: r, date: 2026-01-01}
  - {requirement: iec/papers-basic, off: true, reason: r, date: 2026-01-01}
  - {table: labels, row: {legend: dc_cable}, cells: {due: never}, reason: r, date: 2026-01-01}
`
	set, err := labelSet(t, "labels_house", signAtBoard+"requirements:\n"+houseSign, changes)
	if err != nil {
		t.Fatal(err)
	}
	if q, _ := set.Requirement("iec/label-dc-isolator"); q.Level != ruleset.Should || len(q.Changes) != 1 || !q.Changes[0].Loosens {
		t.Errorf("%+v", q)
	}
	if _, on := set.Requirement("iec/papers-basic"); on || len(set.Off) != 1 {
		t.Error("the papers are still asked for")
	}
	for _, row := range set.Book.Tables["labels"].Rows {
		if row["legend"] == "dc_cable" && row["due"] != "never" {
			t.Error("the label is still due")
		}
	}
}
