package truck

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestCapacityFallsWithDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		rating := rapid.Float64Range(100, 50000).Draw(t, "rating")
		c0 := rapid.Float64Range(0.3, 1.5).Draw(t, "c0")
		c := rapid.Float64Range(0.1, 6).Draw(t, "c")
		f := rapid.Float64Range(0, 1.5).Draw(t, "f")
		plain, err := CapacityAt(rating, c0, c)
		require.NoError(t, err)
		assert.LessOrEqual(t, plain, rating, "never above the plate")
		further, err := CapacityAt(rating, c0, c*1.1)
		require.NoError(t, err)
		assert.LessOrEqual(t, further, plain)
		axle, err := CapacityFromAxle(rating, c0, c, f)
		require.NoError(t, err)
		assert.LessOrEqual(t, axle, rating)
		assert.GreaterOrEqual(t, axle, plain*(1-1e-12), "the plain form errs to the safe side")
		same, err := CapacityFromAxle(rating, c0, c, 0)
		require.NoError(t, err)
		assert.InEpsilon(t, plain, same, 1e-12)
		if c > c0 {
			assert.InEpsilon(t, rating*(f+c0), axle*(f+c), 1e-12, "same tipping moment")
		}
	})
}

func TestCapacityIsContinuousAtThePlate(t *testing.T) {
	for _, work := range []func(c float64) (float64, error){
		func(c float64) (float64, error) { return CapacityAt(2000, 0.6, c) },
		func(c float64) (float64, error) { return CapacityFromAxle(2000, 0.6, c, 0.4) },
	} {
		below, err := work(0.6 * (1 - 1e-9))
		require.NoError(t, err)
		above, err := work(0.6 * (1 + 1e-9))
		require.NoError(t, err)
		assert.InEpsilon(t, below, above, 1e-8)
	}
}

func TestHangingPastTheTipsCostsCapacity(t *testing.T) {
	c, err := HungLoadCentre(48*inch, 6*inch)
	require.NoError(t, err)
	assert.InDelta(t, 54*inch, c, 1e-12)
	w, err := CapacityAt(5000, 24*inch, c)
	require.NoError(t, err)
	assert.InDelta(t, 5000*24/54., w, 1e-9)
}

func TestEngagement(t *testing.T) {
	long, err := Engagement(60*inch, 48*inch)
	require.NoError(t, err)
	assert.Equal(t, 1.0, long.Share, "forks past the load reach all of it, no more")
	assert.InDelta(t, 2./3, long.Use, 1e-12)
	short, err := Engagement(24*inch, 48*inch)
	require.NoError(t, err)
	assert.Greater(t, short.Use, 1.0)
}

func TestForkShare(t *testing.T) {
	even, err := ForkShare(Across{1000, 0.8, 0})
	require.NoError(t, err)
	assert.Equal(t, even.Heavier, even.Lighter)
	_, err = ForkShare(Across{1000, 0.8, 0.4})
	assert.ErrorContains(t, err, "not between the forks")
	rapid.Check(t, func(t *rapid.T) {
		in := Across{rapid.Float64Range(1, 9000).Draw(t, "load"), rapid.Float64Range(0.3, 2).Draw(t, "spread"), 0}
		in.Offset = in.Spread * rapid.Float64Range(0, 0.49).Draw(t, "offset")
		r, err := ForkShare(in)
		require.NoError(t, err)
		assert.InEpsilon(t, in.Load, r.Heavier+r.Lighter, 1e-12)
		// Moments about the heavier fork.
		assert.InDelta(t, in.Load*(in.Spread/2-in.Offset), r.Lighter*in.Spread, 1e-6)
		assert.GreaterOrEqual(t, r.Heavier, r.Lighter)
	})
}

func TestForkWear(t *testing.T) {
	fork := Fork{New: 0.04, Worn: 0.039, Angle: degree, Bow: 0.002, Blade: 1.1, TipsDiff: 0.01}
	r, err := ForkWear(fork)
	require.NoError(t, err)
	assert.Less(t, r.Use(), 1.0)
	for name, change := range map[string]func(*Fork){
		"thinner": func(f *Fork) { f.Worn *= 0.9 }, "bent": func(f *Fork) { f.Angle *= 4 },
		"bowed": func(f *Fork) { f.Bow *= 4 }, "tips": func(f *Fork) { f.TipsDiff *= 4 },
	} {
		worse := fork
		change(&worse)
		w, err := ForkWear(worse)
		require.NoError(t, err, name)
		assert.Greater(t, w.Use(), 1.0, name)
	}
	fork.Worn = fork.New * 1.05
	_, err = ForkWear(fork)
	assert.ErrorContains(t, err, "thicker than new")
	fork.Worn = fork.New * 1.01 // rolling tolerance
	r, err = ForkWear(fork)
	require.NoError(t, err)
	assert.Zero(t, r.Checks[ForkThickness].Use())
}

func TestLiftTable(t *testing.T) {
	centred := Table{Load: 2000, Rating: 2000, Weight: 500, PlatformHalf: 0.5, BaseHalf: 0.55}
	r, err := LiftTable(centred)
	require.NoError(t, err)
	assert.InDelta(t, 1, r.Use(), 1e-12, "full load in the middle uses all of every rating")
	assert.Equal(t, r.NearEnd, r.FarEnd)
	assert.Zero(t, r.Checks[TableTipping].Use())

	rapid.Check(t, func(t *rapid.T) {
		in := centred
		in.Load = rapid.Float64Range(10, 2000).Draw(t, "load")
		in.Offset = rapid.Float64Range(0, 2).Draw(t, "offset")
		r, err := LiftTable(in)
		require.NoError(t, err)
		assert.InDelta(t, in.Load, r.NearEnd+r.FarEnd, 1e-9)
		assert.InDelta(t, in.Load*in.Offset, (r.NearEnd-r.FarEnd)*in.PlatformHalf, 1e-6, "moments about the middle")
		further, heavier := in, in
		further.Offset += 0.05
		heavier.Load *= 1.1
		f, err := LiftTable(further)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, f.Use(), r.Use())
		h, err := LiftTable(heavier)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, h.Use(), r.Use())
		if in.Offset > in.PlatformHalf {
			assert.Greater(t, r.Use(), 1.0, "past the platform's support is always a stop")
			assert.Negative(t, r.FarEnd)
		}
	})

	tipping := Table{Load: 400, Rating: 4000, Weight: 100, PlatformHalf: 1, BaseHalf: 0.3, Offset: 0.5}
	r, err = LiftTable(tipping)
	require.NoError(t, err)
	assert.Equal(t, TableTipping, r.Governs)
	assert.InDelta(t, 1.5*400*0.2/(100*0.3), r.Use(), 1e-12)
	tipping.EndRating = 200
	e, err := LiftTable(tipping)
	require.NoError(t, err)
	assert.InDelta(t, 300./200, e.Checks[TableEnd].Use(), 1e-12)
}

func TestGrades(t *testing.T) {
	g, err := Grade(0.5, 10)
	require.NoError(t, err)
	a, err := GradeFromAngle(math.Atan(0.05))
	require.NoError(t, err)
	assert.InDelta(t, g, a, 1e-12)
	_, err = Grade(2, 1)
	assert.ErrorContains(t, err, "1 in 1")
}
