package engine

import (
	"runtime"
	"strings"
	"testing"
	"time"
)

func TestWatch(t *testing.T) {
	for name, c := range map[string]struct {
		limits Limits
		want   string
	}{
		"time":   {Limits{"to judge", time.Millisecond, memory}, "it took longer than 0.0 s to judge"},
		"memory": {Limits{"to judge", time.Hour, 1 << 20}, "it took more than 1 MiB of memory to judge"},
	} {
		t.Run(name, func(t *testing.T) {
			said := make(chan string, 1)
			done := Watch(c.limits, func(reason string) { said <- reason })
			defer done()
			for held := [][]byte{}; len(said) == 0 && len(held) < 64; held = append(held, make([]byte, 1<<20)) {
				time.Sleep(time.Millisecond)
			}
			if got := <-said; !strings.HasPrefix(got, c.want) {
				t.Errorf("%q", got)
			}
		})
	}
}

func TestWatchDone(t *testing.T) {
	done := Watch(Limits{"to judge", 20 * time.Millisecond, memory}, func(reason string) { t.Error(reason) })
	done()
	time.Sleep(40 * time.Millisecond)
}

// What was held before the watch began does not count.
func TestWatchFromNow(t *testing.T) {
	held := make([]byte, 32<<20)
	done := Watch(Limits{"to judge", time.Hour, 16 << 20}, func(reason string) { t.Error(reason) })
	time.Sleep(20 * time.Millisecond)
	done()
	runtime.KeepAlive(held)
}
