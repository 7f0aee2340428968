package bore

import "math"

// normal holds what one pass over the points gives at a centre c: with the
// radius put at its best, the mean distance, only the centre is unknown.
type normal struct {
	sum    float64 // Σ(d − d̄)²
	g      XY      // Σ(d − d̄)·u: where the centre wants to go
	h      cov2    // Σ(u − ū)(u − ū)ᵀ
	second cov2    // the part of the second derivative that Gauss and Newton drop
}

func normalAt(q []float64, c XY) normal {
	n := float64(len(q) / 2)
	r := meanDistance(q, c)
	var out normal
	var u XY
	for i := 0; i < len(q); i += 2 {
		dx, dy := q[i]-c.X, q[i+1]-c.Y
		d := math.Sqrt(dx*dx + dy*dy) // the points are scaled: nothing overflows
		if d == 0 {
			continue // a point at the centre has no direction
		}
		dx, dy = dx/d, dy/d
		e := d - r
		out.sum += e * e
		out.g.X += e * dx
		out.g.Y += e * dy
		u.X += dx
		u.Y += dy
		out.h.xx += dx * dx
		out.h.xy += dx * dy
		out.h.yy += dy * dy
		out.second.xx += e * dy * dy / d
		out.second.xy -= e * dx * dy / d
		out.second.yy += e * dx * dx / d
	}
	out.h.xx -= u.X * u.X / n
	out.h.xy -= u.X * u.Y / n
	out.h.yy -= u.Y * u.Y / n
	return out
}

func (h cov2) solve(g XY) (XY, bool) {
	det := h.xx*h.yy - h.xy*h.xy
	if !(h.xx > 0 && det > 0) {
		return XY{}, false
	}
	return XY{(h.yy*g.X - h.xy*g.Y) / det, (h.xx*g.Y - h.xy*g.X) / det}, true
}

// descend goes downhill with Levenberg's and Marquardt's damping until it gains
// nothing.
func descend(q []float64, c XY) (XY, float64) {
	at := normalAt(q, c)
	damp := 1e-4
	for range 400 {
		h := at.h
		h.xx *= 1 + damp
		h.yy *= 1 + damp
		step, ok := h.solve(at.g)
		if !ok {
			damp = max(10*damp, 1e-8)
			if damp > 1e12 {
				break
			}
			continue
		}
		next := c.Add(step)
		there := normalAt(q, next)
		if there.sum <= at.sum {
			small := step.Len() <= 1e-6*(1+c.Len())
			c, at, damp = next, there, damp/10
			if small {
				break
			}
			continue
		}
		if damp > 1e12 || step.Len() <= 1e-12*(1+c.Len()) {
			break
		}
		damp *= 10
	}
	return c, at.sum
}

// polish makes Newton steps on the gradient while they shrink.
func polish(q []float64, c XY) (XY, bool) {
	last := math.Inf(1)
	for range 30 {
		at := normalAt(q, c)
		step, ok := at.h.plus(at.second).solve(at.g)
		if !ok {
			return c, last < 1e-6*(1+c.Len())
		}
		size := step.Len()
		if size >= last && last < 1e-6*(1+c.Len()) {
			return c, true
		}
		if size > 1e-3*(1+c.Len()) {
			return c, false
		}
		c, last = c.Add(step), size
		if size == 0 {
			return c, true
		}
	}
	return c, last < 1e-6*(1+c.Len())
}
