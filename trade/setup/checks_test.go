package setup

import (
	"math"
	"testing"

	"gudgeon/trade/outside"
)

func TestChecks(t *testing.T) { outside.Run(t, "setup", checks()) }

func checks() []outside.Check {
	list := alignmentChecks()
	list = append(list, taperChecks()...)
	list = append(list, thermalChecks()...)
	return append(list, boltChecks()...)
}

func alignmentChecks() []outside.Check {
	const rim = "rim-and-face formula sheet (fdocuments.us); numbers ours"
	rimFace := func(figure func(RimFaceResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := RimAndFace(RimFaceInput{Rim: -0.010 * inch, Face: 0.006 * inch, Circle: 5 * inch, Front: 12 * inch, Rear: 30 * inch})
			return figure(r) / inch, err
		}
	}
	const flatness = "acoem.us, quoting API 610"
	slope := func(rise, run float64, figure func(SlopeResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := Slope(rise, run)
			return figure(r), err
		}
	}
	const jacks = "plane through three points, scipy"
	level := func(figure func(LevelResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := LevelThree(LevelInput{
				Jacks:   [3]Point{{0, 0}, {24 * inch, 0}, {10 * inch, 18 * inch}},
				Heights: [3]float64{0.012 * inch, -0.004 * inch, 0.007 * inch},
			})
			return figure(r), err
		}
	}
	list := []outside.Check{
		{"A2", "offset of a 2 thou TIR", "chiller maker's alignment manual p. 216", outside.Published, "in", 0.001, 1e-15, func() (float64, error) {
			o, err := HalfTIR(0.002 * inch)
			return o / inch, err
		}},
		{"A3", "front support", rim, outside.Synthetic, "in", 0.0194, 1e-12, rimFace(func(r RimFaceResult) float64 { return r.Front })},
		{"A3", "rear support", rim, outside.Synthetic, "in", 0.041, 1e-12, rimFace(func(r RimFaceResult) float64 { return r.Rear })},
		{"A4", "0.15 mm/m as a ratio", flatness, outside.Published, "in/in", 0.00015, 1e-12, slope(0.15*mm, 1, func(r SlopeResult) float64 { return r.Ratio })},
		{"A4", "0.15 mm/m per foot", flatness, outside.Published, "in/ft", 0.0018, 1e-12, slope(0.15*mm, 1, func(r SlopeResult) float64 { return r.PerFoot / inch })},
		{"A13", "slope along x", jacks, outside.Computed, "1", -0.000666666666667, 1e-12, level(func(r LevelResult) float64 { return r.SlopeX })},
		{"A13", "slope along y", jacks, outside.Computed, "1", 9.25925925926e-05, 1e-15, level(func(r LevelResult) float64 { return r.SlopeY })},
		{"A13", "raise jack 1", jacks, outside.Computed, "in", 0, 1e-12, level(func(r LevelResult) float64 { return r.Raise[0] / inch })},
		{"A13", "raise jack 2", jacks, outside.Computed, "in", 0.016, 1e-12, level(func(r LevelResult) float64 { return r.Raise[1] / inch })},
		{"A13", "raise jack 3", jacks, outside.Computed, "in", 0.005, 1e-12, level(func(r LevelResult) float64 { return r.Raise[2] / inch })},
		{"A13", "tilt", jacks, outside.Computed, "°", 0.0385638349823, 4e-11, level(func(r LevelResult) float64 { return r.Tilt / degree })},
		{"A13", "tilt in thou per foot", jacks, outside.Computed, "thou/ft", 8.07679193128, 8e-9, level(func(r LevelResult) float64 { return math.Tan(r.Tilt) * 12000 })},
	}
	for i, x := range []float64{0.5, 1, 5, 12} {
		deg := []float64{0.002387324145, 0.0047746482817, 0.0238732400822, 0.0572957604145}[i]
		sec := []float64{8.594366922, 17.18873381, 85.9436643, 206.2647375}[i]
		mmPerM := []float64{0.04166666667, 0.08333333333, 0.4166666667, 1}[i]
		const src = "atan, scipy"
		list = append(list,
			outside.Check{"A12", "thou/ft in degrees", src, outside.Computed, "°", deg, deg * 1e-9, slope(x*thou, foot, func(r SlopeResult) float64 { return r.Angle / degree })},
			outside.Check{"A12", "thou/ft in arc seconds", src, outside.Computed, "arcsec", sec, sec * 1e-9, slope(x*thou, foot, func(r SlopeResult) float64 { return r.Angle / degree * 3600 })},
			outside.Check{"A12", "thou/ft in mm/m", src, outside.Computed, "mm/m", mmPerM, mmPerM * 1e-9, slope(x*thou, foot, func(r SlopeResult) float64 { return r.PerMetre / mm })})
	}
	for i, z := range []float64{0, 6, 18} {
		want := []float64{0.004, 0.00525, 0.00775}[i]
		list = append(list, outside.Check{"A14", "offset along a tilted axis", "arithmetic", outside.Synthetic, "in", want, 1e-12, func() (float64, error) {
			tilt, err := Slope(0.0025*inch, foot)
			if err != nil {
				return 0, err
			}
			y, err := OffsetAt(0.004*inch, tilt.Angle, z*inch)
			return y / inch, err
		}})
	}
	for i, a := range []float64{10, 20, 30, 40, 50, 60} {
		printed := []float64{0.98, 0.94, 0.86, 0.76, 0.64, 0.50}[i]
		exact := []float64{0.98480775, 0.93969262, 0.86602540, 0.76604444, 0.64278761, 0.5}[i]
		got := func() (float64, error) {
			m, err := Cosine(thou, a*degree)
			return m / thou, err
		}
		const page = "cncexpo.com, indicator cosine (30 and 40° are cut off, not rounded)"
		list = append(list, outside.Check{"A11", "cosine correction", page, outside.Published, "1", printed, 0.01, got},
			outside.Check{"A11", "cosine correction", "cos A", outside.Computed, "1", exact, 5e-9, got})
	}
	return append(list, outside.Check{"A11", "0.004 in at 60°", "cncexpo.com, indicator cosine", outside.Published, "in", 0.002, 1e-12, func() (float64, error) {
		m, err := Cosine(0.004*inch, 60*degree)
		return m / inch, err
	}})
}

func taperChecks() []outside.Check {
	const collard = "D. Collard, Turning and Boring Tapers (1902), table"
	const jones1914 = "F. D. Jones, Turning and Boring (1914)"
	angles := []float64{1, 2, 3, 5, 10, 20, 25, 30, 35, 40, 45, 50}
	printed := []float64{0.01746, 0.0349, 0.05236, 0.08732, 0.17498, 0.35266, 0.44338, 0.5359, 0.6306, 0.72794, 0.82842, 0.93262}
	exact := []float64{0.01745374, 0.03491013, 0.05237184, 0.08732189, 0.17497733, 0.35265396, 0.44338933, 0.53589838, 0.63059758, 0.72794047, 0.82842712, 0.93261532}
	var list []outside.Check
	for i, a := range angles {
		got := func() (float64, error) {
			r, err := TaperOfAngle(a * degree)
			return r.Rate, err
		}
		list = append(list, outside.Check{"A6", "taper per inch of an included angle", collard, outside.Published, "in/in", printed[i], 3e-5, got},
			outside.Check{"A6", "taper per inch of an included angle", "2·tan(A/2)", outside.Computed, "in/in", exact[i], 5e-9, got})
	}
	for i, want := range []float64{0.20952, 0.41880, 0.62832} {
		// The printed foot is twelve times the printed inch, so it errs twelve times as much.
		list = append(list, outside.Check{"A6", "taper per foot of an included angle", collard, outside.Published, "in/ft", want, 12 * 3e-5, func() (float64, error) {
			r, err := TaperOfAngle(angles[i] * degree)
			return r.PerFoot / inch, err
		}})
	}
	tailstock := func(perFoot, length float64) func() (float64, error) {
		return func() (float64, error) {
			o, err := TailstockOffset(perFoot/12, length*inch)
			return o / inch, err
		}
	}
	return append(list,
		outside.Check{"A7", "tailstock offset, 1 in/ft, 9 in", jones1914, outside.Published, "in", 0.375, 1e-12, tailstock(1, 9)},
		outside.Check{"A7", "tailstock offset, 1.5 in/ft, 8 in", jones1914, outside.Published, "in", 0.5, 1e-12, tailstock(1.5, 8)},
		outside.Check{"A8", "taper from 2.5 to 2 in over 6 in", jones1914, outside.Published, "in/in", 1.0 / 12, 1e-12, func() (float64, error) {
			r, err := Taper(2.5*inch, 2*inch, 6*inch)
			return r.Rate, err
		}},
		outside.Check{"A10", "5 in sine bar at 27°", "higherprecision.com, sine bars", outside.Published, "in", 2.270, 5e-4, func() (float64, error) {
			h, err := SineBar(5*inch, 27*degree)
			return h / inch, err
		}},
		outside.Check{"A10", "5 in sine bar at 27°", "L·sin A", outside.Computed, "in", 2.2699524987, 1e-9, func() (float64, error) {
			h, err := SineBar(5*inch, 27*degree)
			return h / inch, err
		}})
}

func thermalChecks() []outside.Check {
	const nplFAQ = "NPL, how do I correct lengths to 20 °C (2007, rev. 2010)"
	fahrenheit := func(f float64) float64 { return (f + 459.67) / perF }
	warm := func(in WarmInput) func() (float64, error) {
		return func() (float64, error) {
			r, err := WarmBore(in)
			return r.Reference / inch, err
		}
	}
	reading := WarmInput{Reading: 6.0035 * inch, PartTemp: fahrenheit(104), PartExpansion: 6.5e-6 * perF, GaugeTemp: fahrenheit(68), GaugeExpand: 6.4e-6 * perF}
	other := reading
	other.GaugeTemp = fahrenheit(80)
	bar := func() (float64, error) {
		l, err := ToReference(500.035*mm, 11.7e-6, twenty+3.7)
		return l / mm, err
	}
	return []outside.Check{
		{"T1", "500.035 mm at 23.7 °C", nplFAQ, outside.Published, "mm", 500.013, 5e-4, bar},
		{"T1", "500.035 mm at 23.7 °C, by division", "the same inputs", outside.Computed, "mm", 500.0133544219, 1e-9, bar},
		{"T2", "expansion of gauge steel", "Swyt, J. Res. NIST 99 (1994)", outside.Published, "1e-6/°C", 11.5, 1e-9, func() (float64, error) {
			for _, p := range warmFunction().Params {
				if p.Name == "gauge_expansion" {
					return p.Default * 1e6, nil
				}
			}
			return 0, nil
		}},
		{"T6", "reference temperature", "ISO 1 (Phillips et al., J. Res. NIST 121, 2016)", outside.Published, "°C", 20, 1e-9, func() (float64, error) { return twenty - 273.15, nil }},
		{"T6", "reference temperature", "ISO 1 (Phillips et al., J. Res. NIST 121, 2016)", outside.Published, "°F", 68, 1e-9, func() (float64, error) { return twenty*perF - 459.67, nil }},
		{"T7", "6.0035 in bore at 104 °F", "division form", outside.Computed, "in", 6.0020955097, 1e-9, warm(reading)},
		{"T7", "the same with the gauge at 80 °F", "division form", outside.Computed, "in", 6.0025564706, 1e-9, warm(other)},
	}
}

func boltChecks() []outside.Check {
	const table = "published bolt torque tables (studylib.net 26058660, paperzz.com 8227666)"
	const threads = "boltport.com thread tables"
	const sae = "SAE J429, restated (mst.edu; china-bolts.com)"
	area := func(d, n float64) func() (float64, error) {
		return func() (float64, error) {
			a, err := TensileArea(d*inch, inch/n, Unified)
			return a / (inch * inch), err
		}
	}
	half := func(grade string, k float64, figure func(BoltResult) float64) func() (float64, error) {
		return func() (float64, error) {
			g, err := gradeNamed(grade, 0.5*inch)
			if err != nil {
				return 0, err
			}
			r, err := TorqueFor(BoltInput{Diameter: 0.5 * inch, Pitch: inch / 13, Thread: Unified, Grade: g, NutFactor: k}, 0.75)
			return figure(r), err
		}
	}
	pull := func(r BoltResult) float64 { return r.Pull / lbf }
	inLb := func(r BoltResult) float64 { return r.Torque / (lbf * inch) }
	ftLb := func(r BoltResult) float64 { return r.Torque / (lbf * foot) }
	list := []outside.Check{
		{"B-1", "stress area of 1/2-13", table, outside.Published, "in²", 0.1419, 5e-5, area(0.5, 13)},
		{"B-1", "stress area of 3/4-10", table, outside.Published, "in²", 0.334, 5.1e-4, area(0.75, 10)},
		{"B-1", "stress area of 3/4-10, unrounded", "A = 0.7854(D - 0.9743/n)²", outside.Computed, "in²", 0.3345, 5e-5, area(0.75, 10)},
		{"B-2", "high-strength form, 1/2-13", threads, outside.Computed, "in²", 0.13757, 5e-6, func() (float64, error) {
			a, err := TensileAreaStrong(0.4435*inch, inch/13)
			return a / (inch * inch), err
		}},
		{"B-3", "1/2-13 grade 5, pull at 75 % of proof", table, outside.Published, "lbf", 9050, 5, half(sae5, 0.20, pull)},
		{"B-3", "the same, unrounded", "P = 0.75·proof·A", outside.Computed, "lbf", 9046, 0.5, half(sae5, 0.20, pull)},
		{"B-3", "torque at K = 0.20", "T = K·D·P", outside.Computed, "lbf·in", 905, 0.5, half(sae5, 0.20, inLb)},
		{"B-3", "torque at K = 0.20", table, outside.Published, "lbf·ft", 75, 0.5, half(sae5, 0.20, ftLb)},
		{"B-3", "torque at K = 0.15", "T = K·D·P", outside.Computed, "lbf·in", 678, 0.5, half(sae5, 0.15, inLb)},
		{"B-3", "torque at K = 0.15 (the table prints 55)", "T = K·D·P", outside.Computed, "lbf·ft", 56.5, 0.05, half(sae5, 0.15, ftLb)},
		{"B-4", "1/2-13 grade 8, pull at 75 % of proof", "P = 0.75·proof·A", outside.Computed, "lbf", 12771, 0.5, half(sae8, 0.20, pull)},
		{"B-4", "torque at K = 0.20", "T = K·D·P", outside.Computed, "lbf·in", 1277, 0.5, half(sae8, 0.20, inLb)},
		{"B-4", "torque at K = 0.20", table, outside.Published, "lbf·ft", 106, 0.5, half(sae8, 0.20, ftLb)},
		{"B-4", "torque at K = 0.15", "T = K·D·P", outside.Computed, "lbf·in", 958, 0.5, half(sae8, 0.15, inLb)},
	}
	for _, row := range []struct {
		grade                       string
		diameter                    float64
		proof, yieldStress, tensile float64
	}{
		{sae2, 0.5, 55, 57, 74}, {sae2, 0.75, 55, 57, 74}, {sae5, 1, 85, 92, 120}, {sae5, 1.25, 74, 81, 105}, {sae8, 1, 120, 130, 150},
	} {
		read := func(figure func(Grade) float64) func() (float64, error) {
			return func() (float64, error) {
				g, err := gradeNamed(row.grade, row.diameter*inch)
				return figure(g) / ksi, err
			}
		}
		list = append(list,
			outside.Check{"B-6", row.grade + " proof", sae, outside.Published, "ksi", row.proof, 1e-9, read(func(g Grade) float64 { return g.Proof })},
			outside.Check{"B-6", row.grade + " yield", sae, outside.Published, "ksi", row.yieldStress, 1e-9, read(func(g Grade) float64 { return g.Yield })},
			outside.Check{"B-6", row.grade + " tensile", sae, outside.Published, "ksi", row.tensile, 1e-9, read(func(g Grade) float64 { return g.Tensile })})
	}
	return append(list, outside.Check{"B-6", "class 8.8 proof, M20", "ISO 898-1", outside.Memory, "MPa", 600, 1e-9, func() (float64, error) {
		g, err := gradeNamed(m88, 20*mm)
		return g.Proof / mpa, err
	}})
}

func gradeNamed(name string, diameter float64) (Grade, error) {
	for i, n := range GradeNames() {
		if n == name {
			return GradeAt(float64(i), diameter)
		}
	}
	return GradeAt(-1, diameter)
}
