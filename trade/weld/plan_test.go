package weld

import (
	"encoding/json"
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// linkEye is an invented link: an earlier repair left its eye 1/8 in off towards
// 2 o'clock at the near face and nearly right at the far one.
var linkEye = struct {
	near, far bore.XY
	r, length float64
}{bore.Polar(math.Pi/3, 0.125*inch), bore.Polar(math.Pi/3, 0.015*inch), 1.52 * inch, 6 * inch}

// sweep reads the eye from a bar that lies along axis.
func sweep(axis bore.Line) trade.Survey {
	var out trade.Survey
	old := bore.LineThrough(linkEye.near, linkEye.far, linkEye.length)
	for _, z := range []float64{0.5 * inch, 3 * inch, 5.5 * inch} {
		e := old.At(z).Sub(axis.At(z))
		for i := range 24 {
			clock := float64(i) * math.Pi / 12
			sin, cos := math.Sincos(clock)
			along, across := e.X*sin+e.Y*cos, e.X*cos-e.Y*sin
			wear := 0.004 * inch * math.Cos(clock-math.Pi) // the pin has worn it downwards
			r := linkEye.r + 0.002*inch*math.Cos(2*clock)
			out = append(out, trade.Point{Station: z, Clock: clock, U: 0.0005 * inch,
				Read: along + math.Sqrt(r*r-across*across) + wear - 1.5*inch})
		}
	}
	return out
}

func surveyed(t testing.TB, axis bore.Line) (*bore.Surveyed, *bore.Surface) {
	s, err := bore.Survey(bore.Readings{Sweeps: sweep(axis), SetRadius: 1.5 * inch, Length: linkEye.length})
	require.NoError(t, err)
	wall, err := s.Surface()
	require.NoError(t, err)
	return s, wall
}

func linkJob(wall *bore.Surface) Job {
	return Job{Surface: wall, Length: linkEye.length, Finish: 3 * inch, Truing: 3.06 * inch, Allowance: 0.03 * inch,
		Layer: 0.09 * inch, Layers: 1, Boss: 5 * inch, LeastWall: 0.75 * inch, LeastWeld: 0.06 * inch, U: 0.002 * inch}
}

func TestTheLinkIsCaughtBeforeTheFirstBead(t *testing.T) {
	_, wall := surveyed(t, bore.Line{})
	p, err := MakePlan(linkJob(wall))
	require.NoError(t, err)
	require.False(t, p.CleansUp)
	assert.False(t, p.TooClose)

	// Worst at 2 o'clock on the near face: 1.52 + 0.125 to cover, less 0.09.
	assert.InDelta(t, math.Pi/3, p.LeastStock.Clock, 10*math.Pi/180)
	assert.Zero(t, p.LeastStock.Z)
	assert.InDelta(t, (1.5-(1.645-0.09))*inch, p.LeastStock.Value, 0.006*inch)
	require.Len(t, p.Short, 1)
	a := p.Short[0]
	assert.True(t, a.Covers(math.Pi/3, 0.01*inch))
	assert.False(t, a.Covers(math.Pi/3+math.Pi, 0.01*inch), "the far wall has stock")
	assert.False(t, a.Covers(math.Pi/3, 6*inch), "so has the far face")
	assert.InDelta(t, 0.085*inch, a.Most.Value, 0.007*inch)
	assert.Less(t, p.Share, 1.0)
	assert.Less(t, p.ShareFull, p.Share)
	assert.Equal(t, 2, p.LayersEnough)
	assert.Contains(t, p.Text(units.InchShop), "It will not clean up. The worst place is at 2 o'clock, 0 in deep")
	assert.NotEmpty(t, p.Steps())

	done, err := ApplyHandWeld(p)
	require.NoError(t, err)
	assert.True(t, done.CleansUp)
	assert.Empty(t, done.Short)
	assert.Empty(t, done.HandWeld)
	assert.Equal(t, 1.0, done.ShareFull)
	assert.Greater(t, done.Deposit.Volume, p.Deposit.Volume)
	assert.Less(t, done.Deposit.Volume, 2*p.Deposit.Volume)

	fine := done.Job // a finer look finds nothing that the first grid missed
	fine.Clocks, fine.Rows = 720, 200
	close, err := MakePlan(fine)
	require.NoError(t, err)
	assert.GreaterOrEqual(t, close.LeastStock.Value, fine.Allowance)

	enough := linkJob(wall)
	enough.Layers = p.LayersEnough
	all, err := MakePlan(enough)
	require.NoError(t, err)
	assert.True(t, all.CleansUp, "the layers said to be enough are")
}

// TestTheWrongDatumIsCaught: set up on the old bore itself everything looks well;
// the features around it say otherwise, and on their centre it does not clean up.
func TestTheWrongDatumIsCaught(t *testing.T) {
	old := bore.LineThrough(linkEye.near, linkEye.far, linkEye.length)
	s, wall := surveyed(t, old)
	onOld, err := MakePlan(linkJob(wall))
	require.NoError(t, err)
	assert.True(t, onOld.CleansUp, "that is the trap")
	assert.Less(t, s.Near().Size, 0.006*inch)

	// The other features, measured from the same bar.
	away := bore.XY{}.Sub(linkEye.near)
	c, err := bore.Compare([]bore.Candidate{
		{Feature: bore.WornBore, Centre: s.Near().XY, U: 0.001 * inch},
		{Feature: bore.OutsideOfBoss, Centre: away.Add(bore.XY{X: 0.004 * inch, Y: -0.003 * inch}), U: 0.008 * inch},
		{Feature: bore.UntouchedShoulder, Centre: away.Add(bore.XY{X: -0.001 * inch, Y: 0.002 * inch}), U: 0.003 * inch},
	})
	require.NoError(t, err)
	assert.Equal(t, bore.OddOneOut, c.Verdict)
	assert.True(t, c.EarlierRepair)
	assert.False(t, c.Trusts(0))

	right := linkJob(wall)
	right.Axis = bore.LineThrough(c.Centre, bore.XY{}.Sub(linkEye.far), linkEye.length)
	right.BossCentre = c.Centre
	onTrue, err := MakePlan(right)
	require.NoError(t, err)
	assert.False(t, onTrue.CleansUp)
	assert.InDelta(t, math.Pi/3, onTrue.LeastStock.Clock, 10*math.Pi/180)

	// The same eye surveyed from the true axis gives the same stock.
	_, direct := surveyed(t, bore.Line{})
	same, err := MakePlan(linkJob(direct))
	require.NoError(t, err)
	assert.InDelta(t, same.LeastStock.Value, onTrue.LeastStock.Value, 0.003*inch)
}

func TestTruingOptions(t *testing.T) {
	_, wall := surveyed(t, bore.Line{})
	p, err := MakePlan(linkJob(wall))
	require.NoError(t, err)
	require.Len(t, p.Truing, 3)
	now, better, all := p.Truing[0], p.Truing[1], p.Truing[2]
	assert.Equal(t, AsPlanned, now.Name)
	assert.InDelta(t, 0.03*inch, now.ThinnestWeld, 1e-9)
	assert.False(t, now.FairWeld)
	assert.InDelta(t, 3.12*inch, better.Diameter, 1e-9)
	assert.InDelta(t, 0.06*inch, better.ThinnestWeld, 1e-9)
	assert.True(t, better.FairWeld && better.KeepsWall)
	assert.False(t, now.TruesUp)
	assert.True(t, all.TruesUp)
	assert.Greater(t, all.ThinnestWeld, 0.1*inch)
	assert.InDelta(t, 2.5*inch-all.Diameter/2, all.Wall, 1e-9)
	assert.Contains(t, p.Text(units.InchShop), "A truing bore of 3.12 in would leave 0.06 in everywhere")

	thin := linkJob(wall)
	thin.Boss, thin.LeastWeld = 3.9*inch, 0.25*inch
	thin.LeastWall = 0.25 * inch
	q, err := MakePlan(thin)
	require.NoError(t, err)
	assert.False(t, q.Truing[1].KeepsWall)
	assert.Contains(t, q.Text(units.InchShop), "but it eats the wall down to 0.2 in")
}

type volumes struct {
	Volumes []struct {
		RNew      float64 `json:"R_new"`
		R0        float64 `json:"r_old_0"`
		RL        float64 `json:"r_old_L"`
		E0        float64 `json:"e_0"`
		EL        float64 `json:"e_L"`
		L, Volume float64
	}
}

// TestTruedOffIsTheLune: the grid's volume of the truing cut is the lune volume
// worked out elsewhere (V1, V2, V4, V6), within the error the plan states.
func TestTruedOffIsTheLune(t *testing.T) {
	text, err := os.ReadFile("testdata/geometry_expected.json")
	require.NoError(t, err)
	var want volumes
	require.NoError(t, json.Unmarshal(text, &want))
	require.Len(t, want.Volumes, 4)
	for _, v := range want.Volumes {
		k := inch
		if v.RNew > 10 {
			k = mm
		}
		wall, err := bore.SurfaceOf(bore.Section{Z: 0, Centre: bore.XY{X: v.E0 * k}, R: v.R0 * k}, bore.Section{Z: v.L * k, Centre: bore.XY{X: v.EL * k}, R: v.RL * k})
		require.NoError(t, err)
		p, err := MakePlan(Job{Surface: wall, Length: v.L * k, Finish: 2 * v.RNew * k, Truing: 2 * v.RNew * k, Layer: 1 * mm, Layers: 2, Clocks: 360, Rows: 100})
		require.NoError(t, err)
		got := p.TruedOff.Volume / (k * k * k)
		assert.InEpsilon(t, v.Volume, got, 2e-4)
		assert.LessOrEqual(t, math.Abs(got-v.Volume), 1.5*p.TruedOff.Error/(k*k*k)+1e-9*v.Volume)
		lune, err := bore.LuneVolume(bore.TaperingLune{WornNear: 2 * v.R0 * k, WornFar: 2 * v.RL * k, Finish: 2 * v.RNew * k,
			Near: bore.XY{X: v.E0 * k}, Far: bore.XY{X: v.EL * k}, Length: v.L * k})
		require.NoError(t, err)
		assert.InEpsilon(t, lune.Volume, p.TruedOff.Volume, 2e-4)
	}
}

func TestDepositOfAConcentricBore(t *testing.T) {
	// W-27: 3.25 to 2.75 in over 4 in.
	wall, err := bore.SurfaceOf(bore.Section{R: 1.6 * inch})
	require.NoError(t, err)
	p, err := MakePlan(Job{Surface: wall, Length: 4 * inch, Finish: 3 * inch, Truing: 3.25 * inch, Layer: 0.05 * inch, Layers: 5})
	require.NoError(t, err)
	assert.InDelta(t, 2.667, p.Deposit.Volume*SteelDensity/si(1, "lb"), 0.001)
	assert.True(t, p.CleansUp)
	assert.InDelta(t, 0.125*inch, p.LeastStock.Value, 1e-12)
}

func TestPlanRefuses(t *testing.T) {
	_, wall := surveyed(t, bore.Line{})
	for name, c := range map[string]struct {
		change func(j *Job)
		says   string
	}{
		"no survey":           {func(j *Job) { j.Surface = nil }, "survey the bore first"},
		"both build-ups":      {func(j *Job) { j.BuildUp = 0.005 }, "not both"},
		"boss too small":      {func(j *Job) { j.Boss = 2.9 * inch }, "no larger than the finish bore"},
		"truing out of boss":  {func(j *Job) { j.Truing = 5.1 * inch }, "as large as the boss"},
		"wall without a boss": {func(j *Job) { j.Boss = 0 }, "give the boss diameter"},
		"not a number":        {func(j *Job) { j.Finish = math.NaN() }, "finish diameter is not a number"},
		"no layer":            {func(j *Job) { j.Layer = 0 }, "build-up per layer"},
		"axis outside":        {func(j *Job) { j.Axis.X0 = 2 * inch }, "outside the worn bore"},
		"boss elsewhere":      {func(j *Job) { j.BossCentre.X = 3 * inch }, "outside the boss"},
		"bore welded shut":    {func(j *Job) { j.Layers, j.Layer = 60, 12*mm }, "close the bore"},
		"odd grid":            {func(j *Job) { j.Clocks = 25 }, "even number"},
		"bad patch":           {func(j *Job) { j.HandWeld = []Patch{{Window: Window{From: 9}}} }, "hand weld 1"},
		"forty layers":        {func(j *Job) { j.HandLayer, j.Layers, j.Finish = 0.2*mm, 0, 2.6*inch }, "more than 40 layers"},
	} {
		t.Run(name, func(t *testing.T) {
			j := linkJob(wall)
			c.change(&j)
			_, err := MakePlan(j)
			require.Error(t, err)
			assert.Contains(t, err.Error(), c.says)
		})
	}
}

func TestTooCloseToCall(t *testing.T) {
	wall, err := bore.SurfaceOf(bore.Section{R: 0.04})
	require.NoError(t, err)
	p, err := MakePlan(Job{Surface: wall, Length: 0.1, Finish: 0.08, Allowance: 0.001, Layer: 0.0011, Layers: 1, U: 0.0002})
	require.NoError(t, err)
	assert.True(t, p.CleansUp)
	assert.True(t, p.TooClose)
	assert.Contains(t, p.Text(units.MetricShop), "too close to call: the stock is known to 0.4 mm only")
}

// BenchmarkSurveyToPlan: 3 stations of 24 readings, survey to weld plan.
func BenchmarkSurveyToPlan(b *testing.B) {
	readings := bore.Readings{Sweeps: sweep(bore.Line{}), SetRadius: 1.5 * inch, Length: linkEye.length}
	for b.Loop() {
		s, err := bore.Survey(readings)
		if err != nil {
			b.Fatal(err)
		}
		wall, err := s.Surface()
		if err != nil {
			b.Fatal(err)
		}
		if _, err := MakePlan(linkJob(wall)); err != nil {
			b.Fatal(err)
		}
	}
}
