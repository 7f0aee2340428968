package main

import (
	"gudgeon/checklists/boresurvey"
	"gudgeon/units"
	"gudgeon/web/sketch"
)

// surveySheet draws as much of a finding as there is; nothing without an axis.
func surveySheet(f *boresurvey.Finding, system units.System) (sheet string, drawn bool) {
	if f.Axis == nil {
		return "", false
	}
	b := sketch.Bore{Survey: f.Survey, Axis: f.Axis, Plan: f.Plan, Units: system}
	var drawings []*sketch.Drawing
	if f.Plan != nil {
		drawings = append(drawings, sketch.EndView(b), sketch.Unrolled(b))
	}
	drawings = append(drawings, sketch.AxisView(b))
	if bar := barUnderCut(f, system); bar != nil {
		drawings = append(drawings, bar)
	}
	desc := "Verdict: " + f.Verdict.String() + "."
	for _, n := range f.Notices {
		desc += " " + n.Text(system)
	}
	return sketch.Sheet(f.Job.Part, desc, drawings...), true
}

// barUnderCut draws the bar in the pass that pushes it hardest; nothing without a
// pass plan.
func barUnderCut(f *boresurvey.Finding, system units.System) *sketch.Drawing {
	p, data := f.Passes, f.Job.Passes
	if p == nil || p.Plan == nil || data == nil {
		return nil
	}
	bent := sketch.Bent{
		Span: data.Span, Station: data.Station, Diameter: data.Diameter,
		Force: p.Plan.Passes[p.Deepest].Push, Deflection: p.Gives, Units: system,
	}
	if data.Overhang > 0 {
		bent.OneEnd, bent.Span, bent.Station = true, data.Overhang, data.Overhang
	}
	return sketch.BarBend(bent)
}
