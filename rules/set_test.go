package rules

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// testLibrary stands in for the trade, so that the engine is tested alone.
func testLibrary() *Library {
	return NewLibrary([]trade.Function{{
		Name: "truck.capacity_at", Formula: "W = W0·c0/c", Source: "test", About: "capacity",
		Params: []trade.Param{
			{Name: "rating", Kind: units.Mass, Low: 1, High: 1e6},
			{Name: "rating_centre", Kind: units.Length, Low: 0.1, High: 3},
			{Name: "load_centre", Kind: units.Length, Low: 0.01, High: 10},
		},
		Results: []trade.Result{{Kind: units.Mass, Round: units.Down}},
		Call: func(in trade.Args, out []float64) error {
			if err := trade.InRange("load centre", in.X[2], 0.01, 10, units.Length, "it is off the forks"); err != nil {
				return err
			}
			out[0] = in.X[0] * min(1, in.X[1]/in.X[2])
			return nil
		},
		Steps: func(in trade.Args) []trade.Step {
			return []trade.Step{{Name: "load moment", Formula: "M = W0·g·c0", Kind: units.Torque, Value: in.X[0] * 9.80665 * in.X[1]}}
		},
	}, {
		Name: "lug.modes", About: "two modes", Source: "test",
		Params: []trade.Param{
			{Name: "load", Kind: units.Mass, Low: 0, High: 1e6},
			{Name: "grade", Kind: units.Choice, Options: []string{"mild", "high"}},
			{Name: "factor", Kind: units.Number, Low: 1, High: 5, Optional: true, Default: 2},
		},
		Results: []trade.Result{{Name: "use", Kind: units.Ratio, Round: units.Up}, {Name: "tension", Kind: units.Force}},
		Call: func(in trade.Args, out []float64) error {
			out[0] = in.X[0] / 1000 * in.X[2] / (1 + in.X[1])
			out[1] = in.X[0] * 9.80665
			return nil
		},
	}})
}

func compileText(t *testing.T, text string) (*Set, error) {
	t.Helper()
	return compileSheetText(text, testLibrary())
}

func compileSheetText(text string, l *Library) (*Set, error) {
	sheet, err := ReadSheet(&source.File{Name: "truck.yaml", Text: text})
	if err != nil {
		return nil, err
	}
	return CompileSheet(l, NoShelf{}, sheet)
}

const truckSheet = `sheet: truck
about: Loads on forks.
readings:
  part_weight:   {ask: Weight of the part, kind: mass, unit: lb, from: 1 lb, to: 200000 lb}
  truck_rating:  {ask: Rated capacity on the plate, kind: mass, unit: lb, from: 100 lb, to: 100000 lb}
  rating_centre: {ask: Load centre on the plate, kind: length, unit: in, usual: 24 in, from: 4 in, to: 60 in}
  load_centre:   {ask: Fork face to centre of gravity, kind: length, unit: in, from: 1 in, to: 240 in, can change: true}
  floor:         {ask: What is the floor, kind: choice, options: [concrete, gravel, dock plate]}
values:
  truck_capacity: truck.capacity_at(truck_rating, rating_centre, load_centre)
rules:
  - id: truck-overload
    check: part_weight <= truck_capacity
    level: stop
    says: The part weighs {part_weight}, and the truck carries {truck_capacity} at {load_centre}.
    do: Bring the load closer, or use a bigger truck.
    source: 29 CFR 1910.178 App. A
  - id: truck-gravel
    when: floor == "gravel"
    check: load_centre <= inch(36)
    level: caution
    says: Far out on gravel.
    do: Go another way.
    source: common practice, no source
`

func read(t *testing.T, s *Set, values map[string]string) Readings {
	t.Helper()
	out := Readings{}
	for name, text := range values {
		d, ok := s.Reading(name)
		require.True(t, ok, name)
		r, err := d.Read(text)
		require.NoError(t, err)
		out[name] = r
	}
	return out
}

func TestEvaluate(t *testing.T) {
	set, err := compileText(t, truckSheet)
	require.NoError(t, err)
	full := map[string]string{"part_weight": "4,600", "truck_rating": "5000 lb", "rating_centre": "24", "load_centre": "28 in", "floor": "concrete"}

	r := set.Evaluate(read(t, set, full))
	assert.Equal(t, Stop, r.Verdict)
	over := r.Results[0]
	assert.Equal(t, Stop, over.Verdict)
	assert.InDelta(t, (5000*24.0/28-4600)*0.45359237, over.Margin, 1e-9)
	assert.InDelta(t, 4600/(5000*24.0/28), over.Use, 1e-12)
	assert.Equal(t, Line{Symbols: "part_weight ≤ truck_capacity", Numbers: "4,600 lb ≤ 4,285 lb", Result: "315 lb too much"}, r.Worked(0, units.InchShop))
	assert.Equal(t, []Line{
		{Name: "truck_capacity", Symbols: "truck.capacity_at(truck_rating, rating_centre, load_centre)", Numbers: "truck.capacity_at(5,000 lb, 24 in, 28 in)", Result: "4,285 lb"},
		{Name: "load moment", Symbols: "M = W0·g·c0", Result: "10,000 lbf·ft", Inner: true},
	}, r.Steps(0, units.InchShop))
	assert.Equal(t, "The part weighs 4,600 lb, and the truck carries 4,285 lb at 28 in.", r.fill(over.Rule.Says, units.InchShop))
	assert.Equal(t, NotNeeded, r.Results[1].Verdict)

	delete(full, "part_weight")
	r = set.Evaluate(read(t, set, full))
	assert.Equal(t, Waiting, r.Verdict)
	assert.Equal(t, []string{"part_weight"}, r.Waiting)
	assert.Equal(t, []string{"part_weight"}, r.Results[0].Missing)

	delete(full, "floor")
	r = set.Evaluate(read(t, set, full))
	assert.Equal(t, Waiting, r.Results[1].Verdict, "a when that is not known waits")
	assert.Equal(t, []string{"floor"}, r.Results[1].Missing)

	full["part_weight"] = "4285.714 lb"
	r = set.Evaluate(read(t, set, full))
	assert.Equal(t, Go, r.Results[0].Verdict)
}

// A limit met exactly is met, whatever binary arithmetic makes of the inches.
func TestExactLimit(t *testing.T) {
	set, err := compileText(t, `sheet: fit
readings:
  bore: {ask: Bore, kind: length, from: 1 in, to: 9 in}
  bush: {ask: Bush, kind: length, from: 1 in, to: 9 in}
rules:
  - {id: least, check: bush - bore >= thou(2), level: stop, says: loose, do: sleeve, source: test}
  - {id: most, check: bush - bore <= thou(2), level: stop, says: tight, do: bore, source: test}
  - {id: strict, check: bush - bore > thou(2), level: stop, says: loose, do: sleeve, source: test}
`)
	require.NoError(t, err)
	r := set.Evaluate(read(t, set, map[string]string{"bore": "3.000", "bush": "3.002"}))
	assert.Equal(t, Go, r.Results[0].Verdict)
	assert.Equal(t, Go, r.Results[1].Verdict)
	assert.Equal(t, Stop, r.Results[2].Verdict)
	assert.Equal(t, "exactly at the limit", r.Worked(0, units.InchShop).Result)
}

func TestOutcomeIsFixedEarly(t *testing.T) {
	set, err := compileText(t, `sheet: early
readings:
  a: {ask: a, kind: length, from: 0 in, to: 9 in}
  b: {ask: b, kind: length, from: 0 in, to: 9 in}
  cast: {ask: cast, kind: yes/no}
rules:
  - {id: both, check: a <= inch(1) and b <= inch(1), level: stop, says: x, do: y, source: test}
  - {id: any, check: a <= inch(1) or b <= inch(1), level: stop, says: x, do: y, source: test}
  - {id: pick, check: "(cast ? a : b) <= inch(1)", level: stop, says: x, do: y, source: test}
  - {id: neither, check: not (a > inch(1) or b > inch(1)), level: stop, says: x, do: y, source: test}
  - {id: asked, check: given(a), level: caution, says: x, do: y, source: test}
`)
	require.NoError(t, err)
	verdicts := func(values map[string]string) (v []string) {
		for _, r := range set.Evaluate(read(t, set, values)).Results {
			v = append(v, r.Verdict.String())
		}
		return v
	}
	assert.Equal(t, []string{"waiting", "waiting", "waiting", "waiting", "caution"}, verdicts(nil))
	assert.Equal(t, []string{"stop", "waiting", "waiting", "stop", "go"}, verdicts(map[string]string{"a": "2"}))
	assert.Equal(t, []string{"waiting", "go", "waiting", "waiting", "go"}, verdicts(map[string]string{"a": "1"}))
	assert.Equal(t, []string{"waiting", "go", "go", "waiting", "caution"}, verdicts(map[string]string{"b": "1", "cast": "no"}))
}

func TestWaitsForWhatMatters(t *testing.T) {
	set, err := compileText(t, `sheet: early
readings:
  a: {ask: a, kind: length, from: 0 in, to: 9 in}
  b: {ask: b, kind: length, from: 0 in, to: 9 in}
  cast: {ask: cast, kind: yes/no}
values:
  pick: "cast ? a : b"
rules:
  - {id: pick, check: pick <= inch(1), level: stop, says: x, do: y, source: test}
  - {id: both, check: a <= inch(1) and b <= inch(1), level: stop, says: x, do: y, source: test}
`)
	require.NoError(t, err)
	r := set.Evaluate(nil)
	assert.Equal(t, []string{"cast"}, r.Results[0].Missing, "which of a and b is not known before cast is")
	r = set.Evaluate(read(t, set, map[string]string{"cast": "no", "a": "1"}))
	assert.Equal(t, []string{"b"}, r.Results[0].Missing)
	assert.Equal(t, []string{"b"}, r.Results[1].Missing)
}

func TestRefusedCalculationIsNeverGo(t *testing.T) {
	set, err := compileText(t, truckSheet)
	require.NoError(t, err)
	readings := read(t, set, map[string]string{"part_weight": "100", "truck_rating": "5000", "rating_centre": "24", "load_centre": "28", "floor": "concrete"})
	set.readings["load_centre"].To = 100
	readings["load_centre"] = Reading{Value: 20} // metres: past what the function allows
	r := set.Evaluate(readings)
	assert.Equal(t, Stop, r.Results[0].Verdict)
	assert.EqualError(t, r.Results[0].Err, "load centre is 787.4016 in; it must be from 0.3937 in to 393.7008 in: it is off the forks")
}

func TestReadingsOutOfRangeAreRefused(t *testing.T) {
	set, err := compileText(t, truckSheet)
	require.NoError(t, err)
	d, _ := set.Reading("part_weight")
	_, err = d.Read("-5 lb")
	assert.EqualError(t, err, "part_weight: -5 lb is outside what makes sense here, 1 lb to 200,000 lb; look at it again")
	floor, _ := set.Reading("floor")
	_, err = floor.Read("mud")
	assert.EqualError(t, err, `floor: "mud" is not one of: concrete, gravel, dock plate`)
	r, err := floor.Read("2")
	require.NoError(t, err)
	assert.Equal(t, "gravel", r.Text)

	// A value that never came through Read counts as missing, never as go.
	report := set.Evaluate(Readings{"part_weight": {Value: -1}, "floor": {Value: 7}})
	assert.Contains(t, report.Waiting, "part_weight")
	assert.Contains(t, report.Waiting, "floor")
}

func TestLimitsGiveLowAndHigh(t *testing.T) {
	set, err := compileText(t, `sheet: fit
readings:
  finish: {ask: Finish bore, kind: length, from: 1 in, to: 9 in, limits: true}
  bore: {ask: Bore, kind: length, from: 1 in, to: 9 in}
rules:
  - {id: bore-size, check: "between(bore, finish_low, finish_high)", level: stop, says: "out of {finish_low} to {finish_high}", do: y, source: test}
`)
	require.NoError(t, err)
	r := set.Evaluate(read(t, set, map[string]string{"finish": "3.000 +.002/-.000", "bore": "3.0025"}))
	assert.Equal(t, Stop, r.Verdict)
	line := r.Worked(0, units.InchShop)
	assert.Equal(t, "3.0025 in ≤ 3.002 in", line.Numbers)
	assert.Equal(t, "0.0005 in too much", line.Result)
	assert.Equal(t, "out of 3 in to 3.002 in", r.fill(r.Results[0].Rule.Says, units.InchShop))
	bore, _ := set.Reading("bore")
	_, err = bore.Read("3.000 +.002/-.000")
	assert.ErrorContains(t, err, "one measured value is asked for")
}
