package rules

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// simpleRule is one rule over two readings, worked once.
func simpleRule(t testing.TB) *Report {
	t.Helper()
	set, err := compileSheetText(`sheet: simple
readings:
  part_weight: {ask: x, kind: mass, unit: lb, from: 1 lb, to: 200000 lb, with: load cell}
  truck_capacity: {ask: x, kind: mass, unit: lb, from: 1 lb, to: 200000 lb, can change: true}
rules:
  - {id: overload, check: part_weight <= truck_capacity, level: stop, says: x, do: y, source: test}
`, NewLibrary())
	require.NoError(t, err)
	return set.Evaluate(Readings{"part_weight": {Value: 2000}, "truck_capacity": {Value: 2200}})
}

// again evaluates and decides the only rule again.
func (r *Report) again(out *Result) {
	r.evaluateLeaves()
	r.decide(r.set.Rules[0], out)
}

func BenchmarkSimpleRule(b *testing.B) {
	r := simpleRule(b)
	var out Result
	b.ReportAllocs()
	for b.Loop() {
		r.again(&out)
	}
	require.Equal(b, Go, out.Verdict)
}

func BenchmarkSimpleRuleWithUncertainty(b *testing.B) {
	r := simpleRule(b)
	var out Result
	b.ReportAllocs()
	for b.Loop() {
		r.evaluateLeaves()
		r.propagate()
		r.decide(r.set.Rules[0], &out)
	}
	require.Positive(b, out.U)
}

func TestASimpleRuleAllocatesNothing(t *testing.T) {
	r := simpleRule(t)
	var out Result
	require.Zero(t, testing.AllocsPerRun(100, func() {
		r.again(&out)
		r.propagate()
	}))
}
