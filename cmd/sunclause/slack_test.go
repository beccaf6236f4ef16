//go:build !race

package main

// slack is how many times longer the limits on a process are held to: the
// watch ends it in time, but another program may have the processors just then.
const slack = 2
