package bore

import (
	"errors"
	"math"
)

// Circle is a least squares circle through readings.
type Circle struct {
	Centre XY            // m
	R      float64       // radius, m
	UX, UY float64       // standard uncertainties of the centre, m
	UR     float64       // standard uncertainty of the radius, m
	Cov    [3][3]float64 // covariance of centre x, y and radius, m²
	Sigma  float64       // standard deviation of a reading about the circle, m
	SumSq  float64       // sum of the squared residuals, m²
	DoF    int           // readings less three
	Off    []float64     // each reading's distance outside the circle, m
}

// Diameter is 2R, m.
func (c *Circle) Diameter() float64 { return 2 * c.R }

// UDiameter is the standard uncertainty of the diameter, m.
func (c *Circle) UDiameter() float64 { return 2 * c.UR }

// LSCI is the roundness deviation about the least squares circle, m: greatest
// less least distance from its centre (ISO 12181-1, RONt with LSCI).
func (c *Circle) LSCI() float64 {
	low, high := c.Off[0], c.Off[0]
	for _, off := range c.Off {
		low, high = min(low, off), max(high, off)
	}
	return high - low
}

// farthest is the greatest distance of a reading from the circle, m.
func (c *Circle) farthest() float64 {
	most := 0.0
	for _, off := range c.Off {
		most = max(most, math.Abs(off))
	}
	return most
}

func (c *Circle) cov() cov2 { return cov2{c.Cov[0][0], c.Cov[0][1], c.Cov[1][1]} }

var (
	errFewPoints = errors.New("a circle goes through any three points: take at least four readings round the bore, better eight or more")
	errNoCircle  = errors.New("the readings do not make a circle: they lie on a line, or on too short an arc")
)

// FitCircle returns the least squares circle through points, with covariance.
//
//	min Σ (|p − c| − R)²;  cov = (JᵀJ)⁻¹·JᵀVJ·(JᵀJ)⁻¹
//
// points in m; u the standard uncertainty of each point along the radius, m: nil
// when not known. V is diagonal and holds for each reading the greater of its
// u² and of the variance s² = Σ/(n − 3) of the readings about the circle, so a
// form error counts as if it were noise, on the safe side. Taubin's algebraic
// circle is the start; a damped Gauss-Newton finds the basin and plain Newton
// finishes, because the sum of squares itself is blind below 1e-8 of the size.
//
// Error: fewer than four points, unequal lengths, points on a line, u out of
// range. Source: N. Chernov, Circular and Linear Regression (2010), ch. 4, 5, 7;
// G. Taubin, IEEE Trans. PAMI 13 (1991) 1115; covariance as JCGM 102.
func FitCircle(points []XY, u []float64) (Circle, error) {
	if len(points) < 4 {
		return Circle{}, errFewPoints
	}
	if u != nil && len(u) != len(points) {
		return Circle{}, errors.New("give one uncertainty for each point, or none")
	}
	for i, p := range points {
		if bad(p.X) || bad(p.Y) {
			return Circle{}, errors.New("a point is not a number")
		}
		if u == nil {
			continue
		}
		if bad(u[i]) || u[i] < 0 {
			return Circle{}, errors.New("an uncertainty is less than nothing or not a number")
		}
	}
	f := fitter{buf: make([]float64, 4*len(points))}
	c, err := f.fit(points)
	if err != nil {
		return Circle{}, err
	}
	c.Off = make([]float64, len(points))
	for i, p := range points {
		c.Off[i] = p.Sub(c.Centre).Len() - c.R
	}
	return c, c.spread(points, u)
}

func bad(x float64) bool { return math.IsNaN(x) || math.IsInf(x, 0) }

// spread fills in the sum of squares and the covariance.
func (c *Circle) spread(points []XY, u []float64) error {
	c.DoF = len(points) - 3
	c.SumSq = 0
	for _, off := range c.Off {
		c.SumSq += off * off
	}
	c.Sigma = math.Sqrt(c.SumSq / float64(c.DoF))
	var jtj, jvj [3][3]float64
	for i, p := range points {
		d := p.Sub(c.Centre)
		n := d.Len()
		row := [3]float64{d.X / n, d.Y / n, 1}
		v := c.Sigma * c.Sigma
		if u != nil {
			v = max(v, u[i]*u[i])
		}
		for a := range 3 {
			for b := range 3 {
				jtj[a][b] += row[a] * row[b]
				jvj[a][b] += row[a] * row[b] * v
			}
		}
	}
	inv, ok := inverse3(jtj)
	if !ok {
		return errNoCircle
	}
	c.Cov = sandwich(inv, jvj)
	c.UX, c.UY, c.UR = math.Sqrt(c.Cov[0][0]), math.Sqrt(c.Cov[1][1]), math.Sqrt(c.Cov[2][2])
	return nil
}

func sandwich(a, m [3][3]float64) (out [3][3]float64) {
	for i := range 3 {
		for j := range 3 {
			for k := range 3 {
				for l := range 3 {
					out[i][j] += a[i][k] * m[k][l] * a[l][j]
				}
			}
		}
	}
	return out
}
