package bore

import "math"

// Witnesses is a worn bore against two features that an earlier repair left alone.
type Witnesses struct {
	FeaturesEn    float64 // normalised distance between the two features, 1
	FeaturesAgree bool
	Centre        XY      // of the two, mean weighted by 1/U², m; means nothing unless they agree
	U             float64 // its standard uncertainty in each direction, m
	Worn          Offset  // of the worn bore from that centre
	WornEn        float64 // its normalised distance, 1
	WornAgrees    bool
}

// TwoWitnesses returns whether the worn bore is where two untouched features say
// it should be: the least that can tell an earlier repair off centre from a
// wrong reading. Compare does the same for more features.
//
//	c = (c₁/u₁² + c₂/u₂²)/(1/u₁² + 1/u₂²),  En = |worn − c|/(k·√(u² + u_c²)), k = Coverage
//
// Centres from the bar within ±1.5 m, standard uncertainties 1 nm to 100 mm.
// Errors: a *trade.RangeError. Source: weighted mean, JCGM 100; En number as in
// ISO/IEC 17043 (from memory).
func TwoWitnesses(worn, first, second Candidate) (Witnesses, error) {
	for _, c := range [...]*Candidate{&worn, &first, &second} {
		if err := limShift.Check(c.Centre.X); err != nil {
			return Witnesses{}, err
		}
		if err := limShift.Check(c.Centre.Y); err != nil {
			return Witnesses{}, err
		}
		if err := limU.Check(c.U); err != nil {
			return Witnesses{}, err
		}
	}
	var w Witnesses
	w.FeaturesEn = first.Centre.Sub(second.Centre).Len() / (Coverage * math.Hypot(first.U, second.U))
	w.FeaturesAgree = w.FeaturesEn <= 1
	a, b := 1/(first.U*first.U), 1/(second.U*second.U)
	w.Centre = first.Centre.Times(a / (a + b)).Add(second.Centre.Times(b / (a + b)))
	w.U = 1 / math.Sqrt(a+b)
	d := worn.Centre.Sub(w.Centre)
	w.Worn = Offset{XY: d, Size: d.Len(), Clock: d.Clock(), U: math.Hypot(worn.U, w.U)}
	w.WornEn = w.Worn.Size / (Coverage * w.Worn.U)
	w.WornAgrees = w.WornEn <= 1
	w.Worn.Significant = !w.WornAgrees
	return w, nil
}
