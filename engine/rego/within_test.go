package rego

import (
	"context"
	"errors"
	"runtime"
	"runtime/debug"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"
)

// spin keeps a processor busy until told to stop.
func spin(stop *atomic.Bool) {
	for n := 0; !stop.Load(); n++ {
	}
}

func TestWithinProcessorTime(t *testing.T) {
	if runtime.GOOS != "linux" {
		t.Skip("the processor time of a thread is only known on Linux")
	}
	var stop atomic.Bool
	defer stop.Store(true)
	err := Within(context.Background(), Limits{"to judge", 20 * time.Millisecond, memory}, func(context.Context) error {
		spin(&stop)
		return nil
	})
	if err == nil || !strings.HasPrefix(err.Error(), "it took more than 0.0 s of processor time to judge") {
		t.Errorf("%v", err)
	}
}

// What the rest of the machine does, or the rest of this program, does not count.
func TestWithinCountsTheWorkAlone(t *testing.T) {
	var stop atomic.Bool
	defer stop.Store(true)
	for range 2 * runtime.GOMAXPROCS(0) {
		go spin(&stop)
	}
	err := Within(context.Background(), Limits{"to judge", 200 * time.Millisecond, memory}, func(context.Context) error {
		time.Sleep(400 * time.Millisecond)
		return nil
	})
	if err != nil {
		t.Error(err)
	}
}

func TestWithinMemory(t *testing.T) {
	var stop atomic.Bool
	defer stop.Store(true)
	err := Within(context.Background(), Limits{"to judge", time.Hour, 1 << 20}, func(context.Context) error {
		var held [][]byte
		for !stop.Load() && len(held) < 1<<10 {
			held = append(held, make([]byte, 1<<20))
		}
		spin(&stop)
		runtime.KeepAlive(held)
		return nil
	})
	if err == nil || !strings.HasPrefix(err.Error(), "it took more than 1 MiB of memory to judge") {
		t.Errorf("%v", err)
	}
}

// What was held before does not count, and the error of the work comes back.
func TestWithin(t *testing.T) {
	held, want := make([]byte, 32<<20), errors.New("the work's own")
	err := Within(context.Background(), Limits{"to judge", time.Hour, 16 << 20}, func(context.Context) error { return want })
	if !errors.Is(err, want) {
		t.Errorf("%v", err)
	}
	runtime.KeepAlive(held)
}

// The limit from which the heap is collected is put back when the last is done.
func TestWithinPutsTheLimitBack(t *testing.T) {
	const limit = 1 << 40
	defer debug.SetMemoryLimit(debug.SetMemoryLimit(limit))
	var works sync.WaitGroup
	for range 4 {
		works.Go(func() {
			_ = Within(context.Background(), Limits{"to judge", time.Hour, memory}, func(context.Context) error { runtime.Gosched(); return nil })
		})
	}
	works.Wait()
	if got := debug.SetMemoryLimit(-1); got != limit {
		t.Errorf("afterwards it is %d, want %d", got, limit)
	}
}

func TestWithinCancels(t *testing.T) {
	cancelled := make(chan bool, 1)
	var stop atomic.Bool
	err := Within(context.Background(), Limits{"to judge", time.Hour, 1 << 20}, func(ctx context.Context) error {
		go func() { <-ctx.Done(); cancelled <- true }()
		var held [][]byte
		for !stop.Load() && len(held) < 1<<10 {
			held = append(held, make([]byte, 1<<20))
		}
		spin(&stop)
		runtime.KeepAlive(held)
		return nil
	})
	stop.Store(true)
	if err == nil {
		t.Error("no limit was exceeded")
	}
	if !<-cancelled {
		t.Error("the context was not cancelled")
	}
}
