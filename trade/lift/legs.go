package lift

import (
	"cmp"
	"errors"
	"fmt"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

var (
	errSingleLeg    = errors.New("a single leg hangs straight: its angle is 90 degrees")
	errWholeLegs    = errors.New("the number of legs must be 1, 2, 3 or 4")
	errBeyondCentre = errors.New("the centre of gravity is not between the lifting points: one leg would go slack and the part would swing")
)

// countedLegs is how many legs may be counted on. A stiff part on three or four
// legs can rest on two of them while the others only steady it.
func countedLegs(legs float64) (float64, error) {
	switch legs {
	case 1:
		return 1, nil
	case 2, 3, 4:
		return 2, nil
	}
	return 0, errWholeLegs
}

// LegAngle is a leg's angle from the horizontal in rad, sin a = height/length,
// from the height of the hook above the lifting points and the leg's length.
//
// height, length: m, 0.5 mm to 50 m. A height above the length, or an angle
// under 30 degrees, is an error. Source: Equipment Operator (NAVEDTRA 14080)
// p. 3-23 for the form, sling practice citing 29 CFR 1910.184 for the 30.
func LegAngle(height, length float64) (float64, error) {
	if err := cmp.Or(lengthRange.CheckAs("height of the hook", height), lengthRange.CheckAs("leg length", length)); err != nil {
		return 0, err
	}
	if height > length {
		return 0, errors.New("the hook cannot be higher above the lifting points than the leg is long")
	}
	a := math.Asin(height / length)
	return a, legAngleRange.CheckAs("sling angle from the horizontal", a)
}

// LegLoad is the load in kg on each leg of a sling over the centre of gravity
// with legs alike, T = W/(n·sin a), n = 1 for one leg and 2 for two, three or
// four: on a stiff part two legs may carry everything.
//
// weight: kg, 0.1 to 500 000; legs: 1 to 4; angle from the horizontal: rad, 30
// to 90 degrees, exactly 90 for one leg. Anything else is an error. Sources:
// NAVEDTRA 14080 pp. 3-23, 3-24 (leg load, and legs to count).
func LegLoad(weight, legs, angle float64) (float64, error) {
	if err := cmp.Or(loadRange.CheckAs("weight", weight), legAngleRange.CheckAs("sling angle from the horizontal", angle)); err != nil {
		return 0, err
	}
	n, err := countedLegs(legs)
	if err != nil {
		return 0, err
	}
	if n == 1 && angle < 90*degree-touch {
		return 0, errSingleLeg
	}
	return weight / (n * math.Sin(angle)), nil
}

// VerticalLegs shares a weight between two vertical legs,
// left = W·b/(a+b), right = W·a/(a+b), in kg: the leg nearer the centre of
// gravity carries more.
//
// weight: kg, 0.1 to 500 000; fromLeft a, fromRight b: from each leg to the
// centre of gravity, m, 0 to 50, not both 0. Anything else is an error.
// Source: moments; as in riggers' training on an off-centre load.
func VerticalLegs(weight, fromLeft, fromRight float64) (left, right float64, err error) {
	err = cmp.Or(loadRange.CheckAs("weight", weight), boreRange.CheckAs("distance from the left leg", fromLeft),
		boreRange.CheckAs("distance from the right leg", fromRight))
	if err != nil {
		return 0, 0, err
	}
	if fromLeft+fromRight < lengthRange.Low {
		return 0, 0, errors.New("both legs are at the centre of gravity: count them as one")
	}
	right = weight * fromLeft / (fromLeft + fromRight)
	return weight - right, right, nil
}

// mostAngleSum keeps two legs far enough from parallel that their angles tell
// how the load is shared.
const mostAngleSum = 170 * degree

// AngledLegs shares a weight between two legs whose angles from the horizontal
// were measured with the part hanging: left = W·cos r/sin(l+r),
// right = W·cos l/sin(l+r), in kg.
//
// weight: kg, 0.1 to 500 000; left l and right r: rad, 30 to 90 degrees, their
// sum at most 170 degrees, because with nearly vertical legs a degree of error
// moves the share a long way (use VerticalLegs). Anything else is an error.
// Source: statics of three forces at the hook.
func AngledLegs(weight, leftAngle, rightAngle float64) (left, right float64, err error) {
	err = cmp.Or(loadRange.CheckAs("weight", weight), legAngleRange.CheckAs("left leg's angle from the horizontal", leftAngle),
		legAngleRange.CheckAs("right leg's angle from the horizontal", rightAngle))
	if err != nil {
		return 0, 0, err
	}
	sum := leftAngle + rightAngle
	if sum > mostAngleSum+touch {
		return 0, 0, fmt.Errorf("the legs are nearly vertical (%.0f and %.0f degrees): share the load by distance from the centre of gravity",
			leftAngle/degree, rightAngle/degree)
	}
	left = weight * math.Cos(rightAngle) / math.Sin(sum)
	right = weight * math.Cos(leftAngle) / math.Sin(sum)
	return left, right, nil
}

// angleStep is a line of work showing an angle.
func angleStep(name, formula string, a float64) trade.Step {
	return trade.Step{Name: name, Formula: formula, Kind: units.Angle, Value: a, Unit: "deg"}
}

func loadStep(name, formula string, w float64) trade.Step {
	return trade.Step{Name: name, Formula: formula, Kind: units.Mass, Value: w, Unit: "lb"}
}
