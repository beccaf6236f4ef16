package ruleset

import (
	"fmt"
	"slices"
	"strings"

	"sunclause/schema"
)

// edit replaces the bytes of a text from one offset to another.
type edit struct {
	from, to int
	text     string
}

// apply makes the edits, which do not overlap.
func apply(raw []byte, edits []edit) []byte {
	slices.SortFunc(edits, func(a, b edit) int { return a.from - b.from })
	var out []byte
	done := 0
	for _, e := range edits {
		out = append(append(out, raw[done:e.from]...), e.text...)
		done = e.to
	}
	return append(out, raw[done:]...)
}

// longestLine is how many characters a list in brackets may take, before its
// conditions stand one on a line.
const longestLine = 118

// cardText is a row or card as it stands in a text, whose members are rewritten in
// their places.
type cardText struct {
	src    *schema.Source
	at     string // JSON pointer
	isRule bool
	new    newForm
}

// edits are what brings the card into the present form. Comments, the order of
// members and blank lines stay.
func (c cardText) edits() ([]edit, error) {
	if c.src.Raw[c.src.Offset(c.at)] == '{' {
		return c.flowEdits()
	}
	var all []edit
	var compared []memberBlock
	members := c.src.Members(c.at)
	for i, m := range members {
		b := c.block(members, i)
		switch {
		case m.Name == "when":
			all = append(all, b.replaced(c.whenLines(b)))
		case slices.Contains(oldMembers, m.Name):
			if len(compared) > 0 {
				b.after = c.block(members, i-1).to
			}
			compared = append(compared, b)
		}
	}
	return append(all, c.comparedEdits(compared)...), nil
}

// comparedEdits put one line in the place of the first of the members that say
// what is compared. A comment beside it stays there, or comes there if it is the
// only one; others come above it, each on a line of its own. Blank lines stay.
func (c cardText) comparedEdits(blocks []memberBlock) []edit {
	if len(blocks) == 0 {
		return nil
	}
	line := compareMember(c.isRule) + ": " + yamlText(c.new.compare, false)
	var beside, above []string
	var all []edit
	for _, b := range blocks[1:] {
		between := string(c.src.Raw[b.after : b.from-len(b.indent)])
		above = append(append(above, commentsIn(between)...), b.comments()...)
		beside = append(beside, b.comments()...)
		all = append(all, edit{b.after, b.to, blankIn(between)})
	}
	own := blocks[0].comments()
	if _, first := splitComment(blocks[0].lines[0]); first != "" {
		line, own = line+" "+first, own[1:]
	} else if len(own) == 0 && len(beside) == 1 && len(above) == 1 {
		line, above = line+" "+beside[0], nil
	}
	return append(all, blocks[0].replaced(slices.Concat(own, above, []string{line})))
}

// commentsIn are the comments of a text, each of a line.
func commentsIn(text string) []string {
	var all []string
	for l := range strings.Lines(text) {
		if _, comment := splitComment(strings.TrimRight(l, "\n")); comment != "" {
			all = append(all, comment)
		}
	}
	return all
}

// blankIn are the blank lines of a text.
func blankIn(text string) string {
	blank := ""
	for l := range strings.Lines(text) {
		if strings.TrimSpace(l) == "" {
			blank += "\n"
		}
	}
	return blank
}

// memberBlock is a member with its lines: from its name to the end of its last
// line. Comments and blank lines that follow are not part of it.
type memberBlock struct {
	from, to int
	after    int    // the end of the member before; of one that is joined with an earlier one
	indent   string // of the lines of the card
	lines    []string
}

// block finds the lines of a member.
func (c cardText) block(members []schema.Member, i int) memberBlock {
	raw := string(c.src.Raw)
	from := members[i].Offset
	begin := strings.LastIndexByte(raw[:from], '\n') + 1
	indent := strings.Repeat(" ", from-begin)
	end := len(raw)
	if i+1 < len(members) {
		end = strings.LastIndexByte(raw[:members[i+1].Offset], '\n') + 1
	}
	b := memberBlock{from: from, to: from, indent: indent}
	at := from
	var passed []string
	for line := range strings.Lines(raw[from:end]) {
		text := strings.TrimRight(line, " \r\n")
		plain := strings.TrimLeft(text, " ")
		deep := len(text) - len(plain)
		inside := deep > len(indent) || deep == len(indent) && strings.HasPrefix(plain+" ", "- ")
		if at > from && !inside && plain != "" && !strings.HasPrefix(plain, "#") {
			break
		}
		at += len(line)
		passed = append(passed, text)
		if plain != "" && !strings.HasPrefix(plain, "#") {
			b.lines, b.to = append(b.lines, passed...), at
			passed = nil
		}
	}
	return b
}

// replaced puts lines in the place of the member. The first takes the place of its
// name; where there are none, the whole line goes.
func (b memberBlock) replaced(lines []string) edit {
	if len(lines) == 0 {
		return edit{b.from - len(b.indent), b.to, ""}
	}
	return edit{b.from, b.to, strings.Join(lines, "\n"+b.indent) + "\n"}
}

// comments are those that stand in the member, each on a line of its own.
func (b memberBlock) comments() []string {
	return commentsIn(strings.Join(b.lines, "\n"))
}

// whenLines are the stage and the conditions, with the comments of each.
func (c cardText) whenLines(b memberBlock) []string {
	of := c.commentsOf(b)
	var all []string
	if c.new.stage != "" {
		all = append(append(all, of.above[c.new.staged]...), withComment("stage: "+c.new.stage, of.beside[c.new.staged]))
	}
	if len(c.new.when) == 0 {
		return append(of.first, all...)
	}
	commented := of.head != ""
	for _, i := range c.new.place {
		commented = commented || of.beside[i] != "" || len(of.above[i]) > 0
	}
	all = append(of.first, all...)
	if list := "when: " + flowList(c.new.when); !commented && len(b.indent)+len(list) <= longestLine {
		return append(all, list)
	}
	all = append(all, withComment("when:", of.head))
	for n, text := range c.new.when {
		i := c.new.place[n]
		for _, comment := range of.above[i] {
			all = append(all, "  "+comment)
		}
		all = append(all, withComment("  - "+yamlText(text, false), of.beside[i]))
	}
	return all
}

func withComment(text, comment string) string {
	if comment == "" {
		return text
	}
	return text + " " + comment
}

// conditionComments are the comments of a list of conditions.
type conditionComments struct {
	head   string           // beside the name of the list
	first  []string         // above it, where nothing else tells whose they are
	above  map[int][]string // each condition
	beside map[int]string
}

// commentsOf finds which comments stand above and beside each condition.
func (c cardText) commentsOf(b memberBlock) conditionComments {
	of := conditionComments{above: map[int][]string{}, beside: map[int]string{}}
	conditions, _ := c.conditions()
	starts := map[int][]int{} // lines, from that of the list's name, at which conditions begin
	for i := range conditions {
		line := strings.Count(string(c.src.Raw[b.from:c.src.Offset(fmt.Sprintf("%s/when/%d", c.at, i))]), "\n")
		starts[line] = append(starts[line], i)
	}
	current := -1
	var waiting []string
	for n, l := range b.lines {
		text, comment := splitComment(l)
		if begun := starts[n]; len(begun) > 0 {
			current = begun[0]
			of.above[current] = append(of.above[current], waiting...)
			waiting = nil
		}
		switch {
		case comment == "":
		case strings.TrimSpace(text) == "":
			waiting = append(waiting, comment)
		case current < 0:
			of.head = comment
		case of.beside[current] == "" && len(starts[n]) == 1:
			of.beside[current] = comment
		default:
			of.above[current] = append(of.above[current], comment)
		}
	}
	of.first = waiting
	if len(c.new.when) == 0 && of.head != "" {
		of.first = append(of.first, of.head)
	}
	return of
}

func (c cardText) conditions() ([]any, bool) {
	v := c.src.Root()
	for _, token := range strings.Split(strings.TrimPrefix(c.at+"/when", "/"), "/") {
		switch of := v.(type) {
		case map[string]any:
			v = of[token]
		case []any:
			var i int
			if _, err := fmt.Sscan(token, &i); err != nil || i >= len(of) {
				return nil, false
			}
			v = of[i]
		}
	}
	list, ok := v.([]any)
	return list, ok
}

// splitComment splits the comment off a line; a sign within quotes begins none.
func splitComment(line string) (text, comment string) {
	quote := byte(0)
	for i := range len(line) {
		before := byte(' ')
		if i > 0 {
			before = line[i-1]
		}
		switch c := line[i]; {
		case quote != 0:
			if c == quote {
				quote = 0
			}
		case (c == '\'' || c == '"') && strings.IndexByte(" [{,:", before) >= 0:
			quote = c
		case c == '#' && (before == ' ' || before == '\t'):
			return line[:i], strings.TrimSpace(line[i:])
		}
	}
	return line, ""
}

// flowEdits rewrite a card that stands in braces. Members keep what stands between
// them.
func (c cardText) flowEdits() ([]edit, error) {
	members := c.src.Members(c.at)
	raw := string(c.src.Raw)
	end := closing(raw, members[len(members)-1].Offset)
	var out strings.Builder
	between := ""
	compared := false
	for i, m := range members {
		to := end
		if i+1 < len(members) {
			to = members[i+1].Offset
		}
		text := strings.TrimRight(raw[m.Offset:to], ", \n")
		after := raw[m.Offset+len(text) : to]
		isOld := slices.Contains(oldMembers, m.Name)
		if isOld || m.Name == "when" {
			for line := range strings.Lines(raw[m.Offset:to]) {
				if _, comment := splitComment(strings.TrimRight(line, "\n")); comment != "" {
					return nil, fmt.Errorf("there is a comment within the braces (%s); move it above the row", comment)
				}
			}
		}
		switch {
		case m.Name == "when":
			text = c.flowWhen()
		case isOld && !compared:
			compared = true
			text = compareMember(c.isRule) + ": " + yamlText(c.new.compare, true)
		case isOld:
			continue
		}
		out.WriteString(between + text)
		between = after
	}
	return []edit{{members[0].Offset, end, out.String()}}, nil
}

func (c cardText) flowWhen() string {
	var text []string
	if c.new.stage != "" {
		text = append(text, "stage: "+c.new.stage)
	}
	if len(c.new.when) > 0 || c.new.stage == "" {
		text = append(text, "when: "+flowList(c.new.when))
	}
	return strings.Join(text, ", ")
}

// closing finds the brace that ends what stands around an offset.
func closing(text string, from int) int {
	deep, quote := 0, byte(0)
	for i := from; i < len(text); i++ {
		switch c := text[i]; {
		case quote != 0:
			if c == quote {
				quote = 0
			}
		case (c == '\'' || c == '"') && strings.IndexByte(" [{,:", text[i-1]) >= 0:
			quote = c
		case c == '{' || c == '[':
			deep++
		case c == '}' || c == ']':
			if deep == 0 {
				return i
			}
			deep--
		}
	}
	return len(text)
}
