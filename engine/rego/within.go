package rego

import (
	"context"
	"fmt"
	"runtime"
	"runtime/debug"
	"runtime/metrics"
	"sync"
	"time"
)

// Limits are what the rules of a stranger may cost.
type Limits struct {
	Does      string        // what is limited, as in "to judge"
	Processor time.Duration // processor time of the work itself, whatever else the machine does
	Heap      uint64        // bytes over what the program held before
}

// memory is far above what the largest roof needs.
const memory = 128 << 20

// LoadLimits are the limits on reading and compiling a rule set. Most are
// loaded in a tenth of that time.
func LoadLimits() Limits {
	return Limits{Does: "to be read and compiled", Processor: 1500 * time.Millisecond, Heap: memory}
}

// backstop is the time by the clock after which work is given up although its
// processor time cannot be seen, or does not advance.
const backstop = 5 * time.Minute

// Within does a piece of work and returns its error, or an error of its own as
// soon as the work has taken more than the limits. It is for what cannot be
// interrupted, such as the Rego compiler: the work is then left to itself, and
// whoever called has to come to an end. The context is cancelled, for what can
// be interrupted. Memory counts from now on: what a batch has gathered by then
// is not the doing of the rules.
func Within(ctx context.Context, l Limits, work func(context.Context) error) error {
	ctx, cancel := context.WithCancel(ctx)
	defer cancel()
	before := heap()
	collecting.begin(int64(before + l.Heap/4*3))
	defer collecting.end()
	clock, done := make(chan threadClock, 1), make(chan error, 1)
	go func() {
		runtime.LockOSThread() // never unlocked after an excess: the thread ends with the work
		clock <- thisThread()
		done <- work(ctx)
		runtime.UnlockOSThread()
	}()
	used, late := <-clock, time.NewTimer(backstop)
	defer late.Stop()
	look := time.NewTicker(2 * time.Millisecond)
	defer look.Stop()
	for {
		select {
		case err := <-done:
			return err
		case <-late.C:
			return l.exceeded("it did not end")
		case <-look.C:
			if used.since() > l.Processor {
				return l.exceeded(fmt.Sprintf("it took more than %.1f s of processor time", l.Processor.Seconds()))
			}
			now := heap()
			before = min(before, now) // garbage from earlier may have been collected since
			if now > before+l.Heap {
				return l.exceeded(fmt.Sprintf("it took more than %d MiB of memory", l.Heap>>20))
			}
		}
	}
}

func (l Limits) exceeded(what string) error {
	return fmt.Errorf("%s %s; rules from others are held to that; make it smaller or simpler", what, l.Does)
}

// collecting is the limit from which the heap is collected while rules run, so that
// garbage is not taken for what the rules hold.
var collecting collectionLimit

// collectionLimit is set by the first of those who run side by side, raised by
// others, and put back by the last.
type collectionLimit struct {
	mu     sync.Mutex
	users  int
	before int64
}

func (c *collectionLimit) begin(limit int64) {
	c.mu.Lock()
	defer c.mu.Unlock()
	now := debug.SetMemoryLimit(limit)
	if c.users++; c.users == 1 {
		c.before = now
	} else if now > limit {
		debug.SetMemoryLimit(now)
	}
}

func (c *collectionLimit) end() {
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.users--; c.users == 0 {
		debug.SetMemoryLimit(c.before)
	}
}

// heap is the memory that objects take, in bytes, with those not yet collected.
func heap() uint64 {
	sample := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	metrics.Read(sample)
	return sample[0].Value.Uint64()
}
