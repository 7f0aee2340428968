package lift

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
)

// frameResult is what the frame of beams finds.
type frameResult struct {
	crown, foot float64 // greatest moment at the crown and at a foot
	bow, leg    float64 // greatest |N|/A + 32|M|/(πd³)
}

// frame solves the whole lug as a plane frame of straight beam elements, a
// method with nothing in common with the one under test but the bar. The shackle
// bears on the bow at the angle ride from the crown, pulling straight outward.
func frame(t *testing.T, bar, mean, leg, force, ride float64, pinned bool) frameResult {
	t.Helper()
	const arc, straight = 120, 20
	var xs, ys []float64
	for i := straight; i > 0; i-- {
		xs, ys = append(xs, -mean), append(ys, -leg*float64(i)/straight)
	}
	for i := 0; i <= arc; i++ {
		a := math.Pi * (float64(i)/arc - 0.5)
		xs, ys = append(xs, mean*math.Sin(a)), append(ys, mean*math.Cos(a))
	}
	for i := 1; i <= straight; i++ {
		xs, ys = append(xs, mean), append(ys, -leg*float64(i)/straight)
	}
	n := len(xs)
	f := beams{xs, ys, math.Pi * bar * bar / 4, math.Pi * math.Pow(bar, 4) / 64}
	k := mat.NewDense(3*n, 3*n, nil)
	for i := range n - 1 {
		local, turn := f.element(i)
		var g mat.Dense
		g.Product(turn.T(), local, turn)
		for p := range 6 {
			for q := range 6 {
				k.Set(3*i+p, 3*i+q, k.At(3*i+p, 3*i+q)+g.At(p, q))
			}
		}
	}
	load := mat.NewVecDense(3*n, nil)
	at := straight + int(math.Round((ride/math.Pi+0.5)*arc))
	load.SetVec(3*at, force*math.Sin(ride))
	load.SetVec(3*at+1, force*math.Cos(ride))
	held := []int{0, 1, 3*n - 3, 3*n - 2}
	if !pinned {
		held = append(held, 2, 3*n-1)
	}
	for _, d := range held {
		for j := range 3 * n {
			k.Set(d, j, 0)
			k.Set(j, d, 0)
		}
		k.Set(d, d, 1)
	}
	var u mat.VecDense
	require.NoError(t, u.SolveVec(k, load))

	var r frameResult
	for i := range n - 1 {
		local, turn := f.element(i)
		var ends mat.VecDense
		ends.MulVec(turn, u.SliceVec(3*i, 3*i+6))
		ends.MulVec(local, &ends)
		m := max(math.Abs(ends.AtVec(2)), math.Abs(ends.AtVec(5)))
		s := math.Abs(ends.AtVec(0))/f.area + 32*m/(math.Pi*bar*bar*bar)
		if i < straight || i >= n-1-straight {
			r.leg = max(r.leg, s)
		} else {
			r.bow = max(r.bow, s)
		}
		if i == straight+arc/2 {
			r.crown = math.Abs(ends.AtVec(2))
		}
		if i == 0 || i == n-2 {
			r.foot = max(r.foot, math.Abs(ends.AtVec(3*(i/(n-2))+2)))
		}
	}
	return r
}

type beams struct {
	x, y          []float64
	area, inertia float64
}

// element is the stiffness of beam i along itself, and the turn from the
// frame's axes to its own.
func (f beams) element(i int) (local, turn *mat.Dense) {
	const e = 200e9
	dx, dy := f.x[i+1]-f.x[i], f.y[i+1]-f.y[i]
	l := math.Hypot(dx, dy)
	c, s := dx/l, dy/l
	a, b := e*f.area/l, e*f.inertia/(l*l*l)
	local = mat.NewDense(6, 6, []float64{
		a, 0, 0, -a, 0, 0,
		0, 12 * b, 6 * b * l, 0, -12 * b, 6 * b * l,
		0, 6 * b * l, 4 * b * l * l, 0, -6 * b * l, 2 * b * l * l,
		-a, 0, 0, a, 0, 0,
		0, -12 * b, -6 * b * l, 0, 12 * b, -6 * b * l,
		0, 6 * b * l, 2 * b * l * l, 0, -6 * b * l, 4 * b * l * l,
	})
	turn = mat.NewDense(6, 6, nil)
	for j := 0; j < 6; j += 3 {
		turn.Set(j, j, c)
		turn.Set(j, j+1, s)
		turn.Set(j+1, j, -s)
		turn.Set(j+1, j+1, c)
		turn.Set(j+2, j+2, 1)
	}
	return local, turn
}

func TestBentBarAgreesWithAFrameOfBeams(t *testing.T) {
	// Slender bar, where curvature and shear no longer matter.
	const bar, inside, leg, load = 0.01, 0.99, 0.5, 100.0
	r, err := CheckBentBarLug(BentBarLug{Load: load, Bar: bar, Inside: inside, Leg: leg, Angle: 90 * degree, Yield: 250 * megaPa})
	require.NoError(t, err)
	force := load * 9.80665

	fixed := frame(t, bar, 0.5, leg, force, 0, false)
	assert.InEpsilon(t, fixed.crown, math.Abs(r.Fixed.CrownMoment), 0.003)
	assert.InEpsilon(t, fixed.foot, math.Abs(r.Fixed.FootMoment), 0.005)
	pinned := frame(t, bar, 0.5, leg, force, 0, true)
	assert.InEpsilon(t, pinned.crown, math.Abs(r.Pinned.CrownMoment), 0.003)
	assert.Zero(t, r.Pinned.FootMoment)
	assert.InEpsilon(t, max(fixed.bow, pinned.bow), r.Checks[BarBow].Demand, 0.01)
	assert.InEpsilon(t, max(fixed.leg, pinned.leg), r.Checks[BarLeg].Demand, 0.01)
}

func TestAngledPullIsBounded(t *testing.T) {
	// The frame has the shackle where the bow is square to the pull. The check
	// must never show less, whatever the feet do. The frame's straight beams leave
	// out curvature and shear: under 1 % with a bow ten bars in radius.
	const bar, load = 0.01, 100.0
	for _, mean := range []float64{0.1, 0.3} {
		for _, leg := range []float64{0.01, 0.1, 0.4} {
			for _, angle := range []float64{85.5, 75, 60, 45, 30} {
				r, err := CheckBentBarLug(BentBarLug{Load: load, Bar: bar, Inside: 2*mean - bar, Leg: leg, Angle: angle * degree, Yield: 250 * megaPa})
				require.NoError(t, err)
				for _, pinned := range []bool{true, false} {
					f := frame(t, bar, mean, leg, load*9.80665, (90-angle)*degree, pinned)
					what := []any{"mean %v leg %v angle %v pinned %v", mean, leg, angle, pinned}
					assert.GreaterOrEqual(t, r.Checks[BarBow].Demand, 0.99*f.bow, what...)
					assert.GreaterOrEqual(t, r.Checks[BarLeg].Demand, 0.99*f.leg, what...)
					assert.GreaterOrEqual(t, r.FootMoment, 0.99*f.foot, what...)
				}
			}
		}
	}
}

func TestRiddenShackleAgreesWithTheFrame(t *testing.T) {
	const bar, force = 0.01, 1000.0
	for _, leg := range []float64{0.05, 0.4} {
		for _, ride := range []float64{0, 15, 30, 45, 60} {
			for _, pinned := range []bool{true, false} {
				h := newArch(bar, 0.99, leg)
				near, far := h.ridden(force, ride*degree, pinned)
				f := frame(t, bar, 0.5, leg, force, ride*degree, pinned)
				what := []any{"leg %v ride %v pinned %v", leg, ride, pinned}
				assert.InEpsilon(t, f.bow, max(h.bowStress(near), h.bowStress(far)), 0.015, what...)
				assert.InEpsilon(t, f.leg, max(h.legStress(near), h.legStress(far)), 0.015, what...)
				foot := max(math.Abs(h.foot(near)), math.Abs(h.foot(far)))
				assert.InDelta(t, f.foot, foot, 0.015*force*0.1, what...)
			}
		}
	}
}

// energy is the strain energy of one thick half of the lug times 2AE, by
// quadrature from the forces alone.
func energy(h *arch, f crown) float64 {
	const n = 4000
	R, e, inertia := h.mean, h.bend.eccentric, h.bend.area/h.stiff
	var u float64
	for i := range n {
		a := (float64(i) + 0.5) * math.Pi / 2 / n
		s, c := math.Sincos(a)
		M, N, V := f.m+f.t*R*(1-c)-f.v*R*s, f.t*c+f.v*s, f.t*s-f.v*c
		if a > f.ride {
			ds, dc := math.Sincos(a - f.ride)
			M, N, V = M-f.load*R*ds, N+f.load*ds, V-f.load*dc
		}
		u += (M*M/e + N*N*R + 2*M*N + shearEnergy*R*V*V) * math.Pi / 2 / n
	}
	for i := range n {
		y := (float64(i) + 0.5) * h.leg / n
		M := h.spring(f) + y*f.thrust()
		u += (M*M*h.bend.area/inertia + f.tension()*f.tension() + shearEnergy*f.thrust()*f.thrust()) * h.leg / n
	}
	return u
}

func TestBentBarTakesTheLeastEnergy(t *testing.T) {
	h := newArch(0.025, 0.06, 0.04)
	for _, ride := range []float64{0, 0.3, 0.9} {
		least := func(f crown, dm, dt, dv float64, what string) {
			u := energy(&h, f)
			for _, way := range []float64{-1, 1} {
				moved := f
				moved.m, moved.t, moved.v = f.m+way*dm, f.t+way*dt, f.v+way*dv
				assert.LessOrEqual(t, u, energy(&h, moved), "%s, ride %v", what, ride)
			}
		}
		f := h.pull(5000, ride, false)
		least(f, 0.01*f.m, 0, 0, "fixed, moment")
		least(f, 0, 0.01*f.t, 0, "fixed, tension")
		p := h.pull(5000, ride, true)
		step := 0.01 * p.t // only along a foot moment of nil
		least(p, -step*(h.mean+h.leg), step, 0, "pinned")
		assert.InDelta(t, 0, h.foot(p), 1e-9)

		v := h.push(5000, ride, false)
		least(crown{v: v, load: 5000, ride: ride}, 0, 0, 0.01*v, "opposite loads")
		v = h.push(5000, ride, true)
		assert.InDelta(t, 0, h.foot(crown{v: v, load: 5000, ride: ride}), 1e-9)
	}
	s := h.sway(3000, false)
	for _, way := range []float64{0.99, 1.01} {
		assert.LessOrEqual(t, energy(&h, s), energy(&h, crown{t: s.t, v: way * s.v}))
	}
	assert.InDelta(t, 0, h.foot(h.sway(3000, true)), 1e-9)
}

func TestBowStressFindsTheWorstPlace(t *testing.T) {
	for _, leg := range []float64{0, 0.02, 0.1, 0.5} {
		for _, ride := range []float64{0, 0.4, 1} {
			h := newArch(0.025, 0.06, leg)
			near, far := h.ridden(10000, ride, false)
			for _, f := range []crown{near, far, h.pull(5000, ride, true), h.sway(3000, false)} {
				inside, outside := h.bend.perMoment()
				worst := 0.0
				for i := 0; i <= 3000; i++ {
					a := math.Pi / 2 * float64(i) / 3000
					sin, cos := math.Sincos(a)
					past := f.load * math.Sin(max(0, a-f.ride))
					m := f.m + f.t*h.mean*(1-cos) - f.v*h.mean*sin - past*h.mean
					direct := (f.t*cos + f.v*sin + past) / h.bend.area
					worst = max(worst, math.Abs(direct-m*inside), math.Abs(direct-m*outside))
				}
				assert.InEpsilon(t, worst, h.bowStress(f), 1e-3, "leg %v ride %v", leg, ride)
				assert.GreaterOrEqual(t, h.bowStress(f), worst*(1-1e-12))
			}
		}
	}
}
