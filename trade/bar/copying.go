package bar

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// CopyingInput is an out-of-round bore cut by a bar that gives.
type CopyingInput struct {
	Stiffness    float64 // of the bar at the cutter, N/m
	CutStiffness float64 // push on the bar per depth of cut, N/m
	OutOfRound   float64 // before, on radius, m
	Passes       float64 // a whole number, 1
}

// CopyingResult is what the passes leave.
type CopyingResult struct {
	In    CopyingInput
	Share float64 // of the out-of-round that one pass leaves, 1
	First float64 // out-of-round after one pass, m
	Last  float64 // after all passes, m
}

var (
	cutStiffRange = trade.Between("push per depth of cut", 1e3, 1e10, units.Stiffness, "")
	ovalRange     = trade.Between("out-of-round", 0, 2*inch, units.Length, "on radius")
	passRange     = trade.Between("number of passes", 1, 50, units.Number, "")
)

// Copying returns how much out-of-round is left after passes with the same bar.
//
//	eps = c/(k + c); after n passes = eps^n · e
//
// eps share left by one pass: 1; c push per depth of cut, k stiffness of the
// bar at the cutter: N/m; e out-of-round on radius: m; n passes.
//
// Books give eps as c/k, which is near for a stiff bar and over 1 for a soft
// one; a pass cannot leave more than it found. Valid where the tool cuts all
// round; k 1e4 to 1e10, c 1e3 to 1e10 N/m, n a whole number 1 to 50; otherwise
// an error.
//
// Source: from memory: balance of cutting force and bar, no worked example was
// found published.
func Copying(in CopyingInput) (CopyingResult, error) {
	if err := cmp.Or(stiffnessRange.Check(in.Stiffness), cutStiffRange.Check(in.CutStiffness), ovalRange.Check(in.OutOfRound), passRange.Check(in.Passes)); err != nil {
		return CopyingResult{}, err
	}
	if in.Passes != math.Trunc(in.Passes) {
		return CopyingResult{}, &trade.RangeError{What: "number of passes, a whole number,", Value: in.Passes, Low: 1, High: 50, Kind: units.Number}
	}
	r := CopyingResult{In: in, Share: copied(in.CutStiffness, in.Stiffness)}
	r.First = r.Share * in.OutOfRound
	r.Last = math.Pow(r.Share, in.Passes) * in.OutOfRound
	return r, nil
}

func copied(cut, bar float64) float64 { return cut / (bar + cut) }

// CutStiffness returns the push on the bar per depth of cut (N/m).
//
//	c = share·kc·f
//
// c: N/m; share of the cutting force that pushes the bar off: 1; kc specific
// cutting force at that feed: Pa; f feed per turn (given in m/rad): m.
//
// Valid as SpecificForce, share 0.1 to 1; otherwise an error. Source:
// Kienzle's law, which is linear in depth (Fc = kc·a·f).
func CutStiffness(w Work, feed, lead, share float64) (float64, error) {
	kc, err := SpecificForce(w, feed, lead)
	if err != nil {
		return 0, err
	}
	if err := shareRange.Check(share); err != nil {
		return 0, err
	}
	return share * kc * feed * turn, nil
}

// Steps gives the worked lines of the copying.
func (r CopyingResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "share that a pass leaves", Formula: "eps = c/(k+c)", Kind: units.Ratio, Value: r.Share},
		{Name: "out-of-round after one pass", Formula: "eps·e", Kind: units.Length, Value: r.First},
		{Name: "out-of-round after all passes", Formula: "eps^n·e", Kind: units.Length, Value: r.Last},
	}
}
