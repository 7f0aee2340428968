package bore

import (
	"errors"
	"math"
)

// Point3 is a point of the wall, m.
type Point3 struct {
	XY
	Z float64
}

// Cylinder is the least squares cylinder through all readings.
type Cylinder struct {
	Line         // its axis
	R    float64 // radius, m
	UR   float64 // standard uncertainty of R from the scatter, m
	// Sigma is the standard deviation of a reading about the cylinder, SumSq the
	// sum of the squared distances, Width greatest less least distance from the
	// axis (cylindricity about the least squares cylinder, radial), in m and m².
	Sigma, SumSq, Width float64
}

// FitCylinder returns the least squares cylinder: straight, of one diameter.
//
//	min Σ (|(p − p₀) × a| − R)²,  a = (mₓ, m_y, 1)/√(1 + mₓ² + m_y²)
//
// points in m; the axis must cross the planes z = constant (a bore does). Needs
// six points or more in two planes or more. Gauss-Newton from the mean centre;
// error if it does not settle. Source: C. M. Shakarji, J. Res. NIST 103 (1998)
// 633-641.
func FitCylinder(points []Point3) (*Cylinder, error) {
	if len(points) < 6 {
		return nil, errors.New("a cylinder needs six readings at least")
	}
	mid, size, ok := frame(points)
	if !ok {
		return nil, errNoCylinder
	}
	// p: x, y at the middle, the slopes and the radius, in units of size.
	p := [5]float64{0, 0, 0, 0, 1}
	var inv float64
	last := math.Inf(1)
	for range 100 {
		step, u, ok := cylinderStep(points, mid, size, &p)
		if !ok {
			return nil, errNoCylinder
		}
		norm := 0.0
		for i := range p {
			p[i] += step[i]
			norm = max(norm, math.Abs(step[i]))
		}
		inv = u
		if norm < 1e-15 || (norm < 1e-11 && norm >= last) {
			return finishCylinder(points, mid, size, &p, inv), nil
		}
		if math.Abs(p[2])+math.Abs(p[3]) > 1 {
			return nil, errNoCylinder
		}
		last = norm
	}
	return nil, errNoCylinder
}

var errNoCylinder = errors.New("the readings do not make a cylinder: read all round at two depths or more")

// frame gives the middle of the points and their size.
func frame(points []Point3) (mid Point3, size float64, ok bool) {
	n := float64(len(points))
	for _, q := range points {
		mid.XY = mid.XY.Add(q.XY.Times(1 / n))
		mid.Z += q.Z / n
	}
	spread := 0.0
	for _, q := range points {
		d := q.XY.Sub(mid.XY)
		size += (d.X*d.X + d.Y*d.Y) / n
		spread = max(spread, math.Abs(q.Z-mid.Z))
	}
	size = math.Sqrt(size)
	return mid, size, size > 0 && spread > 0
}

// radial gives the distance of q from the axis p, and the derivatives of
// distance − radius.
func radial(q Point3, mid Point3, size float64, p *[5]float64) (d float64, j [5]float64) {
	long := math.Sqrt(1 + p[2]*p[2] + p[3]*p[3])
	a := [3]float64{p[2] / long, p[3] / long, 1 / long}
	v := [3]float64{(q.X-mid.X)/size - p[0], (q.Y-mid.Y)/size - p[1], (q.Z - mid.Z) / size}
	along := v[0]*a[0] + v[1]*a[1] + v[2]*a[2]
	x, y, z := v[0]-along*a[0], v[1]-along*a[1], v[2]-along*a[2]
	d = math.Sqrt(x*x + y*y + z*z)
	j = [5]float64{-x / d, -y / d, -along * x / (d * long), -along * y / (d * long), -1}
	return d, j
}

// cylinderStep is one step of Gauss and Newton, and the radius's share of the
// inverse normal matrix.
func cylinderStep(points []Point3, mid Point3, size float64, p *[5]float64) (step [5]float64, inv float64, ok bool) {
	var m [25]float64
	for _, q := range points {
		d, j := radial(q, mid, size, p)
		if !(d > 0) {
			return step, 0, false
		}
		e := d - p[4]
		for a := range 5 {
			step[a] -= j[a] * e
			for b := range 5 {
				m[5*a+b] += j[a] * j[b]
			}
		}
	}
	if !cholesky(m[:], 5) {
		return step, 0, false
	}
	back(m[:], 5, step[:])
	unit := [5]float64{4: 1}
	back(m[:], 5, unit[:])
	return step, unit[4], true
}

func finishCylinder(points []Point3, mid Point3, size float64, p *[5]float64, inv float64) *Cylinder {
	c := &Cylinder{R: p[4] * size}
	c.MX, c.MY = p[2], p[3]
	c.X0 = mid.X + p[0]*size - c.MX*mid.Z
	c.Y0 = mid.Y + p[1]*size - c.MY*mid.Z
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range points {
		d, _ := radial(q, mid, size, p)
		e := (d - p[4]) * size
		c.SumSq += e * e
		low, high = min(low, e), max(high, e)
	}
	c.Width = high - low
	if dof := len(points) - 5; dof > 0 {
		c.Sigma = math.Sqrt(c.SumSq / float64(dof))
	}
	c.UR = c.Sigma * math.Sqrt(inv)
	return c
}
