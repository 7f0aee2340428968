package setup

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

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
	readingRange   = trade.Between("indicator reading", -1*inch, 1*inch, units.Length, "")
	tirRange       = trade.Between("total indicator reading", 0, 1*inch, units.Length, "it is the whole swing, so never negative")
	distanceRange  = trade.Between("distance", 0.1*inch, 1000*inch, units.Length, "")
	placeRange     = trade.Between("place of a support", -1000*inch, 1000*inch, units.Length, "")
	offsetRange    = trade.Between("offset", -10*inch, 10*inch, units.Length, "")
	alongRange     = trade.Between("distance along the bore", -1000*inch, 1000*inch, units.Length, "")
	tiltRange      = trade.Between("tilt", -45*degree, 45*degree, units.Angle, "")
	includedRange  = trade.Between("included angle", 0, 120*degree, units.Angle, "")
	sineRange      = trade.Between("angle on a sine bar", 0, 60*degree, units.Angle, "beyond that the bar is too steep to be true")
	cosineRange    = trade.Between("angle of the indicator's arm to the surface", 0, 60*degree, units.Angle, "beyond that the correction is guesswork")
	diameterRange  = trade.Between("diameter", 0.01*inch, 400*inch, units.Length, "")
	lengthRange    = trade.Between("length", 1*mm, 100, units.Length, "")
	tempRange      = trade.Between("temperature", 230, 450, units.Temperature, "expansion is taken as constant")
	expansionRange = trade.Between("thermal expansion", 1e-6, 40e-6, units.Expansion, "")
)
