package catalogue

import (
	"errors"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

// Test holds the functions of a trade package to what a catalogue promises.
// Functions that take a survey have examples with names in them, so those are
// only looked at, not called.
func Test(t *testing.T, pkg string, functions []trade.Function) {
	seen := map[string]bool{}
	for _, f := range functions {
		t.Run(f.Name, func(t *testing.T) {
			assert.False(t, seen[f.Name], "listed twice")
			seen[f.Name] = true
			isWhole(t, pkg, f)
			if takesSurvey(f) {
				return
			}
			x := runExample(t, functions, f)
			exampleIsFinite(t, f, x)
			rangesAgree(t, f, x)
			refusesWrongCounts(t, f, x)
			doesNotAllocate(t, f, x)
		})
	}
}

// Call calls the function of that name and gives its results by name. A call
// that succeeds has steps, if the function has any.
func Call(t *testing.T, functions []trade.Function, name string, in trade.Args) (map[string]float64, error) {
	t.Helper()
	i := slices.IndexFunc(functions, func(f trade.Function) bool { return f.Name == name })
	require.GreaterOrEqual(t, i, 0, "no function %s", name)
	f := functions[i]
	out := make([]float64, len(f.Results))
	err := f.Call(in, out)
	got := map[string]float64{}
	for i, r := range f.Results {
		got[r.Name] = out[i]
	}
	if f.Steps != nil && err == nil {
		assert.NotEmpty(t, f.Steps(in))
	}
	return got, err
}

func takesSurvey(f trade.Function) bool {
	for _, p := range f.Params {
		if p.Kind == units.Survey {
			return true
		}
	}
	return false
}

func exampleIsFinite(t *testing.T, f trade.Function, x []float64) {
	out := make([]float64, len(f.Results))
	require.NoError(t, f.Call(trade.Args{X: x}, out))
	for i, v := range out {
		assert.True(t, finite(v), f.Results[i].Name)
	}
	if f.Steps == nil {
		return
	}
	steps := f.Steps(trade.Args{X: x})
	assert.NotEmpty(t, steps)
	for _, s := range steps {
		assert.NotEmpty(t, s.Name)
		assert.NotEmpty(t, s.Formula, s.Name)
		assert.True(t, finite(s.Value), s.Name)
		unitFits(t, s.Unit, s.Kind, s.Name)
	}
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// rangesAgree: what the catalogue allows and what the function refuses are the
// same thing. Within the range another rule may refuse the call.
func rangesAgree(t *testing.T, f trade.Function, x []float64) {
	for i, p := range f.Params {
		for _, bad := range beyond(p) {
			in := with(x, i, bad)
			assert.Error(t, f.Call(in, make([]float64, len(f.Results))), "%s = %g", p.Name, bad)
			if f.Steps != nil {
				assert.Empty(t, f.Steps(in), "steps of %s = %g", p.Name, bad)
			}
		}
		for _, end := range []float64{p.Low, p.High} {
			takesEnd(t, f, with(x, i, end), p, end)
		}
	}
}

func with(x []float64, i int, v float64) trade.Args {
	y := append([]float64(nil), x...)
	y[i] = v
	return trade.Args{X: y}
}

func beyond(p trade.Param) []float64 {
	list := []float64{math.NaN(), math.Inf(1), math.Inf(-1)}
	if p.Kind == units.Choice || p.Kind == units.YesNo {
		return append(list, -1, 0.5, p.High+1)
	}
	margin := 1e-9 * (p.High - p.Low)
	return append(list, p.Low-margin, p.High+margin)
}

func takesEnd(t *testing.T, f trade.Function, in trade.Args, p trade.Param, end float64) {
	out := make([]float64, len(f.Results))
	for k := range out {
		out[k] = math.NaN()
	}
	err := f.Call(in, out)
	var r *trade.RangeError
	if errors.As(err, &r) {
		assert.False(t, r.Low == p.Low && r.High == p.High && r.Value == end, "%s = %g: %v", p.Name, end, err)
	}
	if err != nil {
		return
	}
	for k, v := range out {
		assert.True(t, finite(v), "%s at %s = %g", f.Results[k].Name, p.Name, end)
	}
}

func refusesWrongCounts(t *testing.T, f trade.Function, x []float64) {
	out := make([]float64, len(f.Results))
	assert.Error(t, f.Call(trade.Args{X: x[1:]}, out), "too few arguments")
	assert.Error(t, f.Call(trade.Args{X: x}, append(out, 0)), "too many results")
	if f.Steps != nil {
		assert.Empty(t, f.Steps(trade.Args{}), "steps of a bad call")
	}
}

func doesNotAllocate(t *testing.T, f trade.Function, x []float64) {
	in, out := trade.Args{X: x}, make([]float64, len(f.Results))
	var err error
	assert.Zero(t, testing.AllocsPerRun(100, func() { err = f.Call(in, out) }))
	assert.NoError(t, err)
}
