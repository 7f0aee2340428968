package checklists

import (
	"fmt"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// Shelf is where sheets and shared steps are found by name.
type Shelf interface {
	rules.Shelf
	SharedSteps(name string) (*source.File, error) // nil and no error when there is none
	SharedStepsNames() []string                    // sorted
}

// stepItem is one entry under steps: a step, or the steps of another file.
type stepItem struct {
	step stepSource
	of   *stepsOf
}

// stepsOf takes in shared steps.
type stepsOf struct {
	Name source.Text `yaml:"steps of,required" about:"shared steps to take in here, a file in checklists/parts"`
}

// DecodeNode tells the two apart by their key.
func (i *stepItem) DecodeNode(n source.Node, report *source.Report) {
	if !n.Has("steps of") {
		n.Decode(&i.step, report)
		return
	}
	i.of = &stepsOf{}
	n.Decode(i.of, report)
}

// DescribeSchema describes both.
func (*stepItem) DescribeSchema() source.Schema {
	return source.AnyOf(source.SchemaOf[stepSource](), source.SchemaOf[stepsOf]())
}

// sharedSource is a file of steps that are written once and taken in by several
// checklists.
type sharedSource struct {
	Name   source.Text   `yaml:"steps of,required" about:"what these steps are called, the same as the file"`
	About  source.Text   `yaml:"about" about:"what they are for, in a sentence"`
	Sheets []source.Text `yaml:"sheets" about:"rule sheets that a checklist with these steps must name"` // which watch over these steps
	Steps  []stepSource  `yaml:"steps,required" about:"in the order of the work"`
}

// SharedSchema describes a file of shared steps for editors.
func SharedSchema() source.Schema {
	return source.SchemaFor[sharedSource]("Shared steps of gudgeon")
}

func readShared(f *source.File) (*sharedSource, error) {
	s := &sharedSource{}
	if err := source.Decode(f, s); err != nil {
		return nil, err
	}
	var report source.Report
	if !idForm.MatchString(s.Name.Value) {
		report.At(s.Name, "shared steps are named with small letters, digits and hyphens", "")
	}
	return s, report.Err()
}

func (s *sharedSource) steps() []*stepSource {
	list := make([]*stepSource, len(s.Steps))
	for i := range s.Steps {
		list[i] = &s.Steps[i]
	}
	return list
}

// take adds a step, or the shared steps that stand for it.
func (c *checklistSource) take(shelf Shelf, item *stepItem, report *source.Report) {
	if item.of == nil {
		c.steps = append(c.steps, &item.step)
		return
	}
	name := item.of.Name
	f, err := shelf.SharedSteps(name.Value)
	if err != nil {
		report.Merge(err)
		return
	}
	if f == nil {
		report.At(name, fmt.Sprintf("there are no steps of %s", name.Value), source.Suggest(name.Value, shelf.SharedStepsNames()))
		return
	}
	shared, err := readShared(f)
	if err != nil {
		report.Merge(err)
		return
	}
	if shared.Name.Value != name.Value {
		report.Merge(misnamed(shared.Name, name.Value))
	}
	c.watch(shared, name, report)
	c.steps = append(c.steps, shared.steps()...)
	c.shared = append(c.shared, f)
}

// watch refuses shared steps without the sheets that watch over them.
func (c *checklistSource) watch(shared *sharedSource, name source.Text, report *source.Report) {
	named := map[string]bool{}
	for _, sheet := range c.Sheets {
		named[sheet.Value] = true
	}
	for _, sheet := range shared.Sheets {
		if !named[sheet.Value] {
			report.At(name, fmt.Sprintf("the steps of %s need the sheet %s", name.Value, sheet.Value), fmt.Sprintf("add %s to sheets:", sheet.Value))
		}
	}
}

// LintShared reports the mistakes in a file of shared steps, with the sheets that
// it names. Which readings it leaves to other steps is the checklist's matter.
func LintShared(l *rules.Library, shelf Shelf, f *source.File) error {
	shared, err := readShared(f)
	if err != nil {
		return err
	}
	var report source.Report
	checkSteps(shared.steps(), &report)
	if err := report.Err(); err != nil {
		return err
	}
	p, err := compile(l, shelf, &checklistSource{Name: shared.Name, Sheets: shared.Sheets, steps: shared.steps()})
	if err != nil {
		return err
	}
	for _, s := range p.Steps {
		if s.when != nil {
			p.Rules.LintCondition(s.when, &report)
		}
	}
	return report.Err()
}
