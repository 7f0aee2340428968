package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Piece is one shape of a part.
type Piece struct {
	Weight float64    // kg; negative for a hole cut out of another piece
	Centre [3]float64 // centre of gravity, m, in the part's own axes
}

// Balance is a part's weight and centre of gravity.
type Balance struct {
	Weight float64    // kg
	Centre [3]float64 // m
}

var errNoWeight = errors.New("the pieces together weigh nothing: a hole outweighs the solid it is cut from")

// Centre sums pieces: W = ΣWi, c = ΣWi·ci/W.
//
// Weights: kg, −500 000 to 500 000, negative for a hole; centres: m, within
// ±50. No pieces, a total that is not above 0, or anything out of range is an
// error. Source: definition of the centre of gravity.
func Centre(pieces []Piece) (Balance, error) {
	var b Balance
	for _, p := range pieces {
		if err := pieceRange.CheckAs("weight of a piece", p.Weight); err != nil {
			return Balance{}, err
		}
		b.Weight += p.Weight
		for i, x := range p.Centre {
			if err := placeRange.CheckAs("place of a piece", x); err != nil {
				return Balance{}, err
			}
			b.Centre[i] += p.Weight * x
		}
	}
	if b.Weight <= 0 {
		return Balance{}, errNoWeight
	}
	for i := range b.Centre {
		b.Centre[i] /= b.Weight
	}
	return b, nil
}

// Scales is a part weighed on two supports at once.
type Scales struct {
	Front, Rear float64 // readings less tare, kg, 0 to 500 000
	Span        float64 // between the supports, m, 0.5 mm to 50 m
}

// ScalesResult is where the part balances between its two supports.
type ScalesResult struct {
	In        Scales
	Weight    float64 // kg
	FromFront float64 // m
	FromRear  float64 // m
}

// CentreFromScales places the centre of gravity between two scales:
// W = F + R, from front = R·L/W.
//
// Both readings 0 or anything out of range is an error: neither scale can read
// below 0 while the part rests on both. Source: moments; as in wheel weighing.
func CentreFromScales(in Scales) (ScalesResult, error) {
	err := cmp.Or(scaleRange.CheckAs("front reading", in.Front), scaleRange.CheckAs("rear reading", in.Rear),
		lengthRange.CheckAs("distance between the supports", in.Span))
	if err != nil {
		return ScalesResult{}, err
	}
	w := in.Front + in.Rear
	if w < loadRange.Low {
		return ScalesResult{}, errors.New("both scales read nothing")
	}
	return ScalesResult{In: in, Weight: w, FromFront: in.Span * in.Rear / w, FromRear: in.Span * in.Front / w}, nil
}

// Steps gives the lines of the work.
func (r ScalesResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "weight", Formula: "W = F + R", Kind: units.Mass, Value: r.Weight, Unit: "lb"},
		{Name: "from the front support", Formula: "x = R·L/W", Kind: units.Length, Value: r.FromFront, Unit: "inch"},
	}
}

// Tilt is a second weighing with one end raised.
type Tilt struct {
	Weight        float64 // whole part, kg, 0.1 to 500 000
	Level         float64 // reading under the end to be raised, part level, kg
	Raised        float64 // reading under the same end when raised, kg
	Span          float64 // between the supports, m
	Rise          float64 // how far that end was raised, m; 0.05 to 0.7 of the span
	SupportHeight float64 // pivots of both supports above the base line, m, 0 to 50
}

// CentreHeight is the height in m of the centre of gravity above the base line
// from how the load shifts when one end is raised:
// h = r + (b − L·F1/W)·cot θ, b = L·F0/W, sin θ = H/L, where F0 and F1 are the
// readings level and raised, H the rise, L the span and r the support height.
//
// Both supports must pivot at height r, or the reading will mislead. Readings
// above the weight, a rise outside 0.05 to 0.7 of the span, or an answer below
// the base line is an error. Source: the vehicle-dynamics weighing method
// (open textbook), derived again here from moments about the low support.
func CentreHeight(in Tilt) (float64, error) {
	err := cmp.Or(loadRange.CheckAs("weight", in.Weight), scaleRange.CheckAs("level reading", in.Level),
		scaleRange.CheckAs("raised reading", in.Raised), lengthRange.CheckAs("distance between the supports", in.Span),
		lengthRange.CheckAs("rise", in.Rise), boreRange.CheckAs("support height", in.SupportHeight))
	if err != nil {
		return 0, err
	}
	if in.Level > in.Weight || in.Raised > in.Weight {
		return 0, errors.New("a support reads more than the whole part weighs")
	}
	sin := in.Rise / in.Span
	if err := trade.InRange("rise over span", sin, 0.05, 0.7, units.Ratio,
		"too little does not show on the scales, too much lets the part slide"); err != nil {
		return 0, err
	}
	cot := math.Sqrt(1-sin*sin) / sin
	h := in.SupportHeight + in.Span*(in.Level-in.Raised)/in.Weight*cot
	if h < 0 {
		return 0, errors.New("the readings put the centre of gravity below the base line: weigh again")
	}
	return h, nil
}
