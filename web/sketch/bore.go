package sketch

import (
	"fmt"
	"math"

	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// Bore is a worn bore to draw.
type Bore struct {
	Survey *bore.Surveyed
	Axis   *bore.Axis // of the worn bore, seen from the true one
	Plan   *weld.Plan
	Units  units.System
}

func (b *Bore) length(x float64, r units.Rounding) string {
	return units.Show(x, units.Length, b.Units, r)
}

// onDial turns a clock position and a distance into a place round c.
func onDial(c point, clock, r float64) point {
	sin, cos := math.Sincos(clock)
	return point{c.x + r*sin, c.y - r*cos}
}

// at says a depth in words.
func (b *Bore) at(z float64) string {
	switch {
	case z == 0:
		return "at the near face"
	case math.Abs(z-b.Survey.Length) < 1e-6:
		return "at the far face"
	}
	return b.length(z, units.Nearest) + " deep"
}

// magnification is a round number of times, at most x and at least 1.
func magnification(x float64) float64 {
	if !(x > 1) {
		return 1
	}
	ten := math.Pow10(int(math.Floor(math.Log10(x))))
	for _, m := range []float64{8, 6, 5, 4, 3, 2, 1.5, 1} {
		if m*ten <= x*(1+1e-9) {
			return m * ten
		}
	}
	return ten
}

func times(m float64) string {
	return units.Show(m, units.Number, units.InchShop, units.Nearest) + " times"
}

// hour is the hour on the dial nearest to a clock position.
func hour(clock float64) string {
	h := int(math.Round(bore.Turn(clock)/(math.Pi/6))) % 12
	if h == 0 {
		h = 12
	}
	return fmt.Sprint(h)
}

// areaText says where a short area is and by how much.
func (b *Bore) areaText(a weld.Area) string {
	return fmt.Sprintf("Short %s: up to %s on the radius", a.Window.Text(b.Units), b.length(a.Most.Value, units.Up))
}

// shown is how many short areas a drawing numbers; more would only confuse.
const shown = 6

func (b *Bore) short() []weld.Area { return b.Plan.Short[:min(shown, len(b.Plan.Short))] }

// isShort reports whether a stock misses what is wanted; the plan counts what
// its grid may miss against itself, so this does too.
func isShort(p *weld.Plan, stock float64) bool { return stock < p.Job.Allowance+p.GridError-1e-9 }
