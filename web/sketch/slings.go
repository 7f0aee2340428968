package sketch

import (
	"fmt"
	"math"
	"strings"

	"gudgeon/units"
)

// Leg is one leg of a sling.
type Leg struct {
	Angle float64 // from the horizontal, rad, 5 to 90 degrees
	Load  float64 // pull in it, N; 0: not known
}

// Rig is a load on a hook.
type Rig struct {
	Weight float64 // kg
	Legs   []Leg   // one to four; of three or four the last ones are drawn behind
	Note   string  // what the pre-lift check says; may be empty
	Units  units.System
}

// leastSlingAngle is the flattest leg worth rigging: below it the pull is twice
// the share of the weight and grows fast.
const leastSlingAngle = 30 * math.Pi / 180

// Slings draws hook, slings and load, with each leg's angle from the horizontal
// and the pull in it.
func Slings(r Rig) *Drawing {
	p := newPen("slings", "Hook, slings and angles")
	top := p.heading() + 16
	hook := point{width / 2, top + 44}
	p.hook(point{hook.x, top}, hook)
	feet, load := legFeet(r.Legs, hook)
	if len(r.Legs) > 2 {
		p.back(load, hook.x)
	}
	p.load(load, hook.x, units.Show(r.Weight, units.Mass, r.Units, units.Nearest))
	p.line(centre, point{hook.x, hook.y + 6}, point{hook.x, load.y2 + 12})
	for i := len(r.Legs) - 1; i >= 0; i-- {
		p.leg(r, i, hook, feet[i])
	}
	y := load.y2 + 32
	for i, l := range r.Legs {
		y = p.legLine(y, i, l, r.Units)
	}
	if r.Note != "" {
		y = p.note(y+3, r.Note)
	}
	y = p.note(y+3, "Angles are from the horizontal. Not to scale. The tags on the slings govern, and a qualified rigger says how to sling.")
	return p.finish(y-4, r.describe())
}

// legFeet puts the ends of the legs on the load, and the load under them. All
// legs reach down as far, so the flatter one reaches farther out.
func legFeet(legs []Leg, hook point) ([]point, box) {
	drop := 150.0
	for _, l := range legs {
		drop = min(drop, 128*math.Tan(l.Angle))
	}
	drop = max(drop, 34)
	feet := make([]point, len(legs))
	y := hook.y + drop + 6
	load := box{hook.x - 40, y, hook.x + 40, y + 62}
	for i, l := range legs {
		side := float64(1 - 2*((i+1)%2)) // left, right, left, right
		reach := min(drop/math.Tan(l.Angle), 130)
		if i >= 2 {
			feet[i] = point{hook.x + side*0.6*reach, y - 18}
			continue
		}
		feet[i] = point{hook.x + side*reach, y - 6}
		load.x1, load.x2 = min(load.x1, feet[i].x-14), max(load.x2, feet[i].x+14)
	}
	return feet, load
}

// back draws the upper face of a load that has legs behind.
func (p *pen) back(b box, at float64) {
	p.shape(blank, []point{{b.x1, b.y1}, {b.x2, b.y1}, {at + 0.66*(b.x2-at), b.y1 - 14}, {at + 0.66*(b.x1-at), b.y1 - 14}})
}

// hook draws a crane hook whose saddle is at b.
func (p *pen) hook(a, b point) {
	p.line(heavy, a, point{a.x, b.y - 22})
	p.rect(blank, box{a.x - 9, b.y - 26, a.x + 9, b.y - 16})
	var line []point
	for i := range 23 {
		t := -0.5*math.Pi + float64(i)/22*1.45*math.Pi
		line = append(line, point{b.x + 9*math.Cos(t), b.y - 6 + 9*math.Sin(t)})
	}
	p.curve(`stroke-width="4.2"`, line)
	p.reach(box{b.x - 12, b.y - 18, b.x + 12, b.y + 6})
}

// load draws a block with its centre of gravity at x, half way up, and its
// weight beside that or, where there is no room, under it.
func (p *pen) load(b box, x float64, weight string) {
	p.rect(p.hatch(wallHatch)+` stroke-width="1.8"`, b)
	g := point{x, (b.y1 + b.y2) / 2}
	if x+14+textWidth(weight, labelSize, true)+6 <= b.x2 {
		p.gravity(g)
		p.strong(point{x + 14, g.y + 5}, start, weight)
		return
	}
	g.y -= 6
	p.gravity(g)
	p.strong(point{x, g.y + 25}, middle, weight)
}

// gravity is the mark of a centre of gravity: a ring with two dark quarters.
func (p *pen) gravity(c point) {
	const r = 8.0
	p.circle(`fill="#fff" stroke-width="1.3"`, c, r)
	for _, from := range []float64{0, math.Pi} {
		quarter := []point{c}
		for i := range 10 {
			quarter = append(quarter, onDial(c, from+float64(i)/9*math.Pi/2, r))
		}
		p.shape(solid, quarter)
	}
}

// leg draws one leg with its angle and number.
func (p *pen) leg(r Rig, i int, hook, foot point) {
	style := heavy
	if i >= 2 {
		style = hidden
	}
	p.line(style, hook, foot)
	p.circle(blank, foot, 3.5)
	if i < 2 && r.Legs[i].Angle < 88*math.Pi/180 {
		p.legAngle(r.Legs[i].Angle, hook, foot, len(r.Legs) > 2)
	}
	at := point{hook.x + 0.55*(foot.x-hook.x), hook.y + 0.55*(foot.y-hook.y)}
	p.circle(blank, at, 9.5)
	p.letter(point{at.x, at.y + 4.4}, middle, fmt.Sprint(i+1), smallSize, true)
}

// legAngle draws the angle at the foot of a leg. Its number stands inside the
// sling, or outside where further legs take that room.
func (p *pen) legAngle(angle float64, hook, foot point, outside bool) {
	inward := 1.0
	if foot.x > hook.x {
		inward = -1
	}
	const r = 26.0
	var arc []point
	for i := range 13 {
		t := float64(i) / 12 * angle
		arc = append(arc, point{foot.x + inward*r*math.Cos(t), foot.y - r*math.Sin(t)})
	}
	p.curve(thin, arc)
	at := point{foot.x + inward*max(30, 17/math.Tan(angle)+4), foot.y - 2}
	if outside {
		at = point{foot.x - inward*10, foot.y - 8}
	}
	anchor := start
	if (inward < 0) != outside {
		anchor = end
	}
	p.small(at, anchor, wholeDegrees(angle))
}

func (p *pen) legLine(y float64, i int, l Leg, sys units.System) float64 {
	text := "Leg " + fmt.Sprint(i+1) + ": " + wholeDegrees(l.Angle)
	if l.Load > 0 {
		text += ", pull " + units.Show(l.Load, units.Force, sys, units.Up)
	}
	if l.Angle < leastSlingAngle {
		text += ". Too flat: under 30°"
	}
	return p.note(y, text)
}

// wholeDegrees rounds down: a steeper sling than it is would flatter it.
func wholeDegrees(angle float64) string {
	return fmt.Sprintf("%.0f°", math.Floor(angle*180/math.Pi+1e-9))
}

func (r *Rig) describe() string {
	say := make([]string, len(r.Legs))
	for i, l := range r.Legs {
		say[i] = fmt.Sprintf("leg %d at %s", i+1, wholeDegrees(l.Angle))
		if l.Load > 0 {
			say[i] += " pulling " + units.Show(l.Load, units.Force, r.Units, units.Up)
		}
	}
	return fmt.Sprintf("A load of %s hangs from a hook: %s from the horizontal. %s",
		units.Show(r.Weight, units.Mass, r.Units, units.Nearest), strings.Join(say, ", "), r.Note)
}
