package bore

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gudgeon/units"
)

// offJob is an invented link: an earlier repair bored its eye 1/8 in off, and the
// counterbore with it.
func offJob() []Candidate {
	return []Candidate{
		{Feature: WornBore, Centre: XY{0.125 * in, 0.01 * in}, U: 0.002 * in},
		{Feature: OutsideOfBoss, Centre: XY{0.003 * in, -0.004 * in}, U: 0.010 * in},
		{Feature: UntouchedShoulder, Centre: XY{-0.002 * in, 0.001 * in}, U: 0.003 * in},
		{Feature: OppositeBore, Centre: XY{0.001 * in, 0.002 * in}, U: 0.002 * in},
	}
}

func TestTheOldBoreIsTheOddOneOut(t *testing.T) {
	c, err := Compare(offJob())
	require.NoError(t, err)
	assert.Equal(t, OddOneOut, c.Verdict)
	assert.Equal(t, []int{1, 2, 3}, c.Group)
	require.Len(t, c.Odd, 1)
	assert.Equal(t, 0, c.Odd[0].Candidate)
	assert.InDelta(t, 0.125*in, c.Odd[0].Off.Size, 0.003*in)
	assert.Greater(t, c.Odd[0].En, 10.0)
	assert.True(t, c.EarlierRepair)
	assert.False(t, c.Trusts(0))
	assert.True(t, c.Trusts(1))
	text := c.Text(units.InchShop)
	assert.Contains(t, text, "The outside of the boss, the untouched shoulder and the opposite bore agree about the centre.")
	assert.Contains(t, text, "The worn bore does not: it is 0.125")
	assert.Contains(t, text, "towards 2:50")
	assert.Contains(t, text, "an earlier repair that was bored off centre")
	assert.Contains(t, text, "measure the grease hole")
}

func TestAComparisonDoesNotGuess(t *testing.T) {
	worn, boss := offJob()[0], offJob()[1]
	counterbore := Candidate{Feature: Counterbore, Centre: worn.Centre, U: 0.002 * in}
	shoulder := offJob()[2]
	for name, c := range map[string]struct {
		list    []Candidate
		verdict Verdict
		repair  bool
		says    string
	}{
		"one":                             {[]Candidate{worn}, OneFeature, false, "One feature proves nothing"},
		"two that differ":                 {[]Candidate{worn, boss}, Undecided, false, "Do not cut yet"},
		"two cut in one set-up outvote":   {[]Candidate{worn, counterbore, boss}, Undecided, false, "cut in one set-up"},
		"two of each: the untouched win":  {[]Candidate{worn, counterbore, boss, shoulder}, OddOneOut, true, "earlier repair"},
		"only what one repair cut agrees": {[]Candidate{worn, counterbore}, AllAgree, false, "cut in one set-up"},
		"a boss that is bent": {[]Candidate{{Feature: OutsideOfBoss, Centre: XY{0.1 * in, 0}, U: 0.002 * in},
			shoulder, offJob()[3], {Feature: WornBore, Centre: XY{0, 0}, U: 0.002 * in}}, OddOneOut, false, "Look at the odd one out again"},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := Compare(c.list)
			require.NoError(t, err)
			assert.Equal(t, c.verdict, got.Verdict)
			assert.Equal(t, c.repair, got.EarlierRepair)
			assert.Contains(t, got.Text(units.MetricShop), c.says)
		})
	}
}

func TestAgreementWithinVagueReadingsSaysWhatItHides(t *testing.T) {
	c, err := Compare([]Candidate{{Feature: WornBore, Centre: XY{0.1 * in, 0}, U: 0.04 * in}, {Feature: OutsideOfBoss, U: 0.04 * in}})
	require.NoError(t, err)
	assert.Equal(t, AllAgree, c.Verdict)
	assert.InDelta(t, 0.1131*in, c.Blind, 0.0001*in)
	assert.Contains(t, c.Text(units.InchShop), "could still hide an offset of 0.11")
}

func TestCompareDoesNotCareForOrderOrPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		list := offJob()
		mixed := rapid.Permutation(list).Draw(t, "order")
		shift := Polar(rapid.Float64Range(0, 7).Draw(t, "way"), rapid.Float64Range(0, 0.1).Draw(t, "far"))
		for i := range mixed {
			mixed[i].Centre = mixed[i].Centre.Add(shift)
		}
		a, err := Compare(list)
		require.NoError(t, err)
		b, err := Compare(mixed)
		require.NoError(t, err)
		assert.Equal(t, a.Verdict, b.Verdict)
		assert.InDelta(t, a.Centre.X+shift.X, b.Centre.X, 1e-12)
		assert.Equal(t, WornBore, b.Candidates[b.Odd[0].Candidate].Feature)
	})
}

func TestCompareRefuses(t *testing.T) {
	_, err := Compare(nil)
	assert.Error(t, err)
	_, err = Compare([]Candidate{{Feature: WornBore}})
	assert.ErrorContains(t, err, "worn bore: standard uncertainty")
	_, err = Compare(make([]Candidate, 13))
	assert.Error(t, err)
	_, err = Compare([]Candidate{{Feature: 99, U: 0.001}})
	assert.Error(t, err)
}
