package report_test

import (
	"bytes"
	"context"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"sunclause/engine/report/sheets"

	"sunclause/schema/examples"
)

// browsers are the names under which Chromium is installed.
var browsers = []string{"chromium", "chromium-browser", "headless-shell", "google-chrome"}

// browser starts a headless browser, or skips where there is none. Where
// SUNCLAUSE_BROWSER is set, there has to be one.
func browser(t *testing.T) context.Context {
	t.Helper()
	if testing.Short() {
		t.Skip("a browser is not quick")
	}
	found := ""
	for _, name := range browsers {
		if path, err := exec.LookPath(name); err == nil {
			found = path
			break
		}
	}
	if found == "" {
		if os.Getenv("SUNCLAUSE_BROWSER") != "" {
			t.Fatal("there is no Chromium on this machine")
		}
		t.Skip("there is no Chromium on this machine; install the Debian package chromium to look at the reports")
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(found), chromedp.NoSandbox, chromedp.WindowSize(1100, 1400))
	ctx, cancel := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(cancel)
	ctx, cancel = chromedp.NewContext(ctx)
	t.Cleanup(cancel)
	ctx, cancel = context.WithTimeout(ctx, 9*time.Minute) // a browser that hangs; the machine may be busy
	t.Cleanup(cancel)
	return ctx
}

// lookAtDrawings finds words of a drawing that reach beyond it, and words that
// lie on each other.
const lookAtDrawings = `(() => {
	const wrong = [];
	for (const svg of document.querySelectorAll("figure svg")) {
		const frame = svg.getBoundingClientRect();
		const texts = [...svg.querySelectorAll("text")].map(t => ({words: t.textContent, box: t.getBoundingClientRect()}));
		for (const {words, box} of texts)
			if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.top < frame.top - 1 || box.bottom > frame.bottom + 1)
				wrong.push(svg.getAttribute("aria-label") + ": " + words + " reaches beyond the drawing");
		for (let i = 0; i < texts.length; i++)
			for (let k = i + 1; k < texts.length; k++) {
				const a = texts[i].box, b = texts[k].box;
				const x = Math.min(a.right, b.right) - Math.max(a.left, b.left), y = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
				if (x > 2 && y > 3) wrong.push(svg.getAttribute("aria-label") + ": " + texts[i].words + " lies on " + texts[k].words);
			}
	}
	if (document.documentElement.scrollWidth > window.innerWidth + 1) wrong.push("the page is wider than the window");
	return wrong;
})()`

// TestInBrowser opens the report of each example and looks at its drawings, on
// a wide and on a narrow window.
func TestInBrowser(t *testing.T) {
	ctx := browser(t)
	pages := map[string][]byte{"very long ids": pageOf(t, longIDs(t)), "backup": pageOf(t, withBackup(t))}
	for _, name := range examples.Names {
		pages[name] = htmlOf(t, name)
	}
	for name, text := range pages {
		page := filepath.Join(t.TempDir(), "report.html")
		if err := os.WriteFile(page, text, 0o644); err != nil {
			t.Fatal(err)
		}
		for _, width := range []int64{1100, 390} {
			if err := chromedp.Do(ctx, chromedp.EmulateViewport(width, 1400), chromedp.Navigate("file://"+page)); err != nil {
				t.Fatal(err)
			}
			wrong, err := chromedp.Run(ctx, chromedp.Evaluate[[]string](lookAtDrawings))
			if err != nil {
				t.Fatal(err)
			}
			for _, w := range wrong {
				t.Errorf("%s, %d wide: %s", name, width, w)
			}
			keepScreenshot(t, ctx, width, fmt.Sprintf("%s-%d.png", strings.ReplaceAll(name, " ", "-"), width))
		}
	}
}

// screenshots is the folder in which pictures of the reports are kept, to be
// looked at: go test ./engine/report -run InBrowser -screenshots DIR.
var screenshots = flag.String("screenshots", "", "folder to keep pictures of the reports in")

// keepScreenshot takes a picture of the page's beginning, with all its drawings.
func keepScreenshot(t *testing.T, ctx context.Context, width int64, name string) {
	t.Helper()
	if *screenshots == "" {
		return
	}
	if err := chromedp.Do(ctx, chromedp.EmulateViewport(width, 6000)); err != nil {
		t.Fatal(err)
	}
	picture, err := chromedp.Run(ctx, chromedp.CaptureScreenshot())
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(*screenshots, name), picture, 0o644); err != nil {
		t.Fatal(err)
	}
}

// paper are the widths that A4 and Letter leave between their margins, in CSS
// pixels.
var paper = map[string]int64{"A4": 688, "Letter": 710}

// TestOnPaper lays the reports out as they are printed: nothing is wider than the
// sheet, no drawing is longer than one, and what only serves a screen is gone.
func TestOnPaper(t *testing.T) {
	ctx := browser(t)
	const sheet = 960 // of both, between the margins, with a caption of three lines
	long := fmt.Sprintf(`[...document.querySelectorAll("figure svg")].filter(f => f.getBoundingClientRect().height > %d).map(f => f.getAttribute("aria-label") + " is longer than a sheet")`, sheet)
	screen := `[...document.querySelectorAll("nav, #document, summary")].filter(e => e.getClientRects().length > 0).map(e => e.tagName + " is printed")`
	for _, name := range []string{"gb-island-cottage-faulty", "gb-warehouse"} {
		page := filepath.Join(t.TempDir(), "report.html")
		if err := os.WriteFile(page, htmlOf(t, name), 0o644); err != nil {
			t.Fatal(err)
		}
		for format, width := range paper {
			if err := chromedp.Do(ctx, chromedp.EmulateViewport(width, 1000), chromedp.Navigate("file://"+page)); err != nil {
				t.Fatal(err)
			}
			if _, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"}); err != nil {
				t.Fatal(err)
			}
			for _, look := range []string{lookAtDrawings, long, screen} {
				wrong, err := chromedp.Run(ctx, chromedp.Evaluate[[]string](look))
				if err != nil {
					t.Fatal(err)
				}
				for _, w := range wrong {
					t.Errorf("%s on %s: %s", name, format, w)
				}
			}
		}
	}
}

// lookAtLabels finds labels whose words reach beyond them without a word about it,
// or that are not of their true size; a CSS millimetre is 96/25.4 pixels.
const lookAtLabels = `[...document.querySelectorAll("figure")].flatMap(f => {
	const label = f.querySelector(".label"), caption = f.querySelector("figcaption").textContent, wrong = [];
	const [, width, height] = caption.match(/, ([0-9.]+) × ([0-9.]+) mm/);
	const box = label.getBoundingClientRect(), words = label.querySelector("bdi").getBoundingClientRect();
	if (Math.abs(box.width - width*96/25.4) > 1 || Math.abs(box.height - height*96/25.4) > 1) wrong.push(caption + ": is not of that size");
	const beyond = words.left < box.left || words.right > box.right || words.top < box.top || words.bottom > box.bottom;
	if (beyond && !caption.includes("no room")) wrong.push(caption + ": the words reach beyond it");
	return wrong;
})`

// TestLabelsInBrowser looks at the labels of each example at true size.
func TestLabelsInBrowser(t *testing.T) {
	ctx := browser(t)
	for _, name := range []string{"gb-island-cottage", "gb-battery", "gb-warehouse"} {
		page := filepath.Join(t.TempDir(), "labels.html")
		var text bytes.Buffer
		if err := sheets.Stickers(&text, result(t, name)); err != nil {
			t.Fatal(err)
		}
		if strings.Contains(text.String(), "have no room") {
			t.Errorf("%s: an example of ours has labels too small for their words", name)
		}
		if err := os.WriteFile(page, text.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
		if err := chromedp.Do(ctx, chromedp.Navigate("file://"+page)); err != nil {
			t.Fatal(err)
		}
		wrong, err := chromedp.Run(ctx, chromedp.Evaluate[[]string](lookAtLabels))
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range wrong {
			t.Errorf("%s: %s", name, w)
		}
	}
}

// longIDs is the example with a battery in which parts and runs have ids far
// longer than a drawing has room for.
func longIDs(t *testing.T) []byte {
	t.Helper()
	id := regexp.MustCompile(`"(S1|S2|J1|J2|INV1|B1|M1|MET|EB1|FR1|BAT1|SPD1|W1|R[0-9]+|SE[0-9]|P-SE)((?:\.[A-Za-z0-9]+)*)"`)
	return id.ReplaceAll(examples.Text(t, examples.Battery), []byte(`"$1-`+strings.Repeat("W", 34)+`$2"`))
}

// htmlOf is the HTML report of an example by the British set.
func htmlOf(t *testing.T, name string) []byte {
	t.Helper()
	return pageOf(t, examples.Text(t, name))
}
