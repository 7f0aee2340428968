package setup

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

var (
	pullRange     = trade.Between("pull of the bolt", 0, 2e6, units.Force, "")
	leverRange    = trade.Between("distance along the strap", 0.1*inch, 60*inch, units.Length, "")
	clampRange    = trade.Between("force of a clamp", 0, 2e6, units.Force, "")
	weightRange   = trade.Between("weight on the table", 0, 2e7, units.Force, "")
	cuttingRange  = trade.Between("cutting force", 0, 1e6, units.Force, "")
	armRange      = trade.Between("distance of the cut from the middle of the clamps", 0, 1000*inch, units.Length, "")
	reachRange    = trade.Between("distance of the clamps from their middle", 0, 1000*inch, units.Length, "")
	frictionRange = trade.Between("friction coefficient", 0.02, 0.6, units.Number, "")
	safetyRange   = trade.Between("safety factor", 1, 10, units.Number, "under 1 the part slides")
)

// StrapResult is what a strap clamp puts on the part.
type StrapResult struct {
	OnPart float64 // N
	OnHeel float64 // N
}

// StrapClamp returns the force that a strap clamp puts on the part: the bolt's
// pull is shared with the heel block.
//
//	on part = F·h/(p+h)
//
// F pull of the bolt, on part: N; p bolt to the point on the part, h bolt to
// the heel block: m.
// Valid for F 0 to 2 MN, p and h 0.1 to 60 in; otherwise an error. A bolt
// halfway gives half; move it to the part.
//
// Source: statics of a lever.
func StrapClamp(pull, toPart, toHeel float64) (StrapResult, error) {
	if err := cmp.Or(pullRange.Check(pull), leverRange.Check(toPart), leverRange.Check(toHeel)); err != nil {
		return StrapResult{}, err
	}
	on := pull * toHeel / (toPart + toHeel)
	return StrapResult{OnPart: on, OnHeel: pull - on}, nil
}

// Steps gives the worked lines of the strap.
func (r StrapResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "force on the part", Formula: "F·h/(p+h)", Kind: units.Force, Value: r.OnPart},
		{Name: "force on the heel block", Formula: "F·p/(p+h)", Kind: units.Force, Value: r.OnHeel},
	}
}

// HoldInput is a part that friction alone holds on a table.
type HoldInput struct {
	Clamps   float64 // a whole number, 1
	Force    float64 // of each clamp on the part, N
	Weight   float64 // on the table, N; 0 where it does not press on it
	Cutting  float64 // cutting force along the table, N
	Lift     float64 // cutting force away from the table, N
	Arm      float64 // from the line of the cutting force to the middle of the clamps, m
	Reach    float64 // mean distance of the clamps from their middle, m
	Friction float64 // least friction coefficient, 1
	Safety   float64 // 1
}

// HoldResult is how well it holds.
type HoldResult struct {
	In     HoldInput
	Press  float64 // of the part on the table, N
	Grip   float64 // friction, N
	Slide  float64 // share of grip that the cutting force takes, 1
	Turn   float64 // share of grip that its moment takes, 1
	Use    float64 // both, times the safety factor, 1
	Needed float64 // force of each clamp for a use of 1, N
}

// Hold returns how much of its friction grip a clamped part needs against the cut.
//
//	N = n·C + W - lift; grip = mu·N; use = S·(F/grip + F·e/(grip·r))
//
// n clamps of force C, W weight, N press on the table, F cutting force along
// it, lift away from it: N; mu friction, S safety: 1; e arm of F, r mean reach
// of the clamps: m. Sliding and turning are added outright, which is on the
// safe side, and only the face on the table counts, not the clamps' noses.
//
// Valid for mu 0.02 to 0.6 (0.1 for oily steel on steel, common practice, no
// source), n a whole number 1 to 50, S 1 to 10; an error where the cut lifts the
// part off, or turns it and the reach is 0. A use over 1 is an answer. Stops
// hold better than friction: set them against the cut.
//
// Source: Coulomb friction, statics.
func Hold(in HoldInput) (HoldResult, error) {
	if err := cmp.Or(
		countRange.Check(in.Clamps), clampRange.Check(in.Force), weightRange.Check(in.Weight),
		cuttingRange.Check(in.Cutting), cuttingRange.Check(in.Lift), armRange.Check(in.Arm), reachRange.Check(in.Reach),
		frictionRange.Check(in.Friction), safetyRange.Check(in.Safety),
	); err != nil {
		return HoldResult{}, err
	}
	if in.Clamps != math.Trunc(in.Clamps) {
		return HoldResult{}, errors.New("the number of clamps is not a whole number")
	}
	turning := 0.0
	if in.Arm > 0 {
		if in.Reach == 0 {
			return HoldResult{}, errors.New("the cut turns the part and the clamps stand in one place: nothing keeps it from turning")
		}
		turning = in.Arm / in.Reach
	}
	r := HoldResult{In: in, Press: in.Clamps*in.Force + in.Weight - in.Lift}
	if r.Press <= 0 {
		return HoldResult{}, errors.New("the cut lifts the part off the table")
	}
	r.Grip = in.Friction * r.Press
	r.Slide = in.Cutting / r.Grip
	r.Turn = r.Slide * turning
	r.Use = in.Safety * (r.Slide + r.Turn)
	press := in.Safety * in.Cutting * (1 + turning) / in.Friction
	r.Needed = max(0, press+in.Lift-in.Weight) / in.Clamps
	return r, nil
}

// Steps gives the worked lines of the hold.
func (r HoldResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "press on the table", Formula: "N = n·C + W - lift", Kind: units.Force, Value: r.Press},
		{Name: "grip", Formula: "mu·N", Kind: units.Force, Value: r.Grip},
		{Name: "share that sliding takes", Formula: "F/grip", Kind: units.Ratio, Value: r.Slide},
		{Name: "share that turning takes", Formula: "F·e/(grip·r)", Kind: units.Ratio, Value: r.Turn},
		{Name: "share used, with safety", Formula: "S·(sliding + turning)", Kind: units.Ratio, Value: r.Use},
		{Name: "force needed of each clamp", Formula: "(S·F(1+e/r)/mu + lift - W)/n", Kind: units.Force, Value: r.Needed},
	}
}
