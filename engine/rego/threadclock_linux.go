package rego

import (
	"time"

	"golang.org/x/sys/unix"
)

// threadClock counts the processor time of one thread, from when it was made.
type threadClock struct {
	id     int32
	before time.Duration
}

// thisThread makes the clock of the thread that calls, which the caller has
// locked itself to.
func thisThread() threadClock {
	// The clock of a thread is named by its number, as clock_getcpuclockid and
	// the kernel's posix-timers have it: the complement, shifted, and CPUCLOCK_SCHED
	// of a thread.
	c := threadClock{id: ^int32(unix.Gettid())<<3 | 6}
	c.before = c.now()
	return c
}

func (c threadClock) since() time.Duration { return c.now() - c.before }

func (c threadClock) now() time.Duration {
	var t unix.Timespec
	if unix.ClockGettime(c.id, &t) != nil {
		return 0 // the thread has ended, and with it the work
	}
	return time.Duration(t.Nano())
}
