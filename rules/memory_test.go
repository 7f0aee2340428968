package rules

import (
	"errors"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
)

// counted is a function over a survey that counts how often it is worked.
func counted(calls *int) *trade.Function {
	return &trade.Function{Call: func(in trade.Args, out []float64) error {
		*calls++
		if in.X[0] < 0 {
			return errors.New("refused")
		}
		out[0] = in.X[0] + in.Surveys[0][0].Read
		return nil
	}}
}

func argsOf(x, read float64) trade.Args {
	return trade.Args{X: []float64{x}, Surveys: []trade.Survey{{{Read: read}}}}
}

func TestMemoryWorksEachCallOnce(t *testing.T) {
	var m memory
	calls, out := 0, make([]float64, 1)
	fn := counted(&calls)
	for range 3 {
		require.NoError(t, m.call(&frame{}, fn, argsOf(1, 2), out))
		require.Equal(t, 3.0, out[0])
		require.NoError(t, m.call(&frame{}, fn, argsOf(1, 4), out))
		require.Equal(t, 5.0, out[0])
		require.EqualError(t, m.call(&frame{}, fn, argsOf(-1, 2), out), "refused")
	}
	assert.Equal(t, 3, calls)
}

func TestMemoryIsBounded(t *testing.T) {
	var m memory
	calls, out := 0, make([]float64, 1)
	fn := counted(&calls)
	for x := range 100_000 {
		require.NoError(t, m.call(&frame{}, fn, argsOf(float64(x), 0), out))
		require.NoError(t, m.call(&frame{}, fn, argsOf(0, 1), out)) // asked for all the time
	}
	assert.Equal(t, 100_001, calls, "what is asked for all the time is kept")
	assert.LessOrEqual(t, m.size, mostMemory)
	assert.Less(t, len(m.now)+len(m.old), 2*mostMemory/40)
}

func TestMemoryIsSafeToShare(t *testing.T) {
	var m memory
	fn := &trade.Function{Call: func(in trade.Args, out []float64) error {
		out[0] = 2 * in.X[0]
		return nil
	}}
	var wait sync.WaitGroup
	for range 4 {
		wait.Go(func() {
			f, out := &frame{}, make([]float64, 1)
			for x := range 1000 {
				assert.NoError(t, m.call(f, fn, argsOf(float64(x), 0), out))
				assert.Equal(t, 2*float64(x), out[0])
			}
		})
	}
	wait.Wait()
}
