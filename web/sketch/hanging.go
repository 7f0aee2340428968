package sketch

import (
	"fmt"
	"math"

	"gudgeon/units"
)

// Hung is a part on one lug, as package lift works it out.
type Hung struct {
	LugOffset float64 // from the centre of gravity to the lug, level, positive towards end A, m
	LugHeight float64 // from the centre of gravity up to the lug, m
	Length    float64 // end A to end B, m
	Tilt      float64 // from level, rad; positive: A high
	Drop      float64 // A above B, m
	Move      float64 // how far to move the lug so that it hangs as wanted, m; positive towards A
	Note      string
	Units     units.System
}

// Hanging draws the part as it will hang: lug, plumb line, centre of gravity
// under the lug, and the tilt. End A is at the left.
func Hanging(h Hung) *Drawing {
	p := newPen("hanging", "How the part will hang")
	v := hungView{pen: p, in: h, lug: point{width / 2, p.heading() + 74}}
	v.setScale()
	p.hook(point{v.lug.x, v.lug.y - 62}, point{v.lug.x, v.lug.y - 12})
	v.part()
	v.lines()
	y := v.bottom + 28
	y = p.note(y, h.tiltText())
	if math.Abs(h.Move) > 1e-6 {
		y = p.note(y+2, fmt.Sprintf("To hang as wanted, move the lug %s towards %s.", roughly(h.Move, h.Units), towards(h.Move)))
	}
	if h.Note != "" {
		y = p.note(y+2, h.Note)
	}
	y = p.note(y+2, "The centre of gravity comes to rest under the lug. Keep everybody clear until it has. The shape is not to scale.")
	return p.finish(y-4, "A part hangs from one lug. "+h.tiltText()+" "+h.Note)
}

func (h *Hung) tiltText() string {
	if math.Abs(h.Tilt) < levelTilt {
		return "It hangs level."
	}
	return fmt.Sprintf("Tilt %s: end %s hangs %s lower.", tenths(math.Abs(h.Tilt)), lowEnd(h.Tilt), roughly(h.Drop, h.Units))
}

// levelTilt is a tilt that nobody sees on a hook.
const levelTilt = 0.5 * math.Pi / 180

// roughly shows a size to what a tape can tell: a sixteenth of an inch or so.
func roughly(x float64, sys units.System) string {
	step := 0.1 * 0.0254
	if sys == units.MetricShop {
		step = 0.001
	}
	return units.Show(math.Round(math.Abs(x)/step)*step, units.Length, sys, units.Nearest)
}

func lowEnd(tilt float64) string {
	if tilt >= 0 {
		return "B"
	}
	return "A"
}

func towards(move float64) string {
	if move > 0 {
		return "A"
	}
	return "B"
}

func tenths(angle float64) string { return fmt.Sprintf("%.1f°", angle*180/math.Pi) }

type hungView struct {
	*pen
	in     Hung
	lug    point
	scale  float64
	bottom float64
	a, b   point // upper corners at the ends
}

// setScale fits the tilted part into the width.
func (v *hungView) setScale() {
	h := v.in
	reach := h.Length/2 + math.Abs(h.LugOffset)
	v.scale = min(150/max(reach, 1e-6), 96/max(h.LugHeight, 1e-6))
}

// turn places a point given level from the centre of gravity: x towards B, y up.
func (v *hungView) turn(x, y float64) point {
	h := v.in
	x, y = (x+h.LugOffset)*v.scale, (y-h.LugHeight)*v.scale // from the lug
	sin, cos := math.Sincos(h.Tilt)
	return point{v.lug.x + x*cos + y*sin, v.lug.y + x*sin - y*cos}
}

// part draws the part as a plain block with eyes at both ends.
func (v *hungView) part() {
	h := v.in
	half, up := h.Length/2, h.LugHeight*0.78
	down := max(up*0.7, h.Length*0.08)
	v.a, v.b = v.turn(-half, up), v.turn(half, up)
	corners := []point{v.a, v.b, v.turn(half, -down), v.turn(-half, -down)}
	v.shape(v.hatch(wallHatch)+` stroke-width="1.8"`, corners)
	wide := 0.05 * h.Length
	v.shape(blank, []point{v.turn(-h.LugOffset-wide, up), v.turn(-h.LugOffset, h.LugHeight+0.04*h.Length), v.turn(-h.LugOffset+wide, up)})
	v.circle(blank, v.lug, 4)
	for _, q := range corners {
		v.bottom = max(v.bottom, q.y)
	}
	v.strongIn(v.turn(-half*0.86, (up-down)/2), "A")
	v.strongIn(v.turn(half*0.86, (up-down)/2), "B")
}

func (v *hungView) strongIn(q point, text string) { v.strong(point{q.x, q.y + 4.5}, middle, text) }

// lines draws the plumb line, the level and the tilt between.
func (v *hungView) lines() {
	g := v.turn(0, 0)
	v.line(centre, point{v.lug.x, v.lug.y - 8}, point{v.lug.x, v.bottom + 12})
	v.gravity(g)
	high, low := v.a, v.b
	if v.in.Tilt < 0 {
		high, low = v.b, v.a
	}
	if math.Abs(v.in.Tilt) < levelTilt {
		return
	}
	v.line(hidden, high, point{low.x, high.y})
	v.tiltArc(high, low)
}

// tiltArc draws the tilt between the level through the high end and the part.
func (v *hungView) tiltArc(high, low point) {
	tilt := math.Abs(v.in.Tilt)
	r := math.Abs(low.x-high.x) * 0.8
	dir := math.Copysign(1, low.x-high.x)
	at := func(t float64) point { return point{high.x + dir*r*math.Cos(t), high.y + r*math.Sin(t)} }
	var arc []point
	for i := range 13 {
		arc = append(arc, at(float64(i)/12*tilt))
	}
	v.curve(thin, arc)
	v.head(arc[10], arc[12], 7, 2.2)
	anchor := end
	if dir < 0 {
		anchor = start
	}
	q := point{at(0).x, high.y - 6}
	if mid := at(tilt / 2); mid.y-high.y > 14 {
		q = point{mid.x - dir*6, mid.y + 4.5}
	}
	v.label(q, anchor, tenths(tilt))
}
