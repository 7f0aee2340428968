package rules

import (
	"fmt"
	"strings"

	"gudgeon/trade"
	"gudgeon/units"
)

// Line is a formula in symbols, the same with numbers in it, and what it gives.
type Line struct {
	Name    string // what it works out; empty for a rule's own line
	Symbols string
	Numbers string
	Result  string
	Inner   bool // an intermediate step of a trade function
	Word    bool // it gives a word or a whole record, not one number
}

// Worked gives a rule's own line: its check in symbols and numbers, and by how
// much it holds or fails.
func (r *Report) Worked(i int, s units.System) Line {
	result := &r.Results[i]
	root := result.Rule.check.root
	p := printer{report: r, system: s}
	line := Line{Symbols: p.symbols(root)}
	if result.HasMargin {
		line.Numbers, line.Result = p.comparison(result.leaf.n)
		return line
	}
	line.Numbers, line.Result = p.numbers(root), result.explain(r.words)
	return line
}

// explain says what came out where there is no margin to show.
func (result *Result) explain(words *Translation) string {
	switch {
	case result.Err != nil:
		return words.phrasef("cannot be worked out: %s", result.Err)
	case result.Verdict == Waiting:
		return words.phrasef("waits for %s", strings.Join(result.Missing, ", "))
	case result.Verdict == NotNeeded:
		return words.phrase("not needed")
	case result.Verdict == Go && !result.Noted:
		return words.phrase("holds")
	}
	return words.phrase("does not hold")
}

// Steps gives the lines that lead to a rule's own: every value that it is made
// of, and the steps inside the trade functions on the way.
func (r *Report) Steps(i int, s units.System) []Line {
	rule := r.Results[i].Rule
	var lines []Line
	for _, v := range rule.values {
		lines = append(lines, r.ValueLines(v, s)...)
	}
	return append(lines, r.inner(rule.check.root, s)...)
}

// ValueLines works out one value: its own line, then the steps inside it.
func (r *Report) ValueLines(v *Value, s units.System) []Line {
	p := printer{report: r, system: s}
	line := Line{Name: v.Name, Symbols: p.symbols(v.expr.root), Numbers: p.numbers(v.expr.root), Result: r.ShowValue(v, s), Word: !v.Type.isQuantity()}
	return append([]Line{line}, r.inner(v.expr.root, s)...)
}

// inner gives the intermediate steps of the trade functions under a node.
func (r *Report) inner(root *node, s units.System) []Line {
	var lines []Line
	root.walk(func(n *node) {
		if n.op != opCall || n.fn.Steps == nil {
			return
		}
		args, ok := r.arguments(n)
		if !ok {
			return
		}
		for _, step := range n.fn.Steps(args) {
			lines = append(lines, Line{Name: step.Name, Symbols: step.Formula, Result: showStep(step, s), Inner: true})
		}
	})
	return lines
}

func showStep(step trade.Step, s units.System) string {
	u, ok := units.Lookup(step.Kind, step.Unit)
	if !ok {
		return units.Show(step.Value, step.Kind, s, units.Nearest)
	}
	return units.ShowIn(step.Value, displayUnit(u, s), units.Nearest)
}

// arguments works out the arguments of a call again, for its steps.
func (r *Report) arguments(n *node) (trade.Args, bool) {
	c := compiler{surveys: r.set.surveys, again: true}
	args := trade.Args{X: make([]float64, len(n.args)), Surveys: make([]trade.Survey, len(n.args))}
	for i, a := range n.args {
		eval := c.compile(a)
		f := frame{x: r.frame.x, surveys: r.frame.surveys, scratch: make([]float64, c.scratch), tables: make([]trade.Survey, c.tables)}
		if args.X[i] = eval(&f); args.X[i] != args.X[i] {
			return args, false
		}
		if n.fn.Params[i].Kind == units.Survey {
			args.Surveys[i] = r.frame.surveys[r.set.surveys[a.slot]]
		}
	}
	out := make([]float64, len(n.fn.Results))
	return args, n.fn.Call(args, out) == nil
}

// unitOf finds the unit in which the two sides of a comparison are best read:
// that of the first reading or value in it of the same kind.
func unitOf(t Type, n *node, set *Set) units.Unit {
	kind := t.printKind()
	found := units.Usual(kind, units.InchShop)
	done := false
	n.walk(func(n *node) {
		if done || n.op != opSlot {
			return
		}
		o := set.owners[n.slot]
		u := units.Unit{}
		if o.reading != nil {
			u = o.reading.Unit
		} else {
			u = o.value.Unit
		}
		if u.Kind == kind && !u.IsZero() {
			found, done = u, true
		}
	})
	return found
}

// ShowValue prints a value in the shop's units, rounded to the safe side.
func (r *Report) ShowValue(v *Value, s units.System) string {
	if v.Type.isRecord() {
		parts := make([]string, len(v.Type.Fields))
		for i, f := range v.Type.Fields {
			parts[i] = strings.ReplaceAll(f.Name, "_", " ") + " " + r.showField(v.slot, i, f, s)
		}
		return strings.Join(parts, ", ")
	}
	return r.showSlot(v.slot, s)
}

func (r *Report) showField(slot, i int, f trade.Result, s units.System) string {
	return r.words.word(showResult(r.frame.x[slot+i], f, s), resultType(f))
}

func showResult(x float64, f trade.Result, s units.System) string {
	if !f.Kind.Numeric() {
		return showTyped(x, resultType(f), units.Unit{}, f.Round, s)
	}
	if u, ok := units.Lookup(f.Kind, f.Unit); ok {
		return units.ShowIn(x, displayUnit(u, s), f.Round)
	}
	return units.Show(x, f.Kind, s, f.Round)
}

func yesOrNo(x float64) string {
	switch x {
	case 1:
		return "yes"
	case 0:
		return "no"
	}
	return "not known"
}

func (r *Report) showSlot(slot int, s units.System) string {
	o := r.set.owners[slot]
	x := r.frame.x[slot]
	if o.reading != nil {
		d := o.reading
		if x != x {
			return d.Name
		}
		if slot != d.slot {
			return units.ShowIn(x, displayUnit(d.Unit, s), units.Nearest)
		}
		return r.words.Show(d, Reading{Value: x, Survey: r.readings[d.Name].Survey}, s)
	}
	v := o.value
	return r.words.word(showTyped(x, v.Type, v.Unit, v.Round, s), v.Type)
}

// showTyped prints a result by what is known of its type.
func showTyped(x float64, t Type, u units.Unit, round trade.Rounding, s units.System) string {
	switch {
	case t.isYesNo():
		return yesOrNo(x)
	case t.Kind == units.Choice:
		if x == x && int(x) < len(t.Options) {
			return t.Options[int(x)]
		}
		return "not known"
	}
	if u.IsZero() {
		u = units.Usual(t.printKind(), s)
	}
	if u.IsZero() {
		return fmt.Sprintf("%.6g (SI)", x)
	}
	return units.ShowIn(x, displayUnit(u, s), round)
}

// Numeric gives a value's SI number, its kind and the unit it is shown in.
// Records and words have none.
func (r *Report) Numeric(v *Value, s units.System) (x float64, u units.Unit, ok bool) {
	if !v.Type.isQuantity() {
		return 0, units.Unit{}, false
	}
	u = v.Unit
	if u.IsZero() {
		u = units.Usual(v.Type.printKind(), s)
	}
	x = r.frame.x[v.slot]
	return x, displayUnit(u, s), x == x && !u.IsZero()
}

// MarginUnit is the unit in which a result's margin is shown.
func (r *Report) MarginUnit(result *Result, s units.System) units.Unit {
	n := result.leaf.n
	return displayUnit(unitOf(n.args[0].typ.difference(), n, r.set), s)
}
