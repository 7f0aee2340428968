package main

import (
	"fmt"
	"strings"

	"gudgeon/checklists/boresurvey"
	"gudgeon/trade/bar"
	"gudgeon/units"
)

// passes tells how the weld comes to size, or why it does not.
func (s *surveyScreen) passes() {
	p := s.Passes
	if p == nil {
		return
	}
	s.heading("Passes to size")
	s.row(2, "stock", 14, fmt.Sprintf("%s to %s on the radius over %s, from %s", s.length(p.Stock.Least, units.Down), s.length(p.Stock.Most, units.Up),
		s.finishWords(), p.Stock.From))
	s.row(2, "bar", 14, s.barWords())
	s.row(2, "chatter", 14, fmt.Sprintf("none at any speed to %s deep on the radius (square edge, half of the cutting force on the bar, damping %v: common practice)",
		s.length(p.Set.Stable, units.Down), boresurvey.Damping))
	if p.Plan == nil {
		s.row(2, "plan", 14, "none: see the stop above")
		return
	}
	s.passTable(p.Plan)
	s.passWords(p.Plan)
}

func (s *surveyScreen) finishWords() string {
	if s.Job.Plan.Size.HasLimits {
		return s.near(s.Passes.Aim) + ", the middle of the limits"
	}
	return s.near(s.Passes.Aim)
}

func (s *surveyScreen) barWords() string {
	d, p := s.Job.Passes, s.Passes
	text := fmt.Sprintf("%s, %s", s.near(d.Diameter), d.Material.Name)
	if o := p.Overhang; o != nil {
		text += fmt.Sprintf(", %s out: %s times its diameter, and %s is the most to try", s.near(d.Overhang), s.show(o.Ratio, units.Number, units.Up), s.length(o.Most, units.Down))
	} else {
		text += fmt.Sprintf(", %s between bearings that let it tilt, cutter %s from one", s.near(d.Span), s.near(d.Station))
	}
	if p.Plan != nil {
		text += fmt.Sprintf("; in pass %d, the hardest, it gives %s", p.Deepest+1, s.fine(p.Gives, units.Up))
	}
	return text
}

// fine shows a length with one place more than a size has.
func (s *surveyScreen) fine(x float64, r units.Rounding) string {
	return units.ShowDigits(x, units.Usual(units.Length, s.system), r, 1)
}

func (s *surveyScreen) passTable(plan *bar.PlanResult) {
	unit := func(k units.Kind) string { return units.Usual(k, s.system).Symbol }
	rows := [][]string{{"pass", "set to", "bore", "takes on radius", "out of", "", "", "", ""},
		{"", "", "", "least to most", "round", "rpm", unit(units.Feed), unit(units.Time), unit(units.Power)}}
	for i, p := range plan.Passes[:plan.Count] {
		rows = append(rows, []string{fmt.Sprintf("%d %s", i+1, p.Kind), s.bare(p.Tool), s.bare(p.Diameter),
			number(s.length(p.Least, units.Down)) + " to " + number(s.length(p.Most, units.Up)), number(s.length(p.OutOfRound, units.Up)),
			number(units.ShowDigits(p.Rotation, units.Usual(units.Rotation, s.system), units.Nearest, -1)), number(s.show(p.Feed, units.Feed, units.Nearest)),
			number(s.show(p.Time, units.Time, units.Up)), number(s.show(p.Power, units.Power, units.Up))})
	}
	s.table(rows)
}

// number is a quantity without its unit, which heads the column.
func number(text string) string {
	text, _, _ = strings.Cut(text, " ")
	return text
}

func (s *surveyScreen) passWords(plan *bar.PlanResult) {
	n := plan.Count
	truing, light := plan.Passes[n-2], plan.Passes[n-1]
	s.labelled(2, "", fmt.Sprintf("Pass %d, the last heavy one, trues: it takes %s or more all round, so the bar gives evenly and the bore comes round. "+
		"Pass %d takes about %s on the diameter and sizes: measure first, and set the tool from that.",
		n-1, s.length(truing.Least, units.Down), n, s.near(light.Least+light.Most)))
	s.labelled(2, "", fmt.Sprintf("Sizes are diameters, the bore's a mean. Where a pass cuts all round, the tool is set larger by what the bar gives. In all %s of cutting, and %s at the spindle at most; a worn edge wants a third more.",
		s.show(plan.Time, units.Time, units.Up), s.show(plan.MostPower, units.Power, units.Up)))
}
