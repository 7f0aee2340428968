package rules

import "math"

// outcome is what a check comes to.
type outcome uint8

const (
	unknown outcome = iota // a reading is missing
	fails
	passes
)

// leaf is one comparison of a check: demand <= capacity, whichever way it was
// written.
type leaf struct {
	n            *node
	small, large numeric
	condition    numeric // of a yes/no or a choice, which has no margin
	hasMargin    bool
}

// judgement is the outcome of a check with the comparison that governs it.
type judgement struct {
	outcome outcome
	leaf    *leaf   // the one that decides; nil when the check has none
	margin  float64 // large minus small, SI
	scale   float64 // size of what is compared, to rank margins of different kinds
	use     float64 // demand over capacity; NaN where that has no meaning
}

// verdictTree is a check compiled for judging: the yes/no part is walked, the
// numbers in it are closures.
type verdictTree struct {
	op   op
	args []*verdictTree
	leaf *leaf
}

func (c *compiler) tree(n *node) *verdictTree {
	switch n.op {
	case opAnd, opOr, opNot:
		t := &verdictTree{op: n.op}
		for _, a := range n.args {
			t.args = append(t.args, c.tree(a))
		}
		return t
	case opIf:
		return &verdictTree{op: opIf, args: []*verdictTree{c.tree(n.args[0]), c.tree(n.args[1]), c.tree(n.args[2])}}
	case opLess, opLessEq:
		return &verdictTree{op: n.op, leaf: &leaf{n: n, small: c.compile(n.args[0]), large: c.compile(n.args[1]), hasMargin: true}}
	}
	return &verdictTree{op: n.op, leaf: &leaf{n: n, condition: c.compile(n)}}
}

// judge decides a check. wanted is false under a not.
func (t *verdictTree) judge(f *frame, wanted bool) judgement {
	switch t.op {
	case opNot:
		return t.args[0].judge(f, !wanted)
	case opAnd, opOr:
		a, b := t.args[0].judge(f, wanted), t.args[1].judge(f, wanted)
		if (t.op == opAnd) == wanted {
			return both(a, b)
		}
		return either(a, b)
	case opIf:
		switch t.args[0].judge(f, true).outcome {
		case passes:
			return t.args[1].judge(f, wanted)
		case fails:
			return t.args[2].judge(f, wanted)
		}
		return judgement{use: math.NaN()}
	}
	return t.leaf.judge(f, t.op == opLessEq, wanted)
}

// both needs a and b: it fails as soon as one does.
func both(a, b judgement) judgement {
	switch {
	case a.outcome == fails && b.outcome == fails:
		return tighter(a, b)
	case a.outcome == fails || b.outcome == passes:
		if a.outcome == passes {
			return tighter(a, b)
		}
		return a
	}
	return b
}

// either needs a or b: it passes as soon as one does.
func either(a, b judgement) judgement {
	switch {
	case a.outcome == b.outcome:
		return looser(a, b)
	case a.outcome == passes || b.outcome == fails:
		return a
	}
	return b
}

func tighter(a, b judgement) judgement {
	if a.leaf == nil || b.leaf == nil || !a.leaf.hasMargin || !b.leaf.hasMargin {
		return withMargin(a, b)
	}
	if b.margin*a.scale < a.margin*b.scale {
		return b
	}
	return a
}

func looser(a, b judgement) judgement {
	if a.leaf == nil || b.leaf == nil || !a.leaf.hasMargin || !b.leaf.hasMargin {
		return withMargin(a, b)
	}
	if b.margin*a.scale > a.margin*b.scale {
		return b
	}
	return a
}

// withMargin prefers the one that has a margin to show.
func withMargin(a, b judgement) judgement {
	if a.leaf != nil && a.leaf.hasMargin {
		return a
	}
	if b.leaf != nil && b.leaf.hasMargin {
		return b
	}
	return a
}

func (l *leaf) judge(f *frame, orEqual, wanted bool) judgement {
	if !l.hasMargin {
		j := judgement{leaf: l, use: math.NaN()}
		if v := l.condition(f); v == v {
			j.outcome = outcomeOf((v == 1) == wanted)
		}
		return j
	}
	a, b := l.small(f), l.large(f)
	if a != a || b != b {
		return judgement{leaf: l, use: math.NaN()}
	}
	j := judgement{leaf: l, margin: b - a, scale: math.Max(math.Abs(a), math.Abs(b)), use: use(a, b)}
	j.outcome = outcomeOf(holds(a, b, orEqual) == wanted)
	if !wanted {
		j.margin, j.use = -j.margin, math.NaN()
	}
	return j
}

func outcomeOf(pass bool) outcome {
	if pass {
		return passes
	}
	return fails
}

// use is demand over capacity: the part of what is allowed that is taken up.
// For a <= b it is a/b, for b >= a likewise. It has no meaning where either is
// negative or the limit is zero.
func use(small, large float64) float64 {
	if small < 0 || large <= 0 {
		return math.NaN()
	}
	return small / large
}
