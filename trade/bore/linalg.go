package bore

import "math"

// cholesky factors the n×n symmetric positive definite matrix a (row by row)
// in place, lower triangle. It reports false if a is not safely so.
func cholesky(a []float64, n int) bool {
	for j := range n {
		d := a[j*n+j]
		floor := 1e-15 * math.Abs(d)
		for k := range j {
			d -= a[j*n+k] * a[j*n+k]
		}
		if !(d > floor) {
			return false
		}
		d = math.Sqrt(d)
		a[j*n+j] = d
		for i := j + 1; i < n; i++ {
			s := a[i*n+j]
			for k := range j {
				s -= a[i*n+k] * a[j*n+k]
			}
			a[i*n+j] = s / d
		}
	}
	return true
}

// back solves for b in place, given the factor from cholesky.
func back(a []float64, n int, b []float64) {
	for i := range n {
		for k := range i {
			b[i] -= a[i*n+k] * b[k]
		}
		b[i] /= a[i*n+i]
	}
	for i := n - 1; i >= 0; i-- {
		for k := i + 1; k < n; k++ {
			b[i] -= a[k*n+i] * b[k]
		}
		b[i] /= a[i*n+i]
	}
}

// inverse3 inverts a symmetric positive definite 3×3 matrix.
func inverse3(a [3][3]float64) (inv [3][3]float64, ok bool) {
	var f [9]float64
	for i := range 3 {
		for j := range 3 {
			f[3*i+j] = a[i][j]
		}
	}
	if !cholesky(f[:], 3) {
		return inv, false
	}
	for j := range 3 {
		var e [3]float64
		e[j] = 1
		back(f[:], 3, e[:])
		for i := range 3 {
			inv[i][j] = e[i]
		}
	}
	return inv, true
}

// gauss solves the n×n system a·x = b in place with row exchanges; x is left in b.
func gauss(a []float64, n int, b []float64) bool {
	for c := range n {
		p := c
		for r := c + 1; r < n; r++ {
			if math.Abs(a[r*n+c]) > math.Abs(a[p*n+c]) {
				p = r
			}
		}
		if math.Abs(a[p*n+c]) < 1e-300 {
			return false
		}
		if p != c {
			for k := range n {
				a[p*n+k], a[c*n+k] = a[c*n+k], a[p*n+k]
			}
			b[p], b[c] = b[c], b[p]
		}
		for r := c + 1; r < n; r++ {
			m := a[r*n+c] / a[c*n+c]
			for k := c; k < n; k++ {
				a[r*n+k] -= m * a[c*n+k]
			}
			b[r] -= m * b[c]
		}
	}
	for r := n - 1; r >= 0; r-- {
		for k := r + 1; k < n; k++ {
			b[r] -= a[r*n+k] * b[k]
		}
		b[r] /= a[r*n+r]
	}
	return true
}

// cov2 is the covariance matrix of a place in a plane, m².
type cov2 struct{ xx, xy, yy float64 }

// along is the standard uncertainty in the direction of d; the greatest there
// is when d has no direction.
func (c cov2) along(d XY) float64 {
	n := d.Len()
	if n == 0 {
		return c.greatest()
	}
	x, y := d.X/n, d.Y/n
	return math.Sqrt(max(0, c.xx*x*x+2*c.xy*x*y+c.yy*y*y))
}

func (c cov2) greatest() float64 {
	half := (c.xx - c.yy) / 2
	return math.Sqrt(max(0, (c.xx+c.yy)/2+math.Hypot(half, c.xy)))
}

func (c cov2) plus(d cov2) cov2         { return cov2{c.xx + d.xx, c.xy + d.xy, c.yy + d.yy} }
func (c cov2) times(k float64) cov2     { return cov2{k * c.xx, k * c.xy, k * c.yy} }
func (c cov2) plusRound(u float64) cov2 { return cov2{c.xx + u*u, c.xy, c.yy + u*u} }
