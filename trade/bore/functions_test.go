package bore

import (
	"errors"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

func surveyOnly(f trade.Function) bool {
	for _, p := range f.Params {
		if p.Kind == units.Survey {
			return true
		}
	}
	return false
}

var term = regexp.MustCompile(`(\w+)\((-?[\d.]+)\)|"([^"]*)"|(-?[\d.]+)`)

// example works out the arguments of a function's example, defaults filled in.
func example(t *testing.T, f trade.Function) []float64 {
	t.Helper()
	inside := strings.TrimSuffix(strings.TrimPrefix(f.Example, f.Name+"("), ")")
	require.NotEqual(t, f.Example, inside, f.Name)
	var out []float64
	for i, m := range term.FindAllStringSubmatch(inside, -1) {
		require.Less(t, i, len(f.Params), f.Name)
		p := f.Params[i]
		switch {
		case m[1] != "":
			u, ok := units.Named(m[1])
			require.True(t, ok, m[1])
			assert.Equal(t, p.Kind, u.Kind, "%s: %s", f.Name, p.Name)
			v, err := strconv.ParseFloat(m[2], 64)
			require.NoError(t, err)
			out = append(out, u.ToSI(v))
		case m[3] != "":
			at := -1
			for k, o := range p.Options {
				if o == m[3] {
					at = k
				}
			}
			require.GreaterOrEqual(t, at, 0, m[3])
			out = append(out, float64(at))
		default:
			v, err := strconv.ParseFloat(m[4], 64)
			require.NoError(t, err)
			out = append(out, v)
		}
	}
	for _, p := range f.Params[len(out):] {
		require.True(t, p.Optional, "%s: the example leaves out %s", f.Name, p.Name)
		out = append(out, p.Default)
	}
	return out
}

func TestTheCatalogueIsWhole(t *testing.T) {
	name := regexp.MustCompile(`^bore\.[a-z_0-9]+$`)
	plain := regexp.MustCompile(`^[a-z][a-z_0-9]*$`)
	seen := map[string]bool{}
	for _, f := range Functions() {
		assert.Regexp(t, name, f.Name)
		assert.False(t, seen[f.Name], f.Name)
		seen[f.Name] = true
		assert.NotEmpty(t, f.About, f.Name)
		assert.NotEmpty(t, f.Formula, f.Name)
		assert.NotEmpty(t, f.Source, f.Name)
		assert.True(t, strings.HasPrefix(f.Example, f.Name+"("), f.Name)
		require.NotEmpty(t, f.Results, f.Name)
		for _, p := range f.Params {
			assert.Regexp(t, plain, p.Name)
			assert.NotEmpty(t, p.About)
			if p.Kind != units.Survey {
				assert.Less(t, p.Low, p.High, "%s: %s", f.Name, p.Name)
			}
			if p.Optional {
				assert.True(t, p.Default >= p.Low && p.Default <= p.High, "%s: %s", f.Name, p.Name)
			}
		}
		for _, r := range f.Results {
			assert.Regexp(t, plain, r.Name)
			if r.Unit != "" {
				_, ok := units.Lookup(r.Kind, r.Unit)
				assert.True(t, ok, "%s: %s in %s", f.Name, r.Name, r.Unit)
			}
		}
	}
	assert.True(t, seen["bore.eccentric_stock"] && seen["bore.survey"] && seen["bore.least_stock"])
}

// TestRangesAgree: what the catalogue allows and what the function refuses are
// the same thing.
func TestRangesAgree(t *testing.T) {
	for _, f := range Functions() {
		if surveyOnly(f) {
			continue
		}
		x := example(t, f)
		out := make([]float64, len(f.Results))
		require.NoError(t, f.Call(trade.Args{X: x}, out), f.Name)
		for i, p := range f.Params {
			at := func(v float64) error {
				y := append([]float64(nil), x...)
				y[i] = v
				for k := range out {
					out[k] = math.NaN()
				}
				err := f.Call(trade.Args{X: y}, out)
				if err == nil {
					for k, v := range out {
						assert.False(t, bad(v), "%s: %s is not a number", f.Name, f.Results[k].Name)
					}
				}
				return err
			}
			what := f.Name + ": " + p.Name
			for _, v := range []float64{p.Low - 1e-9 - 1e-6*math.Abs(p.Low), p.High + 1e-6*math.Abs(p.High), math.NaN(), math.Inf(1), math.Inf(-1)} {
				assert.Error(t, at(v), "%s = %v", what, v)
			}
			for _, v := range []float64{p.Low, p.High} {
				var r *trade.RangeError
				if err := at(v); errors.As(err, &r) {
					assert.False(t, r.Low == p.Low && r.High == p.High, "%s = %v: %v", what, v, err)
				}
			}
		}
	}
}

func TestScalarCallsDoNotAllocate(t *testing.T) {
	for _, f := range Functions() {
		if surveyOnly(f) {
			continue
		}
		args := trade.Args{X: example(t, f)}
		out := make([]float64, len(f.Results))
		assert.Zero(t, testing.AllocsPerRun(100, func() { _ = f.Call(args, out) }), f.Name)
	}
}

func call(t *testing.T, name string, in trade.Args) (map[string]float64, error) {
	t.Helper()
	for _, f := range Functions() {
		if f.Name != name {
			continue
		}
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
	t.Fatal("no such function: ", name)
	return nil, nil
}

func TestSurveyCalls(t *testing.T) {
	sweep := tiltedBore.sweep(nil)
	for i := range sweep {
		sweep[i].Read -= 1.5 * in
	}
	args := trade.Args{X: []float64{0, 1.5 * in, 6 * in}, Surveys: []trade.Survey{sweep, nil, nil}}
	got, err := call(t, "bore.survey", args)
	require.NoError(t, err)
	assert.InDelta(t, 3.04*in, got["diameter"], 1e-9)
	assert.InDelta(t, math.Hypot(0.125, 0.03)*in, got["offset_near"], 1e-9)
	assert.InDelta(t, tiltedBore.line.At(6*in).Clock(), got["clock_far"], 1e-6)
	assert.InDelta(t, math.Atan(math.Hypot(0.015, 0.004)), got["tilt"], 1e-9)
	assert.InDelta(t, 15*deg, got["widest_gap"], 1e-9)
	assert.Zero(t, got["outliers"])

	args.X = []float64{0, 1.5 * in, 3.3 * in}
	got, err = call(t, "bore.least_stock", args)
	require.NoError(t, err)
	assert.InDelta(t, 1.65*in-1.52*in-tiltedBore.line.At(0.5*in).Len(), got["stock"], 1e-4*in)

	got, err = call(t, "bore.inspect", trade.Args{X: []float64{0, 3 * in, 3.002 * in}, Surveys: []trade.Survey{finished(3.0004, 3.0006, 3.001)}})
	require.NoError(t, err)
	assert.Equal(t, 1.0, got["complete"])
	assert.InDelta(t, 0.0004*in, got["room"], 1e-12)

	_, err = call(t, "bore.survey", trade.Args{X: []float64{0, 1.5 * in, 0}, Surveys: []trade.Survey{sweep[:24]}})
	assert.ErrorContains(t, err, "one station")
	for _, name := range []string{"bore.survey", "bore.least_stock", "bore.inspect"} {
		_, err = call(t, name, trade.Args{X: []float64{0, 3 * in, 3.1 * in}})
		assert.ErrorContains(t, err, "survey is missing", name)
	}
}
