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
	states   []leafState
	refused  map[*Value]error
	words    *Translation // what it is printed in; nil is English

	// working memory of propagate
	saved []float64
	shift shift
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

	U         float64     // expanded uncertainty of the margin, k = 2, SI
	TooClose  bool        // the margin is not larger than its uncertainty
	NonLinear bool        // U is a first-order figure, and the rule bends too much for it
	Dominant  *ReadingDef // the reading that makes most of U
	DominantU float64     // the part of U that it makes alone, SI

	leaf *leaf
}

// Failed reports whether a check did not hold, as against being too close to
// call or not worked out.
func (r *Result) Failed() bool {
	return r.Noted || (r.Verdict == Stop || r.Verdict == Caution) && r.Err == nil && !r.TooClose
}

// Evaluate works out every rule. It never fails: what cannot be worked out is
// never go, and its Result says why. Readings that the set does not know are
// left aside; values must already lie in their range (ReadingDef.Read sees to
// that), and those that do not are treated as missing.
func (s *Set) Evaluate(readings Readings) *Report {
	r := s.newReport(readings)
	r.work()
	r.Results = make([]Result, len(s.Rules))
	for i, rule := range s.Rules {
		r.decide(rule, &r.Results[i])
		r.Verdict = Worse(r.Verdict, r.Results[i].Verdict)
	}
	r.collectWaiting()
	return r
}

func (s *Set) newReport(readings Readings) *Report {
	memory := make([]float64, s.savedWidth+2*s.leavesWidth)
	return &Report{
		set: s, readings: readings,
		frame:  s.newFrame(readings, s.compiler.scratch, s.compiler.tables),
		states: make([]leafState, s.leafCount),
		saved:  memory[:s.savedWidth],
		shift:  shift{memory[s.savedWidth : s.savedWidth+s.leavesWidth], memory[s.savedWidth+s.leavesWidth:]},
	}
}

// work evaluates every value, every leaf, and the uncertainty of every margin.
func (r *Report) work() {
	r.evaluateValues()
	r.evaluateLeaves()
	r.propagate()
}

func (r *Report) evaluateLeaves() {
	for _, l := range r.set.leaves {
		l.work(r.frame, &r.states[l.index])
	}
}

func (r *Report) collectWaiting() {
	if r.Verdict == Go || r.Verdict == NotNeeded {
		return
	}
	waiting := map[string]bool{}
	for i := range r.Results {
		for _, name := range r.Results[i].Missing {
			waiting[name] = true
		}
	}
	for _, d := range r.set.Readings {
		if waiting[d.Name] {
			r.Waiting = append(r.Waiting, d.Name)
		}
	}
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
		r.evaluateValue(v)
	}
}

// evaluateValue works one value out and keeps why it was refused, if it was.
func (r *Report) evaluateValue(v *Value) {
	r.frame.err = nil
	r.frame.work(v)
	if r.frame.err != nil {
		if r.refused == nil {
			r.refused = map[*Value]error{}
		}
		r.refused[v] = r.frame.err
	} else if r.refused != nil {
		delete(r.refused, v)
	}
	r.frame.err = nil
}

const overflow = "a number too large to be true"

// work fills the slots of a value.
func (f *frame) work(v *Value) {
	if v.run == nil {
		f.x[v.slot] = v.eval(f)
		if math.IsInf(f.x[v.slot], 0) {
			f.refuse(refusal(overflow))
			f.x[v.slot] = math.NaN()
		}
		return
	}
	known := v.run(f)
	for i := range v.width() {
		f.x[v.slot+i] = math.NaN()
		if known {
			f.x[v.slot+i] = f.scratch[v.out+i]
		}
	}
}

// rule is the outcome of one rule.
func (r *Report) rule(rule *Rule) Result {
	var out Result
	r.decide(rule, &out)
	return out
}

// decide fills in the outcome of one rule.
func (r *Report) decide(rule *Rule, out *Result) {
	out.Rule, out.Use = rule, math.NaN()
	if rule.whenTree != nil {
		// A rule is left out only when its when is sure not to hold.
		switch rule.whenTree.judge(r.states, false).outcome {
		case passes:
			out.Verdict = NotNeeded
			return
		case unknown:
			r.undecided(out, rule.whenTree)
			return
		}
	}
	j := rule.checkTree.judge(r.states, true)
	if j.outcome == unknown {
		r.undecided(out, rule.checkTree)
		return
	}
	out.leaf, out.Use = j.leaf, j.use()
	if j.hasMargin() {
		r.addMargin(out, j)
	}
	out.Verdict = rule.verdict(j.outcome)
	out.TooClose = j.outcome == close
	out.Noted = rule.Level == LevelNote && j.outcome != passes
}

// verdict is what an outcome means under this rule. Too close to call is a
// caution, and a stop where life and limb hang on it.
func (rule *Rule) verdict(o outcome) Verdict {
	switch {
	case o == passes:
		return Go
	case o == close && rule.Level == LevelStop && !rule.LifeSafety:
		return Caution
	}
	return rule.Level.verdict()
}

func (r *Report) addMargin(out *Result, j judgement) {
	state := &r.states[j.leaf.index]
	out.HasMargin, out.Margin = true, j.margin()
	if state.variance == 0 {
		return
	}
	out.U, out.NonLinear = state.U(), state.nonLinear()
	out.Dominant, out.DominantU = state.top, coverage*math.Sqrt(state.topPart)
}

// undecided says why a rule has no outcome: a calculation refused its inputs,
// which is at least as bad as the rule's level, or readings are missing.
func (r *Report) undecided(out *Result, tree *verdictTree) {
	m := &search{report: r, states: r.states, missing: map[*ReadingDef]bool{}}
	m.tree(tree)
	out.Missing = r.set.namesOf(m.missing)
	if m.err == nil && len(out.Missing) == 0 {
		m.err = fmt.Errorf("%s cannot be worked out from its readings", out.Rule.ID)
	}
	out.Err = m.err
	out.Verdict = Waiting
	if out.Err != nil {
		out.Missing = nil
		out.Verdict = Worse(Caution, out.Rule.Level.verdict())
	}
}

func (s *Set) namesOf(set map[*ReadingDef]bool) []string {
	var names []string
	for _, d := range s.Readings {
		if set[d] {
			names = append(names, d.Name)
		}
	}
	return names
}

// search finds the readings for want of which something is not known, and the
// refusals on the way.
type search struct {
	report  *Report
	states  []leafState
	missing map[*ReadingDef]bool
	err     error
}

func (m *search) tree(t *verdictTree) {
	if t.judge(m.states, true).outcome != unknown {
		return
	}
	switch t.op {
	case opAnd, opOr, opNot:
		for _, a := range t.args {
			m.tree(a)
		}
	case opIf:
		switch t.args[0].judge(m.states, true).outcome {
		case passes, close:
			m.tree(t.args[1])
		case fails:
			m.tree(t.args[2])
		default:
			m.tree(t.args[0])
		}
	default:
		if err := m.states[t.leaf.index].err; err != nil && m.err == nil {
			m.err = err
		}
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
	switch c.tree.judge(c.work(r), true).outcome {
	case passes, close:
		return true, true
	case fails:
		return false, true
	}
	return false, false
}

// Missing names the readings for want of which the condition is not known.
func (c *Condition) Missing(r *Report) []string {
	m := &search{report: r, states: c.work(r), missing: map[*ReadingDef]bool{}}
	m.tree(c.tree)
	return r.set.namesOf(m.missing)
}

// work evaluates the condition's own leaves in scratch memory of its own.
func (c *Condition) work(r *Report) []leafState {
	f := *r.frame
	f.scratch, f.tables, f.key = make([]float64, c.scratch), make([]trade.Survey, c.tables), nil
	states := make([]leafState, len(c.leaves))
	for _, l := range c.leaves {
		l.work(&f, &states[l.index])
	}
	return states
}
