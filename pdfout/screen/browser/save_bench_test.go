package browser

import (
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// Rules of this file: how long it takes from a save to the image of the screen in which the
// picture is that of the file, for every example, by each way of saving. One clock is read, that
// of the machine.

// hem is a depth of the first hem of a file, which is changed.
var hem = regexp.MustCompile(`(?m)^hem = ("[^"]*"|[0-9.]+)`)

// seen is a promise of when, in ms since 1970, the first image of the screen after the drawing
// was put in place had been handed on.
const seen = `void (globalThis.seen = new Promise(done => {
	const watch = new MutationObserver(all => {
		if (!all.some(m => [...m.addedNodes].some(n => n.id === "drawing"))) return
		watch.disconnect()
		// A task that comes before all others follows the image that is drawn next.
		const drawn = () => done(performance.timeOrigin + performance.now())
		requestAnimationFrame(() => scheduler.postTask(drawn, { priority: "user-blocking" }))
	})
	watch.observe(document.body, { childList: true, subtree: true })
}))`

// BenchmarkSave saves an example and waits for its picture: the middle and the longest of the
// times, in ms. `-benchtime 20x` saves each 20 times.
func BenchmarkSave(b *testing.B) {
	for _, example := range examples(b) {
		for _, way := range saves[:2] {
			b.Run(filepath.Base(example)+" "+way.name, func(b *testing.B) {
				file := copied(b, example)
				says := text(b, file)
				require.Regexp(b, hem, says)
				page := openTab(b, desk, look(b, file).address)
				page.loaded()
				var took []float64
				depth := 0
				for b.Loop() {
					depth = (depth + 1) % 2
					first := true
					next := hem.ReplaceAllStringFunc(says, func(old string) string {
						if !first {
							return old
						}
						first = false
						return fmt.Sprintf("hem = \"1 %d/8\"", 1+depth)
					})
					value[any](page, seen)
					began := time.Now()
					require.NoError(b, way.save(file, next))
					at := value[float64](page, "seen")
					took = append(took, at-float64(began.UnixMicro())/1000)
				}
				slices.Sort(took)
				b.ReportMetric(took[len(took)/2], "ms/median")
				b.ReportMetric(took[len(took)-1], "ms/worst")
				b.ReportMetric(0, "ns/op") // nothing is told by it
			})
		}
	}
}
