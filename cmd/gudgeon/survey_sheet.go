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
	desc := "Verdict: " + f.Verdict.String() + "."
	for _, n := range f.Notices {
		desc += " " + n.Text(system)
	}
	return sketch.Sheet(f.Job.Part, desc, drawings...), true
}
