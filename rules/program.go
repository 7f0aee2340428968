package rules

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// frame is the working memory of one evaluation. NaN in x means not known yet.
type frame struct {
	x       []float64 // readings, then values
	surveys []trade.Survey
	scratch []float64 // arguments and results of calls
	tables  []trade.Survey
	err     error  // the first refusal of a trade function since it was cleared
	key     []byte // of a call over a survey, written anew for each
}

// numeric works out a number, or NaN when something it needs is not known.
type numeric func(f *frame) float64

// compiler turns checked trees into closures. It hands out scratch memory so
// that evaluation allocates nothing.
type compiler struct {
	scratch int
	tables  int
	surveys map[int]int // slot of a survey reading → its index in frame.surveys
	again   bool        // the tree was compiled before and is shared: leave it as it is
}

// compile builds the closure of n.
func (c *compiler) compile(n *node) numeric {
	switch n.op {
	case opConst:
		v := n.value
		return func(*frame) float64 { return v }
	case opSlot:
		i := n.slot
		return func(f *frame) float64 { return f.x[i] }
	case opNeg:
		a := c.compile(n.args[0])
		return func(f *frame) float64 { return -a(f) }
	case opAdd, opSub, opMul, opDiv, opPow:
		return arithmetic(n.op, c.compile(n.args[0]), c.compile(n.args[1]))
	case opMath:
		return c.math(n)
	case opCall:
		return c.single(n)
	case opField:
		return c.field(n)
	case opRecode:
		a, table := c.compile(n.args[0]), n.recode
		return func(f *frame) float64 {
			if v := a(f); v == v {
				return table[int(v)]
			}
			return math.NaN()
		}
	case opIf:
		return c.conditional(n)
	}
	return c.condition(n)
}

func arithmetic(o op, a, b numeric) numeric {
	switch o {
	case opAdd:
		return func(f *frame) float64 { return a(f) + b(f) }
	case opSub:
		return func(f *frame) float64 { return a(f) - b(f) }
	case opMul:
		return func(f *frame) float64 { return a(f) * b(f) }
	case opDiv:
		return guarded(a, b, func(x, y float64) float64 { return x / y }, "a division by zero")
	}
	return guarded(a, b, math.Pow, "a power that is not a number")
}

// guarded refuses a result that is not finite. NaN from a missing reading
// passes through.
func guarded(a, b numeric, f func(x, y float64) float64, what refusal) numeric {
	return func(fr *frame) float64 {
		x, y := a(fr), b(fr)
		if x != x || y != y {
			return math.NaN()
		}
		v := f(x, y)
		if v != v || math.IsInf(v, 0) {
			fr.refuse(what)
			return math.NaN()
		}
		return v
	}
}

// refusal is an error made once, so that meeting it costs no memory.
type refusal string

func (r refusal) Error() string { return string(r) }

func (f *frame) refuse(err error) {
	if f.err == nil {
		f.err = err
	}
}

func (c *compiler) math(n *node) numeric {
	args := make([]numeric, len(n.args))
	for i, a := range n.args {
		args[i] = c.compile(a)
	}
	at, eval := c.reserve(len(args)), n.math.eval
	domain := refusal(n.math.name + " of this value has no answer: look at the readings that it is worked out from")
	return func(f *frame) float64 {
		in := f.scratch[at : at+len(args)]
		for i, a := range args {
			v := a(f)
			if v != v {
				return v
			}
			in[i] = v
		}
		v := eval(in)
		if v != v || math.IsInf(v, 0) {
			f.refuse(domain)
			return math.NaN()
		}
		return v
	}
}

func (c *compiler) reserve(n int) int {
	at := c.scratch
	c.scratch += n
	return at
}

// call builds the closure that runs a trade function and leaves its results in
// scratch memory; it reports whether they are known.
func (c *compiler) call(n *node) (run func(f *frame) bool, results int) {
	fn := n.fn
	args := make([]numeric, len(n.args))
	survey := make([]int, len(n.args))
	hasSurvey := false
	for i, a := range n.args {
		survey[i] = -1
		if fn.Params[i].Kind == units.Survey {
			hasSurvey = true
			survey[i] = c.surveys[a.slot]
		}
		args[i] = c.compile(a)
	}
	in := c.reserve(len(args))
	out := c.reserve(len(fn.Results))
	table := c.tables
	if hasSurvey {
		c.tables += len(args)
	}
	var known memory
	return func(f *frame) bool {
		x := f.scratch[in : in+len(args) : in+len(args)]
		for i, a := range args {
			if x[i] = a(f); x[i] != x[i] {
				return false
			}
		}
		call := trade.Args{X: x}
		if hasSurvey {
			call.Surveys = f.tables[table : table+len(args)]
			for i, s := range survey {
				if s >= 0 {
					call.Surveys[i] = f.surveys[s]
				}
			}
		}
		y := f.scratch[out : out+len(fn.Results)]
		if err := known.call(f, fn, call, y); err != nil {
			f.refuse(err)
			return false
		}
		for _, v := range y {
			if v != v || math.IsInf(v, 0) {
				f.refuse(refusal(fn.Name + " gave no finite answer"))
				return false
			}
		}
		return true
	}, out
}

func (c *compiler) single(n *node) numeric {
	run, out := c.call(n)
	return func(f *frame) float64 {
		if run(f) {
			return f.scratch[out]
		}
		return math.NaN()
	}
}

func (c *compiler) field(n *node) numeric {
	if record := n.args[0]; record.op == opSlot {
		i := record.slot + n.field
		return func(f *frame) float64 { return f.x[i] }
	}
	run, out := c.call(n.args[0])
	out += n.field
	return func(f *frame) float64 {
		if run(f) {
			return f.scratch[out]
		}
		return math.NaN()
	}
}

func (c *compiler) conditional(n *node) numeric {
	cond, yes, no := c.compile(n.args[0]), c.compile(n.args[1]), c.compile(n.args[2])
	if !c.again {
		n.cond = cond
	}
	return func(f *frame) float64 {
		switch cond(f) {
		case 1:
			return yes(f)
		case 0:
			return no(f)
		}
		return math.NaN()
	}
}

// condition builds the closure of a yes/no: 1, 0 or NaN. And and or are known
// as soon as one side settles them.
func (c *compiler) condition(n *node) numeric {
	if n.op == opGiven {
		i := n.args[0].slot
		return func(f *frame) float64 { return truth(f.x[i] == f.x[i]) }
	}
	a := c.compile(n.args[0])
	switch n.op {
	case opTrue:
		return a
	case opNot:
		return func(f *frame) float64 { return 1 - a(f) }
	}
	b := c.compile(n.args[1])
	switch n.op {
	case opAnd:
		return func(f *frame) float64 {
			x := a(f)
			if x == 0 {
				return 0
			}
			y := b(f)
			if y == 0 {
				return 0
			}
			return x * y
		}
	case opOr:
		return func(f *frame) float64 {
			x := a(f)
			if x == 1 {
				return 1
			}
			y := b(f)
			if y == 1 {
				return 1
			}
			return x + y
		}
	case opSame:
		return func(f *frame) float64 {
			x, y := a(f), b(f)
			if x != x || y != y {
				return math.NaN()
			}
			return truth(x == y)
		}
	}
	orEqual := n.op == opLessEq
	return func(f *frame) float64 {
		x, y := a(f), b(f)
		if x != x || y != y {
			return math.NaN()
		}
		return truth(holds(x, y, orEqual))
	}
}

func truth(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}

// noise is the relative difference under which two results of float arithmetic
// count as the same: 3.002 in less 3.000 in is not exactly 2 thou in binary,
// and a limit that is met exactly is met.
const noise = 1e-10

// holds decides a <= b, or a < b.
func holds(a, b float64, orEqual bool) bool {
	d := b - a
	if math.Abs(d) <= noise*math.Max(math.Abs(a), math.Abs(b)) {
		return orEqual
	}
	return d > 0
}
