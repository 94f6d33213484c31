package watch

import (
	"os"
	"path/filepath"
	"testing"
	"testing/synctest"
	"time"

	"github.com/stretchr/testify/assert"
)

// Steps of saves, in a time that the test sets. What is told is counted, and when.
func TestOneWordForASave(t *testing.T) {
	type step struct {
		after time.Duration
		words string // in the file then; "-" is no file
		name  string // that the system tells of
	}
	each := func(n int, after time.Duration) (steps []step) {
		for range n {
			steps = append(steps, step{after, "some more", "pinafore.toml"})
		}
		return steps
	}
	ms := time.Millisecond
	for _, tt := range []struct {
		name  string
		steps []step
		want  []time.Duration // from the first step
	}{
		{"one step", []step{{0, "new", "pinafore.toml"}}, []time.Duration{8 * ms}},
		{"emptied and written", []step{{0, "", "pinafore.toml"}, {1 * ms, "new", "pinafore.toml"}}, []time.Duration{9 * ms}},
		{"emptied and written after a while", []step{{0, "", "pinafore.toml"}, {50 * ms, "new", "pinafore.toml"}}, []time.Duration{58 * ms}},
		{"removed and made after a while", []step{{0, "-", "pinafore.toml"}, {30 * ms, "new", "pinafore.toml"}}, []time.Duration{38 * ms}},
		{"written bit by bit", each(10, 5*ms), []time.Duration{58 * ms}},
		{"removed for good", []step{{0, "-", "pinafore.toml"}}, []time.Duration{200 * ms}},
		{"emptied for good", []step{{0, "", "pinafore.toml"}}, []time.Duration{200 * ms}},
		{"two saves", []step{{0, "new", "pinafore.toml"}, {20 * ms, "newer", "pinafore.toml"}}, []time.Duration{8 * ms, 28 * ms}},
		{"the same words once more", []step{{0, "the old words", "pinafore.toml"}}, []time.Duration{8 * ms}},
		{"something beside it", []step{{0, "the old words", "pinafore.toml~"}}, nil},
		{"something beside it, again and again, in a save", []step{{0, "new", "pinafore.toml"}, {3 * ms, "new", "pinafore.toml~"}, {3 * ms, "new", "pinafore.toml~"}}, []time.Duration{8 * ms}},
		{"told of by another name", []step{{0, "new", "the folder"}}, []time.Duration{8 * ms}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			folder := t.TempDir()
			file := filepath.Join(folder, "pinafore.toml")
			write(t, file, "the old words")
			synctest.Test(t, func(t *testing.T) {
				system := &notices{come: make(chan struct{}, 1)}
				w := with(system, nil)
				w.On([]string{file})
				<-w.Changes()
				began := time.Now()
				told := make(chan []time.Duration)
				go func() {
					var at []time.Duration
					for range w.Changes() {
						at = append(at, time.Since(began))
					}
					told <- at
				}()
				for _, s := range tt.steps {
					time.Sleep(s.after)
					if s.words == "-" {
						must(t, os.Remove(file))
					} else if s.words != read(file) {
						write(t, file, s.words)
					}
					system.note(filepath.Join(folder, s.name))
				}
				time.Sleep(time.Second)
				w.Close()
				assert.Equal(t, tt.want, <-told)
			})
		})
	}
}

// A file that is written to without a pause is told of while it goes on.
func TestSaveWithoutEnd(t *testing.T) {
	file := filepath.Join(t.TempDir(), "pinafore.toml")
	write(t, file, "old")
	synctest.Test(t, func(t *testing.T) {
		system := &notices{come: make(chan struct{}, 1)}
		w := with(system, nil)
		defer w.Close()
		w.On([]string{file})
		<-w.Changes()
		told := 0
		for range 1000 {
			time.Sleep(time.Millisecond)
			system.note(file)
			select {
			case <-w.Changes():
				told++
			default:
			}
		}
		assert.InDelta(t, 5, told, 1, "words in a second of writing")
	})
}

// Where the system tells nothing, the files are asked twice a second.
func TestAsking(t *testing.T) {
	file := filepath.Join(t.TempDir(), "pinafore.toml")
	write(t, file, "old")
	synctest.Test(t, func(t *testing.T) {
		w := with(&notices{come: make(chan struct{}, 1)}, time.NewTicker(again).C)
		defer w.Close()
		w.On([]string{file})
		<-w.Changes()
		time.Sleep(10 * time.Minute)
		synctest.Wait()
		assert.Empty(t, w.Changes(), "nothing has changed")
		began := time.Now()
		write(t, file, "new")
		<-w.Changes()
		assert.LessOrEqual(t, time.Since(began), 600*time.Millisecond)
	})
}
