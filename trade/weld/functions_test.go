package weld

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/trade/internal/catalogue"
)

func TestCatalogue(t *testing.T) { catalogue.Test(t, "weld", Functions()) }

func TestPlanCall(t *testing.T) {
	x := []float64{0, 1.5 * inch, 3 * inch, 3.06 * inch, 0.03 * inch, 0.09 * inch, 1, 5 * inch, 6 * inch, 0, 0, 0, 0, 0.06 * inch}
	args := trade.Args{X: x, Surveys: []trade.Survey{sweep(bore.Line{})}}
	got, err := catalogue.Call(t, Functions(), "weld.plan", args)
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
	got, err = catalogue.Call(t, Functions(), "weld.plan", args)
	require.NoError(t, err)
	assert.Equal(t, 1.0, got["cleans_up"])
	assert.Zero(t, got["hand_layers"])
	assert.Zero(t, got["shortfall"])

	x[6] = 1.5
	_, err = catalogue.Call(t, Functions(), "weld.plan", args)
	assert.ErrorContains(t, err, "whole number")
	_, err = catalogue.Call(t, Functions(), "weld.plan", trade.Args{X: x})
	assert.ErrorContains(t, err, "survey is missing")
}
