package truck

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

// examples gives each function's example arguments, as its Example has them.
func examples() map[string][]float64 {
	const lb, in = pound, inch
	return map[string][]float64{
		"truck.capacity_at":          {5000 * lb, 24 * in, 28 * in},
		"truck.capacity_from_axle":   {5000 * lb, 24 * in, 28 * in, 18 * in},
		"truck.hung_load_centre":     {48 * in, 6 * in},
		"truck.engagement":           {42 * in, 48 * in},
		"truck.fork_share":           {4000 * lb, 30 * in, 4 * in},
		"truck.fork_wear":            {1.5 * in, 1.42 * in, degree, 0.1 * in, 42 * in, 0.5 * in},
		"truck.fork_extension_limit": {48 * in},
		"truck.lift_table":           {2000 * lb, 4000 * lb, 900 * lb, 20 * in, 22 * in, 8 * in, 0},
		"truck.grade":                {6 * in, 72 * in},
		"truck.grade_from_angle":     {4 * degree},
	}
}

// each runs a test for every function with a copy of its example arguments.
func each(t *testing.T, test func(t *testing.T, f trade.Function, x, out []float64)) {
	all := examples()
	for _, f := range Functions() {
		t.Run(f.Name, func(t *testing.T) {
			x, ok := all[f.Name]
			require.True(t, ok, "no example arguments")
			test(t, f, append([]float64(nil), x...), make([]float64, len(f.Results)))
		})
	}
}

func TestCatalogueIsComplete(t *testing.T) {
	seen := map[string]bool{}
	each(t, func(t *testing.T, f trade.Function, x, _ []float64) {
		assert.False(t, seen[f.Name], "named twice")
		seen[f.Name] = true
		assert.True(t, strings.HasPrefix(f.Name, "truck."))
		assert.NotEmpty(t, f.About)
		assert.NotEmpty(t, f.Formula)
		assert.NotEmpty(t, f.Source)
		assert.True(t, strings.HasPrefix(f.Example, f.Name+"("))
		assert.NotEmpty(t, f.Results)
		assert.Contains(t, f.About, "govern", "the plate governs")
		require.Len(t, x, len(f.Params))
		names := map[string]bool{}
		for i, p := range f.Params {
			assert.False(t, i > 0 && f.Params[i-1].Optional && !p.Optional, "%s comes after one that may be left out", p.Name)
			assert.False(t, names[p.Name], p.Name)
			names[p.Name] = true
			assert.NotEmpty(t, p.About, p.Name)
			assert.NotEqual(t, units.Invalid, p.Kind, p.Name)
			assert.Less(t, p.Low, p.High, p.Name)
			if p.Kind == units.Choice {
				assert.Equal(t, p.High, float64(len(p.Options)-1), p.Name)
			}
			if p.Optional {
				assert.GreaterOrEqual(t, p.Default, p.Low, p.Name)
				assert.LessOrEqual(t, p.Default, p.High, p.Name)
			}
		}
		for _, r := range f.Results {
			assert.False(t, names["out "+r.Name], r.Name)
			names["out "+r.Name] = true
			assert.NotEmpty(t, r.About, r.Name)
			assert.NotEqual(t, units.Invalid, r.Kind, r.Name)
			_, ok := units.Lookup(r.Kind, r.Unit)
			assert.True(t, ok, "%s in %s", r.Name, r.Unit)
		}
	})
	assert.Len(t, seen, len(examples()))
}

func TestCatalogueExamplesRun(t *testing.T) {
	each(t, func(t *testing.T, f trade.Function, x, out []float64) {
		require.NoError(t, f.Call(trade.Args{X: x}, out))
		for i, y := range out {
			assert.False(t, math.IsNaN(y) || math.IsInf(y, 0), f.Results[i].Name)
		}
		if f.Steps == nil {
			return
		}
		steps := f.Steps(trade.Args{X: x})
		assert.NotEmpty(t, steps)
		for _, s := range steps {
			assert.NotEmpty(t, s.Name)
			assert.NotEmpty(t, s.Formula, s.Name)
			assert.False(t, math.IsNaN(s.Value) || math.IsInf(s.Value, 0), s.Name)
			_, ok := units.Lookup(s.Kind, s.Unit)
			assert.True(t, ok || s.Unit == "", "%s in %s", s.Name, s.Unit)
		}
		assert.Empty(t, f.Steps(trade.Args{}), "steps of a bad call")
	})
}

func TestCatalogueRefusesWhatIsOutside(t *testing.T) {
	each(t, func(t *testing.T, f trade.Function, x, out []float64) {
		for i, p := range f.Params {
			usual := x[i]
			step := max(1e-6, (p.High-p.Low)*1e-6)
			for _, bad := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), p.Low - step, p.High + step} {
				x[i] = bad
				assert.Error(t, f.Call(trade.Args{X: x}, out), "%s = %v", p.Name, bad)
				if f.Steps != nil {
					assert.Empty(t, f.Steps(trade.Args{X: x}))
				}
			}
			x[i] = usual
		}
		assert.Error(t, f.Call(trade.Args{X: x[1:]}, out), "too few arguments")
		assert.Error(t, f.Call(trade.Args{X: x}, append(out, 0)), "too many results")
	})
}

func TestCatalogueDoesNotAllocate(t *testing.T) {
	each(t, func(t *testing.T, f trade.Function, x, out []float64) {
		in := trade.Args{X: x}
		var err error
		assert.Zero(t, testing.AllocsPerRun(100, func() { err = f.Call(in, out) }))
		assert.NoError(t, err)
	})
}

func TestCapacitiesRoundDownAndUsesUp(t *testing.T) {
	each(t, func(t *testing.T, f trade.Function, _, _ []float64) {
		for _, r := range f.Results {
			switch {
			case r.Name == "capacity":
				assert.Equal(t, units.Down, r.Round, r.Name)
			case r.Kind == units.Ratio && f.Name != "truck.engagement":
				assert.Equal(t, units.Up, r.Round, r.Name)
			}
		}
	})
}

// number works one argument of an example: inch(2), "steel", true, 3.
func number(t *testing.T, text string, p trade.Param) float64 {
	t.Helper()
	if i := slices.Index(p.Options, strings.Trim(text, `"`)); i >= 0 {
		return float64(i)
	}
	if text == "true" {
		return 1
	}
	name, inside, call := strings.Cut(strings.TrimSuffix(text, ")"), "(")
	if !call {
		x, err := strconv.ParseFloat(text, 64)
		require.NoError(t, err, text)
		return x
	}
	u, ok := units.Named(name)
	require.True(t, ok, name)
	assert.Equal(t, p.Kind, u.Kind, text)
	x, err := strconv.ParseFloat(inside, 64)
	require.NoError(t, err, text)
	return u.ToSI(x)
}

func TestExamplesSayWhatIsTested(t *testing.T) {
	each(t, func(t *testing.T, f trade.Function, x, _ []float64) {
		inside := strings.TrimSuffix(strings.TrimPrefix(f.Example, f.Name+"("), ")")
		named := strings.HasPrefix(inside, "{")
		given := map[string]bool{}
		for i, text := range strings.Split(strings.Trim(inside, "{}"), ", ") {
			if named {
				key, rest, ok := strings.Cut(text, ": ")
				require.True(t, ok, text)
				text = rest
				i = slices.IndexFunc(f.Params, func(p trade.Param) bool { return p.Name == key })
				require.GreaterOrEqual(t, i, 0, "no parameter %s", key)
			}
			require.Less(t, i, len(f.Params))
			given[f.Params[i].Name] = true
			assert.InDelta(t, x[i], number(t, text, f.Params[i]), 1e-9*math.Max(1, math.Abs(x[i])), f.Params[i].Name)
		}
		for i, p := range f.Params {
			if !given[p.Name] {
				assert.True(t, p.Optional, "%s is left out", p.Name)
				assert.Equal(t, p.Default, x[i], p.Name)
			}
		}
	})
}
