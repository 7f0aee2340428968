package setup

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
	inch   = 0.0254
	foot   = 12 * inch
	thou   = inch / 1000
	mm     = 0.001
	psi    = 6894.757293168361
	ksi    = 1000 * psi
	mpa    = 1e6
	lbf    = 4.4482216152605
	degree = math.Pi / 180
	perF   = 1.8    // an expansion per °F is this many times larger per K
	twenty = 293.15 // 20 °C = 68 °F, the reference temperature of ISO 1, K
)

var (
	readingRange   = bounds{"indicator reading", -1 * inch, 1 * inch, units.Length, ""}
	tirRange       = bounds{"total indicator reading", 0, 1 * inch, units.Length, "it is the whole swing, so never negative"}
	distanceRange  = bounds{"distance", 0.1 * inch, 1000 * inch, units.Length, ""}
	placeRange     = bounds{"place of a support", -1000 * inch, 1000 * inch, units.Length, ""}
	offsetRange    = bounds{"offset", -10 * inch, 10 * inch, units.Length, ""}
	alongRange     = bounds{"distance along the bore", -1000 * inch, 1000 * inch, units.Length, ""}
	tiltRange      = bounds{"tilt", -45 * degree, 45 * degree, units.Angle, ""}
	includedRange  = bounds{"included angle", 0, 120 * degree, units.Angle, ""}
	sineRange      = bounds{"angle on a sine bar", 0, 60 * degree, units.Angle, "beyond that the bar is too steep to be true"}
	cosineRange    = bounds{"angle of the indicator's arm to the surface", 0, 60 * degree, units.Angle, "beyond that the correction is guesswork"}
	diameterRange  = bounds{"diameter", 0.01 * inch, 400 * inch, units.Length, ""}
	lengthRange    = bounds{"length", 1 * mm, 100, units.Length, ""}
	tempRange      = bounds{"temperature", 230, 450, units.Temperature, "expansion is taken as constant"}
	expansionRange = bounds{"thermal expansion", 1e-6, 40e-6, units.Expansion, ""}
)
