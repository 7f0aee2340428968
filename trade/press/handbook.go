package press

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// pressureFactors is the handbook's factor against diameter in inches, for a
// hub twice the diameter of the bore.
var pressureFactors = [...]struct{ diameter, factor float64 }{
	{1, 500}, {1.5, 325}, {2, 240}, {2.5, 189}, {3, 155}, {3.5, 131},
	{4, 115}, {5, 91}, {6, 75}, {8, 55}, {9, 48.8}, {10, 43.5},
}

// HandbookInput is what the handbook's tonnage asks for.
type HandbookInput struct {
	Diameter     float64 // m
	Length       float64 // of fit, m
	Interference float64 // on diameter, m
}

// HandbookResult is the handbook's tonnage.
type HandbookResult struct {
	In     HandbookInput
	Factor float64 // from the table, short tons per in² of surface per in of interference
	Force  float64 // N
}

var handbookDiameterRange = trade.Between("diameter", 1*inch, 10*inch, units.Length, "the handbook's table ends there")

// HandbookForce returns an old handbook's press tonnage, to cross-check Force.
//
//	P = A·a·F/2, A = pi·D·L
//
// P force: short tons (returned in N); A surface: in²; a interference on
// diameter, D diameter, L length: in (given in m); F factor from the table for
// D, read on a log-log line between its rows.
//
// Valid for D 1 to 10 in, L 0.01 to 100 in, a from 0 to 0.005 D; otherwise an
// error. The table assumes a hub of about 2 D, and its figures fit a cast-iron
// hub (from memory); for a steel hub they amount to a friction near 0.04, so
// Force with dry friction gives several times as much. Never size a press by this.
//
// Source: Machinery's Handbook, pressure factors for forced fits (restated).
func HandbookForce(in HandbookInput) (HandbookResult, error) {
	if err := cmp.Or(
		handbookDiameterRange.Check(in.Diameter), lengthRange.Check(in.Length), interferenceRange.Check(in.Interference),
		trade.InRange("interference", in.Interference, 0, mostStrain*in.Diameter, units.Length, "check that it is on diameter"),
	); err != nil {
		return HandbookResult{}, err
	}
	d := in.Diameter / inch
	r := HandbookResult{In: in, Factor: pressureFactor(d)}
	area := math.Pi * d * in.Length / inch
	r.Force = area * in.Interference / inch * r.Factor / 2 * tonf
	return r, nil
}

// pressureFactor reads the table at a diameter in inches that lies inside it.
func pressureFactor(d float64) float64 {
	rows := pressureFactors[:]
	for len(rows) > 2 && d > rows[1].diameter {
		rows = rows[1:]
	}
	a, b := rows[0], rows[1]
	t := math.Log(d/a.diameter) / math.Log(b.diameter/a.diameter)
	return a.factor * math.Pow(b.factor/a.factor, t)
}

// Steps gives the worked lines of the handbook's tonnage.
func (r HandbookResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "gripped surface", Formula: "A = pi·D·L", Kind: units.Area, Value: math.Pi * r.In.Diameter * r.In.Length},
		{Name: "pressure factor of the table", Formula: "F(D)", Kind: units.Number, Value: r.Factor},
		{Name: "handbook tonnage", Formula: "P = A·a·F/2 short tons", Kind: units.Force, Value: r.Force, Unit: "short_tonf"},
	}
}

var thumbDiameterRange = trade.Between("diameter", 1*inch, 100*inch, units.Length, "")

// RailroadForce returns the forced-fit tonnage of railroad practice about 1919.
//
//	P = 15 D + 15
//
// P force: short tons (returned in N); D diameter of the pin: in (given in m).
// Valid for D 1 to 100 in; otherwise an error. A rule of thumb for crank pins
// in cast-steel wheel centres, no more.
//
// Source: Dooley, Applied Science for Metal Workers, sec. 454.
func RailroadForce(diameter float64) (float64, error) {
	if err := thumbDiameterRange.Check(diameter); err != nil {
		return 0, err
	}
	return (15*diameter/inch + 15) * tonf, nil
}

// ShrinkAllowance returns the old shop allowance for a shrunk fit, on diameter.
//
//	A = 0.001 D
//
// A allowance, D diameter: m. Valid for D 1 to 100 in; otherwise an error.
//
// Source: Dooley, Applied Science for Metal Workers, sec. 453.
func ShrinkAllowance(diameter float64) (float64, error) {
	if err := thumbDiameterRange.Check(diameter); err != nil {
		return 0, err
	}
	return 0.001 * diameter, nil
}

// ThinRingInput is a thin tyre that cools onto a rigid wheel.
type ThinRingInput struct {
	Diameter  float64 // m
	Width     float64 // m
	Thickness float64 // m
	Modulus   float64 // Pa
	Expansion float64 // 1/K
	Cooling   float64 // temperature drop from just fitting, K
}

// ThinRingResult is the grip of a thin tyre.
type ThinRingResult struct {
	In       ThinRingInput
	Pull     float64 // in the tyre's section, N
	Pressure float64 // on the wheel, Pa
}

var (
	ringRange    = trade.Between("ring diameter", 1*inch, 200*inch, units.Length, "")
	widthRange   = trade.Between("ring width", 0.01*inch, 100*inch, units.Length, "")
	coolingRange = trade.Between("temperature drop", 0, 500, units.TemperatureDifference, "")
)

// ThinRing returns the pull and pressure of a thin ring that cools onto a
// wheel which does not give. It is the limit of a thin hub that Pressure refuses.
//
//	P = alpha·dT·E·t·w;  p = 2P/(D·w)
//
// P pull in the section: N; alpha expansion: 1/K; dT temperature drop: K; E
// modulus, p pressure: Pa; t thickness, w width, D diameter: m.
//
// Valid for D 1 to 200 in, t and w from 0.01 in with t not over D/20 (a thin
// ring), dT 0 to 500 K; otherwise an error.
//
// Source: Singer & Pytel, Strength of Materials, problem 267.
func ThinRing(in ThinRingInput) (ThinRingResult, error) {
	if err := cmp.Or(
		ringRange.Check(in.Diameter), widthRange.Check(in.Width),
		trade.InRange("ring thickness", in.Thickness, 0.01*inch, in.Diameter/20, units.Length, "a thicker ring is not evenly stressed; use Pressure"),
		modulusRange.Check(in.Modulus), expansionRange.Check(in.Expansion), coolingRange.Check(in.Cooling),
	); err != nil {
		return ThinRingResult{}, err
	}
	r := ThinRingResult{In: in}
	r.Pull = in.Expansion * in.Cooling * in.Modulus * in.Thickness * in.Width
	r.Pressure = 2 * r.Pull / (in.Diameter * in.Width)
	return r, nil
}

// Steps gives the worked lines of the thin ring.
func (r ThinRingResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "pull in the ring", Formula: "P = alpha·dT·E·t·w", Kind: units.Force, Value: r.Pull},
		{Name: "pressure on the wheel", Formula: "p = 2P/(D·w)", Kind: units.Pressure, Value: r.Pressure},
	}
}
