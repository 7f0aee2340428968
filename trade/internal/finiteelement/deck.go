package finiteelement

import (
	"fmt"
	"math"
	"strings"
)

// point is a place in mm.
type point [3]float64

// deck is an input file for ccx in the making, in mm, N and MPa.
type deck struct {
	nodes    []point
	numbers  map[[4]int]int // of a node at a place of a part
	elements strings.Builder
	count    int
	rest     strings.Builder // materials, limits, loads
}

func newDeck() *deck { return &deck{numbers: map[[4]int]int{}} }

// node gives the number of the node of a part at a place, making it if need be.
// Parts share no nodes, so that two of them can touch.
func (d *deck) node(part int, p point) int {
	const grid = 1e-5 // mm
	key := [4]int{part, int(math.Round(p[0] / grid)), int(math.Round(p[1] / grid)), int(math.Round(p[2] / grid))}
	if n, ok := d.numbers[key]; ok {
		return n
	}
	d.nodes = append(d.nodes, p)
	d.numbers[key] = len(d.nodes)
	return len(d.nodes)
}

// element adds one element of a kind to a set.
func (d *deck) element(kind, set string, nodes []int) {
	d.count++
	fmt.Fprintf(&d.elements, "*ELEMENT, TYPE=%s, ELSET=%s\n%d", kind, set, d.count)
	for i, n := range nodes {
		if i == 11 { // ccx reads 16 numbers a line at the most
			d.elements.WriteString(",\n")
			fmt.Fprintf(&d.elements, "%d", n)
			continue
		}
		fmt.Fprintf(&d.elements, ", %d", n)
	}
	d.elements.WriteString("\n")
}

func (d *deck) add(format string, args ...any) { fmt.Fprintf(&d.rest, format, args...) }

// metal gives a set of elements its elasticity.
func (d *deck) metal(set string, modulus, poisson float64) {
	d.add("*MATERIAL, NAME=%s\n*ELASTIC\n%.17g, %.17g\n*SOLID SECTION, ELSET=%s, MATERIAL=%s\n", set, modulus, poisson, set, set)
}

func (d *deck) String() string {
	var b strings.Builder
	b.WriteString("*NODE, NSET=ALL\n")
	for i, p := range d.nodes {
		fmt.Fprintf(&b, "%d, %.12g, %.12g, %.12g\n", i+1, p[0], p[1], p[2])
	}
	b.WriteString(d.elements.String())
	b.WriteString(d.rest.String())
	return b.String()
}
