package rules

import (
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/units"
)

// A Set is used from many goroutines at once; run with -race this also finds a
// report that writes to it.
func TestSetIsSharedSafely(t *testing.T) {
	set, err := compileText(t, `sheet: shared
readings:
  a: {ask: a, kind: length, from: 0 in, to: 90 in, can change: true, with: tape}
  wide: {ask: wide, kind: yes/no}
rules:
  - {id: most, check: "(wide ? a : 2 * a) <= inch(20)", level: stop, says: "{a}", do: y, source: test}
`)
	require.NoError(t, err)
	readings := read(t, set, map[string]string{"a": "15", "wide": "no"})
	want := set.Evaluate(readings).Worked(0, units.InchShop)
	var wait sync.WaitGroup
	for range 8 {
		wait.Go(func() {
			for range 50 {
				r := set.Evaluate(readings)
				assert.Equal(t, want, r.Worked(0, units.InchShop))
				assert.NotEmpty(t, r.WaysOut(0, units.InchShop))
			}
		})
	}
	wait.Wait()
}
