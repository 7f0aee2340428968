package bore

import "math"

// Outlier is a reading that does not belong to the round shape of its station:
// a slip in reading or writing, dirt, or a real gouge. It is named, not dropped.
type Outlier struct {
	Index   int     // in Sweeps
	Station float64 // m
	Clock   float64 // rad
	Off     float64 // outside (+) or inside (−) the circle of the others, m
	Chance  float64 // how likely so odd a reading would be by chance anywhere in its station, 0 to 1, a share of all stations
}

const (
	outlierChance = 0.01   // called an outlier below this
	outlierLeast  = 2.5e-6 // m, a tenth of a thou: nobody reads finer than that
)

// outliers looks for them by taking away, again and again, the reading whose
// deleted studentised residual is greatest (a fifth of the readings at most),
// and then asking up to which of them the residual was beyond chance, after
// Rosner's generalised test (1983, from memory), with Student's t and
// Bonferroni's factor. That way two outliers do not hide each other.
// whole is the circle through all.
func outliers(points []XY, u []float64, whole *Circle) []found {
	n := len(points)
	if n >= 12 && whole.farthest() < 2*whole.Sigma {
		return nil // even a fifth of the readings, equally far off, would reach two sigma
	}
	rest := append(make([]XY, 0, n), points...)
	at := make([]int, n)
	for i := range at {
		at[i] = i
	}
	f := fitter{buf: make([]float64, 4*n)}
	var list []found
	keep := 0
	for range max(1, n/5) {
		if len(rest) < 6 {
			break
		}
		c, err := f.fit(rest)
		if err != nil {
			break
		}
		k, t := oddest(rest, &c)
		if k < 0 {
			break
		}
		m := len(rest)
		chance := math.Min(1, float64(m)*tail(t, m-4))
		list = append(list, found{place: at[k], chance: chance})
		if chance < outlierChance {
			keep = len(list)
		}
		rest = append(rest[:k], rest[k+1:]...)
		at = append(at[:k], at[k+1:]...)
	}
	return confirm(list[:keep], points, u, &f)
}

type found struct {
	place  int
	off    float64
	chance float64
}

// confirm measures each against the circle of all the others and drops what is
// within three standard uncertainties or too small to read.
func confirm(list []found, points []XY, u []float64, f *fitter) []found {
	if len(list) == 0 {
		return nil
	}
	odd := make([]bool, len(points))
	for _, o := range list {
		odd[o.place] = true
	}
	rest := make([]XY, 0, len(points))
	for i, p := range points {
		if !odd[i] {
			rest = append(rest, p)
		}
	}
	c, err := f.fit(rest)
	if err != nil {
		return nil
	}
	kept := list[:0]
	for _, o := range list {
		o.off = points[o.place].Sub(c.Centre).Len() - c.R
		if math.Abs(o.off) > max(outlierLeast, 3*u[o.place]) {
			kept = append(kept, o)
		}
	}
	return kept
}

// oddest finds the greatest deleted studentised residual: how far a reading is
// off the circle of the others, in standard deviations of such a distance.
func oddest(points []XY, c *Circle) (int, float64) {
	var jtj [3][3]float64
	sumSq := 0.0
	for _, p := range points {
		row, off := circleRow(p, c)
		for a := range 3 {
			for b := range 3 {
				jtj[a][b] += row[a] * row[b]
			}
		}
		sumSq += off * off
	}
	inv, ok := inverse3(jtj)
	if !ok || sumSq == 0 {
		return -1, 0
	}
	dof := float64(len(points) - 3)
	at, greatest := -1, 0.0
	for i, p := range points {
		row, off := circleRow(p, c)
		free := 1.0
		for a := range 3 {
			for b := range 3 {
				free -= row[a] * inv[a][b] * row[b]
			}
		}
		if free < 1e-9 {
			continue // this reading alone decides the fit there
		}
		left := (sumSq - off*off/free) / (dof - 1)
		t := math.Inf(1)
		if left > 0 {
			t = math.Abs(off) / math.Sqrt(left*free)
		}
		if t > greatest {
			at, greatest = i, t
		}
	}
	return at, greatest
}

func circleRow(p XY, c *Circle) ([3]float64, float64) {
	d := p.Sub(c.Centre)
	n := d.Len()
	return [3]float64{d.X / n, d.Y / n, 1}, n - c.R
}

// tail is the chance of |T| > t for Student's distribution with nu degrees of
// freedom (Abramowitz and Stegun, 26.7.3 and 26.7.4).
func tail(t float64, nu int) float64 {
	if math.IsInf(t, 1) {
		return 0
	}
	sin, cos := math.Sincos(math.Atan(t / math.Sqrt(float64(nu))))
	if nu%2 == 0 {
		term, sum := 1.0, 1.0
		for k := 2; k < nu; k += 2 {
			term *= float64(k-1) / float64(k) * cos * cos
			sum += term
		}
		return max(0, 1-sin*sum)
	}
	angle := math.Atan2(sin, cos)
	if nu == 1 {
		return 1 - 2*angle/math.Pi
	}
	term, sum := cos, cos
	for k := 3; k < nu; k += 2 {
		term *= float64(k-1) / float64(k) * cos * cos
		sum += term
	}
	return max(0, 1-2/math.Pi*(angle+sin*sum))
}
