package judge

import (
	"cmp"
	"context"
	"fmt"
	"slices"

	"sunclause/engine/catalogue"
	"sunclause/engine/rego"
	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/facts/working"
	"sunclause/schema"
)

// evaluation is the judging of one installation: what the Rego rules of the set
// find in its facts, and what has been read and compared so far.
type evaluation struct {
	set    *ruleset.RuleSet
	facts  *facts.Facts
	broken map[rego.Key]string // by Rego rules
	whole  reader              // of the installation
	part   reader              // of the part that is being judged

	elsewhere map[*ruleset.Requirement][]working.Gap // what a Rego rule lacks of other parts than the one it judges
}

func newEvaluation(ctx context.Context, set *ruleset.RuleSet, f *facts.Facts) (*evaluation, error) {
	e := &evaluation{set: set, facts: f, elsewhere: map[*ruleset.Requirement][]working.Gap{}}
	if rules := set.Rules(); rules != nil {
		broken, err := rules.Broken(ctx, f)
		if err != nil {
			return nil, fmt.Errorf("rule set %s could not judge: %w", set.Name, err)
		}
		e.broken = broken
	}
	installation, _ := catalogue.Installation().Parts(f)
	e.whole, e.part = newReader(set), newReader(set)
	e.whole.begin(installation[0])
	return e, nil
}

// block is a part with the requirements that are about it.
type block struct {
	*Part
	requirements []*ruleset.Requirement
	stated       bool // the document states such parts, even if there are none
	about        bool // there is a part
}

// judgeAll judges every requirement for every part it is about. Judgments stand
// in the order of the document, and those of one place in the order of the
// requirements' ids.
func (e *evaluation) judgeAll(doc *schema.Document) []Judgment {
	bySubject := map[string][]*ruleset.Requirement{}
	for _, q := range e.set.Requirements {
		bySubject[q.Subject] = append(bySubject[q.Subject], q)
	}
	var blocks []block
	n := 0
	for _, s := range catalogue.Subjects() {
		if about := bySubject[s.Name]; about != nil {
			added := e.blocksOf(s, about, doc)
			n += len(added) * len(about)
			blocks = append(blocks, added...)
		}
	}
	slices.SortStableFunc(blocks, block.compare)
	all := make([]Judgment, 0, n)
	for len(blocks) > 0 {
		same := 1
		for same < len(blocks) && blocks[0].compare(blocks[same]) == 0 {
			same++
		}
		first := len(all)
		for _, b := range blocks[:same] {
			all = e.judgeBlock(b, all)
		}
		if same > 1 {
			slices.SortStableFunc(all[first:], func(x, y Judgment) int { return cmp.Compare(x.Requirement.ID, y.Requirement.ID) })
		}
		blocks = blocks[same:]
	}
	return all
}

func (b block) compare(o block) int {
	return cmp.Or(
		cmp.Compare(b.Position.Line, o.Position.Line), cmp.Compare(b.Position.Column, o.Position.Column),
		cmp.Compare(b.Subject.ID, o.Subject.ID))
}

// blocksOf lists the parts of a subject with the requirements about them. Where
// there are none the requirements stand by themselves: they do not apply when
// the document says that there are none, and are not shown when it does not say.
func (e *evaluation) blocksOf(s *catalogue.Subject, about []*ruleset.Requirement, doc *schema.Document) []block {
	place := func(at string) schema.Position {
		if doc == nil {
			return schema.Position{}
		}
		return doc.Position(at)
	}
	parts, stated := s.Parts(e.facts)
	if !stated || len(parts) == 0 {
		at := facts.Lists[s.Name]
		whole := working.Subject{ID: catalogue.Whole, At: at, Name: "the installation"}
		return []block{{&Part{Subject: whole, Position: place(at)}, about, stated, false}}
	}
	blocks := make([]block, len(parts))
	all := make([]Part, len(parts))
	for i, p := range parts {
		all[i] = Part{p.Subject, place(p.At), p}
		blocks[i] = block{&all[i], about, stated, true}
	}
	return blocks
}

// judgeBlock appends the judgments about one part.
func (e *evaluation) judgeBlock(b block, all []Judgment) []Judgment {
	if b.about {
		e.part.begin(b.facts)
	}
	for _, q := range b.requirements {
		j := Judgment{Requirement: q, Part: b.Part}
		switch {
		case b.about:
			e.judge(&j)
		case b.stated:
			j.Outcome = NotApplicable
		default:
			j.Outcome, j.Missing = NotShown, []working.Gap{working.Unstated(b.Subject.At)}
		}
		all = append(all, j)
	}
	return all
}

// judge states the outcome of a requirement for the part that is being judged.
func (e *evaluation) judge(j *Judgment) {
	q := j.Requirement
	doubtful := false // whether it applies at all
	for _, c := range q.Conditions() {
		switch e.holds(c) {
		case no:
			j.Outcome = NotApplicable
			return
		case unknown:
			doubtful = true
		}
	}
	e.measure(j)
	kept := yes
	if q.Rego {
		kept = e.keepsRule(j)
	} else {
		kept = e.holds(q.Row())
	}
	switch {
	case kept == unknown || doubtful && kept == no:
		j.Outcome, j.Missing = NotShown, e.missing(q)
	case kept == no:
		j.Outcome = NotMet
		e.measureOthers(j)
	default:
		j.Outcome = Met
		if doubtful {
			j.EitherWay, j.Missing = true, e.missing(q)
		}
	}
}

// keepsRule is whether the part keeps a Rego rule, and takes what the rule says.
func (e *evaluation) keepsRule(j *Judgment) truth {
	q := j.Requirement
	reads := e.set.Rules().Reads(q.ID)
	if len(e.missingElsewhere(q, reads)) > 0 || e.lacksOwn(q, reads) {
		return unknown
	}
	says, broken := e.broken[rego.Key{ID: q.ID, Subject: j.Subject.ID}]
	if !broken {
		return yes
	}
	j.Message = says
	return no
}

// measure fills in what was compared with what, as far as it is known.
func (e *evaluation) measure(j *Judgment) {
	row := j.Requirement.Row()
	if row != nil && row.AnyOf != nil {
		j.decides = e.deciding(row.AnyOf)
		row = row.AnyOf[j.decides]
	}
	e.measureBy(j, row)
}

// measureOthers fills in the same for each further comparison of a group, none of
// which holds.
func (e *evaluation) measureOthers(j *Judgment) {
	for i := range j.Requirement.AnyOf {
		if i == j.decides {
			continue
		}
		other := Judgment{Requirement: j.Requirement, Part: j.Part, Outcome: NotMet, decides: i}
		e.measureBy(&other, j.Requirement.Row().AnyOf[i])
		j.others = append(j.others, other)
	}
}

// measureBy fills in what one comparison compares; row is nil for a Rego rule.
func (e *evaluation) measureBy(j *Judgment, row *ruleset.Comparison) {
	q, c := j.Requirement, j.Compared()
	if v := e.factNamed(q, c.Fact); v != nil && v.Known {
		j.Measured = &Quantity{Value: v.Plain(), Unit: v.Unit, Fact: catalogue.FullName(q.Subject, c.Fact)}
	}
	switch limit := c.Limit; {
	case row != nil && (limit.Factor != nil || limit.Cell != nil):
		if v := e.limit(row); v.Known {
			j.Limit = &Quantity{Value: v.Plain(), Unit: v.Unit}
		}
	case limit.Fact != "":
		if v := e.factNamed(q, limit.Fact); v != nil && v.Known {
			j.Limit = &Quantity{Value: v.Plain(), Unit: v.Unit, Fact: catalogue.FullName(q.Subject, limit.Fact)}
		}
	case limit.Parameter != "":
		j.Limit = &Quantity{Value: e.set.Value(limit), Unit: e.set.Book.Parameters[limit.Parameter].Unit, From: limit.Parameter}
	case limit.Value != nil:
		j.Limit = &Quantity{Value: limit.Value}
	}
	if j.Limit != nil && j.Limit.Unit == "" && j.Measured != nil && j.Limit.Fact == "" && j.Limit.From == "" {
		j.Limit.Unit = j.Measured.Unit
	}
	j.MarginPct = margin(c.Comparison, j.Measured, j.Limit)
}

// deciding is the place of the comparison that decides a group.
func (e *evaluation) deciding(group []*ruleset.Comparison) int {
	for _, want := range []truth{yes, unknown} {
		for i, c := range group {
			if e.holds(c) == want {
				return i
			}
		}
	}
	return 0
}

// factNamed reads a fact by the name that a requirement has for it; nil when there is
// no such fact.
func (e *evaluation) factNamed(q *ruleset.Requirement, name string) *catalogue.Value {
	if name == "" {
		return nil
	}
	own, _ := catalogue.Of(q.Subject)
	of, f, ok := own.Find(name)
	if !ok {
		return nil
	}
	return e.value(ruleset.Reading{Whole: of.Name == catalogue.Whole, Fact: f})
}
