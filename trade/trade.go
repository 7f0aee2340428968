package trade

import (
	"fmt"
	"math"

	"gudgeon/units"
)

// StandardGravity is the conventional g in m/s² (ISO 80000-3; NIST SP 811 App. B).
const StandardGravity = 9.80665

// Rounding says which way a result may be rounded without becoming unsafe.
type Rounding = units.Rounding

// Param is one argument of a Function.
type Param struct {
	Name     string
	About    string     // what it is, in shop words
	Kind     units.Kind // units.Choice takes Options; units.Survey takes a table
	Low      float64    // least allowed value, SI
	High     float64    // greatest allowed value, SI
	Options  []string   // the words allowed when Kind is units.Choice; passed as an index
	Optional bool       // may be left out of a call with named arguments
	Default  float64    // used when left out, SI (or index of the option)
}

// Result is one value that a Function gives. A Function with a single Result
// gives a plain value; with several it gives a record whose fields are named.
type Result struct {
	Name  string
	About string
	Kind  units.Kind
	Unit  string   // preferred unit of the inch shop, as units.Lookup knows it; empty for the kind's usual
	Round Rounding // units.Down for a capacity, units.Up for a demand, units.Nearest otherwise

	// Options are the words of a result of kind units.Choice, given as an index.
	Options []string
}

// Step is one line of a worked calculation.
type Step struct {
	Name    string     // what is being worked out: "leg load"
	Formula string     // symbols: "T = W/(n·sin a)"
	Kind    units.Kind // kind of Value
	Value   float64    // SI
	Unit    string     // preferred unit of the inch shop; empty for the kind's usual
}

// Args holds a call's arguments in SI units, in the order of Params. A Survey
// argument is at the same index of Surveys; its X is unused.
type Args struct {
	X       []float64
	Surveys []Survey
}

// Function is one piece of the trade's arithmetic that a rule sheet can call.
type Function struct {
	Name    string // "truck.capacity_at"
	About   string // one sentence
	Formula string // in symbols
	Params  []Param
	Results []Result
	Source  string // where the formula comes from, or CommonPractice
	Example string // an expression in the rule language that works it once

	// Call works the function. It writes len(Results) values to out, allocates
	// nothing in the steady state and returns an error for any input outside its
	// range: never NaN, never a clamped value.
	Call func(in Args, out []float64) error

	// Steps gives the intermediate lines; nil when the formula says it all.
	Steps func(in Args) []Step
}

// CommonPractice marks a rule of thumb that no published source is claimed for.
const CommonPractice = "common practice, no source"

// Point is one reading of a survey. Missing readings are left out of the table.
type Point struct {
	Station float64 // axial position from the near face, m
	Clock   float64 // clockwise from 12 o'clock looking at the near face, rad
	Read    float64 // radius, diameter or indicator reading, m, as the survey's Of says
	U       float64 // standard uncertainty of Read, m; 0 when not known
}

// Survey is a table of readings round a bore.
type Survey []Point

// RangeError says that an input lies outside what a formula may be used for.
type RangeError struct {
	What      string // "sling angle"
	Value     float64
	Low, High float64
	Kind      units.Kind
	Why       string // why the range ends there; may be empty
}

func (e *RangeError) Error() string {
	show := func(x float64) string { return units.Show(x, e.Kind, units.InchShop, units.Nearest) }
	var text string
	switch {
	case math.IsNaN(e.Value) || math.IsInf(e.Value, 0):
		text = e.What + " is not a number"
	case math.IsInf(e.High, 1):
		text = fmt.Sprintf("%s is %s; it must be at least %s", e.What, show(e.Value), show(e.Low))
	default:
		text = fmt.Sprintf("%s is %s; it must be from %s to %s", e.What, show(e.Value), show(e.Low), show(e.High))
	}
	if e.Why != "" {
		text += ": " + e.Why
	}
	return text
}

// InRange returns a *RangeError unless low <= x <= high. NaN is never in range.
func InRange(what string, x, low, high float64, kind units.Kind, why string) error {
	if x >= low && x <= high && !math.IsInf(x, 0) {
		return nil
	}
	return &RangeError{What: what, Value: x, Low: low, High: high, Kind: kind, Why: why}
}
