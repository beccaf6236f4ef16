// Package policies holds the rule sets that sunclause ships with, as they stand
// in its folders: the library of Rego modules, the international set, the
// regional sets built on it, and the house rules of an invented firm as an example.
package policies

import "embed"

// FS is the folders of the embedded rule sets.
//
//go:embed lib iec gb house-example
var FS embed.FS
