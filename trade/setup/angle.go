package setup

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// SlopeResult is one slope in the ways a shop writes it.
type SlopeResult struct {
	Angle    float64 // rad
	Ratio    float64 // rise over run, 1
	PerFoot  float64 // rise over a foot, m
	PerMetre float64 // rise over a metre, m
}

// Slope returns a slope as an angle, and as the rise over a foot and a metre.
//
//	angle = atan(rise/run); per foot = rise/run × 1 ft; per metre = rise/run × 1 m
//
// rise, run: m; angle: rad. 12 thou/ft is 1 mm/m.
// Valid for a rise of -10 to 10 in, a run of 0.1 to 1000 in, rise not over the
// run; otherwise an error.
//
// Source: definition of the tangent.
func Slope(rise, run float64) (SlopeResult, error) {
	if err := cmp.Or(offsetRange.Check(rise), distanceRange.Check(run)); err != nil {
		return SlopeResult{}, err
	}
	if math.Abs(rise) > run {
		return SlopeResult{}, errors.New("the rise is larger than the run; check which is which")
	}
	s := rise / run
	return SlopeResult{Angle: math.Atan(s), Ratio: s, PerFoot: s * foot, PerMetre: s}, nil
}

// Steps gives the worked lines of the slope.
func (r SlopeResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "rise over run", Formula: "rise/run", Kind: units.Number, Value: r.Ratio},
		{Name: "as an angle", Formula: "atan(rise/run)", Kind: units.Angle, Value: r.Angle},
		{Name: "over a foot", Formula: "rise/run × 1 ft", Kind: units.Length, Value: r.PerFoot, Unit: "thou"},
		{Name: "over a metre", Formula: "rise/run × 1 m", Kind: units.Length, Value: r.PerMetre, Unit: "mm"},
	}
}

// OffsetAt returns the offset of a tilted axis at a distance along it.
//
//	y = y0 + z·tan(a)
//
// y0 offset at the start, z distance from it, y: m; a tilt: rad.
// Valid for y0 -10 to 10 in, a -45 to 45°, z -1000 to 1000 in; otherwise an error.
//
// Source: geometry.
func OffsetAt(offset, tilt, distance float64) (float64, error) {
	if err := cmp.Or(offsetRange.Check(offset), tiltRange.Check(tilt), alongRange.Check(distance)); err != nil {
		return 0, err
	}
	return offset + distance*math.Tan(tilt), nil
}

// TaperResult is a taper in the ways a shop writes it.
type TaperResult struct {
	Rate     float64 // difference of diameter over length, 1
	PerFoot  float64 // difference of diameter over a foot, m
	Included float64 // angle between the sides, rad
}

// Taper returns the taper between two diameters.
//
//	rate = (D-d)/l; per foot = rate × 1 ft; included angle = 2·atan(rate/2)
//
// D larger, d smaller diameter, l length between them: m; angle: rad.
// Valid for diameters 0.01 to 400 in, D not under d, l 0.1 to 1000 in; otherwise an error.
//
// Source: F. D. Jones, Turning and Boring (1914).
func Taper(large, small, length float64) (TaperResult, error) {
	if err := cmp.Or(diameterRange.Check(large), diameterRange.Check(small), distanceRange.Check(length)); err != nil {
		return TaperResult{}, err
	}
	if small > large {
		return TaperResult{}, errors.New("the small diameter is larger than the large one; check which is which")
	}
	return taperOf((large - small) / length), nil
}

// TaperOfAngle returns the taper of an included angle.
//
//	rate = 2·tan(A/2); per foot = rate × 1 ft
//
// A included angle: rad. Valid for 0 to 120°; otherwise an error.
//
// Source: D. Collard, table of tapers for turning and boring (1902).
func TaperOfAngle(included float64) (TaperResult, error) {
	if err := includedRange.Check(included); err != nil {
		return TaperResult{}, err
	}
	return taperOf(2 * math.Tan(included/2)), nil
}

func taperOf(rate float64) TaperResult {
	return TaperResult{Rate: rate, PerFoot: rate * foot, Included: 2 * math.Atan(rate/2)}
}

// Steps gives the worked lines of the taper.
func (r TaperResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "taper, on diameter per length", Formula: "(D-d)/l", Kind: units.Number, Value: r.Rate},
		{Name: "over a foot", Formula: "rate × 1 ft", Kind: units.Length, Value: r.PerFoot},
		{Name: "included angle", Formula: "2·atan(rate/2)", Kind: units.Angle, Value: r.Included},
	}
}

// TailstockOffset returns how far to set a tailstock over for a taper.
//
//	offset = rate·L/2
//
// rate taper on diameter per length (1 in/ft is 1/12): 1; L whole length
// between centres, offset: m.
// Valid for a rate 0 to 1, L 0.1 to 1000 in; otherwise an error.
//
// Source: F. D. Jones, Turning and Boring (1914).
func TailstockOffset(rate, length float64) (float64, error) {
	if err := cmp.Or(trade.InRange("taper", rate, 0, 1, units.Number, ""), distanceRange.Check(length)); err != nil {
		return 0, err
	}
	return rate * length / 2, nil
}

// SineBar returns the height of blocks under a sine bar.
//
//	h = L·sin(A)
//
// h, L distance between the rolls: m; A angle: rad.
// Valid for L 0.1 to 1000 in, A 0 to 60°; otherwise an error.
//
// Source: definition of the sine.
func SineBar(length, angle float64) (float64, error) {
	if err := cmp.Or(distanceRange.Check(length), sineRange.Check(angle)); err != nil {
		return 0, err
	}
	return length * math.Sin(angle), nil
}

// Cosine returns the true movement behind a lever indicator's reading when its
// arm stands at an angle to the surface.
//
//	true = reading·cos(A)
//
// reading, true: m; A angle between arm and surface: rad.
// Valid for readings -1 to 1 in, A 0 to 60°; otherwise an error. A differential
// reading taken both ways needs the same correction on both sides.
//
// Source: a trade page on test-indicator cosine error (printed to two figures).
func Cosine(reading, angle float64) (float64, error) {
	if err := cmp.Or(readingRange.Check(reading), cosineRange.Check(angle)); err != nil {
		return 0, err
	}
	return reading * math.Cos(angle), nil
}

// HalfTIR returns the offset of a centre behind a total indicator reading.
//
//	offset = TIR/2
//
// Both m. Valid for a TIR of 0 to 1 in; otherwise an error. The surface swept
// must be round, or its out-of-round is read as offset.
//
// Source: a chiller maker's alignment manual p. 216.
func HalfTIR(tir float64) (float64, error) {
	if err := tirRange.Check(tir); err != nil {
		return 0, err
	}
	return tir / 2, nil
}
