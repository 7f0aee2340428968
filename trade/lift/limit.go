package lift

import (
	"errors"
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
	loadRange     = trade.Between("load", 0.1, 500e3, units.Mass, "")
	scaleRange    = trade.Between("scale", 0, 500e3, units.Mass, "")
	pieceRange    = trade.Between("piece", -500e3, 500e3, units.Mass, "")
	lengthRange   = trade.Between("length", 0.5e-3, 50, units.Length, "")
	boreRange     = trade.Between("bore", 0, 50, units.Length, "")
	placeRange    = trade.Between("place", -50, 50, units.Length, "")
	stockRange    = trade.Between("stock", 1e-3, 1, units.Length, "")
	densityRange  = trade.Between("density", 100, 25e3, units.Density, "")
	perLengthHigh = trade.Between("per length high", 0.01, 50e3, units.MassPerLength, "")
	yieldRange    = trade.Between("yield", 100*megaPa, 1400*megaPa, units.Pressure, "")
	ultimateRange = trade.Between("ultimate", 150*megaPa, 2000*megaPa, units.Pressure, "")

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

// Check is one way of failing: what is asked of the part, and what it can bear,
// in the same unit, N or Pa.
type Check struct {
	Name             string
	Demand, Capacity float64
}

// Use is demand over capacity.
func (c Check) Use() float64 { return c.Demand / c.Capacity }

// governing gives the place of the check with the greatest use.
func governing(checks []Check) int {
	worst := 0
	for i, c := range checks {
		if c.Use() > checks[worst].Use() {
			worst = i
		}
	}
	return worst
}

// Category is the design category of ASME BTH-1: A where loads and conditions
// are known and predictable, B where they are not.
type Category int

// The design categories.
const (
	CategoryA Category = iota
	CategoryB
)

var categories = []string{"A", "B"}

var errCategory = errors.New("design category must be A or B")

// Factor is the design factor on yielding, a ratio: 2.00 for A, 3.00 for B. On fracture BTH-1 multiplies it by a further 1.20. Any
// other category is an error. Source: ASME BTH-1, 3-1.3, from memory.
func (c Category) Factor() (float64, error) {
	switch c {
	case CategoryA:
		return 2, nil
	case CategoryB:
		return 3, nil
	}
	return 0, errCategory
}

func useStep(c Check) trade.Step {
	return trade.Step{Name: "use in " + c.Name, Formula: "demand/capacity", Kind: units.Ratio, Value: c.Use(), Unit: "percent"}
}
