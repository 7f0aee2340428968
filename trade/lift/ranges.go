package lift

import (
	"fmt"
	"math"
	"strings"

	"gudgeon/trade"
	"gudgeon/units"
)

const (
	degree = math.Pi / 180
	inch   = 0.0254
	pound  = 0.45359237

	shortTon = 2000 * pound
	megaPa   = 1e6

	// touch forgives float error where a published limit is exactly met:
	// far below anything a shop can measure (m and rad).
	touch = 1e-9
)

var (
	loadRange      = trade.Between("load", 0.1, 500e3, units.Mass, "")
	scaleRange     = trade.Between("scale", 0, 500e3, units.Mass, "")
	pieceRange     = trade.Between("piece", -500e3, 500e3, units.Mass, "")
	lengthRange    = trade.Between("length", 0.5e-3, 50, units.Length, "")
	boreRange      = trade.Between("bore", 0, 50, units.Length, "")
	placeRange     = trade.Between("place", -50, 50, units.Length, "")
	stockRange     = trade.Between("stock", 1e-3, 1, units.Length, "")
	densityRange   = trade.Between("density", 100, 25e3, units.Density, "")
	perLengthRange = trade.Between("weight per length", 0.01, 50e3, units.MassPerLength, "")
	yieldRange     = trade.Between("yield", 100*megaPa, 1400*megaPa, units.Pressure, "")
	ultimateRange  = trade.Between("ultimate", 150*megaPa, 2000*megaPa, units.Pressure, "")

	legAngleRange = trade.Between("leg angle", 30*degree-touch, 90*degree+touch, units.Angle,
		"below 30 degrees from the horizontal a sling leg is not to be used")
)

// index turns a choice argument into an index of its options.
func index(what string, x float64, options []string) (int, error) {
	i, ok := trade.Chosen(x, len(options))
	if !ok {
		return 0, fmt.Errorf("%s must be one of: %s", what, strings.Join(options, ", "))
	}
	return i, nil
}

func yes(what string, x float64) (bool, error) {
	if x != 0 && x != 1 {
		return false, fmt.Errorf("%s must be yes or no", what)
	}
	return x == 1, nil
}
