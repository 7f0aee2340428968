package fit

import (
	"gudgeon/trade"
	"gudgeon/units"
)

const (
	inch    = 0.0254
	mm      = 0.001
	micron  = 1e-6
	thou    = inch / 1000
	sameDim = 1e-9 // a size this near a boundary, m, lies on it
)

var (
	isoSizeRange  = trade.Between("nominal size", 3*mm, 500*mm, units.Length, "the ISO table here covers over 3 to 500 mm")
	inchSizeRange = trade.Between("nominal size", 0.71*inch, 9.85*inch, units.Length, "the ANSI table here covers over 0.71 to 9.85 in")
	measuredRange = trade.Between("measured diameter", 2.9*mm, 510*mm, units.Length, "")
	boreRange     = trade.Between("bushing bore", 1*mm, 2, units.Length, "")
	pinRange      = trade.Between("pin diameter", 1*mm, 2, units.Length, "")
	diameterRange = trade.Between("interface diameter", 2*mm, 2, units.Length, "")
	tightRange    = trade.Between("interference", 0, 10*mm, units.Length, "with clearance the bushing is not held")
	closeInRange  = trade.Between("close-in of the bore", 0, 10*mm, units.Length, "")
	tempRange     = trade.Between("temperature", 200, 600, units.Temperature, "expansion is taken as constant")
)
