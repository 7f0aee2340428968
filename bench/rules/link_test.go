// Package rules compares the rule engine with rules written by hand, and with
// two general expression engines.
package rules

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"gudgeon/checklists"
	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/units"
)

// linkJob reads a job of the shipped link checklist.
func linkJob(t testing.TB, name string) (*checklists.Procedure, rules.Readings) {
	t.Helper()
	p, err := checklists.OpenShop(checklists.Shipped()).Procedure("link")
	require.NoError(t, err)
	text, err := os.ReadFile("../../testdata/" + name)
	require.NoError(t, err)
	progress, err := p.ReadProgress(&source.File{Name: name, Text: string(text)})
	require.NoError(t, err)
	return p, progress.Readings
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

// plainShelf hands out the shipped sheets without the rules that hang on a
// survey.
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

// linkSheets names the sheets that the shipped link checklist takes its rules
// from, in its order.
func linkSheets(set *rules.Set) []source.Text {
	var names []source.Text
	for _, r := range set.Rules {
		if n := len(names); n == 0 || names[n-1].Value != r.Sheet {
			names = append(names, source.Plain("link", r.Sheet))
		}
	}
	return names
}

// withoutSurveys is the link job with every rule but those over a survey.
func withoutSurveys(t testing.TB, full *rules.Set, all rules.Readings) (*rules.Set, rules.Readings) {
	t.Helper()
	shelf := plainShelf{checklists.OpenShop(checklists.Shipped()), full}
	set, err := rules.Compile(rules.Trade(), shelf, linkSheets(full))
	require.NoError(t, err)
	readings := rules.Readings{}
	for name, r := range all {
		if r.Survey == nil {
			readings[name] = r
		}
	}
	return set, readings
}

// withoutInstruments is the set with nothing known of how well anything was
// read.
func withoutInstruments(set *rules.Set) (forget func(), restore func()) {
	with := map[*rules.ReadingDef]string{}
	for _, d := range set.Readings {
		with[d] = d.With
	}
	_ = with
	return nil, nil
}
