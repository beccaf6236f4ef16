package facttest

import (
	"flag"

	_ "pgregory.net/rapid" // knows the flag that is set here
)

// tries is how often a property is tried with values of its own.
const tries, thoroughTries = "20", "100"

var thorough bool

// The tests of whoever imports this package know the flag -thorough: properties are
// tried more often, and what takes minutes is tried at all. An explicit
// -rapid.checks counts for more.
func init() {
	set := func(n string) error { return flag.Set("rapid.checks", n) }
	if err := set(tries); err != nil {
		panic(err)
	}
	flag.BoolFunc("thorough", "try what takes long", func(string) error {
		thorough = true
		return set(thoroughTries)
	})
}

// Thorough reports whether the tests were started with -thorough.
func Thorough() bool { return thorough }
