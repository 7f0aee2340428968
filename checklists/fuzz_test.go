package checklists

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// FuzzProgress feeds the reader of readings files anything. What it accepts
// must come back the same after it is written, and give a report.
func FuzzProgress(f *testing.F) {
	procedure, err := OpenShop(Shipped()).Procedure("pre-lift")
	require.NoError(f, err)
	files, err := filepath.Glob("../testdata/pre-lift-*.yaml")
	require.NoError(f, err)
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(f, err)
		f.Add(string(data))
	}
	f.Add("readings: {part_weight: {read: 3}}")
	f.Add("readings:\n  part_weight: [1,2]\n")
	f.Fuzz(func(t *testing.T, text string) {
		progress, err := procedure.ReadProgress(&source.File{Name: "fuzz.yaml", Text: text})
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		written := procedure.WriteProgress(progress)
		again, err := procedure.ReadProgress(&source.File{Name: "again.yaml", Text: written})
		require.NoError(t, err, written)
		require.Equal(t, len(progress.Readings), len(again.Readings))
		for name, r := range progress.Readings {
			require.Equal(t, r.Value, again.Readings[name].Value, name)
		}
		require.Equal(t, progress.Done, again.Done)
		require.Equal(t, len(progress.Released), len(again.Released))
		procedure.Evaluate(again).JSON(units.InchShop)
	})
}
