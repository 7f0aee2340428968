package weld

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gudgeon/trade/bore"
)

// TestStockIsThatOfTwoCircles: before any weld the plan agrees with the closed form.
func TestStockIsThatOfTwoCircles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(0.02, 0.1).Draw(t, "r")
		e := rapid.Float64Range(0, 0.005).Draw(t, "e")
		finish := 2*r + rapid.Float64Range(-0.01, 0.02).Draw(t, "finish")
		clock := float64(rapid.IntRange(0, 71).Draw(t, "clock")) * 5 * math.Pi / 180
		wall, err := bore.SurfaceOf(bore.Section{R: r, Centre: bore.Polar(clock, e)})
		require.NoError(t, err)
		p, err := MakePlan(Job{Surface: wall, Length: 0.1, Finish: finish, Layer: mm})
		require.NoError(t, err)
		want, err := bore.EccentricStock(2*r, finish, e)
		require.NoError(t, err)
		assert.InDelta(t, want, p.LeastStock.Value, 1e-12)
		need, err := ThicknessNeeded(2*r, e, 0, finish, 0)
		require.NoError(t, err)
		assert.InDelta(t, need, p.MostNeeded.Value, p.GridError+1e-12)
		assert.GreaterOrEqual(t, p.MostNeeded.Value, need-1e-12)
	})
}

// anyJob draws a plan for a bore that is off, crooked, conical.
func anyJob(t *rapid.T) Job {
	xy := func(name string) bore.XY {
		return bore.Polar(rapid.Float64Range(0, 2*math.Pi).Draw(t, name+" way"), rapid.Float64Range(0, 0.004).Draw(t, name))
	}
	r := func(name string) float64 { return rapid.Float64Range(0.038, 0.041).Draw(t, name) }
	wall, err := bore.SurfaceOf(bore.Section{Z: 0.01, Centre: xy("near"), R: r("r near")}, bore.Section{Z: 0.14, Centre: xy("far"), R: r("r far")})
	require.NoError(t, err)
	return Job{Surface: wall, Length: 0.15, Finish: 0.076, Truing: rapid.Float64Range(0.074, 0.082).Draw(t, "truing"),
		Allowance: rapid.Float64Range(0, 0.002).Draw(t, "allowance"), Layer: rapid.Float64Range(0.001, 0.004).Draw(t, "layer"),
		Layers: rapid.IntRange(0, 3).Draw(t, "layers"), HandLayer: rapid.Float64Range(0.001, 0.004).Draw(t, "hand layer")}
}

func planned(t *rapid.T, j Job) *Plan {
	p, err := MakePlan(j)
	require.NoError(t, err)
	return p
}

func TestTheHandWeldListAlwaysCleansUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := planned(t, anyJob(t))
		done, err := ApplyHandWeld(p)
		require.NoError(t, err)
		assert.True(t, done.CleansUp)
		assert.Empty(t, done.HandWeld)
		assert.Equal(t, p.CleansUp, len(p.HandWeld) == 0)
		assert.Equal(t, p.CleansUp, len(p.Short) == 0)
		fine := done.Job
		fine.Clocks, fine.Rows = 300, 60
		assert.GreaterOrEqual(t, planned(t, fine).LeastStock.Value, fine.Allowance-1e-9)
	})
}

func TestMoreWeldNeverMeansLessStock(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := anyJob(t)
		a := planned(t, j)
		j.Layers++
		b := planned(t, j)
		j.HandWeld = []Patch{{Window: Window{From: 1, To: 0.5, DepthFrom: 0.02, DepthTo: 0.1}, Thickness: 0.001}}
		c := planned(t, j)
		for i := range a.Grid.Stock {
			require.GreaterOrEqual(t, b.Grid.Stock[i], a.Grid.Stock[i])
			require.GreaterOrEqual(t, c.Grid.Stock[i], b.Grid.Stock[i])
		}
		assert.GreaterOrEqual(t, b.Share, a.Share)
		assert.GreaterOrEqual(t, c.Deposit.Volume, b.Deposit.Volume)
		assert.Equal(t, a.LayersEnough, b.LayersEnough, "what is needed does not depend on what is planned")
	})
}

// TestTurnedAndMirrored: the physics do not care where 12 o'clock is.
func TestTurnedAndMirrored(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		near := bore.Polar(rapid.Float64Range(0, 7).Draw(t, "way"), rapid.Float64Range(0, 0.004).Draw(t, "near"))
		far := bore.Polar(rapid.Float64Range(0, 7).Draw(t, "way far"), rapid.Float64Range(0, 0.004).Draw(t, "far"))
		turn := float64(rapid.IntRange(0, 71).Draw(t, "turn")) * 5 * math.Pi / 180
		plan := func(move func(bore.XY) bore.XY) *Plan {
			wall, err := bore.SurfaceOf(bore.Section{Centre: move(near), R: 0.039}, bore.Section{Z: 0.15, Centre: move(far), R: 0.040})
			require.NoError(t, err)
			return planned(t, Job{Surface: wall, Length: 0.15, Finish: 0.076, Truing: 0.077, Allowance: 0.001, Layer: 0.002, Layers: 1, Boss: 0.12})
		}
		a := plan(func(p bore.XY) bore.XY { return p })
		for _, b := range []*Plan{
			plan(func(p bore.XY) bore.XY { return bore.Polar(p.Clock()+turn, p.Len()) }),
			plan(func(p bore.XY) bore.XY { return bore.XY{X: -p.X, Y: p.Y} }),
		} {
			assert.InDelta(t, a.LeastStock.Value, b.LeastStock.Value, 1e-12)
			assert.InDelta(t, a.Deposit.Volume, b.Deposit.Volume, 1e-15)
			assert.InDelta(t, a.Wall.Value, b.Wall.Value, 1e-12)
			assert.Equal(t, a.LayersEnough, b.LayersEnough)
			assert.Equal(t, a.CleansUp, b.CleansUp)
			assert.Len(t, b.Short, len(a.Short))
		}
	})
}
