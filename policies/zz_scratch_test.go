package policies_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"sunclause/facts/facttest"
	"sunclause/schema/examples"
	"sunclause/schema/slips"
)

func TestZZ(t *testing.T) {
	_ = facttest.Thorough
	set := load(t, "gb")
	raw := examples.Text(t, examples.Cottage)
	document := tree(t, raw)
	all, err := slips.Of(document)
	if err != nil {
		t.Fatal(err)
	}
	j := newJudging(t, set, raw)
	groups := map[string][]slips.Slip{}
	for _, s := range all {
		if !strings.HasPrefix(s.Pointer, "/commissioning") && !strings.HasPrefix(s.Pointer, "/handover") && !strings.Contains(s.Class, "date") {
			continue
		}
		key := s.Class + "|" + s.Shape
		if s.Class == slips.Classes[0] {
			to, _, _ := strings.Cut(s.What, " for ")
			key += "|" + to
		}
		groups[key] = append(groups[key], s)
	}
	var keys []string
	for k := range groups {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	surv := map[string][]string{}
	tot := map[string]int{}
	for _, k := range keys {
		g := groups[k]
		s := g[len(g)/3]
		o, _ := j.slipped(s.In(document))
		tot[s.Class]++
		if o == survives {
			key := s.Class + " " + s.Shape
			surv[key] = append(surv[key], s.What)
			tot[s.Class+" survives"]++
		}
	}
	f, _ := os.Create("/tmp/wt/zz.txt")
	var ks []string
	for k := range surv {
		ks = append(ks, k)
	}
	slices.Sort(ks)
	for _, k := range ks {
		w := surv[k]
		fmt.Fprintf(f, "%d %s: %s\n", len(w), k, strings.Join(w[:min(6, len(w))], "; "))
	}
	for k, n := range tot {
		fmt.Fprintln(f, "TOTAL", k, n)
	}
}
