package rules

import (
	"math/rand/v2"
	"testing"

	"cel.dev/cel-go/cel"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
)

// All four say the same of the job and of two hundred jobs like it.
func TestEnginesAgree(t *testing.T) {
	require.Len(t, sixtyRules, 60)
	set := sixtySet(t, false)
	base := sixtyValues(t, set)
	vm, programs := newExpr(t, boxed(base), sixtyRules), newCEL(t, boxed(base), sixtyRules)
	random := rand.New(rand.NewPCG(1, 2))
	readings := base
	for range 200 {
		hand := byHand(readings).judge()
		var byVM, byCEL [60]bool
		require.NoError(t, vm.judge(boxed(readings), byVM[:]))
		require.NoError(t, programs.judge(boxed(readings), byCEL[:]))
		require.Equal(t, hand, byVM)
		require.Equal(t, hand, byCEL)
		for i, r := range set.Evaluate(readings).Results {
			require.Equal(t, hand[i], r.Verdict == rules.Go, sixtyRules[i])
		}
		readings = rules.Readings{}
		for name, r := range base {
			r.Value *= 0.9 + 0.2*random.Float64()
			if d, _ := set.Reading(name); d.InRange(r.Value) != nil {
				r = base[name]
			}
			readings[name] = r
		}
	}
}

func BenchmarkSixtyRules(b *testing.B) {
	exact, read := sixtySet(b, false), sixtySet(b, true)
	readings := sixtyValues(b, read)
	env := boxed(readings)
	hand, vm, programs := byHand(readings), newExpr(b, env, sixtyRules), newCEL(b, env, sixtyRules)
	activation, err := cel.NewActivation(env)
	require.NoError(b, err)
	ok := make([]bool, 60)
	run(b, "by-hand", func() error { kept = hand.judge(); return nil })
	run(b, "gudgeon", func() error { exact.Evaluate(readings); return nil })
	run(b, "gudgeon-uncertainty", func() error { read.Evaluate(readings); return nil })
	run(b, "expr", func() error { return vm.judge(env, ok) })
	run(b, "cel-go", func() error { return programs.judge(activation, ok) })
}

// BenchmarkOneRule is the peers' side of BenchmarkSimpleRule, which lies with the
// engine because it reaches inside.
func BenchmarkOneRule(b *testing.B) {
	one := []string{"part_weight <= truck_rating"}
	env := boxed(sixtyValues(b, sixtySet(b, false)))
	vm, programs := newExpr(b, env, one), newCEL(b, env, one)
	activation, err := cel.NewActivation(env)
	require.NoError(b, err)
	ok := make([]bool, 1)
	run(b, "expr", func() error { return vm.judge(env, ok) })
	run(b, "cel-go", func() error { return programs.judge(activation, ok) })
}

// kept stops the compiler from leaving the hand-written rules out.
var kept [60]bool

func run(b *testing.B, name string, work func() error) {
	b.Run(name, func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			if err := work(); err != nil {
				b.Fatal(err)
			}
		}
	})
}
