package bore

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

func TestOutliersAreNamedAndKept(t *testing.T) {
	m := tiltedBore
	m.noise, m.u = 0.3*thou1, 0.3*thou1
	sweep := m.sweep(seeded(5))
	clean, err := Survey(Readings{Sweeps: sweep})
	require.NoError(t, err)
	require.Empty(t, clean.Outliers)
	sweep[30].Read += 20 * thou1 // 3 in station, 3 o'clock
	sweep[31].Read += 18 * thou1 // its neighbour hides it from a simple test
	s, err := Survey(Readings{Sweeps: sweep})
	require.NoError(t, err)
	require.Len(t, s.Outliers, 2)
	found := map[int]Outlier{s.Outliers[0].Index: s.Outliers[0], s.Outliers[1].Index: s.Outliers[1]}
	require.Contains(t, found, 30)
	require.Contains(t, found, 31)
	assert.InDelta(t, 20*thou1, found[30].Off, 1.5*thou1)
	assert.InDelta(t, 3*in, found[30].Station, 1e-9)
	assert.InDelta(t, 90*deg, found[30].Clock, 1e-9)
	assert.Contains(t, found[30].Text(units.InchShop), "Reading 31, at 3 in and 3 o'clock, is 0.0")
	assert.Greater(t, s.Stations[1].Circle.Centre.Sub(clean.Stations[1].Circle.Centre).Len(), thou1, "it is still in the fit")

	again, err := Survey(Readings{Sweeps: sweep, LeaveOut: []int{30, 31}})
	require.NoError(t, err)
	assert.Empty(t, again.Outliers)
	assert.Less(t, again.Stations[1].Circle.Centre.Sub(clean.Stations[1].Circle.Centre).Len(), 0.2*thou1)
	assert.True(t, again.Stations[1].Readings[6].LeftOut)
}

func TestNoiseAloneIsSeldomAnOutlier(t *testing.T) {
	m := made{r: 1.5 * in, places: 12, stations: []float64{0, 3 * in}, noise: thou1}
	rng, named := seeded(11), 0
	for range 1000 {
		s, err := Survey(Readings{Sweeps: m.sweep(rng)})
		require.NoError(t, err)
		named += len(s.Outliers)
	}
	assert.Less(t, named, 60, "about one in a hundred stations by chance, some more for looking twice")
}

func TestRepeatsAreAveragedAndTheirSpreadTold(t *testing.T) {
	m := made{line: Line{X0: 0.01 * in}, r: 1.5 * in, places: 12, stations: []float64{0, 3 * in}}
	sweep := m.sweep(nil)
	up, down := sweep[4], sweep[4]
	up.Read += 2 * thou1
	down.Read -= 2 * thou1
	s, err := Survey(Readings{Sweeps: append(append(trade.Survey(nil), sweep...), up, down)})
	require.NoError(t, err)
	assert.Equal(t, 1, s.Repeats.Places)
	assert.Equal(t, 2, s.Repeats.DoF)
	assert.InDelta(t, 2*thou1, s.Repeats.Sigma, 1e-9) // √((2² + 2² + 0)/2)
	r := s.Stations[0].Readings[4]
	assert.Equal(t, 3, r.N)
	assert.InDelta(t, 4*thou1, r.Spread, 1e-12)
	assert.InDelta(t, sweep[4].Read, r.Radius, 1e-12)
}
