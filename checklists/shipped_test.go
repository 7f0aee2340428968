package checklists

import (
	"os"
	"path/filepath"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/kb"
	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// Everything that is shipped compiles, alone and together.
func TestShippedCompiles(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.SheetNames() {
		t.Run("sheet "+name, func(t *testing.T) {
			_, err := rules.Compile(rules.Trade(), shop, []source.Text{source.Plain("test", name)})
			require.NoError(t, err)
		})
	}
	for _, name := range shop.ChecklistNames() {
		t.Run("checklist "+name, func(t *testing.T) {
			p, err := shop.Procedure(name)
			require.NoError(t, err)
			assert.NotEmpty(t, p.Steps)
			assert.Len(t, p.Hash, 64)
		})
	}
}

// All sheets can stand in one checklist: no name and no rule id is used twice.
func TestShippedSheetsGoTogether(t *testing.T) {
	shop := OpenShop(Shipped())
	var names []source.Text
	for _, name := range shop.SheetNames() {
		names = append(names, source.Plain("test", name))
	}
	_, err := rules.Compile(rules.Trade(), shop, names)
	require.NoError(t, err)
}

// Every rule says where it comes from: a standard or handbook with a number in
// its name, or the one phrase for practice without a source.
func TestShippedRulesHaveSources(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.SheetNames() {
		set, err := rules.Compile(rules.Trade(), shop, []source.Text{source.Plain("test", name)})
		require.NoError(t, err)
		for _, r := range set.Rules {
			assert.NotEmpty(t, r.Source, r.ID)
			assert.NotEmpty(t, r.Do, r.ID)
			if r.Source != trade.CommonPractice {
				assert.Regexp(t, `[A-Z]{2,}|Handbook|Shigley|Callister`, r.Source, r.ID)
			}
			if r.LifeSafety {
				assert.Equal(t, rules.LevelStop, r.Level, "%s guards lives and is no stop", r.ID)
			}
		}
	}
}

// Every reading that a checklist's rules and conditions rest on is asked in
// some step of it, once.
func TestShippedChecklistsAskEverything(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.ChecklistNames() {
		t.Run(name, func(t *testing.T) {
			p, err := shop.Procedure(name)
			require.NoError(t, err)
			asked := map[string]string{}
			for _, step := range p.Steps {
				for _, d := range step.Take {
					assert.Empty(t, asked[d.Name], "%s is asked in %s and in %s", d.Name, asked[d.Name], step.ID)
					asked[d.Name] = step.ID
				}
			}
			for _, r := range p.Rules.Rules {
				for _, reading := range r.Needs {
					assert.NotEmpty(t, asked[reading], "rule %s needs %s, which no step asks for", r.ID, reading)
				}
			}
			empty := p.Evaluate(NewProgress(""))
			assert.Equal(t, rules.Waiting, empty.Verdict)
			for _, step := range p.Steps {
				if step.when == nil {
					continue
				}
				for _, reading := range step.when.Missing(empty.Rules) {
					assert.NotEmpty(t, asked[reading], "step %s depends on %s, which no step asks for", step.ID, reading)
				}
			}
		})
	}
}

// Steps speak to people: a reason in one sentence, a title without a full stop.
func TestShippedStepsAreWritten(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.ChecklistNames() {
		p, err := shop.Procedure(name)
		require.NoError(t, err)
		for _, step := range p.Steps {
			at := name + "/" + step.ID
			assert.NotEmpty(t, step.Do, at)
			assert.False(t, strings.HasSuffix(step.Title, "."), at)
			assert.True(t, strings.HasSuffix(step.Why, "."), at)
			assert.Equal(t, 0, strings.Count(step.Why, ". "), "%s: why is one sentence", at)
			if step.Kind == Hold {
				assert.NotEmpty(t, step.Needs, at)
				assert.Equal(t, "foreman", step.ReleasedBy, at)
			}
		}
	}
}

// The examples that sheets and checklists carry come out as they say, show every
// rule both ways and reach every step.
func TestShippedIsProven(t *testing.T) {
	shop := OpenShop(Shipped())
	for _, name := range shop.SheetNames() {
		set, err := rules.Compile(rules.Trade(), shop, []source.Text{source.Plain("test", name)})
		require.NoError(t, err)
		sheet, err := shop.Sheet(name)
		require.NoError(t, err)
		proof, err := sheet.Prove(set)
		require.NoError(t, err)
		assert.Empty(t, proof.Failures, name)
		assert.Empty(t, proof.Unseen, name)
	}
	for _, name := range shop.ChecklistNames() {
		p, err := shop.Procedure(name)
		require.NoError(t, err)
		proof, err := p.Prove()
		require.NoError(t, err)
		assert.Empty(t, proof.Failures, name)
		assert.Empty(t, proof.NeverReached, name)
	}
}

type example struct {
	file, checklist string
	verdict         rules.Verdict
	stops           []string // rules that stop or caution, sorted
	waits           []string // readings it waits for
	midway          bool     // the job stands still in the middle: the rest is not taken yet
}

var examples = []example{
	{"pre-lift-go", "pre-lift", rules.Go, nil, nil, false},
	{"pre-lift-sling", "pre-lift", rules.Go, nil, nil, false},
	{"pre-lift-lug", "pre-lift", rules.Go, nil, nil, false},
	{"pre-lift-table", "pre-lift", rules.Go, nil, nil, false},
	{"pre-lift-table-edge", "pre-lift", rules.Stop, []string{"table-edge"}, nil, false},
	{"pre-lift-overload", "pre-lift", rules.Stop, []string{"truck-overload"}, nil, false},
	{"pre-lift-flat-sling", "pre-lift", rules.Stop, []string{"sling-angle", "sling-overload"}, nil, false},
	{"pre-lift-no-weight", "pre-lift", rules.Waiting, nil, []string{"part_weight", "weight_known_by"}, false},
	{"press-in-go", "press-in", rules.Go, nil, nil, false},
	{"press-in-cold", "press-in", rules.Go, nil, nil, false},
	{"bushing-swap-go", "bushing-swap", rules.Go, nil, nil, false},
	{"pin-boss-go", "pin-boss", rules.Go, nil, nil, false},
	{"bucket-ear-go", "bucket-ear", rules.Go, nil, nil, false},
	{"link-go", "link", rules.Go, nil, nil, false},
	{"link-stop", "link", rules.Stop, []string{"trued-clean", "wall-least"}, nil, true},
	{"link-offset", "link", rules.Stop, []string{"offset-unexplained"}, nil, true},
}

func runExample(t *testing.T, file, checklist string) *Report {
	t.Helper()
	path := filepath.Join("..", "testdata", file+".yaml")
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	p, err := OpenShop(Shipped()).Procedure(checklist)
	require.NoError(t, err)
	progress, err := p.ReadProgress(&source.File{Name: path, Text: string(text)})
	require.NoError(t, err)
	return p.Evaluate(progress)
}

// The example readings come to the verdict that their names promise.
func TestShippedExamples(t *testing.T) {
	for _, e := range examples {
		t.Run(e.file, func(t *testing.T) {
			r := runExample(t, e.file, e.checklist)
			var against []string
			for i := range r.Rules.Results {
				result := &r.Rules.Results[i]
				if result.Verdict != rules.Stop && result.Verdict != rules.Caution {
					continue
				}
				against = append(against, result.Rule.ID)
				if result.Err == nil {
					assert.NotContains(t, r.Rules.Says(i, units.InchShop), "{")
				}
			}
			sort.Strings(against)
			sort.Strings(e.stops)
			assert.Equal(t, e.stops, against)
			if !e.midway {
				assert.Equal(t, e.waits, r.Waiting)
			}
			assert.Equal(t, e.verdict, r.Verdict)
			if e.verdict != rules.Go {
				return
			}
			for _, s := range r.Steps {
				assert.Contains(t, []State{Finished, Skipped, Released}, s.State, s.Step.ID)
			}
		})
	}
}

// Every rule that a shipped note names is one of the shipped rules, so that the
// note is brought up by it.
func TestShippedNotesNameRules(t *testing.T) {
	shop := OpenShop(Shipped())
	known := map[string]bool{}
	for _, name := range shop.SheetNames() {
		set, err := rules.Compile(rules.Trade(), shop, []source.Text{source.Plain("test", name)})
		require.NoError(t, err)
		for _, r := range set.Rules {
			known[r.ID] = true
		}
	}
	notes, err := kb.Shipped()
	require.NoError(t, err)
	for _, n := range notes {
		for _, id := range n.Rules {
			assert.True(t, known[id], "%s names the rule %s, which is in no sheet", n.Name, id)
		}
	}
}
