package main

import (
	"runtime/debug"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestVersionOf(t *testing.T) {
	commit := func(modified string) []debug.BuildSetting {
		return []debug.BuildSetting{{Key: "vcs.revision", Value: "8c1f00d"}, {Key: "vcs.modified", Value: modified}}
	}
	for _, c := range []struct {
		name, release string
		built         *debug.BuildInfo
		want          string
	}{
		{"a release", "1.2", &debug.BuildInfo{Main: debug.Module{Version: "v1.1.9"}}, "1.2"},
		{"a module that Go fetched", "", &debug.BuildInfo{Main: debug.Module{Version: "v1.2.0"}}, "1.2.0"},
		{"a commit, as Go numbers it", "", &debug.BuildInfo{Main: debug.Module{Version: "v0.0.0-20261130142900-8c1f00d"}, Settings: commit("false")}, "0.0.0-20261130142900-8c1f00d"},
		{"a commit without a number", "", &debug.BuildInfo{Main: debug.Module{Version: "(devel)"}, Settings: commit("false")}, "of commit 8c1f00d"},
		{"a commit with changes", "", &debug.BuildInfo{Settings: commit("true")}, "of commit 8c1f00d+"},
		{"files of no commit", "", &debug.BuildInfo{Main: debug.Module{Version: "(devel)"}}, "without a number, built from its source"},
		{"nothing noted", "", nil, "without a number, built from its source"},
	} {
		t.Run(c.name, func(t *testing.T) {
			assert.Equal(t, c.want, versionOf(c.release, c.built))
		})
	}
}
