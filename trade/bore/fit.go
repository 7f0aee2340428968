package bore

import "math"

// fitter holds the scratch space of circle fits, so that a search for outliers
// can fit many times without allocating. buf holds 4 numbers a point.
type fitter struct{ buf []float64 }

// fit finds centre and radius.
func (f *fitter) fit(points []XY) (Circle, error) {
	n := float64(len(points))
	var mid XY
	for _, p := range points {
		mid = mid.Add(p)
	}
	mid = mid.Times(1 / n)
	size := 0.0
	for _, p := range points {
		d := p.Sub(mid)
		size += d.X*d.X + d.Y*d.Y
	}
	size = math.Sqrt(size / n)
	if size == 0 {
		return Circle{}, errNoCircle
	}
	q := f.scaled(points, mid, size)
	start, r, ok := f.taubin(q)
	if !ok {
		return Circle{}, errNoCircle
	}
	best, sum := descend(q, start)
	if r > 5 {
		// A flat arc: the algebraic circle may lie on the wrong side of it.
		other, otherSum := descend(q, start.Times(-1))
		if otherSum < sum {
			best = other
		}
	}
	best, ok = polish(q, best)
	if !ok || best.Len() > 1e5 {
		return Circle{}, errNoCircle
	}
	return Circle{Centre: mid.Add(best.Times(size)), R: meanDistance(q, best) * size}, nil
}

// scaled moves the points' mean to the origin and their spread to 1. The points
// are kept as pairs at the front of buf.
func (f *fitter) scaled(points []XY, mid XY, size float64) []float64 {
	q := f.buf[:2*len(points)]
	for i, p := range points {
		q[2*i], q[2*i+1] = (p.X-mid.X)/size, (p.Y-mid.Y)/size
	}
	return q
}

// taubin is Taubin's algebraic circle: the smallest singular vector of the
// columns (z − z̄)/2√z̄, x, y with z = x² + y², by one-sided Jacobi rotations,
// which lose no digits.
func (f *fitter) taubin(q []float64) (XY, float64, bool) {
	n := len(q) / 2
	var zMean float64
	for i := range n {
		zMean += q[2*i]*q[2*i] + q[2*i+1]*q[2*i+1]
	}
	zMean /= float64(n)
	var m [3][]float64
	m[0] = f.buf[2*n : 3*n]
	m[1] = f.buf[3*n : 4*n]
	m[2] = make([]float64, n)
	for i := range n {
		x, y := q[2*i], q[2*i+1]
		m[0][i], m[1][i], m[2][i] = (x*x+y*y-zMean)/(2*math.Sqrt(zMean)), x, y
	}
	v := smallestSingular(&m)
	a := v[0] / (2 * math.Sqrt(zMean))
	if math.Abs(a) < 1e-9 {
		return XY{}, 0, false
	}
	disc := v[1]*v[1] + v[2]*v[2] + 4*a*a*zMean
	return XY{-v[1] / (2 * a), -v[2] / (2 * a)}, math.Sqrt(disc) / (2 * math.Abs(a)), true
}

// smallestSingular rotates the columns until they are orthogonal and returns
// the right singular vector of the shortest.
func smallestSingular(m *[3][]float64) [3]float64 {
	v := [3][3]float64{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}} // v[j] belongs to column j
	for range 30 {
		turned := false
		for p := range 2 {
			for q := p + 1; q < 3; q++ {
				turned = rotate(m[p], m[q], &v[p], &v[q]) || turned
			}
		}
		if !turned {
			break
		}
	}
	least, at := math.Inf(1), 0
	for j := range 3 {
		if s := dot(m[j], m[j]); s < least {
			least, at = s, j
		}
	}
	return v[at]
}

func dot(a, b []float64) (s float64) {
	for i := range a {
		s += a[i] * b[i]
	}
	return s
}

// rotate makes columns a and b orthogonal; false if they were.
func rotate(a, b []float64, va, vb *[3]float64) bool {
	aa, bb, ab := dot(a, a), dot(b, b), dot(a, b)
	if math.Abs(ab) <= 1e-16*math.Sqrt(aa*bb) {
		return false
	}
	zeta := (bb - aa) / (2 * ab)
	t := math.Copysign(1, zeta) / (math.Abs(zeta) + math.Sqrt(1+zeta*zeta))
	c := 1 / math.Sqrt(1+t*t)
	s := c * t
	for i := range a {
		a[i], b[i] = c*a[i]-s*b[i], s*a[i]+c*b[i]
	}
	for i := range 3 {
		va[i], vb[i] = c*va[i]-s*vb[i], s*va[i]+c*vb[i]
	}
	return true
}

func meanDistance(q []float64, c XY) float64 {
	sum := 0.0
	for i := 0; i < len(q); i += 2 {
		dx, dy := q[i]-c.X, q[i+1]-c.Y
		sum += math.Sqrt(dx*dx + dy*dy)
	}
	return sum / float64(len(q)/2)
}
