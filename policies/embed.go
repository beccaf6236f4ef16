// Package policies holds the rule sets that sunclause ships with, as they stand
// in its folders: the library of Rego modules, the international set, and the
// regional sets built on it.
package policies

import "embed"

// FS is the folders of the embedded rule sets.
//
//go:embed lib iec gb
var FS embed.FS
