package main

import "runtime/debug"

// toolVersion is the version of sunclause as Go has built it in: a release, or
// one made from the commit. It is "(devel)" where there is none, as in tests.
func toolVersion() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "(devel)"
}
