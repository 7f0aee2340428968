package bar

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Work is how hard a metal is to cut.
type Work struct {
	Name     string
	Specific float64 // cutting force per area of chip 1 mm thick, Pa
	Exponent float64 // of chip thickness, 1
	Source   string
}

const kienzle = "from memory (AWF 158, König tables); agrees with a chuck maker's printed table"

var works = [...]Work{
	{"St 50", 1990e6, 0.26, kienzle},
	{"St 60", 2110e6, 0.17, kienzle},
	{"St 70", 2260e6, 0.30, kienzle},
	{"42CrMo4", 2500e6, 0.26, kienzle},
	{"16MnCr5", 2100e6, 0.26, kienzle},
	{"GS-52", 1780e6, 0.17, kienzle},
	{"GG-25", 1160e6, 0.26, kienzle},
}

// WorkNames lists the metals to be cut, in the order of their indices: St 50
// mild, St 60 medium and St 70 harder carbon steel, 42CrMo4 (much like 4140),
// 16MnCr5 case-hardening steel, GS-52 cast steel, GG-25 gray iron. No published
// figure was found for weld metal: take the hardest row that its strength
// resembles and measure the first pass.
func WorkNames() []string {
	return trade.Names(works[:], func(r Work) string { return r.Name })
}

// WorkAt returns the metal to be cut at an index of WorkNames.
//
// Any other index is an error. Sources stand in each Work.
func WorkAt(index float64) (Work, error) {
	return trade.Row(works[:], index, "metal to cut")
}

// SpecificForce returns the cutting force per area of chip.
//
//	kc = kc11·h^-m, h = f·sin(k) in mm
//
// kc and kc11 (at 1 mm): Pa; h chip thickness; f feed per turn (given in
// m/rad, times 2·pi); k angle of the cutting edge to the feed: rad; m: 1.
//
// Valid for a chip 0.01 to 3 mm thick, k 15 to 105°; otherwise an error.
//
// Source: Kienzle's law; the constants are each Work's own.
func SpecificForce(w Work, feed, lead float64) (float64, error) {
	if err := cmp.Or(specificRange.Check(w.Specific), exponentRange.Check(w.Exponent), feedRange.Check(feed), leadRange.Check(lead)); err != nil {
		return 0, err
	}
	h := feed * turn * math.Sin(lead)
	if err := chipRange.Check(h); err != nil {
		return 0, err
	}
	return w.Specific * math.Pow(h/0.001, -w.Exponent), nil
}

var chipRange = trade.Between("chip thickness", 0.01e-3, 3e-3, units.Length, "the law of cutting force was measured within that")

// FeedForce is one measured point: specific cutting force at a feed per turn.
type FeedForce struct {
	Feed  float64 // m/rad
	Force float64 // Pa
}

// FitKienzle returns the constants of Kienzle's law through measured points,
// for a metal of which no table knows, such as a shop's own weld.
//
//	log kc = log kc11 - m·log f, least squares
//
// kc, kc11: Pa; f feed per turn in mm (given in m/rad); m: 1.
//
// Valid for two points or more with different feeds, each from 0.0002
// to 0.2 in and from 0.1 to 20 GPa; otherwise an error.
// Source: least squares on Kienzle's law.
func FitKienzle(name string, points []FeedForce) (Work, error) {
	var n, sx, sy, sxx, sxy float64
	for _, p := range points {
		if err := cmp.Or(feedRange.Check(p.Feed), specificRange.Check(p.Force)); err != nil {
			return Work{}, err
		}
		x, y := math.Log(p.Feed*turn/0.001), math.Log(p.Force)
		n, sx, sy, sxx, sxy = n+1, sx+x, sy+y, sxx+x*x, sxy+x*y
	}
	spread := n*sxx - sx*sx
	if n < 2 || spread <= 1e-12*n*sxx {
		return Work{}, errors.New("two points with different feeds are needed")
	}
	slope := (n*sxy - sx*sy) / spread
	return Work{Name: name, Specific: math.Exp((sy - slope*sx) / n), Exponent: -slope, Source: "measured"}, nil
}

// CutInput is one boring cut.
type CutInput struct {
	Work      Work
	Diameter  float64 // of the bore after the cut, m
	Depth     float64 // on radius, m
	Feed      float64 // m/rad
	Lead      float64 // angle of the cutting edge to the feed, rad
	Speed     float64 // cutting speed, m/s
	PushShare float64 // share of the cutting force that pushes the bar off, 1
	Drive     float64 // efficiency from motor to spindle, 1
}

// CutResult is what the cut asks for.
type CutResult struct {
	In         CutInput
	Chip       float64 // thickness, m
	Width      float64 // of the chip, m
	Specific   float64 // cutting force per area of chip, Pa
	Force      float64 // along the cut, N
	Push       float64 // away from the wall, N
	Torque     float64 // at the spindle, N·m
	Power      float64 // at the cutter, W
	MotorPower float64 // W
	Rotation   float64 // rad/s
	FeedRate   float64 // m/s
	Removal    float64 // metal per time, m³/s
}

// Cut returns force, torque and power of a boring cut.
//
//	h = f·sin(k); b = a/sin(k); Fc = kc11·b·h^(1-m); Fp = share·Fc
//	T = Fc·D/2; P = Fc·v; motor = P/eta; w = 2v/D; Q = a·f·v
//
// h chip thickness, b its width, a depth on radius, D bore, f feed per turn
// (given in m/rad): m; k angle of the cutting edge to the feed: rad; kc11: Pa;
// Fc cutting force, Fp push on the bar: N; T: N·m; P: W; v cutting speed: m/s;
// w rotation: rad/s; Q metal removed: m³/s; m, share, eta: 1.
//
// Valid for a 0.0001 to 1 in, D 0.25 to 200 in, a chip 0.01 to 3 mm thick, k 15
// to 105°; a not over D/4; otherwise an error. A worn edge takes a third more
// (common practice, no source). The push share is about 0.25 to 0.3 with a
// square edge (a tool supplier's guide) and more with a slanted edge, a large
// nose or a light cut; 0.5 is common practice, no source.
//
// Source: Kienzle's law; the constants are each Work's own.
func Cut(in CutInput) (CutResult, error) {
	kc, err := SpecificForce(in.Work, in.Feed, in.Lead)
	if err != nil {
		return CutResult{}, err
	}
	if err := cmp.Or(
		cutRange.Check(in.Diameter), depthRange.Check(in.Depth), speedRange.Check(in.Speed),
		shareRange.Check(in.PushShare), efficiencyRange.Check(in.Drive),
		trade.InRange("depth of cut", in.Depth, 0, in.Diameter/4, units.Length, "it is on radius, and that is half of the bore"),
	); err != nil {
		return CutResult{}, err
	}
	r := CutResult{In: in, Specific: kc}
	perTurn := in.Feed * turn
	r.Chip = perTurn * math.Sin(in.Lead)
	r.Width = in.Depth / math.Sin(in.Lead)
	r.Force = kc * r.Width * r.Chip
	r.Push = in.PushShare * r.Force
	r.Torque = r.Force * in.Diameter / 2
	r.Power = r.Force * in.Speed
	r.MotorPower = r.Power / in.Drive
	r.Rotation = 2 * in.Speed / in.Diameter
	r.FeedRate = in.Feed * r.Rotation
	r.Removal = in.Depth * perTurn * in.Speed
	return r, nil
}

// Steps gives the worked lines of the cut.
func (r CutResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "chip thickness", Formula: "h = f·sin(k)", Kind: units.Length, Value: r.Chip},
		{Name: "chip width", Formula: "b = a/sin(k)", Kind: units.Length, Value: r.Width},
		{Name: "specific cutting force", Formula: "kc = kc11·h^-m", Kind: units.Pressure, Value: r.Specific, Unit: "MPa"},
		{Name: "cutting force", Formula: "Fc = kc·b·h", Kind: units.Force, Value: r.Force},
		{Name: "push on the bar", Formula: "Fp = share·Fc", Kind: units.Force, Value: r.Push},
		{Name: "torque at the spindle", Formula: "T = Fc·D/2", Kind: units.Torque, Value: r.Torque},
		{Name: "power at the cutter", Formula: "P = Fc·v", Kind: units.Power, Value: r.Power},
		{Name: "power of the motor", Formula: "P/eta", Kind: units.Power, Value: r.MotorPower},
		{Name: "spindle", Formula: "w = 2v/D", Kind: units.Rotation, Value: r.Rotation},
		{Name: "feed rate", Formula: "f·w", Kind: units.Speed, Value: r.FeedRate, Unit: "ipm"},
	}
}

// CuttingPower returns the motor power of a cut whose specific cutting force
// is known at its feed.
//
//	P = a·f·v·K/eta
//
// P: W; a depth on radius: m; f feed per turn (given in m/rad): m; v: m/s; K:
// Pa; eta: 1. Valid as Cut; otherwise an error.
//
// Source: a tool maker's technical information, cutting power for turning.
func CuttingPower(depth, feed, speed, specific, drive float64) (float64, error) {
	if err := cmp.Or(depthRange.Check(depth), feedRange.Check(feed), speedRange.Check(speed), specificRange.Check(specific), efficiencyRange.Check(drive)); err != nil {
		return 0, err
	}
	return depth * feed * turn * speed * specific / drive, nil
}
