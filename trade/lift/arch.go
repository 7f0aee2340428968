package lift

import "math"

// arch is a bent-bar lug: a half circle of bar on two straight legs. One half
// of it is worked from the crown (θ = 0) to the end of the bow (θ = 90°) and
// down the leg.
type arch struct {
	bend      bend
	mean      float64 // radius of the bow's centreline, R
	leg       float64 // L
	perMoment float64 // bending stress of the straight bar per unit moment
	stiff     float64 // A/I of the straight leg
	a         [2][2]float64
	swaying   float64
}

// crown is what one half of the lug carries: moment, tension and shear at the
// crown, and a load straight outward at the angle ride from the crown. In the
// bow, with [x] counted only past the load,
//
//	M = m + t·R(1 − cos θ) − v·R·sin θ − [load·R·sin(θ − ride)]
//	N = t·cos θ + v·sin θ + [load·sin(θ − ride)]
//
// M positive sharpens the bow, N positive is tension.
type crown struct{ m, t, v, load, ride float64 }

// shearEnergy is C·E/G: form factor of a round section 1.11 (Shigley Table 4-1)
// times 2.6, which is 2(1 + ν) at ν = 0.3.
const shearEnergy = 1.11 * 2.6

// newArch sets up ∂U/∂m, ∂U/∂t and, for sway, ∂U/∂v, multiplied through by A·E:
// U = ∫[M²/(2e) + N²R/2 + M·N + C·E/G·R·V²/2]dθ in the bow, and
// ∫[M²·A/(2I) + N²/2 + C·E/G·V²/2]dy in the leg.
func newArch(bar, inside, leg float64) arch {
	c := bar / 2
	h := arch{
		bend: roundBend(inside/2, bar), mean: inside/2 + c, leg: leg,
		perMoment: 32 / (math.Pi * bar * bar * bar), stiff: 4 / (c * c),
	}
	R, L, e := h.mean, h.leg, h.bend.eccentric
	h.a[0][0] = math.Pi/2/e + h.stiff*L
	h.a[0][1] = R*(math.Pi/2-1)/e + 1 + h.stiff*(R*L+L*L/2)
	h.a[1][0] = h.a[0][1]
	h.a[1][1] = R*R*(3*math.Pi/4-2)/e + R + R*(1-math.Pi/4) + shearEnergy*(R*math.Pi/4+L) +
		h.stiff*((R+L)*(R+L)*(R+L)-R*R*R)/3
	h.swaying = R*(R/e-1+shearEnergy)*math.Pi/4 + h.stiff*R*R*L + L
	return h
}

// pull solves for a pair of loads p, one on each half at the angle ride.
func (h *arch) pull(p, ride float64, pinned bool) crown {
	R, L, e := h.mean, h.leg, h.bend.eccentric
	sin, cos := math.Sincos(ride)
	i := past(ride)
	b0 := p * ((R/e-1)*i.s + h.stiff*(R*L*cos+L*L/2*sin))
	b1 := p * (R*R/e*(i.s-i.sc) - R*i.s + R*i.sc + shearEnergy*(R*i.cs+L*sin) +
		h.stiff*(R*R*L*cos+R*L*L/2*(cos+sin)+L*L*L/3*sin))
	if pinned { // foot moment nil: m = m0 − t·(R + L)
		m0, reach := p*(R*cos+L*sin), R+L
		num := b1 - reach*b0 - m0*(h.a[1][0]-reach*h.a[0][0])
		den := h.a[1][1] - reach*h.a[0][1] - reach*(h.a[1][0]-reach*h.a[0][0])
		t := num / den
		return crown{m: m0 - t*reach, t: t, load: p, ride: ride}
	}
	det := h.a[0][0]*h.a[1][1] - h.a[0][1]*h.a[1][0]
	return crown{
		m: (b0*h.a[1][1] - b1*h.a[0][1]) / det,
		t: (h.a[0][0]*b1 - h.a[1][0]*b0) / det, load: p, ride: ride,
	}
}

// push solves for the shear at the crown under opposite loads, p on the near
// half and −p on the far one.
func (h *arch) push(p, ride float64, pinned bool) float64 {
	R, L, e := h.mean, h.leg, h.bend.eccentric
	sin, cos := math.Sincos(ride)
	if pinned {
		return -p * (R*cos + L*sin) / R
	}
	i := past(ride)
	return -p * ((R/e-1)*R*i.ss + shearEnergy*R*i.cc + h.stiff*R*(R*L*cos+L*L/2*sin) + L*cos) / h.swaying
}

// sway solves for a force along the face at the crown, k on each half.
func (h *arch) sway(k float64, pinned bool) crown {
	R, L := h.mean, h.leg
	v := k * (R + L) / R
	if !pinned {
		v = k * (R*(R/h.bend.eccentric-1+shearEnergy)/2 + h.stiff*R*(R*L+L*L/2)) / h.swaying
	}
	return crown{t: k, v: v}
}

// integrals of sin or cos (θ − ride) times 1, sin θ or cos θ, from ride to 90°.
type integrals struct{ s, ss, sc, cs, cc float64 }

func past(ride float64) integrals {
	sin, cos := math.Sincos(ride)
	rest := math.Pi/2 - ride
	square := math.Sin(rest) * math.Sin(rest) / 2
	less, more := rest/2-math.Sin(2*rest)/4, rest/2+math.Sin(2*rest)/4
	return integrals{
		s: 1 - math.Cos(rest), ss: cos*less + sin*square, sc: cos*square - sin*less,
		cs: cos*square + sin*more, cc: cos*more - sin*square,
	}
}

// spring and foot are the moments at the end of the bow and at the foot.
func (h *arch) spring(f crown) float64 {
	return f.m + f.t*h.mean - f.v*h.mean - f.load*h.mean*math.Cos(f.ride)
}

func (h *arch) foot(f crown) float64 {
	return h.spring(f) + h.leg*(f.t-f.load*math.Sin(f.ride))
}

// tension and thrust are the forces on the foot, along the leg and square to it.
func (f crown) tension() float64 { return f.v + f.load*math.Cos(f.ride) }
func (f crown) thrust() float64  { return f.t - f.load*math.Sin(f.ride) }

// shear is the greatest in the bow beside the load, or in the leg.
func (f crown) shear() float64 {
	before := f.t*math.Sin(f.ride) - f.v*math.Cos(f.ride)
	return max(math.Abs(before), math.Abs(before-f.load), math.Abs(f.thrust()))
}

// bowStress is the greatest stress of either sign in the bow, at its inside and
// outside face. Before and past the load each has the form k0 + kc·cos θ + ks·sin θ.
func (h *arch) bowStress(f crown) float64 {
	inside, outside := h.bend.perMoment() // per straightening moment: hence the minus
	sin, cos := math.Sincos(f.ride)
	worst := 0.0
	for _, k := range [2]float64{inside, outside} {
		k0 := -k * (f.m + f.t*h.mean)
		arm := 1/h.bend.area + k*h.mean
		before := extreme(k0, f.t*arm, f.v*arm, 0, f.ride)
		after := extreme(k0, (f.t-f.load*sin)*arm, (f.v+f.load*cos)*arm, f.ride, math.Pi/2)
		worst = max(worst, before, after)
	}
	return worst
}

// extreme is the greatest size of k0 + kc·cos θ + ks·sin θ from one angle to
// another, both within a quarter turn.
func extreme(k0, kc, ks, from, to float64) float64 {
	at := func(a float64) float64 { return math.Abs(k0 + kc*math.Cos(a) + ks*math.Sin(a)) }
	worst := max(at(from), at(to))
	turn := math.Atan2(ks, kc) // a turning point, as is the angle half a turn away
	if turn < 0 {
		turn += math.Pi
	}
	if turn > from && turn < to {
		worst = max(worst, at(turn))
	}
	return worst
}

// legStress is the greatest stress in the straight leg and at its foot.
func (h *arch) legStress(f crown) float64 {
	return math.Abs(f.tension())/h.bend.area + h.perMoment*max(math.Abs(h.spring(f)), math.Abs(h.foot(f)))
}
