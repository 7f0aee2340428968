package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// WeldLine is one straight run, from one end to the other, m, within ±50.
type WeldLine struct{ X1, Y1, X2, Y2 float64 }

// WeldGroup holds the properties of runs that act together, per unit of throat.
type WeldGroup struct {
	Length float64 // of all runs, m
	X, Y   float64 // centroid, m
	IX, IY float64 // second moments about the centroid's x and y axes, m³
	J      float64 // polar, IX + IY, m³
}

// GroupWelds sums straight runs treated as lines: L = ΣLi, centroid ΣLi·ci/L,
// I = Σ(Li·d² + Li³/12 for the part across the axis), J = IX + IY.
//
// Ends: m, within ±50. No run, a run under 1 mm, or anything out of range is an
// error. Source: the line method (Shigley 9th ed. Tables 9-1 and 9-2).
func GroupWelds(lines []WeldLine) (WeldGroup, error) {
	if len(lines) == 0 {
		return WeldGroup{}, errors.New("there is no weld")
	}
	var g WeldGroup
	for _, w := range lines {
		err := cmp.Or(placeRange.CheckAs("end of a weld", w.X1), placeRange.CheckAs("end of a weld", w.Y1),
			placeRange.CheckAs("end of a weld", w.X2), placeRange.CheckAs("end of a weld", w.Y2))
		if err != nil {
			return WeldGroup{}, err
		}
		n := w.length()
		if n < 1e-3 {
			return WeldGroup{}, errors.New("a run of weld is too short to count")
		}
		g.Length += n
		g.X += n * (w.X1 + w.X2) / 2
		g.Y += n * (w.Y1 + w.Y2) / 2
	}
	g.X, g.Y = g.X/g.Length, g.Y/g.Length
	for _, w := range lines {
		n, dx, dy := w.length(), (w.X1+w.X2)/2-g.X, (w.Y1+w.Y2)/2-g.Y
		g.IX += n * (dy*dy + (w.Y2-w.Y1)*(w.Y2-w.Y1)/12)
		g.IY += n * (dx*dx + (w.X2-w.X1)*(w.X2-w.X1)/12)
	}
	g.J = g.IX + g.IY
	return g, nil
}

func (w WeldLine) length() float64 { return math.Hypot(w.X2-w.X1, w.Y2-w.Y1) }

// InPlane is a load in the plane of a weld group.
type InPlane struct {
	FX, FY float64 // N
	Torque float64 // about the group's centroid, anticlockwise, N·m
}

// StressAt is the stress in Pa on a throat (m) at a point of the group: the
// vector sum of F/(throat·L) and Torque·r/(throat·J). The greatest is at an end
// of a run.
func (g WeldGroup) StressAt(x, y, throat float64, load InPlane) float64 {
	sx := load.FX/g.Length - load.Torque*(y-g.Y)/g.J
	sy := load.FY/g.Length + load.Torque*(x-g.X)/g.J
	return math.Hypot(sx, sy) / throat
}

// WeldPattern is an arrangement of runs.
type WeldPattern int

// The patterns. Depth is measured along the load, Width square to it.
const (
	OneUpright WeldPattern = iota // one run along the load
	TwoUpright                    // two runs along the load, Width apart
	TwoAcross                     // two runs across the load, Depth apart
	OpenC                         // a run along the load, and one across at each end
	ClosedBox                     // all round
)

var weldWidthRange = trade.Between("weld width", 0, weldRange.High, units.Length, "")

var patterns = []string{"one along", "two along", "two across", "C", "box"}

// lines lays the pattern out with its back on x = 0; n says how many are used.
func (p WeldPattern) lines(width, depth float64) (runs [4]WeldLine, n int) {
	back := WeldLine{0, 0, 0, depth}
	front := WeldLine{width, 0, width, depth}
	bottom := WeldLine{0, 0, width, 0}
	top := WeldLine{0, depth, width, depth}
	switch p {
	case OneUpright:
		return [4]WeldLine{back}, 1
	case TwoUpright:
		return [4]WeldLine{back, front}, 2
	case TwoAcross:
		return [4]WeldLine{bottom, top}, 2
	case OpenC:
		return [4]WeldLine{back, bottom, top}, 3
	case ClosedBox:
		return [4]WeldLine{back, front, bottom, top}, 4
	}
	return runs, 0
}

// EccentricWeld is a weld group carrying a load in its own plane, off its
// centroid: a lug or bracket lapped on the side of a part.
type EccentricWeld struct {
	Load      float64 // kg, 0.1 to 500 000
	Pattern   WeldPattern
	Depth     float64 // along the load, m, 5 mm to 20 m
	Width     float64 // square to the load, m, 5 mm to 20 m; 0 will do for one run, which has none
	Reach     float64 // from the back of the pattern to the line of load, positive towards its open side, m, within ±50
	Leg       float64 // m, 2 to 100 mm
	Electrode float64 // Pa, 400 to 900 MPa
	Basis     Basis
}

// EccentricWeldResult is the stress at the worst end of a run.
type EccentricWeldResult struct {
	In       EccentricWeld
	Group    WeldGroup
	Arm      float64 // line of load to centroid, m
	Direct   float64 // stress from the load alone, Pa
	Stress   float64 // greatest, Pa
	Allowed  float64 // Pa
	Use      float64 // Stress/Allowed, a ratio
	Capacity float64 // kg
}

// CheckEccentricWeld works a weld group by the elastic line method: direct
// stress P/(throat·L), torsional stress P·arm·r/(throat·J), added as vectors,
// greatest at an end of a run; throat = leg/√2.
//
// The elastic method gives more stress than the instantaneous-centre method and
// so errs to the safe side. Out of range is an error. Sources: Shigley 9th ed.
// sec. 9-3; weld stress as WeldStress.
func CheckEccentricWeld(in EccentricWeld) (EccentricWeldResult, error) {
	allowed, err := WeldStress(in.Electrode, in.Basis)
	err = cmp.Or(err, loadRange.CheckAs("load on the weld", in.Load), weldRange.CheckAs("depth of the weld", in.Depth),
		placeRange.CheckAs("reach to the load", in.Reach), legSizeRange.CheckAs("weld leg", in.Leg),
		weldWidthRange.CheckAs("width of the weld", in.Width))
	if err == nil && in.Pattern != OneUpright {
		err = weldRange.CheckAs("width of the weld", in.Width)
	}
	if err != nil {
		return EccentricWeldResult{}, err
	}
	runs, n := in.Pattern.lines(in.Width, in.Depth)
	g, err := GroupWelds(runs[:n])
	if err != nil {
		return EccentricWeldResult{}, err
	}
	throat := weldThroat * in.Leg
	force := in.Load * trade.StandardGravity
	r := EccentricWeldResult{In: in, Group: g, Arm: in.Reach - g.X, Allowed: allowed, Direct: force / (throat * g.Length)}
	load := InPlane{FY: -force, Torque: -force * r.Arm}
	for _, w := range runs[:n] {
		r.Stress = max(r.Stress, g.StressAt(w.X1, w.Y1, throat, load), g.StressAt(w.X2, w.Y2, throat, load))
	}
	r.Use = r.Stress / allowed
	r.Capacity = in.Load / r.Use
	return r, nil
}

// Steps gives the lines of the work.
func (r EccentricWeldResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "length of weld", Formula: "L", Kind: units.Length, Value: r.Group.Length, Unit: "inch"},
		{Name: "centroid from the back", Formula: "ΣLi·xi/L", Kind: units.Length, Value: r.Group.X, Unit: "inch"},
		{Name: "arm of the load", Formula: "reach − centroid", Kind: units.Length, Value: r.Arm, Unit: "inch"},
		{Name: "polar moment per throat", Formula: "J = IX + IY", Kind: units.Volume, Value: r.Group.J, Unit: "cuin"},
		{Name: "direct stress", Formula: "P/(throat·L)", Kind: units.Pressure, Value: r.Direct, Unit: "ksi"},
		{Name: "greatest stress", Formula: "vector sum with P·arm·r/(throat·J)", Kind: units.Pressure, Value: r.Stress, Unit: "ksi"},
		{Name: "allowed stress", Formula: "share of Exx", Kind: units.Pressure, Value: r.Allowed, Unit: "ksi"},
		{Name: "use", Formula: "stress/allowed", Kind: units.Ratio, Value: r.Use, Unit: "percent"},
	}
}
