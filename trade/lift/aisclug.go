package lift

import (
	"cmp"
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// AISCLug is the same plate by AISC 360 D5, as a cross-check.
type AISCLug struct {
	Load      float64 // kg, 0.1 to 500 000
	Thickness float64 // m, 1 mm to 1 m
	Width     float64 // of the whole plate at the hole, m
	Beyond    float64 // hole's edge to plate's edge, along the pull, m
	Hole, Pin float64 // diameters, m
	Yield     float64 // Pa, 100 to 1400 MPa
	Ultimate  float64 // Pa, 150 to 2000 MPa
}

// The ways of failing by AISC 360 D5, in the order of AISCLugResult.Checks.
const (
	AISCTension  = iota // rupture on the effective net width
	AISCShear           // rupture beyond the pin
	AISCBearing         // crushing on the pin's projected area
	AISCYielding        // yielding of the whole width
)

// AISCLugResult holds every way of failing. Nominal strengths are in N; Checks
// hold the allowable ones (ASD).
type AISCLugResult struct {
	In         AISCLug
	Effective  float64 // be, m
	Nominal    [4]float64
	Checks     [4]Check
	Dimensions float64 // worst of 1.33·be/a and (2be + d)/w; above 1 the rule for shape is not met
	Governs    int
	Capacity   float64 // kg
}

// Use is the greatest use of all checks of strength.
func (r AISCLugResult) Use() float64 { return r.Checks[r.Governs].Use() }

var aiscSafety = [4]float64{AISCTension: 2, AISCShear: 2, AISCBearing: 2, AISCYielding: 1.67}

// CheckAISCLug works a pin-connected member by AISC 360-10 D5 with allowable
// strength design:
//
//	tension   Pn = 2·t·be·Fu, be = min(2t + 0.63 in, (w − dh)/2)   Ω = 2.00
//	shear     Pn = 0.6·Fu·2t(a + d/2)                               Ω = 2.00
//	bearing   Rn = 1.8·Fy·t·d                                       Ω = 2.00
//	yielding  Pn = Fy·t·w                                           Ω = 1.67
//
// with the shape rules a ≥ 1.33be and w ≥ 2be + d; the rule for cut corners,
// c ≥ a, must be looked at by eye. A pin larger than the hole, a hole as wide as
// the plate, or anything out of range is an error.
//
// D5 is not meant for lifting lugs (AISC's engineers say so): it has less
// margin than CheckPlateLug and is shown to catch a slip, not to pass a lug.
// Source: AISC 360-10 D5.
func CheckAISCLug(in AISCLug) (AISCLugResult, error) {
	err := cmp.Or(loadRange.CheckAs("load on the lug", in.Load), stockRange.CheckAs("lug thickness", in.Thickness),
		stockRange.CheckAs("lug width", in.Width), stockRange.CheckAs("hole to edge beyond it", in.Beyond),
		stockRange.CheckAs("hole", in.Hole), stockRange.CheckAs("pin", in.Pin), checkSteel(in.Yield, in.Ultimate))
	if err != nil {
		return AISCLugResult{}, err
	}
	if in.Pin > in.Hole {
		return AISCLugResult{}, errors.New("the pin is larger than the hole")
	}
	if in.Hole >= in.Width {
		return AISCLugResult{}, errors.New("the hole is as wide as the lug")
	}
	t := in.Thickness
	r := AISCLugResult{In: in, Effective: min(2*t+0.63*inch, (in.Width-in.Hole)/2)}
	r.Nominal = [4]float64{
		AISCTension:  2 * t * r.Effective * in.Ultimate,
		AISCShear:    0.6 * in.Ultimate * 2 * t * (in.Beyond + in.Pin/2),
		AISCBearing:  1.8 * in.Yield * t * in.Pin,
		AISCYielding: in.Yield * t * in.Width,
	}
	names := [4]string{"net tension", "shear beyond the pin", "bearing", "gross yielding"}
	for i, nominal := range r.Nominal {
		r.Checks[i] = Check{names[i], in.Load * trade.StandardGravity, nominal / aiscSafety[i]}
	}
	r.Dimensions = max(1.33*r.Effective/in.Beyond, (2*r.Effective+in.Pin)/in.Width)
	r.Governs = governing(r.Checks[:])
	r.Capacity = r.Checks[r.Governs].Capacity / trade.StandardGravity
	return r, nil
}

// Steps gives the lines of the work.
func (r AISCLugResult) Steps() []trade.Step {
	steps := []trade.Step{
		{Name: "effective width each side", Formula: "be = min(2t + 0.63 in, (w − dh)/2)", Kind: units.Length, Value: r.Effective, Unit: "inch"},
		{Name: "use of the shape rules", Formula: "max(1.33be/a, (2be + d)/w)", Kind: units.Ratio, Value: r.Dimensions, Unit: "percent"},
	}
	formulas := [4]string{"2·t·be·Fu/2.00", "0.6·Fu·2t(a + d/2)/2.00", "1.8·Fy·t·d/2.00", "Fy·t·w/1.67"}
	return append(steps, checkSteps(r.Checks[:], formulas[:], r.Governs)...)
}
