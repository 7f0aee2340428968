package rules

import (
	"fmt"
	"math"
	"testing"

	"github.com/expr-lang/expr"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gudgeon/trade"
	"gudgeon/units"
)

// The closures that evaluate a sheet are held against expr's own virtual
// machine: the same text, the same readings, the same result.
func TestClosuresAgreeWithTheVirtualMachine(t *testing.T) {
	rapid.Check(t, closuresAgree)
}

// FuzzClosures is the same, driven by coverage.
func FuzzClosures(f *testing.F) { f.Fuzz(rapid.MakeFuzz(closuresAgree)) }

func closuresAgree(t *rapid.T) {
	text := numberText(t, 4)
	readings := Readings{}
	for _, name := range []string{"a", "b", "c"} {
		readings[name] = Reading{Value: rapid.Float64Range(-100, 100).Draw(t, name)}
	}
	readings["flag"] = Reading{Value: float64(rapid.IntRange(0, 1).Draw(t, "flag"))}
	readings["grade"] = Reading{Value: float64(rapid.IntRange(0, 2).Draw(t, "grade"))}

	got, refused := evaluateText(t, text, readings)
	want, err := reference(text, readings)
	if err != nil || math.IsNaN(want) || math.IsInf(want, 0) {
		require.True(t, refused, "%s = %v here, but the virtual machine says %v %v", text, got, want, err)
		return
	}
	if refused {
		return // refused on the way, such as a division by zero in a min
	}
	require.InDelta(t, want, got, 1e-9*math.Max(1, math.Abs(want)), text)
}

// numberText writes a random expression that gives a bare number.
func numberText(t *rapid.T, depth int) string {
	if depth == 0 {
		return rapid.SampledFrom([]string{"a", "b", "c", "2", "0.5", "7"}).Draw(t, "leaf")
	}
	sub := func() string { return numberText(t, depth-1) }
	switch rapid.IntRange(0, 9).Draw(t, "form") {
	case 0:
		return "(" + sub() + " + " + sub() + ")"
	case 1:
		return "(" + sub() + " - " + sub() + ")"
	case 2:
		return "(" + sub() + " * " + sub() + ")"
	case 3:
		return "(" + sub() + " / " + sub() + ")"
	case 4:
		return "(-" + sub() + ")"
	case 5:
		return "min(" + sub() + ", " + sub() + ")"
	case 6:
		return "max(" + sub() + ", " + sub() + ", " + sub() + ")"
	case 7:
		return "abs(" + sub() + ")"
	case 8:
		return "(" + conditionText(t, depth-1) + " ? " + sub() + " : " + sub() + ")"
	}
	return "lug.modes({load: lb(7), grade: grade, factor: 3}).use * " + sub()
}

func conditionText(t *rapid.T, depth int) string {
	if depth <= 0 {
		return rapid.SampledFrom([]string{"flag", `grade == "high"`, `grade in ["mild", "high"]`, `grade != "mild"`, "a < b"}).Draw(t, "condition")
	}
	switch rapid.IntRange(0, 4).Draw(t, "condition form") {
	case 0:
		return "(" + conditionText(t, depth-1) + " and " + conditionText(t, depth-1) + ")"
	case 1:
		return "(" + conditionText(t, depth-1) + " or " + conditionText(t, depth-1) + ")"
	case 2:
		return "not (" + conditionText(t, 0) + ")"
	case 3:
		return "(" + numberText(t, depth-1) + " <= " + numberText(t, depth-1) + ")"
	}
	return conditionText(t, 0)
}

func evaluateText(t require.TestingT, text string, readings Readings) (value float64, refused bool) {
	sheet := `sheet: reference
readings:
  a: {ask: a, kind: number, from: -100, to: 100}
  b: {ask: b, kind: number, from: -100, to: 100}
  c: {ask: c, kind: number, from: -100, to: 100}
  flag: {ask: flag, kind: yes/no}
  grade: {ask: grade, kind: choice, options: [mild, high, top]}
values:
  result: |
    ` + text + "\n"
	set, err := compileSheetText(sheet, referenceLibrary())
	if err != nil {
		require.ErrorContains(t, err, "not a finite number", text)
		return math.NaN(), true
	}
	r := set.Evaluate(readings)
	return r.frame.x[set.Values[0].slot], r.refused[set.Values[0]] != nil
}

// referenceLibrary knows one record function with a choice.
func referenceLibrary() *Library {
	return NewLibrary([]trade.Function{{
		Name: "lug.modes", Source: "test",
		Params: []trade.Param{
			{Name: "load", Kind: units.Mass, Low: 0, High: 1e6},
			{Name: "grade", Kind: units.Choice, Options: []string{"high", "mild", "top"}},
			{Name: "factor", Kind: units.Number, Low: 1, High: 5, Optional: true, Default: 2},
		},
		Results: []trade.Result{{Name: "use", Kind: units.Ratio}, {Name: "tension", Kind: units.Force}},
		Call: func(in trade.Args, out []float64) error {
			out[0], out[1] = in.X[0]*in.X[2]+in.X[1], in.X[0]
			return nil
		},
	}})
}

// reference works a text out in expr's virtual machine.
func reference(text string, readings Readings) (float64, error) {
	env := map[string]any{
		"a": readings["a"].Value, "b": readings["b"].Value, "c": readings["c"].Value,
		"flag": readings["flag"].Value == 1, "grade": []string{"mild", "high", "top"}[int(readings["grade"].Value)],
		"lb": func(x int) float64 { return float64(x) * 0.45359237 },
		"lug": map[string]any{"modes": func(in map[string]any) map[string]any {
			grade := map[string]float64{"high": 0, "mild": 1, "top": 2}[in["grade"].(string)]
			return map[string]any{"use": in["load"].(float64)*toFloat(in["factor"]) + grade}
		}},
	}
	program, err := expr.Compile(text, expr.Env(env))
	if err != nil {
		return 0, err
	}
	out, err := expr.Run(program, env)
	if err != nil {
		return 0, err
	}
	return toFloat(out), nil
}

func toFloat(x any) float64 {
	switch x := x.(type) {
	case float64:
		return x
	case int:
		return float64(x)
	}
	panic(fmt.Sprintf("unexpected %T", x))
}
