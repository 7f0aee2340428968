package bar

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// FrequencyInput is a bar held at one end.
type FrequencyInput struct {
	Section
	Overhang float64 // m
	Modulus  float64 // Pa
	Density  float64 // kg/m³
	Head     float64 // mass of a boring head at its end, kg
}

// FrequencyResult is the bar's lowest natural frequency.
type FrequencyResult struct {
	In        FrequencyInput
	BarMass   float64 // of the overhang, kg
	Stiffness float64 // at the end, N/m
	Rotation  float64 // 2·pi times the frequency, rad/s
	Hertz     float64 // 1/s
}

func (in FrequencyInput) check() error {
	return cmp.Or(in.Section.check(), overhangRange.Check(in.Overhang), modulusRange.Check(in.Modulus), densityRange.Check(in.Density))
}

func (in FrequencyInput) result(omega float64) FrequencyResult {
	return FrequencyResult{
		In: in, BarMass: in.Density * in.area() * in.Overhang,
		Stiffness: 3 * in.Modulus * in.moment() / (in.Overhang * in.Overhang * in.Overhang),
		Rotation:  omega, Hertz: omega / turn,
	}
}

// firstRoot solves 1 + cos(x)·cosh(x) = 0.
const firstRoot = 1.87510406871196

// Frequency returns the lowest natural frequency of a bare bar held at one end.
//
//	w = (1.8751/L)²·√(E·I/(rho·A))
//
// w circular frequency: rad/s; L overhang: m; E modulus: Pa; I second moment:
// m⁴; rho density: kg/m³; A section: m².
//
// Valid for L 0.1 to 200 in, density 1000 to 20000 kg/m³, no head (Head is not
// used); otherwise an error. A soft holder lowers it.
//
// Source: Euler-Bernoulli cantilever; root 1.8751 as in an instrument maker's
// user guide, p. 97.
func Frequency(in FrequencyInput) (FrequencyResult, error) {
	if err := in.check(); err != nil {
		return FrequencyResult{}, err
	}
	in.Head = 0
	k := firstRoot / in.Overhang
	return in.result(k * k * math.Sqrt(in.Modulus*in.moment()/(in.Density*in.area()))), nil
}

var headRange = trade.Between("mass of the boring head", 0, 1000, units.Mass, "")

// FrequencyWithHead returns the lowest natural frequency of a bar with a
// boring head at its end.
//
//	w = √(k/(M + 33/140·m)), k = 3·E·I/L³
//
// w circular frequency: rad/s; k stiffness at the end: N/m; M head, m bar: kg;
// the rest as in Frequency.
//
// Valid as Frequency, M 0 to 1000 kg; otherwise an error. Rayleigh's method:
// with no head it is 1.5 % above Frequency, which is exact there.
//
// Source: Rayleigh's method, 33/140 from memory.
func FrequencyWithHead(in FrequencyInput) (FrequencyResult, error) {
	if err := cmp.Or(in.check(), headRange.Check(in.Head)); err != nil {
		return FrequencyResult{}, err
	}
	r := in.result(0)
	r.Rotation = math.Sqrt(r.Stiffness / (in.Head + 33.0/140*r.BarMass))
	r.Hertz = r.Rotation / turn
	return r, nil
}

// Steps gives the worked lines of the frequency.
func (r FrequencyResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "mass of the overhang", Formula: "m = rho·A·L", Kind: units.Mass, Value: r.BarMass},
		{Name: "stiffness at the end", Formula: "k = 3EI/L³", Kind: units.Stiffness, Value: r.Stiffness},
		{Name: "cycles per second", Formula: "w/(2·pi)", Kind: units.Number, Value: r.Hertz},
		{Name: "as a rotation", Formula: "w", Kind: units.Rotation, Value: r.Rotation},
	}
}

// StableInput is what chatter depends on.
type StableInput struct {
	Stiffness float64 // at the cutter, N/m
	Damping   float64 // damping ratio, 1
	Specific  float64 // specific cutting force in the direction in which the bar gives, Pa
}

// StableResult is the depth of cut that cannot chatter.
type StableResult struct {
	In    StableInput
	Depth float64 // width of cut at any speed, m
	Ratio float64 // worst chatter frequency over natural frequency, 1
}

// StableDepth returns the width of cut below which a bar cannot chatter at any
// spindle speed.
//
//	a = 2·k·z(1+z)/K; worst frequency = natural·√(1+2z)
//
// a width of cut: m; k stiffness at the cutter: N/m; z damping ratio: 1; K
// specific cutting force in the direction in which the bar gives: Pa.
//
// Valid for k 1e4 to 1e10 N/m, z 0.001 to 0.5, K 0.1 to 20 GPa; otherwise an
// error. Between the lobes and at very low speed deeper cuts run; this is the
// depth that needs no luck. The damping of a bar in its holder is mostly 0.02
// to 0.05 (common practice, no source).
//
// Source: absolute stability limit after Tlusty and Tobias (Ozlu & Budak;
// Schmitz & Smith, Machining Dynamics ch. 3); closed form for one degree of
// freedom from memory.
func StableDepth(in StableInput) (StableResult, error) {
	if err := cmp.Or(stiffnessRange.Check(in.Stiffness), dampingRange.Check(in.Damping), specificRange.Check(in.Specific)); err != nil {
		return StableResult{}, err
	}
	z := in.Damping
	return StableResult{In: in, Depth: 2 * in.Stiffness * z * (1 + z) / in.Specific, Ratio: math.Sqrt(1 + 2*z)}, nil
}

// Steps gives the worked lines of the stability limit.
func (r StableResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "worst chatter frequency over natural frequency", Formula: "√(1+2z)", Kind: units.Number, Value: r.Ratio},
		{Name: "width of cut that cannot chatter", Formula: "2kz(1+z)/K", Kind: units.Length, Value: r.Depth, Unit: "thou"},
	}
}
