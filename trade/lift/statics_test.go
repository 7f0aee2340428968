package lift

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestLowEndIsAwayFromTheLug(t *testing.T) {
	r, err := Hang(Hanging{LugOffset: 0.1, LugHeight: 0.5, Length: 2})
	require.NoError(t, err)
	assert.Positive(t, r.Tilt, "lug towards A: A high, B low")
	assert.Positive(t, r.Drop)
	assert.InDelta(t, -0.1, r.Move, 1e-12, "move it back over the centre of gravity")
	assert.Len(t, r.Steps(), 3)
}

func TestMovedLugHangsAsWanted(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := Hanging{
			LugOffset: rapid.Float64Range(-2, 2).Draw(t, "offset"), LugHeight: rapid.Float64Range(0.01, 3).Draw(t, "height"),
			Length: rapid.Float64Range(0.1, 10).Draw(t, "length"), Wanted: rapid.Float64Range(-1, 1).Draw(t, "wanted"),
		}
		r, err := Hang(in)
		require.NoError(t, err)
		in.LugOffset += r.Move
		again, err := Hang(in)
		require.NoError(t, err)
		assert.InDelta(t, in.Wanted, again.Tilt, 1e-9)
		assert.InDelta(t, 0, again.Move, 1e-9)
	})
}

func drawTwoLegs(t *rapid.T) (TwoLegs, TwoLegsResult) {
	span := rapid.Float64Range(0.5, 5).Draw(t, "span")
	in := TwoLegs{
		Weight: rapid.Float64Range(10, 50000).Draw(t, "weight"), Span: span,
		LeftLength: span * rapid.Float64Range(0.7, 2).Draw(t, "left"), RightLength: span * rapid.Float64Range(0.7, 2).Draw(t, "right"),
		CentreFromLeft: span * rapid.Float64Range(0.2, 0.8).Draw(t, "centre"), CentreBelow: rapid.Float64Range(0.05, 2).Draw(t, "below"),
		RightAbove: span * rapid.Float64Range(-0.2, 0.2).Draw(t, "above"),
	}
	r, err := LoadTwoLegs(in)
	if err != nil {
		t.Skip(err)
	}
	return in, r
}

func TestTwoLegsAreInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in, r := drawTwoLegs(t)
		up := r.Left*math.Sin(r.LeftAngle) + r.Right*math.Sin(r.RightAngle)
		sideways := r.Left*math.Cos(r.LeftAngle) - r.Right*math.Cos(r.RightAngle)
		assert.InEpsilon(t, in.Weight, up, 1e-9)
		assert.InDelta(t, 0, sideways, in.Weight*1e-6)
		if r.LeftAngle+r.RightAngle < mostAngleSum {
			left, right, err := AngledLegs(in.Weight, r.LeftAngle, r.RightAngle)
			require.NoError(t, err)
			assert.InEpsilon(t, left, r.Left, 1e-6)
			assert.InEpsilon(t, right, r.Right, 1e-6)
		}
	})
}

func TestTwoLegsScaleAndMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in, r := drawTwoLegs(t)
		heavy := in
		heavy.Weight *= 2
		double, err := LoadTwoLegs(heavy)
		require.NoError(t, err)
		assert.InEpsilon(t, 2*r.Left, double.Left, 1e-12)

		mirror := TwoLegs{in.Weight, in.Span, in.RightLength, in.LeftLength, in.Span - in.CentreFromLeft,
			in.CentreBelow + in.RightAbove, -in.RightAbove}
		m, err := LoadTwoLegs(mirror)
		require.NoError(t, err)
		assert.InEpsilon(t, r.Left, m.Right, 1e-9)
		assert.InEpsilon(t, r.Right, m.Left, 1e-9)
		assert.InDelta(t, -r.Tilt, m.Tilt, 1e-9)
	})
}

func TestTwoLevelLegsAreTheSimpleRule(t *testing.T) {
	r, err := LoadTwoLegs(TwoLegs{1000, 2, 2, 2, 1, 0.5, 0})
	require.NoError(t, err)
	want, err := LegLoad(1000, 2, 60*degree)
	require.NoError(t, err)
	assert.InDelta(t, want, r.Left, 1e-9)
	assert.InDelta(t, want, r.Right, 1e-9)
	assert.InDelta(t, 0, r.Tilt, 1e-12)
	assert.InDelta(t, math.Sqrt(3)+0.5, r.HookAbove, 1e-12)
	assert.NotEmpty(t, r.Steps())

	// Heavy to the right: the right end sinks and its leg carries more.
	r, err = LoadTwoLegs(TwoLegs{1000, 2, 2, 2, 1.2, 0.5, 0})
	require.NoError(t, err)
	assert.Positive(t, r.Tilt)
	assert.Greater(t, r.Right, r.Left)
}

func TestFourLegsBoundEveryBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := FourLegs{
			Weight: 1000, Length: rapid.Float64Range(1, 4).Draw(t, "length"), Width: rapid.Float64Range(1, 4).Draw(t, "width"),
			Height: rapid.Float64Range(4, 8).Draw(t, "height"),
		}
		u, v := rapid.Float64Range(0.05, 0.95).Draw(t, "u"), rapid.Float64Range(0.05, 0.95).Draw(t, "v")
		in.CentreAlong, in.CentreAcross = u*in.Length, v*in.Width
		r, err := LoadFourLegs(in)
		require.NoError(t, err)
		// Every way to share the weight: the even share plus s on one diagonal, less s on the other.
		even := [4]float64{(1 - u) * (1 - v), u * (1 - v), u * v, (1 - u) * v}
		worst := 0.0
		for s := -1.0; s <= 1; s += 1e-3 {
			corner := [4]float64{even[0] + s, even[1] - s, even[2] + s, even[3] - s}
			if min(corner[0], corner[1], corner[2], corner[3]) < 0 {
				continue
			}
			worst = max(worst, corner[0], corner[1], corner[2], corner[3])
		}
		assert.LessOrEqual(t, 1000*worst, r.Vertical+1e-9)
		assert.InDelta(t, 1000*worst, r.Vertical, 1.1)
		assert.GreaterOrEqual(t, r.Vertical, 500-1e-9, "never less than counting two legs")
		assert.GreaterOrEqual(t, r.Load, r.Vertical)
		assert.LessOrEqual(t, r.Shortest, r.Longest)
	})
}

func TestCentreHeightUndoesATilt(t *testing.T) {
	// Place a centre of gravity, turn the part about its low support, and read
	// the scale under the raised end by moments of positions turned in the plane.
	rapid.Check(t, func(t *rapid.T) {
		weight, span := 2000.0, rapid.Float64Range(1, 6).Draw(t, "span")
		x, h := span*rapid.Float64Range(0.3, 0.7).Draw(t, "x"), rapid.Float64Range(0.2, 0.8).Draw(t, "h")
		r := rapid.Float64Range(0, 0.15).Draw(t, "r")
		rise := span * rapid.Float64Range(0.06, 0.25).Draw(t, "rise")
		sin, cos := math.Sincos(math.Asin(rise / span))
		raised := weight * (x*cos - (h-r)*sin) / (span * cos)
		if raised < 0 {
			t.Skip("would tip")
		}
		got, err := CentreHeight(Tilt{weight, weight * x / span, raised, span, rise, r})
		require.NoError(t, err)
		assert.InDelta(t, h, got, 1e-9)
	})
}

func TestHangsFindTheCentreAndItsUncertainty(t *testing.T) {
	points := [3][2]float64{{-1, 0.5}, {0.8, 0.9}, {0.1, -1}}
	const x, y, u = 0.2, 0.1, 0.002
	random := rand.New(rand.NewPCG(1, 2))
	lines := func(noise float64) []TrialHang {
		var hangs []TrialHang
		for _, p := range points {
			mx, my := p[0]+1.3*(x-p[0]), p[1]+1.3*(y-p[1])
			n := func() float64 { return noise * random.NormFloat64() }
			hangs = append(hangs, TrialHang{p[0] + n(), p[1] + n(), mx + n(), my + n()})
		}
		return hangs
	}
	exact, err := CentreFromHangs(lines(0), u)
	require.NoError(t, err)
	assert.InDelta(t, x, exact.X, 1e-12)
	assert.InDelta(t, y, exact.Y, 1e-12)
	assert.InDelta(t, 0, exact.Miss, 1e-12)

	const n = 20000
	var sx, sy float64
	for range n {
		got, err := CentreFromHangs(lines(u), u)
		require.NoError(t, err)
		sx += (got.X - x) * (got.X - x)
		sy += (got.Y - y) * (got.Y - y)
	}
	assert.InEpsilon(t, math.Sqrt(sx/n), exact.UX, 0.03, "spread of 20,000 noisy trials")
	assert.InEpsilon(t, math.Sqrt(sy/n), exact.UY, 0.03)
}

func TestThirdHangShowsABadLine(t *testing.T) {
	good := []TrialHang{{-1, 0, 1, 0}, {0, 1, 0, -1}, {-1, -1, 1, 1}}
	r, err := CentreFromHangs(good, 0.001)
	require.NoError(t, err)
	assert.InDelta(t, 0, r.Miss, 1e-12)
	good[2] = TrialHang{-1, -0.9, 1, 1.1}
	r, err = CentreFromHangs(good, 0.001)
	require.NoError(t, err)
	assert.Greater(t, r.Miss, 0.02)
	_, err = CentreFromHangs(good, math.NaN())
	assert.Error(t, err)
}

func TestScalesAndPiecesAgree(t *testing.T) {
	b, err := Centre([]Piece{{Weight: 300, Centre: [3]float64{0, 0, 0}}, {Weight: 500, Centre: [3]float64{2, 0, 0}}})
	require.NoError(t, err)
	s, err := CentreFromScales(Scales{300, 500, 2})
	require.NoError(t, err)
	assert.InDelta(t, b.Centre[0], s.FromFront, 1e-12)
	assert.InDelta(t, 2, s.FromFront+s.FromRear, 1e-12)
	assert.NotEmpty(t, s.Steps())
	_, err = Centre([]Piece{{Weight: math.NaN()}})
	assert.Error(t, err)
	_, err = Centre([]Piece{{Weight: 1, Centre: [3]float64{0, math.Inf(1), 0}}})
	assert.Error(t, err)
}

func TestHoleIsNegativeWeight(t *testing.T) {
	solid, err := BossWeight(0.2, 0, 0.1, 7850)
	require.NoError(t, err)
	bore, err := BossWeight(0.1, 0, 0.1, 7850)
	require.NoError(t, err)
	tube, err := BossWeight(0.2, 0.1, 0.1, 7850)
	require.NoError(t, err)
	b, err := Centre([]Piece{{Weight: solid}, {Weight: -bore}})
	require.NoError(t, err)
	assert.InDelta(t, tube, b.Weight, 1e-9)
	gusset, err := GussetWeight(0.3, 0.2, 0.01, 7850)
	require.NoError(t, err)
	plate, err := BlockWeight(0.3, 0.2, 0.01, 7850)
	require.NoError(t, err)
	assert.InDelta(t, plate/2, gusset, 1e-12)
}
