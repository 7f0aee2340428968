package bore

import (
	"fmt"
	"math"
	"testing"

	"gudgeon/trade/outside"
)

const reference = "mpmath 1.2.1 and scipy 1.10.1"

var sources = map[string]string{
	"C1_ggs":           "data: Gander, Golub and Strebel, BIT 34 (1994) 558-578, https://link.springer.com/doi/10.1007/BF01934268 ; value: " + reference,
	"C2_cookbook_full": "data: SciPy Cookbook, Least Squares Circle, http://www.scipy.org/Cookbook/Least_Squares_Circle ; value: " + reference,
	"C3_cookbook_arc":  "data: SciPy Cookbook, Least Squares Circle, http://www.scipy.org/Cookbook/Least_Squares_Circle ; value: " + reference,
	"C4_chernov_w":     "data: N. Chernov (2010) sec. 5.13, W example; value: " + reference,
	"C5_survey4":       "data: OSGeoLabBp tutorials, circle.rst; value: " + reference,
	"S1_oval24":        "synthetic, seed 101: off centre and oval; value: " + reference,
	"S2_flat12":        "synthetic, seed 102: off centre with a flat; value: " + reference,
	"S4_arc13":         "synthetic, seed 104: arc of 120°; value: " + reference,
}

func TestChecks(t *testing.T) { outside.Run(t, "bore", checks()) }

func checks() []outside.Check {
	var out []outside.Check
	for _, set := range []string{"C1_ggs", "C2_cookbook_full", "C3_cookbook_arc", "C4_chernov_w", "C5_survey4", "S1_oval24", "S2_flat12", "S4_arc13"} {
		out = append(out, circleChecks(set)...)
	}
	out = append(out, publishedCircles()...)
	out = append(out, tiltChecks()...)
	out = append(out, geometryChecks()...)
	out = append(out, studentChecks()...)
	return append(out, inspectionChecks()...)
}

func fitted(set string) (Circle, error) { return FitCircle(points(set), nil) }

// circleChecks compares a set with the values worked out apart from here.
func circleChecks(set string) []outside.Check {
	want := expected[fitWant]("fit_expected", set)
	id, tol, confidence := set[:2], 1e-9, outside.Computed
	if set[0] == 'S' {
		confidence = outside.Synthetic
	}
	if id == "C4" {
		tol = 0.1 // the hard case: the optimum is as flat as rounding allows
	}
	var out []outside.Check
	add := func(what string, want, tol float64, got func(c *Circle) (float64, error)) {
		out = append(out, outside.Check{id, what, sources[set], confidence, "units of the set", want, tol, func() (float64, error) {
			c, err := fitted(set)
			if err != nil {
				return 0, err
			}
			return got(&c)
		}})
	}
	plain := func(f func(c *Circle) float64) func(c *Circle) (float64, error) {
		return func(c *Circle) (float64, error) { return f(c), nil }
	}
	g := want.Geometric
	add("least squares centre x", g.Xc, tol, plain(func(c *Circle) float64 { return c.Centre.X }))
	add("least squares centre y", g.Yc, tol, plain(func(c *Circle) float64 { return c.Centre.Y }))
	add("least squares radius", g.R, tol, plain(func(c *Circle) float64 { return c.R }))
	add("sum of squared residuals", g.SumSqResid, 1e-9, plain(func(c *Circle) float64 { return c.SumSq }))
	add("rms residual", g.RMS, 1e-9, plain(func(c *Circle) float64 { return math.Sqrt(c.SumSq / float64(len(c.Off))) }))
	lscTol := 1e-9
	if id == "C4" {
		lscTol = 1e-6
	}
	add("LSCI roundness", g.LSC, lscTol, plain((*Circle).LSCI))
	for i, axis := range []string{"x", "y", "radius"} {
		v := [3]float64{want.Taubin.Xc, want.Taubin.Yc, want.Taubin.R}[i]
		taubinTol := max(1e-9, 1e-9*math.Abs(v))
		add("Taubin's algebraic circle, "+axis, v, taubinTol, func(*Circle) (float64, error) { return taubinOf(set)[i], nil })
	}
	ring := func(pick func(r *Roundness) *Ring, value func(r *Ring) float64) func(c *Circle) (float64, error) {
		return func(c *Circle) (float64, error) {
			r, err := RoundnessOf(points(set), c, 0)
			if err == nil && !pick(&r).Valid {
				err = fmt.Errorf("not found")
			}
			return value(pick(&r)), err
		}
	}
	if z := want.MinZone; z != nil {
		mz := func(r *Roundness) *Ring { return &r.MZCI }
		add("minimum zone width (MZCI)", z.Width, 1e-9, ring(mz, (*Ring).Width))
		add("minimum zone centre x", z.Xc, 1e-9, ring(mz, func(r *Ring) float64 { return r.Centre.X }))
		add("minimum zone centre y", z.Yc, 1e-9, ring(mz, func(r *Ring) float64 { return r.Centre.Y }))
	}
	if m := want.MinCircumscribed; m != nil {
		mc := func(r *Roundness) *Ring { return &r.MCCI }
		add("minimum circumscribed radius (MCCI)", m.R, 1e-9, ring(mc, func(r *Ring) float64 { return r.Outer }))
		add("minimum circumscribed centre x", m.Xc, 1e-9, ring(mc, func(r *Ring) float64 { return r.Centre.X }))
		add("minimum circumscribed centre y", m.Yc, 1e-9, ring(mc, func(r *Ring) float64 { return r.Centre.Y }))
	}
	if m := want.MaxInscribed; m != nil {
		mi := func(r *Roundness) *Ring { return &r.MICI }
		add("maximum inscribed radius (MICI)", m.R, 1e-9, ring(mi, func(r *Ring) float64 { return r.Inner }))
		add("maximum inscribed centre x", m.Xc, 1e-9, ring(mi, func(r *Ring) float64 { return r.Centre.X }))
		add("maximum inscribed centre y", m.Yc, 1e-9, ring(mi, func(r *Ring) float64 { return r.Centre.Y }))
	}
	return out
}

// taubinOf is the start of the fit in the units of the set.
func taubinOf(set string) [3]float64 {
	p := points(set)
	var mid XY
	for _, q := range p {
		mid = mid.Add(q.Times(1 / float64(len(p))))
	}
	f := fitter{buf: make([]float64, 4*len(p))}
	c, r, _ := f.taubin(f.scaled(p, mid, 1))
	return [3]float64{c.X + mid.X, c.Y + mid.Y, r}
}

func publishedCircles() []outside.Check {
	chernov := "N. Chernov, test program for geometric circle fits, comment block \"Correct answers\""
	cookbook := "SciPy Cookbook, Least Squares Circle, summary tables, http://www.scipy.org/Cookbook/Least_Squares_Circle"
	row := func(id, what, source string, set string, want, tol float64, got func(c *Circle) float64) outside.Check {
		return outside.Check{id, what, source, outside.Published, "units of the set", want, tol, func() (float64, error) {
			c, err := fitted(set)
			return got(&c), err
		}}
	}
	x := func(c *Circle) float64 { return c.Centre.X }
	y := func(c *Circle) float64 { return c.Centre.Y }
	r := func(c *Circle) float64 { return c.R }
	rms := func(c *Circle) float64 { return math.Sqrt(c.SumSq / float64(len(c.Off))) }
	sum := func(c *Circle) float64 { return c.SumSq }
	taubin := func(i int) func(*Circle) float64 { return func(*Circle) float64 { return taubinOf("C1_ggs")[i] } }
	return []outside.Check{
		row("C1", "Taubin centre x, printed", chernov, "C1_ggs", 4.613933, 5e-7, taubin(0)),
		row("C1", "Taubin centre y, printed", chernov, "C1_ggs", 2.795209, 5e-7, taubin(1)),
		row("C1", "Taubin radius, printed", chernov, "C1_ggs", 4.879213, 5e-7, taubin(2)),
		row("C1", "geometric centre x, printed", chernov, "C1_ggs", 4.739782, 5.1e-7, x),
		row("C1", "geometric centre y, printed", chernov, "C1_ggs", 2.983533, 5e-7, y),
		row("C1", "geometric radius, printed", chernov, "C1_ggs", 4.714226, 5e-7, r),
		row("C1", "sigma (rms over n), printed", chernov, "C1_ggs", 0.4523271, 5e-8, rms),
		row("C2", "geometric centre x, printed", cookbook, "C2_cookbook_full", 10.50009, 5e-6, x),
		row("C2", "geometric centre y, printed", cookbook, "C2_cookbook_full", 9.65995, 5e-6, y),
		row("C2", "geometric radius, printed", cookbook, "C2_cookbook_full", 23.33353, 5e-6, r),
		row("C2", "residu, printed", cookbook, "C2_cookbook_full", 7.711852, 5e-7, sum),
		row("C3", "geometric centre x, printed (orthogonal regression)", cookbook, "C3_cookbook_arc", 9.88757, 5e-6, x),
		row("C3", "geometric centre y, printed (orthogonal regression)", cookbook, "C3_cookbook_arc", 3.68750, 5e-6, y),
		row("C3", "geometric radius, printed (orthogonal regression)", cookbook, "C3_cookbook_arc", 27.35044, 5e-6, r),
		row("C3", "residu, printed", cookbook, "C3_cookbook_arc", 4.042522, 5e-7, sum),
		row("C4", "geometric centre y, printed", chernov+", test three", "C4_chernov_w", -3283.3, 0.1, y),
		row("C4", "geometric radius, printed", chernov+", test three", "C4_chernov_w", 3283.3, 0.1, r),
		row("C4", "sigma, printed", chernov+", test three", "C4_chernov_w", 1.09579, 5e-6, rms),
	}
}
