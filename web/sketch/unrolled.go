package sketch

import (
	"fmt"
	"math"

	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// chart is the bore cut open along one clock position and laid flat.
type chart struct {
	*pen
	bore  *Bore
	frame box
	cut   float64 // clock position of the cut, rad
}

const chartHeight = 210.0

// Unrolled draws the bore cut open: clock position across, depth down, shaded by
// the stock left on the radius, the short areas outlined and numbered. b needs
// Plan and Survey.
func Unrolled(b Bore) *Drawing {
	c := &chart{pen: newPen("unrolled", "Stock left, the bore cut open and laid flat"), bore: &b}
	if !covers(b.Plan.Short, math.Pi) || covers(b.Plan.Short, 0) {
		c.cut = math.Pi
	}
	top := c.heading() + 40
	left := textWidth(b.length(b.Plan.Job.Length, units.Nearest), smallSize, false)
	left = max(left, textWidth(b.length(b.Plan.Job.Length/2, units.Nearest), smallSize, false))
	c.frame = box{max(52, left+margin+8), top, 344, top + chartHeight}
	c.shade()
	c.grid()
	c.windows()
	c.rect(plain, c.frame)
	c.scales()
	y := c.legend(c.frame.y2 + 30)
	return c.pen.finish(y, c.describe())
}

// covers reports whether a clock position lies in one of the areas.
func covers(areas []weld.Area, clock float64) bool {
	for _, a := range areas {
		if a.Covers(clock, a.DepthFrom) {
			return true
		}
	}
	return false
}

// x is where a clock position stands, from the cut on; whole turns count.
func (c *chart) x(turned float64) float64 {
	return c.frame.x1 + turned/(2*math.Pi)*(c.frame.x2-c.frame.x1)
}

func (c *chart) y(z float64) float64 {
	return c.frame.y1 + z/c.bore.Plan.Job.Length*chartHeight
}

// shade fills the chart from the least stock up.
func (c *chart) shade() {
	p := c.bore.Plan
	c.band(c.hatch(sparseHatch), 2*p.Job.Allowance+p.GridError)
	c.band(`fill="#fff"`, p.Job.Allowance+p.GridError)
	c.band(c.hatch(shortHatch), p.Job.Allowance+p.GridError)
	c.band(c.hatch(bareHatch), 0)
}

// band fills where the stock is under a level. Between the places of the grid
// it goes along straight lines.
func (c *chart) band(fill string, level float64) {
	g := &c.bore.Plan.Grid
	var pieces [][]point
	n := len(g.Clocks)
	step := 2 * math.Pi / float64(n)
	first := int(math.Round(c.cut / step))
	for row := 0; row+1 < len(g.Depths); row++ {
		for k := range n {
			left, right := (first+k)%n, (first+k+1)%n
			pieces = append(pieces, below([4]corner{
				{point{c.x(float64(k) * step), c.y(g.Depths[row])}, g.Stock[g.Index(row, left)] - level},
				{point{c.x(float64(k+1) * step), c.y(g.Depths[row])}, g.Stock[g.Index(row, right)] - level},
				{point{c.x(float64(k+1) * step), c.y(g.Depths[row+1])}, g.Stock[g.Index(row+1, right)] - level},
				{point{c.x(float64(k) * step), c.y(g.Depths[row+1])}, g.Stock[g.Index(row+1, left)] - level},
			}))
		}
	}
	c.shape(fill+` stroke="none"`, joined(pieces)...)
}

// corner is one corner of a cell, with what is left there over a level.
type corner struct {
	point
	over float64
}

// below is the part of a cell that is under the level.
func below(cell [4]corner) []point {
	var out []point
	for i, a := range cell {
		b := cell[(i+1)%4]
		if a.over < 0 {
			out = append(out, a.point)
		}
		if (a.over < 0) != (b.over < 0) {
			t := a.over / (a.over - b.over)
			out = append(out, point{a.x + t*(b.x-a.x), a.y + t*(b.y-a.y)})
		}
	}
	if len(out) < 3 {
		return nil
	}
	return out
}

// joined puts whole cells that stand side by side into one, which keeps the
// drawing small.
func joined(pieces [][]point) [][]point {
	var out [][]point
	for _, q := range pieces {
		if q == nil {
			continue
		}
		if n := len(out); n > 0 && whole(q) && whole(out[n-1]) && out[n-1][1] == q[0] && out[n-1][2] == q[3] {
			out[n-1][1], out[n-1][2] = q[1], q[2]
			continue
		}
		out = append(out, q)
	}
	return out
}

// whole reports whether a piece is an upright rectangle.
func whole(q []point) bool {
	return len(q) == 4 && q[0].y == q[1].y && q[2].y == q[3].y && q[0].x == q[3].x && q[1].x == q[2].x
}

// grid draws the quarter hours and the stations.
func (c *chart) grid() {
	for k := 1; k < 4; k++ {
		x := c.x(float64(k) * math.Pi / 2)
		c.line(thin, point{x, c.frame.y1}, point{x, c.frame.y2})
	}
	for _, st := range c.bore.Survey.Stations {
		if st.Swept && st.Z >= 0 && st.Z <= c.bore.Plan.Job.Length {
			c.line(hidden, point{c.frame.x1, c.y(st.Z)}, point{c.frame.x2, c.y(st.Z)})
		}
	}
}

// windows outlines what is to be marked on the part, and numbers it.
func (c *chart) windows() {
	for i, a := range c.bore.short() {
		from, size := bore.Turn(a.From-c.cut), bore.Turn(a.To-a.From)
		if a.AllRound() {
			from, size = 0, 2*math.Pi
		}
		top, bottom := c.y(a.DepthFrom), c.y(a.DepthTo)
		for _, shift := range []float64{0, -2 * math.Pi} { // what passes the cut comes in on the other side
			left, right := max(0, from+shift), min(2*math.Pi, from+size+shift)
			if right > left {
				c.rect(`stroke="#fff" stroke-width="3.4"`, box{c.x(left), top, c.x(right), bottom})
				c.rect(window, box{c.x(left), top, c.x(right), bottom})
			}
		}
		at := point{c.x(bore.Turn(a.Most.Clock - c.cut)), c.y(a.Most.Z)}
		at.x = min(max(at.x, c.frame.x1+13), c.frame.x2-13)
		at.y = min(max(at.y, c.frame.y1+13), c.frame.y2-13)
		c.badge(at, fmt.Sprint(i+1))
	}
}

// scales letters clock positions above and depths at the left.
func (c *chart) scales() {
	for k := range 5 {
		q := point{c.x(float64(k) * math.Pi / 2), c.frame.y1 - 8}
		c.line(thin, point{q.x, c.frame.y1}, point{q.x, c.frame.y1 - 5})
		c.strong(q, middle, hour(c.cut+float64(k)*math.Pi/2))
	}
	c.small(point{c.frame.x1 - 14, c.frame.y1 - 8}, end, "clock")
	c.small(point{c.frame.x1, c.frame.y1 - 27}, start, "near face")
	length := c.bore.Plan.Job.Length
	for k := range 3 {
		z := length * float64(k) / 2
		y := c.y(z)
		c.line(thin, point{c.frame.x1 - 5, y}, point{c.frame.x1, y})
		c.small(point{c.frame.x1 - 7, y + 4 + float64(1-k)*3}, end, c.bore.length(z, units.Nearest))
	}
	c.small(point{c.frame.x1, c.frame.y2 + 15}, start, "far face; the wall as seen from the axis")
}

func (c *chart) legend(y float64) float64 {
	b, p := c.bore, c.bore.Plan
	y += 6
	if p.LeastStock.Value < 0 {
		y = c.key(y, c.swatch(c.hatch(bareHatch)), "No metal: the finish cut will not touch")
	}
	allowance := b.length(p.Job.Allowance, units.Nearest)
	if len(p.Short) > 0 {
		y = c.key(y, c.swatch(c.hatch(shortHatch)), "Less than the "+allowance+" wanted")
	}
	y = c.key(y, c.swatch(c.hatch(sparseHatch)), "Enough: "+allowance+" to "+b.length(2*p.Job.Allowance, units.Nearest))
	y = c.key(y, c.swatch(`fill="#fff"`), "Plenty: more than that")
	y = c.key(y, c.stroke(hidden), "Read at this depth; between, it is drawn straight")
	if len(p.Short) > 0 {
		y = c.key(y, func(r box) { c.rect(window, r) }, "Mark this out and build it up by hand")
	}
	y += 5
	for i, a := range b.short() {
		c.badge(point{margin + 13, y - 4}, fmt.Sprint(i+1))
		y = c.noteAt(margin+34, y, b.areaText(a)+".") + 3
	}
	if more := len(p.Short) - len(b.short()); more > 0 {
		y = c.note(y, fmt.Sprintf("%d smaller short areas are not numbered.", more))
	}
	return y + 2
}

func (c *chart) describe() string {
	b := c.bore
	if b.Plan.CleansUp {
		return fmt.Sprintf("The whole wall has at least %s of stock; the least is at %s, %s deep.", b.length(b.Plan.LeastStock.Value, units.Down),
			bore.ClockWords(b.Plan.LeastStock.Clock), b.length(b.Plan.LeastStock.Z, units.Nearest))
	}
	text := fmt.Sprintf("%d areas of the wall are short of stock.", len(b.Plan.Short))
	for i, a := range b.short() {
		text += fmt.Sprintf(" Area %d. %s.", i+1, b.areaText(a))
	}
	return text
}
