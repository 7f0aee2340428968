package setup

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/expr-lang/expr"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

// The tests below hold for the catalogue of any trade package.

func TestCatalogueIsComplete(t *testing.T) {
	seen := map[string]bool{}
	for _, f := range Functions() {
		t.Run(f.Name, func(t *testing.T) {
			assert.False(t, seen[f.Name], "listed twice")
			seen[f.Name] = true
			assert.Regexp(t, `^setup\.[a-z0-9_]+$`, f.Name)
			assert.True(t, strings.HasSuffix(f.About, "."), "About is a sentence")
			assert.NotEmpty(t, f.Formula)
			assert.NotEmpty(t, f.Source)
			assert.Contains(t, f.Example, f.Name+"(")
			assert.NotEmpty(t, f.Results)
			optional := false
			for _, p := range f.Params {
				assert.Regexp(t, `^[a-z][a-z0-9_]*$`, p.Name)
				assert.NotEmpty(t, p.About, p.Name)
				assert.False(t, optional && !p.Optional, "%s stands after an optional parameter", p.Name)
				optional = optional || p.Optional
				if p.Kind == units.Choice {
					assert.NotEmpty(t, p.Options, p.Name)
					continue
				}
				assert.True(t, p.Kind.Numeric(), p.Name)
				assert.Less(t, p.Low, p.High, p.Name)
				assert.False(t, math.IsInf(p.High, 0), p.Name)
				if p.Optional {
					assert.True(t, p.Default >= p.Low && p.Default <= p.High, "default of %s", p.Name)
				}
			}
			for _, r := range f.Results {
				assert.Regexp(t, `^[a-z][a-z0-9_]*$`, r.Name)
				assert.NotEmpty(t, r.About, r.Name)
				if r.Unit != "" {
					u, ok := units.Named(r.Unit)
					assert.True(t, ok && u.Kind == r.Kind, "unit %s of %s", r.Unit, r.Name)
				}
			}
		})
	}
}

// TestExamplesRun evaluates each example as a rule sheet would, then asks the
// same call for what a catalogue promises: finite results, no allocation, and
// an error for anything that is not a number or lies outside a parameter's range.
func TestExamplesRun(t *testing.T) {
	for _, f := range Functions() {
		t.Run(f.Name, func(t *testing.T) {
			x := runExample(t, f)
			out := make([]float64, len(f.Results))
			require.NoError(t, f.Call(trade.Args{X: x}, out))
			for i, v := range out {
				assert.False(t, math.IsNaN(v) || math.IsInf(v, 0), f.Results[i].Name)
			}
			assert.Zero(t, testing.AllocsPerRun(20, func() { _ = f.Call(trade.Args{X: x}, out) }))
			for i, p := range f.Params {
				for _, bad := range outside(p) {
					broken := append([]float64(nil), x...)
					broken[i] = bad
					assert.Error(t, f.Call(trade.Args{X: broken}, out), "%s = %g", p.Name, bad)
				}
			}
			if f.Steps != nil {
				checkSteps(t, f.Steps(trade.Args{X: x}))
			}
		})
	}
}

func outside(p trade.Param) []float64 {
	if p.Kind == units.Choice {
		return []float64{math.NaN(), -1, 0.5, float64(len(p.Options))}
	}
	margin := 1e-9 * (p.High - p.Low)
	return []float64{math.NaN(), math.Inf(1), math.Inf(-1), p.Low - margin, p.High + margin}
}

func checkSteps(t *testing.T, steps []trade.Step) {
	assert.NotEmpty(t, steps)
	for _, s := range steps {
		assert.NotEmpty(t, s.Name)
		assert.NotEmpty(t, s.Formula, s.Name)
		assert.False(t, math.IsNaN(s.Value) || math.IsInf(s.Value, 0), s.Name)
		if s.Unit != "" {
			u, ok := units.Named(s.Unit)
			assert.True(t, ok && u.Kind == s.Kind, "unit %s of %s", s.Unit, s.Name)
		}
	}
}

// runExample evaluates f's example and returns the arguments that it gave.
func runExample(t *testing.T, f trade.Function) []float64 {
	t.Helper()
	var got []float64
	env := map[string]any{}
	for _, u := range units.All() {
		env[u.Name] = func(v any) (float64, error) {
			n, err := number(v)
			return u.ToSI(n), err
		}
	}
	pkg, name, _ := strings.Cut(f.Name, ".")
	env[pkg] = map[string]any{name: func(args ...any) (any, error) {
		x, err := arrange(f, args)
		if err != nil {
			return nil, err
		}
		got = x
		out := make([]float64, len(f.Results))
		if err := f.Call(trade.Args{X: x}, out); err != nil {
			return nil, err
		}
		if len(out) == 1 {
			return out[0], nil
		}
		record := map[string]any{}
		for i, r := range f.Results {
			record[r.Name] = out[i]
		}
		return record, nil
	}}
	value, err := expr.Eval(f.Example, env)
	require.NoError(t, err)
	require.IsType(t, 0.0, value, "an example ends in a number")
	return got
}

// arrange puts positional or named arguments in the order of the parameters.
func arrange(f trade.Function, args []any) ([]float64, error) {
	named, _ := args[0].(map[string]any)
	if named == nil {
		named = map[string]any{}
		for i, a := range args {
			named[f.Params[i].Name] = a
		}
	}
	var x []float64
	for _, p := range f.Params {
		v, ok := named[p.Name]
		if !ok && !p.Optional {
			return nil, fmt.Errorf("%s is missing", p.Name)
		}
		if !ok {
			x = append(x, p.Default)
			continue
		}
		delete(named, p.Name)
		n, err := option(p, v)
		if err != nil {
			return nil, err
		}
		x = append(x, n)
	}
	if len(named) > 0 {
		return nil, fmt.Errorf("unknown arguments %v", named)
	}
	return x, nil
}

func option(p trade.Param, v any) (float64, error) {
	word, ok := v.(string)
	if !ok {
		return number(v)
	}
	for i, o := range p.Options {
		if o == word {
			return float64(i), nil
		}
	}
	return 0, fmt.Errorf("%s knows no %q", p.Name, word)
}

func number(v any) (float64, error) {
	switch n := v.(type) {
	case int:
		return float64(n), nil
	case float64:
		return n, nil
	}
	return 0, fmt.Errorf("%v is not a number", v)
}
