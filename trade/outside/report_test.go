package outside

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestReportIsFresh holds testdata/CHECKS.md against the sections it is made of.
func TestReportIsFresh(t *testing.T) {
	root, err := Root()
	require.NoError(t, err)
	all, err := sections(root)
	require.NoError(t, err)
	require.NotEmpty(t, all)
	file := filepath.Join(root, "testdata", "CHECKS.md")
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(report(all)), 0o644))
	}
	old, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, report(all), string(old), "testdata/CHECKS.md is out of date: run make checks")
}

func TestFiguresShowAgreementAndNoNoise(t *testing.T) {
	for _, c := range []struct {
		got, want, tol float64
		text           string
	}{
		{4.61393299, 4.613933, 5e-7, "4.6139330"},
		{20431.7, 20432, 20.4, "20432"},
		{2.2e-16, 0, 1e-12, "0"},
		{-3e-13, 0, 1e-12, "-3e-13"},
		{4285.714, 4285, 1, "4285.7"},
		{0.1 + 0.2, 0.3, 1e-12, "0.30000000"},
		{1.25e-11, 1.25e-11, 1e-20, "1.2500000e-11"},
		{123456, 120000, 5000, "123500"},
	} {
		assert.Equal(t, c.text, figure(c.got, c.want, c.tol))
	}
}

func TestOnlyTheLastPlaceMayDiffer(t *testing.T) {
	c := Check{ID: "A", What: "b", Source: "c", Confidence: Published, Unit: "1", Want: 2, Tol: 0.01}
	a := worked(c, 2.0004)
	assert.True(t, sameRow(a, worked(c, 2.0006)))
	assert.False(t, sameRow(a, worked(c, 2.004)))
	c.Want = 2.001
	assert.False(t, sameRow(a, worked(c, 2.0004)))
}
