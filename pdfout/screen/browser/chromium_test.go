package browser

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"net/url"
	"os"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/audits"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"tuckmark/pdfout/proof"
)

// Rules of this file: one browser for all tests, and a tab for each.
// Nothing waits for the clock: a test says what must become true in the page, and goes on as
// soon as it is. Whatever a page did wrong fails its test, whether the test looks for it or not.

// patience bounds what a test waits for before it says that it will not come.
const patience = 20 * time.Second

// chromium is the browser, which is started with the first test that wants it.
var chromium struct {
	sync.Once
	ctx  context.Context
	stop context.CancelFunc
	err  error
}

// TestMain ends the browser with the last test.
func TestMain(m *testing.M) {
	status := m.Run()
	if chromium.stop != nil {
		chromium.stop()
	}
	removeProgram()
	os.Exit(status)
}

// begin starts the browser. It keeps to itself: what it would ask the network for by its own
// will is switched off.
func begin(t testing.TB) context.Context {
	t.Helper()
	path := proof.Tool(t, "chromium")
	chromium.Do(func() {
		parent, stopAllocator := chromedp.NewExecAllocator(context.Background(),
			chromedp.ExecPath(path), chromedp.Headless, chromedp.NoSandbox, chromedp.DisableGPU,
			chromedp.NoFirstRun, chromedp.NoDefaultBrowserCheck,
			chromedp.Flag("disable-quic", true), chromedp.Flag("disable-background-networking", true),
			chromedp.Flag("disable-component-update", true), chromedp.Flag("disable-sync", true),
			chromedp.Flag("disable-extensions", true), chromedp.Flag("disable-default-apps", true),
			chromedp.Flag("disable-dev-shm-usage", true), chromedp.Flag("disable-breakpad", true),
			// Windows lie over each other here, and each is looked at.
			chromedp.Flag("disable-backgrounding-occluded-windows", true),
			chromedp.Flag("disable-renderer-backgrounding", true),
			chromedp.Flag("disable-background-timer-throttling", true),
			chromedp.Flag("force-color-profile", "srgb"), chromedp.Flag("hide-scrollbars", true))
		ctx, stop := chromedp.NewContext(parent)
		chromium.ctx, chromium.err = ctx, chromedp.Do(ctx)
		chromium.stop = func() { stop(); stopAllocator() }
	})
	require.NoError(t, chromium.err, "the browser must start")
	return chromium.ctx
}

// tab is one page that is open, and what was heard of it.
type tab struct {
	t    testing.TB
	ctx  context.Context
	stop context.CancelFunc
	home string // the address of the server, without a path

	mutex sync.Mutex
	wrong []string // what went wrong in the page, or was asked of elsewhere
	borne []string // words of what may go wrong in this test
}

// screen is how large a window is, and how it is looked at.
type screen struct {
	wide, high int64
	features   []*emulation.MediaFeature // as the style sheet is asked for: dark, less motion
	finger     bool                      // touched, not pointed at
	noScript   bool
}

// desk is the usual window.
var desk = screen{wide: 1200, high: 800}

// openTab opens an address in a tab, which lies over those that were opened before. What a
// browser keeps of a page it keeps by the port, and each program has its own.
func openTab(t testing.TB, s screen, address string) *tab {
	t.Helper()
	at, err := url.Parse(address)
	require.NoError(t, err)
	b := &tab{t: t, home: at.Scheme + "://" + at.Host}
	ctx, stop := chromedp.NewContext(begin(t), chromedp.WithNewWindow(false), chromedp.WithListener(b.hear))
	b.ctx, b.stop = ctx, stop
	t.Cleanup(func() {
		b.mutex.Lock()
		assert.Empty(t, b.wrong, "what went wrong in the page")
		b.mutex.Unlock()
		b.close()
	})
	call(b, audits.Enable, cdp.Empty{})
	call(b, emulation.SetDeviceMetricsOverride, emulation.SetDeviceMetricsOverrideParams{Width: s.wide, Height: s.high, DeviceScaleFactor: 1, Mobile: s.finger})
	call(b, emulation.SetFocusEmulationEnabled, emulation.SetFocusEmulationEnabledParams{Enabled: true})
	if s.finger {
		const fingers = 2
		call(b, emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{Enabled: true, MaxTouchPoints: fingers})
	}
	if len(s.features) > 0 {
		call(b, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: s.features})
	}
	if s.noScript {
		call(b, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	}
	b.open(address)
	return b
}

// close closes the tab; once is enough.
func (b *tab) close() { b.stop() }

// hear notes what went wrong. It is called for every event, before what is done next.
func (b *tab) hear(event any) {
	switch e := event.(type) {
	case *runtime.EventConsoleAPICalled:
		words := []string{}
		for _, a := range e.Args {
			words = append(words, string(a.Value)+a.Description)
		}
		b.note("console: " + strings.Join(words, " "))
	case *runtime.EventExceptionThrown:
		d := e.ExceptionDetails
		text := d.Text
		if d.Exception != nil {
			text += " " + d.Exception.Description
		}
		b.note(fmt.Sprintf("exception: %s at %s:%d", text, d.URL, d.LineNumber+1))
	case *log.EventEntryAdded:
		b.note(fmt.Sprintf("%s: %s %s", e.Entry.Source, e.Entry.Text, e.Entry.URL))
	case *audits.EventIssueAdded:
		details, err := json.Marshal(e.Issue.Details)
		if err != nil {
			details = []byte(err.Error())
		}
		b.note(fmt.Sprintf("issue: %s %s", e.Issue.Code, details))
	case *network.EventRequestWillBeSent:
		if to := e.Request.URL; !strings.HasPrefix(to, b.home+"/") && !strings.HasPrefix(to, "data:") {
			b.note("asked of elsewhere: " + to)
		}
	case *network.EventWebSocketCreated:
		b.note("asked of elsewhere: " + e.URL)
	}
}

func (b *tab) note(words string) {
	b.mutex.Lock()
	defer b.mutex.Unlock()
	for _, may := range b.borne {
		if strings.Contains(words, may) {
			return
		}
	}
	b.wrong = append(b.wrong, words)
}

// bear lets something go wrong from now on: what is noted with these words.
func (b *tab) bear(words ...string) {
	b.mutex.Lock()
	defer b.mutex.Unlock()
	b.borne = append(b.borne, words...)
}

// call sends a command to the tab.
func call[P, R any](b *tab, command cdp.Command[P, R], params P) R {
	b.t.Helper()
	return run(b, string(command.Method), func(ctx context.Context, target *chromedp.Target) (R, error) {
		return cdp.Call(ctx, target, command, params)
	})
}

// run does something in the tab; doing says what, where it fails.
func run[T any](b *tab, doing string, action chromedp.Action[T]) T {
	b.t.Helper()
	// The first action opens the tab, which lives as long as the context that it is given.
	if chromedp.FromContext(b.ctx).Target == nil {
		require.NoError(b.t, chromedp.Do(b.ctx), "a tab must open")
	}
	ctx, stop := context.WithTimeout(b.ctx, patience)
	defer stop()
	value, err := chromedp.Run(ctx, action)
	require.NoError(b.t, err, "%s", doing)
	return value
}

// open goes to an address; one without a server is of this one.
func (b *tab) open(address string) {
	b.t.Helper()
	if strings.HasPrefix(address, "/") {
		address = b.home + address
	}
	run(b, "open "+address, chromedp.Navigate(address))
}

// value is what an expression is worth in the page.
func value[T any](b *tab, expression string) T {
	b.t.Helper()
	return run(b, expression, chromedp.Evaluate[T](expression, chromedp.EvalAwaitPromise))
}

// until waits until an expression is true in the page, and looks whenever something in the
// page has changed; a page that is loaded anew in between is looked at again. What is not
// there yet is not true yet.
func (b *tab) until(expression string, why ...any) {
	b.t.Helper()
	waiting := fmt.Sprintf(`new Promise(done => {
		const changed = new MutationObserver(look), stop = new AbortController();
		function holds() { try { return %s } catch { return false } }
		function look() { if (holds()) { changed.disconnect(); stop.abort(); done(true); } }
		changed.observe(document, {subtree: true, childList: true, attributes: true, characterData: true});
		for (const e of ["scroll", "focusin", "focusout", "input", "change", "transitionend", "load", "resize"]) addEventListener(e, look, {capture: true, signal: stop.signal});
		look();
	})`, expression)
	ctx, stop := context.WithTimeout(b.ctx, patience)
	defer stop()
	for {
		_, err := chromedp.Run(ctx, chromedp.Evaluate[bool](waiting, chromedp.EvalAwaitPromise))
		if err == nil {
			return
		}
		var thrown *chromedp.ExceptionError
		if ctx.Err() != nil || errors.As(err, &thrown) {
			require.NoError(b.t, err, "waited in vain: %s: %s", fmt.Sprint(why...), expression)
		}
	}
}
