package sketch

import (
	"fmt"

	"gudgeon/units"
)

// Carried is a load on a fork truck, as package truck works it out.
type Carried struct {
	Weight       float64 // kg
	LoadCentre   float64 // fork face to the load's centre of gravity, m
	Rating       float64 // on the plate, kg
	RatingCentre float64 // on the plate, m
	Capacity     float64 // what the truck may carry at LoadCentre, kg
	ForkLength   float64 // m
	Gap          float64 // fork face to the near end of the load, m
	Length       float64 // of the load along the forks, m; 0: not known, drawn even about its centre of gravity
	Note         string
	Units        units.System
}

// ForkLoad draws the load on the forks with its load centre, and its moment
// about the fork face against the plate's as two bars.
func ForkLoad(c Carried) *Drawing {
	p := newPen("forks", "The load on the forks")
	top := p.heading() + 8
	face := 104.0
	scale := 214 / max(c.ForkLength, c.LoadCentre*1.35, c.RatingCentre*1.2, c.Gap+c.Length)
	ground := top + 196
	blade := ground - 40
	p.truck(face, blade, ground)
	p.shape(blank, []point{{face - 8, blade - 74}, {face, blade - 74}, {face, blade - 5}, {face + c.ForkLength*scale, blade - 2}, {face + c.ForkLength*scale, blade + 3}, {face - 8, blade + 5}})
	g := point{face + c.LoadCentre*scale, blade - 58}
	near, far := c.ends(scale, g.x-face, width-margin-face)
	p.load(box{face + near, blade - 110, face + far, blade - 6}, g.x, units.Show(c.Weight, units.Mass, c.Units, units.Nearest))
	p.arrow(plain, g, point{g.x, blade + 26})
	length := func(x float64) string { return units.Show(x, units.Length, c.Units, units.Nearest) }
	p.line(thin, point{face, blade + 6}, point{face, ground + 62})
	p.line(thin, point{g.x, blade + 28}, point{g.x, ground + 30})
	p.span(ground+26, face, g.x, length(c.LoadCentre)+" load centre")
	plate := face + c.RatingCentre*scale
	p.line(thin, point{plate, ground + 50}, point{plate, ground + 62})
	p.span(ground+58, face, plate, length(c.RatingCentre)+" on the plate")
	y := p.moments(c, ground+92)
	if c.Note != "" {
		y = p.note(y+2, c.Note)
	}
	y = p.note(y+2, "The truck's own plate governs, with the attachment it carries.")
	return p.finish(y-4, c.describe())
}

// ends gives where the load begins and ends in front of the fork face, as drawn;
// at is where its centre of gravity is, room how far the picture goes.
func (c *Carried) ends(scale, at, room float64) (near, far float64) {
	if c.Length > 0 {
		return c.Gap * scale, (c.Gap + c.Length) * scale
	}
	half := min(at, room-at) * 0.94
	return at - half, at + half
}

// truck draws the front of a fork truck: mast, wheel, ground.
func (p *pen) truck(face, blade, ground float64) {
	p.line(plain, point{margin, ground}, point{width - margin, ground})
	p.rect(blank, box{face - 20, blade - 132, face - 8, ground - 14})
	p.line(thin, point{face - 14, blade - 130}, point{face - 14, ground - 16})
	p.shape(blank, []point{{face - 94, ground - 24}, {face - 94, ground - 72}, {face - 70, ground - 78}, {face - 62, ground - 120}, {face - 24, ground - 120}, {face - 24, ground - 24}})
	p.circle(blank, point{face - 34, ground - 18}, 17.5)
	p.circle(solid, point{face - 34, ground - 18}, 3)
	p.circle(blank, point{face - 80, ground - 14}, 13.5)
}

// moments compares load and plate: weight times distance, as bars.
func (p *pen) moments(c Carried, y float64) float64 {
	load, plate := c.Weight*c.LoadCentre, c.Rating*c.RatingCentre
	scale := (width - 2*margin) / max(load, plate)
	p.strong(point{margin, y}, start, "Weight times distance from the fork face")
	bar := func(y float64, m float64, fill, text string) {
		p.rect(fill+` stroke-width="1.3"`, box{margin, y, margin + m*scale, y + 13})
		p.label(point{margin, y + 28}, start, text)
	}
	fill := p.hatch(weldHatch)
	if load > plate {
		fill = p.hatch(shortHatch)
	}
	bar(y+8, load, fill, "this load")
	bar(y+46, plate, `fill="#fff"`, "as the plate rates it")
	if load > plate {
		x := margin + plate*scale
		p.line(hidden, point{x, y + 8}, point{x, y + 62})
	}
	text := fmt.Sprintf("At %s this truck may carry %s.", units.Show(c.LoadCentre, units.Length, c.Units, units.Nearest), units.Show(c.Capacity, units.Mass, c.Units, units.Down))
	if c.Weight > c.Capacity {
		text += " The load is too heavy there."
	}
	return p.note(y+96, text)
}

func (c *Carried) describe() string {
	text := fmt.Sprintf("A load of %s stands on forks with its centre of gravity %s from the fork face. The truck may carry %s there.",
		units.Show(c.Weight, units.Mass, c.Units, units.Nearest), units.Show(c.LoadCentre, units.Length, c.Units, units.Nearest),
		units.Show(c.Capacity, units.Mass, c.Units, units.Down))
	if c.Weight > c.Capacity {
		text += " That is too little."
	}
	return text + " " + c.Note
}
