//go:build !race

package main

// slack is how many times over the limits on a process are held to: a processor
// that is shared with other programs does less in the same time.
const slack = 2
