package lift

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// RoundWeld is a fillet weld all round the end of a bar that stands on a face.
type RoundWeld struct {
	Bar       float64 // diameter, m, 5 mm to 20 m
	Leg       float64 // m, 2 to 100 mm
	Tension   float64 // off the face, N, 0 to 10 MN
	Shear     float64 // along the face, N, 0 to 10 MN
	Moment    float64 // bending the bar, N·m, 0 to 10 MN·m
	Torque    float64 // twisting the bar, N·m, 0 to 10 MN·m
	Electrode float64 // Pa, 400 to 900 MPa
	Basis     Basis
}

// RoundWeldResult is the stress at the worst point of the ring of weld, Pa.
type RoundWeldResult struct {
	In      RoundWeld
	Normal  float64
	Shear   float64
	Stress  float64
	Allowed float64
	Use     float64
}

var (
	forceRange  = trade.Between("force", 0, 10e6, units.Force, "")
	momentRange = trade.Between("moment", 0, 10e6, units.Torque, "")
)

// CheckRoundWeld works a ring of fillet weld by the line method, d the bar's
// diameter, throat = leg/√2: normal = N/(π·d) + M/(π·d²/4), shear = V/(π·d) +
// T/(π·d²/2), stress = √(normal² + shear²)/throat, taken as if both were worst
// at one point.
//
// Out of range is an error. Sources: Shigley 9th ed.
// Tables 9-1 and 9-2 (J = 2π·r³, I = π·r³ per throat); weld stress as WeldStress.
func CheckRoundWeld(in RoundWeld) (RoundWeldResult, error) {
	allowed, err := WeldStress(in.Electrode, in.Basis)
	err = cmp.Or(err, weldRange.CheckAs("bar", in.Bar), legSizeRange.CheckAs("weld leg", in.Leg), forceRange.CheckAs("tension", in.Tension),
		forceRange.CheckAs("shear", in.Shear), momentRange.CheckAs("moment", in.Moment), momentRange.CheckAs("torque", in.Torque))
	if err != nil {
		return RoundWeldResult{}, err
	}
	throat := weldThroat * in.Leg
	round, quarter := math.Pi*in.Bar, math.Pi*in.Bar*in.Bar/4
	r := RoundWeldResult{In: in, Allowed: allowed}
	r.Normal = (in.Tension/round + in.Moment/quarter) / throat
	r.Shear = (in.Shear/round + in.Torque/(2*quarter)) / throat
	r.Stress = math.Hypot(r.Normal, r.Shear)
	r.Use = r.Stress / allowed
	return r, nil
}

// Steps gives the lines of the work.
func (r RoundWeldResult) Steps() []trade.Step {
	line := func(name, formula string, x float64) trade.Step {
		return trade.Step{Name: name, Formula: formula, Kind: units.Pressure, Value: x, Unit: "ksi"}
	}
	return []trade.Step{
		line("normal stress", "(N/(π·d) + M/(π·d²/4))/throat", r.Normal),
		line("shear stress", "(V/(π·d) + T/(π·d²/2))/throat", r.Shear),
		line("stress", "√(normal² + shear²)", r.Stress),
		line("allowed stress", "share of Exx", r.Allowed),
		{Name: "use", Formula: "stress/allowed", Kind: units.Ratio, Value: r.Use, Unit: "percent"},
	}
}

// FlareThroat is the throat in m of the groove between a round bar and a flat
// face, welded flush with the bar's side: 5/16 of the bar's radius.
//
// bar: diameter, m, 5 mm to 20 m. Out of range is an error. Source: the flare
// bevel groove of AISC 360 Table J2.2 and AWS D1.1, as used in a connection
// example of the Structural Steel Designer's Handbook.
func FlareThroat(bar float64) (float64, error) {
	return 5. / 32 * bar, weldRange.CheckAs("bar", bar)
}

// FlareWeld is one leg of a bar lug laid on a face and welded along both sides.
type FlareWeld struct {
	Load      float64 // pull of this one leg along its axis, kg, 0.1 to 500 000
	Bar       float64 // diameter, m, 5 mm to 20 m
	Length    float64 // of the weld on each side, m, 5 mm to 20 m
	Electrode float64 // Pa, 400 to 900 MPa
	Basis     Basis
}

// FlareWeldResult is the stress at the end of the weld, Pa.
type FlareWeldResult struct {
	In       FlareWeld
	Throat   float64 // m
	Shear    float64
	Peel     float64 // from the bar's axis lying off the face
	Stress   float64
	Allowed  float64
	Use      float64
	Capacity float64 // kg
}

// CheckFlareWeld works a bar laid on a face, both sides welded flush: shear =
// P/(2·L·throat); the pull runs half a bar above the face and peels, P·d/2 over
// S = L²/3; stress = √(shear² + peel²).
//
// The weld must fill the groove flush with the bar's side for the whole length.
// Out of range is an error. Sources: throat as FlareThroat; line method, Shigley
// 9th ed. Table 9-2; weld stress as WeldStress.
func CheckFlareWeld(in FlareWeld) (FlareWeldResult, error) {
	allowed, err := WeldStress(in.Electrode, in.Basis)
	throat, barErr := FlareThroat(in.Bar)
	err = cmp.Or(err, barErr, loadRange.CheckAs("pull of the leg", in.Load), weldRange.CheckAs("length of the weld", in.Length))
	if err != nil {
		return FlareWeldResult{}, err
	}
	force := in.Load * trade.StandardGravity
	r := FlareWeldResult{In: in, Throat: throat, Allowed: allowed}
	r.Shear = force / (2 * in.Length * throat)
	r.Peel = force * in.Bar / 2 / (in.Length * in.Length / 3 * throat)
	r.Stress = math.Hypot(r.Shear, r.Peel)
	r.Use = r.Stress / allowed
	r.Capacity = in.Load / r.Use
	return r, nil
}

// Steps gives the lines of the work.
func (r FlareWeldResult) Steps() []trade.Step {
	line := func(name, formula string, x float64) trade.Step {
		return trade.Step{Name: name, Formula: formula, Kind: units.Pressure, Value: x, Unit: "ksi"}
	}
	return []trade.Step{
		{Name: "throat", Formula: "5/16 of the bar's radius", Kind: units.Length, Value: r.Throat, Unit: "inch"},
		line("shear", "P/(2·L·throat)", r.Shear),
		line("peel", "P·d/2/(L²/3·throat)", r.Peel),
		line("stress", "√(shear² + peel²)", r.Stress),
		line("allowed stress", "share of Exx", r.Allowed),
		{Name: "use", Formula: "stress/allowed", Kind: units.Ratio, Value: r.Use, Unit: "percent"},
	}
}
