package rules

import (
	"io/fs"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules/source"
	"gudgeon/trade"
)

// shippedShelf finds the shipped sheets.
type shippedShelf struct{}

func (shippedShelf) Sheet(name string) (*Sheet, error) {
	data, err := Files.ReadFile(name + ".yaml")
	if err != nil {
		return nil, nil
	}
	return ReadSheet(&source.File{Name: name + ".yaml", Text: string(data)})
}

func (shippedShelf) SheetNames() []string {
	files, _ := fs.Glob(Files, "*.yaml")
	for i := range files {
		files[i] = strings.TrimSuffix(files[i], ".yaml")
	}
	return files
}

// The first-order standard uncertainty of a margin may lie under that of a Monte
// Carlo run by a twentieth, and over it by three twentieths: near the kink of an
// absolute value first order is too careful, which is the harmless side. To both
// come four standard deviations of the run's own scatter, 1/sqrt(2(n-1)) each.
const (
	under = 0.05
	over  = 0.15
)

func scatter(trials int) float64 { return 4 / math.Sqrt(2*float64(trials-1)) }

// Every rule that is shipped, at every example of its sheet: the first-order
// uncertainty of its margin is that of a seeded Monte Carlo run (JCGM 101), or
// the rule is named as non-linear there.
func TestMonteCarlo(t *testing.T) {
	checked, bent := 0, map[string]bool{}
	for _, name := range (shippedShelf{}).SheetNames() {
		sheet, err := shippedShelf{}.Sheet(name)
		require.NoError(t, err)
		set, err := CompileSheet(Trade(), shippedShelf{}, sheet)
		require.NoError(t, err)
		for _, e := range sheet.Examples {
			var report source.Report
			readings := set.ReadAll(e.Readings, &report)
			require.NoError(t, report.Err())
			for _, result := range set.Evaluate(readings).Results {
				if result.U == 0 {
					continue
				}
				if result.NonLinear {
					bent[result.Rule.ID] = true
					continue
				}
				trials := 4000
				if overSurvey(set, result.Rule) {
					trials = 400
				}
				got := simulate(set, result.Rule, readings, trials)
				ratio := result.U / coverage / got
				assert.GreaterOrEqual(t, ratio, 1-under-scatter(trials), "%s in %q", result.Rule.ID, e.Name.Value)
				assert.LessOrEqual(t, ratio, 1+over+scatter(trials), "%s in %q", result.Rule.ID, e.Name.Value)
				checked++
			}
		}
	}
	assert.Greater(t, checked, 50)
	t.Logf("%d margins agree; non-linear at some example: %v", checked, bent)
}

func overSurvey(set *Set, rule *Rule) bool {
	return (&probe{rule: rule, report: &Report{set: set}}).overSurvey()
}

// simulate is the standard deviation of a rule's margin when every reading
// varies normally with its standard uncertainty.
func simulate(set *Set, rule *Rule, readings Readings, trials int) float64 {
	random := rand.New(rand.NewPCG(1, 2))
	part := set.only(rule)
	report := part.newReport(readings)
	report.evaluateValues()
	report.evaluateLeaves()
	governing := report.rule(rule).leaf
	var mean, sum float64
	n := 0
	for range trials {
		report.vary(random)
		report.evaluateValues()
		var state leafState
		governing.work(report.frame, &state)
		if state.margin != state.margin {
			continue
		}
		n++
		delta := state.margin - mean
		mean += delta / float64(n)
		sum += delta * (state.margin - mean)
	}
	return math.Sqrt(sum / float64(n-1))
}

// vary moves every reading, and every point of a survey, at random.
func (r *Report) vary(random *rand.Rand) {
	for _, d := range r.set.Readings {
		reading, ok := r.readings[d.Name]
		if !ok {
			continue
		}
		if reading.Survey == nil {
			r.frame.x[d.slot] = reading.Value + r.standardU(d, reading)*random.NormFloat64()
			continue
		}
		points := append(trade.Survey(nil), reading.Survey...)
		for i := range points {
			u := points[i].U
			if u == 0 {
				u = r.pointU(d, reading)
			}
			points[i].Read += u * random.NormFloat64()
		}
		r.frame.surveys[r.set.surveys[d.slot]] = points
	}
}

// A weight is as sure as the way it was found: the answer to one question gives
// another reading its error, unless an instrument is named with it.
func TestWeightIsAsSureAsItsSource(t *testing.T) {
	sheet, err := shippedShelf{}.Sheet("truck")
	require.NoError(t, err)
	set, err := CompileSheet(Trade(), shippedShelf{}, sheet)
	require.NoError(t, err)
	verdict := func(known, with string) (Verdict, float64) {
		readings := read(t, set, map[string]string{
			"part_weight": "4,500 lb", "weight_known_by": known, "lifted_by": "forks",
			"truck_rating": "5,000 lb", "rating_centre": "24 in", "load_centre": "24 in",
		})
		weight := readings["part_weight"]
		weight.With = with
		readings["part_weight"] = weight
		r := set.Evaluate(readings)
		for _, result := range r.Results {
			if result.Rule.ID == "truck-overload" {
				return result.Verdict, result.U / 0.45359237
			}
		}
		t.Fatal("no rule truck-overload")
		return 0, 0
	}
	for _, c := range []struct {
		known, with string
		verdict     Verdict
		u           float64 // lb, the weight's share of it
	}{
		{"weighed", "", Go, 46},
		{"drawing or plate", "", Go, 225},
		{"worked out from its shape", "", Go, 450},
		{"guessed", "", Stop, 1350},
		{"worked out from its shape", "load cell", Go, 46},
	} {
		got, u := verdict(c.known, c.with)
		assert.Equal(t, c.verdict, got, c.known)
		assert.InDelta(t, c.u, u, 30, c.known)
	}
}
