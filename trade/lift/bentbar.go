package lift

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// BentBarLug is a round bar bent to a half circle with two straight legs, both
// welded down, pulled at the top of the bow.
type BentBarLug struct {
	Load     float64 // with its dynamic factor, kg, 0.1 to 500 000
	Bar      float64 // diameter, m, 1 mm to 1 m
	Inside   float64 // clear width between the legs, m, 1 mm to 1 m; at least Bar
	Leg      float64 // straight length from the face to where the bend begins, m, 0 to 1
	Angle    float64 // pull from the face, in the lug's plane, rad, 30 to 90 degrees; 90 is straight off
	Side     float64 // pull out of the lug's plane, rad, 0 to 45 degrees
	Yield    float64 // Pa, 100 to 1400 MPa
	Category Category
}

// BentBarState is the lug's inner forces, for one kind of foot, under the part
// of the pull that is straight off the face.
type BentBarState struct {
	CrownMoment  float64 // N·m; positive sharpens the bow
	CrownTension float64 // N; equal to the inward pull that each foot resists
	SpringMoment float64 // where the bend begins, N·m
	FootMoment   float64 // N·m; 0 for pinned feet
}

// The ways a bent-bar lug fails, in the order of BentBarResult.Checks.
const (
	BarBow   = iota // bent in the bow
	BarLeg          // pulled and bent in a leg
	BarShear        // sheared beside the shackle
)

// BentBarResult bounds the lug from both sides: feet free to turn and feet that
// cannot. Demands are stresses, capacities allowables, Pa.
type BentBarResult struct {
	In         BentBarLug
	Pinned     BentBarState
	Fixed      BentBarState
	FootPull   float64 // greatest tension on one foot, N
	FootShear  float64 // greatest sideways force on one foot, N
	FootMoment float64 // greatest moment on one foot, N·m
	Checks     [3]Check
	Governs    int
	Capacity   float64 // kg
}

// Use is the greatest use of all checks.
func (r BentBarResult) Use() float64 { return r.Checks[r.Governs].Use() }

var (
	footRange    = trade.Between("foot", 0, 1, units.Length, "")
	bowPullRange = trade.Between("bow pull", 30*degree-touch, 90*degree+touch, units.Angle, "flatter, the shackle leaves the bow")
)

// CheckBentBarLug works a lug bent from round bar. The frame is solved by
// Castigliano's theorem with bending, tension, their coupling in a thick curved
// bar, and shear (Shigley 9th ed. sec. 4-9), once with pinned and once with
// fixed feet. Any real foot lies between, and every stress is linear between the
// two, so the worse of the two bounds it. In the bow, for the part of the pull
// straight off the face,
//
//	M(θ) = M0 + T0·R(1 − cos θ) − P/2·R·sin θ,  N(θ) = T0·cos θ + P/2·sin θ
//
// θ from the crown, and the stress at the inside and outside face is curved-bar
// stress with the moment about the centroid (HookStress), searched over the
// whole bow. Legs: N/A ± 32M/(π·d³). Shear beside the shackle: 4/3·(P/2)/A.
//
// A pull at an angle in the lug's plane is worked twice and the worse is kept:
// with the shackle stuck at the crown, where the frame also sways and its greatest
// stress is added to the other's wherever each occurs; and with the shackle ridden
// round the bow to where the pull is square to it. A side pull Q bends and twists both legs; its bending Q/2·(Leg + R) and the most its
// twist can be, Q/2·R, are combined as √(M² + T²) and added too. Stress is held
// to Fy/Nd (shear Fy/(Nd·√3)), Nd 2.00 for design category A, 3.00 for B of ASME
// BTH-1 (from memory). The load is taken as a point. All of this errs to the
// safe side; the curved-bar formula alone reads up to 8 % low at the inside of a
// tight bend (see HookStress), which the design factor covers.
//
// A bend tighter than half the bar inside, or anything out of range, is an
// error. Hot-rolled mild steel bar only: hardened bar and reinforcing bar crack
// when bent or welded. The feet's welds are checked by CheckRoundWeld or
// CheckFlareWeld with the foot forces given here. Sources: as named above; the
// two bounds are our own reading of a foot that is neither pinned nor fixed.
func CheckBentBarLug(in BentBarLug) (BentBarResult, error) {
	nd, err := in.Category.Factor()
	err = cmp.Or(err, loadRange.CheckAs("load on the lug", in.Load), stockRange.CheckAs("bar", in.Bar),
		stockRange.CheckAs("width between the legs", in.Inside), footRange.CheckAs("straight length of the legs", in.Leg),
		bowPullRange.CheckAs("pull from the face, in the lug's plane", in.Angle),
		sidePullRange.CheckAs("pull out of the lug's plane", in.Side), yieldRange.CheckAs("yield strength", in.Yield))
	if err != nil {
		return BentBarResult{}, err
	}
	if in.Inside < in.Bar-touch {
		return BentBarResult{}, errTightBend
	}
	force := in.Load * trade.StandardGravity
	inPlane := force * math.Cos(in.Side)
	off, along, across := inPlane*math.Sin(in.Angle)/2, math.Abs(inPlane*math.Cos(in.Angle))/2, force*math.Sin(in.Side)/2 // on each leg
	a := newArch(in.Bar, in.Inside, in.Leg)
	r := BentBarResult{In: in, Pinned: a.state(a.pull(off, 0, true), true), Fixed: a.state(a.pull(off, 0, false), false)}
	w := a.worst(off, along, inPlane, math.Max(0, math.Pi/2-in.Angle))

	sideFoot := across * math.Hypot(a.mean+a.leg, a.mean)
	r.FootPull = w.footPull
	r.FootShear = math.Hypot(w.footShear, across)
	r.FootMoment = w.footMoment + sideFoot
	bow := w.bow + across*math.Sqrt2*a.mean*a.perMoment
	leg := w.leg + sideFoot*a.perMoment
	shear := 4 * math.Hypot(w.shear, across) / (3 * a.bend.area)
	allowed := in.Yield / nd
	r.Checks = [3]Check{
		BarBow:   {"bow", bow, allowed},
		BarLeg:   {"leg", leg, allowed},
		BarShear: {"shear", shear, allowed / math.Sqrt(3)},
	}
	r.Governs = governing(r.Checks[:])
	r.Capacity = in.Load / r.Use()
	return r, nil
}

func (h *arch) state(f crown, pinned bool) BentBarState {
	s := BentBarState{CrownMoment: f.m, CrownTension: f.t, SpringMoment: h.spring(f)}
	if !pinned {
		s.FootMoment = h.foot(f)
	}
	return s
}

// barWorst gathers the greatest of everything over all cases.
type barWorst struct{ bow, leg, shear, footPull, footShear, footMoment float64 }

func (w *barWorst) add(o barWorst) {
	w.bow, w.leg, w.shear = max(w.bow, o.bow), max(w.leg, o.leg), max(w.shear, o.shear)
	w.footPull, w.footShear, w.footMoment = max(w.footPull, o.footPull), max(w.footShear, o.footShear), max(w.footMoment, o.footMoment)
}

func (h *arch) sizes(f crown) barWorst {
	return barWorst{h.bowStress(f), h.legStress(f), f.shear(), math.Abs(f.tension()), math.Abs(f.thrust()), math.Abs(h.foot(f))}
}

// worst bounds the lug over both kinds of foot and both places of the shackle.
func (h *arch) worst(off, along, whole, ride float64) barWorst {
	var w barWorst
	for _, pinned := range [2]bool{true, false} {
		p, s := h.sizes(h.pull(off, 0, pinned)), h.sizes(h.sway(along, pinned))
		w.add(barWorst{p.bow + s.bow, p.leg + s.leg, p.shear + s.shear, p.footPull + s.footPull, p.footShear + s.footShear, p.footMoment + s.footMoment})
		near, far := h.ridden(whole, ride, pinned)
		w.add(h.sizes(near))
		w.add(h.sizes(far))
	}
	return w
}

// ridden splits a load that stands on one half into a like and an opposite pair.
func (h *arch) ridden(load, ride float64, pinned bool) (near, far crown) {
	like := h.pull(load/2, ride, pinned)
	v := h.push(load/2, ride, pinned)
	return crown{like.m, like.t, v, load, ride}, crown{m: like.m, t: like.t, v: -v}
}

// Steps gives the lines of the work.
func (r BentBarResult) Steps() []trade.Step {
	moment := func(name string, m float64) trade.Step {
		return trade.Step{Name: name, Formula: "Castigliano", Kind: units.Torque, Value: m, Unit: "lbf_in"}
	}
	steps := []trade.Step{
		moment("moment at the crown, pinned feet", r.Pinned.CrownMoment),
		moment("moment at the crown, fixed feet", r.Fixed.CrownMoment),
		moment("moment at the bend's end, pinned feet", r.Pinned.SpringMoment),
		moment("moment at the bend's end, fixed feet", r.Fixed.SpringMoment),
		moment("moment at a foot, fixed", r.Fixed.FootMoment),
		{Name: "greatest pull on one foot", Formula: "P·cos s·sin a/2 + sway", Kind: units.Force, Value: r.FootPull, Unit: "lbf"},
	}
	formulas := [3]string{"N/A ± M·(rn − r)/(A·e·r)", "N/A + 32·M/(π·d³)", "4/3·V/A"}
	return append(steps, stressSteps(r.Checks[:], formulas[:])...)
}
