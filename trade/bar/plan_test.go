package bar

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// rough is a welded bore with 0.090 to 0.150 in of stock on radius.
func rough() PlanInput {
	return PlanInput{
		Finish: 4 * inch, LeastStock: 0.090 * inch, MostStock: 0.150 * inch, Length: 6 * inch,
		Stiffness: 200000 * lbf / inch, Work: works[3], Lead: 90 * degree, PushShare: 0.5,
		RoughFeed: 0.010 * ipr, RoughSpeed: 200 * sfpm, FineFeed: 0.004 * ipr, FineSpeed: 250 * sfpm,
		DepthLimit: 0.060 * inch, PowerLimit: 5 * 745.7, Truing: 0.010 * inch, Light: 0.0025 * inch, Tolerance: 0.001 * inch,
	}
}

func TestPlanOfARoughBore(t *testing.T) {
	r, err := Plan(rough())
	require.NoError(t, err)
	require.GreaterOrEqual(t, r.Count, 3)
	assert.Equal(t, TruingPass, r.Passes[r.Count-2].Kind)
	assert.Equal(t, LightPass, r.Passes[r.Count-1].Kind)
	for _, p := range r.Passes[:r.Count-2] {
		assert.Equal(t, RoughPass, p.Kind)
	}
	assert.InDelta(t, 4*inch, r.Passes[r.Count-1].Diameter, 1e-12)
	assert.NotEmpty(t, r.Steps())
}

// What each pass does to the bore is worked out here afresh, from the balance
// of bar and cut, without the code's bookkeeping.
func TestPlanAgreesWithTheBalanceOfForces(t *testing.T) {
	in := rough()
	r, err := Plan(in)
	require.NoError(t, err)
	heights := []float64{in.LeastStock, (in.LeastStock + in.MostStock) / 2, in.MostStock}
	for _, p := range r.Passes[:r.Count] {
		push, err := CutStiffness(in.Work, p.Feed, in.Lead, in.PushShare)
		require.NoError(t, err)
		tool := (in.Finish - p.Tool) / 2
		for i, h := range heights {
			if h <= tool {
				continue
			}
			// Bisect for the depth a at which the bar's push k·y, y = h-tool-a, is the cut's c·a.
			low, high := 0.0, h-tool
			for range 200 {
				a := (low + high) / 2
				if push*a < in.Stiffness*(h-tool-a) {
					low = a
				} else {
					high = a
				}
			}
			heights[i] = h - low
		}
		assert.InDelta(t, heights[2]-heights[0], p.OutOfRound, 1e-12)
	}
	assert.InDelta(t, r.OutOfRound, heights[2]-heights[0], 1e-12)
	assert.InDelta(t, 0, heights[2]+heights[0], 1e-12, "the mean comes to size")
}

func anyPlan(t *rapid.T) PlanInput {
	in := rough()
	in.LeastStock = rapid.Float64Range(0, 0.2).Draw(t, "least") * inch
	in.MostStock = in.LeastStock + rapid.Float64Range(0, 0.15).Draw(t, "variation")*inch
	in.Stiffness = math.Pow(10, rapid.Float64Range(6.3, 9).Draw(t, "stiffness"))
	in.RoughFeed = rapid.Float64Range(0.004, 0.02).Draw(t, "feed") * ipr
	in.DepthLimit = rapid.Float64Range(0.01, 0.15).Draw(t, "limit") * inch
	in.PowerLimit = rapid.Float64Range(500, 20000).Draw(t, "power")
	in.Tolerance = rapid.Float64Range(0.0005, 0.004).Draw(t, "tolerance") * inch
	in.Work = works[rapid.IntRange(0, len(works)-1).Draw(t, "work")]
	return in
}

func TestEveryPlanKeepsItsPromises(t *testing.T) {
	made := 0
	rapid.Check(t, func(t *rapid.T) {
		in := anyPlan(t)
		r, err := Plan(in)
		if err != nil {
			assert.Contains(t, err.Error(), "no plan")
			return
		}
		made++
		total, oval := 0.0, in.MostStock-in.LeastStock
		for _, p := range r.Passes[:r.Count] {
			assert.LessOrEqual(t, p.Most, in.DepthLimit+1e-9)
			assert.LessOrEqual(t, p.Power, in.PowerLimit*(1+1e-9))
			assert.LessOrEqual(t, p.Least, p.Most+1e-12)
			assert.LessOrEqual(t, p.OutOfRound, oval+1e-12, "no pass makes it less round")
			assert.Greater(t, p.Tool, p.Diameter-p.OutOfRound-1e-12, "the bar gives, so the tool stands wider than the bore at its smallest")
			assert.Greater(t, p.Time, 0.0)
			total, oval = total+p.Most, p.OutOfRound
		}
		truing, light := r.Passes[r.Count-2], r.Passes[r.Count-1]
		assert.GreaterOrEqual(t, truing.Least, in.Truing-1e-9)
		assert.GreaterOrEqual(t, light.Least, in.Light/2-1e-9)
		assert.LessOrEqual(t, 2*r.OutOfRound, in.Tolerance/2+1e-9)
		assert.InDelta(t, in.Finish, light.Diameter, 1e-12)
		assert.InDelta(t, in.MostStock-r.OutOfRound/2, total, 1e-9, "what was there most is cut away")
	})
	assert.Positive(t, made)
}

func TestStifferBarNeverNeedsMorePasses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyPlan(t)
		a, err := Plan(in)
		if err != nil {
			return
		}
		in.Stiffness = min(in.Stiffness*1.5, stiffnessRange.High)
		b, err := Plan(in)
		require.NoError(t, err)
		assert.LessOrEqual(t, b.Count, a.Count)
	})
}

func TestPlansThatCannotBeMade(t *testing.T) {
	cases := []struct {
		name   string
		change func(*PlanInput)
		says   string
	}{
		{"too little weld", func(in *PlanInput) { in.LeastStock = 0.010 * inch }, "will not clean up"},
		{"bar too soft", func(in *PlanInput) { in.Stiffness, in.LeastStock = 1e5, 0.04*inch }, "stiffer bar"},
		{"bar too soft for the tolerance", func(in *PlanInput) { in.Tolerance, in.Stiffness, in.LeastStock = 0.0001*inch, 6e5, 0.03*inch }, "stiffer bar"},
		{"depth limit under the truing depth", func(in *PlanInput) { in.DepthLimit = 0.008 * inch }, "depth limit"},
		{"too little power", func(in *PlanInput) { in.PowerLimit = 50 }, "the power allows"},
		{"stock swapped", func(in *PlanInput) { in.LeastStock, in.MostStock = 0.15*inch, 0.09*inch }, "stock where there is most"},
		{"light pass too fast", func(in *PlanInput) { in.FineSpeed, in.PowerLimit, in.RoughSpeed = 29, 600, 0.3 }, "slow it down"},
		{"more passes than a plan has", func(in *PlanInput) { in.LeastStock, in.MostStock, in.DepthLimit = 0.5*inch, 0.6*inch, 0.011*inch }, "passes"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			in := rough()
			c.change(&in)
			_, err := Plan(in)
			assert.ErrorContains(t, err, c.says)
		})
	}
}

func TestPlanTriesMorePassesWithoutAllocating(t *testing.T) {
	in := rough()
	in.Stiffness, in.LeastStock, in.MostStock = 4e5, 0.15*inch, 0.20*inch
	r, err := Plan(in)
	require.NoError(t, err)
	fewest := int(math.Ceil((in.MostStock - in.Light) / r.DepthLimit))
	require.Greater(t, r.Count, fewest+1, "the bar is soft enough to need passes beyond the depth limit")
	assert.Zero(t, testing.AllocsPerRun(20, func() { _, _ = Plan(in) }))
}
