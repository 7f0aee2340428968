package bore

import "math"

// Four is a quick look with an indicator at the four quarters of a bore.
type Four struct {
	Offset     XY      // of the bore's centre from the bar, m
	Size       float64 // m
	Clock      float64 // rad
	OutOfRound float64 // half the difference of the two diameters, m
}

// FourPoint returns the centre of a bore from indicator readings at 12, 3, 6 and
// 9 o'clock, plus outward.
//
//	x = (r₃ − r₉)/2,  y = (r₁₂ − r₆)/2,  out-of-round = |(r₁₂ + r₆) − (r₃ + r₉)|/2
//
// Readings within ±100 mm. Good to e²/2r for an offset e; it cannot tell three
// lobes from an offset. Error: a *trade.RangeError. Source: least squares circle
// for four even places, linearised; common practice.
func FourPoint(at12, at3, at6, at9 float64) (Four, error) {
	for _, r := range [...]float64{at12, at3, at6, at9} {
		if err := limReading.Check(r); err != nil {
			return Four{}, err
		}
	}
	p := XY{(at3 - at9) / 2, (at12 - at6) / 2}
	return Four{p, p.Len(), p.Clock(), math.Abs(at12+at6-at3-at9) / 2}, nil
}

// Lean is the lean of an axis known at two depths.
type Lean struct {
	Angle float64 // rad
	Clock float64 // the way it moves going in, rad
}

// LeanOf returns the lean of an axis from where it is at the near and the far
// end of a length.
//
//	tan α = |far − near| / L
//
// Offsets within ±1.5 m, length 1 mm to 10 m. Error: a *trade.RangeError.
// Source: the definition of a slope.
func LeanOf(near, far XY, length float64) (Lean, error) {
	for _, x := range [...]float64{near.X, near.Y, far.X, far.Y} {
		if err := limShift.Check(x); err != nil {
			return Lean{}, err
		}
	}
	if err := limLength.Check(length); err != nil {
		return Lean{}, err
	}
	d := far.Sub(near)
	return Lean{math.Atan(d.Len() / length), d.Clock()}, nil
}

// NormalisedDistance returns the distance of two measured centres over its
// expanded uncertainty; 1 or less agrees.
//
//	En = d / (k·√(uA² + uB²)),  k = Coverage
//
// distance 0 to 3 m, standard uncertainties 1 nm to 100 mm. Error: a
// *trade.RangeError. Source: En number as in ISO/IEC 17043 (from memory).
func NormalisedDistance(distance, ua, ub float64) (float64, error) {
	if err := limDistance.Check(distance); err != nil {
		return 0, err
	}
	for _, u := range [...]float64{ua, ub} {
		if err := limU.Check(u); err != nil {
			return 0, err
		}
	}
	return distance / (Coverage * math.Hypot(ua, ub)), nil
}

// Taper returns by how much a bore widens per length: twice the slope of its wall.
//
//	t = (D₂ − D₁)/ℓ
//
// diameters 5 mm to 3 m, the distance between them 1 mm to 10 m; the result is
// below zero for a bore that narrows going in. Error: a *trade.RangeError.
// Source: F. D. Jones, Turning and Boring (1914).
func Taper(near, far, distance float64) (float64, error) {
	for _, d := range [...]float64{near, far} {
		if err := limDiameter.Check(d); err != nil {
			return 0, err
		}
	}
	if err := limLength.Check(distance); err != nil {
		return 0, err
	}
	return (far - near) / distance, nil
}
