package bore

import (
	"math"
	"slices"
)

// zoner looks for the circles that touch readings: with four references the
// minimum zone (outside and inside touched in turn), with three the maximum
// inscribed circle. Both are linear once distances are linearised about a
// centre; the linear problem is solved by exchanging references, and the centre
// moved until it stays.
type zoner struct {
	p     []XY
	start *Circle
	order []int     // readings in clock order about the centre
	clock []float64 // by reading
	d     []float64 // distance by reading
	u     []XY      // direction by reading
	ref   [4]int    // places in order
}

func newZoner(p []XY, c *Circle) *zoner {
	n := len(p)
	f := make([]float64, 2*n)
	return &zoner{p: p, start: c, order: make([]int, n), clock: f[:n], d: f[n:], u: make([]XY, n)}
}

// look takes distances and directions from c and sorts the readings.
func (z *zoner) look(c XY) {
	for i, p := range z.p {
		v := p.Sub(c)
		z.d[i] = v.Len()
		z.u[i] = v.Times(1 / z.d[i])
		z.clock[i] = v.Clock()
		z.order[i] = i
	}
	slices.SortFunc(z.order, func(a, b int) int {
		if z.clock[a] < z.clock[b] {
			return -1
		}
		return 1
	})
}

// goal is what is to be made small at c: the width of the zone, or the inscribed
// radius with its sign turned.
func (z *zoner) goal(c XY, refs int) float64 {
	low, high := math.Inf(1), 0.0
	for _, p := range z.p {
		d := p.Sub(c).Len()
		low, high = min(low, d), max(high, d)
	}
	if refs == 3 {
		return -low
	}
	return high - low
}

// seek finds the zone (4 references) or the inscribed circle (3).
func (z *zoner) seek(refs int) Ring {
	c, size := z.start.Centre, z.start.R
	best := z.goal(c, refs)
	for range 60 {
		z.look(c)
		step, ok := z.solve(refs)
		if !ok {
			return Ring{}
		}
		if step.Len() < 1e-14*size {
			return z.ring(c, refs)
		}
		if step.Len() < 1e-7*size { // quadratic by now; the goal is too blunt to judge
			c = c.Add(step)
			continue
		}
		if lim := size / 4; step.Len() > lim {
			step = step.Times(lim / step.Len())
		}
		moved := false
		for range 40 {
			if g := z.goal(c.Add(step), refs); g < best {
				c, best, moved = c.Add(step), g, true
				break
			}
			step = step.Times(0.5)
		}
		if !moved {
			return Ring{}
		}
	}
	z.look(c)
	if _, ok := z.solve(refs); !ok {
		return Ring{}
	}
	return z.ring(c, refs)
}

// ring reads the result off the references.
func (z *zoner) ring(c XY, refs int) Ring {
	r := Ring{Valid: true, Centre: c, Inner: math.Inf(1)}
	for _, place := range z.ref[:refs] {
		i := z.order[place]
		r.Touch = append(r.Touch, i)
		r.Inner, r.Outer = min(r.Inner, z.d[i]), max(r.Outer, z.d[i])
	}
	if refs == 3 {
		r.Outer = r.Inner
	}
	slices.Sort(r.Touch)
	return r
}

func (z *zoner) solve(refs int) (XY, bool) {
	if refs == 4 {
		return z.level()
	}
	return z.inscribe()
}

// level solves min max|dᵢ − uᵢ·δ − ρ| by single exchange: four references in
// clock order have residuals +h, −h, +h, −h; a reading that sticks out further
// takes the place of its neighbour of the same sign.
func (z *zoner) level() (XY, bool) {
	n := len(z.p)
	for k := range 4 {
		z.ref[k] = k * n / 4
	}
	for range 20 * n {
		var a [16]float64
		var b [4]float64
		sign := 1.0
		for k, place := range z.ref {
			i := z.order[place]
			a[4*k], a[4*k+1], a[4*k+2], a[4*k+3] = z.u[i].X, z.u[i].Y, 1, sign
			b[k] = z.d[i]
			sign = -sign
		}
		if !gauss(a[:], 4, b[:]) {
			return XY{}, false
		}
		step, rho, h := XY{b[0], b[1]}, b[2], b[3]
		worst, at, off := math.Abs(h)+1e-14*z.start.R, -1, 0.0
		for place, i := range z.order {
			e := z.d[i] - z.u[i].X*step.X - z.u[i].Y*step.Y - rho
			if math.Abs(e) > worst {
				worst, at, off = math.Abs(e), place, e
			}
		}
		if at < 0 {
			return step, true
		}
		z.exchange(at, (off > 0) == (h > 0))
	}
	return XY{}, false
}

// exchange puts a place among the references. first says that its sign is that
// of references 0 and 2.
func (z *zoner) exchange(at int, first bool) {
	after := 0 // the first reference beyond it, going round
	for after < 4 && z.ref[after] < at {
		after++
	}
	left, right := (after+3)%4, after%4
	if (left%2 == 0) == first {
		z.ref[left] = at
	} else {
		z.ref[right] = at
	}
	slices.Sort(z.ref[:])
}

// inscribe solves max t with t <= dᵢ − uᵢ·δ by the dual simplex: three
// references whose directions surround the centre; a reading that lies inside
// takes the place of the one that keeps the centre surrounded.
func (z *zoner) inscribe() (XY, bool) {
	if !z.surround() {
		return XY{}, false
	}
	for range 20 * len(z.p) {
		var a, at [9]float64
		var b [3]float64
		for k, place := range z.ref[:3] {
			i := z.order[place]
			row := [3]float64{z.u[i].X, z.u[i].Y, 1}
			for j := range 3 {
				a[3*k+j], at[3*j+k] = row[j], row[j]
			}
			b[k] = z.d[i]
		}
		if !gauss(a[:], 3, b[:]) {
			return XY{}, false
		}
		step, t := XY{b[0], b[1]}, b[2]
		least, in := -1e-14*z.start.R, -1
		for place, i := range z.order {
			if e := z.d[i] - z.u[i].X*step.X - z.u[i].Y*step.Y - t; e < least {
				least, in = e, place
			}
		}
		if in < 0 {
			return step, true
		}
		if !z.ratio(at, in) {
			return XY{}, false
		}
	}
	return XY{}, false
}

// ratio is the dual simplex's choice of the reference that leaves.
func (z *zoner) ratio(at [9]float64, in int) bool {
	copyOf := at
	weight := [3]float64{0, 0, 1}
	dir := z.u[z.order[in]]
	share := [3]float64{dir.X, dir.Y, 1}
	if !gauss(at[:], 3, weight[:]) || !gauss(copyOf[:], 3, share[:]) {
		return false
	}
	least, out := math.Inf(1), -1
	for k := range 3 {
		if share[k] > 1e-12 && weight[k]/share[k] < least {
			least, out = weight[k]/share[k], k
		}
	}
	if out < 0 {
		return false
	}
	z.ref[out] = in
	return true
}

// surround picks three places with less than half a turn between neighbours.
func (z *zoner) surround() bool {
	first := z.clock[z.order[0]]
	second := 0
	for place, i := range z.order {
		if z.clock[i]-first < math.Pi {
			second = place
		}
	}
	if second == 0 || second == len(z.order)-1 {
		return false
	}
	z.ref = [4]int{0, second, second + 1, 0}
	return true
}
