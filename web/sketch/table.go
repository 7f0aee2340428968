package sketch

import (
	"fmt"

	"gudgeon/units"
)

// OnTable is a load on a lift table, as package truck works it out.
type OnTable struct {
	Weight       float64 // of the load, kg
	Rating       float64 // on the table's plate, kg
	PlatformHalf float64 // middle of the table to the line its platform rests on, m
	BaseHalf     float64 // middle of the table to the line its base stands on, m
	Offset       float64 // middle of the table to the load's centre of gravity, m
	NearEnd      float64 // on the end that the load is off towards, kg
	FarEnd       float64 // on the other end, kg; below 0 the platform is pulled up there
	EndRating    float64 // for one end, kg; 0: half of Rating
	Note         string
	Units        units.System
}

// TableLoad draws a load off the middle of a lift table, and what each end of
// its platform carries.
func TableLoad(t OnTable) *Drawing {
	p := newPen("table", "The load on the lift table")
	top := p.heading() + 6
	mid := 160.0
	scale := min(92/max(t.PlatformHalf, t.BaseHalf), (width-mid-62)/max(t.Offset, 1e-6))
	ground, deck := top+238, top+112
	p.table(mid, deck, ground, t.PlatformHalf*scale, t.BaseHalf*scale)
	g := point{mid + t.Offset*scale, deck - 44}
	half := min(78, width-margin-g.x)
	p.load(box{g.x - half, deck - 92, g.x + half, deck - 8}, g.x, units.Show(t.Weight, units.Mass, t.Units, units.Nearest))
	p.thrust(t, mid, deck, t.PlatformHalf*scale)
	p.line(centre, point{mid, deck - 100}, point{mid, ground + 30})
	p.line(thin, point{g.x, g.y + 8}, point{g.x, ground + 30})
	p.span(ground+26, mid, g.x, units.Show(t.Offset, units.Length, t.Units, units.Nearest)+" off the middle")
	edge := mid + t.BaseHalf*scale
	p.line(thin, point{edge, ground + 2}, point{edge, ground + 62})
	p.line(thin, point{mid, ground + 30}, point{mid, ground + 62})
	p.span(ground+58, mid, edge, units.Show(t.BaseHalf, units.Length, t.Units, units.Nearest)+" to its edge")
	y := p.ends(t, ground+90)
	if t.Note != "" {
		y = p.note(y+2, t.Note)
	}
	y = p.note(y+2, "A plate rates a table for a load spread evenly. The maker says what one end may carry.")
	return p.finish(y-4, t.describe())
}

// table draws platform, scissors and base.
func (p *pen) table(mid, deck, ground, platform, base float64) {
	p.line(plain, point{margin, ground}, point{width - margin, ground})
	p.rect(blank, box{mid - platform - 8, deck - 8, mid + platform + 8, deck})
	p.rect(blank, box{mid - base, ground - 12, mid + base, ground})
	reach := min(platform, base) - 6
	for _, side := range []float64{-1, 1} {
		a, b := point{mid - side*reach, deck + 5}, point{mid + side*reach, ground - 17}
		p.line(`stroke-width="6"`, a, b)
		p.line(`stroke="#fff" stroke-width="3.4"`, a, b)
		p.circle(blank, a, 4.5)
		p.circle(blank, b, 4.5)
	}
	p.circle(blank, point{mid, (deck + ground - 12) / 2}, 4)
}

// thrust shows which way each end of the platform is pushed.
func (p *pen) thrust(t OnTable, mid, deck, half float64) {
	up, down := deck+6, deck+42
	p.arrow(heavy, point{mid + half + 17, up}, point{mid + half + 17, down})
	far := mid - half - 17
	if t.FarEnd < 0 {
		p.arrow(heavy, point{far, down}, point{far, up})
		return
	}
	p.arrow(heavy, point{far, up}, point{far, down})
}

// ends says what each end carries against its rating.
func (p *pen) ends(t OnTable, y float64) float64 {
	rating := t.EndRating
	if rating == 0 {
		rating = t.Rating / 2
	}
	mass := func(x float64, r units.Rounding) string { return units.Show(x, units.Mass, t.Units, r) }
	text := fmt.Sprintf("Loaded end carries %s; rated %s.", mass(t.NearEnd, units.Up), mass(rating, units.Down))
	if t.NearEnd > rating {
		text += " Too much."
	}
	y = p.note(y, text)
	if t.FarEnd < 0 {
		return p.note(y+2, fmt.Sprintf("The far end is pulled up with %s: the platform lifts off.", mass(-t.FarEnd, units.Up)))
	}
	return p.note(y+2, fmt.Sprintf("Far end carries %s.", mass(t.FarEnd, units.Down)))
}

func (t *OnTable) describe() string {
	text := fmt.Sprintf("A load of %s stands on a lift table with its centre of gravity %s off the middle.",
		units.Show(t.Weight, units.Mass, t.Units, units.Nearest), units.Show(t.Offset, units.Length, t.Units, units.Nearest))
	switch {
	case t.Offset > t.BaseHalf:
		text += " That is outside the base: the table can tip over."
	case t.Offset > t.PlatformHalf:
		text += " That is over the edge of the platform's support: the far end is pulled up."
	}
	return text + " " + t.Note
}
