package bore

import (
	"errors"
	"math"
)

// Line is an axis along the bore: x = X0 + MX·z, y = Y0 + MY·z, in m. The zero
// Line is the bar.
type Line struct{ X0, Y0, MX, MY float64 }

// At is where the line passes at depth z.
func (l Line) At(z float64) XY { return XY{l.X0 + l.MX*z, l.Y0 + l.MY*z} }

// LineThrough is the line through the centre near at z = 0 and far at depth
// length, m (more than 0).
func LineThrough(near, far XY, length float64) Line {
	return Line{near.X, near.Y, (far.X - near.X) / length, (far.Y - near.Y) / length}
}

// Centre is the centre of one section.
type Centre struct {
	XY
	Z   float64 // m
	cov cov2
}

// CentreAt makes a Centre whose standard uncertainty is u, m, in each direction.
func CentreAt(p XY, z, u float64) Centre { return Centre{XY: p, Z: z, cov: cov2{u * u, 0, u * u}} }

// Axis is the least squares line through the centres of the stations.
type Axis struct {
	Line
	Bow     float64 // greatest distance of a centre from the line, m
	BowZ    float64 // at this depth, m
	UBow    float64 // standard uncertainty of that centre towards there, m
	Widened float64 // factor on the uncertainties because the centres scatter more than they should; 1 or more

	centres []Centre
	uDatum  float64
	mid, zz float64 // mean depth; Σ(z − mid)²
}

// Offset is how far an axis is from the datum at one depth, and towards where.
type Offset struct {
	XY
	Size        float64 // m
	Clock       float64 // rad
	U           float64 // standard uncertainty in that direction, m
	Significant bool    // Size is more than Coverage·U
}

// Tilt is how an axis leans against the datum.
type Tilt struct {
	Slope       float64 // offset gained per depth, m/m
	Angle       float64 // rad
	Clock       float64 // the way it moves going in, rad
	U           float64 // standard uncertainty of Slope (and, small as it is, of Angle), m/m
	Significant bool
}

// ThouPerFoot is the slope in thousandths of an inch per foot.
func (t Tilt) ThouPerFoot() float64 { return t.Slope * 12000 }

// Degrees is the angle in degrees.
func (t Tilt) Degrees() float64 { return t.Angle * 180 / math.Pi }

var errShortSpan = errors.New("the stations are less than 2 mm apart: measure near both faces to see a tilt")

// FitAxis returns the least squares line of x on z and of y on z through the
// centres.
//
//	m = Σ(zᵢ − z̄)·xᵢ / Σ(zᵢ − z̄)²,  x₀ = x̄ − m·z̄
//
// centres in m, two or more, spread over 2 mm or more; uDatum the standard
// uncertainty of the datum itself, m. The uncertainty is carried over from each
// centre's covariance and widened by √(χ²/ν), if more than 1, where three or
// more centres do not lie on a line as well as they should (Birge's ratio).
// Errors: fewer than two centres, too short a span. Source: ordinary least
// squares; propagation as JCGM 100, 5.2 (correlated outputs, JCGM 102).
func FitAxis(centres []Centre, uDatum float64) (*Axis, error) {
	if len(centres) < 2 {
		return nil, errors.New("an axis needs the centres of two stations at least")
	}
	a := &Axis{centres: centres, uDatum: uDatum, Widened: 1}
	n := float64(len(centres))
	low, high := math.Inf(1), math.Inf(-1)
	for _, c := range centres {
		a.mid += c.Z / n
		low, high = min(low, c.Z), max(high, c.Z)
	}
	if !(high-low >= 2*mm) {
		return nil, errShortSpan
	}
	var mean XY
	for _, c := range centres {
		dz := c.Z - a.mid
		a.zz += dz * dz
		a.MX += dz * c.X
		a.MY += dz * c.Y
		mean = mean.Add(c.XY.Times(1 / n))
	}
	a.MX /= a.zz
	a.MY /= a.zz
	a.X0, a.Y0 = mean.X-a.MX*a.mid, mean.Y-a.MY*a.mid
	a.bow()
	return a, nil
}

// bow finds the centre farthest from the line and widens the uncertainties.
func (a *Axis) bow() {
	chi := 0.0
	known := true
	for _, c := range a.centres {
		d := c.XY.Sub(a.At(c.Z))
		if d.Len() > a.Bow {
			a.Bow, a.BowZ, a.UBow = d.Len(), c.Z, c.cov.along(d)
		}
		w, ok := c.cov.solve(d)
		known = known && ok
		chi += d.X*w.X + d.Y*w.Y
	}
	if dof := 2*len(a.centres) - 4; dof > 0 && known {
		a.Widened = max(1, math.Sqrt(chi/float64(dof)))
	}
}

// Offset is where the axis is at depth z, with its uncertainty.
func (a *Axis) Offset(z float64) Offset {
	p := a.At(z)
	c := a.covAt(z).plusRound(a.uDatum)
	o := Offset{XY: p, Size: p.Len(), Clock: p.Clock(), U: c.along(p)}
	o.Significant = o.Size > Coverage*o.U
	return o
}

// covAt is the covariance of the line's place at z.
func (a *Axis) covAt(z float64) cov2 {
	return a.carry(func(zi float64) float64 {
		return 1/float64(len(a.centres)) + (z-a.mid)*(zi-a.mid)/a.zz
	})
}

func (a *Axis) carry(weight func(z float64) float64) cov2 {
	var sum cov2
	for _, c := range a.centres {
		w := weight(c.Z)
		sum = sum.plus(c.cov.times(w * w))
	}
	return sum.times(a.Widened * a.Widened)
}

// Tilt is the lean of the axis, with its uncertainty.
func (a *Axis) Tilt() Tilt {
	m := XY{a.MX, a.MY}
	c := a.carry(func(zi float64) float64 { return (zi - a.mid) / a.zz })
	t := Tilt{Slope: m.Len(), Angle: math.Atan(m.Len()), Clock: m.Clock(), U: c.along(m)}
	t.Significant = t.Slope > Coverage*t.U
	return t
}
