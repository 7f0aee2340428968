package press

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// PinClearance returns the clearance on diameter between a pin and the bore of
// a bushing once it is pressed in; negative when the pin no longer runs.
//
//	c = d - close-in - pin
//
// c clearance, d bushing bore before pressing, pin diameter: m.
//
// Valid as for Pressure, with a bushing that has a bore, pin 0.1 to 80 in;
// otherwise an error. Source: Pressure's.
func PinClearance(j Joint, pin float64) (PinResult, error) {
	if err := pinRange.Check(pin); err != nil {
		return PinResult{}, err
	}
	if j.BushingBore == 0 {
		return PinResult{}, errors.New("a solid pin has no bore for another pin to run in")
	}
	p, err := Pressure(j)
	if err != nil {
		return PinResult{}, err
	}
	return PinResult{PressureResult: p, Pin: pin, Clearance: p.BoreAfter - pin}, nil
}

// PinResult is a pin in a bushing that was pressed in.
type PinResult struct {
	PressureResult
	Pin       float64 // m
	Clearance float64 // on diameter, m
}

var pinRange = trade.Between("pin diameter", 0.1*inch, 80*inch, units.Length, "")

// Steps gives the worked lines of the pin's clearance.
func (r PinResult) Steps() []trade.Step {
	return append(r.PressureResult.Steps(),
		trade.Step{Name: "bore once pressed in", Formula: "d - close-in", Kind: units.Length, Value: r.BoreAfter},
		trade.Step{Name: "clearance of the pin", Formula: "bore - pin", Kind: units.Length, Value: r.Clearance, Unit: "thou"},
	)
}
