package bar

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// RoughnessResult is the finish that feed and nose radius would leave.
type RoughnessResult struct {
	PerTurn     float64 // feed per turn, m
	Height      float64 // peak to valley, m
	HeightRough float64 // peak to valley by the usual short formula, m
	Ra          float64 // mean deviation from the mean line, m
	RaRough     float64 // the same by the usual short formula, m
}

// Roughness returns the theoretical finish of a round-nosed tool.
//
//	Rt = r - √(r² - f²/4), short form f²/(8r)
//	Ra = mean |z - mean| over the arc, short form f²/(18√3·r)
//
// Rt, Ra, r nose radius, f feed per turn (given in m/rad): m.
//
// Valid for f per turn up to r, nose 0.002 to 1 in; otherwise an error. Real
// finish is rougher: built-up edge, chatter, a worn edge.
//
// Source: a tool maker's turning technical information (short Rt); geometry of
// the arc (exact).
func Roughness(feed, nose float64) (RoughnessResult, error) {
	if err := cmp.Or(feedRange.Check(feed), noseRange.Check(nose)); err != nil {
		return RoughnessResult{}, err
	}
	f, r := feed*turn, nose
	if err := trade.InRange("feed per turn", f, 0, nose, units.Length, "with more feed than nose radius the edges beside the nose shape the surface"); err != nil {
		return RoughnessResult{}, err
	}
	half := f / 2
	chord := math.Sqrt(r*r - half*half)
	// The mean line lies at depth zm; |z - zm| is integrated on either side of x0.
	under := func(x float64) float64 { return (x*math.Sqrt(r*r-x*x) + r*r*math.Asin(x/r)) / 2 }
	zm := r - under(half)/half
	x0 := math.Sqrt(r*r - (r-zm)*(r-zm))
	return RoughnessResult{
		PerTurn: f, Height: r - chord, HeightRough: f * f / (8 * r),
		Ra:      2 * (under(x0) - (r-zm)*x0) / half,
		RaRough: f * f / (18 * math.Sqrt(3) * r),
	}, nil
}

// Steps gives the worked lines of the finish.
func (r RoughnessResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "feed per turn", Formula: "f", Kind: units.Length, Value: r.PerTurn},
		{Name: "peak to valley", Formula: "Rt = r - √(r²-f²/4)", Kind: units.Length, Value: r.Height, Unit: "um"},
		{Name: "roughness", Formula: "Ra = mean |z - mean|", Kind: units.Length, Value: r.Ra, Unit: "um"},
	}
}
