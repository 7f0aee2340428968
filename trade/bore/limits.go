package bore

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// limit is the range of one input. The typed functions and the catalogue take
// it from the same place, so they cannot disagree.
type limit struct {
	what      string
	low, high float64
	kind      units.Kind
	why       string
}

func (l *limit) check(x float64) error {
	return trade.InRange(l.what, x, l.low, l.high, l.kind, l.why)
}

// param describes the input for a rule sheet.
func (l *limit) param(name, about string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: l.kind, Low: l.low, High: l.high}
}

const (
	mm       = 0.001
	greatest = 3.0 // m; a larger bore is not repaired with a bar one man sets up
)

var (
	limWorn      = limit{"worn diameter", 5 * mm, greatest, units.Length, ""}
	limFinish    = limit{"finish diameter", 5 * mm, greatest, units.Length, ""}
	limOffset    = limit{"offset", 0, greatest / 2, units.Length, "give the distance between the two axes"}
	limShift     = limit{"offset", -greatest / 2, greatest / 2, units.Length, ""}
	limStock     = limit{"stock", 0, 0.1, units.Length, "stock is on the radius"}
	limLength    = limit{"bore length", 1 * mm, 10, units.Length, ""}
	limAngle     = limit{"clock position", -4 * math.Pi, 4 * math.Pi, units.Angle, ""}
	limReading   = limit{"indicator reading", -0.1, 0.1, units.Length, "no indicator reaches further"}
	limU         = limit{"standard uncertainty", 1e-9, 0.1, units.Length, "it must be more than nothing"}
	limDistance  = limit{"distance", 0, greatest, units.Length, ""}
	limSetRadius = limit{"set radius", 0, greatest / 2, units.Length, "0 when the readings are radii themselves"}
)
