package policies_test

import (
	"cmp"
	"encoding/json"
	"fmt"
	"hash/fnv"
	"maps"
	"os"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"sunclause/engine/ruleset"
	"sunclause/facts/facttest"
	"sunclause/schema"
	"sunclause/schema/examples"
	"sunclause/schema/slips"
)

// What is stated wrongly is found. TestSlips makes single slips in sound
// documents and holds those that nothing finds to a list, by class of slip and
// shape of member, with the argument for each.

// slipOutcome is what comes of a slip.
type slipOutcome int

const (
	refused  slipOutcome = iota // it is no document any more
	found                       // it does not pass
	noticed                     // something that should be is not, or is not shown
	later                       // at design nothing is found, as built it does not pass
	survives                    // nothing new is found
	outcomesOfSlips
)

var slipOutcomes = [outcomesOfSlips]string{"refused", "found", "noticed", "later", "survives"}

// sound are the documents, those as built before their like at design.
var sound = []struct {
	name, stage string
	always      bool // whether some of its slips are made in every run
}{
	{examples.Cottage, "as_built", true},
	{examples.Cottage, "design", false},
	{examples.Battery, "as_built", false},
	{examples.Battery, "design", false},
	{examples.Warehouse, "design", false},
}

// staged is an example at a stage. At design nothing has been measured yet.
func staged(t *testing.T, name, stage string) map[string]any {
	t.Helper()
	document := tree(t, examples.Text(t, name))
	document["project"].(map[string]any)["stage"] = stage
	if stage == "design" {
		delete(document, "commissioning")
	}
	return document
}

const survivorsFile = "../testdata/slips/survivors.json"

// survivors are the arguments why nothing can tell a slip, by class and shape.
type survivors map[string]map[string]string

// notYetHeld is the argument of those for which there is none yet.
const notYetHeld = "not yet held"

func (s survivors) add(class, shape, argument string) {
	if s[class] == nil {
		s[class] = map[string]string{}
	}
	s[class][shape] = argument
}

// slipTable counts the outcomes of slips by class, and the survivors by shape.
type slipTable struct {
	sync.Mutex
	counts  map[string]*[outcomesOfSlips]int
	shapes  map[[2]string]int // by class and shape
	builtOf map[string]slipOutcome
	tried   map[string]bool // by class and shape
	broken  []string
}

func TestSlips(t *testing.T) {
	if testing.Short() {
		t.Skip("takes its time")
	}
	set := load(t, "gb")
	table := &slipTable{counts: map[string]*[outcomesOfSlips]int{}, shapes: map[[2]string]int{}, builtOf: map[string]slipOutcome{}, tried: map[string]bool{}}
	for _, d := range sound {
		if d.always || facttest.Thorough() {
			table.try(t, set, staged(t, d.name, d.stage), d.name, d.stage)
		}
	}
	for _, b := range table.broken {
		t.Error(b)
	}
	table.hold(t)
	if facttest.Thorough() {
		t.Log(table)
	}
}

// TestSlipsAreMade makes sure that there are slips of every class.
func TestSlipsAreMade(t *testing.T) {
	all, err := slips.Of(tree(t, examples.Text(t, examples.Battery)))
	if err != nil {
		t.Fatal(err)
	}
	made := map[string]int{}
	for _, s := range all {
		made[s.Class]++
	}
	for _, class := range slips.Classes {
		if made[class] == 0 {
			t.Errorf("no slip is made of the class %q", class)
		}
	}
}

// try makes one slip of each class in one member of each shape, on all processors.
func (st *slipTable) try(t *testing.T, set *ruleset.RuleSet, document map[string]any, name, stage string) {
	t.Helper()
	all, err := slips.Of(document)
	if err != nil {
		t.Fatal(err)
	}
	first := newJudging(t, set, text(document))
	queue := make(chan slips.Slip)
	var workers sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for s := range queue {
				o, broken := first.slipped(s.In(document))
				st.note(s, name, stage, o, broken)
			}
		})
	}
	some := pickSlips(all)
	for _, s := range some {
		if name != examples.Warehouse || !st.tried[s.Class+s.Shape] { // of what is large, what the others do not have
			queue <- s
		}
	}
	close(queue)
	workers.Wait()
	for _, s := range some {
		st.tried[s.Class+s.Shape] = true
	}
}

// pickSlips takes one slip of each class and shape, of words one for each word that
// is there instead; of those a part in a run that is not thorough.
func pickSlips(all []slips.Slip) []slips.Slip {
	groups := map[string][]slips.Slip{}
	for _, s := range all {
		key := s.Class + " " + s.Shape
		if s.Class == slips.Classes[0] {
			to, _, _ := strings.Cut(s.What, " for ")
			key += " " + to
		}
		groups[key] = append(groups[key], s)
	}
	var some []slips.Slip
	for _, key := range slices.Sorted(maps.Keys(groups)) {
		h := fnv.New32a()
		h.Write([]byte(key))
		if n := int(h.Sum32() % 1e6); facttest.Thorough() || n%20 == 0 {
			some = append(some, groups[key][n/20%len(groups[key])])
		}
	}
	return some
}

// slipped is what comes of a document with a slip.
func (j *judging) slipped(document map[string]any) (o slipOutcome, broken string) {
	defer func() {
		if r := recover(); r != nil {
			broken = fmt.Sprint("it breaks: ", r)
		}
	}()
	doc, err := schema.Decode("installation.json", text(document))
	if err != nil {
		return refused, ""
	}
	changed, passes, err := j.changed(doc)
	switch {
	case err != nil:
		return refused, err.Error()
	case !passes:
		return found, ""
	}
	for _, o := range changed {
		if finding(o) {
			return noticed, ""
		}
	}
	return survives, ""
}

func (st *slipTable) note(s slips.Slip, name, stage string, o slipOutcome, broken string) {
	st.Lock()
	defer st.Unlock()
	if broken != "" {
		st.broken = append(st.broken, fmt.Sprintf("%s: %s: %s: %s", name, s.Pointer, s.What, broken))
	}
	same := strings.Join([]string{name, s.Class, s.Pointer, s.What}, " ")
	built, had := st.builtOf[same]
	switch {
	case stage == "as_built":
		st.builtOf[same] = o
	case o >= noticed && had && built == found:
		o = later
	}
	if st.counts[s.Class] == nil {
		st.counts[s.Class] = &[outcomesOfSlips]int{}
	}
	st.counts[s.Class][o]++
	if o == survives {
		st.shapes[[2]string{s.Class, s.Shape}]++
	}
}

// hold holds the survivors to the list. Only where all slips are made does it know
// that a listed one survives no more.
func (st *slipTable) hold(t *testing.T) {
	t.Helper()
	listed, err := readSurvivors(survivorsFile)
	if err != nil && !*update {
		t.Fatal(err)
	}
	ofLists, err := readSurvivors(argumentsFile)
	if err != nil {
		t.Fatal(err)
	}
	now := survivors{}
	for k := range st.shapes {
		argument := cmp.Or(ofLists[k[0]][k[1]], listed[k[0]][k[1]])
		if argument == "" && !*update {
			t.Errorf("%s of %s: nothing finds it, and it is not in %s", k[0], k[1], survivorsFile)
		}
		now.add(k[0], k[1], cmp.Or(argument, notYetHeld))
	}
	if !facttest.Thorough() {
		return
	}
	if *update {
		writeSurvivors(t, now)
		return
	}
	for class, shapes := range listed {
		for shape := range shapes {
			if now[class][shape] == "" {
				t.Errorf("%s of %s is found, and still in %s; run -run TestSlips -thorough -update", class, shape, survivorsFile)
			}
		}
	}
}

// readSurvivors reads the arguments of a file.
func readSurvivors(name string) (survivors, error) {
	all := survivors{}
	raw, err := os.ReadFile(name)
	if err == nil {
		err = json.Unmarshal(raw, &all)
	}
	return all, err
}

func writeSurvivors(t *testing.T, now survivors) {
	t.Helper()
	raw, err := json.MarshalIndent(now, "", "  ")
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(survivorsFile, append(raw, '\n'), 0o644); err != nil {
		t.Fatal(err)
	}
}

// String is the table of outcomes by class, and the shapes that survive most.
func (st *slipTable) String() string {
	var b strings.Builder
	fmt.Fprintf(&b, "\n%-40s %7s", "class", "slips")
	for _, o := range slipOutcomes {
		fmt.Fprintf(&b, " %8s", o)
	}
	b.WriteString("\n")
	var whole [outcomesOfSlips]int
	for _, class := range slips.Classes {
		if c := st.counts[class]; c != nil {
			writeCounts(&b, class, *c)
			for o, n := range c {
				whole[o] += n
			}
		}
	}
	writeCounts(&b, "all", whole)
	b.WriteString("\nsurvivors by shape of the member, the commonest first\n")
	for _, line := range st.commonest() {
		b.WriteString(line + "\n")
	}
	return b.String()
}

func writeCounts(b *strings.Builder, class string, c [outcomesOfSlips]int) {
	sum := 0
	for _, n := range c {
		sum += n
	}
	fmt.Fprintf(b, "%-40s %7d", class, sum)
	for _, n := range c {
		fmt.Fprintf(b, " %8d", n)
	}
	fmt.Fprintf(b, "  %5.1f %%\n", 100*float64(c[survives])/float64(max(sum, 1)))
}

func (st *slipTable) commonest() []string {
	of := map[string]int{}
	classes := map[string][]string{}
	for k, n := range st.shapes {
		of[k[1]] += n
		classes[k[1]] = append(classes[k[1]], k[0])
	}
	shapes := slices.SortedFunc(maps.Keys(of), func(a, b string) int { return cmp.Or(of[b]-of[a], strings.Compare(a, b)) })
	var lines []string
	for _, shape := range shapes {
		slices.Sort(classes[shape])
		lines = append(lines, fmt.Sprintf("%4d %s (%s)", of[shape], shape, strings.Join(classes[shape], ", ")))
	}
	return lines
}
