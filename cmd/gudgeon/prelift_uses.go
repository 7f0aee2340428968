package main

import (
	"fmt"
	"math"
	"strings"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/units"
)

// use is one line of the card's table: how much of something is used up.
type use struct {
	Element  string        `json:"element"`
	Mode     string        `json:"mode,omitempty"` // a way in which the element can fail
	About    string        `json:"about,omitempty"`
	Load     string        `json:"load,omitempty"`
	Capacity string        `json:"capacity,omitempty"`
	Share    *float64      `json:"use,omitempty"`     // load over capacity
	Verdict  rules.Verdict `json:"verdict,omitempty"` // none where the rule was decided by another line
	Rule     string        `json:"rule"`
	Governs  bool          `json:"governs,omitempty"` // the element that decides, and its worst way of failing

	share float64 // the same; NaN where it has no meaning
	grave bool    // its rule can stop the lift
}

// subjects name what a rule, or a record that it is judged by, is about. Others
// are named by their id.
var subjects = map[string]string{
	"weight-known": "how the weight is known", "people-clear": "somebody is near",
	"crane-overload": "crane or hoist", "sling-sound": "the sling or its tag", "sling-angle": "slings, how steep",
	"choke-angle": "choke, how open", "sling-overload": "sling, the hardest leg", "shackle-overload": "shackle",
	"eyebolt-angle": "eyebolt, how steep", "eyebolt-overload": "eyebolt", "hook-centred": "hook not over the balance point",
	"hang-level": "hangs off level", "hand-lift": "on each who carries",
	"lug-sound": "the lug by its looks", "lug-overload": "lug", "plate_lug": "lug, at its hole", "plate_foot": "lug, at its foot",
	"lug-weld": "weld of the lug", "lug-weld-small": "weld of the lug, its size",
	"truck-plate": "the truck's plate", "truck-overload": "truck, load that far out", "truck-engagement": "forks, length under the part",
	"legs-in-order": "the lengths of the legs", "eyebolt-hitch": "eyebolts, one sling through them", "load-on-forks": "the part's place on the forks",
	"forks-sound": "forks, chains or tires", "load-held": "the load can come off",
	"table-overload": "lift table", "table-edge": "lift table, at its edge", "table-braced": "the table or the part can roll",
}

func subject(id string) string {
	if name, ok := subjects[id]; ok {
		return name
	}
	return strings.NewReplacer("-", " ", "_", " ").Replace(id)
}

// sidesOf names what is compared where a rule itself only compares shares.
var sidesOf = map[string]struct{ load, capacity string }{
	"lug-overload": {"leg_load", "lug_rating"},
}

// usesOf lists what carries the load, in the order of the rules: from the hook
// down to the weld, or along the forks.
func usesOf(report *checklists.Report, system units.System) []use {
	var list []use
	r := report.Rules
	for i := range r.Results {
		switch r.Results[i].Verdict {
		case rules.NotNeeded, rules.Waiting:
			continue
		}
		list = append(list, usesOfRule(r, i, system)...)
	}
	markGoverning(list)
	return list
}

func usesOfRule(r *rules.Report, i int, system units.System) []use {
	result := &r.Results[i]
	var list []use
	elements := r.Elements(i, system)
	worst := worstOf(elements)
	for n, e := range elements {
		if len(e.Modes) == 0 {
			continue
		}
		id := result.Rule.ID
		if len(elements) > 1 {
			id = e.Name
		}
		head := use{Element: subject(id), Load: e.Load, Capacity: e.Capacity, share: e.Use}
		if n == worst || result.Verdict == rules.Go {
			head.Verdict = result.Verdict
		}
		list = append(list, head)
		for _, m := range e.Modes {
			list = append(list, use{Element: head.Element, Mode: m.Name, About: m.About, Capacity: m.Capacity, share: m.Use})
		}
	}
	if len(list) == 0 && result.HasMargin {
		list = append(list, plainUse(r, i, system))
	}
	for n := range list {
		list[n].Rule, list[n].grave = result.Rule.ID, result.Rule.Level == rules.LevelStop
		if !math.IsNaN(list[n].share) {
			list[n].Share = &list[n].share
		}
	}
	return list
}

// worstOf is the element that its rule was decided by.
func worstOf(elements []rules.Element) int {
	worst := 0
	for n, e := range elements {
		if e.Use > elements[worst].Use {
			worst = n
		}
	}
	return worst
}

// plainUse is the line of a rule that compares two figures; an angle has no use.
func plainUse(r *rules.Report, i int, system units.System) use {
	result := &r.Results[i]
	u := use{Element: subject(result.Rule.ID), share: result.Use, Verdict: result.Verdict}
	if r.MarginUnit(result, system).Kind == units.Ratio {
		if names, ok := sidesOf[result.Rule.ID]; ok {
			u.Load, u.Capacity = r.Text(names.load, system), r.Text(names.capacity, system)
		}
		return u
	}
	found, limit, least, ok := r.Sides(i, system)
	if ok && least {
		limit = "≥ " + limit
	}
	u.Load, u.Capacity = found, limit
	return u
}

// markGoverning marks the element that decides, of those that can stop the lift,
// and the worst of its ways of failing.
func markGoverning(list []use) {
	first := -1
	for i, u := range list {
		if u.grave && u.Mode == "" && (first < 0 || u.worseThan(list[first])) {
			first = i
		}
	}
	if first < 0 {
		return
	}
	list[first].Governs = true
	mode := -1
	for i := first + 1; i < len(list) && list[i].Mode != ""; i++ {
		if mode < 0 || list[i].worseThan(list[mode]) {
			mode = i
		}
	}
	if mode >= 0 {
		list[mode].Governs = true
	}
}

// worseThan puts what stops the lift before what does not, then what is used up
// more; a line without a use comes last of its kind.
func (u use) worseThan(v use) bool {
	if stops := u.Verdict == rules.Stop; stops != (v.Verdict == rules.Stop) {
		return stops
	}
	return u.share > v.share || math.IsNaN(v.share) && !math.IsNaN(u.share)
}

// percent rounds a use up, so that what is over its limit never reads 100 %.
func percent(x float64) string {
	if math.IsNaN(x) {
		return ""
	}
	return fmt.Sprintf("%.0f %%", max(0, math.Ceil(x*100-1e-9)))
}

// preliftReport is the report of check with the card's table.
type preliftReport struct {
	checklists.ReportJSON
	Uses []use `json:"uses"`
}

func preliftJSON(report *checklists.Report, system units.System) preliftReport {
	uses := usesOf(report, system)
	if uses == nil {
		uses = []use{}
	}
	return preliftReport{report.JSON(system), uses}
}
