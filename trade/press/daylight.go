package press

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// DaylightInput is the stack between table and ram, all in m.
type DaylightInput struct {
	Opening    float64 // table to ram, ram fully up
	Support    float64 // blocks and ring under the part
	Part       float64 // underside of the part at the support to the face the bushing enters
	Bushing    float64 // length of the bushing
	Started    float64 // how much of it is in before the ram pushes
	Tooling    float64 // driver and plate between bushing and ram
	BelowFlush float64 // how far below the face it is driven
	Stroke     float64 // of the ram
}

// DaylightResult says whether the stack goes in and the ram reaches.
type DaylightResult struct {
	In           DaylightInput
	Stack        float64 // height with the bushing standing in the bore, m
	Spare        float64 // opening less stack, m; negative: it does not go in
	StrokeNeeded float64 // from fully up to bushing home, m
	StrokeSpare  float64 // m; negative: the ram does not reach, add blocks
}

// Daylight returns whether part, bushing and tooling go under the ram, and
// whether the ram's stroke drives the bushing home.
//
//	stack = support + part + (bushing - started) + tooling
//	spare = opening - stack
//	stroke needed = opening - support - part - tooling + below flush
//
// All in m. Valid for heights 0 to 400 in, stroke 0 to 120 in, opening more
// than 0; started not over the bushing's length; the driver must be longer than
// it goes below flush; otherwise an error. Negative spares are answers, not errors.
//
// Source: geometry.
func Daylight(in DaylightInput) (DaylightResult, error) {
	if err := cmp.Or(
		heightRange.Check(in.Opening), heightRange.Check(in.Support), heightRange.Check(in.Part),
		heightRange.Check(in.Bushing), heightRange.Check(in.Started), heightRange.Check(in.Tooling),
		heightRange.Check(in.BelowFlush), strokeRange.Check(in.Stroke),
	); err != nil {
		return DaylightResult{}, err
	}
	switch {
	case in.Opening == 0:
		return DaylightResult{}, errors.New("the opening of the press is 0")
	case in.Started > in.Bushing:
		return DaylightResult{}, errors.New("more of the bushing is started than its length")
	case in.BelowFlush > 0 && in.BelowFlush >= in.Tooling:
		return DaylightResult{}, errors.New("the driver is too short to drive the bushing that far below the face")
	}
	r := DaylightResult{In: in}
	fixed := in.Support + in.Part + in.Tooling
	r.Stack = fixed + in.Bushing - in.Started
	r.Spare = in.Opening - r.Stack
	r.StrokeNeeded = in.Opening - fixed + in.BelowFlush
	r.StrokeSpare = in.Stroke - r.StrokeNeeded
	return r, nil
}

// Steps gives the worked lines of the daylight.
func (r DaylightResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "height of the stack", Formula: "support + part + bushing - started + tooling", Kind: units.Length, Value: r.Stack},
		{Name: "room left under the ram", Formula: "opening - stack", Kind: units.Length, Value: r.Spare},
		{Name: "stroke to drive it home", Formula: "opening - support - part - tooling + below flush", Kind: units.Length, Value: r.StrokeNeeded},
		{Name: "stroke left over", Formula: "stroke - needed", Kind: units.Length, Value: r.StrokeSpare},
	}
}

// SupportInput is a ring under the boss that takes the press force.
type SupportInput struct {
	Force        float64  // N
	BossDiameter float64  // outside diameter of the boss's face, m
	BossBore     float64  // bore in that face, m
	RingDiameter float64  // outside diameter of the support ring, m
	RingBore     float64  // its bore, m
	PassThrough  float64  // what must pass through the ring, m; 0: nothing
	Boss         Strength // of the boss
}

// SupportResult is the crush under the boss.
type SupportResult struct {
	In     SupportInput
	Area   float64 // where ring and boss meet, m²
	Stress float64 // Pa
	Use    float64 // stress over the boss's limit, 1
}

// Support returns the bearing stress between a boss and the ring under it.
//
//	A = pi/4·(Do² - Di²), Do the smaller outside, Di the larger bore; s = F/A; use = s/limit
//
// A area: m²; diameters: m; F force: N; s stress, limit yield (or tensile
// strength of a brittle boss): Pa.
//
// Valid for diameters 0.1 to 400 in and F 0 to 2000 short tons. An error where
// ring and boss do not meet, and where what must pass through is not smaller
// than the ring's bore. Assumes the ring is flat, square and in line.
//
// Source: direct stress, F/A.
func Support(in SupportInput) (SupportResult, error) {
	if err := cmp.Or(
		forceRange.Check(in.Force), hubRange.Check(in.BossDiameter), hubRange.Check(in.BossBore),
		hubRange.Check(in.RingDiameter), hubRange.Check(in.RingBore), passRange.Check(in.PassThrough),
		strengthRange.Check(in.Boss.Limit),
	); err != nil {
		return SupportResult{}, err
	}
	if in.PassThrough >= in.RingBore {
		return SupportResult{}, errors.New("what must pass through the support ring is not smaller than the ring's bore: it would land on the ring")
	}
	out, hole := min(in.BossDiameter, in.RingDiameter), max(in.BossBore, in.RingBore)
	if out <= hole {
		return SupportResult{}, errors.New("the support ring does not touch the boss's face: the ring is too small, or its bore too large")
	}
	r := SupportResult{In: in, Area: math.Pi / 4 * (out*out - hole*hole)}
	r.Stress = in.Force / r.Area
	r.Use = r.Stress / in.Boss.Limit
	return r, nil
}

var passRange = trade.Between("diameter that must pass through", 0, 400*inch, units.Length, "")

// Steps gives the worked lines of the support.
func (r SupportResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "area where ring and boss meet", Formula: "A = pi/4·(Do²-Di²)", Kind: units.Area, Value: r.Area},
		{Name: "stress under the boss", Formula: "s = F/A", Kind: units.Pressure, Value: r.Stress, Unit: "ksi"},
		{Name: "share of the boss's strength used", Formula: "s/limit", Kind: units.Ratio, Value: r.Use},
	}
}
