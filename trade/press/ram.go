package press

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

var (
	ramRange    = trade.Between("ram bore", 0.25*inch, 40*inch, units.Length, "")
	oilRange    = trade.Between("oil pressure", 0, 15000*psi, units.Pressure, "no shop press runs higher")
	strokeRange = trade.Between("stroke", 0, 120*inch, units.Length, "")
	heightRange = trade.Between("height", 0, 400*inch, units.Length, "")
	columnRange = trade.Between("distance between the columns", 4*inch, 400*inch, units.Length, "")
	offsetRange = trade.Between("distance off the press's centre", 0, 200*inch, units.Length, "")
)

// RamForce returns the force of a hydraulic ram.
//
//	F = p·pi·d²/4
//
// F force: N; p oil pressure: Pa; d bore of the cylinder: m.
// Valid for p 0 to 15000 psi, d 0.25 to 40 in; otherwise an error.
//
// Source: US Army TM 1-1500-204-23-2, hydraulic principles (F = P·A).
func RamForce(pressure, bore float64) (float64, error) {
	if err := cmp.Or(oilRange.Check(pressure), ramRange.Check(bore)); err != nil {
		return 0, err
	}
	return pressure * math.Pi * bore * bore / 4, nil
}

// RamPressure returns the gauge pressure at which a ram gives a force.
//
//	p = 4F/(pi·d²)
//
// p oil pressure: Pa; F force: N; d bore of the cylinder: m.
// Valid for F 0 to 2000 short tons, d 0.25 to 40 in; otherwise an error, and
// an error where the pressure would pass 15000 psi.
//
// Source: US Army TM 1-1500-204-23-2, hydraulic principles (F = P·A).
func RamPressure(force, bore float64) (float64, error) {
	if err := cmp.Or(forceRange.Check(force), ramRange.Check(bore)); err != nil {
		return 0, err
	}
	p := force / (math.Pi * bore * bore / 4)
	if err := oilRange.Check(p); err != nil {
		return 0, err
	}
	return p, nil
}

// RamVolume returns the oil that a stroke takes.
//
//	V = s·pi·d²/4
//
// V volume: m³; s stroke, d bore of the cylinder: m.
// Valid for s 0 to 120 in, d 0.25 to 40 in; otherwise an error.
//
// Source: US Army TM 1-1500-204-23-2, hydraulic principles (V = A·L).
func RamVolume(stroke, bore float64) (float64, error) {
	if err := cmp.Or(strokeRange.Check(stroke), ramRange.Check(bore)); err != nil {
		return 0, err
	}
	return stroke * math.Pi * bore * bore / 4, nil
}

// HandPumpResult is what a hand pump asks of the pump's piston.
type HandPumpResult struct {
	AreaRatio  float64 // ram's area over the pump's, 1
	PumpForce  float64 // on the pump's piston, N
	PumpTravel float64 // of the pump's piston in all, m
}

// HandPump returns the force and the travel of a pump's piston that lifts a
// load with a larger ram.
//
//	ratio = (D/d)²; f = F/ratio; travel = s·ratio
//
// F load, f pump force: N; D ram bore, d pump bore, s stroke, travel: m.
// Valid for F 0 to 2000 short tons, D and d 0.25 to 40 in, D not under d, s 0 to
// 120 in; otherwise an error.
//
// Source: US Army TM 1-1500-204-23-2, hydraulic principles.
func HandPump(force, ramBore, pumpBore, stroke float64) (HandPumpResult, error) {
	if err := cmp.Or(forceRange.Check(force), ramRange.Check(ramBore), ramRange.Check(pumpBore), strokeRange.Check(stroke)); err != nil {
		return HandPumpResult{}, err
	}
	if pumpBore > ramBore {
		return HandPumpResult{}, errors.New("the pump's bore is larger than the ram's; check which is which")
	}
	ratio := ramBore * ramBore / (pumpBore * pumpBore)
	return HandPumpResult{AreaRatio: ratio, PumpForce: force / ratio, PumpTravel: stroke * ratio}, nil
}

// Steps gives the worked lines of the hand pump.
func (r HandPumpResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "area of the ram over that of the pump", Formula: "(D/d)²", Kind: units.Number, Value: r.AreaRatio},
		{Name: "force on the pump's piston", Formula: "F/ratio", Kind: units.Force, Value: r.PumpForce},
		{Name: "travel of the pump's piston", Formula: "s·ratio", Kind: units.Length, Value: r.PumpTravel},
	}
}

// CapacityResult is what a press may push.
type CapacityResult struct {
	RamForce float64 // at the pump's highest pressure, N
	Frame    float64 // rated force of the frame, N
	Force    float64 // the smaller, N
}

// Capacity returns what a press may push: the ram at the pump's highest
// pressure, or the frame's rating, whichever is less.
//
//	F = min(p·pi·d²/4, frame)
//
// F, frame: N; p highest oil pressure: Pa; d bore of the cylinder: m.
// Valid as for RamForce, frame 100 lbf to 5000 short tons; otherwise an error.
//
// Source: RamForce's; the plate on the press governs.
func Capacity(pressure, bore, frame float64) (CapacityResult, error) {
	ram, err := RamForce(pressure, bore)
	if err != nil {
		return CapacityResult{}, err
	}
	if err := ratingRange.Check(frame); err != nil {
		return CapacityResult{}, err
	}
	return CapacityResult{RamForce: ram, Frame: frame, Force: min(ram, frame)}, nil
}

// Steps gives the worked lines of the press's capacity.
func (r CapacityResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "force of the ram at full pressure", Formula: "p·pi·d²/4", Kind: units.Force, Value: r.RamForce, Unit: "short_tonf"},
		{Name: "the press may push", Formula: "min(ram, frame)", Kind: units.Force, Value: r.Force, Unit: "short_tonf"},
	}
}

// OffCentreInput is a load beside the middle of a two-column press.
type OffCentreInput struct {
	Force   float64 // N
	Offset  float64 // of the load from midway between the columns, m
	Columns float64 // distance between the columns' centre lines, m
	Frame   float64 // rated force of the frame with the load in the middle, N
}

// OffCentreResult is what the nearer column gets.
type OffCentreResult struct {
	In         OffCentreInput
	NearColumn float64 // pull in the nearer column, N
	Moment     float64 // that tilts a ram which stays in the middle, N·m
	Allowed    float64 // force at that offset which loads the nearer column as the rating does, N
	Use        float64 // force over allowed, 1
}

// OffCentre returns what a load beside the middle does to a two-column press.
//
//	near = F(1/2 + e/W);  allowed = frame/(1 + 2e/W);  M = F·e
//
// F force, near pull in the nearer column, frame and allowed: N; e offset, W
// distance between columns: m; M tilting moment on a ram that stays in the
// middle: N·m.
//
// Valid for e from 0 to under W/2, W 4 to 400 in; otherwise an error. It says
// nothing of the ram's guides and seals: if the ram is not moved over the load,
// the maker's limit for M governs, and without one keep the load in line.
//
// Source: statics.
func OffCentre(in OffCentreInput) (OffCentreResult, error) {
	if err := cmp.Or(forceRange.Check(in.Force), offsetRange.Check(in.Offset), columnRange.Check(in.Columns), ratingRange.Check(in.Frame)); err != nil {
		return OffCentreResult{}, err
	}
	if in.Offset >= in.Columns/2 {
		return OffCentreResult{}, errors.New("the load is not between the columns")
	}
	r := OffCentreResult{In: in}
	r.NearColumn = in.Force * (0.5 + in.Offset/in.Columns)
	r.Moment = in.Force * in.Offset
	r.Allowed = in.Frame / (1 + 2*in.Offset/in.Columns)
	r.Use = in.Force / r.Allowed
	return r, nil
}

// Steps gives the worked lines of the off-centre load.
func (r OffCentreResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "pull in the nearer column", Formula: "F(1/2 + e/W)", Kind: units.Force, Value: r.NearColumn, Unit: "short_tonf"},
		{Name: "moment on a ram left in the middle", Formula: "F·e", Kind: units.Torque, Value: r.Moment},
		{Name: "force allowed at that offset", Formula: "frame/(1 + 2e/W)", Kind: units.Force, Value: r.Allowed, Unit: "short_tonf"},
		{Name: "share of it used", Formula: "F/allowed", Kind: units.Ratio, Value: r.Use},
	}
}
