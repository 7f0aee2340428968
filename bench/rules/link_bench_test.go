package rules

import (
	"maps"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/units"
)

func BenchmarkLinkReport(b *testing.B) {
	p, all := linkJob(b)
	plain, few := plainLink(b, p.Rules, all)
	require.GreaterOrEqual(b, len(plain.Rules), 60)
	evaluate := func(set *rules.Set, readings rules.Readings) func() error {
		return func() error { set.Evaluate(readings); return nil }
	}
	run(b, "no-surveys/instruments", evaluate(plain, few))
	run(b, "surveys/instruments", evaluate(p.Rules, all))
	run(b, "surveys/instruments/new-survey", newSurveys(p.Rules, all))

	forgetInstruments(plain, few)
	forgetInstruments(p.Rules, all)
	run(b, "no-surveys/exact", evaluate(plain, few))
	run(b, "surveys/exact", evaluate(p.Rules, all))
	run(b, "surveys/exact/new-survey", newSurveys(p.Rules, all))
}

// newSurveys evaluates a job in which every reading of the worn bore has just
// changed, so that nothing can be remembered of it.
func newSurveys(set *rules.Set, all rules.Readings) func() error {
	n := 0
	return func() error {
		n++
		set.Evaluate(newSurvey(all, n))
		return nil
	}
}

// newSurvey is the job with the worn bore n picometres larger.
func newSurvey(all rules.Readings, n int) rules.Readings {
	readings := maps.Clone(all)
	r := all["worn_bore"]
	r.Survey = slices.Clone(r.Survey)
	for i := range r.Survey {
		r.Survey[i].Read += float64(n) * 1e-12
	}
	readings["worn_bore"] = r
	return readings
}

// BenchmarkWaysOut looks for the ways out of every rule that fails.
func BenchmarkWaysOut(b *testing.B) {
	p, all := linkJob(b)
	plain, few := plainLink(b, p.Rules, all)
	waysOut(b, "no-surveys", plain, failing(b, plain, few))
	waysOut(b, "surveys", p.Rules, failing(b, p.Rules, all))
}

// waysOut times the search alone: the report is there before anybody asks for
// ways out of it. Every survey is a new one.
func waysOut(b *testing.B, name string, set *rules.Set, readings rules.Readings) {
	failed, found, n := 0, 0, 0
	b.Run(name, func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			b.StopTimer()
			n++
			report := set.Evaluate(newSurvey(readings, n))
			b.StartTimer()
			failed, found = 0, 0
			for i := range report.Results {
				found += len(report.WaysOut(i, units.InchShop))
				if v := report.Results[i].Verdict; v == rules.Stop || v == rules.Caution {
					failed++
				}
			}
		}
	})
	require.Positive(b, found)
	b.Logf("%s: %d rules fail, %d ways out", name, failed, found)
}

// BenchmarkFirstReport opens the shop, compiles the link checklist and works its
// first report.
func BenchmarkFirstReport(b *testing.B) {
	run(b, "link", func() error {
		p, all := linkJob(b)
		p.Rules.Evaluate(all)
		return nil
	})
}
