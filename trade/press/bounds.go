package press

import (
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
	psi     = 6894.757293168361
	ksi     = 1000 * psi
	perF    = 1.8            // an expansion per °F is this many times larger per K
	fZero   = 255.3722222222 // 0 °F in K
	lbf     = 4.4482216152605
	tonf    = 2000 * lbf // short ton-force
	iceTemp = 194.65     // dry ice sublimes at -78.5 °C
	n2Temp  = 77.15      // liquid nitrogen boils at -196 °C
)

var (
	diameterRange     = bounds{"interface diameter", 0.1 * inch, 80 * inch, units.Length, ""}
	boreRange         = bounds{"bushing bore", 0, 80 * inch, units.Length, ""}
	hubRange          = bounds{"hub outside diameter", 0.1 * inch, 400 * inch, units.Length, ""}
	interferenceRange = bounds{"interference", 0, 0.4 * inch, units.Length, "with clearance there is no press fit"}
	lengthRange       = bounds{"length of fit", 0.01 * inch, 100 * inch, units.Length, ""}
	frictionRange     = bounds{"friction coefficient", 0.01, 1, units.Number, ""}
	modulusRange      = bounds{"modulus of elasticity", 5e9, 700e9, units.Pressure, "no bushing or boss metal lies outside this"}
	poissonRange      = bounds{"Poisson's ratio", 0.1, 0.45, units.Number, "no bushing or boss metal lies outside this"}
	strengthRange     = bounds{"strength", 1e6, 3e9, units.Pressure, ""}
	expansionRange    = bounds{"thermal expansion", 1e-6, 40e-6, units.Expansion, ""}
	forceRange        = bounds{"force", 0, 2000 * tonf, units.Force, ""}
	ratingRange       = bounds{"rated force", 100 * lbf, 5000 * tonf, units.Force, ""}
)
