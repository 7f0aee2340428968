package lift

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// FourLegs is a stiff part with four lifting points at the corners of a level
// rectangle and the hook straight above the centre of gravity.
type FourLegs struct {
	Weight       float64 // kg, 0.1 to 500 000
	Length       float64 // between lifting points along the part, m
	Width        float64 // between lifting points across the part, m
	Height       float64 // hook above the plane of the lifting points, m
	CentreAlong  float64 // centre of gravity from one end's lifting points, m, above 0 and below Length
	CentreAcross float64 // centre of gravity from one side's lifting points, m, above 0 and below Width
}

// FourLegsResult is the worst that any leg of a four-leg sling can carry.
type FourLegsResult struct {
	In       FourLegs
	Vertical float64 // largest share of the weight that one corner can carry, kg
	Load     float64 // largest leg load, kg
	Angle    float64 // flattest leg from the horizontal, rad
	Shortest float64 // shortest leg that keeps the part level, m
	Longest  float64 // longest leg that keeps it level, m
}

// LoadFourLegs bounds the leg loads of a stiff part on four legs. Equilibrium
// leaves one number open: a diagonal pair can take load from the other pair
// until a leg of it goes slack. The bound lets it: corner load at most
// Vi + min of the two Vj of the other diagonal, V being the even (bilinear)
// share. With the centre of gravity in the middle that is half the weight on
// each of two legs, the rule of counting two.
//
// A centre of gravity on or outside the rectangle, a leg under 30 degrees from
// the horizontal, or anything out of range is an error. The lengths given are
// those that keep the part level. Sources: statics; counting two, NAVEDTRA
// 14080 p. 3-24 and 14081 p. 13-28.
func LoadFourLegs(in FourLegs) (FourLegsResult, error) {
	err := cmp.Or(loadRange.CheckAs("weight", in.Weight), lengthRange.CheckAs("length between lifting points", in.Length),
		lengthRange.CheckAs("width between lifting points", in.Width), lengthRange.CheckAs("height of the hook", in.Height),
		lengthRange.CheckAs("centre of gravity along the part", in.CentreAlong),
		lengthRange.CheckAs("centre of gravity across the part", in.CentreAcross))
	if err != nil {
		return FourLegsResult{}, err
	}
	if in.CentreAlong >= in.Length || in.CentreAcross >= in.Width {
		return FourLegsResult{}, errBeyondCentre
	}
	u, v := in.CentreAlong/in.Length, in.CentreAcross/in.Width
	even := [4]float64{(1 - u) * (1 - v), u * (1 - v), u * v, (1 - u) * v}
	r := FourLegsResult{In: in, Shortest: math.Inf(1)}
	for i, share := range even {
		most := in.Weight * (share + min(even[(i+1)%4], even[(i+3)%4]))
		length := in.legLength(i)
		r.Vertical = max(r.Vertical, most)
		r.Load = max(r.Load, most*length/in.Height)
		r.Shortest, r.Longest = min(r.Shortest, length), max(r.Longest, length)
	}
	r.Angle = math.Asin(in.Height / r.Longest)
	return r, legAngleRange.CheckAs("flattest leg's angle from the horizontal", r.Angle)
}

// legLength is the length of leg i, counted round the rectangle from the corner
// that the centre of gravity is measured from.
func (in FourLegs) legLength(i int) float64 {
	x, y := in.CentreAlong, in.CentreAcross
	if i == 1 || i == 2 {
		x = in.Length - x
	}
	if i >= 2 {
		y = in.Width - y
	}
	return math.Sqrt(x*x + y*y + in.Height*in.Height)
}

// Steps gives the lines of the work.
func (r FourLegsResult) Steps() []trade.Step {
	return []trade.Step{
		loadStep("most that one corner can carry", "Vi + min(Vj, Vk) of the other diagonal", r.Vertical),
		angleStep("flattest leg from the horizontal", "sin a = height/longest leg", r.Angle),
		loadStep("largest leg load", "T = V·leg/height", r.Load),
		{Name: "shortest leg", Formula: "√(x² + y² + height²)", Kind: units.Length, Value: r.Shortest, Unit: "inch"},
		{Name: "longest leg", Formula: "√(x² + y² + height²)", Kind: units.Length, Value: r.Longest, Unit: "inch"},
	}
}
