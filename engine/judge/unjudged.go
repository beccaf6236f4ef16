package judge

import (
	"slices"
	"strings"

	"sunclause/engine/ruleset"
	"sunclause/facts"
	"sunclause/schema"
)

// Unjudged is a member that the document states and no rule of the set judges: no
// fact takes it up, and no table of the set names it.
type Unjudged struct {
	Member string // as people say it, with [] for the number of an item and * for a key
	At     string // JSON pointer of the first place where it is stated
	Places int    // at which it is stated
}

// unjudged lists them, in the order of the document.
func unjudged(doc *schema.Document, set *ruleset.RuleSet) []Unjudged {
	untaken, named := facts.Untaken(), namedByTables(set)
	var all []Unjudged
	place := map[string]int{}
	for s := range doc.Statements() {
		if !slices.ContainsFunc(s.Within, func(member string) bool { return untaken[member] }) || named.has(s) {
			continue
		}
		i, seen := place[s.As]
		if !seen {
			i = len(all)
			place[s.As] = i
			all = append(all, Unjudged{Member: s.As, At: s.At})
		}
		all[i].Places++
	}
	return all
}

// tableNames are what the tables of a set say of a document, beside what facts follow
// in any case: paths to members, and names of settings.
type tableNames struct {
	paths [][]string
	words map[string]bool
}

func namedByTables(set *ruleset.RuleSet) tableNames {
	n := tableNames{words: map[string]bool{}}
	for _, path := range facts.Followed {
		n.paths = append(n.paths, strings.Split(path, "/"))
	}
	for _, t := range set.Book.Tables {
		for _, row := range t.Rows {
			for column, cell := range row {
				switch word, _ := cell.(string); {
				case strings.HasPrefix(word, "/"):
					n.paths = append(n.paths, strings.Split(word, "/"))
				case column == "setting":
					n.words[word] = true
				}
			}
		}
	}
	return n
}

func (n tableNames) has(s schema.Statement) bool {
	tokens := strings.Split(s.At, "/")
	if n.words[tokens[len(tokens)-1]] {
		return true
	}
	return slices.ContainsFunc(n.paths, func(path []string) bool {
		return slices.EqualFunc(path, tokens, func(step, token string) bool {
			return step == token || step == "*" || strings.Contains(step, "=")
		})
	})
}
