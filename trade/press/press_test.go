package press

import (
	"cmp"
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gudgeon/trade"
)

// anyJoint draws a joint that the formula describes.
func anyJoint(t *rapid.T) Joint {
	d := rapid.Float64Range(1*inch, 12*inch).Draw(t, "diameter")
	metal := func(name string) Elastic {
		return Elastic{rapid.Float64Range(60e9, 220e9).Draw(t, name+" modulus"), rapid.Float64Range(0.2, 0.4).Draw(t, name+" poisson")}
	}
	return Joint{
		Diameter:     d,
		BushingBore:  d * rapid.Float64Range(0, 0.95).Draw(t, "bore share"),
		HubDiameter:  d * rapid.Float64Range(1.21, 5).Draw(t, "hub share"),
		Interference: d * rapid.Float64Range(1e-5, 0.004).Draw(t, "strain"),
		Hub:          metal("hub"), Bushing: metal("bushing"),
	}
}

func mustPress(t require.TestingT, j Joint) PressureResult {
	r, err := Pressure(j)
	require.NoError(t, err)
	return r
}

func TestMoreInterferenceNeverPressesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := anyJoint(t)
		more := j
		more.Interference *= rapid.Float64Range(1.0001, 1.2).Draw(t, "more")
		a, b := mustPress(t, j), mustPress(t, more)
		assert.Greater(t, b.Pressure, a.Pressure)
		assert.GreaterOrEqual(t, b.CloseIn, a.CloseIn)
		assert.Greater(t, b.HubVonMises, a.HubVonMises)
	})
}

func TestThickerBossNeverPressesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := anyJoint(t)
		thick := j
		thick.HubDiameter *= 1.05
		assert.GreaterOrEqual(t, mustPress(t, thick).Pressure, mustPress(t, j).Pressure)
	})
}

// Shigley 9th ed. eq. 3-57, with radii and radial interference.
func TestTwoMetalFormulaReducesToOneMetal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := anyJoint(t)
		j.Bushing = j.Hub
		R, ri, ro, delta := j.Diameter/2, j.BushingBore/2, j.HubDiameter/2, j.Interference/2
		want := j.Hub.Modulus * delta * (ro*ro - R*R) * (R*R - ri*ri) / (2 * R * R * R * (ro*ro - ri*ri))
		assert.InEpsilon(t, want, mustPress(t, j).Pressure, 1e-9)
	})
}

func TestBothSidesTogetherMakeUpTheInterference(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := mustPress(t, anyJoint(t))
		hub := r.Pressure * r.HubGive * r.In.Diameter
		assert.InEpsilon(t, r.In.Interference, hub+r.BushingSqueeze, 1e-9)
	})
}

func TestCloseInStaysBelowTheInterferenceItComesFrom(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := mustPress(t, anyJoint(t))
		assert.GreaterOrEqual(t, r.CloseIn, 0.0)
		// A thin bushing in a stiff boss closes by nearly all of it, and by
		// a little more than its outside is squeezed.
		assert.Less(t, r.CloseIn, 1.2*r.In.Interference)
	})
}

func TestPressureIsContinuousAsTheBoreVanishes(t *testing.T) {
	j := solid(4*inch, 8*inch, 0.004*inch, 207e9)
	small := j
	small.BushingBore = 1e-6 * inch
	a, b := mustPress(t, j), mustPress(t, small)
	assert.InEpsilon(t, a.Pressure, b.Pressure, 1e-9)
	assert.InDelta(t, a.CloseIn, b.CloseIn, 1e-9)
	assert.InEpsilon(t, 2, b.BushingVonMises/a.BushingVonMises, 1e-9, "the edge of even a small hole carries twice the stress")
}

func TestJointsThatTheFormulaDoesNotDescribe(t *testing.T) {
	good := Joint{Diameter: 4 * inch, BushingBore: 3 * inch, HubDiameter: 7 * inch, Interference: 0.004 * inch, Hub: Elastic{207e9, 0.29}, Bushing: Elastic{100e9, 0.34}}
	mustPress(t, good)
	cases := []struct {
		name   string
		change func(*Joint)
		says   string
	}{
		{"bore over outside", func(j *Joint) { j.BushingBore = 4.1 * inch }, "check which is which"},
		{"hub under bore", func(j *Joint) { j.HubDiameter = 3.9 * inch }, "check which is which"},
		{"thin ear", func(j *Joint) { j.HubDiameter = 4.4 * inch }, "thin ear"},
		{"foil bushing", func(j *Joint) { j.BushingBore = 3.9 * inch }, "buckles"},
		{"clearance", func(j *Joint) { j.Interference = -0.001 * inch }, "clearance"},
		{"forty thou instead of four", func(j *Joint) { j.Interference = 0.040 * inch }, "on diameter"},
		{"psi typed as Pa", func(j *Joint) { j.Hub.Modulus = 30e6 }, "modulus"},
		{"not a number", func(j *Joint) { j.Diameter = math.NaN() }, "not a number"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			j := good
			c.change(&j)
			_, err := Pressure(j)
			require.ErrorContains(t, err, c.says)
			_, err = Force(ForceInput{Joint: j, Length: inch, FrictionLow: 0.1, FrictionHigh: 0.2})
			assert.Error(t, err)
		})
	}
}

func TestRangeErrorsAreTyped(t *testing.T) {
	_, err := Pressure(Joint{Diameter: -1})
	var r *trade.RangeError
	require.True(t, errors.As(err, &r))
	assert.Equal(t, "interface diameter", r.What)
}

func TestBossRefusals(t *testing.T) {
	cases := []struct {
		name string
		in   BossInput
		says string
	}{
		{"split", BossInput{4 * inch, inch, 2 * inch, SplitBoss}, "split"},
		{"thin ear", BossInput{4 * inch, 0.3 * inch, inch, ClosedBoss}, "ear"},
		{"one-sided", BossInput{4 * inch, 0.5 * inch, 3 * inch, ClosedBoss}, "quarter"},
		{"swapped", BossInput{4 * inch, 2 * inch, inch, ClosedBoss}, "which is which"},
		{"unknown shape", BossInput{4 * inch, inch, inch, 7}, "neither"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			_, err := Boss(c.in)
			assert.ErrorContains(t, err, c.says)
		})
	}
	_, err := Boss(BossInput{4 * inch, 1.5 * inch, 10 * inch, ClosedBoss})
	require.NoError(t, err, "a sound ear on a thick body lies between its two rings")
	r, err := Boss(BossInput{4 * inch, inch, 2.5 * inch, ClosedBoss})
	require.NoError(t, err)
	assert.InDelta(t, 6*inch, r.Least, 1e-12)
	assert.InDelta(t, 9*inch, r.Most, 1e-12)
}

func TestHandbookFactorFallsWithoutAJump(t *testing.T) {
	before := math.Inf(1)
	for d := 1.0; d <= 10; d += 0.01 {
		f := pressureFactor(d)
		assert.Less(t, f, before)
		if !math.IsInf(before, 1) {
			assert.Less(t, before/f, 1.02)
		}
		before = f
	}
}

func TestHandbookIsFarBelowDryFriction(t *testing.T) {
	in := ForceInput{Joint: solid(4*inch, 8*inch, 0.004*inch, 30e6*psi), Length: 4 * inch, FrictionLow: 0.1, FrictionHigh: 0.2}
	f, err := Force(in)
	require.NoError(t, err)
	h, err := HandbookForce(HandbookInput{4 * inch, 4 * inch, 0.004 * inch})
	require.NoError(t, err)
	assert.Greater(t, f.PressIn, 4*h.Force, "a press sized by the old tonnage would stall on a dry steel fit")
}

func TestColdShrinksLessThanTheRoomRate(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		room := rapid.Float64Range(275, 305).Draw(t, "room")
		warm := rapid.Float64Range(n2Temp+1, room).Draw(t, "warm")
		at := func(temp float64) ShrinkResult {
			r, err := Shrink(ShrinkInput{4 * inch, 6.5e-6 * perF, room, temp})
			require.NoError(t, err)
			return r
		}
		a, b := at(warm), at(warm-1)
		assert.LessOrEqual(t, a.Shrink, a.AtRoomRate)
		assert.Greater(t, b.Shrink, a.Shrink, "colder never shrinks less")
		assert.Equal(t, warm < iceTemp, a.Overstates)
	})
}

func TestFreezingUndoesShrinking(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := EaseInput{Diameter: 4 * inch, Interference: rapid.Float64Range(0, 0.004*inch).Draw(t, "interference"), Clearance: 0.001 * inch, Expansion: 6.5e-6 * perF, Room: roomTemp}
		f, err := FreezeTo(in)
		require.NoError(t, err)
		s, err := Shrink(ShrinkInput{in.Diameter, in.Expansion, in.Room, f.Temperature})
		require.NoError(t, err)
		assert.InDelta(t, in.Interference+in.Clearance, s.Shrink, 1e-12)
		assert.LessOrEqual(t, f.Temperature, f.AtRoomRate)
	})
}

func TestTooTightToFreeze(t *testing.T) {
	in := EaseInput{Diameter: 2 * inch, Interference: 0.004 * inch, Clearance: 0.001 * inch, Expansion: 6.5e-6 * perF, Room: roomTemp}
	_, err := FreezeTo(in)
	assert.ErrorContains(t, err, "heat the hub")
	in.Interference = 0.2 * inch
	_, err = FreezeTo(in)
	assert.ErrorContains(t, err, "heat the hub")
	_, err = HeatTo(in)
	assert.ErrorContains(t, err, "600 °F")
}

func TestHeatingMakesTheClearanceAskedFor(t *testing.T) {
	in := EaseInput{Diameter: 4 * inch, Interference: 0.004 * inch, Clearance: 0.002 * inch, Expansion: 6.5e-6 * perF, Room: roomTemp}
	h, err := HeatTo(in)
	require.NoError(t, err)
	s, err := SlipIn(SlipInput{in.Diameter, in.Interference, in.Expansion, in.Expansion, in.Room, in.Room, h.Temperature})
	require.NoError(t, err)
	assert.InDelta(t, in.Clearance, s.Clearance, 1e-12)
}

func TestPinNoLongerRuns(t *testing.T) {
	j := Joint{Diameter: 2.5 * inch, BushingBore: 2 * inch, HubDiameter: 3.5 * inch, Interference: 0.0032 * inch, Hub: Elastic{30e6 * psi, 0.27}, Bushing: Elastic{17e6 * psi, 0.27}}
	r, err := PinClearance(j, 1.9985*inch)
	require.NoError(t, err)
	assert.Less(t, r.Clearance, 0.0, "1.5 thou of clearance is gone: the bore closed by 2.3 (PF-10)")
	j.BushingBore = 0
	_, err = PinClearance(j, inch)
	assert.ErrorContains(t, err, "solid")
}

func TestPushOutNeedsNoLessThanPressIn(t *testing.T) {
	in := ForceInput{Joint: solid(4*inch, 8*inch, 0.004*inch, 207e9), Length: 4 * inch, FrictionLow: 0.05, FrictionHigh: 0.2}
	out, err := PushOut(in, 1.5)
	require.NoError(t, err)
	assert.InEpsilon(t, 1.5, out.Force/out.PressIn, 1e-12)
	_, err = PushOut(in, 0.9)
	assert.Error(t, err)
	in.FrictionLow = 0.3
	_, err = PushOut(in, 1.5)
	assert.ErrorContains(t, err, "low friction")
}

func TestOffCentreLoad(t *testing.T) {
	in := OffCentreInput{Force: 40 * tonf, Offset: 0, Columns: 48 * inch, Frame: 60 * tonf}
	mid, err := OffCentre(in)
	require.NoError(t, err)
	assert.InEpsilon(t, 60*tonf, mid.Allowed, 1e-12, "in the middle the rating holds in full")
	assert.InEpsilon(t, 20*tonf, mid.NearColumn, 1e-12)
	rapid.Check(t, func(t *rapid.T) {
		a, b := in, in
		a.Offset = rapid.Float64Range(0, 22*inch).Draw(t, "offset")
		b.Offset = a.Offset + 0.5*inch
		ra, err := OffCentre(a)
		require.NoError(t, err)
		rb, err := OffCentre(b)
		require.NoError(t, err)
		assert.Less(t, rb.Allowed, ra.Allowed)
		assert.InEpsilon(t, in.Frame/2, ra.NearColumn/ra.Use, 1e-9, "allowed is where the nearer column has half the rating")
	})
	in.Offset = 24 * inch
	_, err = OffCentre(in)
	assert.ErrorContains(t, err, "between the columns")
}

func TestCapacityIsTheWeakerOfRamAndFrame(t *testing.T) {
	r, err := Capacity(5000*psi, 6*inch, 60*tonf)
	require.NoError(t, err)
	assert.Equal(t, 60*tonf, r.Force)
	r, err = Capacity(3000*psi, 6*inch, 60*tonf)
	require.NoError(t, err)
	assert.Less(t, r.Force, 60*tonf)
	_, err = RamPressure(900*tonf, 6*inch)
	assert.ErrorContains(t, err, "oil pressure")
}

func TestDaylight(t *testing.T) {
	in := DaylightInput{Opening: 40 * inch, Support: 6 * inch, Part: 14 * inch, Bushing: 5 * inch, Started: 0.25 * inch, Tooling: 3 * inch, Stroke: 16 * inch}
	r, err := Daylight(in)
	require.NoError(t, err)
	assert.InDelta(t, 12.25*inch, r.Spare, 1e-12)
	assert.InDelta(t, 17*inch, r.StrokeNeeded, 1e-12)
	assert.InDelta(t, -1*inch, r.StrokeSpare, 1e-12, "the ram does not reach")
	// Blocks under the part trade daylight for stroke.
	in.Support += 2 * inch
	raised, err := Daylight(in)
	require.NoError(t, err)
	assert.InDelta(t, r.Spare-2*inch, raised.Spare, 1e-12)
	assert.InDelta(t, r.StrokeSpare+2*inch, raised.StrokeSpare, 1e-12)

	in.Started = 6 * inch
	_, err = Daylight(in)
	assert.ErrorContains(t, err, "started")
	in.Started, in.BelowFlush = 0, 4*inch
	_, err = Daylight(in)
	assert.ErrorContains(t, err, "driver is too short")
	_, err = Daylight(DaylightInput{})
	assert.ErrorContains(t, err, "opening")
}

func TestSupport(t *testing.T) {
	in := SupportInput{Force: 40 * tonf, BossDiameter: 7 * inch, BossBore: 4 * inch, RingDiameter: 6 * inch, RingBore: 4.5 * inch, PassThrough: 4.25 * inch, Boss: Strength{36 * ksi, false}}
	r, err := Support(in)
	require.NoError(t, err)
	assert.InEpsilon(t, 80000/(math.Pi/4*(36-20.25)), r.Stress/psi, 1e-9)
	blocked := in
	blocked.PassThrough = 4.5 * inch
	_, err = Support(blocked)
	assert.ErrorContains(t, err, "land on the ring")
	missed := in
	missed.RingDiameter, missed.RingBore, missed.PassThrough, missed.BossBore = 3*inch, 2*inch, 0, 4*inch
	_, err = Support(missed)
	assert.ErrorContains(t, err, "does not touch")
}

func TestBrittleMetalIsJudgedByItsHoopStress(t *testing.T) {
	j := solid(4*inch, 8*inch, 0.002*inch, 100e9)
	r, err := Stress(j, Strength{25 * ksi, true}, Strength{36 * ksi, false})
	require.NoError(t, err)
	assert.Equal(t, r.HubHoop, r.HubStress)
	d, err := Stress(j, Strength{25 * ksi, false}, Strength{36 * ksi, false})
	require.NoError(t, err)
	assert.Greater(t, d.HubUse, r.HubUse)
}

func TestTablesNameEveryRow(t *testing.T) {
	for i, name := range MaterialNames() {
		m, err := MaterialAt(float64(i))
		require.NoError(t, err)
		assert.Equal(t, name, m.Name)
		assert.NotEmpty(t, m.Source)
		assert.NoError(t, cmp.Or(modulusRange.Check(m.Elastic.Modulus), poissonRange.Check(m.Elastic.Poisson), strengthRange.Check(m.Strength.Limit), expansionRange.Check(m.Expansion)))
	}
	for i, name := range FrictionNames() {
		b, err := Friction(float64(i))
		require.NoError(t, err)
		assert.Equal(t, name, b.Name)
		assert.Less(t, b.Low, b.High)
		assert.Equal(t, "from memory", b.Source[:11])
	}
	_, err := Friction(99)
	assert.Error(t, err)
}
