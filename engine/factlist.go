package engine

import (
	"sunclause/facts"
	"sunclause/facts/working"
)

// FactInfo describes one fact that rules can judge.
type FactInfo struct {
	Name  string
	Kind  string // number, text, yes or no, list of ids
	Words string // what it is
}

// SubjectInfo describes one list of facts.
type SubjectInfo struct {
	Name  string
	Words string
	List  bool // false for the installation as a whole
	Facts []FactInfo
}

// Catalogue lists all facts there are, by subject.
func Catalogue() []SubjectInfo {
	var all []SubjectInfo
	for _, name := range subjectNames() {
		k := subjectKinds[name]
		s := SubjectInfo{Name: k.name, Words: k.words, List: k.list}
		for _, f := range k.fields {
			s.Facts = append(s.Facts, FactInfo{f.name, string(f.kind), f.words})
		}
		all = append(all, s)
	}
	return all
}

// FactWords says what a fact is, by its full name: strings.voc_max_v.
func FactWords(subject, fact string) string { return subjectKinds[subject].byName[fact].words }

// Part is one part of an installation with its facts, in the order of the
// catalogue.
type Part struct {
	working.Subject
	Facts []Fact
}

// Fact is one fact of one part.
type Fact struct {
	FactInfo
	Value   any             // float64, string, bool or []string; nil when unknown
	Unit    string          // of a number
	Missing []string        // for an unknown fact: what would have to be stated
	Number  *working.Number // the working of a number; nil for other kinds
}

// PartsOf lists the parts of one subject with their facts; stated is false when
// the document does not state the parts at all.
func PartsOf(f *facts.Facts, subject string) (parts []Part, stated bool) {
	k := subjectKinds[subject]
	subjects, stated := subjectsOf(f, k)
	for _, s := range subjects {
		p := Part{Subject: subjectOf(s)}
		for _, ff := range k.fields {
			v := valueOf(s, ff)
			fact := Fact{FactInfo: FactInfo{ff.name, string(ff.kind), ff.words}, Value: v.plain, Unit: v.unit, Missing: v.missing}
			if n, ok := s.FieldByIndex(ff.index).Interface().(working.Number); ok {
				fact.Number = &n
			}
			p.Facts = append(p.Facts, fact)
		}
		parts = append(parts, p)
	}
	return parts, stated
}
