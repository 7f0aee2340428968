package boresurvey

import (
	"fmt"
	"slices"

	"gudgeon/rules"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Notice is one thing that a person must know, and how grave it is.
type Notice struct {
	Verdict rules.Verdict
	say     func(units.System) string
}

// Text says the notice.
func (n Notice) Text(sys units.System) string { return n.say(sys) }

func (f *Finding) notice(v rules.Verdict, say func(units.System) string) {
	f.Notices = append(f.Notices, Notice{v, say})
}

// judge gathers what stands against the job and comes to a verdict: a stop
// first; then what is missing, because nothing may pass while it is; then
// cautions.
func (f *Finding) judge() {
	f.judgeDatum()
	f.judgePlan()
	f.judgeReadings()
	f.judgeHeat()
	f.judgePasses()
	f.judgeFinished()
	slices.SortStableFunc(f.Notices, func(a, b Notice) int { return int(b.Verdict) - int(a.Verdict) })
	f.Verdict = rules.Go
	if len(f.Notices) > 0 {
		f.Verdict = f.Notices[0].Verdict
	}
	if len(f.Missing) > 0 && f.Verdict != rules.Stop {
		f.Verdict = rules.Waiting
	}
}

func (f *Finding) judgePlan() {
	p := f.Plan
	if p == nil {
		return
	}
	length := func(x float64, sys units.System, r units.Rounding) string { return units.Show(x, units.Length, sys, r) }
	if !p.CleansUp {
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("It will not clean up as planned: short by up to %s at %s, %s deep.", length(p.Short[0].Most.Value, sys, units.Up),
				bore.ClockWords(p.Short[0].Most.Clock), length(p.Short[0].Most.Z, sys, units.Nearest))
		})
	}
	if p.TooClose {
		f.notice(rules.Caution, func(sys units.System) string {
			return fmt.Sprintf("Too close to call: the stock is known to ±%s only, and the least of it is no further than that from the allowance.",
				length(bore.Coverage*p.Job.U, sys, units.Up))
		})
	}
	if now := p.Truing[0]; !now.KeepsWall {
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("The wall behind the trued bore is only %s at %s, %s deep; at least %s is wanted.", length(p.Wall.Value, sys, units.Down),
				bore.ClockWords(p.Wall.Clock), length(p.Wall.Z, sys, units.Nearest), length(p.Job.LeastWall, sys, units.Nearest))
		})
	}
	if now := p.Truing[0]; p.Job.LeastWeld > 0 && !now.FairWeld {
		f.notice(rules.Caution, func(sys units.System) string {
			return fmt.Sprintf("The weld in the finished bore gets as thin as %s; %s is wanted.",
				length(max(0, now.ThinnestWeld), sys, units.Down), length(p.Job.LeastWeld, sys, units.Nearest))
		})
	}
}

// judgeReadings turns what the survey is weak in into cautions.
func (f *Finding) judgeReadings() {
	for _, o := range f.Survey.Outliers {
		f.notice(rules.Caution, func(sys units.System) string { return f.outlierText(o, sys) })
	}
	for _, w := range f.Survey.Warnings {
		f.notice(rules.Caution, w.Text)
	}
	if len(f.Job.Dashes) > 0 {
		f.notice(rules.Caution, func(sys units.System) string { return dashText(f.Job.Dashes, sys) })
	}
}

// outlierText says where the reading is; its number in the file helps nobody.
func (f *Finding) outlierText(o bore.Outlier, sys units.System) string {
	side, off := "outside", o.Off
	if off < 0 {
		side, off = "inside", -off
	}
	return fmt.Sprintf("The reading at %s, %s deep, is %s %s the circle of the others. Clean the spot and read it again. If it is a gouge, keep it.",
		bore.ClockWords(o.Clock), units.Show(o.Station, units.Length, sys, units.Nearest), units.Show(off, units.Length, sys, units.Nearest), side)
}

func dashText(dashes []Dash, sys units.System) string {
	text := "Not read:"
	for i, d := range dashes {
		if i == 6 {
			text += fmt.Sprintf(" and %d more", len(dashes)-i)
			break
		}
		if i > 0 {
			text += ","
		}
		text += fmt.Sprintf(" %s at %s deep", bore.ClockWords(d.Clock), units.Show(d.Z, units.Length, sys, units.Nearest))
	}
	return text + ". The wall there is guessed from its neighbours."
}
