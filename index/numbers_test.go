package index

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gudgeon/units"
)

func testReader(t require.TestingT) *reader {
	r, err := newReader()
	require.NoError(t, err)
	return r
}

func TestQuantitiesInText(t *testing.T) {
	r := testReader(t)
	for _, c := range []struct {
		text string
		want string // kind value, in SI
	}{
		{"bored to 3-1/8 in today", "[length 0.079375]"},
		{`bored to 3.125" today`, "[length 0.079375]"},
		{"79.4 mm", "[length 0.0794]"},
		{"a 3 1/8 in bore", "[length 0.079375]"},
		{"5/16 in weld", "[length 0.0079375]"},
		{"50 thou", "[length 0.00127]"},
		{"it was .050 off", "[length 0.00127]"},
		{"1,850 lb on the hook", "[mass 839.146]"},
		{"22 tons", "[mass 19958.1]"},
		{"preheat 225 F, then 107 °C", "[temperature 380.372 temperature 380.15]"},
		{"120 ft-lb and 5,000 psi", "[torque 162.698 pressure 3.44738e+07]"},
		{"12-inch bar at 90 rpm", "[length 0.3048 rotation 9.42478]"},
		{"1 in in from the face", "[length 0.0254]"},
		{"rod E7018, drawing 40-2217-C, step 1.2.3", "[]"},
		{"had 3 a day, bolt 12, 1850", "[]"},
		{"3 inboard", "[]"},
		{"", "[]"},
	} {
		var got []string
		for _, q := range r.quantities(c.text) {
			got = append(got, fmt.Sprintf("%s %.6g", q.kind, q.value))
		}
		require.Equal(t, c.want, fmt.Sprint(got), c.text)
	}
}

func TestQuantityPlaces(t *testing.T) {
	text := "the bore, 3-1/8 in, is worn"
	q := testReader(t).quantities(text)[0]
	require.Equal(t, "3-1/8 in", text[q.start:q.end])
}

func TestQuantitiesThatAreNear(t *testing.T) {
	r := testReader(t)
	for _, c := range []struct {
		a, b string
		near bool
	}{
		{"3-1/8 in", "79.4 mm", true},
		{"3-1/8 in", "3.125 in", true},
		{".050 in", "1.27 mm", true},
		{".050 in", "1.3 mm", true},
		{"1,850 lb", "840 kg", true},
		{"225 F", "107 C", true},
		{"3-1/8 in", "3-1/4 in", false},
		{"80 mm", "79.4 mm", false},
		{"3.500 in", "3.540 in", false},
		{".030 in", ".040 in", false},
		{"3-1/8 in", "3-1/8 lb", false},
	} {
		a, b := r.quantities(c.a)[0], r.quantities(c.b)[0]
		require.Equal(t, c.near, a.near(b), "%s and %s", c.a, c.b)
		require.Equal(t, c.near, b.near(a), "%s and %s", c.b, c.a)
	}
}

// A drawing that rounds inches to hundredths of a millimetre still finds the size.
func TestInchesFindTheirMillimetres(t *testing.T) {
	r := testReader(t)
	rapid.Check(t, func(t *rapid.T) {
		thou := rapid.IntRange(250, 12000).Draw(t, "thou")
		inch := r.quantities(fmt.Sprintf("%d.%03d in", thou/1000, thou%1000))
		metric := r.quantities(fmt.Sprintf("%.2f mm", float64(thou)*0.0254))
		require.Len(t, inch, 1)
		require.Len(t, metric, 1)
		require.Equal(t, units.Length, inch[0].kind)
		require.True(t, inch[0].near(metric[0]))
	})
}

func TestCodes(t *testing.T) {
	found := codes("drawing 40-2217-C, rod E7018, bolt 12, ER70S-6, 3-point")
	require.Len(t, found, 3)
	require.Equal(t, "%402217c", found[0].text)
	require.Contains(t, found[0].pieces, "%2217")
	require.Contains(t, found[0].pieces, "%4022")
	require.Contains(t, found[0].pieces, "%217c")
	require.NotContains(t, found[0].pieces, "%40")
	require.Equal(t, "%e7018", found[1].text)
	require.Contains(t, found[1].pieces, "%7018")
	require.Equal(t, "%er70s6", found[2].text)
}
