package lift

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestFlatterSlingNeverLoadsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(30, 89).Draw(t, "angle")
		b := rapid.Float64Range(a, 90).Draw(t, "steeper")
		legs := float64(rapid.IntRange(2, 4).Draw(t, "legs"))
		flat, err := LegLoad(1000, legs, a*degree)
		require.NoError(t, err)
		steep, err := LegLoad(1000, legs, b*degree)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, flat, steep)
		heavier, err := LegLoad(1001, legs, a*degree)
		require.NoError(t, err)
		assert.Greater(t, heavier, flat)

		hitch := Hitch(rapid.SampledFrom([]int{int(OneLeg), int(Bridle), int(Basket), int(DoubleBasket)}).Draw(t, "hitch"))
		low, err := SlingCapacity(1000, hitch, a*degree, 0.75)
		require.NoError(t, err)
		high, err := SlingCapacity(1000, hitch, b*degree, 0.75)
		require.NoError(t, err)
		assert.LessOrEqual(t, low, high)
	})
}

func TestBridleHoldsWhatItsLegsAreLoadedTo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(30, 90).Draw(t, "angle") * degree
		c, err := SlingCapacity(2500, Bridle, a, 0.75)
		require.NoError(t, err)
		leg, err := LegLoad(c, 2, a)
		require.NoError(t, err)
		assert.InEpsilon(t, 2500, leg, 1e-12)
	})
}

func drawLug(t *rapid.T) PlateLug {
	pin := rapid.Float64Range(0.01, 0.08).Draw(t, "pin")
	yield := rapid.Float64Range(200, 700).Draw(t, "yield") * megaPa
	return PlateLug{
		Load: rapid.Float64Range(1, 20000).Draw(t, "load"), Thickness: rapid.Float64Range(0.005, 0.08).Draw(t, "thickness"),
		Side: pin * rapid.Float64Range(0.5, 3).Draw(t, "side"), Beyond: pin * rapid.Float64Range(0.5, 3).Draw(t, "beyond"),
		Hole: pin * rapid.Float64Range(1, 1.3).Draw(t, "hole"), Pin: pin, Yield: yield,
		Ultimate: yield * rapid.Float64Range(1, 1.8).Draw(t, "ultimate"), Category: Category(rapid.IntRange(0, 1).Draw(t, "category")),
	}
}

func TestPlateLugNeverGainsFromLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawLug(t)
		r, err := CheckPlateLug(in)
		require.NoError(t, err)
		assert.InEpsilon(t, 1, r.Use()*r.Capacity/in.Load, 1e-9)
		for name, change := range map[string]func(*PlateLug){
			"heavier":  func(l *PlateLug) { l.Load *= 1.1 },
			"thinner":  func(l *PlateLug) { l.Thickness *= 0.9 },
			"narrower": func(l *PlateLug) { l.Side *= 0.9 },
			"shorter":  func(l *PlateLug) { l.Beyond *= 0.9 },
			"rounded":  func(l *PlateLug) { l.EndRadius = l.Hole/2 + l.Beyond },
			"weaker":   func(l *PlateLug) { l.Yield, l.Ultimate = l.Yield*0.9, l.Ultimate*0.9 },
			"unsure":   func(l *PlateLug) { l.Category = CategoryB },
		} {
			worse := in
			change(&worse)
			w, err := CheckPlateLug(worse)
			require.NoError(t, err, name)
			assert.GreaterOrEqual(t, w.Use(), r.Use()*(1-1e-12), name)
		}
		double := in
		double.Load, double.Thickness = 2*in.Load, 2*in.Thickness
		d, err := CheckPlateLug(double)
		require.NoError(t, err)
		assert.LessOrEqual(t, d.Use(), r.Use()*(1+1e-9), "twice the load on twice the plate")
	})
}

func TestLugBaseAndWeldGrowWithEveryLoad(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pull := Pull{rapid.Float64Range(1, 9000).Draw(t, "load"), rapid.Float64Range(31, 90).Draw(t, "angle") * degree,
			rapid.Float64Range(0, 20).Draw(t, "side") * degree}
		base := LugBase{pull, 0.08, 0.15, rapid.Float64Range(0.006, 0.05).Draw(t, "thickness"), 250 * megaPa, CategoryB}
		weld := LugWeld{pull, 0.08, 0.15, base.Thickness, 0.008, LugWeldPattern(rapid.IntRange(0, 2).Draw(t, "pattern")), 70 * ksi, WeldBTHB}
		use := func(change func(*Pull), thicker float64) (float64, float64) {
			b, w := base, weld
			change(&b.Pull)
			w.Pull, b.Thickness, w.Thickness = b.Pull, b.Thickness*thicker, w.Thickness*thicker
			br, err := CheckLugBase(b)
			require.NoError(t, err)
			wr, err := CheckLugWeld(w)
			require.NoError(t, err)
			return br.Use(), wr.Use
		}
		b0, w0 := use(func(*Pull) {}, 1)
		b1, w1 := use(func(p *Pull) { p.Load *= 1.1 }, 1)
		assert.InEpsilon(t, 1.1*b0, b1, 1e-9)
		assert.InEpsilon(t, 1.1*w0, w1, 1e-9)
		b2, w2 := use(func(*Pull) {}, 1.1)
		assert.Less(t, b2, b0)
		assert.LessOrEqual(t, w2, w0*(1+1e-12))
		if pull.Side < 15*degree {
			b3, _ := use(func(p *Pull) { p.Side += 2 * degree }, 1)
			assert.Greater(t, b3, b0*0.99, "a side pull hardly ever helps")
		}
		round := weld
		round.Pattern = AllRound
		rr, err := CheckLugWeld(round)
		require.NoError(t, err)
		assert.LessOrEqual(t, rr.Use, w0*(1+1e-12), "welding all round is never weaker")
	})
}

func TestBentBarNeverGainsFromLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bar := rapid.Float64Range(0.008, 0.06).Draw(t, "bar")
		in := BentBarLug{
			Load: rapid.Float64Range(1, 5000).Draw(t, "load"), Bar: bar, Inside: bar * rapid.Float64Range(1.2, 8).Draw(t, "inside"),
			Leg:   bar * rapid.Float64Range(0, 8).Draw(t, "leg"),
			Angle: rapid.Float64Range(31, 90).Draw(t, "angle") * degree, Side: rapid.Float64Range(0, 20).Draw(t, "side") * degree,
			Yield: 250 * megaPa, Category: CategoryB,
		}
		r, err := CheckBentBarLug(in)
		require.NoError(t, err)
		assert.InEpsilon(t, 1, r.Use()*r.Capacity/in.Load, 1e-9)
		heavier := in
		heavier.Load *= 1.5
		h, err := CheckBentBarLug(heavier)
		require.NoError(t, err)
		assert.InEpsilon(t, 1.5*r.Use(), h.Use(), 1e-9)
		// The same lug in every proportion, twice as large, holds four times as much.
		large := in
		large.Bar, large.Inside, large.Leg = 2*in.Bar, 2*in.Inside, 2*in.Leg
		l, err := CheckBentBarLug(large)
		require.NoError(t, err)
		assert.InEpsilon(t, 4*r.Capacity, l.Capacity, 1e-9)
		straight := in
		straight.Side = 0
		f, err := CheckBentBarLug(straight)
		require.NoError(t, err)
		straight.Side = 2 * degree
		s, err := CheckBentBarLug(straight)
		require.NoError(t, err)
		assert.Greater(t, s.Use(), f.Use(), "a pull that comes out of the plane")
		assert.NotEmpty(t, r.Steps())
	})
}

func TestFilletIsContinuousAndGrows(t *testing.T) {
	fillet := func(leg, length float64, ended bool) float64 {
		r, err := CheckFillet(Fillet{1000, leg, length, 2, ended, 70 * ksi, WeldBTHB})
		require.NoError(t, err)
		return r.Capacity
	}
	for _, legs := range []float64{4, 100, 300} {
		for _, ended := range []bool{false, true} {
			below, above := fillet(0.005, 0.005*legs*(1-1e-9), ended), fillet(0.005, 0.005*legs*(1+1e-9), ended)
			assert.InEpsilon(t, below, above, 1e-7, "at %v legs", legs)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		leg, length := rapid.Float64Range(0.003, 0.02).Draw(t, "leg"), rapid.Float64Range(0.006, 4).Draw(t, "length")
		ended := rapid.Bool().Draw(t, "ended")
		c := fillet(leg, length, ended)
		assert.GreaterOrEqual(t, fillet(leg*1.1, length, ended), c*(1-1e-12))
		assert.GreaterOrEqual(t, fillet(leg, length*1.1, ended), c*(1-1e-12))
		assert.LessOrEqual(t, fillet(leg, length, true), fillet(leg, length, false)*(1+1e-12))
	})
}

func TestWeldBasesAreInOrder(t *testing.T) {
	var last float64
	for _, b := range []Basis{WeldBTHB, WeldBTHA, Weld030, WeldLRFD, WeldNominal} {
		s, err := WeldStress(70*ksi, b)
		require.NoError(t, err)
		assert.Greater(t, s, last)
		last = s
	}
}

func TestEccentricWeld(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := EccentricWeld{Load: 1000, Pattern: WeldPattern(rapid.IntRange(0, 4).Draw(t, "pattern")),
			Depth: rapid.Float64Range(0.05, 0.5).Draw(t, "depth"), Width: rapid.Float64Range(0.05, 0.5).Draw(t, "width"),
			Leg: 0.008, Electrode: 70 * ksi, Basis: WeldBTHB}
		in.Reach = in.Width
		r, err := CheckEccentricWeld(in)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, r.Stress, r.Direct*(1-1e-12))
		farther := in
		farther.Reach += 0.1
		f, err := CheckEccentricWeld(farther)
		require.NoError(t, err)
		assert.Greater(t, f.Use, r.Use)
		centred := in
		centred.Reach = r.Group.X
		c, err := CheckEccentricWeld(centred)
		require.NoError(t, err)
		assert.InEpsilon(t, c.Direct, c.Stress, 1e-9)
		assert.InEpsilon(t, 1000/r.Use, r.Capacity, 1e-12)
	})
}

func TestFlareAndRoundWelds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := FlareWeld{rapid.Float64Range(1, 5000).Draw(t, "load"), rapid.Float64Range(0.008, 0.06).Draw(t, "bar"),
			rapid.Float64Range(0.02, 0.5).Draw(t, "length"), 70 * ksi, WeldBTHB}
		r, err := CheckFlareWeld(in)
		require.NoError(t, err)
		longer := in
		longer.Length *= 1.2
		l, err := CheckFlareWeld(longer)
		require.NoError(t, err)
		assert.Less(t, l.Use, r.Use)
		assert.InEpsilon(t, in.Load/r.Use, r.Capacity, 1e-12)

		ring := RoundWeld{Bar: in.Bar, Leg: 0.006, Tension: 9.80665 * in.Load, Electrode: 70 * ksi, Basis: WeldBTHB}
		pulled, err := CheckRoundWeld(ring)
		require.NoError(t, err)
		ring.Moment = 10
		bent, err := CheckRoundWeld(ring)
		require.NoError(t, err)
		assert.Greater(t, bent.Use, pulled.Use)
	})
}

func TestHookIsStraightBarWhenTheBendIsWide(t *testing.T) {
	// d/R → 0: Winkler's stress becomes F/A ± 32M/(πd³).
	in := Hook{Load: 1000, Section: Round, Depth: 0.01, Inside: 0.995, Arm: 0.05}
	r, err := HookStress(in)
	require.NoError(t, err)
	force := 1000 * 9.80665
	bending := 32 * force * 0.05 / (math.Pi * 1e-6)
	direct := force / (math.Pi * 1e-4 / 4)
	assert.InEpsilon(t, direct+bending, r.Inside, 0.006)
	assert.InEpsilon(t, direct-bending, r.Outside, 0.006)
}

func TestHardwareStepsNeverRiseWithAngle(t *testing.T) {
	last, lastEye := math.Inf(1), math.Inf(1)
	for a := 0.0; a <= 90; a += 0.5 {
		h, err := Shackle(10, 1000, a*degree, 0)
		require.NoError(t, err)
		assert.LessOrEqual(t, h.Capacity, last)
		last = h.Capacity
		if a <= 45 {
			e, err := Eyebolt(10, 1000, a*degree, true)
			require.NoError(t, err)
			assert.LessOrEqual(t, e.Capacity, lastEye)
			lastEye = e.Capacity
		}
	}
	pull, err := EyeboltPull(60 * degree)
	require.NoError(t, err)
	assert.InDelta(t, 30*degree, pull, 1e-12)
}

func TestDynamicFactorsGrow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		drop := rapid.Float64Range(0, 1).Draw(t, "drop")
		stretch := rapid.Float64Range(1e-4, 0.5).Draw(t, "stretch")
		f, err := SnatchFactor(drop, stretch)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, f, 2.0)
		softer, err := SnatchFactor(drop, stretch*1.1)
		require.NoError(t, err)
		assert.LessOrEqual(t, softer, f)
		// The falling weight's energy is what the stretched rigging holds.
		assert.InEpsilon(t, drop+f*stretch, f*f*stretch/2, 1e-9)
		speed := rapid.Float64Range(0, 0.5).Draw(t, "speed")
		a, err := HoistFactor(speed)
		require.NoError(t, err)
		b, err := HoistFactor(speed + 0.005)
		require.NoError(t, err)
		assert.LessOrEqual(t, a, b)
		assert.GreaterOrEqual(t, a, 1.15)
	})
}
