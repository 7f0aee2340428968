package bore

import (
	"fmt"
	"math"

	"gudgeon/trade/outside"
)

// tiltChecks is the three-station bore: circles, line of centres, cylinder.
func tiltChecks() []outside.Check {
	want := expected[tiltWant]("fit_expected", "S5_tilt3x24")
	source := "method: C. M. Shakarji, J. Res. NIST 103 (1998) 633-641, https://pmc.ncbi.nlm.nih.gov/articles/PMC4890955/ ; data synthetic, seed 105; value: " + reference
	var out []outside.Check
	add := func(what, unit string, want float64, got func(s *Surveyed) float64) {
		out = append(out, outside.Check{"S5", what, source, outside.Synthetic, unit, want, 1e-9, func() (float64, error) {
			s, err := Survey(Readings{Sweeps: tilted()})
			if err != nil {
				return 0, err
			}
			return got(s), nil
		}})
	}
	for i, st := range want.Stations {
		at := fmt.Sprintf("station %d, ", i+1)
		add(at+"centre x", "in", st.Xc, func(s *Surveyed) float64 { return s.Stations[i].Circle.Centre.X / in })
		add(at+"centre y", "in", st.Yc, func(s *Surveyed) float64 { return s.Stations[i].Circle.Centre.Y / in })
		add(at+"radius", "in", st.R, func(s *Surveyed) float64 { return s.Stations[i].Circle.R / in })
		add(at+"sum of squares", "in²", st.SumSq, func(s *Surveyed) float64 { return s.Stations[i].Circle.SumSq / in / in })
		add(at+"LSCI roundness", "in", st.LSC, func(s *Surveyed) float64 { return s.Stations[i].Round.LSCI / in })
	}
	l, c := want.Line, want.Cylinder
	add("line of centres, x at z = 0", "in", l.X0, func(s *Surveyed) float64 { return s.Axis.X0 / in })
	add("line of centres, y at z = 0", "in", l.Y0, func(s *Surveyed) float64 { return s.Axis.Y0 / in })
	add("line of centres, slope x", "1", l.MX, func(s *Surveyed) float64 { return s.Axis.MX })
	add("line of centres, slope y", "1", l.MY, func(s *Surveyed) float64 { return s.Axis.MY })
	add("tilt", "°", l.Tilt, func(s *Surveyed) float64 { return s.Axis.Tilt().Degrees() })
	add("tilt", "thou/ft", l.ThouFt, func(s *Surveyed) float64 { return s.Axis.Tilt().ThouPerFoot() })
	add("cylinder, x at z = 0", "in", c.X0, func(s *Surveyed) float64 { return s.Cylinder.X0 / in })
	add("cylinder, y at z = 0", "in", c.Y0, func(s *Surveyed) float64 { return s.Cylinder.Y0 / in })
	add("cylinder, slope x", "1", c.MX, func(s *Surveyed) float64 { return s.Cylinder.MX })
	add("cylinder, slope y", "1", c.MY, func(s *Surveyed) float64 { return s.Cylinder.MY })
	add("cylinder, radius", "in", c.R, func(s *Surveyed) float64 { return s.Cylinder.R / in })
	add("cylinder, sum of squares", "in²", c.SumSq, func(s *Surveyed) float64 { return s.Cylinder.SumSq / in / in })
	add("cylinder, greatest less least distance", "in", c.Width, func(s *Surveyed) float64 { return s.Cylinder.Width / in })
	return out
}

// scale makes the lengths of a check metres: large ones are mm, small ones inches.
func scale(r float64) (float64, string) {
	if r > 10 {
		return 0.001, "mm"
	}
	return in, "in"
}

// geometryChecks is the off-centre bore: lens, lune, polar radius, volume.
func geometryChecks() []outside.Check {
	lensOf := func(id, what, source string, a, b, d, want float64) outside.Check {
		return outside.Check{id, what, source, outside.Published, "mm²", want, 1e-12 * want, func() (float64, error) {
			v, err := LensArea(a*0.001, b*0.001, d*0.001)
			return v * 1e6, err
		}}
	}
	out := []outside.Check{
		lensOf("L1", "lens area, radii 1 and 2, centres 2 apart", "programming exercise CGL_7_I, sample 1, http://47.110.135.197/problem.php?id=8569", 1, 2, 2, 1.40306643968573875104),
		lensOf("L2", "lens area, the small circle inside", "programming exercise CGL_7_I, sample 2, http://47.110.135.197/problem.php?id=8569", 1, 3, 1, 3.14159265358979311600),
		lensOf("L4", "lens area of unit circles 1 apart", "2π/3 − √3/2, exact", 1, 1, 1, 1.2283696986087568),
	}
	want := expected[geometryWant]("geometry_expected", "")
	source := "plane geometry; value: " + reference
	ids := []string{"G1", "G2", "G4", "G6"}
	for i, l := range want.Lunes {
		k, unit := scale(l.RNew)
		out = append(out, outside.Check{ids[i], "area removed", source, outside.Synthetic, unit + "²", l.Area, 1e-9 * l.Area, func() (float64, error) {
			v, err := LuneArea(2*l.ROld*k, 2*l.RNew*k, l.E*k)
			return v / k / k, err
		}}, outside.Check{ids[i], "lens area", source, outside.Synthetic, unit + "²", l.Lens, 1e-9 * l.Lens, func() (float64, error) {
			v, err := LensArea(l.ROld*k, l.RNew*k, l.E*k)
			return v / k / k, err
		}})
		for _, p := range l.Radius {
			what := fmt.Sprintf("old wall at %.0f°", p.Theta)
			out = append(out, outside.Check{ids[i], what, source, outside.Synthetic, unit, p.ROld, 1e-9 * p.ROld, func() (float64, error) {
				v, err := OldRadius(2*l.ROld*k, l.E*k, (p.Theta-l.Phi)*deg)
				return v / k, err
			}})
		}
	}
	ids = []string{"V1", "V2", "V4", "V6"}
	for i, v := range want.Volumes {
		k, unit := scale(v.RNew)
		lune := TaperingLune{WornNear: 2 * v.R0 * k, WornFar: 2 * v.RL * k, Finish: 2 * v.RNew * k, Near: XY{v.E0 * k, 0}, Far: XY{v.EL * k, 0}, Length: v.L * k}
		out = append(out, outside.Check{ids[i], "volume of a tapering lune", source, outside.Synthetic, unit + "³", v.Volume, 1e-9 * v.Volume, func() (float64, error) {
			got, err := LuneVolume(lune)
			return got.Volume / k / k / k, err
		}})
		for n, at := range v.Breaks {
			if v.E0+(v.EL-v.E0)*at/v.L == 0 {
				continue // V6: the centres meet; the area is smooth there
			}
			out = append(out, outside.Check{ids[i], fmt.Sprintf("depth %d at which the lune opens or closes", n), source, outside.Synthetic, unit, at, 1e-9 * v.L, func() (float64, error) {
				return nearestBreak(&lune, at/v.L) * v.L, nil
			}})
		}
	}
	return out
}

// nearestBreak is the break of the integral nearest to a share of the length.
func nearestBreak(lune *TaperingLune, at float64) float64 {
	best := math.Inf(1)
	cuts := lune.breaks()
	for _, b := range cuts.at[:cuts.n] {
		if math.Abs(b-at) < math.Abs(best-at) {
			best = b
		}
	}
	return best
}

// studentChecks is the tail of Student's distribution behind the outlier test.
func studentChecks() []outside.Check {
	var out []outside.Check
	for _, row := range []struct {
		nu   int
		t    float64
		tail float64
	}{{1, 12.71, 0.05}, {5, 2.57, 0.05}, {10, 2.23, 0.05}, {20, 2.09, 0.05}, {5, 2.65, 0.0455}, {10, 2.28, 0.0455}, {20, 2.13, 0.0455},
		{5, 4.03, 0.01}, {10, 3.17, 0.01}, {16, 2.92, 0.01}} {
		out = append(out, outside.Check{"M-4", fmt.Sprintf("chance of |t| over %.2f with %d degrees of freedom", row.t, row.nu), "NIST TN 1297 (1994) Table B.1, https://www.nist.gov/physical-measurement-laboratory/nist-tn-1297-guidelines-appendix-b-table-b1",
			outside.Published, "1", row.tail, 0.012 * row.tail, func() (float64, error) { return tail(row.t, row.nu), nil }}) // t is given to 0.005
	}
	return out
}

func inspectionChecks() []outside.Check {
	jones := "F. D. Jones, Turning and Boring (1914)"
	lean := func(thouPerFoot, wantDeg float64) outside.Check {
		return outside.Check{"A12", fmt.Sprintf("%g thou/ft in degrees", thouPerFoot), "deg = atan(x/12000); value: " + reference, outside.Synthetic, "°", wantDeg, 1e-9 * wantDeg, func() (float64, error) {
			l, err := LeanOf(XY{}, XY{thouPerFoot * thou1, 0}, 12*in)
			return l.Angle / deg, err
		}}
	}
	return []outside.Check{
		{"M-11", "roundness from radii 25.0100 and 25.0060: the radial gap of two concentric circles", "definition: ASME Y14.5M 6.4.3 as restated at https://www.joshuanava.biz/dimensioning-tolerancing/info-lpa.html ; numbers invented", outside.Synthetic, "mm", 0.0040, 1e-9, func() (float64, error) {
			var p []XY
			for i := range 24 { // a bore with twelve lobes between the two radii
				p = append(p, Polar(float64(i)*15*deg, []float64{25.0100, 25.0060}[i%2]))
			}
			c, err := FitCircle(p, nil)
			if err != nil {
				return 0, err
			}
			r, err := RoundnessOf(p, &c, 0)
			return r.MZCI.Width(), err
		}},
		{"M-12", "out-of-round from diameters 3.0012 and 3.0004", "two-point form", outside.Memory, "in", 0.0004, 1e-12, func() (float64, error) {
			v, err := OutOfRound(3.0012*in, 3.0004*in)
			return v / in, err
		}},
		{"A8", "taper from 2.5 to 2 in over 6 in", jones, outside.Published, "in/in", -1.0 / 12, 1e-12, func() (float64, error) {
			return Taper(2.5*in, 2*in, 6*in)
		}},
		lean(0.5, 0.002387324145), lean(1, 0.0047746482817), lean(5, 0.0238732400822), lean(12, 0.0572957604145),
		{"A14", "offset .004 in and .0025 in/ft, at 18 in", "arithmetic", outside.Synthetic, "in", 0.00775, 1e-12, func() (float64, error) {
			l := LineThrough(XY{0.004 * in, 0}, XY{0.0065 * in, 0}, 12*in)
			return l.At(18*in).X / in, nil
		}},
	}
}
