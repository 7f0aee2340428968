package finiteelement

import "math"

// pressFit is a bushing in a hub, both free to slide along the axis on each
// other, cut through lengthwise. The parts are meshed at the one size of the
// interface; the interference is a jump of the radius prescribed between them.
type pressFit struct {
	bore, joint, outside float64 // diameters, mm
	interference         float64 // on diameter, mm
	hub, bushing         elastic
	fine                 int // elements through the bushing's wall
	atBore, atJoint      int // nodes of the bushing
	hubAtJoint           int // node of the hub
}

type elastic struct{ modulus, nu float64 } // MPa, 1

// corners8 numbers a square of eight nodes as ccx does, by steps of half an
// element.
var corners8 = [8][2]int{{0, 0}, {2, 0}, {2, 2}, {0, 2}, {1, 0}, {2, 1}, {1, 2}, {0, 1}}

const (
	bushingPart, hubPart, jumpPart = 0, 1, 2

	high   = 2.0 // mm; any length does, for nothing changes along it
	layers = 2
)

func (f *pressFit) deck() *deck {
	d := newDeck()
	f.ring(d, bushingPart, "BUSHING", f.bore/2, f.joint/2, f.fine)
	f.ring(d, hubPart, "HUB", f.joint/2, f.outside/2, 3*f.fine)
	jump := d.node(jumpPart, point{f.joint, high, 0})
	f.atBore = d.node(bushingPart, point{f.bore / 2, high / 2, 0})
	f.atJoint = d.node(bushingPart, point{f.joint / 2, high / 2, 0})
	f.hubAtJoint = d.node(hubPart, point{f.joint / 2, high / 2, 0})
	d.metal("BUSHING", f.bushing.modulus, f.bushing.nu)
	d.metal("HUB", f.hub.modulus, f.hub.nu)
	for i := range 2*layers + 1 {
		p := point{f.joint / 2, high * float64(i) / (2 * layers), 0}
		d.add("*EQUATION\n3\n%d, 1, 1., %d, 1, -1., %d, 1, -1.\n", d.node(hubPart, p), d.node(bushingPart, p), jump)
	}
	d.add("*STEP\n*STATIC\n*BOUNDARY\n%d, 1, 1, %.17g\n", jump, f.interference/2)
	for i, p := range d.nodes {
		if math.Abs(p[1]) < 1e-9 {
			d.add("%d, 2, 2, 0.\n", i+1)
		}
	}
	d.add("*NODE FILE, OUTPUT=2D\nU\n*EL FILE, OUTPUT=2D\nS\n*END STEP\n")
	return d
}

func (f *pressFit) ring(d *deck, part int, set string, inner, outer float64, across int) {
	for i := range across {
		for j := range layers {
			var nodes []int
			for _, c := range corners8 {
				r := inner + (outer-inner)*(float64(i)+float64(c[0])/2)/float64(across)
				nodes = append(nodes, d.node(part, point{r, high * (float64(j) + float64(c[1])/2) / layers, 0}))
			}
			d.element("CAX8R", set, nodes)
		}
	}
}
