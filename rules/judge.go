package rules

import (
	"math"

	"gudgeon/units"
)

// outcome is what a check comes to.
type outcome uint8

const (
	unknown outcome = iota // a reading is missing
	fails
	close // holds, but by less than it is sure to
	passes
)

// leaf is one comparison of a check, small <= large whichever way it was
// written, or a yes/no that has no margin.
type leaf struct {
	n            *node
	index        int // in the leafStates of its set or condition
	small, large numeric
	condition    numeric // of a yes/no or a choice; nil for a comparison
	hasUse       bool    // demand over capacity means something here
}

func (l *leaf) hasMargin() bool { return l.condition == nil }

// leafState is what a leaf comes to with the readings at hand.
type leafState struct {
	margin float64 // large minus small, SI; for a condition 1 or 0; NaN when not known
	scale  float64 // size of what is compared
	use    float64 // demand over capacity; NaN where that has no meaning
	err    error

	uncertainty
}

// work evaluates a leaf.
func (l *leaf) work(f *frame, s *leafState) {
	f.err = nil
	*s = leafState{use: math.NaN()}
	if l.condition != nil {
		s.margin = l.condition(f)
		s.err = f.err
		return
	}
	a, b := l.small(f), l.large(f)
	s.margin, s.err = b-a, f.err
	if math.IsInf(a, 0) || math.IsInf(b, 0) {
		s.margin, s.err = math.NaN(), refusal(overflow)
	}
	s.scale = math.Max(math.Abs(a), math.Abs(b))
	s.use = l.use(a, b)
}

// use is demand over capacity: the part of what is allowed that is taken up. It
// has no meaning where either is negative or the limit is zero.
func (l *leaf) use(small, large float64) float64 {
	if !l.hasUse || small < 0 || large <= 0 {
		return math.NaN()
	}
	return small / large
}

// hasUse reports whether the use of a comparison means anything. It does not for
// a temperature, and where a size must only be reached: there >= asks for a
// capacity only when it compares loads.
func hasUse(n *node) bool {
	kind := n.args[0].typ.printKind()
	return kind != units.Temperature && (!n.flipped || isLoad(kind))
}

func isLoad(k units.Kind) bool {
	switch k {
	case units.Mass, units.Force, units.Pressure, units.Torque, units.Power, units.LineLoad, units.Energy:
		return true
	}
	return false
}

// verdictTree is a check compiled for judging: the yes/no part is walked, the
// numbers in it are closures.
type verdictTree struct {
	op   op
	args []*verdictTree
	leaf *leaf
}

// tree compiles a check, adding its leaves to the list.
func (c *compiler) tree(n *node, leaves *[]*leaf) *verdictTree {
	switch n.op {
	case opAnd, opOr, opNot, opIf:
		t := &verdictTree{op: n.op}
		for _, a := range n.args {
			t.args = append(t.args, c.tree(a, leaves))
		}
		return t
	}
	l := &leaf{n: n, index: len(*leaves)}
	*leaves = append(*leaves, l)
	if n.op == opLess || n.op == opLessEq {
		l.small, l.large = c.compile(n.args[0]), c.compile(n.args[1])
		l.hasUse = hasUse(n)
	} else {
		l.condition = c.compile(n)
	}
	return &verdictTree{op: n.op, leaf: l}
}

// judgement is the outcome of a check with the leaf that governs it.
type judgement struct {
	outcome outcome
	wanted  bool // false where the leaf stands under a not
	leaf    *leaf
	state   *leafState
}

// margin is that of the leaf, the way it is wanted.
func (j judgement) margin() float64 {
	if j.wanted {
		return j.state.margin
	}
	return -j.state.margin
}

// use is that of the leaf; under a not it has no meaning.
func (j judgement) use() float64 {
	if j.wanted {
		return j.state.use
	}
	return math.NaN()
}

// judge decides a check. wanted is false under a not.
func (t *verdictTree) judge(states []leafState, wanted bool) judgement {
	switch t.op {
	case opNot:
		return t.args[0].judge(states, !wanted)
	case opAnd, opOr:
		a, b := t.args[0].judge(states, wanted), t.args[1].judge(states, wanted)
		if (t.op == opAnd) == wanted {
			return both(a, b)
		}
		return either(a, b)
	case opIf:
		switch t.args[0].judge(states, true).outcome {
		case passes, close:
			return t.args[1].judge(states, wanted)
		case fails:
			return t.args[2].judge(states, wanted)
		}
		return judgement{}
	}
	return t.leaf.judge(&states[t.leaf.index], t.op == opLessEq, wanted)
}

func (l *leaf) judge(s *leafState, orEqual, wanted bool) judgement {
	j := judgement{leaf: l, state: s, wanted: wanted}
	switch {
	case s.margin != s.margin:
	case l.hasMargin():
		j.outcome = s.decide(j.margin(), s.scale, orEqual == wanted)
	case (s.margin == 1) == wanted:
		j.outcome = passes
	default:
		j.outcome = fails
	}
	return j
}

// decide applies the guard band: a margin that is not larger than its expanded
// uncertainty is too close to call (stringent acceptance, ASME B89.7.3.1;
// guarded acceptance, JCGM 106, 8.3.2). A reading without uncertainty has no
// guard band.
func (u *uncertainty) decide(margin, scale float64, orEqual bool) outcome {
	touching := math.Abs(margin) <= noise*scale
	switch {
	case touching && !orEqual, !touching && margin < 0:
		return fails
	case u.variance > 0 && margin <= u.U():
		return close
	}
	return passes
}

// both needs a and b: it fails as soon as one does.
func both(a, b judgement) judgement {
	switch {
	case a.outcome == b.outcome:
		return tighter(a, b)
	case a.outcome == fails || b.outcome == fails:
		return pick(a, b, a.outcome == fails)
	case a.outcome == unknown || b.outcome == unknown:
		return pick(a, b, a.outcome == unknown)
	}
	return pick(a, b, a.outcome == close)
}

// either needs a or b: it passes as soon as one does.
func either(a, b judgement) judgement {
	switch {
	case a.outcome == b.outcome:
		return looser(a, b)
	case a.outcome == passes || b.outcome == passes:
		return pick(a, b, a.outcome == passes)
	case a.outcome == unknown || b.outcome == unknown:
		return pick(a, b, a.outcome == unknown)
	}
	return pick(a, b, a.outcome == close)
}

func pick(a, b judgement, first bool) judgement {
	if first {
		return a
	}
	return b
}

func (j judgement) hasMargin() bool { return j.leaf != nil && j.leaf.hasMargin() }

func tighter(a, b judgement) judgement {
	if !a.hasMargin() || !b.hasMargin() {
		return pick(a, b, a.hasMargin() || !b.hasMargin())
	}
	return pick(a, b, a.margin()*b.state.scale <= b.margin()*a.state.scale)
}

func looser(a, b judgement) judgement {
	if !a.hasMargin() || !b.hasMargin() {
		return pick(a, b, a.hasMargin() || !b.hasMargin())
	}
	return pick(a, b, a.margin()*b.state.scale >= b.margin()*a.state.scale)
}
