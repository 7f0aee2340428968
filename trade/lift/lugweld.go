package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// LugWeldPattern says where a standing plate lug is welded down.
type LugWeldPattern int

// The patterns.
const (
	AlongFaces LugWeldPattern = iota // along both faces, each as long as the lug is wide
	AcrossEnds                       // across both ends, each as long as the lug is thick
	AllRound
)

var lugWeldPatterns = []string{"along both faces", "across both ends", "all round"}

// LugWeld is the fillet weld at the foot of a plate lug under an angled pull.
type LugWeld struct {
	Pull
	Height    float64 // face to hole's centre, m, 1 mm to 1 m
	Width     float64 // of the lug at its base, m, 5 mm to 20 m
	Thickness float64 // m, 5 mm to 20 m
	Leg       float64 // m, 2 to 100 mm
	Pattern   LugWeldPattern
	Electrode float64 // Pa, 400 to 900 MPa
	Basis     Basis
}

// The parts of the stress in a lug's weld, in the order of LugWeldResult.Parts.
const (
	WeldPull     = iota // straight off the face
	WeldBend            // bending in the lug's plane
	WeldSideBend        // bending out of it
	WeldShear           // along the face
)

// LugWeldResult is the stress on the throat at the worst corner, Pa.
type LugWeldResult struct {
	In       LugWeld
	Parts    [4]Check // stress and allowed
	Stress   float64
	Allowed  float64
	Use      float64
	Governs  int     // the largest part
	Capacity float64 // for a pull in the same direction, kg
}

// CheckLugWeld works the weld at a lug's foot by the elastic line method, w the
// lug's width, t its thickness, per unit of throat (leg/√2):
//
//	faces   L = 2w        S = w²/3          S' = w·t
//	ends    L = 2t        S = w·t           S' = t²/3
//	round   L = 2(w + t)  S = w·(3t + w)/3  S' = t·(3w + t)/3
//
// stress = √((off/L + along·h/S + across·h/S')² + (along² + across²)/L²)/throat.
// Where runs are shorter than 4 legs the leg counts as length/4. Out of range is
// an error. Sources: Shigley 9th ed. Table 9-2; weld stress as WeldStress; short
// runs AISC 360 J2.2b. The base metal and the part beneath are not checked.
func CheckLugWeld(in LugWeld) (LugWeldResult, error) {
	allowed, err := WeldStress(in.Electrode, in.Basis)
	err = cmp.Or(err, in.check(), stockRange.CheckAs("height of the hole", in.Height), weldRange.CheckAs("lug width at its base", in.Width),
		weldRange.CheckAs("lug thickness", in.Thickness), legSizeRange.CheckAs("weld leg", in.Leg))
	if err != nil {
		return LugWeldResult{}, err
	}
	length, s, side, run, err := in.section()
	if err != nil {
		return LugWeldResult{}, err
	}
	throat := weldThroat * min(in.Leg, run/4)
	off, along, across := in.forces()
	r := LugWeldResult{In: in, Allowed: allowed}
	r.Parts = [4]Check{
		WeldPull:     {"pull off the face", off / length / throat, allowed},
		WeldBend:     {"in-plane bending", along * in.Height / s / throat, allowed},
		WeldSideBend: {"out-of-plane bending", across * in.Height / side / throat, allowed},
		WeldShear:    {"shear along the face", math.Hypot(along, across) / length / throat, allowed},
	}
	normal := r.Parts[WeldPull].Demand + r.Parts[WeldBend].Demand + r.Parts[WeldSideBend].Demand
	r.Stress = math.Hypot(normal, r.Parts[WeldShear].Demand)
	r.Use = r.Stress / allowed
	r.Governs = governing(r.Parts[:])
	r.Capacity = in.Load / r.Use
	return r, nil
}

// section gives length, section moduli in and out of the lug's plane, and the
// longest run, which a short-run reduction goes by.
func (in LugWeld) section() (length, s, side, run float64, err error) {
	w, t := in.Width, in.Thickness
	switch in.Pattern {
	case AlongFaces:
		return 2 * w, w * w / 3, w * t, w, nil
	case AcrossEnds:
		return 2 * t, w * t, t * t / 3, t, nil
	case AllRound:
		return 2 * (w + t), w * (3*t + w) / 3, t * (3*w + t) / 3, 2 * (w + t), nil
	}
	return 0, 0, 0, 0, errors.New("the weld runs along both faces, across both ends or all round")
}

// Steps gives the lines of the work.
func (r LugWeldResult) Steps() []trade.Step {
	formulas := [4]string{"off/(L·throat)", "along·h/(S·throat)", "across·h/(S'·throat)", "√(along² + across²)/(L·throat)"}
	return append(stressSteps(r.Parts[:], formulas[:]),
		trade.Step{Name: "stress at the worst corner", Formula: "√(normal² + shear²)", Kind: units.Pressure, Value: r.Stress, Unit: "ksi"},
		trade.Step{Name: "use", Formula: "stress/allowed", Kind: units.Ratio, Value: r.Use, Unit: "percent"})
}
