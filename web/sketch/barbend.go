package sketch

import (
	"fmt"
	"math"

	"gudgeon/units"
)

// Bent is a boring bar under its cutting force, as package bar works it out.
type Bent struct {
	Span       float64 // between the bearings, or overhang of a bar held at one end, m
	Station    float64 // of the cutter from the left bearing or the holder, m
	OneEnd     bool    // held at one end only
	Diameter   float64 // of the bar, m
	Force      float64 // that pushes the cutter off, N
	Deflection float64 // at the cutter, m
	Note       string
	Units      units.System
}

const barLeft, barRight = 48.0, 312.0

// BarBend draws the bar straight and bent, the bend magnified and the
// magnification stated.
func BarBend(b Bent) *Drawing {
	title := "The bar under its cut, in two bearings"
	if b.OneEnd {
		title = "The bar under its cut, held at one end"
	}
	p := newPen("bar", title)
	y0 := p.heading() + 74
	truth := (barRight - barLeft) / b.Span
	most := b.greatest()
	m := magnification(34 / max(most, 1e-9) / truth)
	scale := min(m*truth, 34/max(most, 1e-9))
	p.bar(b, y0, scale)
	x := barLeft + b.Station*truth
	tip := point{x, y0 + scale*b.shape(b.Station) - 18}
	p.arrow(plain, point{x, tip.y - 32}, tip)
	force := units.Show(b.Force, units.Force, b.Units, units.Nearest)
	half := textWidth(force, labelSize, false) / 2
	p.label(point{min(max(x, margin+half), width-margin-half), tip.y - 38}, middle, force)
	length := func(x float64, r units.Rounding) string { return units.Show(x, units.Length, b.Units, r) }
	p.span(y0+92, barLeft, x, length(b.Station, units.Nearest)+" to the cutter")
	p.span(y0+122, barLeft, barRight, length(b.Span, units.Nearest)+b.held())
	y := y0 + 150
	y = p.key(y, p.stroke(centre), "Bar at rest; its diameter is "+length(b.Diameter, units.Nearest))
	y = p.key(y, p.stroke(heavy), "Bar under the cut")
	y = p.note(y+2, fmt.Sprintf("It gives %s at the cutter, drawn %s as large.", length(b.Deflection, units.Up), times(m)))
	if b.Note != "" {
		y = p.note(y+2, b.Note)
	}
	return p.finish(y-4, fmt.Sprintf("Pushed by %s, the bar gives %s at the cutter. %s", force, length(b.Deflection, units.Up), b.Note))
}

func (b *Bent) held() string {
	if b.OneEnd {
		return " overhang"
	}
	return " between bearings"
}

// shape is the bend at x, in the form of the elastic line of a straight bar
// under one force, and as large as given at the cutter.
func (b *Bent) shape(x float64) float64 {
	at := b.line(b.Station)
	if at == 0 {
		return 0
	}
	return b.Deflection * b.line(x) / at
}

func (b *Bent) line(x float64) float64 {
	a, l := b.Station, b.Span
	if b.OneEnd {
		if x <= a {
			return x * x * (3*a - x)
		}
		return a * a * (3*x - a)
	}
	if x > a { // seen from the other bearing
		a, x = l-a, l-x
	}
	c := l - a
	return c * x * (l*l - c*c - x*x)
}

func (b *Bent) greatest() float64 {
	most := 0.0
	for i := range 101 {
		most = max(most, b.shape(b.Span*float64(i)/100))
	}
	return most
}

// bar draws bearings or holder, the bar and the cutter.
func (p *pen) bar(b Bent, y0, scale float64) {
	const half = 9.0
	var top, bottom []point
	for i := range 61 {
		z := b.Span * float64(i) / 60
		x := barLeft + (barRight-barLeft)*float64(i)/60
		y := y0 + scale*b.shape(z)
		top, bottom = append(top, point{x, y - half}), append(bottom, point{x, y + half})
	}
	outline := append([]point(nil), top...)
	for i := range bottom {
		outline = append(outline, bottom[len(bottom)-1-i])
	}
	p.line(centre, point{barLeft - 30, y0}, point{barRight + 34, y0})
	p.shape(`stroke-width="2.2"`, outline)
	p.bearing(point{barLeft, y0}, b.OneEnd)
	if !b.OneEnd {
		p.bearing(point{barRight, y0}, false)
	}
	x := barLeft + (barRight-barLeft)*b.Station/b.Span
	y := y0 + scale*b.shape(b.Station)
	p.shape(solid, []point{{x - 4, y - half}, {x + 4, y - half}, {x + 4, y - half - 7}, {x - 1, y - half - 7}})
	p.line(thin, point{x, y + half}, point{x, y0 + 96})
	p.line(thin, point{barLeft, y0 + 34}, point{barLeft, y0 + 127})
	p.line(thin, point{barRight, y0 + 34}, point{barRight, y0 + 127})
}

// bearing draws what holds the bar: two blocks, or a holder with its hatching.
func (p *pen) bearing(c point, holder bool) {
	if holder {
		p.rect(p.hatch(wallHatch)+` stroke-width="1.8"`, box{c.x - 28, c.y - 30, c.x, c.y + 30})
		return
	}
	for _, sign := range []float64{-1, 1} {
		y1, y2 := c.y+sign*10, c.y+sign*30
		p.rect(p.hatch(wallHatch)+` stroke-width="1.3"`, box{c.x - 11, math.Min(y1, y2), c.x + 11, math.Max(y1, y2)})
	}
}
