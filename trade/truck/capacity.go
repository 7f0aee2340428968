package truck

import (
	"cmp"

	"gudgeon/trade"
	"gudgeon/units"
)

// CapacityAt is what a truck may carry, in kg, with its load further out than
// the plate assumes, by the load moment: W = W0·c0/c, and W0 where c ≤ c0,
// because a load nearer in earns nothing above the plate.
//
// rating W0: kg, 0.1 to 100 000; ratingCentre c0 and loadCentre c: from the fork
// face to the load centre on the plate and to the load's centre of gravity, m,
// 10 mm to 10 m. Out of range is an error. The plate governs: this is an estimate
// for a load carried low, mast upright, no attachment that the plate does not
// name. Sources: 29 CFR 1910.178 App. A, A-5 (non-mandatory); OSHA's field
// calculation. It errs to the safe side of CapacityFromAxle.
func CapacityAt(rating, ratingCentre, loadCentre float64) (float64, error) {
	err := cmp.Or(loadRange.CheckAs("rating on the plate", rating), centreRange.CheckAs("load centre on the plate", ratingCentre),
		centreRange.CheckAs("load centre of the load", loadCentre))
	if err != nil {
		return 0, err
	}
	if loadCentre <= ratingCentre {
		return rating, nil
	}
	return rating * ratingCentre / loadCentre, nil
}

var axleRange = trade.Between("axle", 0, 3, units.Length, "")

// CapacityFromAxle is the same about the front axle, where the truck would tip:
// W = W0·(f + c0)/(f + c), and W0 where c ≤ c0.
//
// axleToFace f: front axle to fork face, m, 0 to 3, from the truck's data sheet;
// the rest as in CapacityAt. Out of range is an error. It gives more than
// CapacityAt, which has f = 0: use it only with the maker's own figure for f, and
// never for the forks' strength. The plate governs. Source: moments about the
// front axle.
func CapacityFromAxle(rating, ratingCentre, loadCentre, axleToFace float64) (float64, error) {
	if err := axleRange.CheckAs("front axle to fork face", axleToFace); err != nil {
		return 0, err
	}
	plain, err := CapacityAt(rating, ratingCentre, loadCentre)
	if err != nil || loadCentre <= ratingCentre {
		return plain, err
	}
	return rating * (axleToFace + ratingCentre) / (axleToFace + loadCentre), nil
}

// HungLoadCentre is the load centre in m of a load hung past the fork tips by a
// sling or hook: fork length plus how far past.
//
// forkLength: fork face to tip, m, 0.1 to 6; pastTips: tip to the line the load
// hangs on, m, 0 to 10. Out of range is an error. Hanging a load from forks
// changes the truck: 29 CFR 1910.178(a)(4) wants the maker's written approval and
// a plate for it, and the plate governs. Source: geometry.
func HungLoadCentre(forkLength, pastTips float64) (float64, error) {
	err := cmp.Or(bladeRange.CheckAs("fork length", forkLength), reachRange.CheckAs("distance past the tips", pastTips))
	return forkLength + pastTips, err
}

// leastEngagement is the share of the load's depth that forks must reach under.
const leastEngagement = 2. / 3

// Engaged is how far forks reach under a load.
type Engaged struct {
	Share float64 // share of the load's depth, at most 1
	Use   float64 // ratio of two thirds to Share: above 1 the forks are too short
}

// Engagement compares the forks' reach with two thirds of the load's depth:
// share = reach/depth, use = (2/3)/share.
//
// reach: length of fork under the load, m, 0.1 to 6; depth: of the load from face
// to far edge, m, 10 mm to 10 m. Forks longer than the load is deep count as
// reaching all of it. Out of range is an error. Sources: 29 CFR 1910.178(o) wants
// the load engaged as far as possible; two thirds is common practice.
func Engagement(reach, depth float64) (Engaged, error) {
	err := cmp.Or(bladeRange.CheckAs("fork under the load", reach), centreRange.CheckAs("depth of the load", depth))
	if err != nil {
		return Engaged{}, err
	}
	share := min(1, reach/depth)
	return Engaged{Share: share, Use: leastEngagement / share}, nil
}
