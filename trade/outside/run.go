package outside

import (
	"flag"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the figures in testdata anew; read them before you commit")

// Run works every check and holds it against its tolerance, then holds the
// section of that name in testdata/checks against the figures found.
func Run(t *testing.T, name string, checks []Check) {
	var rows []row
	for _, c := range checks {
		t.Run(c.ID+" "+c.What, func(t *testing.T) {
			require.NotEmpty(t, c.ID)
			require.NotEmpty(t, c.What)
			require.NotEmpty(t, c.Source)
			require.NotEmpty(t, c.Unit)
			require.Contains(t, confidences, c.Confidence)
			require.Positive(t, c.Tol)
			got, err := c.Got()
			require.NoError(t, err)
			if assert.InDelta(t, c.Want, got, c.Tol, "%s (%s), %s", c.Unit, c.Confidence, c.Source) {
				rows = append(rows, worked(c, got))
			}
		})
	}
	if len(rows) == len(checks) { // else -run chose some, or one failed
		keep(t, name, rows)
	}
}

func keep(t *testing.T, name string, rows []row) {
	root, err := Root()
	require.NoError(t, err)
	file := sectionFile(root, name)
	old, err := readSection(file)
	if err == nil && slices.EqualFunc(old, rows, sameRow) {
		return
	}
	if !*update {
		t.Errorf("%s is not what the checks give now: run make checks and read the difference", file)
		return
	}
	require.NoError(t, writeSection(file, rows))
}
