package setup

import (
	"cmp"
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// CentringMethod is how a line bar is brought to the centre of a bore.
type CentringMethod uint8

// The methods, in the order of CentringMethods.
const (
	Cones   CentringMethod = iota // cones pushed into the ends of the bore
	Spacers                       // rings turned to a surface that nobody has touched
)

// CentringMethods lists the words for CentringMethod.
func CentringMethods() []string { return []string{"cones", "spacers"} }

// ConeCaution says what cones in a worn bore cannot do.
const ConeCaution = "Cones find the middle of the hole as it is. A worn bore is worn to one side, so they cannot find the centre that it was made on: set the bar from a surface that nobody has worn or touched."

// CentringInput is a line bar to be centred.
type CentringInput struct {
	Method    CentringMethod
	Wear      float64 // how much deeper the worst side is worn than the best, on radius, m
	Clearance float64 // of the spacer in its seat plus that of the bar in the spacer, on diameter, m
}

// CentringResult is how far off the bar may be.
type CentringResult struct {
	In      CentringInput
	Error   float64 // greatest distance of the bar from the true centre, m
	Caution string  // empty when there is none
}

var (
	wearRange      = trade.Between("wear", 0, 2*inch, units.Length, "on radius")
	clearanceRange = trade.Between("clearance of the spacer", 0, 0.25*inch, units.Length, "on diameter")
)

// Centring returns how far a line bar may be off the true centre, and a caution
// where cones are used.
//
//	cones: error up to the wear; spacers: error up to clearance/2
//
// error, wear on radius, clearance on diameter: m. A cone in a bore that is
// worn to one side sits anywhere between the old centre and the full wear.
//
// Valid for wear 0 to 2 in, clearance 0 to 0.25 in; otherwise an error. The wear
// does not count with spacers on an untouched surface, nor the clearance with cones.
//
// Source: geometry.
func Centring(in CentringInput) (CentringResult, error) {
	if err := cmp.Or(wearRange.Check(in.Wear), clearanceRange.Check(in.Clearance)); err != nil {
		return CentringResult{}, err
	}
	switch in.Method {
	case Cones:
		return CentringResult{In: in, Error: in.Wear, Caution: ConeCaution}, nil
	case Spacers:
		return CentringResult{In: in, Error: in.Clearance / 2}, nil
	}
	return CentringResult{}, errors.New("a line bar is centred by cones or by spacers")
}

// Steps gives the worked line of the centring, with its caution.
func (r CentringResult) Steps() []trade.Step {
	formula := "clearance/2"
	if r.In.Method == Cones {
		formula = "wear on radius"
	}
	steps := []trade.Step{{Name: "the bar may be off the true centre by", Formula: formula, Kind: units.Length, Value: r.Error, Unit: "thou"}}
	if r.Caution != "" {
		steps[0].Name += ". " + r.Caution
	}
	return steps
}
