package ruleset

import (
	"encoding/json"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/schema"
)

// without takes a member out of an object, with its line. A comment beside it stays,
// on a line of its own. Within braces that have a comment there it is left in: ok is
// then false.
func (c cardText) without(name string) (e edit, ok bool) {
	members := c.src.Members(c.at)
	i := slices.IndexFunc(members, func(m schema.Member) bool { return m.Name == name })
	if i < 0 || len(members) == 1 {
		return edit{}, false
	}
	raw, from := string(c.src.Raw), members[i].Offset
	if raw[c.src.Offset(c.at)] == '{' {
		e = edit{from: from, to: closing(raw, from)}
		if i+1 < len(members) {
			e.to = members[i+1].Offset
		} else {
			e.from = strings.LastIndexByte(raw[:from], ',')
			e.to = from + len(strings.TrimRight(raw[from:e.to], " \n"))
		}
		return e, !strings.Contains(raw[e.from:e.to], "#")
	}
	b := c.block(members, i)
	begin := from - len(b.indent)
	if strings.TrimSpace(raw[begin:from]) == "" || i+1 == len(members) {
		return b.replaced(b.comments()), true
	}
	rest := strings.Join(append(b.comments(), ""), "\n"+b.indent) + strings.TrimLeft(raw[b.to:members[i+1].Offset], " ")
	return edit{from, members[i+1].Offset, rest}, true
}

// eachRow hands out the edits of all rows of a file, or requirements of a table.
func (u *upgrader) eachRow(src *schema.Source, edits func(c cardText, row map[string]any) []edit) []edit {
	root, _ := src.Root().(map[string]any)
	rows, _ := root["requirements"].([]any)
	var all []edit
	for i, row := range rows {
		members, _ := row.(map[string]any)
		at := fmt.Sprintf("/requirements/%d", i)
		if more := edits(cardText{src: src, at: at}, members); len(more) > 0 {
			u.cards[fmt.Sprint(members["id"])] = true
			all = append(all, more...)
		}
	}
	return all
}

// levels leaves out the level that goes without saying.
func (u *upgrader) levels(src *schema.Source) ([]edit, error) {
	return u.eachRow(src, func(c cardText, row map[string]any) []edit {
		if row["level"] != string(Shall) {
			return nil
		}
		if e, ok := c.without("level"); ok {
			return []edit{e}
		}
		return nil
	}), nil
}

// subjects puts the list that a row is about before the fact that it begins with.
func (u *upgrader) subjects(src *schema.Source) ([]edit, error) {
	return u.eachRow(src, func(c cardText, row map[string]any) []edit {
		line, _ := row["require"].(string)
		list, _ := row["subject"].(string)
		of, known := catalogue.Of(list)
		words := compared(line)
		if !known || len(words) == 0 || words[0].quoted {
			return nil
		}
		written := words[0].written
		fact := strings.TrimPrefix(written, list+".")
		if _, isOwn := of.Fact(fact); !isOwn {
			return nil
		}
		at, found := c.word("require", written)
		e, ok := c.without("subject")
		if !found || !ok {
			return nil
		}
		return []edit{e, {at, at + len(written), list + "." + fact}}
	}), nil
}

// word finds where the first word of a comparison stands, after its not.
func (c cardText) word(member, written string) (offset int, ok bool) {
	start := c.src.Offset(c.at + "/" + member)
	begins := regexp.MustCompile(`^(?:["']|[>|][+-]?\s+)?(?:not\s+)?` + regexp.QuoteMeta(written))
	found := begins.FindIndex(c.src.Raw[start:])
	if found == nil {
		return 0, false
	}
	return start + found[1] - len(written), true
}

// listed are the parameters of a file in the form of older versions, a list.
func listed(src *schema.Source) (list []any, name func(i int) string) {
	root, _ := src.Root().(map[string]any)
	list, _ = root["parameters"].([]any)
	return list, func(i int) string {
		members, _ := list[i].(map[string]any)
		name, _ := members["name"].(string)
		return name
	}
}

// dashOf is where the sign - before an item of a list stands.
func dashOf(src *schema.Source, at string) int {
	raw := string(src.Raw)
	for end := src.Offset(at); end > 0; {
		begin := strings.LastIndexByte(raw[:end], '\n') + 1
		if line := raw[begin:end]; strings.HasPrefix(strings.TrimLeft(line, " "), "-") {
			return begin + strings.IndexByte(line, '-')
		}
		end = begin - 1
	}
	return -1
}

func column(src *schema.Source, offset int) int {
	return offset - strings.LastIndexByte(string(src.Raw[:offset]), '\n') - 1
}

// indented moves a list of parameters that stands no deeper than its name to the
// right, since what is found by name has to.
func (u *upgrader) indented(src *schema.Source) ([]edit, error) {
	list, _ := listed(src)
	raw := string(src.Raw)
	if len(list) == 0 || raw[src.Offset("/parameters")] == '[' {
		return nil, nil
	}
	members := src.Members("")
	i := slices.IndexFunc(members, func(m schema.Member) bool { return m.Name == "parameters" })
	first := dashOf(src, "/parameters/0")
	if first < 0 || column(src, first) > column(src, members[i].Offset) {
		return nil, nil
	}
	var edits []edit
	at := strings.LastIndexByte(raw[:first], '\n') + 1
	for line := range strings.Lines(raw[at:cardText{src: src}.block(members, i).to]) {
		if strings.TrimSpace(line) != "" {
			edits = append(edits, edit{at, at, "  "})
		}
		at += len(line)
	}
	return edits, nil
}

// mapped puts a list of parameters into the present form, each under its name.
func (u *upgrader) mapped(src *schema.Source) ([]edit, error) {
	list, name := listed(src)
	if list == nil {
		return nil, nil
	}
	raw := string(src.Raw)
	var edits []edit
	start := src.Offset("/parameters")
	inBrackets := raw[start] == '['
	if inBrackets {
		end := closing(raw, start+1)
		edits = append(edits, edit{start, start + 1, "{"}, edit{end, end + 1, "}"})
	}
	for i := range list {
		at := fmt.Sprintf("/parameters/%d", i)
		more, ok := named(cardText{src: src, at: at}, name(i), inBrackets)
		if !ok {
			return nil, schema.Problems{src.ProblemAt(at, "it cannot be upgraded: its name cannot be taken out", "write it in lines: name, title, value, source")}
		}
		u.figures[name(i)] = true
		edits = append(edits, more...)
	}
	return edits, nil
}

// named puts the name of a parameter before what is said of it.
func named(c cardText, name string, inBrackets bool) (edits []edit, ok bool) {
	raw, start := string(c.src.Raw), c.src.Offset(c.at)
	before := start
	if !inBrackets {
		if before = dashOf(c.src, c.at); before < 0 {
			return nil, false
		}
	}
	if raw[start] == '{' {
		e, ok := c.without("name")
		return []edit{{before, start, name + ": "}, e}, ok && name != ""
	}
	members := c.src.Members(c.at)
	i := slices.IndexFunc(members, func(m schema.Member) bool { return m.Name == "name" })
	if i < 0 || len(members) == 1 || name == "" || inBrackets {
		return nil, false
	}
	b := c.block(members, i)
	line, _, _ := strings.Cut(raw[before+1:], "\n")
	switch text, _ := splitComment(line); {
	case strings.TrimSpace(text) == "": // the sign stands alone
		return []edit{{before, before + 1, name + ":"}, b.replaced(b.comments())}, true
	case i == 0:
		return []edit{{before, b.to, strings.Join(append([]string{name + ":"}, b.comments()...), " ") + "\n"}}, true
	}
	head := name + ":\n" + strings.Repeat(" ", column(c.src, before)+1)
	return []edit{{before, before + 1, head}, b.replaced(b.comments())}, true
}

// units leaves out the units that names say.
func (u *upgrader) units(src *schema.Source) ([]edit, error) {
	root, _ := src.Root().(map[string]any)
	figures, _ := root["parameters"].(map[string]any)
	var edits []edit
	for name, figure := range figures {
		members, _ := figure.(map[string]any)
		if _, isNumber := members["value"].(json.Number); !isNumber || members["unit"] != schema.UnitOf(name) {
			continue
		}
		if e, ok := (cardText{src: src, at: "/parameters/" + name}).without("unit"); ok {
			u.figures[name] = true
			edits = append(edits, e)
		}
	}
	return edits, nil
}

// oldParameters are the parameters of a file that are in the older form, each as a
// problem that says what it would be.
func oldParameters(src *schema.Source) schema.Problems {
	list, name := listed(src)
	var found schema.Problems
	for i := range list {
		at := fmt.Sprintf("/parameters/%d", i)
		what := olderForm + "; now it is " + name(i) + ": " + inBraces(src, at, list[i], "name")
		found = append(found, src.ProblemAt(at, what, howUpgraded))
	}
	return found
}

// inBraces writes a value on one line, its members in their order but one.
func inBraces(src *schema.Source, at string, value any, but string) string {
	members, isObject := value.(map[string]any)
	if !isObject {
		text, isText := value.(string)
		if isText {
			return yamlText(text, true)
		}
		return fmt.Sprint(value)
	}
	var all []string
	for _, m := range src.Members(at) {
		if m.Name != but {
			all = append(all, m.Name+": "+inBraces(src, at+"/"+m.Name, members[m.Name], ""))
		}
	}
	return "{" + strings.Join(all, ", ") + "}"
}
