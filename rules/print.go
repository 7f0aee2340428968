package rules

import (
	"math"
	"strings"

	"gudgeon/trade"
	"gudgeon/units"
)

// printer writes checked trees the way a machinist would write them down.
type printer struct {
	report *Report
	system units.System
}

// binding strengths, to know where brackets are needed.
const (
	weakest = iota
	bindOr
	bindAnd
	bindCompare
	bindSum
	bindProduct
	bindPower
	bindAtom
)

var signs = map[op]struct {
	text string
	bind int
}{
	opAdd: {" + ", bindSum}, opSub: {" − ", bindSum}, opMul: {" × ", bindProduct}, opDiv: {" / ", bindProduct}, opPow: {"^", bindPower},
	opLess: {" < ", bindCompare}, opLessEq: {" ≤ ", bindCompare}, opSame: {" = ", bindCompare}, opAnd: {" and ", bindAnd}, opOr: {" or ", bindOr},
}

// symbols writes a tree with its names.
func (p printer) symbols(n *node) string {
	return p.write(n, weakest, func(n *node) string { return n.name })
}

// numbers writes a tree with numbers for its names.
func (p printer) numbers(n *node) string {
	return p.write(n, weakest, func(n *node) string { return p.report.showSlot(n.slot, p.system) })
}

// write writes a tree; leafText gives the text of a reading or value.
func (p printer) write(n *node, around int, leafText func(*node) string) string {
	text, bind := p.part(n, leafText)
	if bind < around {
		return "(" + text + ")"
	}
	return text
}

func (p printer) part(n *node, leafText func(*node) string) (text string, bind int) {
	sub := func(n *node, around int) string { return p.write(n, around, leafText) }
	switch n.op {
	case opConst:
		return p.constant(n), bindAtom
	case opSlot:
		return leafText(n), bindAtom
	case opNeg:
		return "−" + sub(n.args[0], bindPower), bindSum
	case opTrue:
		return sub(n.args[0], weakest), bindAtom
	case opRecode:
		return sub(n.args[0], bindAtom), bindAtom
	case opNot:
		return p.not(n, leafText)
	case opIf:
		words := p.report.words
		return sub(n.args[1], bindOr) + words.phrase(" if ") + sub(n.args[0], bindOr) + words.phrase(", else ") + sub(n.args[2], bindOr), weakest
	case opGiven:
		return n.args[0].name + p.report.words.phrase(" is given"), bindAtom
	case opField:
		return p.field(n, leafText), bindAtom
	case opMath:
		return n.math.name + "(" + p.list(n.args, leafText) + ")", bindAtom
	case opCall:
		return n.fn.Name + p.call(n, leafText), bindAtom
	}
	sign := signs[n.op]
	left, right := n.args[0], n.args[1]
	if n.flipped {
		left, right = right, left
		sign.text = map[op]string{opLess: " > ", opLessEq: " ≥ "}[n.op]
	}
	tight := sign.bind
	if n.op == opSub || n.op == opDiv || n.op == opPow {
		tight++
	}
	return sub(left, sign.bind) + p.report.words.phrase(sign.text) + sub(right, tight), sign.bind
}

func (p printer) constant(n *node) string {
	if n.name != "" {
		return p.report.words.option(n.name)
	}
	return p.report.words.word(showTyped(n.value, n.typ, units.Unit{}, units.Nearest, p.system), n.typ)
}

func (p printer) not(n *node, leafText func(*node) string) (string, int) {
	a := n.args[0]
	if a.op == opSame {
		return p.write(a.args[0], bindSum, leafText) + " ≠ " + p.write(a.args[1], bindSum, leafText), bindCompare
	}
	return p.report.words.phrase("not ") + p.write(a, bindAtom, leafText), bindCompare
}

// field writes record.field, or with numbers the field's value.
func (p printer) field(n *node, leafText func(*node) string) string {
	record := n.args[0]
	if record.op == opSlot && leafText(record) != record.name {
		return p.report.showField(record.slot, n.field, record.typ.Fields[n.field], p.system)
	}
	return p.write(record, bindAtom, leafText) + "." + n.name
}

func (p printer) list(args []*node, leafText func(*node) string) string {
	var texts []string
	for _, a := range args {
		texts = append(texts, p.write(a, weakest, leafText))
	}
	return strings.Join(texts, ", ")
}

// call writes the arguments of a trade function: in order when there are few,
// by name when there are many.
func (p printer) call(n *node, leafText func(*node) string) string {
	var texts []string
	given := 0
	for _, a := range n.args {
		if !a.omitted {
			given++
		}
	}
	byName := given > 3
	for i, a := range n.args {
		if a.omitted {
			continue
		}
		text := p.write(a, weakest, leafText)
		if byName {
			text = strings.ReplaceAll(n.fn.Params[i].Name, "_", " ") + " " + text
		}
		texts = append(texts, text)
	}
	return "(" + strings.Join(texts, ", ") + ")"
}

// comparison writes a comparison with numbers and by how much it holds or fails.
// It has as many decimals as it takes for the line to say what the verdict says;
// the margin is that of the numbers shown, so that the line adds up.
func (p printer) comparison(n *node) (line, margin string) {
	small, large := n.args[0], n.args[1]
	a, b := p.report.value(small), p.report.value(large)
	u := displayUnit(unitOf(small.typ, n, p.report.set), p.system)
	if a != a || b != b || u.IsZero() {
		return p.numbers(n), ""
	}
	up, down := p.rounding(small), p.rounding(large)
	same := holds(a, b, true) != holds(a, b, false)
	extra, gap := 0, 0.0
	for ; extra < 6; extra++ {
		gap = units.Rounded(b, u, down, extra) - units.Rounded(a, u, up, extra)
		if (gap > 0) == holds(a, b, false) && (gap != 0 || same) {
			break
		}
	}
	left, right := units.ShowDigits(a, u, up, extra), units.ShowDigits(b, u, down, extra)
	line = left + signs[n.op].text + right
	if n.flipped {
		line = right + map[op]string{opLess: " > ", opLessEq: " ≥ "}[n.op] + left
	}
	if same {
		return line, p.report.words.phrase("exactly at the limit")
	}
	difference := u
	if u.Kind == units.Temperature {
		difference, _ = units.Lookup(units.TemperatureDifference, u.Symbol)
	}
	return line, units.ShowDigits(math.Abs(gap)*difference.Factor, difference, units.Nearest, extra) + p.report.words.phrase(spare(gap, n.flipped))
}

// spare says which side of its limit a comparison lies on.
func spare(gap float64, flipped bool) string {
	switch {
	case gap >= 0:
		return " to spare"
	case flipped:
		return " too little"
	}
	return " too much"
}

// rounding is the way a side of a comparison may be rounded: a capacity that a
// trade function gives down, a demand up, the rest to the nearest.
func (p printer) rounding(n *node) trade.Rounding {
	switch {
	case n.op == opSlot && p.report.set.owners[n.slot].value != nil:
		return p.report.set.owners[n.slot].value.Round
	case n.op == opCall && len(n.fn.Results) == 1:
		return n.fn.Results[0].Round
	case n.op == opField:
		return n.args[0].typ.Fields[n.field].Round
	}
	return units.Nearest
}

// value works out a node over the report's readings.
func (r *Report) value(n *node) float64 {
	c := compiler{surveys: r.set.surveys, again: true}
	eval := c.compile(n)
	return eval(&frame{x: r.frame.x, surveys: r.frame.surveys, scratch: make([]float64, c.scratch), tables: make([]trade.Survey, c.tables)})
}
