package bore

import (
	"fmt"
	"math"
)

// TaperingLune is an old bore, maybe conical and crooked, and a straight new
// bore through it. Between the faces radius and centre change in proportion.
type TaperingLune struct {
	WornNear, WornFar float64 // old diameter at each face, m, 5 mm to 3 m
	Near, Far         XY      // old centre at each face from the new axis, m, up to 1.5 m
	Finish            float64 // new diameter, m, 5 mm to 3 m
	Length            float64 // m, 1 mm to 10 m
}

// Volume is a volume with a bound on the error of its quadrature.
type Volume struct {
	Volume float64 // m³
	Error  float64 // m³
}

// LuneVolume returns the volume of metal, m³, that the new bore takes out, and
// how far the quadrature may be off: less than 1e-6 of it and 1e-12 of the new
// bore's whole volume together, or it is an error.
//
//	V = ∫ (π·R² − lens(R, r(z), |e(z)|)) dz
//
// r and e linear in z. The integral is broken where the lune opens or closes,
// |R − r| = |e|, and adapted by halves in between. Ranges as in TaperingLune.
// Error: a *trade.RangeError, or a sentence if the quadrature does not settle.
// Source: plane geometry; rule of Gauss and Kronrod, 7 and 15 points (QUADPACK,
// Piessens et al. 1983).
func LuneVolume(in TaperingLune) (Volume, error) {
	for _, worn := range [...]float64{in.WornNear, in.WornFar} {
		if err := checkThree(worn, in.Finish, max(in.Near.Len(), in.Far.Len())); err != nil {
			return Volume{}, err
		}
	}
	if err := limLength.Check(in.Length); err != nil {
		return Volume{}, err
	}
	v := in.integrate()
	if whole := math.Pi / 4 * in.Finish * in.Finish * in.Length; v.Error > 1e-6*v.Volume+1e-12*whole {
		return Volume{}, fmt.Errorf("the volume of the lune does not settle: %.3g m³ give or take %.1g m³", v.Volume, v.Error)
	}
	return v, nil
}

// area is the cross-section of the metal removed at a share t of the length.
func (in *TaperingLune) area(t float64) float64 {
	e := in.Near.Add(in.Far.Sub(in.Near).Times(t))
	return lune((in.WornNear+t*(in.WornFar-in.WornNear))/2, in.Finish/2, e.Len())
}

func (in *TaperingLune) integrate() Volume {
	breaks := in.breaks()
	scale := math.Pi * in.Finish * in.Finish / 4
	var sum Volume
	for i := 1; i < breaks.n; i++ {
		p := stretch{in, breaks.at[i-1], breaks.at[i]}
		if p.hi <= p.lo {
			continue
		}
		part := p.adapt(0, 1, 1e-12*scale, 12)
		sum.Volume += part.Volume
		sum.Error += part.Error
	}
	// Rounding: each area is the difference of two of the size of scale.
	sum.Error += 4e-16 * scale
	return Volume{sum.Volume * in.Length, sum.Error * in.Length}
}

// stretch is the part of a lune between two breaks.
type stretch struct {
	in     *TaperingLune
	lo, hi float64
}

// at is the integrand at s from 0 to 1. Near a break the area goes as the 3/2
// power of the distance from it; the substitution turns that into a cube, which
// the rule takes almost exactly.
func (p *stretch) at(s float64) float64 {
	return p.in.area(p.lo+(p.hi-p.lo)*s*s*(3-2*s)) * 6 * s * (1 - s) * (p.hi - p.lo)
}

// cuts is a short list of places, in rising order.
type cuts struct {
	at [8]float64
	n  int
}

// add puts a place in, if it is strictly between 0 and 1.
func (c *cuts) add(t float64) {
	if !(t > 0 && t < 1) {
		return
	}
	i := c.n
	for ; i > 0 && c.at[i-1] > t; i-- {
		c.at[i] = c.at[i-1]
	}
	c.at[i] = t
	c.n++
}

// breaks lists 0, 1 and the shares of the length between them at which the
// circles touch: |e(t)|² = (R − r(t))² and |e(t)|² = (R + r(t))².
func (in *TaperingLune) breaks() cuts {
	c := cuts{n: 1}
	d := in.Far.Sub(in.Near)
	slope := (in.WornFar - in.WornNear) / 2
	for _, sign := range [...]float64{-1, 1} {
		gap := in.Finish/2 + sign*in.WornNear/2
		gapSlope := sign * slope
		c.roots(d.X*d.X+d.Y*d.Y-gapSlope*gapSlope,
			2*(in.Near.X*d.X+in.Near.Y*d.Y-gap*gapSlope),
			in.Near.X*in.Near.X+in.Near.Y*in.Near.Y-gap*gap)
	}
	c.at[c.n] = 1
	c.n++
	return c
}

// roots adds the real roots of a·t² + b·t + c, and its turning point: circles
// that all but touch bend the area nearly as sharply, and rounding can hide a
// double root.
func (l *cuts) roots(a, b, c float64) {
	if a == 0 && b == 0 {
		return
	}
	if a != 0 {
		l.add(-b / (2 * a))
	}
	disc := b*b - 4*a*c
	if disc < 0 {
		return
	}
	q := -(b + math.Copysign(math.Sqrt(disc), b)) / 2
	if a != 0 {
		l.add(q / a)
	}
	if q != 0 {
		l.add(c / q)
	}
}
