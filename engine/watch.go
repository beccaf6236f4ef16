package engine

import (
	"fmt"
	"runtime/debug"
	"runtime/metrics"
	"time"
)

// Limits are what a rule set that is not embedded may cost.
type Limits struct {
	Does string        // what is limited, as in "to be read and compiled"
	Time time.Duration // by the clock
	Heap uint64        // bytes over what the program held before
}

// memory is far above what the largest roof needs.
const memory = 128 << 20

// LoadLimits are the limits on reading and compiling a rule set. Most are
// loaded in a tenth of that time.
func LoadLimits() Limits { return Limits{"to be read and compiled", 1500 * time.Millisecond, memory} }

// CheckLimits are the limits on judging a document of so many bytes. They cover
// what the deadline of the evaluation cannot interrupt, and let it speak first.
// The embedded sets below take some 2 µs and 200 bytes for each byte of a large
// roof, before a set of somebody else's has judged anything.
func CheckLimits(documentBytes int) Limits {
	return Limits{"to judge", 1200*time.Millisecond + time.Duration(documentBytes)*3*time.Microsecond, memory + 300*uint64(documentBytes)}
}

// Watch calls stop, once, when time or memory run over before done is called.
// It is for what cannot be interrupted, such as the Rego compiler: stop has to
// end the program. Memory counts from now on: what a batch has gathered by then
// is not the doing of the rules.
func Watch(l Limits, stop func(reason string)) (done func()) {
	over := make(chan struct{})
	before := heap()
	debug.SetMemoryLimit(int64(before + l.Heap/4*3)) // so that garbage is not taken for what the rules hold
	go l.watch(before, over, stop)
	return func() { close(over) }
}

func (l Limits) watch(before uint64, over <-chan struct{}, stop func(reason string)) {
	late := time.NewTimer(l.Time)
	defer late.Stop()
	look := time.NewTicker(2 * time.Millisecond)
	defer look.Stop()
	for {
		select {
		case <-over:
			return
		case <-late.C:
			stop(fmt.Sprintf("it took longer than %.1f s %s; rules from others are held to that; make it smaller or simpler", l.Time.Seconds(), l.Does))
			return
		case <-look.C:
			if heap() > before+l.Heap {
				stop(fmt.Sprintf("it took more than %d MiB of memory %s; rules from others are held to that; make it smaller or simpler", l.Heap>>20, l.Does))
				return
			}
		}
	}
}

// heap is the memory that objects take, in bytes, with those not yet collected.
func heap() uint64 {
	sample := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	metrics.Read(sample)
	return sample[0].Value.Uint64()
}
