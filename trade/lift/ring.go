package lift

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Ring is a closed ring of round bar pulled across a diameter.
type Ring struct {
	Load   float64 // kg, 0.1 to 500 000
	Bar    float64 // diameter of the bar, m, 1 mm to 1 m
	Inside float64 // inside diameter of the ring, m; at least the bar's
}

// RingResult holds stresses at the four places that can govern, Pa, tension
// positive, and the bending moments there, N·m.
type RingResult struct {
	In                      Ring
	MomentAtLoad            float64 // sharpens the bend
	MomentAtSide            float64 // opens the bend
	LoadInside, LoadOutside float64
	SideInside, SideOutside float64
}

// Worst is the greatest stress of either sign, Pa.
func (r RingResult) Worst() float64 {
	return max(math.Abs(r.LoadInside), math.Abs(r.LoadOutside), math.Abs(r.SideInside), math.Abs(r.SideOutside))
}

// ClosedRing is the stress in a closed ring: under the load M = P·R/π·(1 − e/R),
// at the sides M' = P·R/2 − M with P/2 of tension, R the ring's mean radius; then
// curved-bar stress with the moment about the centroid, as in HookStress.
//
// A bend tighter than half the bar inside, or anything out of range, is an
// error. In a tight bend the inside bears up to 8 % more (see HookStress). A
// staple with its ends welded to a part is not a closed ring: use
// CheckBentBarLug. Source: strain energy of a thick ring (Mechanical Engineer's
// Data Handbook p. 29 gives the thin ring, P·R/π).
func ClosedRing(in Ring) (RingResult, error) {
	err := cmp.Or(loadRange.CheckAs("load", in.Load), stockRange.CheckAs("bar", in.Bar), stockRange.CheckAs("inside of the ring", in.Inside))
	if err != nil {
		return RingResult{}, err
	}
	if in.Inside < in.Bar-touch {
		return RingResult{}, errTightBend
	}
	b := roundBend(in.Inside/2, in.Bar)
	mean := in.Inside/2 + in.Bar/2
	force := in.Load * trade.StandardGravity
	m := force * (mean - b.eccentric) / math.Pi
	side := force*mean/2 - m
	inside, outside := b.perMoment()
	return RingResult{
		In: in, MomentAtLoad: m, MomentAtSide: side,
		LoadInside: -m * inside, LoadOutside: -m * outside,
		SideInside: force/2/b.area + side*inside, SideOutside: force/2/b.area + side*outside,
	}, nil
}

// Steps gives the lines of the work.
func (r RingResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "moment under the load", Formula: "M = P·R/π·(1 − e/R)", Kind: units.Torque, Value: r.MomentAtLoad, Unit: "lbf_in"},
		{Name: "moment at the sides", Formula: "M' = P·R/2 − M", Kind: units.Torque, Value: r.MomentAtSide, Unit: "lbf_in"},
		{Name: "greatest stress", Formula: "F/A ± M·(rn − r)/(A·e·r)", Kind: units.Pressure, Value: r.Worst(), Unit: "ksi"},
	}
}
