package lift

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
)

func TestFlatSlingsAreRefused(t *testing.T) {
	// S1 tabulates 15 and 5 degrees, S2 says not to use them.
	for _, angle := range []float64{5, 15, 29, 29.9} {
		_, err := LegLoad(1000, 2, angle*degree)
		assert.ErrorContains(t, err, "below 30 degrees", angle)
		_, err = SlingCapacity(1000, OneLeg, angle*degree, 0.75)
		assert.ErrorContains(t, err, "below 30 degrees", angle)
		_, _, err = AngledLegs(1000, angle*degree, 60*degree)
		assert.Error(t, err, angle)
	}
	a, err := LegAngle(1, 2)
	require.NoError(t, err, "30 degrees exactly, by way of an arcsine")
	assert.InDelta(t, 30*degree, a, 1e-12)
}

func TestChokerBelow45IsRefused(t *testing.T) {
	for _, hitch := range []Hitch{Choker, ChokerBridle} {
		_, err := SlingCapacity(1000, hitch, 44*degree, 0.75)
		assert.ErrorContains(t, err, "choker below 45", "S7")
	}
}

func TestSingleBasketIsNeverFourTimes(t *testing.T) {
	// S11: a training page multiplies the single inclined basket by 4.
	straight, err := SlingCapacity(1000, Basket, 90*degree, 0.75)
	require.NoError(t, err)
	assert.InDelta(t, 2000, straight, 1e-9)
	flat, err := SlingCapacity(1000, Basket, 45*degree, 0.75)
	require.NoError(t, err)
	assert.InDelta(t, 2000*math.Sqrt2/2, flat, 1e-9)
}

func TestNaturalRopeChokerStaysUnderItsTable(t *testing.T) {
	// S12 to S15, 29 CFR 1918 App. II Table 2: vertical and choker, lb.
	for _, row := range [][2]float64{{550, 250}, {1800, 900}, {6200, 3100}, {10500, 5200}} {
		c, err := SlingCapacity(row[0], Choker, 90*degree, 0.45)
		require.NoError(t, err)
		assert.LessOrEqual(t, c, row[1])
		assert.Greater(t, c, 0.85*row[1])
	}
}

func TestFartherLegCarriesLess(t *testing.T) {
	// S19: two exam pages say the farther point carries more.
	near, far, err := VerticalLegs(10000, 3, 6)
	require.NoError(t, err)
	assert.Greater(t, near, far)
}

func TestPlateLugIgnoresAStressPrintedAsALoad(t *testing.T) {
	// L13: the sheet prints a bearing stress of 15 ksi as a capacity of 15 kip,
	// and a shear area of 2.305 in² that its own inputs do not give.
	r, err := CheckPlateLug(lugSheet2())
	require.NoError(t, err)
	assert.Equal(t, LugBearing, r.Governs)
	assert.Less(t, r.Capacity*trade.StandardGravity/kip, 8.5)
	assert.Less(t, r.Checks[LugShear].Capacity/kip, 25.0)
}

func TestBearingGovernsBothPublishedLugs(t *testing.T) {
	r, err := CheckPlateLug(lugSheet())
	require.NoError(t, err)
	assert.Equal(t, LugBearing, r.Governs, "L11")

	// L5: the example needs D4 + L12 = 16 kip and passes by 1 %.
	a, err := CheckAISCLug(AISCLug{16 * kip / trade.StandardGravity, 0.5 * inch, 4.25 * inch, 2.25 * inch, 1.03 * inch, inch, 36 * ksi, 58 * ksi})
	require.NoError(t, err)
	assert.Equal(t, AISCBearing, a.Governs)
	assert.InDelta(t, 16/16.2, a.Use(), 0.0005)
}

func TestOlderLugExampleFailsItsShapeRule(t *testing.T) {
	// L6: with the full 1.63 in each side the older edition needs 4.26 in of
	// width and accepts 4.25. A plate wide enough for 1.63 in is needed.
	lug := AISCLug{1000, 0.5 * inch, 4.29 * inch, 2.25 * inch, 1.03 * inch, inch, 36 * ksi, 58 * ksi}
	r, err := CheckAISCLug(lug)
	require.NoError(t, err)
	assert.InDelta(t, 1.63*inch, r.Effective, 1e-9)
	assert.InDelta(t, 94.5, r.Nominal[AISCTension]/kip, 0.05, "L6, AISC Design Example D.7, older edition")
	assert.Greater(t, (2*r.Effective+lug.Pin)/(4.25*inch), 1.0)
}

func TestEyeboltKeepsTheLowerFigureAt45(t *testing.T) {
	// K7 says 30 % (465 lb of 1,550), K8 says 25 %. 90 degrees is never allowed.
	h, err := Eyebolt(100, 1550, 45*degree, true)
	require.NoError(t, err)
	assert.LessOrEqual(t, h.Capacity, 465.0)
	assert.InDelta(t, 0.25*1550, h.Capacity, 1e-9)
	for _, angle := range []float64{46, 60, 90} {
		_, err = Eyebolt(100, 1550, angle*degree, true)
		assert.Error(t, err, angle)
	}
	_, err = Eyebolt(100, 1550, 15*degree, false)
	assert.ErrorContains(t, err, "straight pull only", "K9")
}

func TestShackleFieldRuleStaysUnderOldTable(t *testing.T) {
	// K4, 29 CFR 1926.251 Table H-19 (removed 2011), tons, from memory.
	for _, row := range [][2]float64{{0.5, 1.4}, {0.625, 2.2}, {0.75, 3.2}, {0.875, 4.3}, {1, 5.6}, {1.125, 6.7},
		{1.25, 8.2}, {1.375, 10.0}, {1.5, 11.9}, {1.75, 16.2}, {2, 21.2}} {
		w, err := ShackleFieldRule(row[0] * inch)
		require.NoError(t, err)
		assert.Less(t, w/shortTon, row[1], "%v in", row[0])
	}
}

func TestShackleNeedsItsMark(t *testing.T) {
	_, err := Shackle(100, 0, 0, 0)
	assert.ErrorContains(t, err, "marked on the shackle", "K5: no mark, no use")
	_, err = Shackle(100, 1000, 91*degree, 0)
	assert.Error(t, err, "K6: over 90 degrees is not permitted")
	_, err = Shackle(100, 1000, 0, 121*degree)
	assert.Error(t, err)
}

func TestAluminiumIsNotTakenLighterThanItsTable(t *testing.T) {
	// G15: riggers' tables say 165 lb/ft³, handbooks 2700 kg/m³; keep the heavier.
	d, err := Density("aluminium")
	require.NoError(t, err)
	assert.GreaterOrEqual(t, d, 165*pound/(foot*foot*foot))
}

func TestFlatBarShopRuleIsTheLighter(t *testing.T) {
	// G10: the shop rule gives 13.33 lb/ft for 4 x 1 flat, 2 % too light.
	w, err := BlockWeight(foot, 4*inch, inch, 7850)
	require.NoError(t, err)
	assert.Greater(t, w/pound, 13.33)
}

func TestContradictionsAreRefused(t *testing.T) {
	bad := func(_ any, err error) func(string) {
		return func(why string) { t.Helper(); assert.Error(t, err, why) }
	}
	bad(LegLoad(1000, 1, 60*degree))("a single leg hangs straight")
	bad(LegLoad(1000, 2.5, 60*degree))("half a leg")
	bad(LegLoad(1000, 5, 60*degree))("five legs")
	bad(LegAngle(11, 10))("hook higher than the leg is long")
	bad(BossWeight(0.1, 0.1, 1, 7850))("no wall")
	bad(Centre(nil))("no pieces")
	bad(Centre([]Piece{{Weight: 1}, {Weight: -1}}))("hole as heavy as the solid")
	bad(CentreFromScales(Scales{0, 0, 1}))("nothing weighed")
	bad(CentreHeight(Tilt{100, 120, 50, 3, 1, 0}))("a scale above the weight")
	bad(CentreHeight(Tilt{100, 50, 60, 3, 1, 0}))("centre below the base")
	bad(Hang(Hanging{0.1, 0, 1, 0}))("lug at the centre of gravity")
	bad(LoadTwoLegs(TwoLegs{1000, 4, 1, 1, 2, 1, 0}))("legs too short")
	bad(LoadTwoLegs(TwoLegs{1000, 2, 3, 3, 5, 1, 0}))("centre outside the legs")
	bad(LoadTwoLegs(TwoLegs{1000, 2, 3, 3, 1, -0.1, 0}))("can roll over")
	bad(LoadTwoLegs(TwoLegs{1000, 2, 1.05, 1.05, 1, 1, 0}))("flat legs")
	bad(LoadFourLegs(FourLegs{1000, 2, 1, 3, 2, 0.5}))("centre on the edge")
	bad(CentreFromHangs([]TrialHang{{0, 0, 1, 1}}, 0))("one hang")
	bad(CentreFromHangs([]TrialHang{{0, 0, 1, 1}, {0.1, 0, 1.1, 1.02}}, 0))("lines nearly parallel")
	bad(CentreFromHangs([]TrialHang{{0, 0, 0, 0}, {1, 0, 1, 1}}, 0))("mark on the point")
	bad(Density("unobtainium"))("unknown material")
	bad(ElectrodeStrength("E55"))("unknown electrode")
	bad(ChainWearLimit("2 in"))("unlisted chain")
	bad(Category(7).Factor())("unknown category")
	bad(WeldStress(70*ksi, Basis(9)))("unknown basis")
	bad(ProofLoad(1, ProofKind(9)))("unknown proof")
	bad(TieDown(TieDowns{1000, 500, 0, 0}))("no ties")
	bad(TieDown(TieDowns{1000, 500, 1.5, 0}))("half a tie")
	bad(GroupWelds(nil))("no weld")
	bad(GroupWelds([]WeldLine{{0, 0, 0, 0}}))("no length")
	bad(CheckFillet(Fillet{1000, 0.006, 0.1, 1.5, false, 70 * ksi, WeldBTHB}))("half a run")
	bad(HookStress(Hook{1000, Section(5), 0.02, 0, 0.02, 0.03}))("unknown section")
	bad(HookStress(Hook{1000, Round, 0.02, 0, 0.005, 0.03}))("tight bend")
	bad(HookStress(Hook{1000, Rectangle, 0.02, 0, 0.02, 0.03}))("rectangle without width")
	bad(ClosedRing(Ring{1000, 0.02, 0.01}))("tight ring")

	lug := lugSheet()
	lug.Pin = lug.Hole * 1.01
	bad(CheckPlateLug(lug))("pin larger than hole")
	lug = lugSheet()
	lug.EndRadius = lug.Hole / 2
	bad(CheckPlateLug(lug))("end radius cuts the hole")
	lug = lugSheet()
	lug.Ultimate = lug.Yield * 0.9
	bad(CheckPlateLug(lug))("tensile below yield")
}
