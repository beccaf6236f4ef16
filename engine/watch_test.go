package engine

import (
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
		"memory": {Limits{"to judge", time.Hour, 1}, "it took more than 0 MiB of memory to judge"},
	} {
		t.Run(name, func(t *testing.T) {
			said := make(chan string, 1)
			done := Watch(c.limits, func(reason string) { said <- reason })
			defer done()
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
