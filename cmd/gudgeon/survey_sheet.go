package main

import (
	"gudgeon/checklists/boresurvey"
	"gudgeon/units"
	"gudgeon/web/sketch"
)

// surveySheet draws as much of a finding as there is.
func surveySheet(f *boresurvey.Finding, system units.System) string {
	b := sketch.Bore{Survey: f.Survey, Axis: f.Axis, Plan: f.Plan, Units: system}
	var drawings []*sketch.Drawing
	if f.Plan != nil {
		drawings = append(drawings, sketch.EndView(b), sketch.Unrolled(b))
	}
	if f.Axis != nil {
		drawings = append(drawings, sketch.AxisView(b))
	}
	desc := "Verdict: " + f.Verdict.String() + "."
	for _, n := range f.Notices {
		desc += " " + n.Text(system)
	}
	return sketch.Sheet(f.Job.Part, desc, drawings...)
}
