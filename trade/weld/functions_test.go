package weld

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
	"gudgeon/trade/bore"
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
	name := regexp.MustCompile(`^weld\.[a-z_0-9]+$`)
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
	assert.True(t, seen["weld.plan"] && seen["weld.preheat"] && seen["weld.carbon_equivalent"])
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
						assert.False(t, (math.IsNaN(v) || math.IsInf(v, 0)), "%s: %s is not a number", f.Name, f.Results[k].Name)
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

func TestPlanCall(t *testing.T) {
	x := []float64{0, 1.5 * inch, 3 * inch, 3.06 * inch, 0.03 * inch, 0.09 * inch, 1, 5 * inch, 6 * inch, 0, 0, 0, 0, 0.06 * inch}
	args := trade.Args{X: x, Surveys: []trade.Survey{sweep(bore.Line{})}}
	got, err := call(t, "weld.plan", args)
	require.NoError(t, err)
	assert.Zero(t, got["cleans_up"])
	assert.Equal(t, 1.0, got["short_areas"])
	assert.Equal(t, 1.0, got["hand_layers"])
	assert.Equal(t, 2.0, got["layers_enough"])
	assert.InDelta(t, math.Pi/3, got["least_clock"], 10*math.Pi/180)
	assert.InDelta(t, -0.055*inch, got["least_stock"], 0.006*inch)
	assert.InDelta(t, 3.12*inch, got["truing_for_weld"], 1e-9)
	assert.Greater(t, got["short_depth_to"], 3*inch)
	assert.InDelta(t, 0.858*inch, got["wall"], 0.01*inch)

	x[6] = 2
	got, err = call(t, "weld.plan", args)
	require.NoError(t, err)
	assert.Equal(t, 1.0, got["cleans_up"])
	assert.Zero(t, got["hand_layers"])
	assert.Zero(t, got["shortfall"])

	x[6] = 1.5
	_, err = call(t, "weld.plan", args)
	assert.ErrorContains(t, err, "whole number")
	_, err = call(t, "weld.plan", trade.Args{X: x})
	assert.ErrorContains(t, err, "survey is missing")
}
