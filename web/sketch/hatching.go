package sketch

import (
	"fmt"
	"slices"
	"strings"
)

// The hatchings. Each differs from the others without colour, also on a bad
// copier.
const (
	wallHatch   = "wall"   // wide, rising to the right: parent metal
	weldHatch   = "weld"   // close, falling to the right
	shortHatch  = "short"  // close and crossed: not enough metal
	bareHatch   = "bare"   // nearly black: no metal at all
	sparseHatch = "sparse" // dots: just enough
)

// hatch gives the fill of a hatching and notes that it is in use.
func (p *pen) hatch(name string) string {
	if !slices.Contains(p.names, name) {
		p.names = append(p.names, name)
	}
	return fmt.Sprintf(`fill="url(#%s-%s)"`, p.d.name, name)
}

// tile is one hatching: its size and what is in it.
var tiles = map[string]struct {
	size float64
	draw string
}{
	wallHatch:   {9, `<path d="M-2 11L11 -2M-2 2L2 -2M7 11L11 7" stroke="#555" stroke-width=".7"/>`},
	weldHatch:   {5, `<path d="M-1 -1L6 6M-1 4L1 6M4 -1L6 1" stroke="#111" stroke-width="1"/>`},
	shortHatch:  {5, `<rect width="5" height="5" fill="#f3d6d3"/><path d="M-1 -1L6 6M-1 6L6 -1" stroke="#7a0f0a" stroke-width=".9"/>`},
	bareHatch:   {5, `<rect width="5" height="5" fill="#3a0906"/><path d="M-1 6L6 -1" stroke="#fff" stroke-width=".7"/>`},
	sparseHatch: {7, `<circle cx="2" cy="2" r=".8" fill="#333"/><circle cx="5.5" cy="5.5" r=".8" fill="#333"/>`},
}

func hatchings(prefix string, names []string) string {
	var b strings.Builder
	for _, name := range names {
		t := tiles[name]
		fmt.Fprintf(&b, "<pattern id=\"%s-%s\" width=\"%s\" height=\"%s\" patternUnits=\"userSpaceOnUse\">%s</pattern>\n",
			prefix, name, num(t.size), num(t.size), t.draw)
	}
	return b.String()
}
