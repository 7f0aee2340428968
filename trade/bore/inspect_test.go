package bore

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
)

func finished(near, middle, far float64) trade.Survey {
	var out trade.Survey
	for i, d := range []float64{near, middle, far} {
		z := float64(i) * 3 * in
		out = append(out, trade.Point{Station: z, Clock: 0, Read: d * in, U: 0.0001 * in},
			trade.Point{Station: z, Clock: 90 * deg, Read: (d + 0.0004) * in, U: 0.0001 * in})
	}
	return out
}

func TestInspection(t *testing.T) {
	i, err := Inspect(Inspection{Diameters: finished(3.0004, 3.0006, 3.0010), LeastDiameter: 3 * in, GreatestDiameter: 3.002 * in,
		TaperLimit: 0.001 * in, RoundLimit: 0.0005 * in})
	require.NoError(t, err)
	assert.True(t, i.OK())
	assert.InDelta(t, 0.0006*in, i.Taper, 1e-12)
	assert.InDelta(t, 0.0002*in, i.OutOfRound, 1e-12)
	assert.InDelta(t, 3.0004*in, i.Least, 1e-12)
	assert.InDelta(t, 3.0014*in, i.Greatest, 1e-12)
	require.Len(t, i.Margins, 4)
	assert.InDelta(t, 0.0004*in, i.Margins[0].Room, 1e-12)
	assert.False(t, i.Margins[0].Close)
	assert.Len(t, i.Steps(), 8)

	tight, err := Inspect(Inspection{Diameters: finished(3.0001, 3.0006, 3.0010), LeastDiameter: 3 * in, GreatestDiameter: 3.0012 * in})
	require.NoError(t, err)
	assert.False(t, tight.OK(), "3.0014 is over")
	assert.True(t, tight.Margins[0].Close, "0.0001 of room is less than twice the uncertainty")
}

func TestInspectionIsNotCompleteWithoutDepthsAndAngles(t *testing.T) {
	ask := func(d trade.Survey) []Fault {
		i, err := Inspect(Inspection{Diameters: d, LeastDiameter: 2.9 * in, GreatestDiameter: 3.1 * in})
		require.NoError(t, err)
		return i.Faults
	}
	all := finished(3, 3, 3)
	assert.Empty(t, ask(all))
	assert.Equal(t, []Fault{TooFewDepths}, ask(all[:4]))
	assert.Equal(t, []Fault{TooFewAngles}, ask(trade.Survey{all[0], all[2], all[4]}))
	opposite := append(trade.Survey(nil), all...)
	for i := range opposite {
		opposite[i].Clock *= 2 // 6 o'clock is the same line as 12
	}
	assert.Equal(t, []Fault{TooFewAngles}, ask(opposite))
	near := append(trade.Survey(nil), all...)
	for i := range near {
		near[i].Clock /= 3
	}
	assert.Equal(t, []Fault{NotCrossed}, ask(near))
}

func TestTwoPointMissesThreeLobes(t *testing.T) {
	// A three-lobed bore has equal diameters everywhere and is still out of round.
	var p []XY
	var d trade.Survey
	for i := range 24 {
		a := float64(i) * 15 * deg
		p = append(p, Polar(a, 0.04+1e-5*math.Cos(3*a)))
		d = append(d, trade.Point{Clock: a, Read: 0.08 + 1e-5*(math.Cos(3*a)+math.Cos(3*(a+math.Pi)))})
	}
	c, err := FitCircle(p, nil)
	require.NoError(t, err)
	s, err := Survey(Readings{Diameters: d})
	require.NoError(t, err)
	assert.Less(t, s.Stations[0].Size.OutOfRound, 1e-12)
	assert.InDelta(t, 2e-5, c.LSCI(), 1e-8)
}

func TestInspectionRefuses(t *testing.T) {
	_, err := Inspect(Inspection{Diameters: finished(3, 3, 3), LeastDiameter: 3.1 * in, GreatestDiameter: 3 * in})
	assert.ErrorContains(t, err, "not less than the greatest")
	_, err = Inspect(Inspection{LeastDiameter: 3 * in, GreatestDiameter: 3.1 * in})
	assert.ErrorContains(t, err, "no readings")
	_, err = OutOfRound(3*in, 3.1*in)
	assert.ErrorContains(t, err, "exchanged")
}

func TestVoids(t *testing.T) {
	f := Finished{Diameter: 0.1, Length: 0.2, LoadClock: 0, LoadWidth: math.Pi / 2, Edge: 0.01}
	voids := []Void{
		{Clock: math.Pi, Z: 0.1, Along: 0.01, Round: 0.02},              // opposite the load
		{Clock: 2*math.Pi - 0.1, Z: 0.1, Along: 0.01, Round: 0.01},      // in the loaded zone, over 12 o'clock
		{Clock: math.Pi / 4, Z: 0.1, Along: 0.02, Round: 0.02},          // half in
		{Clock: math.Pi, Z: 0.012, Along: 0.01, Round: 0.005},           // at the near edge
		{Clock: math.Pi, Z: 0.2 - 0.0025, Along: 0.005, Round: 0.00001}, // at the far face
	}
	c, err := CleanUp(f, voids)
	require.NoError(t, err)
	lost := 0.0002 + 0.0001 + 0.0004 + 0.00005 + 5e-8
	assert.InDelta(t, 1-lost/(math.Pi*0.1*0.2), c.Share, 1e-9)
	assert.Equal(t, []int{1, 2}, c.Loaded)
	assert.InDelta(t, 1-(0.0001+0.0002)/(math.Pi/4*0.1*0.2), c.LoadedShare, 1e-9)
	assert.Equal(t, []int{3, 4}, c.AtEdge)
	assert.Equal(t, 2, c.Largest)

	sound, err := CleanUp(f, nil)
	require.NoError(t, err)
	assert.Equal(t, 1.0, sound.Share)
	assert.Equal(t, -1, sound.Largest)
	for _, v := range []Void{{Z: 0.1, Along: 0.3, Round: 0.01}, {Z: 0.1, Along: 0.01, Round: 0.4}, {Z: math.NaN(), Along: 0.01, Round: 0.01}} {
		_, err := CleanUp(f, []Void{v})
		assert.Error(t, err)
	}
	_, err = CleanUp(f, []Void{{Z: 0.1, Along: 0.2, Round: 0.3}, {Z: 0.1, Along: 0.2, Round: 0.3}})
	assert.ErrorContains(t, err, "larger than the surface")
}
