package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// PlateLug is a flat plate with a hole, pulled by a pin in line with the plate.
type PlateLug struct {
	Load      float64  // on the pin, with its dynamic factor, kg, 0.1 to 500 000
	Thickness float64  // of the plate, m, 1 mm to 1 m
	Side      float64  // hole's edge to plate's edge, square to the pull, m
	Beyond    float64  // hole's edge to plate's edge, along the pull, m
	Hole      float64  // diameter, m
	Pin       float64  // diameter, m
	EndRadius float64  // radius of the plate's rounded end about the hole, m; 0 for a square end
	Yield     float64  // yield strength, Pa, 100 to 1400 MPa
	Ultimate  float64  // tensile strength, Pa, 150 to 2000 MPa
	Category  Category // of ASME BTH-1
}

// The ways a plate lug fails, in the order of PlateLugResult.Checks.
const (
	LugTension  = iota // plate torn through the hole, square to the pull
	LugFracture        // plate split beyond the hole on one plane
	LugShear           // plug sheared out on two planes
	LugBearing         // plate crushed under the pin
)

// PlateLugResult holds every way of failing; demands and capacities in N.
type PlateLugResult struct {
	In        PlateLug
	Effective float64 // effective width each side of the hole, m
	Clearance float64 // Cr, factor for the pin's clearance
	ShearArea float64 // both planes, m²
	Checks    [4]Check
	Governs   int     // index of the worst check
	Capacity  float64 // greatest load, kg
}

// Use is the greatest use of all checks.
func (r PlateLugResult) Use() float64 { return r.Checks[r.Governs].Use() }

// CheckPlateLug works a pin-connected plate by ASME BTH-1, as restated in
// published lug sheets (the standard itself was not seen):
//
//	tension   Pt = Cr·Fu/(1.20·Nd)·2·t·beff, beff = min(be, 4t, 0.6·be·Fu/Fy·√(Dh/be))
//	fracture  Pb = Cr·Fu/(1.20·Nd)·[1.13(R − Dh/2) + 0.92·be/(1 + be/Dh)]·t
//	shear     Pv = 0.70·Fu/(1.20·Nd)·Av, Av = 2[a + Dp/2·(1 − cos φ) − Z']·t
//	bearing   Pp = 1.25·Fy/Nd·Dp·t
//
// be is Side, a Beyond, Dh the hole, Dp the pin, R = a + Dh/2, φ = 55°·Dp/Dh,
// Z' = r − √(r² − (Dp/2·sin φ)²) for a rounded end of radius r. Nd is 2.00 for
// category A, 3.00 for B. Cr = 1 − 0.275·√(1 − Dp²/Dh²) is applied at every
// clearance; the standard is understood to let it be 1 for a close pin, so this
// errs to the safe side by up to 12 % there.
//
// A pin larger than the hole, a tensile strength below the yield strength, a
// rounded end that cuts into the hole, or anything out of range is an error.
// The bearing form is for a pin that does not turn under load many times. A
// pull at an angle also needs CheckLugBase. Source: ASME BTH-1 as above; the
// design factors from memory.
func CheckPlateLug(in PlateLug) (PlateLugResult, error) {
	nd, err := in.Category.Factor()
	if err := cmp.Or(err, in.check()); err != nil {
		return PlateLugResult{}, err
	}
	r := PlateLugResult{In: in, Clearance: 1 - 0.275*math.Sqrt(1-in.Pin*in.Pin/(in.Hole*in.Hole))}
	r.Effective = min(in.Side, 4*in.Thickness, 0.6*in.Side*in.Ultimate/in.Yield*math.Sqrt(in.Hole/in.Side))
	r.ShearArea = in.shearArea()

	demand := in.Load * trade.StandardGravity
	fracture := r.Clearance * in.Ultimate / (1.2 * nd)
	ahead := 1.13*in.Beyond + 0.92*in.Side/(1+in.Side/in.Hole)
	r.Checks = [4]Check{
		LugTension:  {"tension", demand, fracture * 2 * in.Thickness * r.Effective},
		LugFracture: {"single-plane fracture", demand, fracture * ahead * in.Thickness},
		LugShear:    {"double-plane shear", demand, 0.7 * in.Ultimate / (1.2 * nd) * r.ShearArea},
		LugBearing:  {"bearing", demand, 1.25 * in.Yield / nd * in.Pin * in.Thickness},
	}
	r.Governs = governing(r.Checks[:])
	r.Capacity = r.Checks[r.Governs].Capacity / trade.StandardGravity
	return r, nil
}

func (in PlateLug) check() error {
	err := cmp.Or(loadRange.CheckAs("load on the lug", in.Load), stockRange.CheckAs("lug thickness", in.Thickness),
		stockRange.CheckAs("hole to side edge", in.Side), stockRange.CheckAs("hole to edge beyond it", in.Beyond),
		stockRange.CheckAs("hole", in.Hole), stockRange.CheckAs("pin", in.Pin), boreRange.CheckAs("end radius", in.EndRadius),
		checkSteel(in.Yield, in.Ultimate))
	if err != nil {
		return err
	}
	if in.Pin > in.Hole {
		return errors.New("the pin is larger than the hole")
	}
	if in.EndRadius > 0 && in.EndRadius < in.Hole/2+in.Beyond/2 {
		return errors.New("the end radius is too small for this hole and edge: measure it from the hole's centre")
	}
	return nil
}

// shearArea is Av: two planes at φ either side of the pull, shortened where a
// rounded end falls away.
func (in PlateLug) shearArea() float64 {
	sin, cos := math.Sincos(55 * degree * in.Pin / in.Hole)
	plane := in.Beyond + in.Pin/2*(1-cos)
	if r := in.EndRadius; r > 0 {
		half := in.Pin / 2 * sin
		plane -= half * half / (r + math.Sqrt(r*r-half*half))
	}
	return 2 * plane * in.Thickness
}

func checkSteel(yield, ultimate float64) error {
	err := cmp.Or(yieldRange.CheckAs("yield strength", yield), ultimateRange.CheckAs("tensile strength", ultimate))
	if err == nil && ultimate < yield {
		return errors.New("the tensile strength is below the yield strength")
	}
	return err
}

// Steps gives the lines of the work.
func (r PlateLugResult) Steps() []trade.Step {
	steps := []trade.Step{
		{Name: "effective width each side", Formula: "beff = min(be, 4t, 0.6·be·Fu/Fy·√(Dh/be))", Kind: units.Length, Value: r.Effective, Unit: "inch"},
		{Name: "clearance factor", Formula: "Cr = 1 − 0.275·√(1 − Dp²/Dh²)", Kind: units.Number, Value: r.Clearance},
		{Name: "shear area", Formula: "Av = 2[a + Dp/2·(1 − cos φ) − Z']·t", Kind: units.Area, Value: r.ShearArea, Unit: "sqin"},
	}
	formulas := [4]string{
		LugTension:  "Pt = Cr·Fu/(1.20·Nd)·2·t·beff",
		LugFracture: "Pb = Cr·Fu/(1.20·Nd)·[1.13(R − Dh/2) + 0.92·be/(1 + be/Dh)]·t",
		LugShear:    "Pv = 0.70·Fu/(1.20·Nd)·Av",
		LugBearing:  "Pp = 1.25·Fy/Nd·Dp·t",
	}
	return append(steps, checkSteps(r.Checks[:], formulas[:], r.Governs)...)
}

// checkSteps shows each way of failing and names the worst.
func checkSteps(checks []Check, formulas []string, worst int) []trade.Step {
	steps := make([]trade.Step, 0, 2*len(checks)+1)
	for i, c := range checks {
		capacity := trade.Step{Name: c.Name + " capacity", Formula: formulas[i], Kind: units.Force, Value: c.Capacity, Unit: "lbf"}
		steps = append(steps, capacity, useStep(c))
	}
	last := useStep(checks[worst])
	last.Name = "governing: " + checks[worst].Name
	return append(steps, last)
}
