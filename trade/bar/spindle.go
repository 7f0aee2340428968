package bar

import (
	"cmp"
	"fmt"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// SpindleResult is how fast to run and how long it takes.
type SpindleResult struct {
	Rotation float64 // rad/s
	FeedRate float64 // m/s
	Time     float64 // s
}

// Spindle returns rotation, feed rate and time of a pass.
//
//	w = 2v/D; vf = f·w; t = L/vf
//
// w rotation: rad/s; v cutting speed, vf feed rate: m/s; D bore, L length of
// cut with run-out: m; f feed: m/rad; t: s.
//
// Valid for v 0.01 to 30 m/s, D 0.25 to 200 in, L 0.01 to 1000 in; otherwise an error.
//
// Source: definition of cutting speed and feed.
func Spindle(speed, diameter, feed, length float64) (SpindleResult, error) {
	if err := cmp.Or(speedRange.Check(speed), cutRange.Check(diameter), feedRange.Check(feed), lengthRange.Check(length)); err != nil {
		return SpindleResult{}, err
	}
	r := SpindleResult{Rotation: 2 * speed / diameter}
	r.FeedRate = feed * r.Rotation
	r.Time = length / r.FeedRate
	return r, nil
}

// Steps gives the worked lines of rotation and time.
func (r SpindleResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "spindle", Formula: "w = 2v/D", Kind: units.Rotation, Value: r.Rotation},
		{Name: "feed rate", Formula: "vf = f·w", Kind: units.Speed, Value: r.FeedRate, Unit: "ipm"},
		{Name: "time of the pass", Formula: "t = L/vf", Kind: units.Time, Value: r.Time},
	}
}

// VolumeInput is a cut reckoned by the power that a volume of metal takes.
type VolumeInput struct {
	Before, After float64 // diameters, m
	Rotation      float64 // rad/s
	FeedRate      float64 // m/s
	Length        float64 // m
	UnitPower     float64 // energy per volume of chips, J/m³ = Pa
}

// VolumeResult is what it asks for.
type VolumeResult struct {
	In      VolumeInput
	Speed   float64 // at the larger diameter, m/s
	Removal float64 // m³/s
	Time    float64 // s
	Power   float64 // at the cutter, W
	Torque  float64 // N·m
	Force   float64 // at the mean diameter, N
}

var rateRange = trade.Between("feed rate", 1e-6, 1, units.Speed, "")

// CutByUnitPower returns power, torque and force of a turning or boring cut
// from the energy that a volume of chips takes.
//
//	Q = pi·Dm·a·vf; P = u·Q; T = P/w; F = T/(Dm/2); v = w·Dmax/2; t = L/vf
//
// Q metal removed: m³/s; Dm mean and Dmax larger diameter, a depth on radius,
// L: m; vf feed rate, v speed: m/s; u energy per volume: Pa (J/m³); P: W; w:
// rad/s; T: N·m; F: N; t: s.
//
// Valid for diameters 0.25 to 200 in that differ, rotation 0.1 to 10000 rpm;
// otherwise an error. Source: Kalpakjian & Schmid, Manufacturing Engineering
// and Technology, Table 23.3 (restated).
func CutByUnitPower(in VolumeInput) (VolumeResult, error) {
	if err := cmp.Or(
		cutRange.Check(in.Before), cutRange.Check(in.After), rotationRange.Check(in.Rotation),
		rateRange.Check(in.FeedRate), lengthRange.Check(in.Length), specificRange.Check(in.UnitPower),
	); err != nil {
		return VolumeResult{}, err
	}
	depth := math.Abs(in.Before-in.After) / 2
	if err := depthRange.Check(depth); err != nil {
		return VolumeResult{}, err
	}
	mean := (in.Before + in.After) / 2
	r := VolumeResult{In: in}
	r.Speed = in.Rotation * max(in.Before, in.After) / 2
	r.Removal = math.Pi * mean * depth * in.FeedRate
	r.Time = in.Length / in.FeedRate
	r.Power = in.UnitPower * r.Removal
	r.Torque = r.Power / in.Rotation
	r.Force = r.Torque / (mean / 2)
	return r, nil
}

// Steps gives the worked lines of the cut.
func (r VolumeResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "cutting speed", Formula: "v = w·Dmax/2", Kind: units.Speed, Value: r.Speed},
		{Name: "power at the cutter", Formula: "P = u·pi·Dm·a·vf", Kind: units.Power, Value: r.Power},
		{Name: "torque", Formula: "T = P/w", Kind: units.Torque, Value: r.Torque},
		{Name: "cutting force", Formula: "F = T/(Dm/2)", Kind: units.Force, Value: r.Force},
		{Name: "time of the pass", Formula: "t = L/vf", Kind: units.Time, Value: r.Time},
	}
}

// SpeedRow is a row of the table of speeds to start from.
type SpeedRow struct {
	Name              string
	HSS, Carbide      [2]float64 // least and most cutting speed, m/s
	HSSFeed, CarbFeed [2]float64 // least and most feed, m/rad; 0 where none is given
	Source            string
}

const (
	sfpm    = 0.3048 / minute
	ipr     = inch * perTurn
	handout = "a shop-course handout's table of high speed steel, its columns run together; carbide up to twice"
	tm43    = "TM 43-0106 (T.O. 1-1A-9) Table 2-8, 302 to 316 stainless"
)

// plainRow is a row of the handout: carbide runs from the same speed up to twice it.
func plainRow(name string, least, most float64) SpeedRow {
	return SpeedRow{Name: name, HSS: [2]float64{least * sfpm, most * sfpm}, Carbide: [2]float64{least * sfpm, 2 * most * sfpm}, Source: handout}
}

var speedRows = [...]SpeedRow{
	plainRow("soft cast iron", 100, 120),
	plainRow("hard cast iron", 80, 80),
	plainRow("mild steel", 110, 110),
	plainRow("cast steel", 50, 50),
	plainRow("hard alloy steel", 60, 60),
	plainRow("tool steel", 60, 60),
	{"stainless, roughing", [2]float64{20 * sfpm, 40 * sfpm}, [2]float64{150 * sfpm, 200 * sfpm}, [2]float64{0.020 * ipr, 0.040 * ipr}, [2]float64{0.010 * ipr, 0.030 * ipr}, tm43},
	{"stainless, finishing", [2]float64{50 * sfpm, 80 * sfpm}, [2]float64{150 * sfpm, 300 * sfpm}, [2]float64{0.008 * ipr, 0.015 * ipr}, [2]float64{0.008 * ipr, 0.018 * ipr}, tm43},
}

// SpeedNames lists the rows of the table of speeds.
func SpeedNames() []string {
	return trade.Names(speedRows[:], func(r SpeedRow) string { return r.Name })
}

// ToolNames lists the tool materials of the table of speeds.
func ToolNames() []string { return []string{"high speed steel", "carbide"} }

// SpeedResult is a range to start from.
type SpeedResult struct {
	Row               SpeedRow
	Low, High         float64 // cutting speed, m/s
	FeedLow, FeedHigh float64 // m/rad; 0 where the table gives none
}

// SurfaceSpeed returns the range of cutting speeds (m/s) and, where the table
// has them, of feeds (m/rad) to start from, by the indices of SpeedNames and ToolNames.
//
// A table; any other index is an error. Starting points, no more: weld metal
// with its scale and hard spots wants the slow end.
//
// Source: each row's own: TM 43-0106 Table 2-8, and a shop-course handout whose
// columns could not be told apart with certainty.
func SurfaceSpeed(row, tool float64) (SpeedResult, error) {
	s, err := trade.Row(speedRows[:], row, "row of speeds")
	if err != nil {
		return SpeedResult{}, err
	}
	switch tool {
	case 0:
		return SpeedResult{s, s.HSS[0], s.HSS[1], s.HSSFeed[0], s.HSSFeed[1]}, nil
	case 1:
		return SpeedResult{s, s.Carbide[0], s.Carbide[1], s.CarbFeed[0], s.CarbFeed[1]}, nil
	}
	return SpeedResult{}, fmt.Errorf("tool %v is neither high speed steel nor carbide", tool)
}

// Steps gives the row itself.
func (r SpeedResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "slowest, " + r.Row.Name, Formula: r.Row.Source, Kind: units.Speed, Value: r.Low},
		{Name: "fastest, " + r.Row.Name, Formula: r.Row.Source, Kind: units.Speed, Value: r.High},
	}
}
