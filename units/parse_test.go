package units

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func named(t require.TestingT, name string) Unit {

	u, ok := Named(name)
	require.True(t, ok, name)
	return u
}

func TestParse(t *testing.T) {
	for _, c := range []struct {
		kind Kind
		bare string
		text string
		want float64 // in unit
		unit string
	}{
		{Length, "inch", `3-1/8"`, 3.125, "inch"},
		{Length, "inch", "3 1/8 in", 3.125, "inch"},
		{Length, "inch", "3-1/8", 3.125, "inch"},
		{Length, "mm", "3⅛ in", 3.125, "inch"},
		{Length, "inch", "1/8", 0.125, "inch"},
		{Length, "inch", ".050", 0.050, "inch"},
		{Length, "inch", "50 thou", 50, "thou"},
		{Length, "inch", "-.002", -0.002, "inch"},
		{Length, "inch", "-3-1/8 in", -3.125, "inch"},
		{Length, "inch", "79.375 mm", 79.375, "mm"},
		{Length, "inch", "12 ft 6 in", 150, "inch"},
		{Length, "inch", `12' 6"`, 150, "inch"},
		{Length, "inch", `12'-6 1/2"`, 150.5, "inch"},
		{Length, "inch", "12 ft 6-1/2 in", 150.5, "inch"},
		{Length, "mm", "12", 12, "mm"},
		{Length, "inch", "1e-3", 0.001, "inch"},
		{Length, "inch", " 3.002in ", 3.002, "inch"},
		{Mass, "lb", "1,250 lb", 1250, "lb"},
		{Mass, "lb", "1,250.5 lb", 1250.5, "lb"},
		{Mass, "lb", "12,345,678", 12345678, "lb"},
		{Mass, "lb", "2.5 t", 2.5, "t"},
		{Mass, "lb", "2.5 short tons", 5000, "lb"},
		{Mass, "lb", "5 lb 8 oz", 5.5, "lb"},
		{Force, "lbf", "800 lb", 800, "lbf"},
		{Force, "lbf", "50 short ton", 100000, "lbf"},
		{Temperature, "degF", "350 °F", 350, "degF"},
		{Temperature, "degF", "-109.3 F", -109.3, "degF"},
		{Temperature, "degF", "175 C", 175, "degC"},
		{Angle, "deg", "45°", 45, "deg"},
		{Angle, "deg", "14 thou/ft", 14, "thou_per_ft"},
		{Torque, "lbf_ft", "75 ft-lb", 75, "lbf_ft"},
		{Torque, "lbf_ft", "75 lbf·ft", 75, "lbf_ft"},
		{Area, "sqin", "2.5 in2", 2.5, "sqin"},
		{Ratio, "ratio", "99 %", 99, "percent"},
		{Ratio, "ratio", "0.99", 99, "percent"},
		{Feed, "ipr", ".008", 0.008, "ipr"},
	} {
		m, err := Parse(c.kind, c.text, named(t, c.bare))
		require.NoError(t, err, c.text)
		want := named(t, c.unit).ToSI(c.want)
		assert.InDelta(t, want, m.Value, 1e-12*math.Max(1, math.Abs(want)), c.text)
	}
}

func TestParseLimitsAndUncertainty(t *testing.T) {
	in := named(t, "inch")
	for _, text := range []string{"3.000 +.002/-.001", "3.000 +.002/-.001 in", "3.000 in +.002/-.001", "3.000 in +.002/-.001 in", "3.000 +.002 -.001"} {
		m, err := Parse(Length, text, in)
		require.NoError(t, err, text)
		assert.True(t, m.HasLimits, text)
		assert.InDelta(t, 3*inch, m.Value, 1e-15, text)
		assert.InDelta(t, 0.002*inch, m.Upper, 1e-15, text)
		assert.InDelta(t, -0.001*inch, m.Lower, 1e-15, text)
	}
	m, err := Parse(Length, "3.000 +.002/-.000", in)
	require.NoError(t, err)
	assert.Zero(t, m.Lower)
	m, err = Parse(Length, "3.000 +.004/+.002", in)
	require.NoError(t, err)
	assert.InDelta(t, 0.002*inch, m.Lower, 1e-15)

	for _, text := range []string{"3.002 ± .0005", "3.002 in ± .0005 in", "3.002 ± .0005 in", "3.002 +/- .0005", "3.002 in ± .5 thou"} {
		m, err := Parse(Length, text, in)
		require.NoError(t, err, text)
		assert.InDelta(t, 0.0005*inch, m.U, 1e-15, text)
		assert.False(t, m.HasLimits)
	}
	m, err = Parse(Temperature, "350 °F ± 10 °F", named(t, "degF"))
	require.NoError(t, err)
	assert.InDelta(t, 10*5.0/9, m.U, 1e-12, "a temperature's ± is a difference")
}

func TestParseRefuses(t *testing.T) {
	for _, c := range []struct {
		kind       Kind
		bare, text string
		want       string
	}{
		{Mass, "lb", "2.5 ton", `"2.5 ton": ton can mean more than one unit; write short ton (2,000 lb), long ton (2,240 lb) or t (1,000 kg)`},
		{Length, "inch", "50 mil", `"50 mil": mil can mean more than one unit; write thou (0.001 in) or mm`},
		{Length, "inch", "5 tenths", `"5 tenths": tenths can mean more than one unit; write .0001 in, or .1 of the unit you mean`},
		{Length, "inch", "3,125 in", `"3,125 in": the comma could be a decimal mark or a thousands mark; write 3125 in or 3.125 in`},
		{Mass, "lb", "1,25 kg", `"1,25 kg": the comma could be a decimal mark or a thousands mark; write 1250 or 1,250 for thousands and 1.25 for decimals`},
		{Mass, "lb", "1.250,5", `"1.250,5": the comma could be a decimal mark or a thousands mark; write 1250 or 1,250 for thousands and 1.25 for decimals`},
		{Length, "inch", "50 lb", `"50 lb": lb measures mass, but length is asked for; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "inch", "5 furlong", `"5 furlong": unit "furlong" is not known for length; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "inch", "3/0", `"3/0": division by zero; write it like 1/8 or 3-1/8`},
		{Length, "inch", "3.5-1/8", `"3.5-1/8": a decimal and a fraction together; write 3-1/8 or 3.125`},
		{Length, "inch", "3-9/8", `"3-9/8": the fraction is one or more; write it like 3-1/8`},
		{Length, "inch", "12 ft 14 in", `"12 ft 14 in": 14 in is a whole ft or more; carry it over into the ft`},
		{Length, "inch", "12 in 6 mm", `"12 in 6 mm": only feet and inches, or pounds and ounces, go together; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "inch", "", `"": nothing written; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "inch", "about 3", `"about 3": no number found; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "", "3", `"3": no unit; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "inch", "3.000 +.002", `"3.000 +.002": limits need both signs; write them like 3.000 +.002/-.000`},
		{Length, "inch", "3.000 +.002/-.000 mm in", `"3.000 +.002/-.000 mm in": unit "mm in" is not known for length; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "inch", "3 ± 0", `"3 ± 0": what stands after ± must be more than zero; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Length, "inch", "1e999", `"1e999": not a number; write it like 3-1/8 in, .050 in, 50 thou or 79.4 mm`},
		{Ratio, "percent", "0.5", `"0.5": a share of one or a part of a percent; write 0.5% or 50%`},
		{Temperature, "degF", "-500 F", `"-500 F": colder than absolute zero; write it like 350 °F or 175 °C`},
	} {
		var bare Unit
		if c.bare != "" {
			bare = named(t, c.bare)
		}
		_, err := Parse(c.kind, c.text, bare)
		assert.EqualError(t, err, c.want)
	}
	_, err := Parse(Length, "\xff\xfe", named(t, "inch"))
	assert.ErrorContains(t, err, "not readable text")
	_, err = Parse(Length, string(make([]byte, 5000)), named(t, "inch"))
	assert.ErrorContains(t, err, "too long")
	_, err = Parse(Choice, "3", Unit{})
	assert.ErrorContains(t, err, "not a quantity")
}

// parse(print(x)) = x, bit for bit, for every unit.
func TestExactRoundTrip(t *testing.T) {
	list := All()
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom(list).Draw(t, "unit")
		x := rapid.Float64Range(-1e12, 1e12).Draw(t, "x")
		if u.Kind == Temperature {
			x = math.Abs(x)
		}
		m, err := Parse(u.Kind, Exact(x, u), u)
		require.NoError(t, err)
		require.Equal(t, x, m.Value)
	})
}

func FuzzParse(f *testing.F) {
	for _, text := range []string{`3-1/8"`, ".050", "50 thou", "1,250 lb", "12 ft 6 in", "350 °F", "3.000 +.002/-.000", "3 ± .1", "1e+3", "½", "12'-6\"", "+", "-", "±", "/", "3/", "1e"} {
		f.Add(text, uint8(Length))
		f.Add(text, uint8(Mass))
	}
	f.Fuzz(func(t *testing.T, text string, kind uint8) {
		k := Kind(kind%uint8(YesNo-1)) + 1
		m, err := Parse(k, text, Usual(k, InchShop))
		if err != nil {
			assert.NotEmpty(t, err.Error())
			return
		}
		require.False(t, math.IsNaN(m.Value) || math.IsInf(m.Value, 0))
		again, err := Parse(k, Exact(m.Value, m.Unit), m.Unit)
		require.NoError(t, err)
		require.Equal(t, m.Value, again.Value)
	})
}
