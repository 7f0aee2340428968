package main

import (
	"strings"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
)

// printWaiting lists what is still to be measured and who must release what.
func printWaiting(s *screen, r *checklists.Report, system units.System) {
	if len(r.Waiting) == 0 {
		return
	}
	s.heading(s.say("Still to do before this can be go"))
	width := 0
	for _, name := range r.Waiting {
		if _, ok := r.Procedure.Rules.Reading(name); ok {
			width = max(width, len(name))
		}
	}
	for _, name := range r.Waiting {
		d, ok := r.Procedure.Rules.Reading(name)
		if !ok {
			s.labelled(2, "", holdText(s, r, name))
			continue
		}
		s.row(2, name, width+2, s.askText(r.Words().Sheets(), d, system))
	}
	printNeeded(s, r.Rules, system)
}

// printNeeded says what single missing readings would have to be.
func printNeeded(s *screen, r *rules.Report, system units.System) {
	for i := range r.Results {
		if text := r.Needed(i, system); text != "" {
			s.labelled(4, r.Results[i].Rule.ID+": ", text)
		}
	}
}

// holdText names a hold that a report waits for.
func holdText(s *screen, r *checklists.Report, waits string) string {
	for _, step := range r.Procedure.Steps {
		if waits == step.WaitsFor() {
			return s.sayf("hold %s, released by %s", step.ID, r.Words().Step(step).ReleasedBy)
		}
	}
	return waits
}

// askText is the question for a reading with how to answer it.
func (s *screen) askText(t *rules.Translation, d *rules.ReadingDef, system units.System) string {
	text := t.Ask(d)
	switch d.Kind {
	case units.YesNo:
		text += s.say(" (yes or no)")
	case units.Choice:
		text += " (" + strings.Join(t.Options(d), ", ") + ")"
	default:
		if u := d.Unit; u.Symbol != "" {
			if system == units.MetricShop {
				u = units.Usual(u.Kind, system)
			}
			text += " (" + u.Symbol + ")"
		}
	}
	if d.With != "" {
		text += s.sayf(", with %s", t.With(d))
	}
	return text
}
