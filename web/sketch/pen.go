package sketch

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// point is a place on the drawing: x to the right, y down.
type point struct{ x, y float64 }

// box is an upright rectangle.
type box struct{ x1, y1, x2, y2 float64 }

func (b box) overlaps(c box) bool {
	return b.x1 < c.x2 && c.x1 < b.x2 && b.y1 < c.y2 && c.y1 < b.y2
}

// line styles, after the line kinds of engineering drawing.
const (
	heavy  = `stroke-width="2.2"`
	plain  = `stroke-width="1.3"`
	thin   = `stroke-width=".7"`
	centre = `stroke-width=".9" stroke-dasharray="12 3 2 3"`
	hidden = `stroke-width="1" stroke-dasharray="5 3"`
	alarm  = `stroke="#a3160f" stroke-width="5" stroke-linecap="butt"`
	window = `stroke="#a3160f" stroke-width="1.8" stroke-dasharray="7 3"`
	solid  = `fill="#111" stroke="none"`
	blank  = `fill="#fff" stroke-width="1.3"`
)

// pen draws one figure and remembers how far it went.
type pen struct {
	d     Drawing
	body  strings.Builder
	names []string // hatchings in use
}

func newPen(name, title string) *pen {
	p := &pen{}
	p.d.name, p.d.Title = name, title
	p.d.ink = box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	return p
}

// finish closes the figure below y.
func (p *pen) finish(y float64, desc string) *Drawing {
	p.d.Height = math.Ceil(y)
	p.d.Desc = desc
	p.d.body = p.body.String()
	p.d.defs = hatchings(p.d.name, p.names)
	d := p.d
	return &d
}

// num writes a coordinate: a tenth of a pixel is enough.
func num(x float64) string {
	if math.Abs(x) < 0.05 {
		return "0"
	}
	return strings.TrimSuffix(strconv.FormatFloat(x, 'f', 1, 64), ".0")
}

func (p *pen) reach(b box) {
	i := &p.d.ink
	i.x1, i.y1, i.x2, i.y2 = min(i.x1, b.x1), min(i.y1, b.y1), max(i.x2, b.x2), max(i.y2, b.y2)
}

func (p *pen) line(style string, a, b point) {
	p.reach(box{min(a.x, b.x), min(a.y, b.y), max(a.x, b.x), max(a.y, b.y)})
	fmt.Fprintf(&p.body, "<path d=\"M%s %sL%s %s\" %s/>\n", num(a.x), num(a.y), num(b.x), num(b.y), style)
}

func (p *pen) circle(style string, c point, r float64) {
	p.reach(box{c.x - r, c.y - r, c.x + r, c.y + r})
	fmt.Fprintf(&p.body, "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" %s/>\n", num(c.x), num(c.y), num(r), style)
}

func (p *pen) rect(style string, b box) {
	p.reach(b)
	fmt.Fprintf(&p.body, "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" %s/>\n", num(b.x1), num(b.y1), num(b.x2-b.x1), num(b.y2-b.y1), style)
}

// shape draws closed outlines in one path, so that one inside another is a hole.
func (p *pen) shape(style string, outlines ...[]point) {
	var b strings.Builder
	for _, o := range outlines {
		p.trace(&b, o)
		b.WriteString("Z")
	}
	if b.Len() > 0 {
		fmt.Fprintf(&p.body, "<path d=\"%s\" fill-rule=\"evenodd\" %s/>\n", b.String(), style)
	}
}

// curve draws open lines in one path.
func (p *pen) curve(style string, lines ...[]point) {
	var b strings.Builder
	for _, l := range lines {
		p.trace(&b, l)
	}
	if b.Len() > 0 {
		fmt.Fprintf(&p.body, "<path d=\"%s\" %s/>\n", b.String(), style)
	}
}

func (p *pen) trace(b *strings.Builder, line []point) {
	for i, q := range line {
		p.reach(box{q.x, q.y, q.x, q.y})
		letter := "L"
		if i == 0 {
			letter = "M"
		}
		b.WriteString(letter + num(q.x) + " " + num(q.y))
	}
}

// How a text stands to its point.
const (
	start  = "start"
	middle = "middle"
	end    = "end"
)

// label writes one line of text whose baseline is at a.
func (p *pen) label(a point, anchor, text string) { p.letter(a, anchor, text, labelSize, false) }

// strong writes it bold.
func (p *pen) strong(a point, anchor, text string) { p.letter(a, anchor, text, labelSize, true) }

// small writes it a little smaller.
func (p *pen) small(a point, anchor, text string) { p.letter(a, anchor, text, smallSize, false) }

// letter writes a text with a white edge, so that lines under it do not spoil it.
func (p *pen) letter(a point, anchor, text string, size float64, bold bool) {
	w := textWidth(text, size, bold)
	x := a.x
	switch anchor {
	case middle:
		x -= w / 2
	case end:
		x -= w
	}
	b := box{x, a.y - 0.75*size, x + w, a.y + 0.22*size}
	p.d.text = append(p.d.text, b)
	p.reach(b)
	weight := ""
	if bold {
		weight = ` font-weight="bold"`
	}
	if size != labelSize {
		weight += fmt.Sprintf(" font-size=\"%s\"", num(size))
	}
	fmt.Fprintf(&p.body, "<text x=\"%s\" y=\"%s\" text-anchor=\"%s\"%s fill=\"#111\" stroke=\"#fff\" stroke-width=\"3\" paint-order=\"stroke\">%s</text>\n",
		num(a.x), num(a.y), anchor, weight, escape(text))
}

// heading writes the figure's title and gives the y below it.
func (p *pen) heading() float64 {
	y := 20.0
	for _, line := range fold(p.d.Title, titleSize*1.08, width-2*margin) {
		p.letter(point{margin, y}, start, line, titleSize, true)
		y += 19
	}
	return y - 6
}

// note writes folded text from y down and gives the y of the next line.
func (p *pen) note(y float64, text string) float64 { return p.noteAt(margin, y, text) }

func (p *pen) noteAt(x, y float64, text string) float64 {
	for _, line := range fold(text, labelSize, width-margin-x) {
		p.label(point{x, y}, start, line)
		y += 17
	}
	return y
}

// arrow draws a line with a slender head at b.
func (p *pen) arrow(style string, a, b point) {
	p.line(style, a, b)
	p.head(a, b, 9, 2.6)
}

// head draws an arrow's head at b, coming from a.
func (p *pen) head(a, b point, long, half float64) {
	d := math.Hypot(b.x-a.x, b.y-a.y)
	if d == 0 {
		return
	}
	ux, uy := (b.x-a.x)/d, (b.y-a.y)/d
	back := point{b.x - long*ux, b.y - long*uy}
	p.shape(solid, []point{b, {back.x - half*uy, back.y + half*ux}, {back.x + half*uy, back.y - half*ux}})
}

// span draws a level dimension line with a label over its middle, or beside it
// where it is too short.
func (p *pen) span(y, x1, x2 float64, text string) {
	x1, x2 = min(x1, x2), max(x1, x2)
	for _, x := range []float64{x1, x2} {
		p.line(thin, point{x, y - 5}, point{x, y + 5})
	}
	p.line(thin, point{x1, y}, point{x2, y})
	if x2-x1 > 20 {
		p.head(point{x2, y}, point{x1, y}, 8, 2.2)
		p.head(point{x1, y}, point{x2, y}, 8, 2.2)
	}
	w := textWidth(text, labelSize, false)
	switch {
	case w+8 <= x2-x1:
		p.label(point{(x1 + x2) / 2, y - 6}, middle, text)
	case x2+8+w <= width-margin:
		p.label(point{x2 + 8, y + 4.5}, start, text)
	default:
		p.label(point{max(x1-8, margin+w), y + 4.5}, end, text)
	}
}

// badge draws a number in a ring.
func (p *pen) badge(c point, text string) {
	p.circle(`fill="#fff" stroke="#a3160f" stroke-width="1.6"`, c, 9.5)
	p.letter(point{c.x, c.y + 4.4}, middle, text, smallSize, true)
}

// key writes one line of a legend: a swatch drawn by draw, then text. It gives
// the y of the next line.
func (p *pen) key(y float64, draw func(b box), text string) float64 {
	draw(box{margin, y - 10, margin + 26, y + 2})
	return p.noteAt(margin+34, y, text) + 2
}

// swatch is a legend's sample of a hatching.
func (p *pen) swatch(fill string) func(box) {
	return func(b box) { p.rect(fill+` stroke="#111" stroke-width="1"`, b) }
}

// stroke is a legend's sample of a line.
func (p *pen) stroke(style string) func(box) {
	return func(b box) {
		y := (b.y1 + b.y2) / 2
		p.line(style, point{b.x1, y}, point{b.x2, y})
	}
}
