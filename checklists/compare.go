package checklists

import (
	"fmt"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// Version is one version of a checklist, with the shelf that its shared steps
// come from.
type Version struct {
	File  *source.File
	Shelf Shelf
}

// Compare says in a foreman's words what differs between two versions of a
// checklist, in the order of the steps.
func Compare(old, newer Version) ([]string, error) {
	a, err := readChecklist(old.Shelf, old.File)
	if err != nil {
		return nil, err
	}
	b, err := readChecklist(newer.Shelf, newer.File)
	if err != nil {
		return nil, err
	}
	list := source.Compare("checklist "+b.Name.Value, *a, *b)
	return append(list, compareSteps(a.steps, b.steps)...), nil
}

// CompareShared does the same for two files of shared steps.
func CompareShared(old, newer *source.File) ([]string, error) {
	a, err := readShared(old)
	if err != nil {
		return nil, err
	}
	b, err := readShared(newer)
	if err != nil {
		return nil, err
	}
	list := source.Compare("steps of "+b.Name.Value, *a, *b)
	return append(list, compareSteps(a.steps(), b.steps())...), nil
}

func compareSteps(old, newer []*stepSource) []string {
	list := source.CompareNames("step", stepNames(old), stepNames(newer))
	for _, before := range old {
		for _, after := range newer {
			if before.ID.Value == after.ID.Value {
				list = append(list, source.Compare("step "+before.ID.Value, *before, *after)...)
			}
		}
	}
	return list
}

func stepNames(list []*stepSource) []string {
	names := make([]string, len(list))
	for i, s := range list {
		names[i] = s.ID.Value
	}
	return names
}

// Turn is a job or an example that comes out differently under a new version.
type Turn struct {
	Job    string
	What   string // the job itself, or a rule
	Before string
	After  string
}

// Turns lists what comes out differently for one job's readings under another
// version. Readings that a version does not know are left aside by it.
func Turns(job string, old, newer *Procedure, readings *source.File) ([]Turn, error) {
	before, err := old.evaluateLoosely(readings)
	if err != nil {
		return nil, err
	}
	after, err := newer.evaluateLoosely(readings)
	if err != nil {
		return nil, err
	}
	var turns []Turn
	add := func(what string, a, b rules.Verdict) {
		if a != b {
			turns = append(turns, Turn{job, what, a.String(), b.String()})
		}
	}
	add("the job", before.Verdict, after.Verdict)
	for i := range before.Rules.Results {
		a := &before.Rules.Results[i]
		for j := range after.Rules.Results {
			if b := &after.Rules.Results[j]; a.Rule.ID == b.Rule.ID {
				add(a.Rule.ID, a.Verdict, b.Verdict)
			}
		}
	}
	return turns, nil
}

// evaluateLoosely reads what it knows of a readings file and evaluates it. A
// file in which nothing at all is known is a mistake.
func (p *Procedure) evaluateLoosely(f *source.File) (*Report, error) {
	var src progressSource
	if err := source.Decode(f, &src); err != nil {
		return nil, err
	}
	known := progressSource{Part: src.Part}
	for _, e := range src.Readings {
		if _, ok := p.Rules.Reading(e.Key.Value); ok {
			known.Readings = append(known.Readings, e)
		}
	}
	for _, id := range src.Done {
		if step, ok := p.Step(id.Value); ok && step.Kind == Do {
			known.Done = append(known.Done, id)
		}
	}
	for _, e := range src.Released {
		if step, ok := p.Step(e.Key.Value); ok && step.Kind == Hold {
			known.Released = append(known.Released, e)
		}
	}
	for _, e := range src.Signed {
		if _, ok := p.Rules.Rule(e.Key.Value); ok {
			known.Signed = append(known.Signed, e)
		}
	}
	if len(src.Readings) > 0 && len(known.Readings) == 0 {
		return nil, &source.Error{File: f.Name, What: fmt.Sprintf("none of its readings belong to the checklist %s", p.ID), Hint: "name readings files of the same checklist"}
	}
	var report source.Report
	progress := p.progress(&known, &report)
	if err := report.Err(); err != nil {
		return nil, err
	}
	return p.Evaluate(progress), nil
}
