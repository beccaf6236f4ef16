package report_test

import (
	"encoding/xml"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// xsd is as much of XML Schema as testdata/published/jenkins-junit.xsd uses:
// elements that are a sequence of other elements, have attributes, or are text.
type xsd struct {
	Elements []xsdElement `xml:"element"`
}

type xsdElement struct {
	Name    string `xml:"name,attr"`
	Type    string `xml:"type,attr"` // xs:string, or none where the element has parts
	Complex struct {
		Mixed    bool `xml:"mixed,attr"`
		Sequence struct {
			Elements []struct {
				Ref string `xml:"ref,attr"`
				Min string `xml:"minOccurs,attr"`
				Max string `xml:"maxOccurs,attr"`
			} `xml:"element"`
		} `xml:"sequence"`
		Attributes []struct {
			Name string `xml:"name,attr"`
			Use  string `xml:"use,attr"`
		} `xml:"attribute"`
	} `xml:"complexType"`
}

// node is any element of an XML text.
type node struct {
	XMLName    xml.Name
	Attributes []xml.Attr `xml:",any,attr"`
	Nodes      []node     `xml:",any"`
	Text       string     `xml:",chardata"`
}

// readXSD reads the schema, and refuses one that uses more than xsd knows.
func readXSD(t testing.TB, name string) xsd {
	t.Helper()
	raw := read(t, name)
	var s xsd
	var all node
	if err := xml.Unmarshal(raw, &s); err != nil {
		t.Fatal(err)
	}
	if err := xml.Unmarshal(raw, &all); err != nil {
		t.Fatal(err)
	}
	for _, n := range below(all) {
		if !slices.Contains([]string{"schema", "element", "complexType", "sequence", "attribute"}, n.XMLName.Local) {
			t.Fatalf("%s uses %s, which this test does not know", name, n.XMLName.Local)
		}
	}
	return s
}

func below(n node) []node {
	all := []node{n}
	for _, c := range n.Nodes {
		all = append(all, below(c)...)
	}
	return all
}

// check lists what is wrong with an element and those below it.
func (s xsd) check(n node) []string {
	i := slices.IndexFunc(s.Elements, func(e xsdElement) bool { return e.Name == n.XMLName.Local })
	if i < 0 {
		return []string{"there is no element " + n.XMLName.Local}
	}
	e := s.Elements[i]
	wrong := e.checkAttributes(n)
	if e.Type == "" && !e.Complex.Mixed && strings.TrimSpace(n.Text) != "" {
		wrong = append(wrong, e.Name+" has text")
	}
	rest := n.Nodes
	for _, part := range e.Complex.Sequence.Elements {
		count := 0
		for ; count < len(rest) && rest[count].XMLName.Local == part.Ref; count++ {
			wrong = append(wrong, s.check(rest[count])...)
		}
		if least, most := occurs(part.Min), occurs(part.Max); count < least || count > most {
			wrong = append(wrong, fmt.Sprintf("%s has %d of %s", e.Name, count, part.Ref))
		}
		rest = rest[count:]
	}
	if len(rest) > 0 {
		wrong = append(wrong, fmt.Sprintf("%s has %s, or not in this place", e.Name, rest[0].XMLName.Local))
	}
	return wrong
}

func occurs(n string) int {
	switch n {
	case "":
		return 1
	case "unbounded":
		return 1 << 30
	}
	count, _ := strconv.Atoi(n)
	return count
}

func (e xsdElement) checkAttributes(n node) []string {
	var wrong []string
	has := map[string]bool{}
	for _, a := range n.Attributes {
		has[a.Name.Local] = true
	}
	for _, a := range e.Complex.Attributes {
		if a.Use == "required" && !has[a.Name] {
			wrong = append(wrong, e.Name+" lacks "+a.Name)
		}
		delete(has, a.Name)
	}
	for name := range has {
		wrong = append(wrong, e.Name+" has an attribute "+name)
	}
	return wrong
}
