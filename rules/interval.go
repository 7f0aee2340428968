package rules

import (
	"math"
)

// interval is every value that an expression can take while its readings stay
// in their ranges. It may be wider than the truth, never narrower.
type interval struct{ low, high float64 }

func everything() interval { return interval{math.Inf(-1), math.Inf(1)} }

func point(x float64) interval { return interval{x, x} }

func (a interval) and(b interval) interval {
	return interval{math.Max(a.low, b.low), math.Min(a.high, b.high)}
}

func (a interval) or(b interval) interval {
	return interval{math.Min(a.low, b.low), math.Max(a.high, b.high)}
}

func (a interval) empty() bool { return a.low > a.high }

// certainty says whether a condition can hold.
type certainty uint8

const (
	perhaps certainty = iota
	always
	never
)

func (c certainty) not() certainty {
	switch c {
	case always:
		return never
	case never:
		return always
	}
	return perhaps
}

// ranges works out intervals over a set. narrowed holds tighter intervals for
// some slots, such as a choice that is fixed to one option.
type ranges struct {
	set      *Set
	narrowed map[int]interval
}

func (r *ranges) slot(slot int) interval {
	o := r.set.owners[slot]
	var i interval
	switch {
	case o.reading != nil && len(o.reading.Options) == 0 && !o.reading.Kind.Numeric():
		i = interval{0, 1}
	case o.reading != nil:
		i = interval{o.reading.From, o.reading.To}
		if slot != o.reading.slot { // the low or high limit of a toleranced size
			i = everything()
		}
	case o.value.Type.isRecord():
		i = everything()
	default:
		i = r.of(o.value.expr.root)
	}
	if n, ok := r.narrowed[slot]; ok {
		return i.and(n)
	}
	return i
}

// of gives the interval of a number.
func (r *ranges) of(n *node) interval {
	switch n.op {
	case opConst:
		return point(n.value)
	case opSlot:
		return r.slot(n.slot)
	case opNeg:
		a := r.of(n.args[0])
		return interval{-a.high, -a.low}
	case opAdd:
		a, b := r.of(n.args[0]), r.of(n.args[1])
		return interval{a.low + b.low, a.high + b.high}
	case opSub:
		a, b := r.of(n.args[0]), r.of(n.args[1])
		return interval{a.low - b.high, a.high - b.low}
	case opMul:
		return corners(r.of(n.args[0]), r.of(n.args[1]), func(x, y float64) float64 { return x * y })
	case opDiv:
		a, b := r.of(n.args[0]), r.of(n.args[1])
		if b.low <= 0 && b.high >= 0 {
			return everything()
		}
		return corners(a, b, func(x, y float64) float64 { return x / y })
	case opIf:
		return r.branches(n)
	case opMath:
		return r.mathInterval(n)
	}
	return everything()
}

// corners gives the interval of a function that is monotonic in each argument.
func corners(a, b interval, f func(x, y float64) float64) interval {
	out := interval{math.Inf(1), math.Inf(-1)}
	for _, x := range []float64{a.low, a.high} {
		for _, y := range []float64{b.low, b.high} {
			v := f(x, y)
			if v != v { // zero times infinity
				return everything()
			}
			out = out.or(point(v))
		}
	}
	return out
}

func (r *ranges) branches(n *node) interval {
	switch r.certain(n.args[0]) {
	case always:
		return r.of(n.args[1])
	case never:
		return r.of(n.args[2])
	}
	return r.of(n.args[1]).or(r.of(n.args[2]))
}

func (r *ranges) mathInterval(n *node) interval {
	args := make([]interval, len(n.args))
	for i, a := range n.args {
		args[i] = r.of(a)
	}
	switch n.math.name {
	case "min", "max":
		pick := math.Min
		if n.math.name == "max" {
			pick = math.Max
		}
		out := args[0]
		for _, a := range args[1:] {
			out = interval{pick(out.low, a.low), pick(out.high, a.high)}
		}
		return out
	case "abs":
		a := args[0]
		if a.low >= 0 {
			return a
		}
		return interval{math.Max(0, -a.high), math.Max(-a.low, a.high)}
	case "sqrt":
		return interval{math.Sqrt(math.Max(0, args[0].low)), math.Sqrt(math.Max(0, args[0].high))}
	case "sin", "cos":
		return interval{-1, 1}
	case "weight_of":
		return interval{n.math.eval([]float64{args[0].low}), n.math.eval([]float64{args[0].high})}
	}
	return everything()
}

// certain says whether a condition holds always, never or perhaps.
func (r *ranges) certain(n *node) certainty {
	switch n.op {
	case opAnd, opOr:
		return r.joined(n)
	case opNot:
		return r.certain(n.args[0]).not()
	case opIf:
		return r.ifCertain(n)
	case opLess, opLessEq:
		return r.compared(n)
	case opSame:
		return r.same(n)
	case opTrue:
		return r.certain(n.args[0])
	case opSlot:
		if v := r.set.owners[n.slot].value; v != nil {
			if _, fixed := r.narrowed[n.slot]; !fixed {
				return r.certain(v.expr.root)
			}
		}
		return r.yes(r.slot(n.slot))
	case opConst:
		return r.yes(point(n.value))
	}
	return perhaps
}

func (r *ranges) yes(i interval) certainty {
	switch i {
	case point(1):
		return always
	case point(0):
		return never
	}
	return perhaps
}

func (r *ranges) joined(n *node) certainty {
	a, b := r.certain(n.args[0]), r.certain(n.args[1])
	settles, other := never, always
	if n.op == opOr {
		settles, other = always, never
	}
	switch {
	case a == settles || b == settles:
		return settles
	case a == other && b == other:
		return other
	}
	return perhaps
}

func (r *ranges) ifCertain(n *node) certainty {
	switch r.certain(n.args[0]) {
	case always:
		return r.certain(n.args[1])
	case never:
		return r.certain(n.args[2])
	}
	if a, b := r.certain(n.args[1]), r.certain(n.args[2]); a == b {
		return a
	}
	return perhaps
}

func (r *ranges) compared(n *node) certainty {
	a, b := r.of(n.args[0]), r.of(n.args[1])
	switch {
	case a.empty() || b.empty():
		return perhaps
	case a.high < b.low || n.op == opLessEq && a.high == b.low:
		return always
	case a.low > b.high || n.op == opLess && a.low == b.high:
		return never
	}
	return perhaps
}

func (r *ranges) same(n *node) certainty {
	a, b := r.word(n.args[0]), r.word(n.args[1])
	switch {
	case a.low == a.high && a == b:
		return always
	case a.and(b).empty():
		return never
	}
	return perhaps
}

// word is the interval of a choice's index or a yes/no.
func (r *ranges) word(n *node) interval {
	if n.op == opRecode {
		if i := r.word(n.args[0]); i.low == i.high {
			return point(n.recode[int(i.low)])
		}
		return everything()
	}
	if n.typ.isYesNo() {
		switch r.certain(n) {
		case always:
			return point(1)
		case never:
			return point(0)
		}
		return interval{0, 1}
	}
	return r.of(n)
}

// narrow tightens slots by what a condition demands of them: every bound of a
// reading or value by a known number, in a chain of ands.
func (r *ranges) narrow(n *node) {
	switch n.op {
	case opAnd:
		r.narrow(n.args[0])
		r.narrow(n.args[1])
	case opLess, opLessEq:
		small, large := n.args[0], n.args[1]
		if small.op == opSlot {
			r.tighten(small.slot, interval{math.Inf(-1), r.of(large).high})
		}
		if large.op == opSlot {
			r.tighten(large.slot, interval{r.of(small).low, math.Inf(1)})
		}
	}
}

func (r *ranges) tighten(slot int, to interval) { r.narrowed[slot] = r.slot(slot).and(to) }
