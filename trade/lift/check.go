package lift

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

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
