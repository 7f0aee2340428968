package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// TwoLegs is a part on two legs from one hook, seen square to the plane of the
// legs. Distances are measured with the part level.
type TwoLegs struct {
	Weight         float64 // kg, 0.1 to 500 000
	Span           float64 // left lifting point to right, level, m
	LeftLength     float64 // hook to left lifting point, shackles included, m
	RightLength    float64 // the same on the right, m
	CentreFromLeft float64 // left lifting point to centre of gravity, level, m, within ±50
	CentreBelow    float64 // centre of gravity below the left lifting point, m, within ±50
	RightAbove     float64 // right lifting point above the left, m, within ±50
}

// TwoLegsResult is what each leg carries once the part has come to rest.
type TwoLegsResult struct {
	In                    TwoLegs
	Left, Right           float64 // kg
	LeftAngle, RightAngle float64 // from the horizontal, part at rest, rad
	Tilt                  float64 // rad; positive: right end low
	HookAbove             float64 // hook above the centre of gravity at rest, m
}

var errRollOver = errors.New("the centre of gravity is above the line between the lifting points: the part can roll over")

// LoadTwoLegs solves a two-leg lift from its real geometry. The leg lengths
// fix the hook against the part; the part swings until its centre of gravity is
// under the hook; then T1·u1 + T2·u2 = W·v, where u1 and u2 point from the hook
// down the legs and v straight down.
//
// Legs that cannot meet, a centre of gravity not between the legs or above the
// line of the lifting points, a leg that comes to rest under 30 degrees from
// the horizontal, or anything out of range is an error. Legs are taken as not
// stretching. Source: statics; the angle limit as in LegAngle.
func LoadTwoLegs(in TwoLegs) (TwoLegsResult, error) {
	err := cmp.Or(loadRange.CheckAs("weight", in.Weight), lengthRange.CheckAs("distance between the lifting points", in.Span),
		lengthRange.CheckAs("left leg", in.LeftLength), lengthRange.CheckAs("right leg", in.RightLength),
		placeRange.CheckAs("centre of gravity from the left lifting point", in.CentreFromLeft),
		placeRange.CheckAs("centre of gravity below the left lifting point", in.CentreBelow),
		placeRange.CheckAs("right lifting point above the left", in.RightAbove))
	if err != nil {
		return TwoLegsResult{}, err
	}
	if in.CentreBelow <= -in.RightAbove*in.CentreFromLeft/in.Span {
		return TwoLegsResult{}, errRollOver
	}
	hx, hy, err := in.hook()
	if err != nil {
		return TwoLegsResult{}, err
	}
	r := TwoLegsResult{In: in, HookAbove: math.Hypot(in.CentreFromLeft-hx, -in.CentreBelow-hy)}
	vx, vy := (in.CentreFromLeft-hx)/r.HookAbove, (-in.CentreBelow-hy)/r.HookAbove
	ux, uy := -hx/in.LeftLength, -hy/in.LeftLength
	wx, wy := (in.Span-hx)/in.RightLength, (in.RightAbove-hy)/in.RightLength

	area := ux*wy - uy*wx
	r.Left = in.Weight * (vx*wy - vy*wx) / area
	r.Right = in.Weight * (ux*vy - uy*vx) / area
	if r.Left < 0 || r.Right < 0 {
		return TwoLegsResult{}, errBeyondCentre
	}
	r.LeftAngle = math.Asin(min(1, max(-1, ux*vx+uy*vy)))
	r.RightAngle = math.Asin(min(1, max(-1, wx*vx+wy*vy)))
	r.Tilt = math.Atan2(vx, -vy)
	return r, cmp.Or(legAngleRange.CheckAs("left leg's angle from the horizontal, at rest", r.LeftAngle),
		legAngleRange.CheckAs("right leg's angle from the horizontal, at rest", r.RightAngle))
}

// hook is where the legs meet, in the part's axes from the left lifting point.
func (in TwoLegs) hook() (x, y float64, err error) {
	d := math.Hypot(in.Span, in.RightAbove)
	along := (in.LeftLength*in.LeftLength - in.RightLength*in.RightLength + d*d) / (2 * d)
	up := in.LeftLength*in.LeftLength - along*along
	if up <= 0 {
		return 0, 0, errors.New("the legs are too short, or too unlike, to meet at one hook")
	}
	up = math.Sqrt(up)
	ex, ey := in.Span/d, in.RightAbove/d
	return along*ex - up*ey, along*ey + up*ex, nil
}

// Steps gives the lines of the work.
func (r TwoLegsResult) Steps() []trade.Step {
	return []trade.Step{
		angleStep("tilt, right end low", "centre of gravity comes under the hook", r.Tilt),
		angleStep("left leg from the horizontal", "sin l = u1·v", r.LeftAngle),
		angleStep("right leg from the horizontal", "sin r = u2·v", r.RightAngle),
		loadStep("left leg", "T1·u1 + T2·u2 = W·v", r.Left),
		loadStep("right leg", "T1·u1 + T2·u2 = W·v", r.Right),
		{Name: "hook above the centre of gravity", Formula: "from the leg lengths", Kind: units.Length, Value: r.HookAbove, Unit: "inch"},
	}
}
