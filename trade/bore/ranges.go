package bore

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

const (
	mm       = 0.001
	greatest = 3.0 // m; a larger bore is not repaired with a bar one man sets up
)

var (
	limWorn      = trade.Between("worn diameter", 5*mm, greatest, units.Length, "")
	limFinish    = trade.Between("finish diameter", 5*mm, greatest, units.Length, "")
	limOffset    = trade.Between("offset", 0, greatest/2, units.Length, "give the distance between the two axes")
	limShift     = trade.Between("offset", -greatest/2, greatest/2, units.Length, "")
	limStock     = trade.Between("stock", 0, 0.1, units.Length, "stock is on the radius")
	limLength    = trade.Between("bore length", 1*mm, 10, units.Length, "")
	limAngle     = trade.Between("clock position", -4*math.Pi, 4*math.Pi, units.Angle, "")
	limReading   = trade.Between("indicator reading", -0.1, 0.1, units.Length, "no indicator reaches further")
	limU         = trade.Between("standard uncertainty", 1e-9, 0.1, units.Length, "it must be more than nothing")
	limDistance  = trade.Between("distance", 0, greatest, units.Length, "")
	limSetRadius = trade.Between("set radius", 0, greatest/2, units.Length, "0 when the readings are radii themselves")
)
