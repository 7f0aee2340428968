package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/checklists"
	"gudgeon/rules/source"
	"gudgeon/units"
)

func shippedPrelift(t *testing.T) *checklists.Procedure {
	t.Helper()
	p, err := checklists.OpenShop(checklists.Shipped()).Procedure(preliftChecklist)
	require.NoError(t, err)
	return p
}

// TestPreliftNamesExist keeps the card's words with the checklist it is made of.
func TestPreliftNamesExist(t *testing.T) {
	p := shippedPrelift(t)
	names := map[string]bool{}
	for _, v := range p.Rules.Values {
		names[v.Name] = true
	}
	for id := range subjects {
		_, isRule := p.Rules.Rule(id)
		assert.True(t, isRule || names[id], "%s is neither a rule nor a value", id)
	}
	for _, r := range p.Rules.Rules {
		assert.Contains(t, subjects, r.ID, "the card has no words for it")
	}
	for _, d := range p.Rules.Readings {
		names[d.Name] = true
	}
	for _, f := range facts {
		for _, part := range f.parts {
			assert.True(t, names[part.name], part.name)
		}
	}
	for id, sides := range sidesOf {
		assert.Contains(t, subjects, id)
		assert.True(t, names[sides.load] && names[sides.capacity], id)
	}
	for _, c := range commonFlags {
		assert.True(t, names[c.reading], c.reading)
	}
	for _, name := range reachReadings {
		assert.True(t, names[name], name)
	}
}

// TestGoverning marks what stops the lift before what is merely used up more.
func TestGoverning(t *testing.T) {
	report := preliftOf(t, `{part_weight: 3000 lb, lifted_by: crane and slings, crane_rating: 3100 lb, hitch: bridle,
    leg_reach: 66 in, leg_near: 66 in, sling_length: 6 ft, sling_rating: 20000 lb}`)
	for _, u := range usesOf(report, units.InchShop) {
		assert.Equal(t, u.Rule == "sling-angle", u.Governs, u.Rule)
	}
	wide := usesOf(preliftOf(t, `{part_weight: 20000 lb, lifted_by: crane and lug, hitch: one leg, lug_kind: bent bar lug, hoist_speed: 20 ft/min,
    lug_side_pull: 0°, lug_yield: 36 ksi, lug_bar: 0.5 in, lug_bar_inside: 3 in, lug_bar_leg: 2 in, lug_weld_leg: 0.1875 in, lug_electrode: E70}`), units.InchShop)
	modes := map[string]bool{}
	for _, u := range wide {
		if u.Rule == "lug-overload" && u.Mode != "" {
			modes[u.Mode] = true
		}
	}
	assert.Equal(t, map[string]bool{"bow": true, "leg": true, "shear": true}, modes)
}

// TestUsesOfMarkedLug: the mark is what counts, though sizes were measured too.
func TestUsesOfMarkedLug(t *testing.T) {
	for _, u := range usesOf(preliftOf(t, `{part_weight: 1200 lb, lifted_by: crane and lug, hitch: one leg, lug_kind: marked with its rating,
    lug_rating: 2000 lb, lug_thickness: 0.75 in}`), units.InchShop) {
		assert.Equal(t, []string{"lug", "1,200 lb", "2,000 lb", "60 %", "go"}, []string{u.Element, u.Load, u.Capacity, percent(u.share), u.Verdict.String()})
	}
}

func preliftOf(t *testing.T, readings string) *checklists.Report {
	t.Helper()
	p := shippedPrelift(t)
	progress, err := p.ReadProgress(&source.File{Name: "test.yaml", Text: "readings: " + readings + "\n"})
	require.NoError(t, err)
	return p.Evaluate(progress)
}

// TestTallLettersExist keeps a verdict from printing as nothing.
func TestTallLettersExist(t *testing.T) {
	for v, words := range verdictWords {
		for _, r := range words.tall {
			assert.Contains(t, letters, r, v.String())
		}
		assert.LessOrEqual(t, len(v.String())+2+len(words.plain), 80)
		for _, row := range tall(words.tall) {
			assert.LessOrEqual(t, len(strings.TrimSpace(row)), 70)
		}
	}
}
