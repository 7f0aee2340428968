package bar

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestLongerOverhangIsNeverStiffer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := CantileverInput{
			Section:  Section{Diameter: rapid.Float64Range(0.01, 0.2).Draw(t, "diameter")},
			Overhang: rapid.Float64Range(0.05, 2).Draw(t, "overhang"),
			Modulus:  207e9, Force: rapid.Float64Range(1, 5000).Draw(t, "force"),
		}
		a, err := Cantilever(in)
		require.NoError(t, err)
		longer, heavier, hollow := in, in, in
		longer.Overhang *= 1.01
		heavier.Force *= 1.01
		hollow.Bore = in.Diameter / 2
		b, err := Cantilever(longer)
		require.NoError(t, err)
		c, err := Cantilever(heavier)
		require.NoError(t, err)
		d, err := Cantilever(hollow)
		require.NoError(t, err)
		assert.Less(t, b.Stiffness, a.Stiffness)
		assert.Greater(t, c.Deflection, a.Deflection, "a heavier cut never bends the bar less")
		assert.Less(t, d.Stiffness, a.Stiffness)
	})
}

func TestLineBar(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		span := rapid.Float64Range(0.5, 3).Draw(t, "span")
		in := LineBarInput{Section: Section{Diameter: 0.06}, Span: span, Modulus: 207e9, Force: 800}
		in.Station = span * rapid.Float64Range(0.02, 0.98).Draw(t, "place")
		r, err := LineBar(in)
		require.NoError(t, err)
		assert.LessOrEqual(t, r.AtCutterFixed, r.AtCutter, "ends held in line are never softer")
		assert.GreaterOrEqual(t, r.Greatest, r.AtCutter*(1-1e-12))
		assert.True(t, r.GreatestAt > 0 && r.GreatestAt < span)

		mirror := in
		mirror.Station = span - in.Station
		m, err := LineBar(mirror)
		require.NoError(t, err)
		assert.InEpsilon(t, r.AtCutter, m.AtCutter, 1e-9, "it does not matter from which bearing one measures")
		assert.InDelta(t, span, r.GreatestAt+m.GreatestAt, 1e-9)
		// The greatest deflection lies between the cutter and the middle.
		low, high := min(in.Station, span/2), max(in.Station, span/2)
		assert.True(t, r.GreatestAt >= low-1e-9 && r.GreatestAt <= high+1e-9)
	})
}

func TestLineBarInTheMiddle(t *testing.T) {
	in := LineBarInput{Section: Section{Diameter: 0.06}, Span: 1, Station: 0.5, Modulus: 207e9, Force: 800}
	r, err := LineBar(in)
	require.NoError(t, err)
	assert.InEpsilon(t, r.AtCutter, r.Greatest, 1e-12, "both formulas meet at mid-span")
	assert.InEpsilon(t, 4, r.AtCutter/r.AtCutterFixed, 1e-12, "48 against 192")
	in.Station = 0.5 + 1e-9
	near, err := LineBar(in)
	require.NoError(t, err)
	assert.InDelta(t, r.GreatestAt, near.GreatestAt, 1e-8, "no jump where the shorter side changes")
}

func TestBarRefusals(t *testing.T) {
	good := CantileverInput{Section: Section{Diameter: 0.05}, Overhang: 0.2, Modulus: 207e9, Force: 100}
	for name, change := range map[string]func(*CantileverInput){
		"hole as large as the bar": func(c *CantileverInput) { c.Bore = 0.05 },
		"no overhang":              func(c *CantileverInput) { c.Overhang = 0 },
		"psi for Pa":               func(c *CantileverInput) { c.Modulus = 30e6 },
		"pulling":                  func(c *CantileverInput) { c.Force = -1 },
		"not a number":             func(c *CantileverInput) { c.Diameter = math.NaN() },
	} {
		bad := good
		change(&bad)
		_, err := Cantilever(bad)
		assert.Error(t, err, name)
	}
	_, err := LineBar(LineBarInput{Section: Section{Diameter: 0.05}, Span: 1, Station: 1, Modulus: 207e9})
	assert.ErrorContains(t, err, "between the bearings")
	_, err = Overhang(Material{}, 0.05, 0.2)
	assert.ErrorContains(t, err, "length-to-diameter")
	_, err = SecondMoment(Section{Diameter: 0.05, Bore: 0.06})
	assert.ErrorContains(t, err, "hole")
}

func TestRayleighIsAlittleHighOnABareBar(t *testing.T) {
	in := FrequencyInput{Section: Section{Diameter: 0.05}, Overhang: 0.25, Modulus: 206e9, Density: 7850}
	bare, err := Frequency(in)
	require.NoError(t, err)
	head, err := FrequencyWithHead(in)
	require.NoError(t, err)
	assert.InDelta(t, 1.015, head.Hertz/bare.Hertz, 0.001)
	in.Head = 1
	loaded, err := FrequencyWithHead(in)
	require.NoError(t, err)
	assert.Less(t, loaded.Hertz, head.Hertz)
}

func TestMaterialsKeepTheirOrder(t *testing.T) {
	var before Material
	for i, name := range MaterialNames() {
		m, err := MaterialAt(float64(i))
		require.NoError(t, err)
		assert.Equal(t, name, m.Name)
		assert.NotEmpty(t, m.Source)
		assert.Greater(t, m.Modulus, before.Modulus, "steel, heavy metal, carbide: stiffer and stiffer")
		assert.LessOrEqual(t, m.UsualOverhang, m.MostOverhang)
		before = m
	}
	for i, name := range WorkNames() {
		w, err := WorkAt(float64(i))
		require.NoError(t, err)
		assert.Equal(t, name, w.Name)
	}
}

func TestHeavierCutNeverPushesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := CutInput{
			Work: works[3], Diameter: 0.15, Depth: rapid.Float64Range(0.0005, 0.005).Draw(t, "depth"),
			Feed: rapid.Float64Range(0.05, 1).Draw(t, "feed") * mm * perTurn, Lead: rapid.Float64Range(45, 100).Draw(t, "lead") * degree,
			Speed: 1.5, PushShare: 0.5, Drive: 0.8,
		}
		a, err := Cut(in)
		require.NoError(t, err)
		deeper, faster := in, in
		deeper.Depth *= 1.01
		faster.Feed *= 1.01
		b, err := Cut(deeper)
		require.NoError(t, err)
		c, err := Cut(faster)
		require.NoError(t, err)
		assert.Greater(t, b.Push, a.Push)
		assert.Greater(t, c.Push, a.Push)
		assert.Less(t, c.Specific, a.Specific)
		p, err := CuttingPower(in.Depth, in.Feed, in.Speed, a.Specific, in.Drive)
		require.NoError(t, err)
		assert.InEpsilon(t, p, a.MotorPower, 1e-9, "two ways to the same power")
		push, err := CutStiffness(in.Work, in.Feed, in.Lead, in.PushShare)
		require.NoError(t, err)
		assert.InEpsilon(t, a.Push, push*in.Depth, 1e-9)
	})
}

func TestCutRefusals(t *testing.T) {
	good := CutInput{Work: works[0], Diameter: 0.1, Depth: 0.002, Feed: 0.2 * mm * perTurn, Lead: 90 * degree, Speed: 1, PushShare: 0.5, Drive: 0.8}
	_, err := Cut(good)
	require.NoError(t, err)
	for name, change := range map[string]func(*CutInput){
		"deeper than the bore allows": func(c *CutInput) { c.Diameter, c.Depth = 0.02, 0.006 },
		"feed per turn, not per rad":  func(c *CutInput) { c.Feed = 5 * mm },
		"chip too thin for the law":   func(c *CutInput) { c.Feed, c.Lead = 0.012*mm*perTurn, 45*degree },
		"edge along the feed":         func(c *CutInput) { c.Lead = 0 },
		"kc in N/mm²":                 func(c *CutInput) { c.Work.Specific = 1990 },
	} {
		bad := good
		change(&bad)
		_, err := Cut(bad)
		assert.Error(t, err, name)
	}
	_, err = FitKienzle("one point", []FeedForce{{0.1 * mm * perTurn, 3e9}})
	assert.ErrorContains(t, err, "two points")
	_, err = FitKienzle("one feed", []FeedForce{{0.1 * mm * perTurn, 3e9}, {0.1 * mm * perTurn, 3.1e9}})
	assert.ErrorContains(t, err, "two points")
	_, err = Roughness(1*mm*perTurn, 0.8*mm)
	assert.ErrorContains(t, err, "nose radius")
	_, err = Copying(CopyingInput{Stiffness: 1e7, CutStiffness: 1e6, OutOfRound: 1e-4, Passes: 1.5})
	assert.ErrorContains(t, err, "whole number")
}

func TestSofterBarNeverCopiesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := CopyingInput{Stiffness: rapid.Float64Range(1e6, 1e9).Draw(t, "k"), CutStiffness: rapid.Float64Range(1e5, 1e8).Draw(t, "c"), OutOfRound: 0.001, Passes: 2}
		soft := in
		soft.Stiffness *= 0.9
		a, err := Copying(in)
		require.NoError(t, err)
		b, err := Copying(soft)
		require.NoError(t, err)
		assert.Greater(t, b.Last, a.Last)
		assert.Less(t, a.Share, 1.0, "c/k would pass 1 for a soft bar; a pass cannot leave more than it found")
	})
}
