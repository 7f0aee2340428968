package bore

import (
	"errors"
	"math"
)

// Surface is the wall of the worn bore, readable at any clock position and
// depth, from any axis. At a station it goes through the readings: the least
// squares circle plus the readings' distances from it, straight between them.
// Between stations centre, radius and those distances change in proportion.
// Beyond the outermost stations the shape is kept and the centre moves on along
// the axis through the stations.
type Surface struct {
	rings []ring
	slope XY // of the axis, for what lies beyond the stations
}

type ring struct {
	z, r  float64
	c     XY
	angle []float64 // clock about c, rising; empty for a true circle
	off   []float64
}

// Section is one circular section of a surface that is made up of circles.
type Section struct {
	Z      float64 // m
	Centre XY      // m
	R      float64 // radius, m
}

var (
	errNoCentre   = errors.New("no station was swept: diameters alone cannot find a centre; sweep the bore with an indicator on the bar")
	errOneStation = errors.New("one station gives no axis: sweep the bore at two stations at least")
	errOutside    = errors.New("the axis lies outside the worn bore: check the offset")
)

// SurfaceOf returns a wall made of circular sections, as for a bore that is
// known only by its size and its offset at each end. Errors: none given, radii
// out of range (2.5 mm to 1.5 m), sections not at rising depths. Source: plane geometry.
func SurfaceOf(sections ...Section) (*Surface, error) {
	out := &Surface{}
	for i, s := range sections {
		if err := limRadiusIn.Check(s.R); err != nil {
			return nil, err
		}
		if bad(s.Centre.X) || bad(s.Centre.Y) || bad(s.Z) || (i > 0 && s.Z-sections[i-1].Z < sameStation) {
			return nil, errors.New("the sections of the bore must be numbers, at rising depths")
		}
		out.rings = append(out.rings, ring{z: s.Z, r: s.R, c: s.Centre})
	}
	n := len(sections)
	if n == 0 {
		return nil, errNothing
	}
	if n > 1 {
		a, b := sections[0], sections[n-1]
		out.slope = b.Centre.Sub(a.Centre).Times(1 / (b.Z - a.Z))
	}
	return out, nil
}

// at is the distance off the circle at an angle about its centre.
func (r *ring) at(angle float64) float64 {
	n := len(r.angle)
	if n == 0 {
		return 0
	}
	hi := 0 // the first reading beyond the angle
	for end := n; hi < end; {
		if m := (hi + end) / 2; r.angle[m] > angle {
			end = m
		} else {
			hi = m + 1
		}
	}
	lo := (hi + n - 1) % n
	a, b := r.angle[lo], r.angle[hi%n]
	if hi == 0 {
		a -= 2 * math.Pi
	}
	if hi == n {
		b += 2 * math.Pi
	}
	if b <= a {
		return r.off[lo]
	}
	return r.off[lo] + (angle-a)/(b-a)*(r.off[hi%n]-r.off[lo])
}

// slice is a section of the surface at any depth.
type slice struct {
	c    XY
	r    float64
	a, b *ring
	t    float64 // share of b
}

func (s *Surface) slice(z float64) slice {
	first, last := &s.rings[0], &s.rings[len(s.rings)-1]
	if z <= first.z {
		return slice{first.c.Add(s.slope.Times(z - first.z)), first.r, first, first, 0}
	}
	if z >= last.z {
		return slice{last.c.Add(s.slope.Times(z - last.z)), last.r, last, last, 0}
	}
	i := 1
	for s.rings[i].z < z {
		i++
	}
	a, b := &s.rings[i-1], &s.rings[i]
	t := (z - a.z) / (b.z - a.z)
	return slice{a.c.Add(b.c.Sub(a.c).Times(t)), a.r + t*(b.r-a.r), a, b, t}
}

func (s *slice) off(angle float64) float64 {
	off := s.a.at(angle)
	if s.t > 0 {
		off += s.t * (s.b.at(angle) - off)
	}
	return off
}

func (s *slice) round() bool { return len(s.a.angle) == 0 && len(s.b.angle) == 0 }

// EvenClocks gives n clock positions evenly round, from 12 o'clock, rad.
func EvenClocks(n int) []float64 {
	out := make([]float64, n)
	for i := range out {
		out[i] = 2 * math.Pi * float64(i) / float64(n)
	}
	return out
}

// Ray is a direction from an axis, rad, its sine and cosine worked out once.
type Ray struct{ Clock, Sin, Cos float64 }

// Rays gives the directions of clock positions, rad.
func Rays(clock []float64) []Ray {
	out := make([]Ray, len(clock))
	for i, c := range clock {
		sin, cos := math.Sincos(c)
		out[i] = Ray{Turn(c), sin, cos}
	}
	return out
}

// Row writes to out the distance of the wall from an axis, m, at depth z, m, and
// in the direction of each of the rays, in planes across the bar. A tilt of the axis
// changes such a distance by a share of tilt²/2, which is left out: two parts in
// a million for 24 thou per foot. Error: the axis lies outside the worn bore.
// Source: law of cosines; straight lines between readings are our choice.
func (s *Surface) Row(axis Line, z float64, rays []Ray, out []float64) error {
	cut := s.slice(z)
	e := cut.c.Sub(axis.At(z))
	if !(e.Len() < cut.r) {
		return errOutside
	}
	round := cut.round()
	for i, ray := range rays {
		along := e.X*ray.Sin + e.Y*ray.Cos
		across := e.X*ray.Cos - e.Y*ray.Sin
		rho := along + math.Sqrt(cut.r*cut.r-across*across)
		if !round {
			var err error
			if rho, err = cut.meet(ray.Clock, along, across); err != nil {
				return err
			}
		}
		out[i] = rho
	}
	return nil
}

// meet finds where a ray from the axis meets the wall, by repeated substitution:
// the angle about the old centre, clock − asin(across/r), hardly depends on how
// far out the wall is.
func (s *slice) meet(clock, along, across float64) (float64, error) {
	r := s.r
	for range 60 {
		next := s.r + s.off(wrap(clock-arcsine(across/r)))
		if !(next > math.Abs(across)) {
			return 0, errOutside
		}
		if math.Abs(next-r) < 1e-9 {
			return along + math.Sqrt(next*next-across*across), nil
		}
		r = next
	}
	return 0, errors.New("the readings jump too much from one to the next to draw a wall through them")
}

// arcsine is math.Asin, shortened to its series for the small angles of a bore
// that is a little off: there it is right to 1e-12.
func arcsine(x float64) float64 {
	if math.Abs(x) > 0.02 {
		return math.Asin(x)
	}
	xx := x * x
	return x * (1 + xx*(1.0/6+xx*(3.0/40)))
}

// wrap is Turn for an angle that is at most one turn out.
func wrap(a float64) float64 {
	switch {
	case a < 0:
		return a + 2*math.Pi
	case a >= 2*math.Pi:
		return a - 2*math.Pi
	}
	return a
}

// Stations lists the depths, m, at which the wall was read.
func (s *Surface) Stations() []float64 {
	out := make([]float64, len(s.rings))
	for i := range s.rings {
		out[i] = s.rings[i].z
	}
	return out
}

// GridError bounds by how much the wall can stick out of the straight line
// between two clock positions that are step apart, m, seen from axis between the
// depths 0 and length: e·(1 − cos(step/2)) for the offset, and half a step along
// the steepest of the readings. Errors: none. Source: plane geometry.
func (s *Surface) GridError(axis Line, length, step float64) float64 {
	offset, steep := 0.0, 0.0
	for _, z := range append(s.Stations(), 0, length) {
		cut := s.slice(z)
		offset = max(offset, cut.c.Sub(axis.At(z)).Len())
	}
	for i := range s.rings {
		r := &s.rings[i]
		n := len(r.angle)
		for k := range n {
			gap := Turn(r.angle[(k+1)%n] - r.angle[k])
			if gap > 0 {
				steep = max(steep, math.Abs(r.off[(k+1)%n]-r.off[k])/gap)
			}
		}
	}
	return offset*(1-math.Cos(step/2)) + steep*step/2
}
