package truck

import (
	"cmp"
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// Across is a load on two forks, seen from the front.
type Across struct {
	Load   float64 // kg, 0.1 to 100 000
	Spread float64 // centre to centre of the forks, m, 0.1 to 6
	Offset float64 // load's centre of gravity from midway between the forks, either way, m, 0 to less than half of Spread
}

// Shared is what each fork carries.
type Shared struct {
	In             Across
	Heavier        float64 // kg
	Lighter        float64 // kg
	HeavierPortion float64 // its share of the load
}

// ForkShare shares a load between two forks by moments:
// heavier = W·(1/2 + offset/spread).
//
// An offset that puts the centre of gravity on or outside a fork is an error: the
// load would roll off sideways. So is anything out of range. A fork is rated for
// half the truck's capacity: compare Heavier with the mark on the fork. Source:
// moments.
func ForkShare(in Across) (Shared, error) {
	err := cmp.Or(loadRange.CheckAs("load", in.Load), bladeRange.CheckAs("fork spread", in.Spread), reachRange.CheckAs("offset of the load", in.Offset))
	if err != nil {
		return Shared{}, err
	}
	if in.Offset >= in.Spread/2 {
		return Shared{}, errors.New("the centre of gravity is not between the forks: spread the forks or shift the load")
	}
	r := Shared{In: in, HeavierPortion: 0.5 + in.Offset/in.Spread}
	r.Heavier = in.Load * r.HeavierPortion
	r.Lighter = in.Load - r.Heavier
	return r, nil
}

// Steps gives the lines of the work.
func (r Shared) Steps() []trade.Step {
	return []trade.Step{
		{Name: "share of the heavier fork", Formula: "1/2 + offset/spread", Kind: units.Ratio, Value: r.HeavierPortion, Unit: "percent"},
		{Name: "heavier fork", Formula: "W·share", Kind: units.Mass, Value: r.Heavier, Unit: "lb"},
		{Name: "lighter fork", Formula: "W − heavier", Kind: units.Mass, Value: r.Lighter, Unit: "lb"},
	}
}

// Fork is what was measured on a pair of forks.
type Fork struct {
	New      float64 // thickness when new, m, 5 to 300 mm
	Worn     float64 // least thickness now, at heel or blade, m, 1 to 300 mm
	Angle    float64 // blade to shank away from what it was new, either way, rad, 0 to 45 degrees
	Bow      float64 // blade or shank out of straight, m, 0 to 10
	Blade    float64 // length of the blade, m, 0.1 to 6
	TipsDiff float64 // difference in height of the two tips, m, 0 to 10
}

// The ways a fork is worn out, in the order of ForkResult.Checks.
const (
	ForkThickness = iota // lost thickness against 10 %
	ForkAngle            // against 3 degrees
	ForkBow              // against 0.5 % of the length
	ForkTips             // against 3 % of the blade
)

// Check is one limit: what was found and what is allowed, in the same unit, m,
// rad, kg or N·m.
type Check struct {
	Name           string
	Found, Allowed float64
	kind           units.Kind
}

// Use is found over allowed.
func (c Check) Use() float64 { return c.Found / c.Allowed }

// ForkResult holds every limit.
type ForkResult struct {
	In      Fork
	Checks  [4]Check
	Governs int
}

// Use is the greatest use of all limits; above 1 the fork comes off.
func (r ForkResult) Use() float64 { return r.Checks[r.Governs].Use() }

var (
	newThickness  = trade.Between("new thickness", 5e-3, 0.3, units.Length, "")
	wornThickness = trade.Between("worn thickness", 1e-3, 0.3, units.Length, "")
	angleOff      = trade.Between("angle off", 0, 45*degree, units.Angle, "")
)

// ForkWear compares forks with the limits for taking them out of service: 10 %
// of the thickness lost, 3 degrees off the angle, 0.5 % of the length out of
// straight, 3 % of the blade between the tips.
//
// A worn thickness more than 2 % above the new is an error, as is anything out of
// range. Any crack, mended fork or missing mark also takes it out of service.
// Inspect at most 12 months apart. Source: ANSI B56.1-2005 as restated by fork
// and truck makers.
func ForkWear(in Fork) (ForkResult, error) {
	err := cmp.Or(newThickness.CheckAs("thickness when new", in.New), wornThickness.CheckAs("thickness now", in.Worn),
		angleOff.CheckAs("angle off", in.Angle), reachRange.CheckAs("out of straight", in.Bow),
		bladeRange.CheckAs("blade length", in.Blade), reachRange.CheckAs("difference of the tips", in.TipsDiff))
	if err != nil {
		return ForkResult{}, err
	}
	if in.Worn > 1.02*in.New {
		return ForkResult{}, errors.New("the fork measures thicker than new: check which is which")
	}
	r := ForkResult{In: in}
	r.Checks = [4]Check{
		ForkThickness: {"thickness lost", max(0, in.New-in.Worn), 0.1 * in.New, units.Length},
		ForkAngle:     {"angle off", in.Angle, 3 * degree, units.Angle},
		ForkBow:       {"out of straight", in.Bow, 0.005 * in.Blade, units.Length},
		ForkTips:      {"difference of the tips", in.TipsDiff, 0.03 * in.Blade, units.Length},
	}
	for i, c := range r.Checks {
		if c.Use() > r.Checks[r.Governs].Use() {
			r.Governs = i
		}
	}
	return r, nil
}

// Steps gives the lines of the work.
func (r ForkResult) Steps() []trade.Step {
	formulas := [4]string{"10 % of new", "3 degrees", "0.5 % of the length", "3 % of the blade"}
	steps := make([]trade.Step, 0, 2*len(r.Checks))
	for i, c := range r.Checks {
		steps = append(steps,
			trade.Step{Name: "limit of " + c.Name, Formula: formulas[i], Kind: c.kind, Value: c.Allowed},
			trade.Step{Name: "use of " + c.Name, Formula: "found/limit", Kind: units.Ratio, Value: c.Use(), Unit: "percent"})
	}
	return steps
}

// ForkExtensionLimit is the greatest length in m of an extension on a fork, 1.5
// times the fork's own.
//
// forkLength: m, 0.1 to 6. Out of range is an error. An extension also moves the
// load centre and needs its own plate. Source: ANSI B56.1-2005, 7.39.1, as quoted
// by a supplier.
func ForkExtensionLimit(forkLength float64) (float64, error) {
	return 1.5 * forkLength, bladeRange.CheckAs("fork length", forkLength)
}
