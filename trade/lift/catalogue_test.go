package lift

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
	const lb, in, ft, a36, fu36, e70 = pound, inch, foot, 36 * ksi, 58 * ksi, 70 * ksi
	return map[string][]float64{
		"lift.density":            {0},
		"lift.weight_plate":       {4 * ft, 3 * ft, 2 * in, 7850},
		"lift.weight_block":       {6 * ft, 3 * ft, 4 * ft, 165 * lb / (ft * ft * ft)},
		"lift.weight_bar":         {3 * in, 10 * ft, 7850},
		"lift.weight_tube":        {8 * in, 7 * in, 6 * ft, 7850},
		"lift.weight_boss":        {10 * in, 5 * in, 6 * in, 7850},
		"lift.weight_gusset":      {12 * in, 9 * in, in, 7850},
		"lift.weight_by_length":   {282.36 * lb / ft, 20 * ft},
		"lift.centre_of_parts":    {500 * lb, 6 * in, 200 * lb, 30 * in, 0, 0, 0, 0},
		"lift.centre_from_scales": {1200 * lb, 1800 * lb, 10 * ft},
		"lift.centre_height":      {3000 * lb, 1500 * lb, 1400 * lb, 10 * ft, 2 * ft, 0},
		"lift.centre_from_hangs":  {0, 0, 20 * in, 10 * in, 40 * in, 0, 20 * in, 10.2 * in, 0.1 * in},
		"lift.centre_from_three_hangs": {0, 0, 20 * in, 10 * in, 40 * in, 0, 20 * in, 10.2 * in,
			20 * in, 30 * in, 20.1 * in, 10 * in, 0.1 * in},
		"lift.hang":               {3 * in, 20 * in, 6 * ft, 0},
		"lift.leg_angle":          {8 * ft, 10 * ft},
		"lift.leg_load":           {4000 * lb, 2, 60 * degree},
		"lift.vertical_legs":      {10000 * lb, 2 * ft, 8 * ft},
		"lift.angled_legs":        {4000 * lb, 45 * degree, 60 * degree},
		"lift.two_legs":           {4000 * lb, 8 * ft, 7 * ft, 8 * ft, 3.5 * ft, ft, 0},
		"lift.four_legs":          {8000 * lb, 6 * ft, 4 * ft, 6 * ft, 2.5 * ft, 2 * ft},
		"lift.sling_capacity":     {5000 * lb, 1, 60 * degree, 0.75},
		"lift.working_load":       {50000 * lb, 5},
		"lift.proof_load":         {2000 * lb, 0},
		"lift.hoist_factor":       {20 * ft / 60},
		"lift.snatch_factor":      {in, in / 4},
		"lift.chain_capacity":     {0.75 * in},
		"lift.chain_wear_limit":   {2},
		"lift.tie_down":           {20000 * lb, 5000 * lb, 4, 0},
		"lift.shackle":            {3000 * lb, 6500 * lb, 0, 60 * degree},
		"lift.shackle_field_rule": {0.625 * in},
		"lift.eyebolt":            {400 * lb, 1550 * lb, 30 * degree, 1},
		"lift.eyebolt_pull":       {60 * degree},
		"lift.eyebolt_thread":     {0.5 * in},
		"lift.plate_lug":          {10000 * lb, 0.75 * in, 1.66 * in, 3.3125 * in, 1.6875 * in, 1.375 * in, a36, fu36, 4.15625 * in, 1},
		"lift.plate_lug_aisc":     {16000 * lb, 0.5 * in, 4.25 * in, 2.25 * in, 1.03 * in, in, a36, fu36},
		"lift.lug_base":           {5000 * lb, 60 * degree, 5 * degree, 3 * in, 6 * in, in, a36, 1},
		"lift.bent_bar_lug":       {2000 * lb, in, 2.5 * in, 2 * in, a36, 90 * degree, 0, 1},
		"lift.hook_stress":        {800 * lb, 0, 1.25 * in, 2.5 * in, 3.125 * in, 0},
		"lift.closed_ring":        {2000 * lb, 0.75 * in, 4 * in},
		"lift.electrode_strength": {1},
		"lift.fillet_strength":    {0.25 * in, e70, 1},
		"lift.fillet_least_leg":   {0.75 * in},
		"lift.fillet_most_leg":    {0.5 * in},
		"lift.flare_throat":       {in},
		"lift.fillet_weld":        {8000 * lb, 0.375 * in, 4 * in, 2, e70, 0, 1},
		"lift.eccentric_weld":     {5000 * lb, 3, 11 * in, 8 * in, 0.5 * in, e70, 4 * in, 1},
		"lift.lug_weld":           {5000 * lb, 60 * degree, 5 * degree, 3 * in, 6 * in, in, 0.375 * in, 2, e70, 1},
		"lift.round_weld":         {in, 0.375 * in, e70, kip, 0.3 * kip, 0.4 * kip * in, 0, 1},
		"lift.flare_weld":         {2000 * lb, in, 5 * in, e70, 1},
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
		assert.True(t, strings.HasPrefix(f.Name, "lift."))
		assert.NotEmpty(t, f.About)
		assert.NotEmpty(t, f.Formula)
		assert.NotEmpty(t, f.Source)
		assert.True(t, strings.HasPrefix(f.Example, f.Name+"("))
		assert.NotEmpty(t, f.Results)
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
			case r.Name == "capacity" || r.Name == "working_load" || r.Name == "strength":
				assert.Equal(t, units.Down, r.Round, r.Name)
			case r.Kind == units.Ratio:
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
	if name == "lift.density" {
		d, err := Density(strings.Trim(inside, `"`))
		require.NoError(t, err)
		return d
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
