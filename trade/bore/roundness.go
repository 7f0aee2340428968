package bore

import (
	"errors"
	"math"
	"slices"
)

// Ring is a reference circle that touches readings, or a pair of concentric
// ones. Valid is false where the readings do not fix it: it then holds nothing.
type Ring struct {
	Valid        bool
	Centre       XY      // m
	Inner, Outer float64 // radii, m; equal for a single circle
	Touch        []int   // the readings that it touches, by index, in rising order
}

// Width is the radial distance between the two circles, m.
func (r *Ring) Width() float64 { return r.Outer - r.Inner }

// Roundness holds the roundness of one section in the terms of ISO 12181-1. All
// are radial, peak to valley (RONt). Two readings at opposite places do not see
// an odd number of lobes; these, from readings of the radius, do.
type Roundness struct {
	LSCI float64 // about the least squares circle, m
	MZCI Ring    // minimum zone; its Width is the least roundness deviation of all
	MCCI Ring    // minimum circumscribed circle
	MICI Ring    // maximum inscribed circle: the largest plug gauge that enters
	U    float64 // standard uncertainty of a peak-to-valley value, m
}

// RoundnessOf returns the roundness of a section about its four reference
// circles.
//
//	LSCI, MZCI: max|p − c| − min|p − c|, c the least squares centre or the one that makes it least
//
// points in m, c their least squares circle, u the standard uncertainty of a
// reading, m; the result's U is √2·u, for the difference of two readings. The
// minimum zone and the maximum inscribed circle are those nearest to the least
// squares centre; inscribed and circumscribed circle are given only where the
// readings leave no half turn empty. Error: fewer than four points or
// u out of range. Source: ISO 12181-1 for the terms; exchange method after
// Remez and Stiefel for the minimum zone, Welzl for the circumscribed circle
// (both from memory).
func RoundnessOf(points []XY, c *Circle, u float64) (Roundness, error) {
	if len(points) < 4 || len(c.Off) != len(points) {
		return Roundness{}, errFewPoints
	}
	if bad(u) || u < 0 {
		return Roundness{}, errors.New("the uncertainty of a reading is less than nothing or not a number")
	}
	r := Roundness{LSCI: c.LSCI(), U: math.Sqrt2 * u}
	z := newZoner(points, c)
	r.MZCI = z.seek(4)
	if ArcOf(clocks(points, c.Centre)).Gap >= math.Pi {
		return r, nil
	}
	r.MICI = z.seek(3)
	r.MCCI = circumscribed(points)
	return r, nil
}

func clocks(points []XY, centre XY) []float64 {
	out := make([]float64, len(points))
	for i, p := range points {
		out[i] = p.Sub(centre).Clock()
	}
	return out
}

// circumscribed is the smallest circle round all points: a circle through two
// or three of them, grown point by point.
func circumscribed(p []XY) Ring {
	order := make([]int, len(p))
	for i := range order {
		order[i] = i
	}
	// Points in clock order are the slow case; a fixed stride breaks it.
	slices.SortFunc(order, func(a, b int) int { return (a*7919)%1009 - (b*7919)%1009 })
	tol := 1 + 1e-13
	outside := func(i int, c XY, r float64) bool { return p[i].Sub(c).Len() > r*tol }
	c, r := p[order[0]], 0.0
	touch := []int{order[0]}
	for a, i := range order {
		if !outside(i, c, r) {
			continue
		}
		c, r, touch = p[i], 0, []int{i}
		for b, j := range order[:a] {
			if !outside(j, c, r) {
				continue
			}
			c, touch = p[i].Add(p[j]).Times(0.5), []int{i, j}
			r = p[i].Sub(c).Len()
			for _, k := range order[:b] {
				if !outside(k, c, r) {
					continue
				}
				through, ok := circumcentre(p[i], p[j], p[k])
				if !ok {
					return Ring{}
				}
				c, touch = through, []int{i, j, k}
				r = p[i].Sub(c).Len()
			}
		}
	}
	slices.Sort(touch)
	return Ring{Valid: true, Centre: c, Inner: r, Outer: r, Touch: touch}
}

// circumcentre is the centre of the circle through three points.
func circumcentre(a, b, c XY) (XY, bool) {
	b, c = b.Sub(a), c.Sub(a)
	d := 2 * (b.X*c.Y - b.Y*c.X)
	bb, cc := b.X*b.X+b.Y*b.Y, c.X*c.X+c.Y*c.Y
	if math.Abs(d) < 1e-14*math.Sqrt(bb*cc) {
		return XY{}, false
	}
	return a.Add(XY{(c.Y*bb - b.Y*cc) / d, (b.X*cc - c.X*bb) / d}), true
}

// Arc says how much of the turn the readings cover.
type Arc struct {
	Covered  float64 // rad: a turn less the widest gap
	Gap      float64 // widest gap between neighbours, rad
	GapClock float64 // middle of that gap, rad
	// Oval is how far the fitted centre moves for each unit by which the bore is
	// oval (radius r + a·cos 2α: shift over a, at worst). Nothing for readings
	// evenly all round; large for an arc, which cannot tell oval from off centre. A ratio.
	Oval float64
}

// ArcOf returns the coverage of readings at the given clock positions.
//
//	gap = widest step between neighbours;  oval = ‖(JᵀJ)⁻¹·Jᵀ·[cos 2α, sin 2α]‖
//
// clock positions in rad, at least one; Oval is +Inf when they cannot fix a
// centre at all. Errors: none. Source: the least squares circle linearised.
func ArcOf(clock []float64) Arc {
	sorted := make([]float64, len(clock))
	for i, c := range clock {
		sorted[i] = Turn(c)
	}
	slices.Sort(sorted)
	last := sorted[len(sorted)-1] - 2*math.Pi
	arc := Arc{}
	for _, c := range sorted {
		if gap := c - last; gap > arc.Gap {
			arc.Gap, arc.GapClock = gap, Turn(last+gap/2)
		}
		last = c
	}
	arc.Covered = 2*math.Pi - arc.Gap
	arc.Oval = ovalLeak(sorted)
	return arc
}

func ovalLeak(clock []float64) float64 {
	var jtj [3][3]float64
	var jtc, jts [3]float64
	for _, c := range clock {
		sin, cos := math.Sincos(c)
		row := [3]float64{sin, cos, 1}
		for a := range 3 {
			for b := range 3 {
				jtj[a][b] += row[a] * row[b]
			}
			jtc[a] += row[a] * (cos*cos - sin*sin)
			jts[a] += row[a] * 2 * sin * cos
		}
	}
	inv, ok := inverse3(jtj)
	if !ok {
		return math.Inf(1)
	}
	var m [2][2]float64 // shift of the centre by the cosine and by the sine lobe
	for a := range 2 {
		for b := range 3 {
			m[a][0] += inv[a][b] * jtc[b]
			m[a][1] += inv[a][b] * jts[b]
		}
	}
	return cov2{ // m·mᵀ: its greatest root is the greatest shift
		m[0][0]*m[0][0] + m[0][1]*m[0][1],
		m[0][0]*m[1][0] + m[0][1]*m[1][1],
		m[1][0]*m[1][0] + m[1][1]*m[1][1],
	}.greatest()
}
