package rules

import (
	"fmt"
	"math"

	"gudgeon/trade"
)

// Report is what a set of readings comes to.
type Report struct {
	Verdict Verdict
	Results []Result // one for each rule of the set, in its order
	Waiting []string // readings that some rule waits for, in the set's order

	set      *Set
	readings Readings
	frame    *frame
	refused  map[*Value]error
}

// Result is the outcome of one rule.
type Result struct {
	Rule    *Rule
	Verdict Verdict
	Noted   bool     // a rule of level note whose check does not hold
	Missing []string // readings it waits for
	Err     error    // why it could not be worked out

	HasMargin bool
	Margin    float64 // SI; negative when the check does not hold
	Use       float64 // demand over capacity; NaN where it has no meaning

	leaf *leaf
}

// Evaluate works out every rule. It never fails: what cannot be worked out is
// never go, and its Result says why. Readings that the set does not know are
// left aside; values must already lie in their range (ReadingDef.Read sees to
// that), and those that do not are treated as missing.
func (s *Set) Evaluate(readings Readings) *Report {
	r := &Report{set: s, readings: readings, frame: s.newFrame(readings, s.compiler.scratch, s.compiler.tables)}
	r.evaluateValues()
	r.Results = make([]Result, len(s.Rules))
	waiting := map[string]bool{}
	for i, rule := range s.Rules {
		r.Results[i] = r.rule(rule)
		r.Verdict = Worse(r.Verdict, r.Results[i].Verdict)
		for _, name := range r.Results[i].Missing {
			waiting[name] = true
		}
	}
	for _, d := range s.Readings {
		if waiting[d.Name] {
			r.Waiting = append(r.Waiting, d.Name)
		}
	}
	return r
}

func (s *Set) newFrame(readings Readings, scratch, tables int) *frame {
	f := &frame{
		x:       make([]float64, len(s.owners)),
		surveys: make([]trade.Survey, len(s.surveys)),
		scratch: make([]float64, scratch),
		tables:  make([]trade.Survey, tables),
	}
	for i := range f.x {
		f.x[i] = math.NaN()
	}
	for _, d := range s.Readings {
		reading, ok := readings[d.Name]
		if !ok || !d.accepts(reading) {
			continue
		}
		f.x[d.slot] = reading.Value
		if d.Limits {
			f.x[d.slot+1] = reading.Value + reading.Lower
			f.x[d.slot+2] = reading.Value + reading.Upper
		}
		if i, ok := s.surveys[d.slot]; ok {
			f.surveys[i] = reading.Survey
			f.x[d.slot] = 1
		}
	}
	return f
}

// accepts guards the engine against readings that did not come through Read.
func (d *ReadingDef) accepts(r Reading) bool {
	if r.Survey != nil {
		for _, p := range r.Survey {
			if d.InRange(p.Read) != nil {
				return false
			}
		}
		return true
	}
	if len(d.Options) > 0 && r.Value != math.Trunc(r.Value) {
		return false
	}
	return d.InRange(r.Value) == nil
}

func (r *Report) evaluateValues() {
	for _, v := range r.set.Values {
		r.frame.err = nil
		r.frame.work(v)
		if r.frame.err != nil {
			if r.refused == nil {
				r.refused = map[*Value]error{}
			}
			r.refused[v] = r.frame.err
		}
	}
	r.frame.err = nil
}

// work fills the slots of a value.
func (f *frame) work(v *Value) {
	if v.run == nil {
		f.x[v.slot] = v.eval[0](f)
		return
	}
	width := max(1, len(v.Type.Fields))
	known := v.run(f)
	for i := range width {
		f.x[v.slot+i] = math.NaN()
		if known {
			f.x[v.slot+i] = f.scratch[v.out+i]
		}
	}
}

func (r *Report) rule(rule *Rule) Result {
	out := Result{Rule: rule, Use: math.NaN()}
	if rule.whenTree != nil {
		switch r.frame.judge(rule.whenTree).outcome {
		case fails:
			out.Verdict = NotNeeded
			return out
		case unknown:
			return r.undecided(out, rule.when.root, rule.whenTree)
		}
	}
	j := r.frame.judge(rule.checkTree)
	if j.outcome == unknown {
		return r.undecided(out, rule.check.root, rule.checkTree)
	}
	out.leaf, out.Use = j.leaf, j.use
	if j.leaf != nil && j.leaf.hasMargin {
		out.HasMargin, out.Margin = true, j.margin
	}
	out.Verdict = Go
	if j.outcome == fails {
		out.Verdict = rule.Level.verdict()
		out.Noted = rule.Level == LevelNote
	}
	return out
}

func (f *frame) judge(t *verdictTree) judgement {
	f.err = nil
	return t.judge(f, true)
}

// undecided says why a rule has no outcome: a calculation refused its inputs,
// which is at least as bad as the rule's level, or readings are missing.
func (r *Report) undecided(out Result, root *node, tree *verdictTree) Result {
	m := &search{report: r, missing: map[*ReadingDef]bool{}}
	m.tree(tree)
	if m.err == nil {
		m.err = r.frame.err
	}
	r.frame.err = nil
	if m.err != nil {
		out.Err = m.err
		out.Verdict = Worse(Caution, out.Rule.Level.verdict())
		return out
	}
	out.Verdict = Waiting
	for _, d := range r.set.Readings {
		if m.missing[d] {
			out.Missing = append(out.Missing, d.Name)
		}
	}
	if len(out.Missing) == 0 {
		out.Err = fmt.Errorf("%s could not be worked out from its readings", out.Rule.ID)
		out.Verdict = Worse(Caution, out.Rule.Level.verdict())
	}
	return out
}

// search finds the readings for want of which something is not known, and the
// refusals on the way.
type search struct {
	report  *Report
	missing map[*ReadingDef]bool
	err     error
}

func (m *search) tree(t *verdictTree) {
	if m.report.frame.judge(t).outcome != unknown {
		return
	}
	switch t.op {
	case opAnd, opOr, opNot:
		for _, a := range t.args {
			m.tree(a)
		}
	case opIf:
		switch m.report.frame.judge(t.args[0]).outcome {
		case passes:
			m.tree(t.args[1])
		case fails:
			m.tree(t.args[2])
		default:
			m.tree(t.args[0])
		}
	default:
		m.node(t.leaf.n)
	}
}

func (m *search) node(n *node) {
	switch n.op {
	case opGiven, opConst:
		return
	case opSlot:
		m.slot(n.slot)
		return
	case opIf:
		m.conditional(n)
		return
	}
	for _, a := range n.args {
		m.node(a)
	}
}

func (m *search) conditional(n *node) {
	f := m.report.frame
	switch n.cond(f) {
	case 1:
		m.node(n.args[1])
	case 0:
		m.node(n.args[2])
	default:
		m.node(n.args[0])
	}
}

func (m *search) slot(slot int) {
	if v := m.report.frame.x[slot]; v == v {
		return
	}
	o := m.report.set.owners[slot]
	if o.reading != nil {
		m.missing[o.reading] = true
		return
	}
	if err := m.report.refused[o.value]; err != nil && m.err == nil {
		m.err = err
	}
	m.node(o.value.expr.root)
}

// Holds decides a condition over the readings of a report: yes, no, or not
// known yet.
func (c *Condition) Holds(r *Report) (yes, known bool) {
	f := *r.frame
	f.scratch, f.tables = make([]float64, c.scratch), make([]trade.Survey, c.tables)
	switch f.judge(c.tree).outcome {
	case passes:
		return true, true
	case fails:
		return false, true
	}
	return false, false
}

// Missing names the readings for want of which the condition is not known.
func (c *Condition) Missing(r *Report) []string {
	f := *r.frame
	f.scratch, f.tables = make([]float64, c.scratch), make([]trade.Survey, c.tables)
	m := &search{report: &Report{set: r.set, frame: &f, refused: r.refused}, missing: map[*ReadingDef]bool{}}
	m.tree(c.tree)
	var names []string
	for _, d := range r.set.Readings {
		if m.missing[d] {
			names = append(names, d.Name)
		}
	}
	return names
}
