package checklists

import (
	"fmt"

	"gudgeon/rules"
	"gudgeon/rules/source"
)

// exampleSource is one proof of a checklist: a job's progress, and where it
// must stand.
type exampleSource struct {
	Name     source.Text                   `yaml:"name,required" about:"what the example shows"`
	Readings source.Map[rules.ReadingNode] `yaml:"readings" about:"as in a readings file"`
	Done     []source.Text                 `yaml:"done" about:"do steps that are done"`
	Released source.Map[signatureSource]   `yaml:"released" about:"holds that are released"`
	Signed   source.Map[signatureSource]   `yaml:"signed" about:"rules that are signed"`
	Expect   expectSource                  `yaml:"expect,required" about:"where the job must stand"`
}

type expectSource struct {
	Verdict source.Text             `yaml:"verdict,required" about:"the job's"`
	Rules   source.Map[source.Text] `yaml:"rules" about:"the verdict of some rules"`
	Steps   source.Map[source.Text] `yaml:"steps" about:"the state of some steps"`
}

// Proof is what came of a checklist's examples.
type Proof struct {
	rules.Proof
	NeverReached []string // steps that no example made necessary
}

// Prove runs the examples of a checklist.
func (p *Procedure) Prove() (Proof, error) {
	proof := Proof{Proof: rules.Proof{Name: p.ID, Seen: map[string]rules.Seen{}}}
	reached := map[string]bool{}
	var report source.Report
	for i := range p.examples {
		e := &p.examples[i]
		progress := p.progress(&progressSource{Readings: e.Readings, Done: e.Done, Released: e.Released, Signed: e.Signed}, &report)
		if report.Failed() {
			continue
		}
		proof.Examples++
		result := p.Evaluate(progress)
		p.compare(&proof, e, result, &report)
		for _, s := range result.Steps {
			if s.State != Skipped && s.State != Undecided {
				reached[s.Step.ID] = true
			}
		}
	}
	for _, s := range p.Steps {
		if !reached[s.ID] {
			proof.NeverReached = append(proof.NeverReached, s.ID)
		}
	}
	return proof, report.Err()
}

func (p *Procedure) compare(proof *Proof, e *exampleSource, r *Report, report *source.Report) {
	name := e.Name.Value
	if got := r.Verdict.String(); got != e.Expect.Verdict.Value {
		proof.Failures = append(proof.Failures, rules.Failure{Example: name, What: "the job", Want: e.Expect.Verdict.Value, Got: got, Because: because(r)})
	}
	for _, want := range e.Expect.Rules {
		p.compareRule(proof, name, want, r, report)
	}
	for _, want := range e.Expect.Steps {
		p.compareStep(proof, name, want, r, report)
	}
}

func (p *Procedure) compareRule(proof *Proof, example string, want source.Entry[source.Text], r *Report, report *source.Report) {
	for i := range r.Rules.Results {
		if r.Rules.Results[i].Rule.ID == want.Key.Value {
			proof.Compare(example, i, want.Value, r.Rules, report)
			return
		}
	}
	report.At(want.Key, fmt.Sprintf("there is no rule %s in this checklist", want.Key.Value), "")
}

func (p *Procedure) compareStep(proof *Proof, example string, want source.Entry[source.Text], r *Report, report *source.Report) {
	for _, s := range r.Steps {
		if s.Step.ID != want.Key.Value {
			continue
		}
		if string(s.State) != want.Value.Value {
			proof.Failures = append(proof.Failures, rules.Failure{Example: example, What: "step " + s.Step.ID, Want: want.Value.Value, Got: string(s.State)})
		}
		return
	}
	report.At(want.Key, fmt.Sprintf("there is no step %s in this checklist", want.Key.Value), source.Suggest(want.Key.Value, p.allStepIDs()))
}

func (p *Procedure) allStepIDs() []string {
	var ids []string
	for _, s := range p.Steps {
		ids = append(ids, s.ID)
	}
	return ids
}

// because names what makes a job's verdict.
func because(r *Report) string {
	for i := range r.Rules.Results {
		if result := &r.Rules.Results[i]; result.Verdict == r.Verdict && result.Verdict != rules.Go {
			return result.Rule.ID + " is " + result.Verdict.String()
		}
	}
	if len(r.Waiting) > 0 {
		return "waits for " + r.Waiting[0]
	}
	return ""
}
