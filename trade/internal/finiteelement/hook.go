package finiteelement

import "math"

// hook is a round bar bent to a C and pulled open along the line through the
// middle of the bend. A quarter of it is modelled: the upper half, and of that
// the half in front of the plane of the bend.
//
// Section A lies level with the middle of the bend and carries the whole pull
// and its whole moment; section B, a quarter turn on, is where the pull enters
// as a shear, which has no moment about B.
type hook struct {
	bar, bend       float64 // diameter of the bar, radius of the bend to its centre line; mm
	pull            float64 // N
	modulus, nu     float64 // MPa, 1
	fine            int     // elements along half the core of the section
	inside, outside int     // nodes at the faces of section A
}

// corners20 numbers a brick of 20 nodes as ccx does, by steps of half an element.
var corners20 = [20][3]int{
	{0, 0, 0}, {2, 0, 0}, {2, 2, 0}, {0, 2, 0}, {0, 0, 2}, {2, 0, 2}, {2, 2, 2}, {0, 2, 2},
	{1, 0, 0}, {2, 1, 0}, {1, 2, 0}, {0, 1, 0}, {1, 0, 2}, {2, 1, 2}, {1, 2, 2}, {0, 1, 2},
	{0, 0, 1}, {2, 0, 1}, {2, 2, 1}, {0, 2, 1},
}

// endFace lists the nodes of corners20 at the far end along.
var endFace = [8]int{4, 5, 6, 7, 12, 13, 14, 15}

// patch maps a part of the half section from the unit square: outwards from the
// middle of the bend and square to the bend's plane, in radii of the bar.
type patch struct {
	across, up int     // elements
	outer      float64 // how much the elements crowd together outwards: 1, not at all
	at         func(u, v float64) (out, side float64)
}

const core = 0.5 // half the side of the square in the middle of the section

// rim walks the core's edge from its outside (t = 0) to its inside (t = 1).
func rim(t float64) (out, side float64) {
	switch s := 4 * t; {
	case s <= 1:
		return core, core * s
	case s <= 3:
		return core * (2 - s), core
	default:
		return -core, core * (4 - s)
	}
}

// section is a square core and a ring round it.
func (h *hook) section() []patch {
	n := h.fine
	return []patch{
		{2 * n, n, 1, func(u, v float64) (float64, float64) { return core * (2*u - 1), core * v }},
		{n, 4 * n, 1.5, func(u, v float64) (float64, float64) {
			a, b := rim(v)
			sin, cos := math.Sincos(math.Pi * v)
			return a + u*(cos-a), b + u*(sin-b)
		}},
	}
}

// place bends the section round: turn runs from 0 at A to 1 at B.
func (h *hook) place(out, side, turn float64) point {
	r := h.bend + out*h.bar/2
	sin, cos := math.Sincos(turn * math.Pi / 2)
	return point{r * cos, r * sin, side * h.bar / 2}
}

func (h *hook) deck() *deck {
	d := newDeck()
	load := map[int]float64{}
	along := 4 * h.fine
	for _, p := range h.section() {
		for k := range along {
			for i := range p.across {
				for j := range p.up {
					h.brick(d, p, [3]int{i, j, k}, along, load)
				}
			}
		}
	}
	h.inside, h.outside = d.node(0, h.place(-1, 0, 0)), d.node(0, h.place(1, 0, 0))
	d.metal("BAR", h.modulus, h.nu)
	d.add("*STEP\n*STATIC\n*BOUNDARY\n")
	for i, p := range d.nodes {
		if math.Abs(p[1]) < 1e-6 {
			d.add("%d, 2, 2, 0.\n", i+1)
		}
		if math.Abs(p[2]) < 1e-6 {
			d.add("%d, 3, 3, 0.\n", i+1)
		}
	}
	d.add("%d, 1, 1, 0.\n", d.node(0, h.place(0, 0, 0)))
	d.add("*CLOAD\n")
	area := math.Pi * h.bar * h.bar / 8 // of the half section
	for i := range d.nodes {
		if share, ok := load[i+1]; ok {
			d.add("%d, 2, %.12g\n", i+1, h.pull/2*share/area)
		}
	}
	d.add("*NODE FILE\nU\n*EL FILE\nS\n*END STEP\n")
	return d
}

// step is how far along a side a node stands, 0 to 1: so many half elements on
// from the i-th of n, with the elements small near 0 where power is above 1.
// Nodes between corners stand midway, or the element would bend the stress.
func step(i, halves, n int, power float64) float64 {
	at := func(k int) float64 { return math.Pow(float64(k)/float64(n), power) }
	return at(i) + float64(halves)/2*(at(i+1)-at(i))
}

// brick adds one element; at B it also adds the areas of its end's nodes.
func (h *hook) brick(d *deck, p patch, at [3]int, along int, load map[int]float64) {
	var nodes []int
	for _, c := range corners20 { // up before across, or the brick is inside out
		u := 1 - step(p.across-at[0]-1, 2-c[1], p.across, p.outer)
		v := step(at[1], c[0], p.up, 1)
		turn := step(at[2], c[2], along, 1.5)
		out, side := p.at(u, v)
		nodes = append(nodes, d.node(0, h.place(out, side, turn)))
	}
	d.element("C3D20R", "BAR", nodes)
	if at[2] != along-1 {
		return
	}
	var face [8][2]float64
	for i, n := range endFace {
		q := d.nodes[nodes[n]-1]
		face[i] = [2]float64{q[1], q[2]}
	}
	for i, share := range faceAreas(face) {
		load[nodes[endFace[i]]] += share
	}
}

// faceAreas shares the area of a face of eight nodes among them as a uniform
// load is shared: the integral of each shape function, by 3 × 3 Gauss points.
func faceAreas(p [8][2]float64) [8]float64 {
	points, weights := [3]float64{-math.Sqrt(0.6), 0, math.Sqrt(0.6)}, [3]float64{5. / 9, 8. / 9, 5. / 9}
	var areas [8]float64
	for i, u := range points {
		for j, v := range points {
			n, du, dv := shapes8(u, v)
			var xu, xv, yu, yv float64
			for k := range p {
				xu, xv = xu+du[k]*p[k][0], xv+dv[k]*p[k][0]
				yu, yv = yu+du[k]*p[k][1], yv+dv[k]*p[k][1]
			}
			for k := range p {
				areas[k] += n[k] * math.Abs(xu*yv-xv*yu) * weights[i] * weights[j]
			}
		}
	}
	return areas
}

// shapes8 gives the shape functions of an eight-node square and their slopes.
func shapes8(u, v float64) (n, du, dv [8]float64) {
	for i, c := range [4][2]float64{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}} {
		a, b := c[0], c[1]
		n[i] = (1 + a*u) * (1 + b*v) * (a*u + b*v - 1) / 4
		du[i] = a * (1 + b*v) * (2*a*u + b*v) / 4
		dv[i] = b * (1 + a*u) * (a*u + 2*b*v) / 4
	}
	for i, s := range [2]float64{-1, 1} { // the middles of the lower and the upper side
		k := 4 + 2*i
		n[k], du[k], dv[k] = (1-u*u)*(1+s*v)/2, -u*(1+s*v), s*(1-u*u)/2
	}
	for i, s := range [2]float64{1, -1} { // of the right and the left side
		k := 5 + 2*i
		n[k], du[k], dv[k] = (1+s*u)*(1-v*v)/2, s*(1-v*v)/2, -v*(1+s*u)
	}
	return n, du, dv
}
