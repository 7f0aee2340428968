package checklists

import (
	"fmt"
	"slices"
	"strings"

	"gudgeon/rules"
)

// Progress is what one job has so far.
type Progress struct {
	Part     string // which part it is, in the shop's own words
	Readings rules.Readings
	Done     map[string]bool      // do steps that were ticked
	Released map[string]Signature // holds, by step
	Signed   map[string]Signature // cautions passed with a reason, and stops a foreman released, by rule
}

// Signature is a name put under something.
type Signature struct {
	By     string
	Reason string
}

// State says where a step stands.
type State string

// The states of a step.
const (
	Open      State = "open"       // to be done
	Finished  State = "done"       // done, or all its readings taken
	Skipped   State = "not needed" // its when does not hold
	Undecided State = "waiting"    // its when is not known yet
	Blocked   State = "blocked"    // a hold that may not be released yet
	Released  State = "released"   // a hold that was released
)

// StepReport is where one step stands.
type StepReport struct {
	Step    *Step
	State   State
	Missing []string        // readings to take, or to tell whether the step is needed
	Against []*rules.Result // of a hold: what stops or waits
}

// Report is where a job stands.
type Report struct {
	Procedure *Procedure
	Progress  *Progress
	Verdict   rules.Verdict
	Waiting   []string // readings and holds that it waits for
	Rules     *rules.Report
	Steps     []StepReport

	words *Translation // what it is printed in; nil is English
}

// Evaluate works out where a job stands.
func (p *Procedure) Evaluate(progress *Progress) *Report {
	r := &Report{Procedure: p, Progress: progress, Rules: p.Rules.Evaluate(progress.Readings)}
	r.Verdict = r.Rules.Verdict
	r.Waiting = append(r.Waiting, r.Rules.Waiting...)
	waiting := map[string]bool{}
	for _, name := range r.Waiting {
		waiting[name] = true
	}
	for _, step := range p.Steps {
		s := r.step(step)
		r.Steps = append(r.Steps, s)
		for _, name := range s.Missing {
			if !waiting[name] {
				waiting[name] = true
				r.Waiting = append(r.Waiting, name)
			}
		}
		if w := s.waitsFor(); w != "" {
			r.Waiting = append(r.Waiting, w)
		}
	}
	if len(r.Waiting) > 0 {
		r.Verdict = rules.Worse(r.Verdict, rules.Waiting)
	}
	return r
}

// waitsFor is what a job waits for at a step beside readings: a hold's release,
// or that it can be told at all whether the step is needed. A step that nobody
// can decide is never taken for one that is not needed.
func (s *StepReport) waitsFor() string {
	switch {
	case s.Step.Kind == Hold && (s.State == Open || s.State == Blocked):
		return s.Step.WaitsFor()
	case s.State == Undecided && len(s.Missing) == 0:
		return fmt.Sprintf("whether the step %s is needed, which its readings do not tell", s.Step.ID)
	}
	return ""
}

// WaitsFor is what a report says that it waits for at a hold.
func (s *Step) WaitsFor() string { return fmt.Sprintf("hold %s, released by %s", s.ID, s.ReleasedBy) }

func (r *Report) step(step *Step) StepReport {
	out := StepReport{Step: step, State: Finished}
	if step.when != nil {
		yes, known := step.when.Holds(r.Rules)
		if !known {
			out.State, out.Missing = Undecided, step.when.Missing(r.Rules)
			return out
		}
		if !yes {
			out.State = Skipped
			return out
		}
	}
	switch step.Kind {
	case Hold:
		return r.hold(out)
	case Do:
		if !r.Progress.Done[step.ID] {
			out.State = Open
		}
		return out
	}
	for _, d := range step.Take {
		if _, ok := r.Progress.Readings[d.Name]; !ok {
			out.Missing = append(out.Missing, d.Name)
			out.State = Open
		}
	}
	return out
}

// hold says whether a hold is released, or what stands against it. A release
// counts only while nothing stands against it: new readings can take it back.
func (r *Report) hold(out StepReport) StepReport {
	for i := range r.Rules.Results {
		result := &r.Rules.Results[i]
		if slices.Contains(out.Step.Needs, result.Rule) && r.against(result) {
			out.Against = append(out.Against, result)
		}
	}
	_, signed := r.Progress.Released[out.Step.ID]
	switch {
	case len(out.Against) > 0:
		out.State = Blocked
	case signed:
		out.State = Released
	default:
		out.State = Open
	}
	return out
}

// against reports whether a result keeps a hold shut: a missing reading, a stop
// that no foreman released, a caution that nobody signed. A life-safety stop is
// opened by new readings only.
func (r *Report) against(result *rules.Result) bool {
	_, signed := r.Progress.Signed[result.Rule.ID]
	switch result.Verdict {
	case rules.Waiting:
		return true
	case rules.Stop:
		return !signed || result.Rule.LifeSafety
	case rules.Caution:
		return !signed
	}
	return false
}

// againstIDs names the rules that keep a hold shut.
func (s *StepReport) againstIDs() string {
	ids := make([]string, len(s.Against))
	for i, result := range s.Against {
		ids[i] = result.Rule.ID
	}
	return strings.Join(ids, ", ")
}
