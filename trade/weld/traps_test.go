package weld

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestTheCarbonEquivalentsAreNotMixed(t *testing.T) {
	c, err := SteelNamed("4140", MidRange)
	require.NoError(t, err)
	a, err := Advise(HeatJob{Steel: c, Category: CategoryB, Thickness: 2 * inch})
	require.NoError(t, err)
	assert.InDelta(t, 0.00781, a.CE, 1e-5)
	assert.InDelta(t, 0.008225, a.CESi, 1e-5, "W-3: the annex's formula has silicon in it")
	assert.Less(t, a.Pcm, a.CE)
	assert.Equal(t, Poor, a.Weldability)
	assert.Contains(t, a.Cautions, Hardenable)
	assert.Contains(t, a.Cautions, OutsideTable)
	assert.Equal(t, FollowProcedure, a.Cautions[0])
}

func TestPreheatBoundaries(t *testing.T) {
	at := func(c Category, thickness float64) float64 {
		v, err := Preheat(c, thickness)
		require.NoError(t, err)
		return v*9/5 - 459.67
	}
	assert.InDelta(t, 32, at(CategoryB, 0.75*inch), 1e-9, "3/4 in exactly is the first row")
	assert.InDelta(t, 32, at(CategoryB, 0.01905), 1e-9, "so is 19.05 mm")
	assert.InDelta(t, 50, at(CategoryB, 0.7501*inch), 1e-9)
	assert.InDelta(t, 50, at(CategoryB, 1.5*inch), 1e-9, "1-1/2 in exactly is the second")
	assert.InDelta(t, 150, at(CategoryB, 1.5001*inch), 1e-9)
	assert.InDelta(t, 50, at(CategoryB, 1*inch), 1e-9, "W-10: not 150")
}

func TestHeatInputIsNotThePostersSlip(t *testing.T) {
	// W-15: he typed 330 A and 15.4 in/min.
	slip, err := HeatInput(30, 330, 15.4*inch/60, 1)
	require.NoError(t, err)
	right, err := HeatInput(30, 300, 24*inch/93, 1)
	require.NoError(t, err)
	assert.InDelta(t, 38.5, slip*inch/1000, 0.1)
	assert.InDelta(t, 34.88, right*inch/1000, 0.01)
	half, err := HeatInput(30, 300, 24*inch/93, 0.5)
	require.NoError(t, err)
	assert.InDelta(t, right/2, half, 1e-6)
}

func TestTheOverlayRuleIsNotARing(t *testing.T) {
	// W-26: π·D·t is a rule for the outside; in a bore the weld is on the small
	// side of the old surface.
	rule := math.Pi * 6 * 0.25
	v, err := BoreBuildUp(6*inch, 5.5*inch, 1*inch)
	require.NoError(t, err)
	assert.InDelta(t, math.Pi*(6-0.25)*0.25, v/(inch*inch*inch), 1e-9)
	assert.InEpsilon(t, rule*(1-0.25/6), v/(inch*inch*inch), 1e-9)
}

func TestCautions(t *testing.T) {
	mild := Composition{C: .18 * pc, Mn: .75 * pc}
	plain, err := Advise(HeatJob{Steel: mild, Category: CategoryB, Thickness: inch})
	require.NoError(t, err)
	assert.Equal(t, []Caution{FollowProcedure, FireWatch, Fume}, plain.Cautions)
	all, err := Advise(HeatJob{Steel: mild, Category: CategoryA, Thickness: inch, Cast: true, Coated: true, Cavity: true, Hoses: true, Metal: 260})
	require.NoError(t, err)
	assert.Equal(t, []Caution{FollowProcedure, Hydrogen, OutsideTable, ColdMetal, ClosedCavity, Hoses, Galvanised, FireWatch, Fume}, all.Cautions)
	for _, c := range all.Cautions {
		assert.NotEmpty(t, c.String())
	}
}

func TestHeatRefuses(t *testing.T) {
	_, err := CarbonEquivalent(Composition{C: 0.405})
	assert.ErrorContains(t, err, "cast iron", "0.405 is a share of 40.5 %")
	_, err = Pcm(Composition{B: 0.001})
	assert.Error(t, err)
	_, err = CarbonEquivalent(Composition{Ni: math.NaN()})
	assert.ErrorContains(t, err, "nickel is not a number")
	_, err = SteelNamed("unobtainium", MidRange)
	assert.Error(t, err)
	_, err = SteelNamed("4140", 7)
	assert.Error(t, err)
	_, err = Preheat(9, inch)
	assert.Error(t, err)
	_, err = Advise(HeatJob{Thickness: inch, Metal: 20})
	assert.ErrorContains(t, err, "metal temperature")
	_, err = WeldabilityOf(0.4)
	assert.Error(t, err)
	_, err = DepositionEfficiency(2, 1)
	assert.ErrorContains(t, err, "weigh again")
	_, err = DepositionEfficiency(0, 0)
	assert.Error(t, err)
	_, err = BoreBuildUp(0.08, 0.09, 0.1)
	assert.ErrorContains(t, err, "exchanged")
	_, err = Process(99).Efficiency()
	assert.Error(t, err)
}

func TestMakeFiller(t *testing.T) {
	v, err := BoreBuildUp(3.25*inch, 2.75*inch, 4*inch)
	require.NoError(t, err)
	f, err := MakeFiller(FillerJob{Volume: v, Efficiency: 0.86, Rate: si(6, "lb_per_hour")})
	require.NoError(t, err)
	assert.InDelta(t, si(2.667, "lb"), f.Deposit, si(0.001, "lb"))
	assert.InDelta(t, f.Deposit/0.86, f.Used, 1e-12)
	assert.InDelta(t, 2.667/6, f.ArcTime/3600, 0.001)
	_, err = MakeFiller(FillerJob{Volume: v, Efficiency: 86, Rate: 0.001})
	assert.ErrorContains(t, err, "deposition efficiency")
}
