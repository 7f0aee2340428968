package boresurvey

import (
	"math"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

const inch = 0.0254

func example(t testing.TB, name string) *source.File {
	t.Helper()
	text, err := os.ReadFile("../../testdata/" + name)
	require.NoError(t, err)
	return &source.File{Name: name, Text: string(text)}
}

func find(t *testing.T, f *source.File) *Finding {
	t.Helper()
	job, err := Read(f)
	require.NoError(t, err)
	finding, err := Find(job)
	require.NoError(t, err)
	return finding
}

// The examples were made from known shapes: 0.126 in off at the near face
// towards 2 o'clock, 0.001 in at the far one, 3.043 in in diameter.
func TestLinkIsFoundAsItWasMade(t *testing.T) {
	f := find(t, example(t, "survey-link.yaml"))
	near, far := f.Survey.Near(), f.Survey.Far()
	assert.InDelta(t, 0.126*inch, near.Size, 0.001*inch)
	assert.InDelta(t, math.Pi/3, near.Clock, 0.02)
	assert.InDelta(t, 0.001*inch, far.Size, 0.001*inch)
	assert.InDelta(t, 3.043*inch, 2*f.Survey.Cylinder.R, 0.001*inch)
	require.NotNil(t, f.Centres)
	assert.Equal(t, bore.OddOneOut, f.Centres.Verdict)
	assert.True(t, f.Centres.EarlierRepair)
	require.NotNil(t, f.HandLaid)
	assert.False(t, f.Plan.CleansUp)
	assert.True(t, f.HandLaid.CleansUp)
	assert.Equal(t, rules.Stop, f.Verdict)
}

func TestWrongDatumIsCaught(t *testing.T) {
	f := find(t, example(t, "survey-wrong-datum.yaml"))
	assert.True(t, f.Plan.CleansUp, "on the wrong axis it seems to")
	assert.Equal(t, rules.Stop, f.Verdict)
	assert.Contains(t, f.Notices[0].Text(units.InchShop), "The datum is wrong")
}

// A named feature may be the datum; the plan then stands on it.
func TestNamedCentreIsTheDatum(t *testing.T) {
	file := example(t, "survey-link.yaml")
	file.Text = strings.Replace(file.Text, "datum: agreed", "datum: Untouched Shoulder", 1)
	f := find(t, file)
	assert.Equal(t, "the untouched shoulder", f.Datum.Name)
	assert.Equal(t, f.Centres.Candidates[1].Centre, f.Datum.At(3))
	assert.Equal(t, f.Datum.Line, f.Plan.Job.Axis)
}

// A bar that was set up on the wrong centre is a wrong datum as well.
func TestBarOffTheAgreedCentreIsCaught(t *testing.T) {
	file := example(t, "survey-good.yaml")
	file.Text = strings.Replace(file.Text, "datum: agreed", "datum: bar", 1)
	assert.Equal(t, rules.Go, find(t, file).Verdict)
	file.Text = strings.Replace(file.Text, "reads: [-1, 1, 1.5, 1, 0.5, -0.5, -1.5, -1]", "reads: [20, 15, 1.5, -14, -20, -14, 0, 15]", 1)
	file.Text = strings.Replace(file.Text, "reads: [-2.5, 0.5, 2, 5.5, 7, 1.5, -2.5, -4]", "reads: [20, 15, 1.5, -14, -20, -14, 0, 15]", 1)
	f := find(t, file)
	assert.Equal(t, rules.Stop, f.Verdict)
	assert.Contains(t, f.Notices[0].Text(units.InchShop), "the bar is")
}

func TestBracketsLeaveAReadingOut(t *testing.T) {
	file := example(t, "survey-missing.yaml")
	f := find(t, file)
	require.Len(t, f.Survey.Outliers, 1)
	file.Text = strings.Replace(file.Text, "31.5", "(31.5)", 1)
	f = find(t, file)
	assert.Empty(t, f.Survey.Outliers)
	assert.Less(t, f.Survey.Stations[1].Round.LSCI, 0.004*inch)
}

func TestRepeatsAreAveraged(t *testing.T) {
	file := example(t, "survey-good.yaml")
	line := "[2, 4, 4, 0.5, -0.5, 1, 0.5, -0.5]"
	require.Contains(t, file.Text, line)
	file.Text = strings.Replace(file.Text, line, "["+line+", [3, 5, 5, 1.5, .5, 2, 1.5, .5]]", 1)
	f := find(t, file)
	assert.Equal(t, 8, f.Survey.Repeats.Places)
	assert.InDelta(t, 1.5225*inch, f.Survey.Stations[0].Readings[0].Radius, 1e-9)
}

// Whatever a file holds, it is read or refused; nothing breaks.
func FuzzFind(f *testing.F) {
	for _, name := range []string{"survey-link.yaml", "survey-good.yaml", "survey-missing.yaml", "survey-whole.yaml"} {
		f.Add(example(f, name).Text)
	}
	f.Add("part: x\nsweep: {readings: {at: [12], 1 in: }}\n")
	f.Add("part: x\nsweep: {readings: }\ncentres: [{feature: grease hole, at: , reads: }]\n")
	f.Add("part: x\nsweep: {readings: {at: [12], 1 in: [1 in]}}\nheat: {composition: {C: 1 %, Mn: }, interpass: }\nfinished: {readings: , voids: none}\npasses:\n")
	f.Add("part: x\ndiameters: {unit: mm, readings: {at: [1, 2], 1 mm: [[], [5, 6]]}}\nplan: {}\n")
	f.Fuzz(func(t *testing.T, text string) {
		job, err := Read(&source.File{Name: "fuzz.yaml", Text: text})
		if err != nil {
			return
		}
		finding, err := Find(job)
		if err != nil {
			return
		}
		for _, n := range finding.Notices {
			n.Text(units.MetricShop)
		}
	})
}
