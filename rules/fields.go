package rules

import (
	"math"
	"strings"

	"gudgeon/trade"
	"gudgeon/units"
)

// Element is something that carries the load, as a trade function works it out:
// a lug, its weld, a table. A rule may have been judged by several.
type Element struct {
	Name     string  // of the value in its sheet: plate_lug
	Use      float64 // the greatest share of what it may carry
	Load     string  // what it was worked out for; empty when it does not say
	Capacity string  // the most it may carry; empty when it does not say
	Modes    []Mode  // the ways it can fail
}

// Mode is one way of failing.
type Mode struct {
	Name, About string
	Use         float64
	Capacity    string // empty when it has none of its own
}

// Elements gives what a rule was judged by, in the order in which the rule names
// it. Branches that were not taken are left out, and so is what is not known.
func (r *Report) Elements(i int, s units.System) []Element {
	w := &elementWalk{report: r}
	if result := &r.Results[i]; result.Verdict != NotNeeded {
		w.node(result.Rule.check.root)
	}
	var list []Element
	for _, u := range w.used {
		if e, ok := r.element(u, s); ok {
			list = append(list, e)
		}
	}
	return list
}

// usedRecord is a record with the fields of it that a rule looks at.
type usedRecord struct {
	value  *Value
	fields []int
}

type elementWalk struct {
	report *Report
	used   []usedRecord
}

func (w *elementWalk) node(n *node) {
	switch n.op {
	case opField:
		w.field(n)
		return
	case opSlot:
		if o := w.report.set.owners[n.slot]; o.value != nil {
			w.node(o.value.expr.root)
		}
		return
	case opIf:
		switch w.report.value(n.args[0]) {
		case 1:
			w.node(n.args[1])
		case 0:
			w.node(n.args[2])
		}
		return
	}
	for _, a := range n.args {
		w.node(a)
	}
}

// field notes a field that says how much of a capacity is used. What the record
// itself is made of is its own affair.
func (w *elementWalk) field(n *node) {
	if n.args[0].op != opSlot || !isUse(n.args[0].typ.Fields[n.field]) {
		return
	}
	v := w.report.set.owners[n.args[0].slot].value
	for i := range w.used {
		if w.used[i].value == v {
			w.used[i].fields = append(w.used[i].fields, n.field)
			return
		}
	}
	w.used = append(w.used, usedRecord{v, []int{n.field}})
}

// isUse reports whether a field is a share of a capacity: a ratio that may only
// be rounded up.
func isUse(f trade.Result) bool { return f.Kind == units.Ratio && f.Round == units.Up }

// whole is the field of a record that sums its ways of failing up.
const whole = "use"

func (r *Report) element(u usedRecord, s units.System) (Element, bool) {
	e := Element{Name: u.value.Name, Use: math.Inf(-1), Load: r.loadOf(u.value, s)}
	fields := u.value.Type.Fields
	for _, i := range u.fields {
		e.Use = max(e.Use, r.frame.x[u.value.slot+i]) // a NaN stays
	}
	if math.IsNaN(e.Use) {
		return e, false
	}
	shown := u.fields
	if len(u.fields) == 1 && fields[u.fields[0]].Name == whole {
		shown = partsOf(fields)
	}
	lines := r.ValueLines(u.value, s)
	for _, i := range shown {
		e.Modes = append(e.Modes, r.mode(u.value, i, lines))
	}
	for i, f := range fields {
		if f.Name == "capacity" {
			e.Capacity = r.showField(u.value.slot, i, f, s)
		}
	}
	return e, true
}

func partsOf(fields []trade.Result) []int {
	var parts []int
	for i, f := range fields {
		if isUse(f) && f.Name != whole {
			parts = append(parts, i)
		}
	}
	return parts
}

// mode finds a way of failing and, among the lines of the work, its capacity.
func (r *Report) mode(v *Value, i int, lines []Line) Mode {
	f := v.Type.Fields[i]
	m := Mode{Name: strings.ReplaceAll(f.Name, "_", " "), About: f.About, Use: r.frame.x[v.slot+i]}
	for _, l := range lines {
		if l.Inner && strings.HasSuffix(" "+l.Name, " "+m.Name+" capacity") {
			m.Capacity = l.Result
		}
	}
	return m
}

// loadOf shows the argument called load that a value was worked out with.
func (r *Report) loadOf(v *Value, s units.System) string {
	root := v.expr.root
	if root.op != opCall {
		return ""
	}
	args, ok := r.arguments(root)
	if !ok {
		return ""
	}
	for i, p := range root.fn.Params {
		if p.Name == "load" {
			return showTyped(args.X[i], root.args[i].typ, units.Unit{}, units.Up, s)
		}
	}
	return ""
}

// Sides gives the comparison that decided a rule as it was written: what was
// found, the limit, and whether the limit is a least one.
func (r *Report) Sides(i int, s units.System) (found, limit string, least, ok bool) {
	result := &r.Results[i]
	if !result.HasMargin {
		return "", "", false, false
	}
	n := result.leaf.n
	line, _ := printer{report: r, system: s}.comparison(n)
	sign := signs[n.op].text
	if n.flipped {
		sign = map[op]string{opLess: " > ", opLessEq: " ≥ "}[n.op]
	}
	found, limit, ok = strings.Cut(line, sign)
	return found, limit, n.flipped, ok
}

// Number gives the SI number of a reading, a value, or a record's field such as
// hang.tilt; false when it is not known.
func (r *Report) Number(name string) (float64, bool) {
	record, field, isField := strings.Cut(name, ".")
	slot, t, ok := setScope{r.set}.lookup(record)
	if !ok || t.isRecord() != isField {
		return 0, false
	}
	if isField {
		i := fieldNamed(t.Fields, field)
		if i < 0 {
			return 0, false
		}
		slot += i
	}
	x := r.frame.x[slot]
	return x, x == x
}

func fieldNamed(fields []trade.Result, name string) int {
	for i, f := range fields {
		if f.Name == name {
			return i
		}
	}
	return -1
}

// Text shows a reading or a plain value the way this shop writes it; empty when
// it is not known.
func (r *Report) Text(name string, s units.System) string {
	slot, t, ok := setScope{r.set}.lookup(name)
	if !ok || t.isRecord() || math.IsNaN(r.frame.x[slot]) {
		return ""
	}
	return r.showSlot(slot, s)
}
