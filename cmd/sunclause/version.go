package main

import "runtime/debug"

// release is the version of sunclause where Go has built in none.
const release = "v0.1.0"

// toolVersion is the version of sunclause as Go has built it in: a release, or
// one made from the commit. Where there is none, as with go run and in tests, it
// is the release that the source is on the way to.
func toolVersion() string {
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" && info.Main.Version != "(devel)" {
		return info.Main.Version
	}
	return release
}
