package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// TrialHang is one plumb line marked on the part: the point it hung from and
// a second mark where the line passed, in the part's own axes, m, within ±50.
type TrialHang struct {
	PointX, PointY float64
	MarkX, MarkY   float64
}

// Trial is the centre of gravity found from trial hangs.
type Trial struct {
	X, Y     float64 // m
	UX, UY   float64 // standard uncertainties, m
	Crossing float64 // how squarely the best pair of lines cross, rad
	Miss     float64 // farthest that any line passes from the centre, m; 0 for two lines
}

// leastCrossing keeps plumb lines from being so near parallel that their
// crossing is guesswork. Common practice, no source: a degree of error in a
// line at 15 degrees moves the crossing four times as far as at 90.
const leastCrossing = 15 * degree

// CentreFromHangs finds the point nearest to all plumb lines by least squares:
// it minimises Σ(ni·(c − pi))², ni the normal of line i. With u the standard
// uncertainty in m (0 to 0.1) of each marked point, the uncertainty of line i
// at the centre is u·√((1−f)² + f²), f being how far along from hang point to
// mark (1 at the mark), and is carried through exactly to first order.
//
// Two hangs give the crossing; a third is the check, and Miss says how well it
// agrees. Fewer than two, marks less than 5 mm apart, or lines that cross at
// under 15 degrees is an error. Source: the plumb-line method of school physics
// (e.g. Simon Fraser University's demonstration notes); least squares is ours.
func CentreFromHangs(hangs []TrialHang, u float64) (Trial, error) {
	if len(hangs) < 2 {
		return Trial{}, errors.New("hang the part from at least two points")
	}
	if err := markRange.CheckAs("uncertainty of the marks", u); err != nil {
		return Trial{}, err
	}
	var sxx, sxy, syy, bx, by float64
	for _, h := range hangs {
		if err := h.check(); err != nil {
			return Trial{}, err
		}
		nx, ny, _ := h.normal()
		d := nx*h.PointX + ny*h.PointY
		sxx, sxy, syy = sxx+nx*nx, sxy+nx*ny, syy+ny*ny
		bx, by = bx+nx*d, by+ny*d
	}
	t := Trial{Crossing: widestCrossing(hangs)}
	if err := trade.InRange("angle between the plumb lines", t.Crossing, leastCrossing, math.Pi/2+touch, units.Angle,
		"hang from points further apart"); err != nil {
		return Trial{}, err
	}
	det := sxx*syy - sxy*sxy
	ixx, ixy, iyy := syy/det, -sxy/det, sxx/det
	t.X, t.Y = ixx*bx+ixy*by, ixy*bx+iyy*by

	var vx, vy float64
	for _, h := range hangs {
		nx, ny, reach := h.normal()
		away := nx*(t.X-h.PointX) + ny*(t.Y-h.PointY)
		f := (ny*(t.X-h.PointX) - nx*(t.Y-h.PointY)) / reach
		v := u * u * ((1-f)*(1-f) + f*f)
		gx, gy := ixx*nx+ixy*ny, ixy*nx+iyy*ny
		vx, vy = vx+gx*gx*v, vy+gy*gy*v
		t.Miss = max(t.Miss, math.Abs(away))
	}
	t.UX, t.UY = math.Sqrt(vx), math.Sqrt(vy)
	if len(hangs) == 2 {
		t.Miss = 0 // two lines always cross: what is left is float error
	}
	return t, nil
}

var markRange = trade.Between("mark", 0, 0.1, units.Length, "")

func (h TrialHang) check() error {
	err := cmp.Or(placeRange.CheckAs("hang point", h.PointX), placeRange.CheckAs("hang point", h.PointY),
		placeRange.CheckAs("plumb mark", h.MarkX), placeRange.CheckAs("plumb mark", h.MarkY))
	if err != nil {
		return err
	}
	if _, _, reach := h.normal(); reach < 5e-3 {
		return errors.New("the plumb mark is on the hang point: mark it further down the line")
	}
	return nil
}

// normal is the unit normal of the line, and the distance between its marks.
func (h TrialHang) normal() (nx, ny, reach float64) {
	dx, dy := h.MarkX-h.PointX, h.MarkY-h.PointY
	reach = math.Hypot(dx, dy)
	return -dy / reach, dx / reach, reach
}

func widestCrossing(hangs []TrialHang) float64 {
	var widest float64
	for i, a := range hangs {
		ax, ay, _ := a.normal()
		for _, b := range hangs[:i] {
			bx, by, _ := b.normal()
			widest = max(widest, math.Atan2(math.Abs(ax*by-ay*bx), math.Abs(ax*bx+ay*by)))
		}
	}
	return widest
}
