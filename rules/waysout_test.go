package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gudgeon/units"
)

func texts(ways []WayOut) (list [][]string) {
	for _, w := range ways {
		var line []string
		for _, c := range w.Changes {
			line = append(line, c.Reading.Name+" "+c.Text)
		}
		list = append(list, line)
	}
	return list
}

func TestWaysOutOfAnOverload(t *testing.T) {
	set, err := compileText(t, truckSheet)
	require.NoError(t, err)
	r := set.Evaluate(read(t, set, map[string]string{"part_weight": "4600", "truck_rating": "5000", "rating_centre": "24", "load_centre": "41", "floor": "concrete"}))
	require.Equal(t, Stop, r.Verdict)
	// 5000 × 24/26 = 4615: 26 in is the nearest whole inch at which it carries 4600.
	assert.Equal(t, [][]string{{"load_centre 26 in"}}, texts(r.WaysOut(0, units.InchShop)))
	assert.Empty(t, r.WaysOut(1, units.InchShop), "nothing to get out of")
}

func TestWaysOutBreakNothingElse(t *testing.T) {
	set, err := compileText(t, `sheet: two
readings:
  a: {ask: a, kind: length, from: 0 in, to: 90 in, can change: true}
  b: {ask: b, kind: length, from: 0 in, to: 90 in, can change: true}
rules:
  - {id: sum, check: a + b <= inch(20), level: stop, says: x, do: y, source: test}
  - {id: least, check: a >= inch(12), level: stop, says: x, do: y, source: test}
`)
	require.NoError(t, err)
	r := set.Evaluate(read(t, set, map[string]string{"a": "15", "b": "15"}))
	assert.Equal(t, [][]string{{"b 5 in"}}, texts(r.WaysOut(0, units.InchShop)), "a alone would have to go to 5 in and break least")
}

func TestPairsWhereNoneWorksAlone(t *testing.T) {
	set, err := compileText(t, `sheet: two
readings:
  a: {ask: a, kind: length, from: 10 in, to: 90 in, can change: true}
  b: {ask: b, kind: length, from: 10 in, to: 90 in, can change: true}
rules:
  - {id: both, check: a <= inch(20) and b <= inch(20), level: stop, says: x, do: y, source: test}
`)
	require.NoError(t, err)
	r := set.Evaluate(read(t, set, map[string]string{"a": "24", "b": "22"}))
	ways := texts(r.WaysOut(0, units.InchShop))
	require.NotEmpty(t, ways)
	assert.Len(t, ways[0], 2)
}

func TestWaysOutOfAStepwiseRule(t *testing.T) {
	set, err := compileText(t, `sheet: steps
readings:
  depth: {ask: depth, kind: length, from: 0 in, to: 9 in, can change: true}
  grade: {ask: grade, kind: choice, options: [low, middle, high], can change: true}
values:
  allowed: "depth < inch(2) ? inch(1) : (depth < inch(5) ? inch(4) : inch(0))"
rules:
  - {id: window, check: depth <= allowed, level: stop, says: x, do: y, source: test}
  - {id: grade, check: grade == "high", level: caution, says: x, do: y, source: test}
`)
	require.NoError(t, err)
	r := set.Evaluate(read(t, set, map[string]string{"depth": "4.5", "grade": "low"}))
	assert.Equal(t, [][]string{{"depth 4 in"}}, texts(r.WaysOut(0, units.InchShop)))
	assert.Equal(t, [][]string{{"grade high"}}, texts(r.WaysOut(1, units.InchShop)))
}

// Applying any way out gives go for its rule and worsens none.
func TestWaysOutHold(t *testing.T) {
	set, err := compileText(t, `sheet: random
readings:
  a: {ask: a, kind: length, from: 1 in, to: 40 in, can change: true, with: tape}
  b: {ask: b, kind: length, from: 1 in, to: 40 in, can change: true, with: calipers}
  w: {ask: w, kind: mass, from: 1 lb, to: 9000 lb, can change: true, with: load cell}
rules:
  - {id: moment, check: w * a <= lb(1000) * inch(24), level: stop, life safety: true, says: x, do: y, source: test}
  - {id: ratio, check: a / b <= 4, level: caution, says: x, do: y, source: test}
  - {id: stub, check: "between(b, inch(3), inch(30))", level: stop, says: x, do: y, source: test}
  - {id: wave, check: "sin(rad(1) * (a / inch(1))) >= 0.2 or w <= lb(50)", level: caution, says: x, do: y, source: test}
`)
	require.NoError(t, err)
	rapid.Check(t, func(t *rapid.T) {
		readings := Readings{}
		for _, d := range set.Readings {
			readings[d.Name] = Reading{Value: rapid.Float64Range(d.From, d.To).Draw(t, d.Name)}
		}
		r := set.Evaluate(readings)
		for i := range r.Results {
			for _, way := range r.WaysOut(i, units.InchShop) {
				moved := Readings{}
				for name, reading := range readings {
					moved[name] = reading
				}
				for _, c := range way.Changes {
					// What is shown, typed back in, must hold too.
					reading, err := c.Reading.Read(c.Text)
					require.NoError(t, err)
					moved[c.Reading.Name] = reading
				}
				after := set.Evaluate(moved)
				require.Equal(t, Go, after.Results[i].Verdict)
				for j := range after.Results {
					require.LessOrEqual(t, after.Results[j].Verdict, max(r.Results[j].Verdict, Go))
				}
			}
		}
	})
}

func TestNeeded(t *testing.T) {
	set, err := compileText(t, truckSheet)
	require.NoError(t, err)
	values := map[string]string{"part_weight": "4,600", "truck_rating": "5000 lb", "rating_centre": "24"}
	r := set.Evaluate(read(t, set, values))
	assert.Equal(t, "go if load_centre is at most 26.0869 in", r.Needed(0, units.InchShop))
	assert.Empty(t, r.Needed(1, units.InchShop), "load_centre would have to be known too")
	delete(values, "part_weight")
	values["load_centre"] = "30 in"
	r = set.Evaluate(read(t, set, values))
	assert.Equal(t, "go if part_weight is at most 4,000 lb", r.Needed(0, units.InchShop))
	values["part_weight"], values["load_centre"] = "4600", "38"
	r = set.Evaluate(read(t, set, values))
	assert.Empty(t, r.Needed(1, units.InchShop), "no floor makes it go; on some the rule is not needed")
}

// A way out is not offered when it would still end at a life-safety stop on the
// same reading, even if that rule is no worse than before.
func TestNoWayOutBelowALifeSafetyStop(t *testing.T) {
	text := `sheet: legs
readings:
  leg: {ask: leg, kind: length, from: 1 in, to: 200 in, can change: true}
  load: {ask: load, kind: mass, from: 1 lb, to: 9000 lb}
rules:
  - {id: strength, check: load <= lb(100) * (leg / inch(1)), level: stop, says: x, do: y, source: test}
  - {id: flat, check: leg >= inch(90), level: stop, life safety: LIFE, says: x, do: y, source: test}
`
	ways := func(life string) [][]string {
		set, err := compileText(t, strings.Replace(text, "LIFE", life, 1))
		require.NoError(t, err)
		r := set.Evaluate(read(t, set, map[string]string{"leg": "50", "load": "6,000"}))
		require.Equal(t, Stop, r.Results[0].Verdict)
		require.Equal(t, Stop, r.Results[1].Verdict)
		assert.Equal(t, [][]string{{"leg 90 in"}}, texts(r.WaysOut(1, units.InchShop)))
		return texts(r.WaysOut(0, units.InchShop))
	}
	assert.Equal(t, [][]string{{"leg 60 in"}}, ways("no"))
	assert.Empty(t, ways("yes"))
}
