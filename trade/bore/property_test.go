package bore

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gudgeon/trade"
)

// anyBore draws a bore, a bit off, crooked, oval and rough.
func anyBore(t *rapid.T) (made, trade.Survey) {
	small := func(name string, lim float64) float64 { return rapid.Float64Range(-lim, lim).Draw(t, name) }
	m := made{
		line: Line{small("x0", 3e-3), small("y0", 3e-3), small("mx", 0.01), small("my", 0.01)},
		r:    rapid.Float64Range(0.02, 0.2).Draw(t, "r"), oval: small("oval", 1e-4), noise: 2e-5,
		places: rapid.IntRange(8, 30).Draw(t, "places"), stations: []float64{0.01, 0.08, 0.15},
	}
	return m, m.sweep(seeded(rapid.Uint64().Draw(t, "seed")))
}

func surveyed(t *rapid.T, s trade.Survey) *Surveyed {
	out, err := Survey(Readings{Sweeps: s, Length: 0.16})
	require.NoError(t, err)
	return out
}

func TestTurningTheClockTurnsTheAnswer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := anyBore(t)
		turn := rapid.Float64Range(0, 2*math.Pi).Draw(t, "turn")
		turned := append(trade.Survey(nil), s...)
		for i := range turned {
			turned[i].Clock += turn
		}
		a, b := surveyed(t, s), surveyed(t, turned)
		want := Polar(a.Far().Clock+turn, a.Far().Size)
		assert.InDelta(t, want.X, b.Far().X, 1e-9)
		assert.InDelta(t, want.Y, b.Far().Y, 1e-9)
		assert.InDelta(t, a.Far().U, b.Far().U, 1e-9)
		assert.InDelta(t, a.Stations[1].Round.MZCI.Width(), b.Stations[1].Round.MZCI.Width(), 1e-9)
		assert.InDelta(t, a.Cylinder.R, b.Cylinder.R, 1e-9)
		assert.Len(t, b.Outliers, len(a.Outliers))
	})
}

func TestMirroringMirrorsTheAnswer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := anyBore(t)
		other := append(trade.Survey(nil), s...)
		for i := range other {
			other[i].Clock = -other[i].Clock
		}
		a, b := surveyed(t, s), surveyed(t, other)
		assert.InDelta(t, -a.Near().X, b.Near().X, 1e-9)
		assert.InDelta(t, a.Near().Y, b.Near().Y, 1e-9)
		assert.InDelta(t, -a.Cylinder.MX, b.Cylinder.MX, 1e-9)
		assert.InDelta(t, a.GreatestRadius.Radius, b.GreatestRadius.Radius, 1e-9)
	})
}

func TestTheOrderOfTheReadingsDoesNotMatter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := anyBore(t)
		mixed := rapid.Permutation(s).Draw(t, "order")
		a, b := surveyed(t, s), surveyed(t, mixed)
		assert.InDelta(t, a.Near().Size, b.Near().Size, 1e-12)
		assert.InDelta(t, a.Axis.Tilt().U, b.Axis.Tilt().U, 1e-12)
		assert.InDelta(t, a.Stations[2].Round.LSCI, b.Stations[2].Round.LSCI, 1e-12)
	})
}

func TestAnyUnitOfLengthGivesTheSameCircle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := anyBore(t)
		k := rapid.Float64Range(1e-3, 1e5).Draw(t, "unit")
		var p, q []XY
		for _, r := range s[:len(s)/3] {
			p = append(p, Polar(r.Clock, r.Read))
			q = append(q, Polar(r.Clock, r.Read).Times(k))
		}
		a, err := FitCircle(p, nil)
		require.NoError(t, err)
		b, err := FitCircle(q, nil)
		require.NoError(t, err)
		assert.InDelta(t, a.Centre.X, b.Centre.X/k, 1e-12)
		assert.InDelta(t, a.UR, b.UR/k, 1e-12)
	})
}

// TestNoCircleIsBetter: the reference circles keep their promise against any
// other centre near them.
func TestNoCircleIsBetter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := anyBore(t)
		var p []XY
		for _, r := range s[:len(s)/3] {
			p = append(p, Polar(r.Clock, r.Read))
		}
		c, err := FitCircle(p, nil)
		require.NoError(t, err)
		r, err := RoundnessOf(p, &c, 0)
		require.NoError(t, err)
		require.True(t, r.MZCI.Valid && r.MICI.Valid && r.MCCI.Valid)
		assert.LessOrEqual(t, r.MZCI.Width(), r.LSCI+1e-12)
		step := Polar(rapid.Float64Range(0, 7).Draw(t, "way"), rapid.Float64Range(1e-9, 2e-4).Draw(t, "far"))
		_, _, sumSq := distances(p, c.Centre.Add(step))
		assert.GreaterOrEqual(t, sumSq, c.SumSq*(1-1e-9))
		low, high, _ := distances(p, r.MZCI.Centre.Add(step))
		assert.GreaterOrEqual(t, high-low, r.MZCI.Width()-1e-12)
		low, _, _ = distances(p, r.MICI.Centre.Add(step))
		assert.LessOrEqual(t, low, r.MICI.Inner+1e-12)
		_, high, _ = distances(p, r.MCCI.Centre.Add(step))
		assert.GreaterOrEqual(t, high, r.MCCI.Outer-1e-12)
	})
}

func distances(p []XY, c XY) (low, high, sumSq float64) {
	low = math.Inf(1)
	mean := 0.0
	for _, q := range p {
		d := q.Sub(c).Len()
		low, high = min(low, d), max(high, d)
		mean += d / float64(len(p))
	}
	for _, q := range p {
		e := q.Sub(c).Len() - mean
		sumSq += e * e
	}
	return low, high, sumSq
}

func TestTheWallGoesThroughTheReadings(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := anyBore(t)
		out := surveyed(t, s)
		wall, err := out.Surface()
		require.NoError(t, err)
		i := rapid.IntRange(0, len(s)-1).Draw(t, "reading")
		row := make([]float64, 1)
		require.NoError(t, wall.Row(Line{}, s[i].Station, Rays([]float64{s[i].Clock}), row))
		assert.InDelta(t, s[i].Read, row[0], 2e-9)
	})
}

// TestTheWallIsSeenAlikeFromAnyAxis: a point found from one axis is found again
// from another.
func TestTheWallIsSeenAlikeFromAnyAxis(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		_, s := anyBore(t)
		wall, err := surveyed(t, s).Surface()
		require.NoError(t, err)
		z := rapid.Float64Range(0, 0.16).Draw(t, "z")
		clock := rapid.Float64Range(0, 2*math.Pi).Draw(t, "clock")
		other := Line{X0: rapid.Float64Range(-2e-3, 2e-3).Draw(t, "ax"), Y0: rapid.Float64Range(-2e-3, 2e-3).Draw(t, "ay")}
		row := make([]float64, 1)
		require.NoError(t, wall.Row(Line{}, z, Rays([]float64{clock}), row))
		from := Polar(clock, row[0]).Sub(other.At(z))
		require.NoError(t, wall.Row(other, z, Rays([]float64{from.Clock()}), row))
		assert.InDelta(t, from.Len(), row[0], 1e-8)
	})
}

func TestLuneVolumeTurnsAndAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := func(name string) float64 { return rapid.Float64Range(0.05, 0.1).Draw(t, name) }
		e := func(name string) XY {
			return Polar(rapid.Float64Range(0, 7).Draw(t, name+" way"), rapid.Float64Range(0, 0.02).Draw(t, name))
		}
		l := TaperingLune{WornNear: d("near"), WornFar: d("far"), Finish: d("finish"), Near: e("e near"), Far: e("e far"), Length: 0.2}
		whole, err := LuneVolume(l)
		require.NoError(t, err)
		a, b := l, l
		a.Length, b.Length = 0.1, 0.1
		a.WornFar = (l.WornNear + l.WornFar) / 2
		b.WornNear = a.WornFar
		a.Far = l.Near.Add(l.Far).Times(0.5)
		b.Near = a.Far
		va, err := LuneVolume(a)
		require.NoError(t, err)
		vb, err := LuneVolume(b)
		require.NoError(t, err)
		assert.InDelta(t, whole.Volume, va.Volume+vb.Volume, whole.Error+va.Error+vb.Error+1e-18)
		turned := l
		turned.Near, turned.Far = XY{l.Near.Y, -l.Near.X}, XY{l.Far.Y, -l.Far.X}
		vt, err := LuneVolume(turned)
		require.NoError(t, err)
		assert.InDelta(t, whole.Volume, vt.Volume, 1e-9*whole.Volume+1e-18)
	})
}
