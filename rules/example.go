package rules

import (
	"fmt"

	"gudgeon/rules/source"
)

// exampleSource is one proof of a sheet: readings, and the verdicts they must
// give.
type exampleSource struct {
	Name     source.Text             `yaml:"name,required" about:"what the example shows"`
	Readings source.Map[ReadingNode] `yaml:"readings" about:"as in a readings file"`
	Expect   source.Map[source.Text] `yaml:"expect,required" about:"a verdict for each rule"`
}

// Proof is what came of the examples of a sheet or a checklist.
type Proof struct {
	Name     string
	Examples int
	Failures []Failure
	Seen     map[string]Seen // of every rule to be proven
	Unseen   []string        // rules never seen to go, or never seen to fail
}

// Seen says which outcomes of a rule the examples have shown.
type Seen struct{ Go, Fail bool }

// Failure is an example that did not come out as it should.
type Failure struct {
	Example string
	What    string // the rule or step
	Want    string
	Got     string
	Because string // the worked line, for a rule
}

// Prove runs the examples of a sheet. set must hold the sheet's rules.
func (s *Sheet) Prove(set *Set) (Proof, error) {
	proof := Proof{Name: s.Name.Value, Seen: map[string]Seen{}}
	for _, r := range set.Rules {
		if r.Sheet == s.Name.Value {
			proof.Seen[r.ID] = Seen{}
		}
	}
	var report source.Report
	for _, e := range s.Examples {
		readings := set.ReadAll(e.Readings, &report)
		if report.Failed() {
			continue
		}
		proof.Examples++
		result := set.Evaluate(readings)
		proof.Look(result)
		for _, want := range e.Expect {
			proof.expect(e.Name.Value, want, result, &report)
		}
	}
	proof.Finish(set)
	return proof, report.Err()
}

// Look notes which outcomes of its rules a report shows.
func (p *Proof) Look(r *Report) {
	for i := range r.Results {
		result := &r.Results[i]
		seen, ours := p.Seen[result.Rule.ID]
		if !ours || result.Err != nil {
			continue
		}
		switch {
		case result.Failed():
			seen.Fail = true
		case result.Verdict == Go:
			seen.Go = true
		}
		p.Seen[result.Rule.ID] = seen
	}
}

// Finish lists the rules that the examples left unproven, in the set's order.
func (p *Proof) Finish(set *Set) {
	for _, r := range set.Rules {
		seen, ours := p.Seen[r.ID]
		switch {
		case !ours:
		case !seen.Go && !seen.Fail:
			p.Unseen = append(p.Unseen, r.ID+" (never decided)")
		case !seen.Go:
			p.Unseen = append(p.Unseen, r.ID+" (never seen to go)")
		case !seen.Fail:
			p.Unseen = append(p.Unseen, fmt.Sprintf("%s (never seen to %s)", r.ID, r.Level))
		}
	}
}

func (p *Proof) expect(example string, want source.Entry[source.Text], r *Report, report *source.Report) {
	for i := range r.Results {
		if r.Results[i].Rule.ID == want.Key.Value {
			p.Compare(example, i, want.Value, r, report)
			return
		}
	}
	report.At(want.Key, fmt.Sprintf("there is no rule %s here", want.Key.Value), "")
}

// Compare holds one rule's verdict against the expected one; "note" means that
// a rule of level note has spoken.
func (p *Proof) Compare(example string, i int, want source.Text, r *Report, report *source.Report) {
	result := &r.Results[i]
	got := result.Verdict.String()
	if result.Noted {
		got = "note"
	}
	var v Verdict
	if want.Value != "note" && v.UnmarshalText([]byte(want.Value)) != nil {
		report.At(want, fmt.Sprintf("%q is not a verdict", want.Value), "write go, note, caution, stop, waiting or not needed")
		return
	}
	if got == want.Value {
		return
	}
	line := r.Worked(i, 0)
	because := line.Result
	if line.Numbers != "" {
		because = line.Numbers + ": " + line.Result
	}
	p.Failures = append(p.Failures, Failure{Example: example, What: result.Rule.ID, Want: want.Value, Got: got, Because: because})
}
