package bar

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// CantileverInput is a bar held at one end with the cutter at the other.
type CantileverInput struct {
	Section
	Overhang float64 // m
	Modulus  float64 // Pa
	Force    float64 // that pushes the cutter off, N
}

// CantileverResult is how far it gives.
type CantileverResult struct {
	In         CantileverInput
	Moment     float64 // second moment of area, m⁴
	Stiffness  float64 // at the cutter, N/m
	Deflection float64 // at the cutter, m
	Slope      float64 // at the cutter, rad
	Stress     float64 // greatest bending stress, at the holder, Pa
}

// Cantilever returns how far a bar held at one end gives at the cutter.
//
//	y = F·L³/(3·E·I); k = 3·E·I/L³; slope = F·L²/(2·E·I); s = F·L·(D/2)/I
//
// y deflection, L overhang, D diameter: m; F force: N; E modulus, s bending
// stress at the holder: Pa; I second moment of area: m⁴; k stiffness: N/m.
//
// Valid for F 0 to 1 MN, L 0.1 to 200 in, sections as in SecondMoment; otherwise
// an error. The holder and spindle give as well: the real bar is softer.
//
// Source: Isakov, "Boring: calculating deflection", Cutting Tool Engineering,
// July 2019 (y); Shigley 9th ed. Table A-9 (slope, moment).
func Cantilever(in CantileverInput) (CantileverResult, error) {
	if err := cmp.Or(in.Section.check(), overhangRange.Check(in.Overhang), modulusRange.Check(in.Modulus), forceRange.Check(in.Force)); err != nil {
		return CantileverResult{}, err
	}
	r := CantileverResult{In: in, Moment: in.moment()}
	ei := in.Modulus * r.Moment
	r.Stiffness = 3 * ei / (in.Overhang * in.Overhang * in.Overhang)
	r.Deflection = in.Force / r.Stiffness
	r.Slope = in.Force * in.Overhang * in.Overhang / (2 * ei)
	r.Stress = in.Force * in.Overhang * in.Diameter / 2 / r.Moment
	return r, nil
}

// Steps gives the worked lines of the cantilever.
func (r CantileverResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "second moment of area", Formula: "I = pi(D⁴-d⁴)/64", Kind: units.SecondMoment, Value: r.Moment},
		{Name: "stiffness at the cutter", Formula: "k = 3EI/L³", Kind: units.Stiffness, Value: r.Stiffness},
		{Name: "deflection at the cutter", Formula: "y = F/k", Kind: units.Length, Value: r.Deflection, Unit: "thou"},
		{Name: "slope at the cutter", Formula: "F·L²/(2EI)", Kind: units.Angle, Value: r.Slope},
		{Name: "bending stress at the holder", Formula: "F·L·(D/2)/I", Kind: units.Pressure, Value: r.Stress},
	}
}

// LineBarInput is a bar that runs in two bearings with the cutter between.
type LineBarInput struct {
	Section
	Span    float64 // distance between the bearings' middles, m
	Station float64 // of the cutter from one bearing, m
	Modulus float64 // Pa
	Force   float64 // that pushes the cutter off, N
}

// LineBarResult is how far it gives, between two bounds: bearings in which the
// bar can tilt, and bearings that hold it stiffly in line.
type LineBarResult struct {
	In              LineBarInput
	Moment          float64 // second moment of area, m⁴
	AtCutter        float64 // deflection at the cutter, bearings that let it tilt, m
	Greatest        float64 // greatest anywhere on the bar, same bearings, m
	GreatestAt      float64 // of that place from the same bearing as Station, m
	Stiffness       float64 // at the cutter, same bearings, N/m
	AtCutterFixed   float64 // deflection at the cutter, both ends held in line, m
	StiffnessFixed  float64 // at the cutter, both ends held in line, N/m
	BendingStress   float64 // at the cutter, bearings that let it tilt, Pa
	NearBearingLoad float64 // on the bearing nearer the cutter, N
}

// LineBar returns how far a line bar in two bearings gives at the cutter.
//
//	at the cutter = F·a²·b²/(3·E·I·L)
//	greatest = F·b·(L²-b²)^1.5/(9√3·L·E·I), b the shorter part, at √((L²-b²)/3) from the far bearing
//	both ends held in line = F·a³·b³/(3·E·I·L³)
//
// Deflections, a and b distances of the cutter from the bearings, L = a+b span:
// m; F force: N; E modulus: Pa; I second moment of area: m⁴.
//
// A real bar lies between the two: long snug bearings hold it nearly in line,
// short or worn ones let it tilt and add their play, which is not in here.
//
// Valid for F 0 to 1 MN, L 1 to 1000 in, the cutter between the bearings;
// otherwise an error.
//
// Source: Mott, Machine Elements in Mechanical Design 4th ed. Table A14-1(b);
// ends held in line from memory (the middle, F·L³/(192·E·I), is in many books).
func LineBar(in LineBarInput) (LineBarResult, error) {
	if err := cmp.Or(
		in.Section.check(), spanRange.Check(in.Span), stationRange.Check(in.Station),
		modulusRange.Check(in.Modulus), forceRange.Check(in.Force),
		trade.InRange("cutter from a bearing", in.Station, 0, math.Nextafter(in.Span, 0), units.Length, "it is to be between the bearings"),
	); err != nil {
		return LineBarResult{}, err
	}
	r := LineBarResult{In: in, Moment: in.moment()}
	ei := in.Modulus * r.Moment
	L, a := in.Span, in.Station
	b := L - a
	r.Stiffness = 3 * ei * L / (a * a * b * b)
	r.StiffnessFixed = 3 * ei * L * L * L / (a * a * a * b * b * b)
	r.AtCutter = in.Force / r.Stiffness
	r.AtCutterFixed = in.Force / r.StiffnessFixed
	short := min(a, b)
	r.Greatest = in.Force * short * math.Pow(L*L-short*short, 1.5) / (9 * math.Sqrt(3) * L * ei)
	r.GreatestAt = math.Sqrt((L*L - short*short) / 3)
	if a < b { // measured from the far bearing so far, and that is the other one
		r.GreatestAt = L - r.GreatestAt
	}
	r.BendingStress = in.Force * a * b / L * in.Diameter / 2 / r.Moment
	r.NearBearingLoad = in.Force * (L - short) / L
	return r, nil
}

// Steps gives the worked lines of the line bar.
func (r LineBarResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "second moment of area", Formula: "I = pi(D⁴-d⁴)/64", Kind: units.SecondMoment, Value: r.Moment},
		{Name: "stiffness at the cutter, bearings let it tilt", Formula: "k = 3EIL/(a²b²)", Kind: units.Stiffness, Value: r.Stiffness},
		{Name: "deflection at the cutter, bearings let it tilt", Formula: "y = F/k", Kind: units.Length, Value: r.AtCutter, Unit: "thou"},
		{Name: "greatest deflection on the bar", Formula: "F·b(L²-b²)^1.5/(9√3·L·E·I)", Kind: units.Length, Value: r.Greatest, Unit: "thou"},
		{Name: "deflection at the cutter, ends held in line", Formula: "F·a³b³/(3EIL³)", Kind: units.Length, Value: r.AtCutterFixed, Unit: "thou"},
		{Name: "load on the nearer bearing", Formula: "F(L-b)/L", Kind: units.Force, Value: r.NearBearingLoad},
		{Name: "bending stress at the cutter", Formula: "F·a·b/L·(D/2)/I", Kind: units.Pressure, Value: r.BendingStress},
	}
}
