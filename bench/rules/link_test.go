// Package rules compares the rule engine with rules written by hand, and with
// two general expression engines.
package rules

import (
	"maps"
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/units"
)

// linkJob is the shipped link checklist with a finished job.
func linkJob(t testing.TB) (*checklists.Procedure, rules.Readings) {
	t.Helper()
	p, err := checklists.OpenShop(checklists.Shipped()).Procedure("link")
	require.NoError(t, err)
	text, err := os.ReadFile("../../testdata/link-go.yaml")
	require.NoError(t, err)
	progress, err := p.ReadProgress(&source.File{Name: "link-go.yaml", Text: string(text)})
	require.NoError(t, err)
	return p, progress.Readings
}

// failing turns a few readings of a good job bad.
func failing(t testing.TB, set *rules.Set, good rules.Readings) rules.Readings {
	t.Helper()
	bad := maps.Clone(good)
	for name, text := range map[string]string{
		"sling_rating": "900 lb", "bar_overhang": "13 in", "heavy_cut": "20 thou", "clamp_torque": "15 ft lb",
		"layers_planned": "1", "preheat_read": "280 °F", "bushing_od": "3.5060 in", "press_rating": "8 short ton",
	} {
		d, ok := set.Reading(name)
		require.True(t, ok, name)
		r, err := d.Read(text)
		require.NoError(t, err)
		bad[name] = r
	}
	return bad
}

// overSurvey reports whether a rule hangs on a survey.
func overSurvey(set *rules.Set, rule *rules.Rule) bool {
	for _, name := range rule.Needs {
		if d, _ := set.Reading(name); d.Kind == units.Survey {
			return true
		}
	}
	return false
}

// plainShelf hands out the shipped sheets without the rules over a survey.
type plainShelf struct {
	*checklists.Shop
	full *rules.Set
}

func (s plainShelf) Sheet(name string) (*rules.Sheet, error) {
	sheet, err := s.Shop.Sheet(name)
	if sheet == nil || err != nil {
		return sheet, err
	}
	plain := *sheet
	plain.Rules = nil
	for _, r := range sheet.Rules {
		if rule, ok := s.full.Rule(r.ID.Value); !ok || !overSurvey(s.full, rule) {
			plain.Rules = append(plain.Rules, r)
		}
	}
	return &plain, nil
}

// plainLink is the link job with every rule but those over a survey.
func plainLink(t testing.TB, full *rules.Set, all rules.Readings) (*rules.Set, rules.Readings) {
	t.Helper()
	var sheets []source.Text
	for _, r := range full.Rules {
		if n := len(sheets); n == 0 || sheets[n-1].Value != r.Sheet {
			sheets = append(sheets, source.Plain("link", r.Sheet))
		}
	}
	set, err := rules.Compile(rules.Trade(), plainShelf{checklists.OpenShop(checklists.Shipped()), full}, sheets)
	require.NoError(t, err)
	readings := maps.Clone(all)
	maps.DeleteFunc(readings, func(_ string, r rules.Reading) bool { return r.Survey != nil })
	return set, readings
}

// forgetInstruments takes away all that is known of how well things were read.
func forgetInstruments(set *rules.Set, readings rules.Readings) {
	for _, d := range set.Readings {
		d.With = ""
	}
	for name, r := range readings {
		r.With, r.U = "", 0
		readings[name] = r
	}
}
