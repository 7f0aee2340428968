package truck

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// limit is the range of one quantity. The typed functions refuse what lies
// outside, and the catalogue shows the same range to callers beforehand.
type limit struct {
	low, high float64
	kind      units.Kind
	why       string
}

const (
	degree = math.Pi / 180
	inch   = 0.0254
)

var (
	loadRange   = limit{0.1, 100e3, units.Mass, ""}
	centreRange = limit{0.01, 10, units.Length, ""}
	bladeRange  = limit{0.1, 6, units.Length, ""}
	reachRange  = limit{0, 10, units.Length, ""}
)

func (l limit) check(what string, x float64) error {
	return trade.InRange(what, x, l.low, l.high, l.kind, l.why)
}

func (l limit) param(name, about string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: l.kind, Low: l.low, High: l.high}
}

// usual makes a parameter optional.
func usual(p trade.Param, value float64) trade.Param {
	p.Optional, p.Default = true, value
	return p
}

func firstOf(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}
