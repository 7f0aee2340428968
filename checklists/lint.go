package checklists

import (
	"fmt"

	"gudgeon/rules/source"
)

// Lint reports what is allowed but surely not meant in a checklist: steps that
// can never be reached, readings that rules use but no step asks for, and
// readings that are asked for and never used.
func (p *Procedure) Lint() error {
	var report source.Report
	asked := map[string]bool{}
	used := p.Rules.Used()
	for _, s := range p.Steps {
		if s.when == nil {
			continue
		}
		p.Rules.LintCondition(s.when, &report)
		for _, name := range s.when.Reads(p.Rules) {
			used[name] = true
		}
	}
	for _, s := range p.Steps {
		for i, d := range s.Take {
			asked[d.Name] = true
			if !used[d.Name] {
				report.At(s.source.Take[i], fmt.Sprintf("%s is asked for here, and no rule or step uses it", d.Name), "use it in a rule, or take it out")
			}
		}
	}
	for _, r := range p.Rules.Rules {
		for _, name := range r.Needs {
			if !asked[name] {
				asked[name] = true // once is enough
				report.At(p.name, fmt.Sprintf("the rule %s needs %s, and no step asks for it", r.ID, name), "add it to the take: of a step")
			}
		}
	}
	return report.Err()
}
