package bar

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// bounds is the range of one quantity, written once for both the check in the
// typed function and the parameter in the catalogue, so that they cannot differ.
type bounds struct {
	what      string
	low, high float64
	kind      units.Kind
	why       string
}

func (b bounds) check(x float64) error {
	return trade.InRange(b.what, x, b.low, b.high, b.kind, b.why)
}

func (b bounds) param(name, about string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: b.kind, Low: b.low, High: b.high}
}

// optional is param with a value for when it is left out.
func (b bounds) optional(name, about string, value float64) trade.Param {
	p := b.param(name, about)
	p.Optional, p.Default = true, value
	return p
}

// firstError checks several quantities in the order they are given.
func firstError(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

const (
	inch    = 0.0254
	micron  = 1e-6
	psi     = 6894.757293168361
	lbf     = 4.4482216152605
	turn    = 2 * math.Pi
	degree  = math.Pi / 180
	minute  = 60.0
	perTurn = 1 / turn // a feed per turn is this many times as large per radian
)

var (
	forceRange      = bounds{"force", 0, 1e6, units.Force, ""}
	diameterRange   = bounds{"bar diameter", 0.1 * inch, 24 * inch, units.Length, ""}
	boreRange       = bounds{"hole through the bar", 0, 24 * inch, units.Length, ""}
	overhangRange   = bounds{"overhang", 0.1 * inch, 200 * inch, units.Length, ""}
	spanRange       = bounds{"distance between bearings", 1 * inch, 1000 * inch, units.Length, ""}
	stationRange    = bounds{"cutter from a bearing", 0.1 * inch, 1000 * inch, units.Length, ""}
	modulusRange    = bounds{"modulus of elasticity", 5e9, 800e9, units.Pressure, "no bar material lies outside this"}
	densityRange    = bounds{"density", 1000, 20000, units.Density, "no bar material lies outside this"}
	stiffnessRange  = bounds{"stiffness at the cutter", 1e4, 1e10, units.Stiffness, ""}
	dampingRange    = bounds{"damping ratio", 0.001, 0.5, units.Number, ""}
	specificRange   = bounds{"specific cutting force", 100e6, 20e9, units.Pressure, ""}
	exponentRange   = bounds{"exponent of chip thickness", 0, 0.5, units.Number, ""}
	depthRange      = bounds{"depth of cut", 0.0001 * inch, 1 * inch, units.Length, "on radius"}
	feedRange       = bounds{"feed", 0.0002 * inch * perTurn, 0.2 * inch * perTurn, units.Feed, ""}
	leadRange       = bounds{"angle of the cutting edge to the feed", 15 * degree, 105 * degree, units.Angle, ""}
	speedRange      = bounds{"cutting speed", 0.01, 30, units.Speed, ""}
	cutRange        = bounds{"bore diameter", 0.25 * inch, 200 * inch, units.Length, ""}
	lengthRange     = bounds{"length of cut", 0.01 * inch, 1000 * inch, units.Length, ""}
	rotationRange   = bounds{"rotation", 0.1 * turn / minute, 10000 * turn / minute, units.Rotation, ""}
	noseRange       = bounds{"nose radius", 0.002 * inch, 1 * inch, units.Length, ""}
	shareRange      = bounds{"share of the cutting force that pushes the bar off", 0.1, 1, units.Ratio, ""}
	efficiencyRange = bounds{"efficiency of the drive", 0.3, 1, units.Ratio, ""}
	ratioRange      = bounds{"length-to-diameter limit", 1, 20, units.Number, ""}
)
