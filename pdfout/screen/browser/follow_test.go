package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Rules of this file: what is on the page follows the file, however that is written, in
// however many tabs; what somebody has chosen stays.

// lengthOf is an expression for how long a line is drawn, in mm to the nearest tenth.
func lengthOf(piece, line string) string {
	return "Math.round(" + pathOf(piece, line) + ".getTotalLength() * 10) / 10"
}

// inch is the length in mm. Derived: international inch.
const inch = 25.4

// shows waits until a line is drawn so long, in inches.
func (b *tab) shows(piece, line string, inches float64) {
	b.t.Helper()
	b.until(fmt.Sprintf("Math.abs(%s - %f) < 0.2", lengthOf(piece, line), inches*inch), piece, " ", line, " is drawn ", inches, " in long")
}

// bandOf is the frock with a neck band so many inches long.
func bandOf(t testing.TB, inches float64) string {
	return changed(t, text(t, frock), "rectangle = [8, 2]", fmt.Sprintf("rectangle = [%g, 2]", inches))
}

// However an editor writes the file, the picture is that of the file.
func TestASaveIsDrawn(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	for i, way := range saves {
		for again := range 2 {
			long := 9 + float64(2*i+again)/4
			require.NoError(t, way.save(l.file, bandOf(t, long)), way.name)
			b.shows("band", "top", long)
		}
	}
	assert.Equal(t, "Plain frock, size 2 years: Sheets", value[string](b, "document.title"))
}

// A mistake stands beside the picture of before, with its line, a caret and what helps; it is
// gone when the file is right again.
func TestAMistakeIsShownAndGoes(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	plain := value[float64](b, `Number(getComputedStyle(document.querySelector("#drawing")).opacity) * Number(getComputedStyle(document.querySelector("#board")).opacity)`)
	assert.Equal(t, 1.0, plain)
	wrong := changed(t, bandOf(t, 12), "allowance =", "alowance =")
	require.NoError(t, saves[0].save(l.file, wrong))
	b.until(`document.querySelector("#wrong .mistake")`, "the mistake is told")
	told := value[string](b, `document.querySelector("#wrong").innerText`)
	for _, words := range []string{"frock.toml:6", "alowance", "allowance", `unit = "in"`, `alowance = "1/2"`} {
		assert.Contains(t, told, words)
	}
	assert.Contains(t, value[string](b, `document.querySelector("#wrong mark").textContent`), "alowance", "what is meant stands out")
	pale := value[float64](b, `Number(getComputedStyle(document.querySelector("#drawing")).opacity) * Number(getComputedStyle(document.querySelector("#board")).opacity)`)
	assert.Less(t, pale, 0.7, "the picture of before is pale")
	assert.InDelta(t, 8*inch, value[float64](b, lengthOf("band", "top")), 0.2, "the picture is that of before")
	assert.Contains(t, value[string](b, "document.title"), "1 mistake")
	b.sound("with a mistake")

	require.NoError(t, saves[1].save(l.file, bandOf(t, 12)))
	b.shows("band", "top", 12)
	assert.False(t, value[bool](b, `document.querySelector("#wrong .mistake") !== null`), "the mistake is gone")
	b.until(`Number(getComputedStyle(document.querySelector("#board")).opacity) === 1 && Number(getComputedStyle(document.querySelector("#drawing")).opacity) === 1`, "the picture is as bright as ever")
	assert.NotContains(t, value[string](b, "document.title"), "mistake")
}

// A file that has a mistake from the beginning is shown as soon as it has none.
func TestAFileThatBeginsWithAMistake(t *testing.T) {
	file := copied(t, frock)
	require.NoError(t, os.WriteFile(file, []byte("unit = \"in\"\n[piece.band]\nrectangle = [8]\n"), 0o644))
	l := look(t, file)
	b := openTab(t, desk, l.address)
	b.until(`document.querySelector("#wrong .mistake")`, "the mistake is told")
	assert.Contains(t, value[string](b, `document.body.innerText`), "no picture yet")
	b.sound("with nothing but a mistake")
	require.NoError(t, saves[0].save(file, bandOf(t, 8)))
	b.shows("band", "top", 8)
}

// What the file takes in is followed as it is itself: another file, and a drawing.
func TestWhatTheFileTakesInIsFollowed(t *testing.T) {
	folder := t.TempDir()
	write := func(name, says string) string {
		path := filepath.Join(folder, name)
		require.NoError(t, saves[1].save(path, says))
		return path
	}
	drawing := func(wide int) string {
		return fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" width="200mm" height="100mm" viewBox="0 0 200 100"><path id="flap" d="M0 0H%dV50H0Z"/></svg>`, wide)
	}
	write("frock.toml", bandOf(t, 8))
	write("flap.svg", drawing(100))
	file := write("sister.toml", `like = "frock.toml"
title = "Sister of the frock"
[piece.flap]
name = "Flap"
cut = 2
[piece.flap.outline]
from = "flap.svg"
part = "flap"
edges = ["left", "top", "right", "bottom"]
`)
	b := openTab(t, desk, look(t, file).address)
	b.shows("band", "top", 8)
	b.shows("flap", "top", 100/inch)
	write("frock.toml", bandOf(t, 10))
	b.shows("band", "top", 10)
	write("flap.svg", drawing(120))
	b.shows("flap", "top", 120/inch)
	require.NoError(t, os.Remove(filepath.Join(folder, "flap.svg")))
	b.until(`document.querySelector("#wrong .mistake")?.innerText.includes("flap.svg")`, "the drawing is missed")
	write("flap.svg", drawing(80))
	b.shows("flap", "top", 80/inch)
}

// A file may be saved faster than anybody can look: the last is what is shown. One that goes
// leaves its picture, and is taken up when it comes back.
func TestAStormOfSavesAndAFileThatGoes(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	const many = 100
	for i := range many {
		require.NoError(t, saves[i%len(saves)].save(l.file, bandOf(t, 9+float64(i)/many)))
	}
	b.shows("band", "top", 9+float64(many-1)/many)
	assert.False(t, value[bool](b, `document.querySelector("#wrong .mistake") !== null`), "no save was read half")

	away := l.file + ".away"
	require.NoError(t, os.Rename(l.file, away))
	b.until(`document.querySelector("#wrong .mistake")?.innerText.includes("not there any more")`, "the file is missed")
	assert.Positive(t, value[float64](b, lengthOf("band", "top")), "the picture of before")
	require.NoError(t, os.Rename(away, l.file))
	b.until(`!document.querySelector("#wrong .mistake")`, "the file is there again")
	require.NoError(t, saves[0].save(l.file, bandOf(t, 12)))
	b.shows("band", "top", 12)
}

// What somebody has chosen, and where they look, stays through a save.
func TestChoicesStay(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	stage := b.boxOf("#stage")
	b.wheel(stage.middle(), -400)
	b.drag(stage.middle(), point{stage.middle().X + 60, stage.middle().Y + 30})
	b.click(`[data-layer="grain line"]`)
	b.click("#lines-box summary")
	b.until(`document.querySelector("#lines-box").open`)
	value[any](b, `void (document.querySelector("#beside").scrollTop = 150)`)
	value[any](b, `document.querySelector("#zoom-in").focus()`)
	seen := func() string {
		b.settled()
		return value[string](b, `JSON.stringify([document.querySelector("#board").getAttribute("viewBox"),
			document.querySelector("#lines-box").open, document.querySelector("#beside").scrollTop,
			document.querySelector("[data-layer='grain line']").checked, document.activeElement.id])`)
	}
	before := seen()
	assert.Contains(t, before, `true,150,false,"zoom-in"`)
	for i, way := range saves {
		long := 8 + float64(i+1)/8
		require.NoError(t, way.save(l.file, bandOf(t, long)))
		b.shows("band", "top", long)
		assert.Equal(t, before, seen(), way.name)
		assert.Equal(t, "none", value[string](b, `getComputedStyle(document.querySelector("#drawing [data-role='grain line']")).display`))
	}
}

// A choice is in the address: a link, a step back and a page that is loaded again show it.
func TestTheAddressIsTheChoice(t *testing.T) {
	l := look(t, copied(t, frock))
	b := openTab(t, desk, l.address)
	b.shows("band", "top", 8)
	b.click(`a[href="./?show=figures"]`)
	b.until(`document.querySelector("#figures table") && location.search === "?show=figures"`)
	b.click(`a[href="./?show=pages"]`)
	b.until(`document.querySelector("#drawing path[data-piece]") && location.search === "?show=pages"`)
	value[any](b, "history.back()")
	b.until(`document.querySelector("#figures table") && location.search === "?show=figures"`, "a step back")
	value[any](b, "history.back()")
	b.shows("band", "top", 8)
	b.click(`a[href="./?view=square"]`)
	b.shows("front", "neck", 3+1.5)
	b.open("/?view=square")
	b.shows("front", "neck", 3+1.5)
	require.NoError(t, saves[0].save(l.file, bandOf(t, 9)))
	b.shows("band", "top", 9)
	b.shows("front", "neck", 3+1.5)
}

// A browser opens six connections to one server, and more tabs are welcome all the same.
func TestEveryTabFollows(t *testing.T) {
	const many = 8
	l := look(t, copied(t, frock))
	var tabs []*tab
	for range many {
		b := openTab(t, desk, l.address)
		b.shows("band", "top", 8)
		tabs = append(tabs, b)
	}
	for i := range 2 {
		long := 9 + float64(i)
		require.NoError(t, saves[i].save(l.file, bandOf(t, long)))
		for _, b := range tabs {
			b.shows("band", "top", long)
		}
	}
	// One of them listens for all, and another does when it is closed.
	for _, b := range tabs[:2] {
		b.close()
	}
	require.NoError(t, saves[1].save(l.file, bandOf(t, 12)))
	for _, b := range tabs[2:] {
		b.shows("band", "top", 12)
	}
}

// When the program has ended the page says so, and goes on when it is started again.
func TestTheProgramEndsAndIsStartedAgain(t *testing.T) {
	file := copied(t, frock)
	first := look(t, file)
	b := openTab(t, desk, first.address)
	b.shows("band", "top", 8)
	gone := `document.getElementById("gone").checkVisibility()`
	assert.False(t, value[bool](b, gone))
	b.bear("ERR_CONNECTION_REFUSED", "ERR_INCOMPLETE_CHUNKED_ENCODING", "ERR_EMPTY_RESPONSE", "ERR_CONNECTION_RESET")
	first.end()
	b.until(gone, "the page says that the program has ended")
	b.sound("without the program")
	require.NoError(t, saves[0].save(file, bandOf(t, 11)))
	look(t, file, "--port", first.port())
	b.shows("band", "top", 11)
	assert.False(t, value[bool](b, gone), "the page says no longer that the program has ended")
	require.NoError(t, saves[0].save(file, bandOf(t, 12)))
	b.shows("band", "top", 12)
}

// Of a file that needs more than a hundred pages these are shown in lots; the one that is chosen
// by itself is in sight in its row, behind the row of the lots.
func TestPagesInLots(t *testing.T) {
	says := "unit = \"in\"\n"
	for i := range 12 { // no two alike: those would have one sheet
		says += fmt.Sprintf("[piece.s%[1]d]\nname = \"Skirt %[1]d\"\ncut = 1\nrectangle = [%[2]d, 20]\n", i+1, 36+i)
	}
	file := filepath.Join(t.TempDir(), "skirts.toml")
	require.NoError(t, os.WriteFile(file, []byte(says), 0o644))
	b := openTab(t, desk, look(t, file).address+"?show=pages")
	const pages = `document.querySelectorAll("#drawing .part").length`
	b.until(pages+" === 100", "a hundred pages")
	b.click("#lots-1")
	b.until(pages+" < 100 && location.search === '?show=pages&lot=2'", "the others")
	b.open("/?show=pages&lot=2&part=40")
	const inSight = `(() => {
		const chosen = document.querySelector("#parts .parts [aria-current]"), row = document.getElementById("parts").getBoundingClientRect()
		const { left, right } = chosen.getBoundingClientRect()
		return chosen.id === "parts-40" && left >= row.left && right <= row.right
	})()`
	b.until(inSight, "the page that is chosen is in sight in its row")
	b.sound("pages in lots")
}
