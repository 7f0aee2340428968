package bore

import (
	"math"
	"slices"
)

// Surface returns the wall that the readings show, from −1 to 10 m along it as
// Survey takes them. Error: no swept station. Source: the readings themselves;
// straight lines in between are our choice.
func (s *Surveyed) Surface() (*Surface, error) {
	if s.wall == nil {
		return nil, errNoCentre
	}
	return s.wall, nil
}

// draw makes the wall from the stations; nil without a swept one.
func (s *Surveyed) draw() *Surface {
	out := &Surface{}
	for i := range s.Stations {
		if st := &s.Stations[i]; st.Swept {
			out.rings = append(out.rings, ringOf(st))
		}
	}
	if len(out.rings) == 0 {
		return nil
	}
	if s.Axis != nil {
		out.slope = XY{s.Axis.MX, s.Axis.MY}
	}
	return out
}

func ringOf(st *Station) ring {
	type pair struct{ angle, off float64 }
	pairs := make([]pair, 0, len(st.Readings))
	for _, r := range st.Readings {
		if r.LeftOut {
			continue
		}
		d := Polar(r.Clock, r.Radius).Sub(st.Circle.Centre)
		pairs = append(pairs, pair{d.Clock(), d.Len() - st.Circle.R})
	}
	slices.SortFunc(pairs, func(a, b pair) int {
		if a.angle < b.angle {
			return -1
		}
		return 1
	})
	out := ring{z: st.Z, r: st.Circle.R, c: st.Circle.Centre}
	both := make([]float64, 2*len(pairs))
	out.angle, out.off = both[:len(pairs)], both[len(pairs):]
	for i, p := range pairs {
		out.angle[i], out.off[i] = p.angle, p.off
	}
	return out
}

// UWall returns the standard uncertainty of the wall's distance from the datum
// axis at a place that was read, m.
//
//	u = √(max(u_reading, if not known s)² + u_datum²), the greatest of all stations
//
// s is the scatter about the station's circle. It is what a weld plan takes for
// its U, with the spread of the build-up added. Zero without a swept station.
// Errors: none. Source: JCGM 100, 5.1.2.
func (s *Surveyed) UWall() float64 {
	most := 0.0
	for i := range s.Stations {
		st := &s.Stations[i]
		if !st.Swept {
			continue
		}
		for _, r := range st.Readings {
			if r.U > 0 {
				most = max(most, r.U)
			} else {
				most = max(most, st.Circle.Sigma)
			}
		}
	}
	return math.Hypot(most, s.uDatum)
}
