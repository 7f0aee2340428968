package sketch

import (
	"fmt"
	"math"
	"slices"

	"gudgeon/trade/bore"
	"gudgeon/units"
)

// dial is the end view's scale: the finish bore keeps one size, what deviates
// from it is magnified.
type dial struct {
	*pen
	bore   *Bore
	row    int
	c      point
	finish float64 // m
	scale  float64 // drawn units per metre of deviation
	times  float64
	hasOdd bool // a reading that does not fit is in the picture
}

const (
	finishRing = 90.0  // radius at which the finish bore is drawn
	bossRing   = 140.0 // radius at which the outside of the boss is drawn
	hourRing   = 160.0
)

// EndView draws the bore round the clock at the depth where least stock is left:
// worn bore, truing bore, weld, finish bore and wall. b needs Plan, Survey and
// Axis.
func EndView(b Bore) *Drawing {
	g := &b.Plan.Grid
	row, _ := slices.BinarySearch(g.Depths, b.Plan.LeastStock.Z)
	d := &dial{pen: newPen("end", ""), bore: &b, row: min(row, len(g.Depths)-1)}
	d.d.Title = "End view " + b.at(g.Depths[d.row])
	d.finish = b.Plan.Job.Finish / 2
	d.setScale()
	top := d.heading()
	d.c = point{width / 2, top + hourRing + 16}
	d.metal()
	d.shortArcs()
	d.hours()
	d.centres()
	y := d.legend(d.c.y + hourRing + 32)
	return d.pen.finish(y, d.describe())
}

// ring gives one of the grid's rows.
func (d *dial) ring(values []float64) []float64 {
	g := &d.bore.Plan.Grid
	return values[g.Index(d.row, 0):g.Index(d.row+1, 0)]
}

// setScale magnifies as much as the rings have room for.
func (d *dial) setScale() {
	g := &d.bore.Plan.Grid
	out, in := 1e-9, 1e-9
	note := func(r float64) {
		out, in = max(out, r-d.finish), max(in, d.finish-r)
	}
	trued, weld, worn := d.ring(g.Trued), d.ring(g.Weld), d.ring(g.Worn)
	for i := range trued {
		note(trued[i])
		note(worn[i])
		note(trued[i] - weld[i])
	}
	truth := finishRing / d.finish
	room := min((bossRing-finishRing-14)/out, (finishRing-36)/in)
	d.times = magnification(room / truth)
	d.scale = d.times * truth
	if room < truth {
		d.scale = room // so far off that even the true size has no room
		d.times = 0
	}
}

func (d *dial) at(clock, r float64) point {
	return onDial(d.c, clock, finishRing+d.scale*(r-d.finish))
}

func (d *dial) outline(values []float64) []point {
	out := make([]point, len(values))
	for i, r := range values {
		out[i] = d.at(d.bore.Plan.Grid.Clocks[i], r)
	}
	return out
}

func circleOf(c point, r float64) []point {
	out := make([]point, 120)
	for i := range out {
		out[i] = onDial(c, 2*math.Pi*float64(i)/120, r)
	}
	return out
}

// metal draws wall, weld and the bores, from the outside in.
func (d *dial) metal() {
	g := &d.bore.Plan.Grid
	trued, weld := d.ring(g.Trued), d.ring(g.Weld)
	inner := make([]float64, len(trued))
	for i := range trued {
		inner[i] = trued[i] - weld[i]
	}
	boss := circleOf(d.c, bossRing)
	d.shape(d.hatch(wallHatch)+" stroke=\"none\"", boss, d.outline(trued))
	d.shape(d.hatch(weldHatch)+" stroke=\"none\"", d.outline(trued), d.outline(inner))
	d.circle(plain, d.c, bossRing)
	d.shape(`stroke-width="1.1"`, d.outline(inner))
	if d.bore.Plan.Job.Truing > 0 {
		d.circle(hidden, d.c, finishRing+d.scale*(d.bore.Plan.Job.Truing/2-d.finish))
	}
	d.bare(inner)
	d.shape(plain, d.outline(d.ring(g.Worn)))
	d.circle(heavy, d.c, finishRing)
	d.readings()
}

// bare fills what lies between the finish bore and a weld that stays outside it.
func (d *dial) bare(inner []float64) {
	outside := make([]float64, len(inner))
	there := false
	for i, r := range inner {
		outside[i] = max(r, d.finish)
		there = there || r > d.finish
	}
	if there {
		d.shape(d.hatch(bareHatch)+" stroke=\"none\"", d.outline(outside), circleOf(d.c, finishRing))
	}
}

// readings are drawn where the survey has them at this depth.
func (d *dial) readings() {
	axis := d.bore.Plan.Job.Axis
	z := d.bore.Plan.Grid.Depths[d.row]
	for _, st := range d.bore.Survey.Stations {
		if math.Abs(st.Z-z) > 1e-5 {
			continue
		}
		for _, r := range st.Readings {
			p := bore.Polar(r.Clock, r.Radius).Sub(axis.At(z))
			if d.odd(r.Index) {
				d.oddMark(d.at(p.Clock(), p.Len()))
				continue
			}
			d.circle(`fill="#fff" stroke-width="1"`, d.at(p.Clock(), p.Len()), 2.1)
		}
	}
}

// odd reports whether a reading does not fit the circle of the others.
func (d *dial) odd(index int) bool {
	return slices.ContainsFunc(d.bore.Survey.Outliers, func(o bore.Outlier) bool { return o.Index == index })
}

func (d *dial) oddMark(q point) {
	d.circle(`fill="#fff" stroke-width="2"`, q, 5.5)
	d.line(plain, point{q.x - 3, q.y - 3}, point{q.x + 3, q.y + 3})
	d.line(plain, point{q.x - 3, q.y + 3}, point{q.x + 3, q.y - 3})
	d.hasOdd = true
}

// shortArcs marks along the boss where the weld is short at this depth.
func (d *dial) shortArcs() {
	g := &d.bore.Plan.Grid
	stock := d.ring(g.Stock)
	n := len(stock)
	for i := range stock {
		if !isShort(d.bore.Plan, stock[i]) || isShort(d.bore.Plan, stock[(i+n-1)%n]) && i > 0 {
			continue
		}
		run := 0
		for run < n && isShort(d.bore.Plan, stock[(i+run)%n]) {
			run++
		}
		if i == 0 && isShort(d.bore.Plan, stock[n-1]) && run < n {
			continue // begins before 12 o'clock and is drawn from there
		}
		d.arc(g.Clocks[i], run)
	}
	for i, a := range d.bore.short() {
		z := g.Depths[d.row]
		if z >= a.DepthFrom-1e-9 && z <= a.DepthTo+1e-9 {
			mid := a.From + bore.Turn(a.To-a.From)/2
			d.badge(onDial(d.c, mid, bossRing-12), fmt.Sprint(i+1))
		}
	}
}

func (d *dial) arc(from float64, columns int) {
	step := 2 * math.Pi / float64(len(d.bore.Plan.Grid.Clocks))
	var line []point
	for k := range 4*columns + 1 {
		line = append(line, onDial(d.c, from+(float64(k)/4-0.5)*step, bossRing+4))
	}
	d.curve(alarm, line)
}

// hours letters the dial.
func (d *dial) hours() {
	for h := range 12 {
		clock := float64(h) * math.Pi / 6
		d.line(thin, onDial(d.c, clock, bossRing), onDial(d.c, clock, bossRing+7))
		q := onDial(d.c, clock, hourRing)
		q.y += 4.5
		if h%3 == 0 {
			d.strong(q, middle, hour(clock))
			continue
		}
		d.small(q, middle, hour(clock))
	}
}

// centres draws the true centre and, as far as it is off, the old one.
func (d *dial) centres() {
	for _, clock := range []float64{0, math.Pi / 2} {
		d.line(centre, onDial(d.c, clock, -26), onDial(d.c, clock, 26))
	}
	off := d.off()
	q := onDial(d.c, off.Clock, d.scale*off.Size)
	if math.Hypot(q.x-d.c.x, q.y-d.c.y) > 12 {
		d.arrow(plain, d.c, q)
	}
	d.circle(solid, q, 3)
}

func (d *dial) off() bore.Offset {
	return d.bore.Axis.Offset(d.bore.Plan.Grid.Depths[d.row])
}

// scaleText says how much larger than life the deviations are.
func (d *dial) scaleText() string {
	if d.times == 0 {
		return "Deviations from the finish bore are drawn smaller than the bore itself. The outside of the boss is not to scale."
	}
	return fmt.Sprintf("Deviations from the finish bore are drawn %s as large. The outside of the boss is not to scale.", times(d.times))
}

func (d *dial) legend(y float64) float64 {
	b, j := d.bore, &d.bore.Plan.Job
	off := d.off()
	y = d.key(y, d.stroke(heavy), "Finish bore, "+b.length(j.Finish, units.Nearest)+", on the true centre")
	y = d.key(y, d.stroke(plain), "Worn bore as read")
	if j.Truing > 0 {
		y = d.key(y, d.stroke(hidden), "Truing bore, "+b.length(j.Truing, units.Nearest))
	}
	y = d.key(y, d.swatch(d.hatch(weldHatch)), "Weld as planned")
	y = d.key(y, d.swatch(d.hatch(wallHatch)), d.wallText())
	if slices.Contains(d.names, bareHatch) {
		y = d.key(y, d.swatch(d.hatch(bareHatch)), "No metal: the finish cut will not touch")
	}
	if len(b.Plan.Short) > 0 {
		y = d.key(y, d.stroke(alarm), "Short of what is wanted here")
	}
	if d.hasOdd {
		y = d.key(y, func(r box) { d.oddMark(point{(r.x1 + r.x2) / 2, (r.y1 + r.y2) / 2}) }, "A reading that does not fit the others")
	}
	y = d.key(y, func(r box) {
		c := point{(r.x1 + r.x2) / 2, (r.y1 + r.y2) / 2}
		d.circle(solid, c, 3)
	}, fmt.Sprintf("Old centre: %s towards %s", b.length(off.Size, units.Nearest), bore.ClockWords(off.Clock)))
	return d.note(y+2, d.scaleText()) + 4
}

func (d *dial) wallText() string {
	if d.bore.Plan.Grid.Wall == nil {
		return "Parent metal; the boss was not measured"
	}
	least := math.Inf(1)
	for _, w := range d.ring(d.bore.Plan.Grid.Wall) {
		least = min(least, w)
	}
	return "Wall: " + d.bore.length(least, units.Down) + " at its thinnest here"
}

func (d *dial) describe() string {
	b := d.bore
	off := d.off()
	text := fmt.Sprintf("Looking at the near face, the worn bore's centre %s is %s off the true centre towards %s.",
		b.at(b.Plan.Grid.Depths[d.row]), b.length(off.Size, units.Nearest), bore.ClockWords(off.Clock))
	if b.Plan.CleansUp {
		return text + " The planned weld stands inside the finish bore all round. " + d.scaleText()
	}
	for i, a := range b.short() {
		text += fmt.Sprintf(" Area %d. %s.", i+1, b.areaText(a))
	}
	return text + " " + d.scaleText()
}
