package ruleset

import (
	"fmt"
	"strings"

	"sunclause/engine/catalogue"
	"sunclause/schema"
)

// cardProblems holds one card to the facts, parameters and tables that there are.
type cardProblems struct {
	set   *RuleSet
	src   *schema.Source
	found schema.Problems
}

func (p *cardProblems) add(at, what, remedy string) {
	p.found = append(p.found, p.src.ProblemAt(at, what, remedy))
}

// addWord refuses one word at the beginning of a line, or after its not.
func (p *cardProblems) addWord(at, word, what, remedy string) {
	p.found = append(p.found, p.src.ProblemAtWord(at, []string{word}, what, remedy))
}

// check reads what a card compares into the requirement.
func (p *cardProblems) check(c cardFile, r *Requirement) {
	of, ok := p.subject(c)
	if !ok {
		return
	}
	r.Subject, c.Subject = of.Name, schema.NewText(c.Subject.At(), of.Name)
	if r.Rego {
		r.Condition = p.shown(of, c.Measure)
	} else {
		r.Condition = p.condition(of, c.Pointer.Member("require"), c.Require)
	}
	r.When = c.stage()
	for i, w := range c.When {
		r.When = append(r.When, p.condition(of, fmt.Sprintf("%s/%d", c.Pointer.Member("when"), i), w))
	}
	r.When = append(r.When, c.term()...)
	if c.Since.Stated() && c.Until.Stated() && c.Since.Value > c.Until.Value {
		p.add(c.Until.At(), "the last day is before the first", "look at since and until")
	}
	if r.Rego && !c.Broken.Stated() && !c.Measure.Stated() {
		p.add(c.At(), "the card says neither what is measured nor what is wrong when the rule speaks", `add measure, or broken: "…"`)
	}
}

// subject finds what a card is about: what it states, or else the list that the
// first fact of what is required names, as in strings.voc_max_v at_most 600.
func (p *cardProblems) subject(c cardFile) (*catalogue.Subject, bool) {
	if name := c.Subject.Value; c.Subject.Stated() {
		of, ok := catalogue.Of(name)
		if !ok {
			p.add(c.Subject.At(), fmt.Sprintf("there are no facts called %q", name), catalogue.DidYouMean(name, catalogue.Names()))
		}
		return of, ok
	}
	at := c.Pointer.Member("require")
	line, _ := c.Require.(string)
	words := compared(line)
	if len(words) == 0 {
		p.add(at, "nothing says what the row is about", "add subject, as in subject: strings; a group does not say it")
		return nil, false
	}
	list, _, dotted := strings.Cut(words[0].text, ".")
	of, ok := catalogue.Of(list)
	switch {
	case !dotted:
		p.addWord(at, words[0].written, fmt.Sprintf("nothing says whose fact %s is", list), listsWith(list))
	case !ok:
		p.addWord(at, words[0].written, fmt.Sprintf("there are no facts called %q", list), catalogue.DidYouMean(list, catalogue.Names()))
	case of.Name == catalogue.Whole && !p.aboutWhole(c):
	default:
		return of, true
	}
	return nil, false
}

// aboutWhole refuses a row that begins with a fact of the installation and has
// conditions on parts, since it could be about either.
func (p *cardProblems) aboutWhole(c cardFile) bool {
	before := len(p.found)
	for i, w := range c.When {
		at := fmt.Sprintf("%s/%d", c.Pointer.Member("when"), i)
		group, _ := w.(map[string]any)
		each, _ := group["any_of"].([]any)
		for _, one := range append([]any{w}, each...) {
			line, _ := one.(string)
			if words := compared(line); len(words) > 0 {
				p.ofWhole(at, words[0])
			}
		}
	}
	return len(p.found) == before
}

// ofWhole refuses a fact that parts have and the installation has not.
func (p *cardProblems) ofWhole(at string, word lineWord) {
	if _, _, ok := catalogue.Installation().Find(strings.TrimPrefix(word.text, catalogue.Whole+".")); ok {
		return
	}
	list, _, dotted := strings.Cut(word.text, ".")
	lists := listsHaving(word.text)
	if _, ok := catalogue.Of(list); ok && dotted {
		lists = []string{list}
	}
	if len(lists) > 0 {
		p.addWord(at, word.written, fmt.Sprintf("%s is no fact of the installation, with one of which require begins", word.text), "add subject: "+strings.Join(lists, " or "))
	}
}

// compared are the words of a comparison from its fact on.
func compared(line string) []lineWord {
	words := wordsOf(line)
	if len(words) > 0 && words[0].written == "not" {
		return words[1:]
	}
	return words
}

// listsWith is the remedy for a fact of which nothing says what it is of.
func listsWith(fact string) string {
	lists := listsHaving(fact)
	if len(lists) == 0 {
		return "write LIST.FACT, as in strings.voc_max_v, or add subject; docs/facts.md lists facts"
	}
	return "write " + strings.Join(lists, "."+fact+" or ") + "." + fact + ", or add subject"
}

// listsHaving names the first lists whose parts have a fact.
func listsHaving(fact string) (lists []string) {
	for _, of := range catalogue.Subjects() {
		if _, ok := of.Fact(fact); ok && len(lists) < 4 {
			lists = append(lists, of.Name)
		}
	}
	return lists
}

// condition reads one comparison, or a group of which one has to hold.
func (p *cardProblems) condition(of *catalogue.Subject, at string, written any) Condition {
	switch w := written.(type) {
	case string:
		c, _ := p.line(of, at, w)
		return c
	case map[string]any:
		each, _ := w["any_of"].([]any)
		group := Condition{AnyOf: []Condition{}}
		for i, one := range each {
			text, _ := one.(string)
			c, _ := p.line(of, fmt.Sprintf("%s/any_of/%d", at, i), text)
			group.AnyOf = append(group.AnyOf, c)
		}
		return group
	}
	p.add(at, "nothing is compared", "write one comparison, as voc_max_v at_most 600, or any_of with a list of such")
	return Condition{}
}

// shown reads what the card of a Rego rule shows beside its outcome: a fact, or a
// comparison, which decides nothing there.
func (p *cardProblems) shown(of *catalogue.Subject, measure schema.Text) Condition {
	if !measure.Stated() {
		return Condition{}
	}
	if words := wordsOf(measure.Value); len(words) == 1 {
		r := &lineReader{cardProblems: p, of: of, at: measure.At(), words: words}
		f, _ := r.fact(0, words[0].text)
		return Condition{Fact: f.name}
	}
	c, _ := p.line(of, measure.At(), measure.Value)
	return c
}
