package rules

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// FuzzSheet feeds the loader anything. It must neither panic nor hang, and what
// it accepts must evaluate to a report in which nothing missing is go.
func FuzzSheet(f *testing.F) {
	f.Add(truckSheet)
	f.Add(gaugeSheet)
	f.Add("sheet: a\nrules:\n  - {id: x, check: 1 < 2, level: stop, says: s, do: d, source: s}\n")
	f.Add("sheet: [[[[[[")
	f.Add("sheet: &a x\nreadings: *a\n")
	f.Fuzz(func(t *testing.T, text string) {
		begun := time.Now()
		sheet, err := ReadSheet(&source.File{Name: "fuzz.yaml", Text: text})
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		set, err := CompileSheet(testLibrary(), NoShelf{}, sheet)
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		report := set.Evaluate(nil)
		for i := range report.Results {
			r := &report.Results[i]
			if len(r.Missing) > 0 {
				require.Equal(t, Waiting, r.Verdict)
			}
			report.Worked(i, units.InchShop)
			report.Needed(i, units.InchShop)
		}
		set.Evaluate(middle(set))
		require.Less(t, time.Since(begun), 5*time.Second)
	})
}

// middle gives every reading a value in its range.
func middle(set *Set) Readings {
	out := Readings{}
	for _, d := range set.Readings {
		if d.Kind == units.Survey {
			continue
		}
		x := math.Max(d.From, -1e6)/2 + math.Min(d.To, 1e6)/2
		if d.answers() > 0 {
			x = 0
		}
		out[d.Name] = Reading{Value: x}
	}
	return out
}

// FuzzExpression feeds the calculator anything.
func FuzzExpression(f *testing.F) {
	for _, text := range []string{
		"inch(3) + mm(2) * 4", "truck.capacity_at(lb(5000), inch(24), inch(28))", "lug.modes({load: lb(3), grade: 'high'}).use",
		"sqrt(inch(2)^2)", "1/0", "min(1, 2, 3) ? 1 : 2", "not (1 < 2) or 3 in [1]", "filter([1], # > 0)", "let x = 1; x", "((((((1))))))", "\"a\" == 'b'", "2^9999", "-(-(-1))",
	} {
		f.Add(text)
	}
	library := testLibrary()
	f.Fuzz(func(t *testing.T, text string) {
		c, err := Calculate(library, source.Plain("fuzz", text), units.InchShop)
		if err != nil {
			require.NotEmpty(t, err.Error())
			return
		}
		require.NotEmpty(t, c.Lines)
		if c.Type.isQuantity() {
			require.False(t, math.IsNaN(c.Value) || math.IsInf(c.Value, 0), text)
		}
	})
}

// The size of an expression is bounded.
func TestExpressionsAreBounded(t *testing.T) {
	_, err := Calculate(testLibrary(), source.Plain("x", strings.Repeat("(", 3000)+"1"), units.InchShop)
	require.ErrorContains(t, err, "longer than 2000 characters")
	_, err = Calculate(testLibrary(), source.Plain("x", strings.Repeat("1+", 900)+"1"), units.InchShop)
	require.ErrorContains(t, err, "exceeds maximum allowed nodes")
	_, err = Calculate(testLibrary(), source.Plain("x", strings.Repeat("(", 990)+"1"+strings.Repeat(")", 990)), units.InchShop)
	require.NoError(t, err)
}
