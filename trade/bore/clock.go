package bore

import (
	"fmt"
	"math"
)

// Coverage is the factor k by which a standard uncertainty is expanded before
// something is called larger than its uncertainty (JCGM 100, 6.3.3). Along one
// line it covers about 95 %; for a point in a plane, about 86 %.
const Coverage = 2

// XY is a place or a shift in a plane across the bore, m: X to 3 o'clock, Y to
// 12 o'clock, looking at the near face.
type XY struct{ X, Y float64 }

// Add gives the sum of two shifts.
func (p XY) Add(q XY) XY { return XY{p.X + q.X, p.Y + q.Y} }

// Sub gives the shift from q to p.
func (p XY) Sub(q XY) XY { return XY{p.X - q.X, p.Y - q.Y} }

// Times gives the shift k times as large.
func (p XY) Times(k float64) XY { return XY{k * p.X, k * p.Y} }

// Len is the distance from the origin, m.
func (p XY) Len() float64 { return math.Hypot(p.X, p.Y) }

// Clock is the clock position of p seen from the origin, rad from 0 to 2π; 0
// for the origin itself.
func (p XY) Clock() float64 { return Turn(math.Atan2(p.X, p.Y)) }

// Polar is the point at a clock position (rad) and a distance (m).
func Polar(clock, distance float64) XY {
	sin, cos := math.Sincos(clock)
	return XY{distance * sin, distance * cos}
}

// Turn brings a clock position into 0 <= clock < 2π.
func Turn(clock float64) float64 {
	t := math.Mod(clock, 2*math.Pi)
	if t < 0 {
		t += 2 * math.Pi
	}
	if t >= 2*math.Pi { // a tiny negative angle rounds up to a whole turn
		return 0
	}
	return t
}

// ClockWords says a clock position as the hands of a clock do, to the nearest
// ten minutes (5°): "7:30".
func ClockWords(clock float64) string {
	tens := int(math.Round(Turn(clock)/(2*math.Pi)*72)) % 72
	hour := tens / 6
	if hour == 0 {
		hour = 12
	}
	if tens%6 == 0 {
		return fmt.Sprintf("%d o'clock", hour)
	}
	return fmt.Sprintf("%d:%d0", hour, tens%6)
}
