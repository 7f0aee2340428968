package bore

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// EccentricStock returns the least metal left to cut anywhere round the bore, m
// on the radius. Below zero is how deep the dark patch will be.
//
//	s = (D − d)/2 − e
//
// worn d and finish D are diameters, offset e is the distance between the old
// axis and the new one, all m. Range: diameters 5 mm to 3 m, offset 0 to 1.5 m.
// Error: a *trade.RangeError. Source: plane geometry of two circles, exact.
func EccentricStock(worn, finish, offset float64) (float64, error) {
	if err := checkThree(worn, finish, offset); err != nil {
		return 0, err
	}
	return (finish-worn)/2 - offset, nil
}

// FinishForStock returns the smallest finish diameter, m, that leaves the given
// stock everywhere round an old bore that is off centre.
//
//	D = d + 2(e + s)
//
// worn d m (5 mm to 3 m), offset e m (0 to 1.5 m), stock s m on the radius (0
// to 100 mm). Error: a *trade.RangeError. Source: EccentricStock solved for D.
func FinishForStock(worn, offset, stock float64) (float64, error) {
	if err := checkThree(worn, worn, offset); err != nil {
		return 0, err
	}
	if err := limStock.Check(stock); err != nil {
		return 0, err
	}
	return worn + 2*(offset+stock), nil
}

// GreatestOffset returns how far, m, the old bore may be off the new axis and
// still leave the given stock everywhere. Below zero: not even a concentric
// bore leaves it.
//
//	e = (D − d)/2 − s
//
// worn d and finish D m (5 mm to 3 m), stock s m on the radius (0 to 100 mm).
// Error: a *trade.RangeError. Source: EccentricStock solved for e.
func GreatestOffset(worn, finish, stock float64) (float64, error) {
	if err := checkThree(worn, finish, 0); err != nil {
		return 0, err
	}
	if err := limStock.Check(stock); err != nil {
		return 0, err
	}
	return (finish-worn)/2 - stock, nil
}

// OldRadius returns how far, m, the wall of the old bore is from the new axis
// at an angle from the direction in which the old bore lies off.
//
//	ρ = e·cos α + √(r² − e²·sin² α),  r = d/2
//
// worn d is the old bore's diameter, m (5 mm to 3 m); offset e, m, must be less
// than r, for the new axis to lie inside the old bore; angle α, rad (within two
// turns). Error: a *trade.RangeError. Source: law of cosines, exact.
func OldRadius(worn, offset, angle float64) (float64, error) {
	if err := checkThree(worn, worn, offset); err != nil {
		return 0, err
	}
	if err := limAngle.Check(angle); err != nil {
		return 0, err
	}
	if offset >= worn/2 {
		return 0, &trade.RangeError{What: "offset", Value: offset, Low: 0, High: worn / 2, Kind: units.Length,
			Why: "the new axis must lie inside the old bore"}
	}
	sin, cos := math.Sincos(angle)
	return offset*cos + math.Sqrt(worn*worn/4-offset*offset*sin*sin), nil
}

// LensArea returns the area, m², that two circles have in common.
//
//	A = a²·acos((d²+a²−b²)/2da) + b²·acos((d²+b²−a²)/2db) − ½√((−d+a+b)(d+a−b)(d−a+b)(d+a+b))
//
// a and b are radii, m (more than 0 to 1.5 m), d the distance of the centres, m
// (0 to 3 m). Apart: 0. One inside the other: the smaller circle. Error: a
// *trade.RangeError. Source: two circular segments, exact.
func LensArea(a, b, d float64) (float64, error) {
	for _, r := range [...]float64{a, b} {
		if err := limRadius.Check(r); err != nil {
			return 0, err
		}
	}
	if err := limDistance.Check(d); err != nil {
		return 0, err
	}
	return lens(a, b, d), nil
}

var limRadius = trade.Between("radius", 1e-6, greatest/2, units.Length, "")

// lens is LensArea without the checks, and without units: any consistent
// lengths do.
func lens(a, b, d float64) float64 {
	small := min(a, b)
	switch {
	case d >= a+b:
		return 0
	case d <= math.Abs(a-b):
		return math.Pi * small * small
	}
	return segment(a, (d*d+(a-b)*(a+b))/(2*d)) + segment(b, (d*d+(b-a)*(b+a))/(2*d))
}

// segment is the area of a circle of radius r beyond a chord at distance c
// from its centre; c below zero gives the larger part.
func segment(r, c float64) float64 {
	c = min(max(c, -r), r) // rounding only: the caller has the circles crossing
	h := math.Sqrt((r - c) * (r + c))
	return r*r*math.Atan2(h, c) - c*h
}

// LuneArea returns the area of metal, m², that the new bore takes out of one
// cross-section round the old one.
//
//	A = π·R² − lens(R, r, e),  R = D/2, r = d/2
//
// worn d, finish D m (5 mm to 3 m), offset e m (0 to 1.5 m). Error: a
// *trade.RangeError. Source: area of a circle less the lens of two, exact.
func LuneArea(worn, finish, offset float64) (float64, error) {
	if err := checkThree(worn, finish, offset); err != nil {
		return 0, err
	}
	return lune(worn/2, finish/2, offset), nil
}

func lune(r, big, e float64) float64 { return math.Pi*big*big - lens(big, r, e) }

func checkThree(worn, finish, offset float64) error {
	if err := limWorn.Check(worn); err != nil {
		return err
	}
	if err := limFinish.Check(finish); err != nil {
		return err
	}
	return limOffset.Check(offset)
}
