package rules

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// TestEveryExampleCalculates works the example of every trade function as a
// person would type it. One that names a survey is worked in a small sheet.
func TestEveryExampleCalculates(t *testing.T) {
	surveys := 0
	for _, list := range tradeFunctions() {
		for _, f := range list {
			t.Run(f.Name, func(t *testing.T) {
				if needsSurvey(f) {
					surveys++
					calculateOnSurvey(t, f)
					return
				}
				c, err := Calculate(Trade(), source.Plain("example", f.Example), units.InchShop)
				require.NoError(t, err)
				require.NotEmpty(t, c.Lines)
				assert.NotEmpty(t, c.Lines[0].Result)
				assert.Contains(t, c.Sources, f.Source)
				if !c.Type.isRecord() {
					assert.True(t, isFinite(c.Value), "%v", c.Value)
				}
				for _, field := range c.Fields {
					assert.True(t, isFinite(field.Value), field.Name)
					assert.NotEmpty(t, field.Text, field.Name)
				}
			})
		}
	}
	assert.Equal(t, 4, surveys, "functions of a survey")
}

func isFinite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

func needsSurvey(f trade.Function) bool {
	for _, p := range f.Params {
		if p.Kind == units.Survey {
			return true
		}
	}
	return false
}

// exampleSurveys are the names that examples use: a bore worn down and to one
// side, read from the bar, and a finished one.
func exampleSurveys() Readings {
	const inch = 0.0254
	var worn, final trade.Survey
	for _, z := range []float64{0.5 * inch, 3 * inch, 5.5 * inch} {
		for hour := range 12 {
			clock := float64(hour) * math.Pi / 6
			off := 0.020 * inch * math.Cos(clock-math.Pi*5/6)
			worn = append(worn, trade.Point{Station: z, Clock: clock, Read: off + 0.005*z})
		}
		final = append(final, trade.Point{Station: z, Clock: 0, Read: 3.0004 * inch}, trade.Point{Station: z, Clock: math.Pi / 2, Read: 3.0006 * inch})
	}
	return Readings{"worn_bore": {Value: 1, Survey: worn}, "final_diameters": {Value: 1, Survey: final}}
}

func calculateOnSurvey(t *testing.T, f trade.Function) {
	sheet, err := ReadSheet(&source.File{Name: "survey.yaml", Text: `sheet: survey
readings:
  worn_bore: {ask: Readings from the bar, kind: survey, unit: in, from: -0.5 in, to: 30 in}
  final_diameters: {ask: Diameters, kind: survey, unit: in, from: 0.5 in, to: 60 in}
values:
  result: '` + f.Example + `'
`})
	require.NoError(t, err)
	set, err := CompileSheet(Trade(), NoShelf{}, sheet)
	require.NoError(t, err)
	v := set.Values[0]
	report := set.Evaluate(exampleSurveys())
	require.NoError(t, report.refused[v])
	for i := range max(1, len(v.Type.Fields)) {
		assert.True(t, isFinite(report.frame.x[v.slot+i]), "result %d", i)
	}
}
