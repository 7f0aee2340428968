package checklists

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

const gripSheet = `sheet: jaws
readings:
  grip: {ask: How far is it gripped, kind: length, unit: in, from: 0 in, to: 20 in}
rules:
  - id: grip-least
    check: grip >= inch(1)
    level: stop
    says: Too little.
    do: Push it in.
    source: common practice, no source
`

const gripSteps = `steps of: gripping
sheets: [jaws]
steps:
  - {id: clean, kind: do, title: Clean the jaws, why: Chips hold it off.}
  - {id: grip, kind: measure, title: Measure the grip, why: It flies., take: [grip]}
`

const turning = `checklist: turning
title: Turn it
sheets: [jaws]
steps:
  - steps of: gripping
  - {id: turn, kind: do, title: Turn it, why: That is the job.}
`

// folder makes a folder of files for a test.
func folder(name string, files ...string) Folder {
	m := fstest.MapFS{}
	for i := 0; i < len(files); i += 2 {
		m[files[i]] = &fstest.MapFile{Data: []byte(files[i+1])}
	}
	return Folder{Name: name, FS: m}
}

func jawShop(checklists ...string) *Shop {
	return OpenShop(Layer{Sheets: folder("rules", "jaws.yaml", gripSheet), Checklists: folder("checklists", checklists...)})
}

func TestSharedStepsAreTakenIn(t *testing.T) {
	shop := jawShop("turning.yaml", turning, "parts/gripping.yaml", gripSteps)
	p, err := shop.Procedure("turning")
	require.NoError(t, err)
	assert.Equal(t, []string{"clean", "grip", "turn"}, p.allStepIDs())
	assert.Equal(t, []string{"turning"}, shop.ChecklistNames(), "shared steps are no job")
	assert.Equal(t, []string{"gripping"}, shop.SharedStepsNames())
}

// A procedure's hash covers the steps that it takes in.
func TestSharedStepsCountInTheHash(t *testing.T) {
	one, err := jawShop("turning.yaml", turning, "parts/gripping.yaml", gripSteps).Procedure("turning")
	require.NoError(t, err)
	other, err := jawShop("turning.yaml", turning, "parts/gripping.yaml", gripSteps+"# changed\n").Procedure("turning")
	require.NoError(t, err)
	assert.NotEqual(t, one.Hash, other.Hash)
}

// A shop's own shared steps stand in front of the shipped ones of that name,
// under the shipped checklists too.
func TestShopSharedStepsStandInFront(t *testing.T) {
	own := `steps of: gripping
steps: [{id: grip, kind: measure, title: Our way, why: It flies., take: [grip]}]
`
	shop := OpenShop(Layer{Checklists: folder("my-shop/checklists", "parts/gripping.yaml", own)},
		Layer{Sheets: folder("rules", "jaws.yaml", gripSheet), Checklists: folder("checklists", "turning.yaml", turning, "parts/gripping.yaml", gripSteps)})
	p, err := shop.Procedure("turning")
	require.NoError(t, err)
	assert.Equal(t, []string{"grip", "turn"}, p.allStepIDs())
	assert.Equal(t, "Our way", p.Steps[0].Title)
}

// Mistakes point to where they stand, in the shared file too.
func TestSharedStepsMistakes(t *testing.T) {
	for _, c := range []struct{ name, checklist, shared, want string }{
		{"no such steps", "checklist: turning\ntitle: x\nsheets: [jaws]\nsteps:\n  - steps of: griping\n", gripSteps,
			"checklists/turning.yaml:5:15: there are no steps of griping\n  5 |   - steps of: griping\n    |               ^^^^^^^\n  did you mean gripping?"},
		{"sheet left out", "checklist: turning\ntitle: x\nsteps:\n  - steps of: gripping\n", gripSteps,
			"checklists/turning.yaml:4:15: the steps of gripping need the sheet jaws\n  4 |   - steps of: gripping\n    |               ^^^^^^^^\n  add jaws to sheets:"},
		{"same id", turning, "steps of: gripping\nsteps:\n  - {id: turn, kind: do, title: x, why: y.}\n",
			"checklists/turning.yaml:6:10: the step turn is there twice\n  6 |   - {id: turn, kind: do, title: Turn it, why: That is the job.}\n    |          ^^^^\n  every step has an id of its own; the other is checklists/parts/gripping.yaml:3"},
		{"unknown reading", turning, "steps of: gripping\nsteps:\n  - {id: grip, kind: measure, title: x, why: y., take: [gripp]}\n",
			"checklists/parts/gripping.yaml:3:57: no sheet of this checklist has a reading gripp\n  3 |   - {id: grip, kind: measure, title: x, why: y., take: [gripp]}\n    |                                                         ^^^^^\n  did you mean grip?"},
		{"wrong name", turning, "steps of: grasping\nsteps: [{id: x, kind: do, title: x, why: y.}]\n",
			"checklists/parts/gripping.yaml:1:11: the file is called gripping.yaml, but this is grasping\n  1 | steps of: grasping\n    |           ^^^^^^^^\n  give both the same name"},
		{"shared in shared", turning, "steps of: gripping\nsteps:\n  - steps of: other\n",
			"checklists/parts/gripping.yaml:3:5: \"steps of\" is not a key here\n  3 |   - steps of: other\n    |     ^^^^^^^^\n  known here: id, kind, title, do, why, how, goes wrong, when, take, cautions, needs, released by, two persons"},
		{"more than a name", turning + "  - {steps of: gripping, when: bushed}\n", gripSteps,
			"checklists/turning.yaml:7:26: \"when\" is not a key here\n  7 |   - {steps of: gripping, when: bushed}\n    |                          ^^^^\n  known here: steps of"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := jawShop("turning.yaml", c.checklist, "parts/gripping.yaml", c.shared).Procedure("turning")
			var list source.Errors
			require.ErrorAs(t, err, &list)
			assert.Equal(t, c.want, list[0].Error())
		})
	}
}

func TestCompareSeesIntoSharedSteps(t *testing.T) {
	file := &source.File{Name: "turning.yaml", Text: turning}
	old := Version{file, jawShop("parts/gripping.yaml", gripSteps)}
	plain := `checklist: turning
title: Turn it
sheets: [jaws]
steps:
  - {id: clean, kind: do, title: Clean the jaws, why: Chips hold it off.}
  - {id: grip, kind: measure, title: Measure the grip, why: It flies., take: [grip]}
  - {id: turn, kind: do, title: Turn it, why: That is the job.}
`
	list, err := Compare(old, Version{&source.File{Name: "turning.yaml", Text: plain}, jawShop()})
	require.NoError(t, err)
	assert.Empty(t, list, "written out or taken in is the same")

	list, err = Compare(old, Version{file, jawShop("parts/gripping.yaml", "steps of: gripping\nsteps: [{id: grip, kind: measure, title: Measure twice, why: It flies., take: [grip]}]\n")})
	require.NoError(t, err)
	assert.Equal(t, []string{"step clean: taken out", `step grip: title was "Measure the grip", now "Measure twice"`}, list)
}

// Every shipped file of shared steps is in order by itself, is taken in by some
// checklist, and is worth sharing.
func TestShippedSharedSteps(t *testing.T) {
	shop := OpenShop(Shipped())
	users := map[string]int{}
	for _, name := range shop.ChecklistNames() {
		f, err := Shipped().Checklists.read(name)
		require.NoError(t, err)
		c, err := readChecklist(shop, f)
		require.NoError(t, err)
		for _, shared := range c.shared {
			users[shared.Name]++
		}
	}
	require.NotEmpty(t, shop.SharedStepsNames())
	for _, name := range shop.SharedStepsNames() {
		f, err := shop.SharedSteps(name)
		require.NoError(t, err)
		assert.NoError(t, LintShared(rules.Trade(), shop, f), name)
		assert.GreaterOrEqual(t, users[f.Name], 2, name)
	}
}
