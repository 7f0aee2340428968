package units

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestShopValue(t *testing.T) {
	in, lb := named(t, "inch"), named(t, "lb")
	for _, c := range []struct {
		at, change float64
		unit       Unit
		fractions  bool
		up         bool
		fineness   int
		want       string
	}{
		{26.087, -15, in, true, false, 0, "26 in"},
		{26.6, -15, in, true, false, 1, "26-1/2 in"},
		{26.087, 2, in, true, true, 2, "26-1/4 in"},
		{0.3, 0.1, in, true, true, 4, "5/16 in"},
		{1250.3, 1, in, true, true, 0, "1,251 in"},
		{3437.5, 437.5, lb, false, true, 0, "3,450 lb"},
		{3437.5, 437.5, lb, false, true, 1, "3,440 lb"},
		{3, 1, in, true, true, 0, "3 in"},
		{-2.3, -1, in, true, false, 1, "-2-1/2 in"},
	} {
		_, text := ShopValue(c.unit.ToSI(c.at), c.unit, c.fractions, c.up, c.change*c.unit.Factor, c.fineness)
		assert.Equal(t, c.want, text)
	}
}

// A shop value lies on the safe side of what it stands for, and reads back as
// itself.
func TestShopValueIsSafe(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.SampledFrom([]Unit{named(t, "inch"), named(t, "lb"), named(t, "deg"), named(t, "mm"), named(t, "thou")}).Draw(t, "unit")
		from := rapid.Float64Range(-500, 500).Draw(t, "from")
		change := rapid.Float64Range(-100, 100).Draw(t, "change")
		if math.Abs(change) < 1e-3 {
			return
		}
		at, up := from+change, change > 0
		fineness := rapid.IntRange(0, Finenesses-2).Draw(t, "fineness")
		x, text := ShopValue(u.ToSI(at), u, rapid.Bool().Draw(t, "fractions"), up, change*u.Factor, fineness)
		tiny := 1e-9 * math.Abs(u.ToSI(at))
		if up {
			require.GreaterOrEqual(t, x, u.ToSI(at)-tiny, text)
		} else {
			require.LessOrEqual(t, x, u.ToSI(at)+tiny, text)
		}
		m, err := Parse(u.Kind, text, u)
		require.NoError(t, err)
		require.InDelta(t, x, m.Value, 1e-12+1e-9*math.Abs(x), text)
	})
}
