package rules

import (
	"fmt"
	"slices"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// Lint reports what is allowed but surely not meant in a sheet: rules that can
// never fail or never pass while their readings stay in their ranges, rules
// that are never needed, pairs that contradict each other, and readings that
// nothing uses.
func (s *Sheet) Lint(set *Set, shelf Shelf) error {
	var report source.Report
	l := &linter{set: set, report: &report}
	var own []*Rule
	for _, r := range set.Rules {
		if r.Sheet == s.Name.Value {
			own = append(own, r)
			l.rule(r)
		}
	}
	for i, a := range own {
		for _, b := range own[i+1:] {
			l.pair(a, b)
		}
	}
	l.unused(s, shelf)
	return report.Err()
}

type linter struct {
	set    *Set
	report *source.Report
}

func (l *linter) rule(r *Rule) {
	if r.when != nil && l.over(r.when.root, []*node{r.when.root}) == never {
		l.report.At(r.when.text, fmt.Sprintf("%s is never needed: this cannot hold while the readings stay in their ranges", r.ID), "look at the ranges, or take the rule out")
		return
	}
	switch l.over(r.check.root, l.conditions(r)) {
	case always:
		l.report.At(r.check.text, fmt.Sprintf("%s can never fail while the readings stay in their ranges", r.ID), "widen a range or tighten the check")
	case never:
		l.report.At(r.check.text, fmt.Sprintf("%s can never pass while the readings stay in their ranges", r.ID), "widen a range or loosen the check")
	}
}

func (l *linter) conditions(r *Rule) []*node {
	list := []*node{r.check.root}
	if r.when != nil {
		list = append(list, r.when.root)
	}
	return list
}

// over decides a condition over every combination of the words in some
// expressions for which a rule is needed.
func (l *linter) over(n *node, under []*node) certainty {
	found, any := perhaps, false
	l.combinations(under, func(r *ranges) bool {
		for _, when := range under[1:] {
			if r.certain(when) == never {
				return true
			}
		}
		c := r.certain(n)
		if any && c != found {
			found = perhaps
			return false
		}
		found, any = c, true
		return found != perhaps
	})
	return found
}

// most combinations of words worth going through.
const mostCombinations = 20000

// combinations visits every combination of the choices and yes/no readings in
// some expressions, until visit gives false.
func (l *linter) combinations(under []*node, visit func(*ranges) bool) {
	words := l.words(under)
	count := 1
	for _, d := range words {
		count *= d.answers()
		if count > mostCombinations {
			visit(&ranges{set: l.set, narrowed: map[int]interval{}})
			return
		}
	}
	for at := range count {
		r := &ranges{set: l.set, narrowed: map[int]interval{}}
		for _, d := range words {
			r.narrowed[d.slot] = point(float64(at % d.answers()))
			at /= d.answers()
		}
		if !visit(r) {
			return
		}
	}
}

func (l *linter) words(under []*node) []*ReadingDef {
	deps := &dependencies{set: l.set, readings: map[*ReadingDef]bool{}, values: map[*Value]bool{}}
	for _, n := range under {
		deps.of(n)
	}
	var words []*ReadingDef
	for _, d := range l.set.Readings {
		if deps.readings[d] && d.answers() > 0 {
			words = append(words, d)
		}
	}
	return words
}

// answers is how many answers a choice or a yes/no has; 0 for a quantity.
func (d *ReadingDef) answers() int {
	if d.Kind == units.YesNo {
		return 2
	}
	return len(d.Options)
}

// pair reports two rules that cannot both be go where both are needed.
func (l *linter) pair(a, b *Rule) {
	if !l.share(a, b) {
		return
	}
	under := append(l.conditions(a), l.conditions(b)...)
	both, together := false, false
	l.combinations(under, func(r *ranges) bool {
		for _, when := range []*expression{a.when, b.when} {
			if when != nil && r.certain(when.root) == never {
				return true
			}
		}
		both = true
		r.narrow(a.check.root)
		r.narrow(b.check.root)
		together = r.consistent() && r.certain(a.check.root) != never && r.certain(b.check.root) != never
		return !together
	})
	alone := l.over(a.check.root, l.conditions(a)) == never || l.over(b.check.root, l.conditions(b)) == never
	if both && !together && !alone {
		l.report.At(b.check.text, fmt.Sprintf("%s contradicts %s: both can never be go", b.ID, a.ID), "give one of them a when, or move its limit")
	}
}

func (r *ranges) consistent() bool {
	for _, i := range r.narrowed {
		if i.empty() {
			return false
		}
	}
	return true
}

func (l *linter) share(a, b *Rule) bool {
	for _, name := range a.Needs {
		if slices.Contains(b.Needs, name) {
			return true
		}
	}
	return false
}

// unused reports readings of a sheet that no rule, value or message of it
// names, unless other sheets use the sheet.
func (l *linter) unused(s *Sheet, shelf Shelf) {
	if usedElsewhere(s.Name.Value, shelf) {
		return
	}
	used := l.set.Used()
	for _, e := range s.Readings {
		if !used[e.Key.Value] {
			l.report.At(e.Key, fmt.Sprintf("the reading %s is asked for and never used", e.Key.Value), "use it in a rule, or take it out")
		}
	}
}

func usedElsewhere(name string, shelf Shelf) bool {
	for _, other := range shelf.SheetNames() {
		sheet, err := shelf.Sheet(other)
		if err != nil || sheet == nil {
			continue
		}
		for _, used := range sheet.Uses {
			if used.Value == name {
				return true
			}
		}
	}
	return false
}

// Used names the readings that some rule, value or message of the set depends
// on.
func (s *Set) Used() map[string]bool {
	deps := &dependencies{set: s, readings: map[*ReadingDef]bool{}, values: map[*Value]bool{}}
	for _, v := range s.Values {
		deps.of(v.expr.root)
	}
	used := map[string]bool{}
	for _, r := range s.Rules {
		deps.of(r.check.root)
		if r.when != nil {
			deps.of(r.when.root)
		}
		for _, text := range []string{r.Says, r.Do} {
			_ = pieces(text, func(string) {}, func(name string) { used[name] = true })
		}
	}
	for d := range deps.readings {
		used[d.Name] = true
	}
	return used
}

// LintCondition reports a when that can never hold.
func (s *Set) LintCondition(c *Condition, report *source.Report) {
	l := &linter{set: s, report: report}
	if l.over(c.expr.root, []*node{c.expr.root}) == never {
		report.At(c.expr.text, "this can never hold, so the step is never reached", "look at the ranges and options")
	}
}

// Reads names the readings that a condition depends on.
func (c *Condition) Reads(s *Set) []string {
	deps := &dependencies{set: s, readings: map[*ReadingDef]bool{}, values: map[*Value]bool{}}
	deps.of(c.expr.root)
	return s.namesOf(deps.readings)
}
