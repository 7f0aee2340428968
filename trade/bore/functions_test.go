package bore

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/trade/internal/catalogue"
)

func TestCatalogue(t *testing.T) { catalogue.Test(t, "bore", Functions()) }

func TestSurveyCalls(t *testing.T) {
	sweep := tiltedBore.sweep(nil)
	for i := range sweep {
		sweep[i].Read -= 1.5 * in
	}
	args := trade.Args{X: []float64{0, 1.5 * in, 6 * in}, Surveys: []trade.Survey{sweep, nil, nil}}
	got, err := catalogue.Call(t, Functions(), "bore.survey", args)
	require.NoError(t, err)
	assert.InDelta(t, 3.04*in, got["diameter"], 1e-9)
	assert.InDelta(t, math.Hypot(0.125, 0.03)*in, got["offset_near"], 1e-9)
	assert.InDelta(t, tiltedBore.line.At(6*in).Clock(), got["clock_far"], 1e-6)
	assert.InDelta(t, math.Atan(math.Hypot(0.015, 0.004)), got["tilt"], 1e-9)
	assert.InDelta(t, 15*deg, got["widest_gap"], 1e-9)
	assert.Zero(t, got["outliers"])

	args.X = []float64{0, 1.5 * in, 3.3 * in}
	got, err = catalogue.Call(t, Functions(), "bore.least_stock", args)
	require.NoError(t, err)
	assert.InDelta(t, 1.65*in-1.52*in-tiltedBore.line.At(0.5*in).Len(), got["stock"], 1e-4*in)

	got, err = catalogue.Call(t, Functions(), "bore.inspect", trade.Args{X: []float64{0, 3 * in, 3.002 * in}, Surveys: []trade.Survey{finished(3.0004, 3.0006, 3.001)}})
	require.NoError(t, err)
	assert.Equal(t, 1.0, got["complete"])
	assert.InDelta(t, 0.0004*in, got["room"], 1e-12)

	_, err = catalogue.Call(t, Functions(), "bore.survey", trade.Args{X: []float64{0, 1.5 * in, 0}, Surveys: []trade.Survey{sweep[:24]}})
	assert.ErrorContains(t, err, "one station")
	for _, name := range []string{"bore.survey", "bore.least_stock", "bore.inspect"} {
		_, err = catalogue.Call(t, Functions(), name, trade.Args{X: []float64{0, 3 * in, 3.1 * in}})
		assert.ErrorContains(t, err, "survey is missing", name)
	}
}
