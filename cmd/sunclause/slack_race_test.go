//go:build race

package main

// slack is how many times longer the limits on a process are held to: the race
// detector makes everything slower and larger.
const slack = 3
