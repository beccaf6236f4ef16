package main

import (
	"context"
	"errors"
	"runtime"
	"sync/atomic"
	"testing"

	"pgregory.net/rapid"
)

// upTo yields the numbers below n, and counts how many were taken.
func upTo(n int, taken *atomic.Int64) func(func(int) bool) {
	return func(yield func(int) bool) {
		for i := range n {
			taken.Add(1)
			if !yield(i) {
				return
			}
		}
	}
}

// TestInOrder holds that everything is handed on once and in order, however long
// each piece takes, and that no more is begun than can be kept.
func TestInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pauses := rapid.SliceOfN(rapid.IntRange(0, 50), 0, 60).Draw(t, "pauses")
		var taken atomic.Int64
		next := 0
		err := inOrder(context.Background(), upTo(len(pauses), &taken), func(i int) int {
			for range pauses[i] {
				runtime.Gosched()
			}
			return i
		}, func(i int) error {
			if i != next {
				t.Errorf("%d is handed on, not %d", i, next)
			}
			if ahead := int(taken.Load()) - next; ahead > 2*runtime.GOMAXPROCS(0)+2 {
				t.Errorf("%d are begun ahead of the one that is handed on", ahead)
			}
			next++
			return nil
		})
		if err != nil || next != len(pauses) {
			t.Errorf("%d of %d, %v", next, len(pauses), err)
		}
	})
}

// TestInOrderEndsEarly holds that nothing is handed on after an error or an
// interrupt, and that both are told.
func TestInOrderEndsEarly(t *testing.T) {
	var taken atomic.Int64
	full := errors.New("the disk is full")
	handed := 0
	err := inOrder(context.Background(), upTo(1_000_000, &taken), func(i int) int { return i }, func(i int) error {
		handed++
		if i == 7 {
			return full
		}
		return nil
	})
	if !errors.Is(err, full) || handed != 8 || taken.Load() > 100 {
		t.Errorf("%v after %d, %d taken", err, handed, taken.Load())
	}
	ctx, interrupt := context.WithCancel(context.Background())
	handed = 0
	err = inOrder(ctx, upTo(1_000_000, &taken), func(i int) int { return i }, func(i int) error {
		if handed++; i == 7 {
			interrupt()
		}
		return nil
	})
	if !errors.Is(err, context.Canceled) || handed > 20 {
		t.Errorf("%v after %d", err, handed)
	}
}

// TestInOrderInterruptedWhileWaiting holds that an interrupt ends the waiting for
// a job that does not come, and for work that takes long.
func TestInOrderInterruptedWhileWaiting(t *testing.T) {
	for _, slow := range []string{"job", "work"} {
		ctx, interrupt := context.WithCancel(context.Background())
		never := make(chan struct{})
		jobs := func(yield func(int) bool) {
			if slow == "job" {
				interrupt()
				<-never
			}
			yield(0)
		}
		err := inOrder(ctx, jobs, func(i int) int {
			interrupt()
			<-never
			return i
		}, func(int) error { return nil })
		if !errors.Is(err, context.Canceled) {
			t.Errorf("a slow %s: %v", slow, err)
		}
		close(never)
	}
}
