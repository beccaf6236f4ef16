package facts_test

import (
	"context"
	"fmt"
	"runtime"
	"slices"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/policies"
	"sunclause/schema"
	"sunclause/schema/examples"
)

// grown is the sample of one string many times over: for every two strings an
// isolator of two ways and an inverter of two inputs, and five runs.
func grown(t testing.TB, pairs int) *schema.Installation {
	in := read(t, "testdata/one-string.installation.json")
	str, iso, inv, run := in.Strings[0], in.Isolators[0], in.Inverters[0], in.Cables[0]
	iso.Ways[0].JoinedOut = schema.Text{}
	second := iso.Ways[0]
	second.ID = schema.NewText("", "2")
	iso.Ways = append(iso.Ways, second)
	in.Strings, in.Isolators, in.Inverters, in.Cables = nil, nil, nil, nil
	join := func(from, to, service string) {
		r, at := run, fmt.Sprintf("/cables/%d", len(in.Cables))
		r.Pointer, r.ID = schema.NewPointer(at), schema.NewText(at+"/id", fmt.Sprintf("R%04d", len(in.Cables)))
		r.From, r.To, r.Service = schema.NewText(at+"/from", from), schema.NewText(at+"/to", to), schema.NewText(at+"/service", service)
		in.Cables = append(in.Cables, r)
	}
	for i := range pairs {
		iso.ID, inv.ID = schema.NewText("", fmt.Sprintf("ISO%d", i)), schema.NewText("", fmt.Sprintf("INV%d", i))
		in.Isolators, in.Inverters = append(in.Isolators, iso), append(in.Inverters, inv)
		for way := 1; way <= 2; way++ {
			str.ID = schema.NewText("", fmt.Sprintf("S%d-%d", i, way))
			in.Strings = append(in.Strings, str)
			join(str.ID.Value, fmt.Sprintf("ISO%d.%d.in", i, way), "pv_string")
			join(fmt.Sprintf("ISO%d.%d.out", i, way), fmt.Sprintf("INV%d.%d", i, way), "pv_string")
		}
		join(str.ID.Value, inv.ID.Value, "bonding")
	}
	return in
}

// united is the same with all strings put in parallel, before one input, each
// pair behind its isolator.
func united(t testing.TB, pairs int) *schema.Installation {
	in := grown(t, pairs)
	array := func(id string, ways int) schema.Array {
		return schema.Array{ID: schema.NewText("", id), Ways: schema.NewNumber("", float64(ways))}
	}
	in.Arrays = append(in.Arrays, array("A", 2*pairs))
	ways := 0
	for i := range in.Cables {
		if r := &in.Cables[i]; r.Service.Is("pv_string") && slices.Contains([]int{1, 3}, i%5) {
			ways++
			r.To = schema.NewText("", fmt.Sprintf("A.%d", ways))
		}
	}
	last := in.Cables[len(in.Cables)-1]
	last.From, last.To, last.Service = schema.NewText("", "A.out"), schema.NewText("", "INV0.1"), schema.NewText("", "pv_array")
	in.Cables[len(in.Cables)-1] = last
	return in
}

// BenchmarkDeriveExamples derives whole jobs by an embedded set.
func BenchmarkDeriveExamples(b *testing.B) {
	set, err := ruleset.Load(context.Background(), policies.FS, "gb")
	if err != nil {
		b.Fatal(err)
	}
	for _, name := range []string{examples.Cottage, examples.Warehouse} {
		in := decoded(b, name, examples.Text(b, name))
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				facts.Derive(in, set.Book)
			}
		})
	}
}

func BenchmarkDerive(b *testing.B) {
	for _, c := range []struct {
		name string
		in   *schema.Installation
	}{
		{"small, 1 string", read(b, "testdata/one-string.installation.json")},
		{"large, 1000 strings", grown(b, 500)},
		{"greatest, 2000 strings", grown(b, 1000)},
		{"greatest, 2000 strings on one input", united(b, 1000)},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				facts.Derive(c.in, rules("coefficient"))
			}
		})
	}
}

// Four times the installation takes about four times the memory, not sixteen.
func TestDeriveIsLinear(t *testing.T) {
	allocated := func(in *schema.Installation) float64 {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		f := facts.Derive(in, rules("coefficient"))
		runtime.ReadMemStats(&after)
		if n := len(in.Strings); int(f.Installation.Strings.Value()) != n || !f.Installation.VocMaxV.Known() || !f.Strings[n-1].ReverseA.Known() {
			t.Fatalf("the facts of %d strings are not all there", n)
		}
		return float64(after.TotalAlloc - before.TotalAlloc)
	}
	small, great := allocated(grown(t, 100)), allocated(grown(t, 400))
	if great > 6*small {
		t.Errorf("four times the strings take %.1f times the memory", great/small)
	}
}
