package press

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// FrictionBand is a range of friction coefficients of a press fit.
type FrictionBand struct {
	Name      string
	Low, High float64 // friction coefficients, 1
	Source    string
}

var frictionBands = [...]FrictionBand{
	{"steel on steel, dry", 0.10, 0.20, "from memory"},
	{"steel on steel, oiled", 0.05, 0.10, "from memory"},
	{"bronze on steel, dry", 0.05, 0.10, "from memory"},
	{"not known", 0.05, 0.20, "from memory; the widest of the others"},
}

// FrictionNames lists the pairs of surfaces that Friction knows.
func FrictionNames() []string {
	return trade.Names(frictionBands[:], func(r FrictionBand) string { return r.Name })
}

// Friction returns the least and most friction coefficient (both 1) to reckon
// with for a pair of surfaces, by its index in FrictionNames; the low one for
// what a fit holds, the high one for the press's size.
//
// Any other index is an error. Source: from memory; the bands are wide on purpose.
func Friction(index float64) (FrictionBand, error) {
	return trade.Row(frictionBands[:], index, "pair of surfaces")
}

// ForceInput is a press fit and how rough it may slide.
type ForceInput struct {
	Joint
	Length       float64 // of full engagement, m
	FrictionLow  float64 // least friction coefficient, 1
	FrictionHigh float64 // most friction coefficient, 1
}

// ForceResult is what it takes to press in and what the fit then holds.
type ForceResult struct {
	PressureResult
	Length                    float64 // of the fit, m
	FrictionLow, FrictionHigh float64 // friction coefficients, 1
	PressIn                   float64 // at full engagement and the most friction, N
	Holds                     float64 // along the axis at the least friction, N
	HoldsTorque               float64 // about the axis at the least friction, N·m
}

// Force returns the force to press a bushing home with the most friction, and
// the force and torque that the fit holds with the least. The force grows with
// the engaged length, so the peak is at full engagement.
//
//	F = mu·p·pi·D·L;  T = F·D/2
//
// F force: N; mu friction coefficient: 1; p interference pressure: Pa;
// D interface diameter, L length of engagement: m; T torque: N·m.
//
// Valid as for Pressure, L 0.01 to 100 in, mu 0.01 to 1, low not above high;
// otherwise an error. A crooked or burred start takes more than any formula.
//
// Source: Shigley 9th ed. sec. 7-8 (F = mu·N, N = p·pi·D·L).
func Force(in ForceInput) (ForceResult, error) {
	if err := cmp.Or(
		in.Joint.check(), lengthRange.Check(in.Length),
		frictionRange.Check(in.FrictionLow), frictionRange.Check(in.FrictionHigh),
	); err != nil {
		return ForceResult{}, err
	}
	if in.FrictionLow > in.FrictionHigh {
		return ForceResult{}, errors.New("the low friction is above the high friction; check which is which")
	}
	r := ForceResult{
		PressureResult: pressureOf(in.Joint),
		Length:         in.Length, FrictionLow: in.FrictionLow, FrictionHigh: in.FrictionHigh,
	}
	normal := r.Pressure * math.Pi * in.Diameter * in.Length
	r.PressIn = in.FrictionHigh * normal
	r.Holds = in.FrictionLow * normal
	r.HoldsTorque = r.Holds * in.Diameter / 2
	return r, nil
}

// Steps gives the worked lines of the press force.
func (r ForceResult) Steps() []trade.Step {
	return append(r.PressureResult.Steps(),
		trade.Step{Name: "gripped surface", Formula: "A = pi·D·L", Kind: units.Area, Value: math.Pi * r.In.Diameter * r.Length},
		trade.Step{Name: "force to press in, most friction", Formula: "F = mu_high·p·A", Kind: units.Force, Value: r.PressIn, Unit: "short_tonf"},
		trade.Step{Name: "force that it holds, least friction", Formula: "F = mu_low·p·A", Kind: units.Force, Value: r.Holds, Unit: "short_tonf"},
		trade.Step{Name: "torque that it holds, least friction", Formula: "T = F·D/2", Kind: units.Torque, Value: r.HoldsTorque},
	)
}

// PushOutResult is what it may take to push an old bushing out.
type PushOutResult struct {
	ForceResult
	Seizure float64 // allowance for rust and fretting, 1
	Force   float64 // N
}

var seizureRange = trade.Between("allowance for a seized bushing", 1, 10, units.Number, "a clean bushing needs no less than 1")

// PushOut returns the force that it may take to push an old bushing out.
//
//	F = s·mu_high·p·pi·D·L
//
// F force: N; s allowance for rust and fretting, 1 for a clean one: 1; the
// rest as in Force.
//
// Valid as for Force, s from 1 to 10; otherwise an error. Source: Force's;
// the allowance is common practice, no source.
func PushOut(in ForceInput, seizure float64) (PushOutResult, error) {
	if err := seizureRange.Check(seizure); err != nil {
		return PushOutResult{}, err
	}
	f, err := Force(in)
	if err != nil {
		return PushOutResult{}, err
	}
	return PushOutResult{ForceResult: f, Seizure: seizure, Force: seizure * f.PressIn}, nil
}

// Steps gives the worked lines of the push-out force.
func (r PushOutResult) Steps() []trade.Step {
	return append(r.ForceResult.Steps(),
		trade.Step{Name: "force to push out, seized", Formula: "F = s·F_in", Kind: units.Force, Value: r.Force, Unit: "short_tonf"})
}
