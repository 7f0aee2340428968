package rules

import (
	"strings"

	"gudgeon/trade"
	"gudgeon/units"
)

// Type is what the checker knows of an expression.
type Type struct {
	Kind units.Kind // units.Invalid for a derived quantity with no kind of its own, and for a record
	Dim  units.Dimension

	Options []string       // of a units.Choice
	Fields  []trade.Result // of a record
}

func kindType(k units.Kind) Type { return Type{Kind: k, Dim: k.Dim()} }

func resultType(r trade.Result) Type {
	t := kindType(r.Kind)
	t.Options = r.Options
	return t
}

func (t Type) isRecord() bool  { return len(t.Fields) > 0 }
func (t Type) isYesNo() bool   { return t.Kind == units.YesNo }
func (t Type) isDerived() bool { return t.Kind == units.Invalid && !t.isRecord() }

// isQuantity reports whether arithmetic makes sense.
func (t Type) isQuantity() bool { return t.Kind.Numeric() || t.isDerived() }

func (t Type) isBare() bool { return t.isQuantity() && t.Dim == units.Dimension{} }

// String names the type in a message.
func (t Type) String() string {
	switch {
	case t.isRecord():
		names := make([]string, len(t.Fields))
		for i, f := range t.Fields {
			names[i] = f.Name
		}
		return "a record of " + strings.Join(names, ", ")
	case t.Kind == units.YesNo:
		return "a yes/no"
	case t.Kind == units.Choice:
		return "a choice"
	case t.Kind == units.Survey:
		return "a survey"
	case t.Kind == units.Number || t.Kind == units.Ratio:
		return "a bare number"
	case t.Kind != units.Invalid:
		return t.Kind.String()
	}
	return dimensionName(t.Dim)
}

// kindsOf names the kinds that share a dimension: "torque or energy".
func kindsOf(d units.Dimension) string {
	var names []string
	for k := units.Length; k.Numeric(); k++ {
		if k.Dim() == d {
			names = append(names, k.String())
		}
	}
	return strings.Join(names, " or ")
}

// derived finds the kind that a product or quotient has. Where several kinds
// share the dimension (a torque is not an energy), it stays open and fits any
// of them.
func derived(d units.Dimension) Type {
	if d == (units.Dimension{}) {
		return kindType(units.Ratio)
	}
	found := units.Invalid
	for k := units.Length; k.Numeric(); k++ {
		if k.Dim() != d {
			continue
		}
		if found != units.Invalid {
			return Type{Dim: d}
		}
		found = k
	}
	return Type{Kind: found, Dim: d}
}

// match reports whether two quantities may be added or compared.
func match(a, b Type) bool {
	if !a.isQuantity() || !b.isQuantity() || a.Dim != b.Dim {
		return false
	}
	return a.Kind == b.Kind || a.isDerived() || b.isDerived() || a.isBare()
}

// printKind is the kind in which a quantity of this type is shown.
func (t Type) printKind() units.Kind {
	if !t.isDerived() {
		return t.Kind
	}
	for k := units.Number; k.Numeric(); k++ {
		if k.Dim() == t.Dim {
			return k
		}
	}
	return units.Invalid
}

// difference is the type of a minus b, both of type t.
func (t Type) difference() Type {
	if t.Kind == units.Temperature {
		return kindType(units.TemperatureDifference)
	}
	return t
}

var baseNames = [...]string{"length", "mass", "time", "temperature", "current", "angle"}

func dimensionName(d units.Dimension) string {
	if names := kindsOf(d); names != "" {
		return names
	}
	var over, under []string
	for i, e := range d {
		for ; e > 0; e-- {
			over = append(over, baseNames[i])
		}
		for ; e < 0; e++ {
			under = append(under, baseNames[i])
		}
	}
	text := strings.Join(over, "×")
	if text == "" {
		text = "1"
	}
	if len(under) > 0 {
		text += "/" + strings.Join(under, "/")
	}
	return text
}
