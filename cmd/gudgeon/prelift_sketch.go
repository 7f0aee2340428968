package main

import (
	"math"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
	"gudgeon/web/sketch"
)

// preliftSheet draws as much of a lift as is known; false when that is nothing.
func preliftSheet(s *screen, report *checklists.Report, system units.System) (string, bool) {
	d := liftDrawing{rules: report.Rules, system: system, note: firstAgainst(s, report, system), screen: s}
	var drawings []*sketch.Drawing
	for _, draw := range []func() *sketch.Drawing{d.slings, d.hanging, d.forks, d.table} {
		if drawing := draw(); drawing != nil {
			drawings = append(drawings, drawing)
			d.note = "" // once is enough
		}
	}
	if len(drawings) == 0 {
		return "", false
	}
	title := report.Progress.Part
	if title == "" {
		title = report.Words().Title(report.Procedure)
	}
	return sketch.Sheet(title, s.sayf("Verdict: %s.", report.Verdict.In(s.language)), drawings...), true
}

// firstAgainst is the first thing that stops the lift, or cautions.
func firstAgainst(s *screen, report *checklists.Report, system units.System) string {
	for _, v := range []rules.Verdict{rules.Stop, rules.Caution} {
		for i := range report.Rules.Results {
			if report.Rules.Results[i].Verdict == v {
				return capital(v.In(s.language)) + ": " + says(report.Rules, i, system)
			}
		}
	}
	return ""
}

type liftDrawing struct {
	rules  *rules.Report
	system units.System
	note   string
	screen *screen // whose words the notes are in
}

// numbers gives SI numbers by name; false when one of them is not known.
func (d *liftDrawing) numbers(names ...string) ([]float64, bool) {
	list := make([]float64, len(names))
	for i, name := range names {
		x, ok := d.rules.Number(name)
		if !ok {
			return nil, false
		}
		list[i] = x
	}
	return list, true
}

func (d *liftDrawing) is(name, word string) bool { return d.rules.In(nil).Text(name, d.system) == word }

// flattestLeg is the flattest leg that package sketch can draw: 5 degrees.
const flattestLeg = math.Pi / 36

// slings draws the legs with their angles; the rules know the pull of the
// hardest leg only, so that stands in the note.
func (d *liftDrawing) slings() *sketch.Drawing {
	x, ok := d.numbers("part_weight", "leg_angle")
	if !ok || !d.is("by_crane", "yes") || x[1] < flattestLeg {
		return nil
	}
	legs := []sketch.Leg{{Angle: x[1]}}
	if d.is("spread_legs", "yes") {
		near, ok := d.numbers("near_angle")
		if !ok {
			return nil
		}
		legs = append(legs, sketch.Leg{Angle: near[0]})
	}
	note := d.note
	if pull := d.rules.Text("leg_load", d.system); pull != "" {
		note = d.screen.sayf("The leg that pulls hardest takes %s. %s", pull, note)
	}
	return sketch.Slings(sketch.Rig{Weight: x[0], Legs: legs, Note: note, Units: d.system})
}

// hanging draws the part on its one lug. The reading says how far the lug is
// off, not to which side, so the nearer end is called A.
func (d *liftDrawing) hanging() *sketch.Drawing {
	x, ok := d.numbers("lug_offset", "lug_height", "part_length", "hang.tilt", "hang.drop", "hang.move")
	if !ok || !d.is("hitch", "one leg") {
		return nil
	}
	return sketch.Hanging(sketch.Hung{
		LugOffset: x[0], LugHeight: x[1], Length: x[2], Tilt: x[3], Drop: x[4], Move: x[5],
		Note: d.screen.sayf("A is the end that the lug is nearer to. %s", d.note), Units: d.system,
	})
}

func (d *liftDrawing) forks() *sketch.Drawing {
	x, ok := d.numbers("part_weight", "load_centre", "truck_rating", "rating_centre", "truck_capacity", "fork_length")
	if !ok || !d.is("by_forks", "yes") {
		return nil
	}
	load := sketch.Carried{
		Weight: x[0], LoadCentre: x[1], Rating: x[2], RatingCentre: x[3], Capacity: x[4], ForkLength: x[5], Note: d.note, Units: d.system,
	}
	if lies, ok := d.numbers("load_gap", "load_length"); ok {
		load.Gap, load.Length = lies[0], lies[1]
	}
	return sketch.ForkLoad(load)
}

func (d *liftDrawing) table() *sketch.Drawing {
	x, ok := d.numbers("part_weight", "table_rating", "table_platform_half", "table_base_half", "table_offset", "table.near_end", "table.far_end", "table_end_rating")
	if !ok || !d.is("by_table", "yes") {
		return nil
	}
	return sketch.TableLoad(sketch.OnTable{
		Weight: x[0], Rating: x[1], PlatformHalf: x[2], BaseHalf: x[3], Offset: x[4], NearEnd: x[5], FarEnd: x[6], EndRating: x[7],
		Note: d.note, Units: d.system,
	})
}
