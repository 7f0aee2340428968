package truck

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

const (
	degree = math.Pi / 180
	inch   = 0.0254
)

var (
	loadRange   = trade.Between("load", 0.1, 100e3, units.Mass, "")
	centreRange = trade.Between("centre", 0.01, 10, units.Length, "")
	bladeRange  = trade.Between("blade", 0.1, 6, units.Length, "")
	reachRange  = trade.Between("reach", 0, 10, units.Length, "")
)
