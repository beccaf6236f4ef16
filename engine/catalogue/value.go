package catalogue

import (
	"reflect"

	"sunclause/facts"
	"sunclause/facts/working"
)

// Part is one part of an installation with its facts.
type Part struct {
	working.Subject
	facts reflect.Value // the struct, where it stands
}

// Parts lists the parts of a subject in the facts of an installation, in order;
// stated is false when the document does not state such parts at all. The
// installation is a list of one.
func (s *Subject) Parts(f *facts.Facts) (parts []Part, stated bool) {
	v := reflect.ValueOf(f).Elem().Field(s.field)
	if !s.Many {
		return []Part{partOf(v)}, true
	}
	parts = make([]Part, v.Len())
	for i := range parts {
		parts[i] = partOf(v.Index(i))
	}
	return parts, !v.IsNil()
}

// partOf takes a struct of facts, which names its part in a field of its own.
func partOf(v reflect.Value) Part {
	return Part{*v.FieldByName("Subject").Addr().Interface().(*working.Subject), v}
}

// Known reports whether there is a part at all: of a requirement that is about
// no part there is none.
func (p Part) Known() bool { return p.facts.IsValid() }

// Value is one fact of one part: the member that its kind says, when it is
// known.
type Value struct {
	Kind    Kind
	Known   bool
	Number  float64
	Text    string
	Flag    bool
	List    []string
	Numbers []float64     // of a limit that lists numbers; then List is empty
	Unit    string        // of a number
	Missing []working.Gap // of an unknown fact: what would have to be stated
}

// Plain is the value as float64, string, bool, []string or []float64; nil when it
// is unknown.
func (v Value) Plain() any {
	switch {
	case !v.Known:
		return nil
	case v.Kind == Number:
		return v.Number
	case v.Kind == Text:
		return v.Text
	case v.Kind == Flag:
		return v.Flag
	}
	if v.Numbers != nil {
		return v.Numbers
	}
	return v.List
}

// ValueOf makes a value of a plain one.
func ValueOf(plain any) Value {
	switch v := plain.(type) {
	case float64:
		return Value{Kind: Number, Known: true, Number: v}
	case string:
		return Value{Kind: Text, Known: true, Text: v}
	case bool:
		return Value{Kind: Flag, Known: true, Flag: v}
	case []string:
		return Value{Kind: List, Known: true, List: v}
	case []float64:
		return Value{Kind: List, Known: true, Numbers: v}
	}
	return Value{}
}

// Times is a number times a factor, to as many digits as every quantity has; any
// other value stays what it is.
func (v Value) Times(factor float64) Value {
	if v.Known && v.Kind == Number && factor != 1 {
		v.Number = working.Round(v.Number * factor)
	}
	return v
}

// Value reads one fact of the part, which has to be one of its subject.
func (p Part) Value(f *Fact) Value {
	v := Value{Kind: f.Kind}
	switch w := p.at(f).(type) {
	case *working.Number:
		if v.Known, v.Unit = w.Known(), w.Unit(); v.Known {
			v.Number = w.Value()
		} else {
			v.Missing = w.Missing()
		}
	case *working.Text:
		if v.Known = w.Known(); v.Known {
			v.Text = w.Value()
		} else {
			v.Missing = w.Missing()
		}
	case *working.Flag:
		if v.Known = w.Known(); v.Known {
			v.Flag = w.Value()
		} else {
			v.Missing = w.Missing()
		}
	case *working.Names:
		if v.Known = w.Known(); v.Known {
			v.List = w.Values()
		} else {
			v.Missing = w.Missing()
		}
	}
	return v
}

// Working is a number of the part with its working; nil for a fact of another
// kind.
func (p Part) Working(f *Fact) *working.Number {
	if f.Kind != Number || !p.Known() {
		return nil
	}
	return p.number(f)
}

// Word is a fact of the part that is a word.
func (p Part) Word(f *Fact) working.Text { return *p.at(f).(*working.Text) }

func (p Part) number(f *Fact) *working.Number { return p.at(f).(*working.Number) }

// at is the place of a fact, so that reading it copies nothing.
func (p Part) at(f *Fact) any { return p.facts.FieldByIndex(f.index).Addr().Interface() }
