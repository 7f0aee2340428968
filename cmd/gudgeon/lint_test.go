package main

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the expected messages anew; read them before you commit")

// Each file in testdata/lint is wrong in one way; the whole message that it must
// give stands beside it.
func TestLintNamesEachFault(t *testing.T) {
	t.Chdir("../../testdata/lint")
	files, err := filepath.Glob("*.yaml")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 10)
	for _, file := range files {
		t.Run(file, func(t *testing.T) {
			err := (&settings{shop: t.TempDir()}).lintFile(file)
			require.Error(t, err)
			wantFile := strings.TrimSuffix(file, ".yaml") + ".want"
			if *update {
				require.NoError(t, os.WriteFile(wantFile, []byte(err.Error()+"\n"), 0o644))
			}
			want, readErr := os.ReadFile(wantFile)
			require.NoError(t, readErr)
			assert.Equal(t, string(want), err.Error()+"\n")
		})
	}
}
