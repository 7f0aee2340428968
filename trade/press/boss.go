package press

import (
	"cmp"
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// BossShape says what surrounds the bore.
type BossShape uint8

// The shapes, in the order of BossShapes.
const (
	ClosedBoss BossShape = iota // one piece of metal all round
	SplitBoss                   // a cap bolted on, or a slot: the ring is open
)

// BossShapes lists the words for BossShape.
func BossShapes() []string { return []string{"closed", "split"} }

const (
	leastWallOfBore = 0.1  // thinnest wall over bore
	leastWallEven   = 0.25 // thinnest wall over the smaller of thickest wall and bore
)

// BossInput describes the metal round a bore.
type BossInput struct {
	Bore         float64 // m
	LeastWall    float64 // where the metal is thinnest, m
	GreatestWall float64 // where it is thickest, m
	Shape        BossShape
}

// BossResult gives the round hubs between which an uneven boss lies.
type BossResult struct {
	In    BossInput
	Least float64 // outside diameter of the ring as thin as the thinnest place, m
	Most  float64 // outside diameter of the ring as thick as the thickest place, m
}

var wallRange = trade.Between("wall round the bore", 0.01*inch, 100*inch, units.Length, "")

// Boss returns the two round hubs between which an uneven boss lies: use the
// least for what the fit holds and for stress, the most for the press's size.
//
//	least = D + 2·tmin;  most = D + 2·tmax
//
// D bore, t wall round it, least and most outside diameters: m.
//
// Valid for D 0.1 to 80 in, walls 0.01 to 100 in; otherwise an error. Also
// errors, because a ring
// formula would promise a grip that is not there: a split boss; a thinnest
// wall under a tenth of the bore; a thinnest wall under a quarter of both the
// bore and the thickest. Source: common practice, no source.
func Boss(in BossInput) (BossResult, error) {
	if err := cmp.Or(diameterRange.Check(in.Bore), wallRange.Check(in.LeastWall), wallRange.Check(in.GreatestWall)); err != nil {
		return BossResult{}, err
	}
	switch {
	case in.Shape > SplitBoss:
		return BossResult{}, errors.New("the boss is neither closed nor split")
	case in.Shape == SplitBoss:
		return BossResult{}, errors.New("the boss is split: an open ring cannot be stretched, its bolts decide the grip; measure the crush instead")
	case in.LeastWall > in.GreatestWall:
		return BossResult{}, errors.New("the least wall is larger than the greatest; check which is which")
	case in.LeastWall < leastWallOfBore*in.Bore:
		return BossResult{}, errors.New("the ear is thinner than a tenth of the bore: it stretches and bends like a strap, and no ring formula says how hard it grips")
	case in.LeastWall < leastWallEven*min(in.GreatestWall, in.Bore):
		return BossResult{}, errors.New("the wall at its thinnest is under a quarter of the bore, and of its thickest: all the stretch gathers in the thin place, and no ring formula says how hard it grips")
	}
	return BossResult{In: in, Least: in.Bore + 2*in.LeastWall, Most: in.Bore + 2*in.GreatestWall}, nil
}

// Steps gives the worked lines of the equivalent hubs.
func (r BossResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "hub as thin as the thinnest place", Formula: "D + 2·tmin", Kind: units.Length, Value: r.Least, Unit: "inch"},
		{Name: "hub as thick as the thickest place", Formula: "D + 2·tmax", Kind: units.Length, Value: r.Most, Unit: "inch"},
	}
}
