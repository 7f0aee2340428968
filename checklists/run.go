package checklists

import (
	"errors"
	"fmt"

	"gudgeon/rules"
)

// Run walks a person through a Procedure, one step at a time. It keeps the
// progress and knows which steps were put off.
type Run struct {
	Procedure *Procedure
	Progress  *Progress

	report *Report
	putOff map[string]bool
	shown  int // the step shown last
	forced int // a step gone back to, -1 for none
}

// NewRun begins at the first unfinished step of a job.
func NewRun(p *Procedure, progress *Progress) *Run {
	r := &Run{Procedure: p, Progress: progress, putOff: map[string]bool{}, forced: -1}
	r.evaluate()
	return r
}

func (r *Run) evaluate() { r.report = r.Procedure.Evaluate(r.Progress) }

// Report is where the job stands now.
func (r *Run) Report() *Report { return r.report }

// Current is the step to show: the one gone back to, or the first that is open
// and not put off. It is false when nothing is left to do.
func (r *Run) Current() (StepReport, int, bool) {
	i := r.forced
	if i < 0 {
		i = r.firstOpen()
	}
	if i < 0 {
		return StepReport{}, 0, false
	}
	r.shown = i
	return r.report.Steps[i], i, true
}

// firstOpen finds the first step to do. Nothing beyond an unreleased hold is
// offered: work may not pass it.
func (r *Run) firstOpen() int {
	for i, s := range r.report.Steps {
		switch s.State {
		case Open, Blocked:
			if s.Step.Kind == Hold || !r.putOff[s.Step.ID] {
				return i
			}
		case Undecided, Finished, Skipped, Released:
		}
	}
	return -1
}

// Change is a rule whose verdict a new reading has changed.
type Change struct {
	Index  int // in Report().Rules.Results
	Result *rules.Result
	Before rules.Verdict
}

// Answer takes what was typed for a reading. It gives the reading as it was
// understood and the rules that changed, or an error that says how to write it;
// then nothing has changed.
func (r *Run) Answer(name, text, with string) (rules.Reading, []Change, error) {
	d, ok := r.Procedure.Rules.Reading(name)
	if !ok {
		return rules.Reading{}, nil, fmt.Errorf("there is no reading %s", name)
	}
	reading, err := d.Read(text)
	if err != nil {
		return reading, nil, err
	}
	reading.With = with
	return reading, r.Set(name, reading), nil
}

// Set takes a finished reading, such as a survey.
func (r *Run) Set(name string, reading rules.Reading) []Change {
	before := r.report
	r.Progress.Readings[name] = reading
	r.evaluate()
	var changes []Change
	for i := range r.report.Rules.Results {
		now, was := &r.report.Rules.Results[i], &before.Rules.Results[i]
		if now.Verdict != was.Verdict {
			changes = append(changes, Change{i, now, was.Verdict})
		}
	}
	return changes
}

// Tick marks a do step as done.
func (r *Run) Tick(step *Step) {
	r.Progress.Done[step.ID] = true
	r.Leave()
}

// PutOff passes a step for now. A hold cannot be passed.
func (r *Run) PutOff(step *Step) error {
	if step.Kind == Hold {
		return errors.New("work stops here until the hold is released")
	}
	r.putOff[step.ID] = true
	r.Leave()
	return nil
}

// PutOffCount is how many steps were put off and are still open.
func (r *Run) PutOffCount() int {
	n := 0
	for _, s := range r.report.Steps {
		if s.State == Open && r.putOff[s.Step.ID] {
			n++
		}
	}
	return n
}

// Leave ends a visit to a step that was gone back to.
func (r *Run) Leave() {
	r.forced = -1
	r.evaluate()
}

// Back goes to the step before the one shown last, past those that are not
// needed; false when there is none.
func (r *Run) Back() bool {
	for i := r.shown - 1; i >= 0; i-- {
		if state := r.report.Steps[i].State; state != Skipped && state != Undecided {
			r.forced = i
			return true
		}
	}
	return false
}

// Release puts a name under a hold. It refuses while something stands against it.
func (r *Run) Release(step *Step, s Signature) error {
	if s.By == "" || s.Reason == "" {
		return errors.New("a release needs a name and a reason")
	}
	for _, state := range r.report.Steps {
		if state.Step == step && state.State == Blocked {
			return fmt.Errorf("still against it: %s", state.againstIDs())
		}
	}
	r.Progress.Released[step.ID] = s
	r.Leave()
	return nil
}

// Sign passes a caution, or a stop that is no matter of life and limb, with a
// name and a reason.
func (r *Run) Sign(rule *rules.Rule, s Signature) error {
	switch {
	case s.By == "" || s.Reason == "":
		return errors.New("a signature needs a name and a reason")
	case rule.LifeSafety && rule.Level == rules.LevelStop:
		return errors.New("life and limb hang on this rule: only new readings open it")
	}
	r.Progress.Signed[rule.ID] = s
	r.evaluate()
	return nil
}
