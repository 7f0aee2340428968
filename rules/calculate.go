package rules

import (
	"gudgeon/rules/source"
	"gudgeon/units"
)

// Calculation is one expression worked out on its own.
type Calculation struct {
	Lines    []Line   // the expression, then the steps inside it
	Sources  []string // of the trade functions in it, in order
	Formulas []string // of the same, in symbols
	Type     Type
	Value    float64 // SI; 1 or 0 of a yes/no; NaN of a record
	Unit     units.Unit
	Fields   []FieldValue // of a record
}

// FieldValue is one field of a record.
type FieldValue struct {
	Name  string
	Value float64 // SI
	Unit  units.Unit
	Text  string
}

// Calculate works out an expression that needs no readings. Errors point into
// the expression; a trade function that refuses its inputs says why.
func Calculate(l *Library, text source.Text, s units.System) (*Calculation, error) {
	name := source.Plain("work", "result")
	sheet := &Sheet{Name: source.Plain("work", "work"), file: text.File()}
	sheet.Values = source.Map[valueSource]{{Key: name, Value: valueSource{Is: text}}}
	set, err := CompileSheet(l, NoShelf{}, sheet)
	if err != nil {
		return nil, err
	}
	r := set.Evaluate(nil)
	v := set.Values[0]
	if err := r.refused[v]; err != nil {
		return nil, err
	}
	c := &Calculation{Lines: r.ValueLines(v, s), Type: v.Type, Value: r.frame.x[v.slot]}
	c.Lines[0].Name = ""
	if v.expr.root.op == opConst {
		c.Lines[0].Symbols, c.Lines[0].Numbers = text.Value, ""
	}
	if !v.Type.isRecord() {
		_, c.Unit, _ = r.Numeric(v, s)
	}
	for i, f := range v.Type.Fields {
		u, ok := units.Lookup(f.Kind, f.Unit)
		if !ok {
			u = units.Usual(f.Kind, s)
		}
		x := r.frame.x[v.slot+i]
		c.Fields = append(c.Fields, FieldValue{Name: f.Name, Value: x, Unit: displayUnit(u, s), Text: showResult(x, f, s)})
	}
	v.expr.root.walk(func(n *node) {
		if n.op == opCall && indexOf(c.Sources, n.fn.Source) < 0 {
			c.Sources = append(c.Sources, n.fn.Source)
			c.Formulas = append(c.Formulas, n.fn.Formula)
		}
	})
	return c, nil
}
