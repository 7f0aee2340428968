package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/units"
)

const kindsSheet = `sheet: kinds
readings:
  bore: {ask: bore, kind: length, from: 0 in, to: 90 in}
  load: {ask: load, kind: mass, from: 0 lb, to: 900 lb}
  push: {ask: push, kind: force, from: 0 lbf, to: 900 lbf}
  twist: {ask: twist, kind: torque, from: 0 lbf_ft, to: 900 lbf_ft}
  work: {ask: work, kind: energy, from: 0 J, to: 900 J}
  grade: {ask: grade, kind: choice, options: [mild, high]}
  other: {ask: other, kind: choice, options: [high, mild, top]}
  hot: {ask: hot, kind: temperature, from: 0 °F, to: 900 °F}
  rise: {ask: rise, kind: temperature difference, from: 0 °F, to: 900 °F}
  tilt: {ask: tilt, kind: angle, from: 0 °, to: 90 °}
  share: {ask: share, kind: ratio, from: 0 %, to: 100 %}
  flag: {ask: flag, kind: yes/no}
  round: {ask: round, kind: survey, unit: in, from: -1 in, to: 9 in}
values:
  lug: 'lug.modes({load: load, grade: grade})'
  probe: |
    EXPRESSION
`

// kindOf checks an expression and gives what the checker takes it for, or the
// first line of its message.
func kindOf(t *testing.T, expression string) string {
	t.Helper()
	set, err := compileText(t, strings.Replace(kindsSheet, "EXPRESSION", expression, 1))
	if err != nil {
		line, _, _ := strings.Cut(err.Error(), "\n")
		_, what, _ := strings.Cut(line, ": ")
		return "refused: " + what
	}
	for _, v := range set.Values {
		if v.Name == "probe" {
			return v.Type.String()
		}
	}
	t.Fatal("no probe")
	return ""
}

func TestKinds(t *testing.T) {
	for _, c := range []struct{ expression, want string }{
		// sums keep their kind and take nothing else
		{"bore + mm(2)", "length"},
		{"bore - thou(5)", "length"},
		{"-bore", "length"},
		{"bore + load", "refused: adds length and mass"},
		{"load - bore", "refused: takes length from mass"},
		{"bore + 2", "refused: adds length and a bare number"},
		{"share + 1", "a bare number"},
		{"bore + grade", "refused: adds length and a choice"},
		{"flag + flag", "refused: adds a yes/no and a yes/no"},
		{"twist + work", "refused: adds torque and energy"},
		{"push * bore + twist", "torque"},
		{"push * bore + work", "energy"},
		{"bore * bore + bore", "refused: adds area and length"},
		{"push / bore + push", "refused: adds stiffness or line load and force"},
		// products have the kind of their dimension
		{"bore * bore", "area"},
		{"bore ^ 3", "volume"},
		{"bore ^ 4", "second moment"},
		{"push / (bore * bore)", "pressure"},
		{"load / (bore ^ 3)", "density"},
		{"bore / mm(1)", "a bare number"},
		{"2 * bore", "length"},
		{"bore / 2", "length"},
		{"2 / bore", "1/length"},
		{"push * bore", "torque or energy"},
		{"tilt * bore", "length×angle"},
		{"weight_of(load) / (bore * bore)", "pressure"},
		{"bore ^ 0.5", "refused: a quantity is raised to a whole number from -6 to 6 only"},
		{"2 ^ bore", "refused: an exponent is a bare number, not length"},
		{"sqrt(bore * bore)", "length"},
		{"sqrt(bore)", "refused: sqrt cannot take the root of length"},
		// temperatures are not differences of temperature
		{"hot - degF(70)", "temperature difference"},
		{"hot + rise", "temperature"},
		{"rise + hot", "temperature"},
		{"hot - rise", "temperature"},
		{"hot + hot", "refused: adds temperature and temperature"},
		{"hot * 2", "refused: a temperature cannot be multiplied or divided"},
		{"rise * 2", "temperature difference"},
		{"-hot", "refused: - does not go with temperature"},
		// comparisons
		{"bore <= inch(2)", "a yes/no"},
		{"bore <= 2", "refused: compares length with a bare number"},
		{"bore <= lb(2)", "refused: compares length with mass"},
		{"hot <= rise", "refused: compares temperature with temperature difference"},
		{"twist <= work", "refused: compares torque with energy"},
		{"push * bore <= twist", "a yes/no"},
		{"push * bore <= push", "refused: compares torque or energy with force"},
		{"share <= 0.5", "a yes/no"},
		{"bore == inch(2)", "refused: two measured values are never exactly the same"},
		{"between(bore, mm(1), inch(2))", "a yes/no"},
		{"between(bore, mm(1), lb(2))", "refused: compares length with mass"},
		// words
		{`grade == "mild"`, "a yes/no"},
		{`grade != "mild"`, "a yes/no"},
		{`grade in ["mild", "high"]`, "a yes/no"},
		{`grade == "mid"`, `refused: "mid" is not an option of grade`},
		{"grade == other", `refused: other can be "top", which grade does not know`},
		{"other == grade", "a yes/no"},
		{"grade == bore", "refused: compares a choice with length"},
		{`"mild" == "high"`, "refused: compares two words with each other"},
		{"flag == true", "a yes/no"},
		// yes and no
		{"flag and bore < inch(1)", "a yes/no"},
		{"flag and bore", "refused: and needs a yes/no on both sides, and this is length"},
		{"not flag", "a yes/no"},
		{"not bore", "refused: not needs a yes/no, and this is length"},
		{"given(bore)", "a yes/no"},
		{"given(bore + bore)", "refused: given asks for a reading or a value by its name"},
		{"flag ? bore : mm(1)", "length"},
		{"flag ? bore : load", "refused: both sides of : must be of one kind, not length and mass"},
		{"bore ? bore : bore", "refused: a condition is needed before ?, and this is length"},
		// functions
		{"min(bore, mm(2), inch(3))", "length"},
		{"max(bore, load)", "refused: max takes values of one kind, not length and mass"},
		{"abs(bore - mm(2))", "length"},
		{"hypot(bore, bore)", "length"},
		{"sin(tilt)", "a bare number"},
		{"sin(bore)", "refused: sin takes angle, not length"},
		{"atan(bore / mm(1))", "angle"},
		{"sin()", "refused: sin does not take 0 values"},
		{"inch(bore)", "refused: inch needs one number"},
		{"inch(3 + 1/8)", "length"},
		{"furlong(2)", "refused: there is no function furlong"},
		{"truck.capacity_at(load, bore, bore)", "mass"},
		{"truck.capacity_at(load, bore)", "refused: truck.capacity_at also needs load_centre"},
		{"truck.capacity_at(load, load, bore)", "refused: rating_centre of truck.capacity_at is length, not mass"},
		{"truck.capacity_at(load, bore, bore, bore)", "refused: truck.capacity_at takes 3 values, not 4"},
		{"truck.capacity_at({rating: load, rating_centre: bore, load_centre: bore})", "mass"},
		{"truck.capacity_at({rating: load, rating_centre: bore, load_center: bore})", "refused: truck.capacity_at has no argument load_center"},
		{"truck.capacity_at(load, bore, ft(2000))", "refused: load_centre of truck.capacity_at is 24,000 in; it must be from 0.3937 in to 393.7008 in"},
		{`lug.modes({load: load, grade: "soft"})`, `refused: "soft" is not an option of grade of lug.modes`},
		{"lug.modes({load: load, grade: other})", `refused: other can be "top", which grade of lug.modes does not know`},
		{"lug.use", "a bare number"},
		{"lug.tension", "force"},
		{"lug.strength", "refused: there is no field strength"},
		{"lug + 1", "refused: adds a record of use, tension and a bare number"},
		{"bore.use", "refused: length has no fields"},
		{"truck", "refused: truck is a group of functions"},
		{"round", "a survey"},
		{"round + bore", "refused: adds a survey and length"},
		// what the language has not
		{"bores", "refused: bores is not a reading or a value here"},
		{"[1, 2]", "refused: this is not part of the rule language"},
		{"map([1], # + 1)", "refused: this is not part of the rule language"},
		{"bore % 2", "refused: the operator % is not part of the rule language"},
		{`"a" matches "b"`, "refused: the operator matches is not part of the rule language"},
		{"let x = 1; x", "refused: this is not part of the rule language"},
		{"1 / 0", "refused: this is not a finite number"},
	} {
		assert.Equal(t, c.want, kindOf(t, c.expression), c.expression)
	}
}

// A message points at the part that is wrong, in the file's own lines.
func TestPlaceOfAMistake(t *testing.T) {
	_, err := compileText(t, "sheet: place\nreadings:\n  a: {ask: a, kind: length, from: 0 in, to: 9 in}\nvalues:\n  x:   min(a, mm(2)) + lb(3) * 2\n  y: |\n    a +\n    lb(1)\n")
	assert.EqualError(t, err, `truck.yaml:5:8: adds length and mass
  5 |   x:   min(a, mm(2)) + lb(3) * 2
    |        ^^^^^^^^^^^^^^^^^^^^^^^^^
truck.yaml:7:5: adds length and mass
  7 |     a +
    |     ^^^`)
}

// At least rounds up and at most down, so that what is shown is always go.
func TestNeededIsRoundedToTheSafeSide(t *testing.T) {
	set, err := compileText(t, `sheet: needed
readings:
  a: {ask: a, kind: length, from: 0 in, to: 9 in}
rules:
  - {id: low, check: a >= inch(1) / 3, level: stop, says: x, do: y, source: test}
  - {id: high, check: a <= inch(10) / 3, level: stop, says: x, do: y, source: test}
  - {id: both, check: "between(a, inch(1) / 3, inch(10) / 3)", level: stop, says: x, do: y, source: test}
  - {id: none, check: a >= inch(20), level: stop, says: x, do: y, source: test}
`)
	require.NoError(t, err)
	r := set.Evaluate(nil)
	assert.Equal(t, "go if a is at least 0.3334 in", r.Needed(0, units.InchShop))
	assert.Equal(t, "go if a is at most 3.3333 in", r.Needed(1, units.InchShop))
	assert.Equal(t, "go if a is from 0.3334 in to 3.3333 in", r.Needed(2, units.InchShop))
	assert.Equal(t, "no a from 0 in to 9 in makes this go", r.Needed(3, units.InchShop))
}

// Every mistake of a sheet comes in one run.
func TestAllMistakesOfASheet(t *testing.T) {
	_, err := compileText(t, strings.Replace(kindsSheet, "EXPRESSION", "bore + load", 1)+"  second: load + bore\n  third: nothing\n")
	var list source.Errors
	require.ErrorAs(t, err, &list)
	assert.Len(t, list, 3)
}
