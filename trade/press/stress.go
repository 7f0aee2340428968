package press

import (
	"cmp"

	"gudgeon/trade"
	"gudgeon/units"
)

// StressResult compares a press fit's stresses with what its metals can take.
type StressResult struct {
	PressureResult
	HubStrength, BushingStrength Strength
	HubStress                    float64 // the stress that is compared, Pa
	BushingStress                float64 // the stress that is compared, Pa
	HubUse                       float64 // HubStress over its limit, 1
	BushingUse                   float64 // BushingStress over its limit, 1
}

// Stress returns the stress in hub and bushing and the share of strength used.
//
//	ductile: use = sv/sy;  brittle: use = |st|/su
//
// sv von Mises stress, sy yield, st hoop stress, su tensile strength: Pa; use: 1.
// A ductile hub is judged at its bore, a bushing at its own bore, where the
// hoop stress stands alone. Judging a brittle bushing, which is squeezed, by
// its tensile strength is on the safe side.
//
// Valid as for Pressure; strengths from 1 MPa to 3 GPa; otherwise an error.
// A use over 1 is not an error: it says the joint yields.
//
// Source: Pressure's; distortion-energy and maximum-normal-stress theories,
// Shigley 9th ed. ch. 5.
func Stress(j Joint, hub, bushing Strength) (StressResult, error) {
	if err := cmp.Or(j.check(), strengthRange.Check(hub.Limit), strengthRange.Check(bushing.Limit)); err != nil {
		return StressResult{}, err
	}
	return stressOf(j, hub, bushing), nil
}

func stressOf(j Joint, hub, bushing Strength) StressResult {
	r := StressResult{PressureResult: pressureOf(j), HubStrength: hub, BushingStrength: bushing}
	r.HubStress, r.BushingStress = r.HubVonMises, r.BushingVonMises
	if hub.Brittle {
		r.HubStress = r.HubHoop
	}
	if bushing.Brittle {
		r.BushingStress = -r.BushingHoopBore
	}
	r.HubUse = r.HubStress / hub.Limit
	r.BushingUse = r.BushingStress / bushing.Limit
	return r
}

// Steps gives the worked lines of the stress check.
func (r StressResult) Steps() []trade.Step {
	return append(r.PressureResult.Steps(),
		trade.Step{Name: "share of the hub's strength used", Formula: "stress/limit", Kind: units.Ratio, Value: r.HubUse},
		trade.Step{Name: "share of the bushing's strength used", Formula: "stress/limit", Kind: units.Ratio, Value: r.BushingUse},
	)
}

// LimitResult is the most interference that hub and bushing can both take.
type LimitResult struct {
	AtLimit         StressResult // the joint at that interference
	HubPressure     float64      // pressure at which the hub reaches its limit, Pa
	BushingPressure float64      // pressure at which the bushing reaches its limit, Pa
	Pressure        float64      // the smaller of the two, Pa
	Interference    float64      // on diameter, m
}

// GreatestInterference returns the interference at which the first of hub and
// bushing reaches its strength; the joint's own interference is not used.
//
//	delta = p·D·(Gh+Gb), p the smaller pressure of hub limit and bushing limit
//
// delta interference on diameter, D interface diameter: m; p: Pa; G share of
// diameter that hub and bushing give per pressure: 1/Pa.
//
// Valid as for Stress; otherwise an error. The answer may exceed the 0.005 D beyond which Pressure
// refuses; it is then more than any real fit and no limit to it.
//
// Source: Pressure's and Stress's, solved for the interference.
func GreatestInterference(j Joint, hub, bushing Strength) (LimitResult, error) {
	// Everything is linear in the interference, so one trial gives the limit.
	j.Interference = 0.001 * j.Diameter
	trial, err := Stress(j, hub, bushing)
	if err != nil {
		return LimitResult{}, err
	}
	r := LimitResult{
		HubPressure:     trial.Pressure / trial.HubUse,
		BushingPressure: trial.Pressure / trial.BushingUse,
	}
	r.Pressure = min(r.HubPressure, r.BushingPressure)
	r.Interference = j.Interference * r.Pressure / trial.Pressure
	j.Interference = r.Interference
	r.AtLimit = stressOf(j, hub, bushing)
	return r, nil
}

// Steps gives the worked lines of the greatest interference.
func (r LimitResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "pressure that the hub can take", Formula: "ph = limit/(stress per pressure)", Kind: units.Pressure, Value: r.HubPressure, Unit: "psi"},
		{Name: "pressure that the bushing can take", Formula: "pb = limit/(stress per pressure)", Kind: units.Pressure, Value: r.BushingPressure, Unit: "psi"},
		{Name: "the smaller pressure", Formula: "p = min(ph, pb)", Kind: units.Pressure, Value: r.Pressure, Unit: "psi"},
		{Name: "greatest interference on diameter", Formula: "delta = p·D·(Gh+Gb)", Kind: units.Length, Value: r.Interference, Unit: "thou"},
	}
}
