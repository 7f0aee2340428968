package lift

import (
	"cmp"
	"errors"
	"fmt"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Hitch is how a sling is rigged.
type Hitch int

// The hitches. A bridle is two, three or four legs from one hook; it counts as
// two. The double hitches are two slings of the same rating.
const (
	OneLeg Hitch = iota
	Bridle
	Choker
	ChokerBridle
	Basket
	DoubleBasket
)

var hitches = []string{"one leg", "bridle", "choker", "choker bridle", "basket", "double basket"}

// parts is how many times the vertical rating the hitch holds when straight.
func (h Hitch) parts() (float64, error) {
	switch h {
	case OneLeg, Choker:
		return 1, nil
	case Bridle, ChokerBridle, Basket:
		return 2, nil
	case DoubleBasket:
		return 4, nil
	}
	return 0, errors.New("not a hitch this program knows")
}

func (h Hitch) choked() bool { return h == Choker || h == ChokerBridle }

var (
	hitchAngleRange  = trade.Between("hitch angle", legAngleRange.Low, legAngleRange.High, units.Angle, legAngleRange.Why)
	chokeAngleRange  = trade.Between("choke angle", 45*degree-touch, 90*degree+touch, units.Angle, "a choker below 45 degrees is not recommended")
	chokeFactorRange = trade.Between("choke factor", 0.4, 0.8, units.Ratio, "")
)

// SlingCapacity is what a hitch may lift, in kg, from the vertical rating V on
// the sling's tag: one leg V·sin a; bridle 2V·sin a, with three or four legs
// too; choker k·V; choker bridle 2k·V·sin a; basket 2V·sin a; double basket
// 4V·sin a.
//
// rating: kg, 0.1 to 500 000; angle a from the horizontal: rad, 30 to 90
// degrees; for a choker, which gets no sine, it is the angle of the choke, 45 to
// 90. k: 0.4 to 0.8, usually 0.75; for natural fibre rope use 0.45, the lowest
// ratio in 29 CFR 1918 App. II Table 2. Outside these it is an error. The
// sling's own tag or table governs where it says less. Sources: NAVEDTRA 14080
// pp. 3-23, 3-24 and 14081 p. 13-20. That page multiplies a single inclined
// basket by 4, against its own vertical 2; 2 is used here.
func SlingCapacity(rating float64, hitch Hitch, angle, chokerFactor float64) (float64, error) {
	err := cmp.Or(loadRange.CheckAs("vertical rating", rating),
		hitchAngleRange.CheckAs("sling angle from the horizontal", angle),
		chokeFactorRange.CheckAs("choker factor", chokerFactor))
	if err != nil {
		return 0, err
	}
	parts, err := hitch.parts()
	if err != nil {
		return 0, err
	}
	capacity := rating * parts
	if hitch != Choker {
		capacity *= math.Sin(angle)
	}
	if !hitch.choked() {
		return capacity, nil
	}
	return capacity * chokerFactor, chokeAngleRange.CheckAs("angle of the choker", angle)
}

// WorkingLoad is a rating in kg from a breaking strength, breaking/factor.
//
// breaking: kg, 0.1 to 500 000; factor: 5 to 15; wire rope and web slings use 5.
// Out of range is an error. A tag governs; hardware without one is not for
// lifting. Source: DOE-STD-1090-96, 11.3.1.3 and 11.3.5.
func WorkingLoad(breaking, factor float64) (float64, error) {
	err := cmp.Or(loadRange.CheckAs("breaking strength", breaking), designFactorRange.CheckAs("design factor", factor))
	return breaking / factor, err
}

var designFactorRange = trade.Between("design factor", 5, 15, units.Number, "slings for lifting are rated at a fifth of their strength or less")

// ProofKind is what is to be proof tested.
type ProofKind int

// What may be proof tested.
const (
	ProofAccessory ProofKind = iota // a custom grab, hook or clamp
	ProofSlingLeg                   // one leg of a sling
	ProofHook                       // a hook without its maker's data
)

var proofKinds = []string{"custom accessory", "sling leg", "hook without maker's data"}

// ProofLoad is the test load in kg for a rating in kg (0.1 to 500 000): 1.25
// times for a custom lifting accessory (29 CFR 1926.251(a)(4)), 2 times the
// vertical rating for each leg of a sling (NAVEDTRA 14251), 2 times for a hook
// without its maker's data (WAC 296-304-07005). Out of range is an error.
// Sources: as named for each.
func ProofLoad(rating float64, what ProofKind) (float64, error) {
	if err := loadRange.CheckAs("rating", rating); err != nil {
		return 0, err
	}
	switch what {
	case ProofAccessory:
		return 1.25 * rating, nil
	case ProofSlingLeg, ProofHook:
		return 2 * rating, nil
	}
	return 0, fmt.Errorf("no proof test is known for item %d", int(what))
}
