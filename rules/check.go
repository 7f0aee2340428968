package rules

import (
	"fmt"
	"math"
	"strings"
	"sync"
	"unicode/utf8"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/file"
	"github.com/expr-lang/expr/parser"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// limits of one expression: enough for any formula a person can check by eye.
const (
	longestExpression = 2000
	mostNodes         = 400
)

// parserConfig is read by the parser and never written.
var parserConfig = sync.OnceValue(func() *conf.Config {
	config := conf.CreateNew()
	config.MaxNodes = mostNodes
	config.DisableIfOperator = true
	return config
})

// scope says what a name in an expression means.
type scope interface {
	lookup(name string) (slot int, t Type, ok bool)
	broken(name string) bool // a value with a mistake of its own
	names() []string
}

// checker turns one expression into a checked tree.
type checker struct {
	library *Library
	scope   scope
	text    source.Text
	report  *source.Report
	failed  bool
}

// check parses an expression and finds the kind of every part of it. It gives
// nil after a mistake, which it has reported with its place.
func check(l *Library, s scope, text source.Text, report *source.Report) *expression {
	c := &checker{library: l, scope: s, text: text, report: report}
	if len(text.Value) > longestExpression {
		report.At(text, fmt.Sprintf("the expression is longer than %d characters", longestExpression), "split it into values")
		return nil
	}
	tree, err := parser.ParseWithConfig(text.Value, parserConfig())
	if err != nil {
		c.parseError(err)
		return nil
	}
	root := c.node(tree.Node)
	if c.failed {
		return nil
	}
	return &expression{text: text, root: root}
}

func (c *checker) parseError(err error) {
	from, what := 0, err.Error()
	if e, ok := err.(*file.Error); ok {
		from, what = e.From, e.Message
	}
	c.failAt(from, from+1, "the expression cannot be read: "+what, "")
}

// failAt reports a mistake at characters from..to of the expression.
func (c *checker) failAt(from, to int, what, hint string) {
	c.failed = true
	pos := c.text.Pos
	for i, r := range []rune(c.text.Value) {
		if i == from {
			break
		}
		if pos.Column++; r == '\n' {
			pos = source.Pos{Line: pos.Line + 1, Column: c.text.Pos.Column}
		}
	}
	c.report.Add(c.text.File(), pos, to-from, what, hint)
}

func (c *checker) fail(n *node, what, hint string) *node {
	c.failAt(n.from, n.to, what, hint)
	return bad(n)
}

// bad stands for a part that was already reported; it matches nothing, so
// callers check failed before they complain again.
func bad(n *node) *node { return &node{op: opConst, value: math.NaN(), from: n.from, to: n.to} }

func (c *checker) node(n ast.Node) *node {
	from := n.Location().From
	out := c.convert(n, &node{from: from, to: max(n.Location().To, from+1)})
	for _, a := range out.args {
		if !a.omitted {
			out.from, out.to = min(out.from, a.from), max(out.to, a.to)
		}
	}
	return out
}

func (c *checker) convert(n ast.Node, at *node) *node {
	switch n := n.(type) {
	case *ast.IntegerNode:
		return number(at, float64(n.Value))
	case *ast.FloatNode:
		return number(at, n.Value)
	case *ast.BoolNode:
		return yesNo(at, n.Value)
	case *ast.StringNode:
		at.to = at.from + utf8.RuneCountInString(n.Value) + 2
		at.op, at.name, at.typ = opConst, n.Value, Type{Kind: units.Choice}
		return at
	case *ast.IdentifierNode:
		return c.identifier(n.Value, at)
	case *ast.UnaryNode:
		return c.unary(n, at)
	case *ast.BinaryNode:
		return c.binary(n, at)
	case *ast.ConditionalNode:
		return c.conditional(n, at)
	case *ast.MemberNode:
		return c.member(n, at)
	case *ast.CallNode:
		return c.call(n.Callee, n.Arguments, at)
	case *ast.BuiltinNode:
		return c.named(n.Name, n.Arguments, at)
	}
	return c.fail(at, "this is not part of the rule language", "it has numbers, readings, values, + - * / ^, comparisons, and, or, not, ?: and functions")
}

func number(at *node, v float64) *node {
	at.op, at.value, at.typ = opConst, v, kindType(units.Number)
	return at
}

func yesNo(at *node, v bool) *node {
	at.op, at.typ, at.name = opConst, kindType(units.YesNo), "no"
	if v {
		at.value, at.name = 1, "yes"
	}
	return at
}

func (c *checker) identifier(name string, at *node) *node {
	at.to = at.from + utf8.RuneCountInString(name)
	if v, ok := constants[name]; ok {
		number(at, v).name = name
		return at
	}
	slot, t, ok := c.scope.lookup(name)
	if !ok && c.scope.broken(name) {
		c.failed = true // it is reported where it is written
		return bad(at)
	}
	if !ok && c.library.groups[name] {
		return c.fail(at, name+" is a group of functions", "call one of them with its values in brackets; work --list "+name+" shows them")
	}
	if !ok {
		return c.fail(at, fmt.Sprintf("%s is not a reading or a value here", name), source.Suggest(name, c.scope.names()))
	}
	at.op, at.slot, at.typ, at.name = opSlot, slot, t, name
	return at
}

func (c *checker) unary(n *ast.UnaryNode, at *node) *node {
	a := c.node(n.Node)
	at.args, at.typ = []*node{a}, a.typ
	at.to = a.to
	if c.failed {
		return at
	}
	switch n.Operator {
	case "-", "+":
		if !a.typ.isQuantity() || a.typ.Kind == units.Temperature {
			return c.fail(at, n.Operator+" does not go with "+a.typ.String(), "")
		}
		if n.Operator == "+" {
			return a
		}
		at.op = opNeg
		return c.fold(at)
	default: // not, !
		if !a.typ.isYesNo() {
			return c.fail(at, "not needs a yes/no, and this is "+a.typ.String(), "put brackets round what follows it: not (a == b)")
		}
		at.op, at.args = opNot, []*node{condition(a)}
		return at
	}
}

// condition makes a yes/no reading a condition that can be judged.
func condition(n *node) *node {
	if n.isCondition() || n.op == opIf {
		return n
	}
	return &node{op: opTrue, typ: n.typ, args: []*node{n}, from: n.from, to: n.to}
}

func (c *checker) conditional(n *ast.ConditionalNode, at *node) *node {
	cond, yes, no := c.node(n.Cond), c.node(n.Exp1), c.node(n.Exp2)
	at.op, at.args, at.typ = opIf, []*node{cond, yes, no}, yes.typ
	if c.failed {
		return at
	}
	if !cond.typ.isYesNo() {
		return c.fail(cond, "a condition is needed before ?, and this is "+cond.typ.String(), "")
	}
	at.args[0] = condition(cond)
	if yes.typ.isYesNo() && no.typ.isYesNo() {
		at.args[1], at.args[2] = condition(yes), condition(no)
		return at
	}
	if !match(yes.typ, no.typ) {
		return c.fail(no, fmt.Sprintf("both sides of : must be of one kind, not %s and %s", yes.typ, no.typ), "")
	}
	if yes.typ.isDerived() {
		at.typ = no.typ
	}
	return at
}

func (c *checker) binary(n *ast.BinaryNode, at *node) *node {
	if n.Operator == "in" {
		return c.in(n, at)
	}
	a, b := c.node(n.Left), c.node(n.Right)
	at.args = []*node{a, b}
	at.from, at.to = min(at.from, a.from), max(at.to, b.to)
	if c.failed {
		return at
	}
	switch n.Operator {
	case "+", "-":
		return c.sum(n.Operator, at)
	case "*", "/":
		return c.product(n.Operator, at)
	case "^", "**":
		return c.power(at)
	case "<", "<=", ">", ">=":
		return c.compare(n.Operator, at)
	case "==", "!=":
		return c.same(n.Operator, at)
	case "and", "&&", "or", "||":
		return c.logic(n.Operator, at)
	}
	return c.fail(at, fmt.Sprintf("the operator %s is not part of the rule language", n.Operator), "")
}

func (c *checker) sum(operator string, at *node) *node {
	a, b := at.args[0].typ, at.args[1].typ
	at.op, at.typ = opAdd, a
	if operator == "-" {
		at.op = opSub
	}
	if a.isDerived() {
		at.typ = b
	}
	hot, step := a.Kind == units.Temperature, b.Kind == units.TemperatureDifference
	switch {
	case hot && step, a.Kind == units.TemperatureDifference && b.Kind == units.Temperature && at.op == opAdd:
		at.typ = kindType(units.Temperature)
	case hot && b.Kind == units.Temperature && at.op == opSub:
		at.typ = kindType(units.TemperatureDifference)
	case !match(a, b) || hot:
		verb := map[op]string{opAdd: "adds %s and %s", opSub: "takes %[2]s from %[1]s"}[at.op]
		return c.fail(at, fmt.Sprintf(verb, a, b), mixHint(a, b))
	}
	return c.fold(at)
}

// mixHint helps where a bare number stands beside a quantity.
func mixHint(a, b Type) string {
	if a.isBare() {
		a, b = b, a
	}
	if !b.isBare() || !a.Kind.Numeric() {
		return ""
	}
	u := units.Usual(a.Kind, units.InchShop)
	return fmt.Sprintf("give the number a unit, like %s(…)", u.Name)
}

func (c *checker) product(operator string, at *node) *node {
	a, b := at.args[0].typ, at.args[1].typ
	at.op = opMul
	if operator == "/" {
		at.op = opDiv
	}
	if !a.isQuantity() || !b.isQuantity() {
		return c.fail(at, fmt.Sprintf("%s does not go with %s and %s", operator, a, b), "")
	}
	if a.Kind == units.Temperature || b.Kind == units.Temperature {
		return c.fail(at, "a temperature cannot be multiplied or divided", "take the difference of two temperatures first")
	}
	switch {
	case b.isBare():
		at.typ = a
	case a.isBare() && at.op == opMul:
		at.typ = b
	case at.op == opMul:
		at.typ = derived(a.Dim.Mul(b.Dim))
	default:
		at.typ = derived(a.Dim.Div(b.Dim))
	}
	if a.isBare() && b.isBare() {
		at.typ = kindType(units.Number)
	}
	return c.fold(at)
}

func (c *checker) power(at *node) *node {
	a, b := at.args[0], at.args[1]
	if !a.typ.isQuantity() || a.typ.Kind == units.Temperature {
		return c.fail(at, "cannot raise "+a.typ.String()+" to a power", "")
	}
	whole := b.op == opConst && b.value == math.Trunc(b.value) && math.Abs(b.value) <= 6
	if !a.typ.isBare() && !whole {
		return c.fail(b, "a quantity is raised to a whole number from -6 to 6 only", "")
	}
	if !b.typ.isBare() {
		return c.fail(b, "an exponent is a bare number, not "+b.typ.String(), "")
	}
	at.op, at.typ = opPow, kindType(units.Number)
	if !a.typ.isBare() {
		var d units.Dimension
		for range int(math.Abs(b.value)) {
			d = d.Mul(a.typ.Dim)
		}
		if b.value < 0 {
			d = units.Dimension{}.Div(d)
		}
		at.typ = derived(d)
	}
	return c.fold(at)
}

func (c *checker) compare(operator string, at *node) *node {
	a, b := at.args[0], at.args[1]
	if !match(a.typ, b.typ) {
		return c.fail(at, fmt.Sprintf("compares %s with %s", a.typ, b.typ), mixHint(a.typ, b.typ))
	}
	at.typ = kindType(units.YesNo)
	at.op = opLess
	if strings.HasSuffix(operator, "=") {
		at.op = opLessEq
	}
	if operator[0] == '>' {
		at.args, at.flipped = []*node{b, a}, true
	}
	return at
}

// same compares choices and yes/no. Two measured values are never exactly the
// same, so for quantities it is refused.
func (c *checker) same(operator string, at *node) *node {
	a, b := at.args[0], at.args[1]
	at.op, at.typ = opSame, kindType(units.YesNo)
	switch {
	case a.typ.Kind == units.Choice && b.typ.Kind == units.Choice:
		if len(a.typ.Options) == 0 {
			a, b = b, a
		}
		if len(a.typ.Options) == 0 {
			return c.fail(at, "compares two words with each other", "compare a reading with a word")
		}
		if len(b.typ.Options) > 0 {
			b = c.recode(b, a.typ.Options, a.name)
		} else {
			b = c.option(b, a.typ.Options, a.name)
		}
	case a.typ.isYesNo() && b.typ.isYesNo():
	case a.typ.isQuantity() && b.typ.isQuantity():
		return c.fail(at, "two measured values are never exactly the same", "use <= or >=, or between(value, least, most)")
	default:
		return c.fail(at, fmt.Sprintf("compares %s with %s", a.typ, b.typ), "")
	}
	at.args = []*node{a, b}
	if operator == "!=" {
		return &node{op: opNot, typ: at.typ, args: []*node{at}, from: at.from, to: at.to}
	}
	return at
}

// option finds a word in the options of a choice.
func (c *checker) option(word *node, options []string, of string) *node {
	for i, o := range options {
		if o == word.name {
			word.value = float64(i)
			word.typ.Options = options
			return word
		}
	}
	return c.fail(word, fmt.Sprintf("%q is not an option of %s", word.name, of), source.Suggest(word.name, options))
}

// recode maps a choice on the options of another one.
func (c *checker) recode(n *node, options []string, of string) *node {
	table := make([]float64, len(n.typ.Options))
	plain := true
	for i, o := range n.typ.Options {
		j := indexOf(options, o)
		if j < 0 {
			return c.fail(n, fmt.Sprintf("%s can be %q, which %s does not know", n.name, o, of), "it knows: "+strings.Join(options, ", "))
		}
		table[i] = float64(j)
		plain = plain && i == j
	}
	if plain {
		return n
	}
	return &node{op: opRecode, typ: Type{Kind: units.Choice, Options: options}, args: []*node{n}, recode: table, from: n.from, to: n.to}
}

func indexOf(list []string, word string) int {
	for i, w := range list {
		if w == word {
			return i
		}
	}
	return -1
}

func (c *checker) in(n *ast.BinaryNode, at *node) *node {
	list, ok := n.Right.(*ast.ArrayNode)
	if !ok || len(list.Nodes) == 0 {
		return c.fail(at, "in needs a list of words", `write it like material in ["steel", "iron"]`)
	}
	var whole *node
	for _, item := range list.Nodes {
		one := &node{from: at.from, to: at.to, args: []*node{c.node(n.Left), c.node(item)}}
		if c.failed {
			return one
		}
		one = c.same("==", one)
		if whole == nil {
			whole = one
			continue
		}
		whole = &node{op: opOr, typ: one.typ, args: []*node{whole, one}, from: at.from, to: at.to}
	}
	return whole
}

func (c *checker) logic(operator string, at *node) *node {
	for i, a := range at.args {
		if !a.typ.isYesNo() {
			return c.fail(a, fmt.Sprintf("%s needs a yes/no on both sides, and this is %s", operator, a.typ), "compare it with something first")
		}
		at.args[i] = condition(a)
	}
	at.op, at.typ = opAnd, kindType(units.YesNo)
	if operator == "or" || operator == "||" {
		at.op = opOr
	}
	return at
}

// fold works out at once what has only constants in it.
func (c *checker) fold(n *node) *node {
	for _, a := range n.args {
		if a.op != opConst {
			return n
		}
	}
	v := evalConst(n)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return c.fail(n, "this is not a finite number", "look for a division by zero or a huge power")
	}
	return &node{op: opConst, value: v, typ: n.typ, from: n.from, to: n.to}
}

func evalConst(n *node) float64 {
	a := n.args[0].value
	switch n.op {
	case opNeg:
		return -a
	case opAdd:
		return a + n.args[1].value
	case opSub:
		return a - n.args[1].value
	case opMul:
		return a * n.args[1].value
	case opDiv:
		return a / n.args[1].value
	}
	return math.Pow(a, n.args[1].value)
}

func (c *checker) member(n *ast.MemberNode, at *node) *node {
	property, ok := n.Property.(*ast.StringNode)
	if !ok {
		return c.fail(at, "a field is written record.field", "")
	}
	a := c.node(n.Node)
	at.args = []*node{a}
	at.to = max(at.to, a.to+1+utf8.RuneCountInString(property.Value))
	if c.failed {
		return at
	}
	for i, f := range a.typ.Fields {
		if f.Name == property.Value {
			at.op, at.field, at.name, at.typ = opField, i, f.Name, resultType(f)
			return at
		}
	}
	if !a.typ.isRecord() {
		return c.fail(at, a.typ.String()+" has no fields", "")
	}
	return c.fail(at, fmt.Sprintf("there is no field %s", property.Value), source.Suggest(property.Value, fieldNames(a.typ.Fields)))
}

func fieldNames(fields []trade.Result) []string {
	names := make([]string, len(fields))
	for i, f := range fields {
		names[i] = f.Name
	}
	return names
}
