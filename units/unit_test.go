package units

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade/outside"
)

// TestSizes compares every unit with the definitions of GNU units 2.22
// (Debian package units, definitions.units), see testdata/reference.sh. The
// tolerance is the last digit of a float64 product.
func TestSizes(t *testing.T) {
	file, err := os.Open("testdata/reference.csv")
	require.NoError(t, err)
	defer file.Close()
	read := csv.NewReader(file)
	read.Comment = '#'
	rows, err := read.ReadAll()
	require.NoError(t, err)

	seen := map[string]bool{}
	var checks []outside.Check
	for _, row := range rows[1:] {
		name := row[0]
		seen[name] = true
		u, ok := Named(name)
		require.True(t, ok, name)
		want, err := strconv.ParseFloat(row[3], 64)
		require.NoError(t, err)
		written := map[string]float64{"degF": 212, "degC": 100}[name]
		if written == 0 {
			written = 1
		}
		checks = append(checks, outside.Check{name, fmt.Sprintf("%g %s", written, row[1]), "GNU Units 2.22, definitions.units; units/testdata/reference.sh",
			outside.Computed, row[2], want, 4e-16 * want, func() (float64, error) { return u.ToSI(written), nil }})
	}
	outside.Run(t, "units", checks)
	for _, u := range All() {
		assert.True(t, seen[u.Name], "unit %s has no outside check", u.Name)
	}
}

func TestEveryKindHasItsUnits(t *testing.T) {
	for _, name := range KindNames() {
		k, ok := ParseKind(name)
		require.True(t, ok)
		if !k.Numeric() {
			continue
		}
		var si bool
		for _, u := range OfKind(k) {
			si = si || (u.Factor == 1 && u.Offset == 0)
		}
		assert.True(t, si, "%s has no SI unit, so Exact cannot fall back on one", name)
		for _, s := range []System{InchShop, MetricShop} {
			assert.Equal(t, k, Usual(k, s).Kind, "%s has no usual unit", name)
		}
	}
}

// Two units of one kind must never share a spelling.
func TestSpellingsAreDistinct(t *testing.T) {
	for _, u := range All() {
		for _, spelled := range append([]string{u.Symbol, u.Name}, u.Aliases...) {
			if spelled == "" {
				continue
			}
			got, ok := Lookup(u.Kind, spelled)
			require.True(t, ok, spelled)
			assert.Equal(t, u.Name, got.Name, "%q", spelled)
		}
	}
}

func TestKindAlgebra(t *testing.T) {
	assert.Equal(t, Torque.Dim(), Force.Dim().Mul(Length.Dim()))
	assert.Equal(t, Pressure.Dim(), Force.Dim().Div(Area.Dim()))
	assert.Equal(t, Power.Dim(), Voltage.Dim().Mul(Current.Dim()))
	assert.Equal(t, Speed.Dim(), Feed.Dim().Mul(Rotation.Dim()))
	assert.Equal(t, HeatInput.Dim(), Power.Dim().Div(Speed.Dim()))
	assert.Equal(t, Length.Dim(), Expansion.Dim().Mul(TemperatureDifference.Dim()).Mul(Length.Dim()))
	assert.NotEqual(t, Angle.Dim(), Ratio.Dim())
}

func TestShow(t *testing.T) {
	for _, c := range []struct {
		v     float64
		unit  string
		round Rounding
		want  string
	}{
		{4285.714, "lb", Nearest, "4,286 lb"},
		{4285.714, "lb", Down, "4,285 lb"},
		{4285.2, "lb", Up, "4,286 lb"},
		{28, "inch", Up, "28 in"},
		{28, "inch", Down, "28 in"},
		{3.125, "inch", Nearest, "3.125 in"},
		{0.00005, "inch", Down, "0 in"},
		{0.00005, "inch", Up, "0.0001 in"},
		{-0.0021, "inch", Nearest, "-0.0021 in"},
		{1234567.8, "psi", Nearest, "1,234,568 psi"},
		{12.3456, "lb", Nearest, "12.35 lb"},
		{99.3, "percent", Down, "99.3%"},
		{30, "deg", Nearest, "30°"},
		{350, "degF", Nearest, "350 °F"},
		{0, "lb", Up, "0 lb"},
	} {
		u, ok := Named(c.unit)
		require.True(t, ok)
		assert.Equal(t, c.want, ShowIn(u.ToSI(c.v), u, c.round))
	}
	assert.Equal(t, "not known", Show(math.NaN(), Length, InchShop, Nearest))
	assert.Equal(t, "79.375 mm", Show(3.125*inch, Length, MetricShop, Nearest))
}
