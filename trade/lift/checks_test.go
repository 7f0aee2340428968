package lift

import (
	"testing"

	"gudgeon/trade"
	"gudgeon/trade/outside"
)

const (
	foot  = 12 * inch
	kip   = 1000 * pound * trade.StandardGravity
	tonne = 1000.0
)

func TestChecks(t *testing.T) { outside.Run(t, "lift", checks()) }

// checks lists every outside value of this package.
func checks() []outside.Check {
	var all []outside.Check
	for _, some := range [][]outside.Check{
		slingChecks(), slingTableChecks(), chainChecks(), lugChecks(), aiscChecks(), weldChecks(), weldGroupChecks(),
		curvedChecks(), weightChecks(), hardwareChecks(),
	} {
		all = append(all, some...)
	}
	return all
}

// in gives a value in the unit of a check.
func in(unit float64, x float64, err error) (float64, error) { return x / unit, err }
