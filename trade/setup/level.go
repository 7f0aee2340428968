package setup

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Point is a place on the table seen from above, m.
type Point struct{ X, Y float64 }

// flat is how slim a triangle of supports may be: twice its area over the
// square of its longest side. Common practice, no source.
const flat = 0.05

// triangle refuses three supports that do not make one.
func triangle(p [3]Point) error {
	for _, q := range p {
		if err := cmp.Or(placeRange.Check(q.X), placeRange.Check(q.Y)); err != nil {
			return err
		}
	}
	a := Point{p[1].X - p[0].X, p[1].Y - p[0].Y}
	b := Point{p[2].X - p[0].X, p[2].Y - p[0].Y}
	longest := max(a.X*a.X+a.Y*a.Y, b.X*b.X+b.Y*b.Y, math.Pow(b.X-a.X, 2)+math.Pow(b.Y-a.Y, 2))
	if !(math.Abs(a.X*b.Y-a.Y*b.X) > flat*longest) {
		return errors.New("the three supports stand nearly in one line: the part would rock")
	}
	return nil
}

// raises gives how much to raise each support so that all come to the highest.
func raises(height [3]float64) (r [3]float64) {
	top := max(height[0], height[1], height[2])
	for i, h := range height {
		r[i] = top - h
	}
	return r
}

// LevelInput is three jacks and the heights read over them.
type LevelInput struct {
	Jacks   [3]Point
	Heights [3]float64 // high positive, m
}

// LevelResult is how to bring them level.
type LevelResult struct {
	In     LevelInput
	SlopeX float64    // rise along x, 1
	SlopeY float64    // rise along y, 1
	Tilt   float64    // of the plane, rad
	Raise  [3]float64 // m
}

// LevelThree returns how much to raise each of three jacks to bring the part
// level at the height of the highest.
//
//	plane z = a·x + b·y + c through the three; raise = highest - z; tilt = atan(√(a²+b²))
//
// x, y places, z heights, raises: m; a, b slopes: 1; tilt: rad.
//
// Valid for readings -1 to 1 in, places within 1000 in, jacks that are not
// nearly in one line (common practice, no source); otherwise an error.
// Source: geometry.
func LevelThree(in LevelInput) (LevelResult, error) {
	if err := cmp.Or(triangle(in.Jacks), readingRange.Check(in.Heights[0]), readingRange.Check(in.Heights[1]), readingRange.Check(in.Heights[2])); err != nil {
		return LevelResult{}, err
	}
	r := LevelResult{In: in, Raise: raises(in.Heights)}
	p, z := in.Jacks, in.Heights
	ax, ay, az := p[1].X-p[0].X, p[1].Y-p[0].Y, z[1]-z[0]
	bx, by, bz := p[2].X-p[0].X, p[2].Y-p[0].Y, z[2]-z[0]
	det := ax*by - ay*bx
	r.SlopeX = (az*by - ay*bz) / det
	r.SlopeY = (ax*bz - az*bx) / det
	r.Tilt = math.Atan(math.Hypot(r.SlopeX, r.SlopeY))
	return r, nil
}

// Steps gives the worked lines of the levelling.
func (r LevelResult) Steps() []trade.Step {
	return append([]trade.Step{
		{Name: "slope along x", Formula: "a of z = ax + by + c", Kind: units.Number, Value: r.SlopeX},
		{Name: "slope along y", Formula: "b of z = ax + by + c", Kind: units.Number, Value: r.SlopeY},
		{Name: "tilt", Formula: "atan(√(a²+b²))", Kind: units.Angle, Value: r.Tilt, Unit: "thou_per_ft"},
	}, raiseSteps(r.Raise)...)
}

func raiseSteps(raise [3]float64) []trade.Step {
	return []trade.Step{
		{Name: "raise support 1 by", Formula: "highest - z1", Kind: units.Length, Value: raise[0], Unit: "thou"},
		{Name: "raise support 2 by", Formula: "highest - z2", Kind: units.Length, Value: raise[1], Unit: "thou"},
		{Name: "raise support 3 by", Formula: "highest - z3", Kind: units.Length, Value: raise[2], Unit: "thou"},
	}
}

// BoresInput is a part on three supports, indicated along two bores. x runs
// along the bores from the near station, y across from bore 1 to bore 2.
type BoresInput struct {
	Near1, Far1 float64 // readings along bore 1, high positive, m
	Near2, Far2 float64 // readings along bore 2, m
	Span        float64 // between near and far station, m
	Between     float64 // from bore 1 to bore 2, m
	Supports    [3]Point
}

// BoresResult is how to set the supports.
type BoresResult struct {
	In       BoresInput
	Along    float64    // tilt along the bores, the mean of both, rad
	Across   float64    // tilt across, rad
	Disagree float64    // by how much the two bores' tilts differ over the span, m
	Raise    [3]float64 // m
}

// SupportsFromBores returns how much to raise each of three supports so that
// two bores, indicated near and far, come level along and across.
//
//	along = ((f1-n1)+(f2-n2))/(2·span); across = ((n2-n1)+(f2-f1))/(2·between)
//	z = along·x + across·y at each support; raise = highest - z
//	disagree = (f1-n1) - (f2-n2)
//
// Readings n near and f far of bores 1 and 2, distances, places, raises: m.
//
// What the two bores disagree by cannot be levelled out: the bores are not
// parallel, or a reading is wrong. Readings must be on a surface that was not
// worn or welded, and both bores meant to be at one height.
//
// Valid for readings -1 to 1 in, distances 0.1 to 1000 in, supports not nearly
// in one line (common practice, no source); otherwise an error.
// Source: least-squares plane through four readings; geometry.
func SupportsFromBores(in BoresInput) (BoresResult, error) {
	if err := cmp.Or(
		readingRange.Check(in.Near1), readingRange.Check(in.Far1), readingRange.Check(in.Near2), readingRange.Check(in.Far2),
		distanceRange.Check(in.Span), distanceRange.Check(in.Between), triangle(in.Supports),
	); err != nil {
		return BoresResult{}, err
	}
	one, two := in.Far1-in.Near1, in.Far2-in.Near2
	along := (one + two) / 2 / in.Span
	across := (in.Near2 - in.Near1 + in.Far2 - in.Far1) / 2 / in.Between
	var z [3]float64
	for i, s := range in.Supports {
		z[i] = along*s.X + across*s.Y
	}
	return BoresResult{In: in, Along: math.Atan(along), Across: math.Atan(across), Disagree: one - two, Raise: raises(z)}, nil
}

// Steps gives the worked lines of the supports.
func (r BoresResult) Steps() []trade.Step {
	return append([]trade.Step{
		{Name: "tilt along the bores", Formula: "((f1-n1)+(f2-n2))/(2·span)", Kind: units.Angle, Value: r.Along, Unit: "thou_per_ft"},
		{Name: "tilt across the bores", Formula: "((n2-n1)+(f2-f1))/(2·between)", Kind: units.Angle, Value: r.Across, Unit: "thou_per_ft"},
		{Name: "the bores disagree over the span by", Formula: "(f1-n1)-(f2-n2)", Kind: units.Length, Value: r.Disagree, Unit: "thou"},
	}, raiseSteps(r.Raise)...)
}
