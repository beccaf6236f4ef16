// Package policies holds the rule sets that sunclause ships with, as they stand
// in its folders: the library of Rego modules, the international set, the
// regional sets built on it, and the house rules of an invented firm as an example;
// and the same sets as Go data, which is generated from the folders. A folder with
// a ruleset.yaml in it is a set, and needs no Go.
package policies

import (
	"embed"

	"sunclause/engine/ruleset"
)

//go:generate go run ./generate

//go:embed */*.yaml */*.rego */tables/*.yaml */tests/*.yaml
var folders embed.FS

// FS is the folders of the embedded rule sets, with the form of each in which it
// need not be read.
var FS = Sets{folders}

// Sets are the embedded rule sets.
type Sets struct{ embed.FS }

// Shipped is the form of a set in which it need not be read.
func (Sets) Shipped(name string) (*ruleset.Shipped, bool) {
	for _, s := range shipped {
		if s.Name == name {
			return s, true
		}
	}
	return nil, false
}
