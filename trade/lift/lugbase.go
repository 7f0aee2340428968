package lift

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Pull is a load on a lug at an angle.
type Pull struct {
	Load  float64 // kg, 0.1 to 500 000
	Angle float64 // from the face the lug stands on, in the lug's own plane, rad, 0 to 90 degrees; 90 is straight off, 0 along the face
	Side  float64 // out of the lug's plane, rad, 0 to 45 degrees
}

var (
	pullAngleRange = trade.Between("pull angle", 0, 90*degree+touch, units.Angle, "")
	sidePullRange  = trade.Between("side pull", 0, 45*degree+touch, units.Angle, "")
)

func (p Pull) check() error {
	return cmp.Or(loadRange.CheckAs("load on the lug", p.Load), pullAngleRange.CheckAs("pull from the face, in the lug's plane", p.Angle),
		sidePullRange.CheckAs("pull out of the lug's plane", p.Side))
}

// forces splits the pull, N: straight off the face, along it in the lug's
// plane, and along it square to the lug.
func (p Pull) forces() (off, along, across float64) {
	force := p.Load * trade.StandardGravity
	inPlane := force * math.Cos(p.Side)
	return inPlane * math.Sin(p.Angle), math.Abs(inPlane * math.Cos(p.Angle)), force * math.Sin(p.Side)
}

// LugBase is the section of a plate lug where it meets what it is welded to.
type LugBase struct {
	Pull
	Height    float64 // face to hole's centre, m, 1 mm to 1 m
	Width     float64 // of the lug at its base, m, 1 mm to 1 m
	Thickness float64 // m, 1 mm to 1 m
	Yield     float64 // Pa, 100 to 1400 MPa
	Category  Category
}

// The parts of the stress at a lug's base, in the order of LugBaseResult.Checks.
const (
	BaseTension  = iota // pulled off the face
	BaseBending         // bent in its own plane
	BaseSideBend        // bent out of its plane
	BaseShear           // sheared along the face
	BaseCombined        // all of it at the worst corner
)

// LugBaseResult holds stresses as demands and allowables as capacities, Pa.
type LugBaseResult struct {
	In      LugBase
	Checks  [5]Check
	Governs int // the largest single part, of the first four
}

// Use is the combined use at the worst corner.
func (r LugBaseResult) Use() float64 { return r.Checks[BaseCombined].Use() }

// CheckLugBase works the base of a plate lug as an elastic cantilever:
//
//	tension    P·cos s·sin a/(w·t)
//	bending    6·P·cos s·cos a·h/(t·w²)
//	side bend  6·P·sin s·h/(w·t²)
//	shear      √(along² + across²)/(w·t)
//	combined   √((tension + bending + side bend)² + 3·shear²)
//
// against Fy/Nd (Fy/(Nd·√3) for shear alone), Nd 2.00 for design category A and
// 3.00 for B. ASME BTH-1 allows more than Fy/Nd in bending a flat bar; that
// bonus is not taken. Out of range is an error. Sources: beam theory; combined
// stress and design factors as in ASME BTH-1, from memory.
func CheckLugBase(in LugBase) (LugBaseResult, error) {
	nd, err := in.Category.Factor()
	err = cmp.Or(err, in.check(), stockRange.CheckAs("height of the hole", in.Height), stockRange.CheckAs("lug width at its base", in.Width),
		stockRange.CheckAs("lug thickness", in.Thickness), yieldRange.CheckAs("yield strength", in.Yield))
	if err != nil {
		return LugBaseResult{}, err
	}
	off, along, across := in.forces()
	area := in.Width * in.Thickness
	tension := off / area
	bending := 6 * along * in.Height / (area * in.Width)
	side := 6 * across * in.Height / (area * in.Thickness)
	shear := math.Hypot(along, across) / area
	normal := tension + bending + side
	allowed := in.Yield / nd
	r := LugBaseResult{In: in, Checks: [5]Check{
		BaseTension:  {"tension", tension, allowed},
		BaseBending:  {"in-plane bending", bending, allowed},
		BaseSideBend: {"out-of-plane bending", side, allowed},
		BaseShear:    {"shear", shear, allowed / math.Sqrt(3)},
		BaseCombined: {"combined stress", math.Sqrt(normal*normal + 3*shear*shear), allowed},
	}}
	r.Governs = governing(r.Checks[:BaseCombined])
	return r, nil
}

// Steps gives the lines of the work.
func (r LugBaseResult) Steps() []trade.Step {
	formulas := [5]string{
		"P·cos s·sin a/(w·t)", "6·P·cos s·cos a·h/(t·w²)", "6·P·sin s·h/(w·t²)",
		"√(along² + across²)/(w·t)", "√((tension + bending + side bend)² + 3·shear²)",
	}
	return stressSteps(r.Checks[:], formulas[:])
}

// stressSteps shows checks whose demands are stresses.
func stressSteps(checks []Check, formulas []string) []trade.Step {
	steps := make([]trade.Step, 0, 2*len(checks))
	for i, c := range checks {
		stress := trade.Step{Name: c.Name, Formula: formulas[i], Kind: units.Pressure, Value: c.Demand, Unit: "ksi"}
		steps = append(steps, stress, useStep(c))
	}
	return steps
}
