package rules

import (
	"gudgeon/rules/source"
	"gudgeon/trade"
)

// op is what a node of a checked expression does.
type op uint8

const (
	opConst  op = iota // value
	opSlot             // a reading or a value: slot
	opNeg              // -a
	opAdd              // a + b
	opSub              // a - b
	opMul              // a * b
	opDiv              // a / b
	opPow              // a ^ whole number
	opMath             // a plain function: math
	opCall             // a trade function: fn, args in the order of its Params
	opField            // field of a record: args[0] is an opCall or an opSlot
	opIf               // args[0] ? args[1] : args[2]
	opRecode           // a choice's index in another list of options: recode
	opLess             // a < b
	opLessEq           // a <= b
	opSame             // two choices, or two yes/no, are the same
	opAnd
	opOr
	opNot
	opGiven // slots
	opTrue  // a yes/no used as a condition
)

// node is one node of a checked expression. Greater-than is turned into
// less-than with flipped set, so that it is shown as it was written.
type node struct {
	op      op
	typ     Type
	args    []*node
	value   float64
	slot    int
	field   int
	name    string // how a slot, a function, a constant or an option is written
	fn      *trade.Function
	math    *mathFunction
	recode  []float64
	flipped bool
	cond    numeric // of an opIf, kept to find what is missing
	omitted bool    // an optional argument that was left out
	from    int     // first character of the node in its text
	to      int     // one past its last
}

// expression is a checked expression with the text it came from.
type expression struct {
	text source.Text
	root *node
}

// isCondition reports whether n is one of the yes/no operations that judge
// walks through.
func (n *node) isCondition() bool { return n.op >= opLess }

// walk visits n and everything under it.
func (n *node) walk(visit func(*node)) {
	visit(n)
	for _, a := range n.args {
		a.walk(visit)
	}
}
