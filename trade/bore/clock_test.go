package bore

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

func TestClockPositions(t *testing.T) {
	assert.InDelta(t, 0, XY{0, 1}.Clock(), 1e-15, "12 o'clock is up")
	assert.InDelta(t, math.Pi/2, XY{1, 0}.Clock(), 1e-15, "3 o'clock is to the right")
	assert.InDelta(t, 3*math.Pi/2, XY{-1, 0}.Clock(), 1e-15)
	assert.Equal(t, XY{}.Clock(), 0.0)
	p := Polar(210*deg, 2)
	assert.InDelta(t, 210*deg, p.Clock(), 1e-15)
	assert.InDelta(t, -1, p.X, 1e-12)
	for words, degrees := range map[string]float64{"12 o'clock": 359, "3 o'clock": 90, "7:30": 225, "12:10": 5, "11:50": -5, "6 o'clock": 540} {
		assert.Equal(t, words, ClockWords(degrees*deg))
	}
	assert.Zero(t, Turn(-1e-18))
	assert.Less(t, Turn(2*math.Pi), 1e-12)
}

func TestEveryWarningSpeaks(t *testing.T) {
	for code := DiametersOnly; code <= PoorRepeats; code++ {
		for _, sys := range []units.System{units.InchShop, units.MetricShop} {
			text := Warning{Code: code, Z: 0.05, Value: 0.002, Oval: 2}.Text(sys)
			assert.NotEmpty(t, text, code)
		}
	}
	assert.Empty(t, Warning{Code: 99}.Text(units.InchShop))
}

func TestWeakSurveysAreWarnedAbout(t *testing.T) {
	m := made{r: 1.5 * in, places: 12, stations: []float64{0, 3 * in}, u: 0.2 * thou1}
	codes := func(r Readings) (out []WarningCode) {
		s, err := Survey(r)
		require.NoError(t, err)
		for _, w := range s.Warnings {
			out = append(out, w.Code)
		}
		return out
	}
	assert.Empty(t, codes(Readings{Sweeps: m.sweep(nil)}))
	assert.Equal(t, []WarningCode{Extrapolated}, codes(Readings{Sweeps: m.sweep(nil), Length: 6 * in}))
	one := m
	one.stations = []float64{0}
	assert.Equal(t, []WarningCode{OneStation}, codes(Readings{Sweeps: one.sweep(nil)}))
	few := m
	few.places = 4
	assert.Equal(t, []WarningCode{FewReadings, FewReadings}, codes(Readings{Sweeps: few.sweep(nil)}))
	unknown := m
	unknown.u = 0
	assert.Equal(t, []WarningCode{NoUncertainty}, codes(Readings{Sweeps: unknown.sweep(nil)}))
	loose := m.sweep(nil)
	again := loose[5]
	again.Read += 5 * thou1
	assert.Equal(t, []WarningCode{PoorRepeats}, codes(Readings{Sweeps: append(loose, again)}))
}

func TestUWall(t *testing.T) {
	m := made{r: 1.5 * in, places: 12, stations: []float64{0, 3 * in}, u: 0.3 * thou1}
	s, err := Survey(Readings{Sweeps: m.sweep(nil), UDatum: 0.4 * thou1})
	require.NoError(t, err)
	assert.InDelta(t, 0.5*thou1, s.UWall(), 1e-12)
	m.u, m.noise = 0, thou1
	s, err = Survey(Readings{Sweeps: m.sweep(seeded(1))})
	require.NoError(t, err)
	assert.InDelta(t, thou1, s.UWall(), 0.7*thou1)
	assert.InDelta(t, max(s.Stations[0].Circle.Sigma, s.Stations[1].Circle.Sigma), s.UWall(), 1e-15)
}

func TestFourPoint(t *testing.T) {
	// A bore 10 thou off towards 3 o'clock and 4 thou up, 2 thou oval.
	f, err := FourPoint(4*thou1+2*thou1, 10*thou1-2*thou1, -4*thou1+2*thou1, -10*thou1-2*thou1)
	require.NoError(t, err)
	assert.InDelta(t, 10*thou1, f.Offset.X, 1e-12)
	assert.InDelta(t, 4*thou1, f.Offset.Y, 1e-12)
	assert.InDelta(t, 4*thou1, f.OutOfRound, 1e-12)
	_, err = FourPoint(0, 0, math.NaN(), 0)
	assert.Error(t, err)
}

func TestTwoWitnesses(t *testing.T) {
	list := offJob()
	w, err := TwoWitnesses(list[0], list[1], list[2])
	require.NoError(t, err)
	assert.True(t, w.FeaturesAgree)
	assert.False(t, w.WornAgrees)
	c, err := Compare(list[:3]) // the same question asked the long way
	require.NoError(t, err)
	require.Len(t, c.Odd, 1)
	assert.InDelta(t, c.Odd[0].En, w.WornEn, 1e-9)
	assert.InDelta(t, c.Centre.X, w.Centre.X, 1e-15)
	assert.InDelta(t, c.U, w.U, 1e-15)
	_, err = TwoWitnesses(Candidate{}, list[1], list[2])
	assert.Error(t, err)
}

func TestAnAxisNeedsTwoCentres(t *testing.T) {
	_, err := FitAxis([]Centre{CentreAt(XY{}, 0, 1e-5)}, 0)
	assert.Error(t, err)
	a, err := FitAxis([]Centre{CentreAt(XY{0.001, 0}, 0, 1e-5), CentreAt(XY{0.002, 0}, 0.1, 1e-5)}, 2e-5)
	require.NoError(t, err)
	assert.InDelta(t, 1e-5*math.Sqrt2/0.1, a.Tilt().U, 1e-12)
	assert.InDelta(t, math.Hypot(1e-5, 2e-5), a.Offset(0).U, 1e-12, "the datum's own uncertainty counts")
	assert.InDelta(t, math.Hypot(math.Hypot(1e-5, 2e-5), 2e-5), a.Offset(0.2).U, 1e-12, "beyond the stations it grows")
}

func TestCylinderRefuses(t *testing.T) {
	flat := make([]Point3, 8)
	for i := range flat {
		flat[i] = Point3{Polar(float64(i), 0.04), 0}
	}
	_, err := FitCylinder(flat)
	assert.Error(t, err)
	_, err = FitCylinder(flat[:3])
	assert.Error(t, err)
	_, err = SurfaceOf()
	assert.Error(t, err)
	_, err = SurfaceOf(Section{Z: 1, R: 0.1}, Section{Z: 0, R: 0.1})
	assert.Error(t, err)
	_, err = FitCircle([]XY{{0, 0}, {1, 1}, {2, 2}, {3, 3}}, nil)
	assert.ErrorIs(t, err, errNoCircle)
	_, err = FitCircle([]XY{{0, 1}, {1, 0}, {0, -1}, {-1, 0}}, []float64{1})
	assert.Error(t, err)
}

// FuzzSurvey: whatever is typed, the answer is an error or made of numbers.
func FuzzSurvey(f *testing.F) {
	f.Add(1.5, 0.01, 0.02, 12, 3.0)
	f.Add(0.04, 0.0, 0.0, 4, 1.0)
	f.Add(0.04, 0.05, 0.0, 5, 0.1)
	f.Add(0.04, 1e-9, 1e-12, 30, 6.28)
	f.Fuzz(func(t *testing.T, r, e, noise float64, places int, arc float64) {
		if places < 0 || places > 60 {
			return
		}
		var s trade.Survey
		for i := range places {
			for _, z := range []float64{0, 0.1} {
				clock := arc * float64(i) / float64(places)
				s = append(s, trade.Point{Station: z, Clock: clock, Read: r + e*math.Cos(clock) + noise*math.Sin(float64(7*i*i))})
			}
		}
		got, err := Survey(Readings{Sweeps: s})
		if err != nil {
			return
		}
		for _, st := range got.Stations {
			for _, v := range []float64{st.Circle.R, st.Circle.UX, st.Circle.UY, st.Circle.UR, st.Round.LSCI, st.UForm, st.Round.MZCI.Width(), st.Round.MICI.Inner, st.Round.MCCI.Outer} {
				if bad(v) {
					t.Fatalf("not a number: %+v", st)
				}
			}
		}
		near, tilt := got.Near(), got.Axis.Tilt()
		for _, v := range []float64{near.Size, near.U, tilt.Slope, tilt.U, got.Cylinder.R, got.Cylinder.UR, got.GreatestRadius.Radius, got.LeastRadius.Radius} {
			if bad(v) {
				t.Fatalf("not a number: %+v", got)
			}
		}
	})
}
