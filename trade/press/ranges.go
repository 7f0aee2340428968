package press

import (
	"gudgeon/trade"
	"gudgeon/units"
)

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
	diameterRange     = trade.Between("interface diameter", 0.1*inch, 80*inch, units.Length, "")
	boreRange         = trade.Between("bushing bore", 0, 80*inch, units.Length, "")
	hubRange          = trade.Between("hub outside diameter", 0.1*inch, 400*inch, units.Length, "")
	interferenceRange = trade.Between("interference", 0, 0.4*inch, units.Length, "with clearance there is no press fit")
	lengthRange       = trade.Between("length of fit", 0.01*inch, 100*inch, units.Length, "")
	frictionRange     = trade.Between("friction coefficient", 0.01, 1, units.Number, "")
	modulusRange      = trade.Between("modulus of elasticity", 5e9, 700e9, units.Pressure, "no bushing or boss metal lies outside this")
	poissonRange      = trade.Between("Poisson's ratio", 0.1, 0.45, units.Number, "no bushing or boss metal lies outside this")
	strengthRange     = trade.Between("strength", 1e6, 3e9, units.Pressure, "")
	expansionRange    = trade.Between("thermal expansion", 1e-6, 40e-6, units.Expansion, "")
	forceRange        = trade.Between("force", 0, 2000*tonf, units.Force, "")
	ratingRange       = trade.Between("rated force", 100*lbf, 5000*tonf, units.Force, "")
)
