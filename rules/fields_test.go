package rules

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// eyeLibrary stands in for the trade: an eye of two ways of failing, of which
// one has a capacity of its own.
func eyeLibrary() *Library {
	share := func(name, about string) trade.Result {
		return trade.Result{Name: name, About: about, Kind: units.Ratio, Unit: "percent", Round: units.Up}
	}
	return NewLibrary([]trade.Function{{
		Name: "test.eye", About: "an eye", Source: "test",
		Params: []trade.Param{{Name: "load", Kind: units.Mass, Low: 0, High: 1e6}, {Name: "size", Kind: units.Number, Low: 1, High: 10}},
		Results: []trade.Result{
			share("use", "all together"), share("torn_off", "torn through"), share("bent", "bent over"),
			{Name: "capacity", Kind: units.Mass, Unit: "lb", Round: units.Down}, {Name: "share", Kind: units.Ratio, Round: units.Down},
		},
		Call: func(in trade.Args, out []float64) error {
			torn, bent := in.X[0]/(1000*in.X[1]), in.X[0]/(500*in.X[1])
			copy(out, []float64{max(torn, bent), torn, bent, 500 * in.X[1], 0.5})
			return nil
		},
		Steps: func(in trade.Args) []trade.Step {
			return []trade.Step{{Name: "single torn off capacity", Kind: units.Mass, Value: 1000 * in.X[1], Unit: "lb"}}
		},
	}})
}

const eyeSheet = `sheet: eye
readings:
  weight: {ask: Weight, kind: mass, unit: kg, from: 1 kg, to: 9000 kg}
  least:  {ask: Least weight, kind: mass, unit: kg, from: 1 kg, to: 9000 kg}
  size:   {ask: Size, kind: number, from: 1, to: 10}
  other:  {ask: Size of the other, kind: number, from: 1, to: 10}
  which:  {ask: Which eye, kind: choice, options: [first, second]}
values:
  eye: test.eye(weight, size)
  second_eye: test.eye(weight, other)
  eye_use: 'which == "first" ? eye.use : second_eye.use'
rules:
  - {id: eye, check: eye_use <= percent(100), level: stop, says: Too much., do: Less., source: test}
  - {id: bent, check: eye.bent <= percent(80), level: caution, says: Bent., do: Less., source: test}
  - {id: heavy, check: weight >= least, level: caution, says: Light., do: More., source: test}
  - {id: by-case, check: 'which == "first" ? eye.use <= percent(90) : second_eye.bent <= percent(90)', level: stop, says: Too much., do: Less., source: test}
`

func eyeReport(t *testing.T, readings map[string]string) *Report {
	t.Helper()
	sheet, err := ReadSheet(&source.File{Name: "eye.yaml", Text: eyeSheet})
	require.NoError(t, err)
	set, err := CompileSheet(eyeLibrary(), NoShelf{}, sheet)
	require.NoError(t, err)
	return set.Evaluate(read(t, set, readings))
}

func TestElements(t *testing.T) {
	r := eyeReport(t, map[string]string{"weight": "400 kg", "size": "2", "which": "first"})
	list := r.Elements(0, units.MetricShop)
	require.Len(t, list, 1, "the branch not taken is left out")
	e := list[0]
	assert.Equal(t, "eye", e.Name)
	assert.Equal(t, "400 kg", e.Load)
	assert.Equal(t, "1,000 kg", e.Capacity)
	assert.InDelta(t, 0.4, e.Use, 1e-12)
	require.Len(t, e.Modes, 2, "its whole is not one of its parts")
	assert.Equal(t, "torn off", e.Modes[0].Name)
	assert.Equal(t, "torn through", e.Modes[0].About)
	assert.Equal(t, "2,000 kg", e.Modes[0].Capacity)
	assert.Empty(t, e.Modes[1].Capacity)

	one := r.Elements(1, units.MetricShop)
	require.Len(t, one, 1)
	require.Len(t, one[0].Modes, 1, "a rule that names one way of failing is judged by that one")
	assert.Equal(t, "bent", one[0].Modes[0].Name)
	assert.Empty(t, r.Elements(2, units.MetricShop))
	assert.Len(t, r.Elements(3, units.MetricShop), 1)
}

func TestElementsOfWhatIsMissing(t *testing.T) {
	r := eyeReport(t, map[string]string{"weight": "400 kg"})
	for i := range r.Results {
		assert.Empty(t, r.Elements(i, units.MetricShop), r.Results[i].Rule.ID)
	}
}

func TestSides(t *testing.T) {
	r := eyeReport(t, map[string]string{"weight": "400 kg", "least": "500 kg", "size": "2", "which": "first"})
	found, limit, least, ok := r.Sides(2, units.MetricShop)
	assert.True(t, ok && least)
	assert.Equal(t, []string{"400 kg", "500 kg"}, []string{found, limit})
	found, limit, least, ok = r.Sides(1, units.MetricShop)
	assert.True(t, ok && !least)
	assert.Equal(t, []string{"40%", "80%"}, []string{found, limit})

	_, _, _, ok = eyeReport(t, nil).Sides(1, units.MetricShop)
	assert.False(t, ok)
}

func TestNumberAndText(t *testing.T) {
	r := eyeReport(t, map[string]string{"weight": "400 kg", "size": "2", "which": "first"})
	x, ok := r.Number("eye.bent")
	assert.True(t, ok)
	assert.InDelta(t, 0.4, x, 1e-12)
	x, _ = r.Number("weight")
	assert.InDelta(t, 400, x, 1e-9)
	for _, name := range []string{"eye", "weight.bent", "eye.none", "none", "least", "second_eye.bent"} {
		x, ok := r.Number(name)
		assert.False(t, ok && !math.IsNaN(x), name)
	}
	assert.Equal(t, "400 kg", r.Text("weight", units.MetricShop))
	assert.Equal(t, "first", r.Text("which", units.InchShop))
	assert.Empty(t, r.Text("least", units.InchShop))
	assert.Empty(t, r.Text("eye", units.InchShop))
}
