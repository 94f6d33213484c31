package proof

import (
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"
)

// Tool is the path of a program that others wrote, for a test that wants one. Where it is not
// installed the test is skipped; with TUCKMARK_RENDER=1 in the environment it fails instead, and
// with TUCKMARK_RENDER=0 it is left out in any case.
func Tool(t testing.TB, name string) string {
	t.Helper()
	if os.Getenv("TUCKMARK_RENDER") == "0" {
		t.Skip("TUCKMARK_RENDER=0 leaves out what other programs draw")
	}
	path, err := exec.LookPath(name)
	if err == nil {
		return path
	}
	if os.Getenv("TUCKMARK_RENDER") == "1" {
		require.NoError(t, err, "TUCKMARK_RENDER=1 asks for what other programs draw")
	}
	t.Skipf("%s is not installed", name)
	return ""
}
