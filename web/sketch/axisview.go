package sketch

import (
	"fmt"
	"math"

	"gudgeon/trade/bore"
	"gudgeon/units"
)

// side is the view of the axis from the side.
type side struct {
	*pen
	bore   *Bore
	plane  float64 // the clock position that is up, rad
	y0     float64 // of the true axis
	length float64
	scale  float64 // drawn units per metre across
	times  float64
}

const (
	sideLeft  = 46.0
	sideRight = 314.0
	sideBore  = 50.0  // half the bore, as drawn
	sideBoss  = 116.0 // half the boss, as drawn
	sideRoom  = 44.0  // for the greatest offset
)

// AxisView draws the old axis against the true one, from the side on which the
// greatest offset is seen whole. b needs Survey and Axis.
func AxisView(b Bore) *Drawing {
	s := &side{pen: newPen("axis", "The old axis from the side"), bore: &b, length: b.Survey.Length}
	near, far := b.Axis.Offset(0), b.Axis.Offset(s.length)
	worse := near
	if far.Size > near.Size {
		worse = far
	}
	s.plane = worse.Clock
	if math.Cos(s.plane) < -1e-9 { // keep the upper half of the clock up
		s.plane = bore.Turn(s.plane + math.Pi)
	}
	s.setScale(max(worse.Size, s.doubt()))
	top := s.heading()
	s.y0 = top + sideBoss + 30
	s.walls()
	s.axes()
	s.faces(near, far)
	y := s.legend(s.y0 + sideBoss + 74)
	return s.pen.finish(y, s.describe(near, far))
}

// leastOffset keeps a bore that is true from being magnified without end.
const leastOffset = 2e-6 // m

func (s *side) setScale(most float64) {
	most = max(most, leastOffset)
	truth := (sideRight - sideLeft) / s.length
	s.times = magnification(sideRoom / most / truth)
	s.scale = min(s.times*truth, sideRoom/most)
}

// doubt is the greatest expanded uncertainty of a station's centre, m.
func (s *side) doubt() float64 {
	most := 0.0
	for i := range s.bore.Survey.Stations {
		if st := &s.bore.Survey.Stations[i]; st.Swept {
			most = max(most, stationDoubt(st))
		}
	}
	return most
}

func stationDoubt(st *bore.Station) float64 {
	xx, _, yy := st.Cov()
	return bore.Coverage * math.Sqrt(max(xx, yy))
}

// across is the part of an offset that lies in the plane drawn, m.
func (s *side) across(p bore.XY) float64 {
	sin, cos := math.Sincos(s.plane)
	return p.X*sin + p.Y*cos
}

func (s *side) place(z float64, p bore.XY) point {
	return point{sideLeft + z/s.length*(sideRight-sideLeft), s.y0 - s.scale*s.across(p)}
}

// walls draws boss and bore; only their place matters, not their size.
func (s *side) walls() {
	a, b := s.place(0, s.bore.Axis.At(0)), s.place(s.length, s.bore.Axis.At(s.length))
	for _, sign := range []float64{-1, 1} {
		boss, bore := s.y0+sign*sideBoss, sign*sideBore
		s.shape(s.hatch(wallHatch)+` stroke-width="1.3"`, []point{{a.x, boss}, {b.x, boss}, {b.x, b.y + bore}, {a.x, a.y + bore}})
		s.line(hidden, point{a.x, s.y0 + bore}, point{b.x, s.y0 + bore})
	}
	s.line(thin, point{a.x, a.y - sideBore}, point{a.x, a.y + sideBore})
	s.line(thin, point{b.x, b.y - sideBore}, point{b.x, b.y + sideBore})
}

func (s *side) axes() {
	s.line(centre, point{sideLeft - 22, s.y0}, point{sideRight + 22, s.y0})
	a, b := s.place(0, s.bore.Axis.At(0)), s.place(s.length, s.bore.Axis.At(s.length))
	s.line(heavy, a, b)
	datum := s.bore.Survey.Axis.Line
	for _, st := range s.bore.Survey.Stations {
		if !st.Swept || st.Z < 0 || st.Z > s.length {
			continue
		}
		shift := s.bore.Axis.At(st.Z).Sub(datum.At(st.Z)) // from the bar to the datum
		q := s.place(st.Z, st.Circle.Centre.Add(shift))
		u := s.scale * stationDoubt(&st)
		if u > 4 {
			s.line(thin, point{q.x, q.y - u}, point{q.x, q.y + u})
			s.line(thin, point{q.x - 3, q.y - u}, point{q.x + 3, q.y - u})
			s.line(thin, point{q.x - 3, q.y + u}, point{q.x + 3, q.y + u})
		}
		s.circle(`fill="#fff" stroke-width="1.4"`, q, 3.2)
	}
}

// faces dimensions the offset at both faces.
func (s *side) faces(near, far bore.Offset) {
	for _, f := range []struct {
		z      float64
		o      bore.Offset
		x      float64
		anchor string
		name   string
	}{{0, near, sideLeft - 14, start, "near face"}, {s.length, far, sideRight + 14, end, "far face"}} {
		q := s.place(f.z, f.o.XY)
		if math.Abs(q.y-s.y0) > 14 {
			s.line(thin, point{q.x, q.y}, point{f.x, q.y})
			s.arrow(thin, point{f.x, s.y0}, point{f.x, q.y})
		}
		x := margin
		if f.anchor == end {
			x = width - margin
		}
		y := s.y0 + sideBoss + 40
		s.strong(point{x, y}, f.anchor, f.name)
		s.label(point{x, y + 17}, f.anchor, s.offText(f.o, " at "))
		if !f.o.Significant {
			s.small(point{x, y + 33}, f.anchor, "(no more than its doubt)")
		}
	}
	s.small(point{width / 2, s.y0 - sideBoss - 8}, middle, "towards "+bore.ClockWords(s.plane))
	s.small(point{width / 2, s.y0 + sideBoss + 17}, middle, "towards "+bore.ClockWords(s.plane+math.Pi))
}

// offText says an offset; the direction of next to nothing is left out.
func (s *side) offText(o bore.Offset, word string) string {
	text := s.bore.length(o.Size, units.Nearest)
	if o.Size < leastOffset {
		return text
	}
	return text + word + bore.ClockWords(o.Clock)
}

func (s *side) legend(y float64) float64 {
	y += 36
	tilt := s.bore.Axis.Tilt()
	y = s.key(y, s.stroke(centre), "True axis")
	y = s.key(y, s.stroke(hidden), "Bore on the true axis")
	y = s.key(y, s.stroke(heavy), "Axis of the worn bore; rings are the stations, bars their doubt")
	return s.note(y+2, fmt.Sprintf("Tilt %s, %s. %s The width of bore and boss is not to scale.", ThouPerFoot(tilt, s.bore.Units), degrees(tilt.Angle), s.scaleText())) + 2
}

// ThouPerFoot says a tilt in the shop's way: thou per foot, or mm per metre.
func ThouPerFoot(t bore.Tilt, sys units.System) string {
	name := "thou_per_ft"
	if sys == units.MetricShop {
		name = "mm_per_m"
	}
	u, _ := units.Named(name)
	return units.ShowIn(t.Angle, u, units.Nearest)
}

func degrees(angle float64) string {
	return units.Show(angle, units.Angle, units.InchShop, units.Nearest)
}

func (s *side) scaleText() string {
	if s.times <= 1 {
		return "Offsets are drawn in true proportion to the depths."
	}
	return fmt.Sprintf("Offsets are drawn %s as large as depths.", times(s.times))
}

func (s *side) describe(near, far bore.Offset) string {
	say := func(o bore.Offset) string { return s.offText(o, " towards ") }
	return fmt.Sprintf("The old axis is off the true one by %s at the near face and by %s at the far face, a tilt of %s. %s",
		say(near), say(far), degrees(s.bore.Axis.Tilt().Angle), s.scaleText())
}
