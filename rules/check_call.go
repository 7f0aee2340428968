package rules

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf8"

	"github.com/expr-lang/expr/ast"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// call checks name(…) and group.name(…).
func (c *checker) call(callee ast.Node, args []ast.Node, at *node) *node {
	switch callee := callee.(type) {
	case *ast.IdentifierNode:
		return c.named(callee.Value, args, at)
	case *ast.MemberNode:
		group, isName := callee.Node.(*ast.IdentifierNode)
		property, isField := callee.Property.(*ast.StringNode)
		if isName && isField {
			at.from = group.Location().From
			name := group.Value + "." + property.Value
			at.to = at.from + utf8.RuneCountInString(name)
			return c.trade(name, args, at)
		}
	}
	return c.fail(at, "only functions can be called", "")
}

// named checks a call of a unit, a plain function or a logic function.
func (c *checker) named(name string, args []ast.Node, at *node) *node {
	at.name = name
	at.to = at.from + utf8.RuneCountInString(name)
	if name == "given" {
		return c.given(args, at)
	}
	if m, ok := mathFunctions[name]; ok {
		return c.math(&m, args, at)
	}
	for _, a := range args {
		at.args = append(at.args, c.node(a))
	}
	if c.failed {
		return at
	}
	if name == "between" {
		return c.between(at)
	}
	if u, ok := units.Named(name); ok {
		return c.unit(u, at)
	}
	return c.fail(at, fmt.Sprintf("there is no function %s", name), source.Suggest(name, c.functionNames()))
}

func (c *checker) functionNames() []string {
	names := c.library.names()
	for name := range mathFunctions {
		names = append(names, name)
	}
	for name := range logicFunctions {
		names = append(names, name)
	}
	for _, u := range units.All() {
		names = append(names, u.Name)
	}
	return names
}

// unit turns inch(0.050) into a constant. Its argument must be a number that is
// known already: a unit is no conversion of a reading.
func (c *checker) unit(u units.Unit, at *node) *node {
	if len(at.args) != 1 || at.args[0].op != opConst || !at.args[0].typ.isBare() {
		return c.fail(at, fmt.Sprintf("%s needs one number", u.Name), fmt.Sprintf("write it like %s(1.5)", u.Name))
	}
	at.op, at.value, at.typ = opConst, u.ToSI(at.args[0].value), kindType(u.Kind)
	at.name = units.ShowDigits(at.value, u, units.Nearest, 2)
	at.to, at.args = max(at.to, at.args[0].to+1), nil
	return at
}

func (c *checker) given(args []ast.Node, at *node) *node {
	if len(args) != 1 {
		return c.fail(at, "given needs the name of one reading", "")
	}
	a := c.node(args[0])
	if c.failed {
		return at
	}
	if a.op != opSlot {
		return c.fail(a, "given asks for a reading or a value by its name", "")
	}
	at.op, at.typ, at.args = opGiven, kindType(units.YesNo), []*node{a}
	return at
}

// between(x, least, most) is least <= x and x <= most.
func (c *checker) between(at *node) *node {
	if len(at.args) != 3 {
		return c.fail(at, "between needs a value, the least and the most", "write it like between(gap, thou(2), thou(5))")
	}
	x, least, most := at.args[0], at.args[1], at.args[2]
	above := c.compare(">=", &node{args: []*node{x, least}, from: at.from, to: at.to})
	below := c.compare("<=", &node{args: []*node{x, most}, from: at.from, to: at.to})
	if c.failed {
		return at
	}
	at.op, at.typ, at.args = opAnd, kindType(units.YesNo), []*node{above, below}
	return at
}

func (c *checker) math(m *mathFunction, args []ast.Node, at *node) *node {
	types := make([]Type, len(args))
	for i, a := range args {
		n := c.node(a)
		at.args = append(at.args, n)
		types[i] = n.typ
	}
	if c.failed {
		return at
	}
	if len(args) < m.min || (m.max >= 0 && len(args) > m.max) {
		return c.fail(at, fmt.Sprintf("%s does not take %d values", m.name, len(args)), m.about)
	}
	for i, t := range types {
		if !t.isQuantity() {
			return c.fail(at.args[i], fmt.Sprintf("%s does not take %s", m.name, t), m.about)
		}
	}
	t, problem := m.kind(types)
	if problem != "" {
		return c.fail(at, m.name+" "+problem, "")
	}
	at.op, at.math, at.typ = opMath, m, t
	return at
}

// trade checks a call of a trade function, with its arguments in order or, as
// one {name: value} list, by name.
func (c *checker) trade(name string, args []ast.Node, at *node) *node {
	fn, ok := c.library.Function(name)
	if !ok {
		return c.fail(at, fmt.Sprintf("there is no function %s", name), source.Suggest(name, c.library.names()))
	}
	at.op, at.fn, at.name = opCall, fn, name
	at.typ = Type{Fields: fn.Results}
	if len(fn.Results) == 1 {
		at.typ = resultType(fn.Results[0])
	}
	at.args = make([]*node, len(fn.Params))
	if len(args) == 1 {
		if list, ok := args[0].(*ast.MapNode); ok {
			c.byName(list, at)
			return c.complete(at)
		}
	}
	if len(args) > len(fn.Params) {
		return c.fail(at, fmt.Sprintf("%s takes %d values, not %d", name, len(fn.Params), len(args)), signature(fn))
	}
	for i, a := range args {
		at.args[i] = c.argument(&fn.Params[i], c.node(a), fn)
	}
	return c.complete(at)
}

func (c *checker) byName(list *ast.MapNode, at *node) {
	for _, p := range list.Pairs {
		pair, ok := p.(*ast.PairNode)
		if !ok {
			continue
		}
		value := c.node(pair.Value)
		key, ok := pair.Key.(*ast.StringNode)
		if !ok {
			c.fail(value, "an argument's name is a plain word", signature(at.fn))
			continue
		}
		i := paramIndex(at.fn, key.Value)
		if i < 0 {
			from := key.Location().From
			c.failAt(from, from+utf8.RuneCountInString(key.Value), fmt.Sprintf("%s has no argument %s", at.fn.Name, key.Value), source.Suggest(key.Value, paramNames(at.fn)))
			continue
		}
		if at.args[i] != nil {
			c.fail(value, key.Value+" is given twice", "")
			continue
		}
		at.args[i] = c.argument(&at.fn.Params[i], value, at.fn)
	}
}

// complete fills in what may be left out and reports what may not.
func (c *checker) complete(at *node) *node {
	var missing []string
	for i := range at.args {
		p := &at.fn.Params[i]
		switch {
		case at.args[i] != nil:
		case p.Optional:
			at.args[i] = &node{op: opConst, value: p.Default, typ: paramType(p), omitted: true}
		default:
			missing = append(missing, p.Name)
			at.args[i] = &node{op: opConst, value: math.NaN(), typ: paramType(p), omitted: true}
		}
	}
	if len(missing) > 0 && !c.failed {
		return c.fail(at, fmt.Sprintf("%s also needs %s", at.fn.Name, strings.Join(missing, ", ")), signature(at.fn))
	}
	return at
}

func (c *checker) argument(p *trade.Param, a *node, fn *trade.Function) *node {
	if c.failed {
		return a
	}
	want := paramType(p)
	what := fmt.Sprintf("%s of %s", p.Name, fn.Name)
	switch {
	case p.Kind == units.Choice && a.typ.Kind == units.Choice:
		if len(a.typ.Options) > 0 {
			return c.recode(a, p.Options, what)
		}
		return c.option(a, p.Options, what)
	case p.Kind == units.YesNo && a.typ.isYesNo(), p.Kind == units.Survey && a.typ.Kind == units.Survey:
		return a
	case p.Kind.Numeric() && match(want, a.typ):
		return c.inRange(p, a, what)
	}
	return c.fail(a, fmt.Sprintf("%s is %s, not %s", what, want, a.typ), mixHint(want, a.typ))
}

// inRange reports a constant that the function is sure to refuse.
func (c *checker) inRange(p *trade.Param, a *node, what string) *node {
	if a.op != opConst || (a.value >= p.Low && a.value <= p.High) {
		return a
	}
	return c.fail(a, trade.InRange(what, a.value, p.Low, p.High, p.Kind, "").Error(), "")
}

func paramType(p *trade.Param) Type {
	t := kindType(p.Kind)
	t.Options = p.Options
	return t
}

func paramIndex(fn *trade.Function, name string) int { return indexOf(paramNames(fn), name) }

func paramNames(fn *trade.Function) []string {
	names := make([]string, len(fn.Params))
	for i := range fn.Params {
		names[i] = fn.Params[i].Name
	}
	return names
}

// signature shows how a function is called.
func signature(fn *trade.Function) string {
	return fn.Name + "(" + strings.Join(paramNames(fn), ", ") + ")"
}
