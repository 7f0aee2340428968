package checklists

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

const guardedSheet = `sheet: guarded
readings:
  grip: {ask: Grip, kind: length, unit: in, from: 0 in, to: 20 in}
  speed: {ask: Speed, kind: rotation, unit: rpm, from: 0 rpm, to: 2000 rpm}
  wide: {ask: Is it wide, kind: yes/no}
  span: {ask: Span, kind: length, unit: in, from: 0 in, to: 20 in}
rules:
  - {id: grave, check: grip >= inch(1), level: stop, life safety: true, says: Too little., do: Push it in., source: test}
  - {id: plain, check: grip <= inch(9), level: stop, says: Too much., do: Pull it out., source: test}
  - {id: mild, check: speed <= rpm(500), level: caution, says: Fast., do: Slow down., source: test}
`

const guardedSteps = `checklist: turn
title: Turn it
sheets: [guarded]
steps:
  - {id: clean, kind: do, title: Clean, why: Chips.}
  - {id: grip, kind: measure, title: Grip, why: It flies., take: [grip, speed]}
  - {id: release, kind: hold, title: Before it turns, why: A second pair of eyes., needs: [guarded], released by: foreman}
  - {id: turn, kind: do, title: Turn, why: The job.}
`

func guarded(t *testing.T, steps string) *Procedure {
	t.Helper()
	p, err := OpenShop(Layer{Sheets: folder("rules", "guarded.yaml", guardedSheet), Checklists: folder("checklists", "turn.yaml", steps)}).Procedure("turn")
	require.NoError(t, err)
	return p
}

func progress(t *testing.T, p *Procedure, text string) *Progress {
	t.Helper()
	out, err := p.ReadProgress(&source.File{Name: "job.yaml", Text: text})
	require.NoError(t, err)
	return out
}

// A hold opens only when nothing stands against it, and shuts again when new
// readings say so.
func TestHolds(t *testing.T) {
	const released = "released: {release: {by: F. Orman, reason: seen}}\n"
	const sign = "signed: {grave: {by: F, reason: r}, plain: {by: F, reason: r}, mild: {by: F, reason: r}}\n"
	for _, c := range []struct {
		name, text string
		state      State
		against    []string
		verdict    rules.Verdict
	}{
		{"nothing read", "part: x\n", Blocked, []string{"grave", "plain", "mild"}, rules.Waiting},
		{"nothing read, released all the same", released, Blocked, []string{"grave", "plain", "mild"}, rules.Waiting},
		{"nothing read, everything signed", released + sign, Blocked, []string{"grave", "plain", "mild"}, rules.Waiting},
		{"in order, not released", "readings: {grip: 2 in, speed: 300 rpm}\n", Open, nil, rules.Waiting},
		{"in order, released", "readings: {grip: 2 in, speed: 300 rpm}\n" + released, Released, nil, rules.Go},
		{"a stop", "readings: {grip: 12 in, speed: 300 rpm}\n" + released, Blocked, []string{"plain"}, rules.Stop},
		{"a stop that a foreman signed", "readings: {grip: 12 in, speed: 300 rpm}\n" + released + sign, Released, nil, rules.Stop},
		{"a life-safety stop that a foreman signed", "readings: {grip: 0.5 in, speed: 300 rpm}\n" + released + sign, Blocked, []string{"grave"}, rules.Stop},
		{"a caution", "readings: {grip: 2 in, speed: 900 rpm}\n" + released, Blocked, []string{"mild"}, rules.Waiting},
		{"a caution that was signed", "readings: {grip: 2 in, speed: 900 rpm}\n" + released + sign, Released, nil, rules.Caution},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := guarded(t, guardedSteps)
			r := p.Evaluate(progress(t, p, c.text))
			hold := r.Steps[2]
			assert.Equal(t, c.state, hold.State)
			var against []string
			for _, result := range hold.Against {
				against = append(against, result.Rule.ID)
			}
			assert.Equal(t, c.against, against)
			assert.Equal(t, c.verdict, r.Verdict)
			shut := c.state == Open || c.state == Blocked
			assert.Equal(t, shut, contains(r.Waiting, "hold release, released by foreman"))
		})
	}
}

func contains(list []string, word string) bool {
	for _, w := range list {
		if w == word {
			return true
		}
	}
	return false
}

// A step that cannot be decided is never taken for one that is not needed.
func TestUndecidedStepsWait(t *testing.T) {
	p := guarded(t, `checklist: turn
title: Turn it
sheets: [guarded]
steps:
  - {id: grip, kind: measure, title: Grip, why: It flies., take: [grip, speed]}
  - {id: release, kind: hold, title: Before it turns, why: Eyes., when: wide, released by: foreman}
  - {id: ratio, kind: hold, title: Before it turns fast, why: Eyes., when: grip / span > 2, released by: foreman}
`)
	all := "readings: {grip: 2 in, speed: 300 rpm"
	r := p.Evaluate(progress(t, p, all+"}\n"))
	assert.Equal(t, Undecided, r.Steps[1].State)
	assert.Equal(t, []string{"wide"}, r.Steps[1].Missing)
	assert.Equal(t, rules.Waiting, r.Verdict)
	assert.Equal(t, []string{"wide", "span"}, r.Waiting)

	r = p.Evaluate(progress(t, p, all+", wide: no, span: 9 in}\n"))
	assert.Equal(t, rules.Go, r.Verdict)

	// A division by zero decides nothing, and nothing is missing.
	r = p.Evaluate(progress(t, p, all+", wide: no, span: 0 in}\n"))
	assert.Equal(t, Undecided, r.Steps[2].State)
	assert.Equal(t, rules.Waiting, r.Verdict)
	assert.Equal(t, []string{"whether the step ratio is needed, which its readings do not tell"}, r.Waiting)
}

// The walk through a job offers nothing beyond a shut hold, and neither skipping
// nor signing opens what it must not.
func TestRunStopsAtAHold(t *testing.T) {
	p := guarded(t, guardedSteps)
	run := NewRun(p, NewProgress("x"))
	at := func() string {
		step, _, open := run.Current()
		if !open {
			return "end"
		}
		return step.Step.ID
	}
	assert.Equal(t, "clean", at())
	run.Tick(p.Steps[0])
	assert.Equal(t, "grip", at())
	require.NoError(t, run.PutOff(p.Steps[1]))
	assert.Equal(t, "release", at(), "a hold comes even before readings that were put off")
	assert.EqualError(t, run.PutOff(p.Steps[2]), "work stops here until the hold is released")
	assert.EqualError(t, run.Release(p.Steps[2], Signature{By: "F", Reason: "r"}), "still against it: grave, plain, mild")

	grip, speed := reading(t, p, "grip", "0.5"), reading(t, p, "speed", "900")
	run.Set("speed", speed)
	changes := run.Set("grip", grip)
	require.Len(t, changes, 2)
	assert.Equal(t, rules.Stop, changes[0].Result.Verdict)
	grave, _ := p.Rules.Rule("grave")
	mild, _ := p.Rules.Rule("mild")
	assert.ErrorContains(t, run.Sign(grave, Signature{By: "F", Reason: "r"}), "only new readings open it")
	assert.ErrorContains(t, run.Sign(mild, Signature{By: "F"}), "a name and a reason")
	require.NoError(t, run.Sign(mild, Signature{By: "F", Reason: "r"}))
	assert.ErrorContains(t, run.Release(p.Steps[2], Signature{By: "F", Reason: "r"}), "still against it: grave")

	run.Set("grip", reading(t, p, "grip", "2"))
	assert.ErrorContains(t, run.Release(p.Steps[2], Signature{By: "F"}), "a name and a reason")
	require.NoError(t, run.Release(p.Steps[2], Signature{By: "F", Reason: "r"}))
	assert.Equal(t, "turn", at())

	require.True(t, run.Back())
	assert.Equal(t, "release", at())
	run.Leave()
	run.Set("grip", reading(t, p, "grip", "0.5"))
	assert.Equal(t, "release", at(), "new readings shut the hold again")
}

func reading(t *testing.T, p *Procedure, name, text string) rules.Reading {
	t.Helper()
	d, ok := p.Rules.Reading(name)
	require.True(t, ok)
	r, err := d.Read(text)
	require.NoError(t, err)
	return r
}
