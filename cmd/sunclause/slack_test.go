//go:build !race

package main

// slack is how many times longer the limits on a process are held to.
const slack = 1
