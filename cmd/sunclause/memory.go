package main

import (
	"runtime"
	"runtime/debug"
	"runtime/metrics"
	"sync/atomic"
)

// How the heap is collected. Most installations are judged before it is worth
// collecting at all, and a program that ends gives everything back. A larger one
// needs a heap that grows with it: under a fixed limit the collector would run
// without end as soon as more than that is alive. docs/speed.md has what the
// figures were measured by.

// heap says how far the memory of the program may grow before it is collected:
// to so much, or to so many percent of what was alive after the last collection,
// whichever is more.
type heap struct{ least, percent int64 }

var (
	ofOne   = heap{256 << 20, 300} // a single installation
	ofBatch = heap{80 << 20, 150}  // there is garbage after every document
)

// present is the heap that holds; nil before there is one.
var present atomic.Pointer[heap]

// collectBy lets the heap be collected in another way from now on.
func collectBy(h heap) {
	began := present.Swap(&h) != nil
	debug.SetGCPercent(-1)
	debug.SetMemoryLimit(h.least)
	if !began {
		adjust()
	}
}

// adjust sets the limit anew after every collection.
func adjust() {
	unused := new(*byte) // nothing refers to it, so that the next collection finds it
	runtime.AddCleanup(unused, func(struct{}) {
		h := present.Load()
		debug.SetMemoryLimit(max(h.least, alive()*h.percent/100))
		adjust()
	}, struct{}{})
}

// alive is how many bytes the last collection found in use.
func alive() int64 {
	sample := []metrics.Sample{{Name: "/gc/heap/live:bytes"}}
	metrics.Read(sample)
	return int64(sample[0].Value.Uint64())
}
