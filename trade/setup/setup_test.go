package setup

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestShimLevelsThePart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := ShimInput{
			Near: rapid.Float64Range(-0.02, 0.02).Draw(t, "near") * inch, Far: rapid.Float64Range(-0.02, 0.02).Draw(t, "far") * inch,
			Span: rapid.Float64Range(2, 40).Draw(t, "span") * inch, Supports: rapid.Float64Range(2, 80).Draw(t, "supports") * inch,
		}
		r, err := Shim(in)
		require.NoError(t, err)
		// Raising the far support by the shim turns the part; read again.
		after := in.Far + r.Far*in.Span/in.Supports
		assert.InDelta(t, in.Near, after, 1e-12)
	})
	_, err := Shim(ShimInput{Span: 0, Supports: 1})
	assert.Error(t, err)
}

func TestRimAndFaceSigns(t *testing.T) {
	in := RimFaceInput{Rim: -0.010 * inch, Circle: 5 * inch, Front: 12 * inch, Rear: 30 * inch}
	r, err := RimAndFace(in)
	require.NoError(t, err)
	assert.InDelta(t, 0.005*inch, r.Front, 1e-12, "offset only: both supports move alike")
	assert.InDelta(t, r.Front, r.Rear, 1e-15)
	in.Front, in.Rear = 30*inch, 12*inch
	_, err = RimAndFace(in)
	assert.ErrorContains(t, err, "which is which")
}

// heightOf is the height of a tilted plane over a place, as an indicator reads it.
func heightOf(a, b, c float64, p Point) float64 { return a*p.X + b*p.Y + c }

func TestLevellingTakesTheTiltOut(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-0.002, 0.002).Draw(t, "a")
		b := rapid.Float64Range(-0.002, 0.002).Draw(t, "b")
		jacks := [3]Point{{0, 0}, {rapid.Float64Range(0.4, 1).Draw(t, "x2"), 0}, {0.3, rapid.Float64Range(0.3, 1).Draw(t, "y3")}}
		in := LevelInput{Jacks: jacks}
		for i, j := range jacks {
			in.Heights[i] = heightOf(a, b, 0.001, j)
		}
		r, err := LevelThree(in)
		require.NoError(t, err)
		assert.InDelta(t, a, r.SlopeX, 1e-12)
		assert.InDelta(t, b, r.SlopeY, 1e-12)
		least := math.Inf(1)
		for i := range jacks {
			assert.InDelta(t, in.Heights[0]+r.Raise[0], in.Heights[i]+r.Raise[i], 1e-12, "all come to one height")
			least = min(least, r.Raise[i])
		}
		assert.Zero(t, least, "nothing is lowered, and one support stays")
	})
}

func TestSupportsFromBores(t *testing.T) {
	supports := [3]Point{{0, 0}, {1, 0}, {0.5, 0.8}}
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-0.001, 0.001).Draw(t, "along")
		b := rapid.Float64Range(-0.001, 0.001).Draw(t, "across")
		span, between := 0.2, 0.76
		in := BoresInput{Span: span, Between: between, Supports: supports,
			Near1: heightOf(a, b, 0, Point{0, 0}), Far1: heightOf(a, b, 0, Point{span, 0}),
			Near2: heightOf(a, b, 0, Point{0, between}), Far2: heightOf(a, b, 0, Point{span, between})}
		r, err := SupportsFromBores(in)
		require.NoError(t, err)
		assert.InDelta(t, 0, r.Disagree, 1e-15)
		for i, s := range supports {
			assert.InDelta(t, heightOf(a, b, 0, supports[0])+r.Raise[0], heightOf(a, b, 0, s)+r.Raise[i], 1e-12)
		}
		// Two bores that are twisted against each other cannot both be levelled.
		in.Far2 += 0.0001
		twisted, err := SupportsFromBores(in)
		require.NoError(t, err)
		assert.InDelta(t, -0.0001, twisted.Disagree, 1e-12)
	})
}

func TestSupportsInOneLineAreRefused(t *testing.T) {
	line := [3]Point{{0, 0}, {1, 0.001}, {2, 0}}
	_, err := LevelThree(LevelInput{Jacks: line})
	assert.ErrorContains(t, err, "one line")
	_, err = SupportsFromBores(BoresInput{Span: 1, Between: 1, Supports: line})
	assert.ErrorContains(t, err, "one line")
	_, err = LevelThree(LevelInput{})
	assert.ErrorContains(t, err, "one line", "all in one place")
	_, err = LevelThree(LevelInput{Jacks: [3]Point{{math.NaN(), 0}, {1, 0}, {0, 1}}})
	assert.ErrorContains(t, err, "not a number")
}

func TestAnglesThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		angle := rapid.Float64Range(0.001, 100).Draw(t, "angle") * degree
		r, err := TaperOfAngle(angle)
		require.NoError(t, err)
		assert.InEpsilon(t, angle, r.Included, 1e-9)
		s, err := Slope(rapid.Float64Range(-1, 1).Draw(t, "rise")*inch, 12*inch)
		require.NoError(t, err)
		y, err := OffsetAt(0, s.Angle, 12*inch)
		require.NoError(t, err)
		assert.InDelta(t, s.Ratio*12*inch, y, 1e-12)
	})
	_, err := Slope(2*inch, 1*inch)
	assert.ErrorContains(t, err, "which is which")
	_, err = Taper(1*inch, 2*inch, 6*inch)
	assert.ErrorContains(t, err, "which is which")
	_, err = Cosine(0.001*inch, 75*degree)
	assert.ErrorContains(t, err, "guesswork")
}

func TestWarmBores(t *testing.T) {
	in := WarmInput{Reading: 6 * inch, PartTemp: 330, PartExpansion: 11.7e-6, GaugeTemp: 330, GaugeExpand: 11.7e-6}
	r, err := WarmBore(in)
	require.NoError(t, err)
	assert.InDelta(t, in.Reading, r.Reference, 1e-12, "equal metal and temperature: the reading stands")
	in.GaugeTemp = twenty
	r, err = WarmBore(in)
	require.NoError(t, err)
	assert.Less(t, r.Reference, in.Reading, "a warm bore shrinks")
	length, err := ToReference(in.Reading, in.PartExpansion, in.PartTemp)
	require.NoError(t, err)
	assert.InDelta(t, length, r.Reference, 1e-12, "with the gauge at 20 °C both functions agree")
}

func TestBoltGrades(t *testing.T) {
	for i, name := range GradeNames() {
		g, err := GradeAt(float64(i), 0.5*inch)
		require.NoError(t, err)
		assert.Equal(t, name, g.Name)
		assert.True(t, g.Proof < g.Yield && g.Yield < g.Tensile)
	}
	_, err := gradeNamed(sae2, 1*inch)
	assert.ErrorContains(t, err, "no SAE grade 2 bolt of that diameter")
	g, err := gradeNamed(sae5, 1*inch)
	require.NoError(t, err)
	assert.InDelta(t, 85*ksi, g.Proof, 1, "1 in exactly is in 'to 1'")
	_, err = GradeAt(99, inch)
	assert.Error(t, err)
}

func TestBoltPull(t *testing.T) {
	g, err := gradeNamed(sae8, 0.75*inch)
	require.NoError(t, err)
	in := BoltInput{Diameter: 0.75 * inch, Pitch: inch / 10, Thread: Unified, Grade: g, NutFactor: 0.2}
	rapid.Check(t, func(t *rapid.T) {
		torque := rapid.Float64Range(1, 600).Draw(t, "torque")
		a, err := Preload(in, torque)
		require.NoError(t, err)
		b, err := Preload(in, torque+1)
		require.NoError(t, err)
		assert.Greater(t, b.Least, a.Least)
		assert.True(t, a.Least < a.Pull && a.Pull < a.Most)
		dry := in
		dry.NutFactor = 0.25
		c, err := Preload(dry, torque)
		require.NoError(t, err)
		assert.Less(t, c.Pull, a.Pull, "a drier thread gives less pull for the torque")
	})
	r, err := TorqueFor(in, 0.75)
	require.NoError(t, err)
	assert.InEpsilon(t, 0.75*r.Proof, r.Pull, 1e-12)
	assert.InEpsilon(t, 0.975, r.Use, 1e-12, "even with the scatter the proof load is not reached")
	in.Pitch = 10 * mm
	_, err = Preload(in, 10)
	assert.ErrorContains(t, err, "too coarse")
	in.Thread = 9
	in.Pitch = inch / 10
	_, err = Preload(in, 10)
	assert.ErrorContains(t, err, "neither")
}

func TestStrapClamp(t *testing.T) {
	r, err := StrapClamp(1000, 2*inch, 2*inch)
	require.NoError(t, err)
	assert.InDelta(t, 500, r.OnPart, 1e-9, "a bolt halfway gives half")
	near, err := StrapClamp(1000, 1*inch, 3*inch)
	require.NoError(t, err)
	assert.InDelta(t, 750, near.OnPart, 1e-9)
	assert.InDelta(t, 1000, near.OnPart+near.OnHeel, 1e-9)
}

func TestHold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := HoldInput{
			Clamps: float64(rapid.IntRange(1, 8).Draw(t, "clamps")), Force: rapid.Float64Range(1000, 50000).Draw(t, "force"),
			Weight: rapid.Float64Range(0, 1e5).Draw(t, "weight"), Cutting: rapid.Float64Range(1, 20000).Draw(t, "cutting"),
			Arm: rapid.Float64Range(0, 1).Draw(t, "arm"), Reach: rapid.Float64Range(0.1, 1).Draw(t, "reach"), Friction: 0.1, Safety: 2,
		}
		a, err := Hold(in)
		require.NoError(t, err)
		heavier, slick := in, in
		heavier.Cutting *= 1.1
		slick.Friction = 0.09
		b, err := Hold(heavier)
		require.NoError(t, err)
		c, err := Hold(slick)
		require.NoError(t, err)
		assert.Greater(t, b.Use, a.Use)
		assert.Greater(t, c.Use, a.Use)
		if a.Needed > 0 && a.Needed <= clampRange.High {
			in.Force = a.Needed
			d, err := Hold(in)
			require.NoError(t, err)
			assert.InEpsilon(t, 1, d.Use, 1e-9, "the force needed is the one that just holds")
		}
	})
}

func TestHoldRefusals(t *testing.T) {
	in := HoldInput{Clamps: 2, Force: 1000, Cutting: 100, Lift: 3000, Friction: 0.1, Safety: 2}
	_, err := Hold(in)
	assert.ErrorContains(t, err, "lifts the part")
	in.Lift, in.Arm = 0, 0.1
	_, err = Hold(in)
	assert.ErrorContains(t, err, "turning")
	in.Arm, in.Clamps = 0, 2.5
	_, err = Hold(in)
	assert.ErrorContains(t, err, "whole number")
	in.Clamps, in.Safety = 2, 0.9
	_, err = Hold(in)
	assert.ErrorContains(t, err, "slides")
}

func TestConesCarryACaution(t *testing.T) {
	r, err := Centring(CentringInput{Method: Cones, Wear: 0.060 * inch})
	require.NoError(t, err)
	assert.Equal(t, ConeCaution, r.Caution)
	assert.InDelta(t, 0.060*inch, r.Error, 1e-15)
	assert.Contains(t, r.Steps()[0].Name, "cannot find the centre")

	s, err := Centring(CentringInput{Method: Spacers, Wear: 0.060 * inch, Clearance: 0.002 * inch})
	require.NoError(t, err)
	assert.Empty(t, s.Caution)
	assert.InDelta(t, 0.001*inch, s.Error, 1e-15)
	_, err = Centring(CentringInput{Method: 7})
	assert.ErrorContains(t, err, "cones or by spacers")
}
