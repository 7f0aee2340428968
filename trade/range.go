package trade

import "gudgeon/units"

// Range is what one input may be. It is written once, for the typed function
// that refuses what lies outside and for the catalogue that shows callers the
// range beforehand, so that the two cannot differ.
type Range struct {
	What      string // "sling angle"
	Low, High float64
	Kind      units.Kind
	Why       string // why the range ends there; may be empty
}

// Between makes a Range; low and high belong to it, in SI.
func Between(what string, low, high float64, kind units.Kind, why string) Range {
	return Range{What: what, Low: low, High: high, Kind: kind, Why: why}
}

// Check returns a *RangeError unless x lies in the range.
func (r Range) Check(x float64) error { return r.CheckAs(r.What, x) }

// CheckAs is Check for a quantity that has a name of its own.
func (r Range) CheckAs(what string, x float64) error {
	return InRange(what, x, r.Low, r.High, r.Kind, r.Why)
}

// Param is the parameter of a Function that the range belongs to.
func (r Range) Param(name, about string) Param {
	return Param{Name: name, About: about, Kind: r.Kind, Low: r.Low, High: r.High}
}
