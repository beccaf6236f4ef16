package rego

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"

	"sunclause/engine/catalogue"
	"sunclause/facts"
)

// Key names one requirement for one part.
type Key struct{ ID, Subject string }

// maxMessage is the size of what a rule may say of one part, in bytes.
const maxMessage = 2000

// Broken lists the requirements that rules find broken, with what each says of
// the part, which may be nothing. The rules must have been given their data.
func (r *Rules) Broken(ctx context.Context, f *facts.Facts) (map[Key]string, error) {
	if len(r.rooms) == 0 {
		return nil, nil
	}
	if !r.untrusted {
		return r.broken(ctx, f)
	}
	var broken map[Key]string
	err := Within(ctx, judgingLimits(f), func(ctx context.Context) (err error) {
		broken, err = r.broken(ctx, f)
		return err
	})
	return broken, err
}

// judgingLimits bound the evaluation of rules that are not ours to a hundred
// times what good ones need.
func judgingLimits(f *facts.Facts) Limits {
	parts := 0
	for _, s := range catalogue.Subjects() {
		of, _ := s.Parts(f)
		parts += len(of)
	}
	return Limits{Does: "to judge", Processor: 800*time.Millisecond + time.Duration(parts)*2*time.Millisecond, Heap: memory + uint64(parts)*100<<10}
}

func (r *Rules) broken(ctx context.Context, f *facts.Facts) (map[Key]string, error) {
	rs, err := r.query.Eval(ctx, rego.EvalParsedInput(inputOf(f)))
	if err != nil {
		what, _, _ := strings.Cut(err.Error(), "\n") // what follows are the values, of any size
		return nil, errors.New(strings.TrimSuffix(what, ":"))
	}
	if len(rs) != 1 {
		return nil, fmt.Errorf("the rules gave %d answers", len(rs))
	}
	broken, longest := map[Key]string{}, 0
	for name, v := range rs[0].Bindings {
		set, ok := v.(ast.Set)
		if !ok {
			return nil, fmt.Errorf("%s is no set", name)
		}
		set.Foreach(func(t *ast.Term) {
			says := member(t, "message")
			broken[Key{member(t, "id"), member(t, "subject")}] = says
			longest = max(longest, len(says))
		})
	}
	if longest > maxMessage {
		return nil, fmt.Errorf("a rule says %d bytes of one part; at most %d; a message is one line", longest, maxMessage)
	}
	return broken, nil
}

// member is a text among the members of a finding; "" when there is none.
func member(finding *ast.Term, name string) string {
	o, ok := finding.Value.(ast.Object)
	if !ok {
		return ""
	}
	v := o.Get(ast.StringTerm(name))
	if v == nil {
		return ""
	}
	s, _ := v.Value.(ast.String)
	return string(s)
}
