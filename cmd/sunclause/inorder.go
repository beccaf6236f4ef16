package main

import (
	"context"
	"iter"
	"runtime"
)

// inOrder does a piece of work for each of some jobs, on all processors, and
// hands on what comes of it in the order of the jobs. No more are begun than one
// a processor beyond those that wait for the one whose turn it is, so that
// neither the jobs nor what comes of them are ever kept whole. It ends early,
// with an error, when something cannot be handed on or the context is done.
func inOrder[J, R any](ctx context.Context, jobs iter.Seq[J], work func(J) R, handOn func(R) error) error {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	workers := runtime.GOMAXPROCS(0)
	begun := make(chan chan R, workers) // in order, the outcome of each to come
	free := make(chan struct{}, workers)
	all := false
	go func() {
		defer close(begun)
		for job := range jobs {
			select {
			case free <- struct{}{}:
			case <-ctx.Done():
				return
			}
			outcome := make(chan R, 1)
			go func() {
				outcome <- work(job)
				<-free
			}()
			select {
			case begun <- outcome:
			case <-ctx.Done():
				return
			}
		}
		all = true
	}()
	for {
		var outcome chan R
		select {
		case outcome = <-begun:
		case <-ctx.Done():
			return ctx.Err()
		}
		if outcome == nil { // no more are begun
			break
		}
		select {
		case r := <-outcome:
			if ctx.Err() != nil {
				return ctx.Err() // the work may have been cut short
			}
			if err := handOn(r); err != nil {
				return err
			}
		case <-ctx.Done():
			return ctx.Err()
		}
	}
	if !all {
		return ctx.Err()
	}
	return nil
}
