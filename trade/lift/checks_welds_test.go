package lift

import (
	"math"

	"gudgeon/trade/outside"
)

const (
	srcMinFillet = "AISC 360 Table J2.4, https://www.scribd.com/document/380231435/aisc-weld"
	srcLongWeld  = "AISC 360 J2.2b, https://123dok.com/id/article/minimum-size-of-fillet-welds.11940603"
	srcJ1        = "AISC Design Example J.1 (V14), https://fr.scribd.com/document/361764042/AISC-14th-Ed-Design-Examples-Spec-Ch-J"
	srcEx92      = "Shigley 9th ed. ex. 9-2 p. 492, https://digilib.universitaspertamina.ac.id/ebook/Shigley's%20Mechanical%20Engineering%20Design/files/basic-html/page518.html"
	srcShigleyW  = "Shigley problem solutions, https://zanotowane.pl/1131/6322"
	srcShigleyW2 = "Shigley problem solutions, https://www.docsity.com/pt/docs/solution-shigley-ed-10-1/5573600/"
	srcRoundWeld = "Shigley solutions ch. 9, https://www.coursehero.com/file/6628619/4-ch-09-Mechanical-Design-budynas-SM-ch09/"
	srcCWeld     = "teaching note ex. 5.4, https://tr.scribd.com/document/353848955/Begineers-Guide-Connection-Design4"
	srcLines     = "Shigley 9th ed. Table 9-2 p. 488, https://digilib.universitaspertamina.ac.id/ebook/Shigley's%20Mechanical%20Engineering%20Design/files/basic-html/page513.html"
	srcPolar     = "weld line table 9.1, http://what-when-how.com/Tutorial/topic-445rfiih/Design-of-Modern-Steel-Railway-Bridges-381.html"
)

func weldChecks() []outside.Check {
	least := func(t float64) func() (float64, error) {
		return func() (float64, error) { x, err := FilletLeastLeg(t * inch); return in(inch, x, err) }
	}
	most := func(t float64) func() (float64, error) {
		return func() (float64, error) { x, err := FilletMostLeg(t * inch); return in(inch, x, err) }
	}
	strength := func(leg float64, basis Basis, times float64) func() (float64, error) {
		return func() (float64, error) {
			x, err := FilletStrength(leg*inch, 70*ksi, basis)
			return in(kip/inch, times*x, err)
		}
	}
	length := func(kips, share float64) func() (float64, error) {
		return func() (float64, error) {
			x, err := FilletStrength(3./16*inch, 70*ksi, WeldNominal)
			return kips / (share * x / (kip / inch)), err
		}
	}
	allowed := func(basis Basis) func() (float64, error) {
		return func() (float64, error) { x, err := WeldStress(70*ksi, basis); return in(ksi, x, err) }
	}
	fillet := func(legs float64, of func(FilletResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := CheckFillet(Fillet{Load: 1000, Leg: 0.005, Length: 0.005 * legs, Runs: 2, EndLoaded: true, Electrode: 70 * ksi, Basis: WeldBTHB})
			return of(r), err
		}
	}
	beta := func(r FilletResult) float64 { return r.Beta }
	legs := func(r FilletResult) float64 { return r.EffectiveLength / 0.005 }
	effective := func(r FilletResult) float64 { return r.EffectiveLeg / 0.005 }
	// The textbook solves for force; here its force must give back its stress.
	stressOf := func(force, leg, length, unit float64) func() (float64, error) {
		return func() (float64, error) {
			g, err := GroupWelds([]WeldLine{{0, 0, 0, length}})
			return in(unit, g.StressAt(0, 0, weldThroat*leg, InPlane{FY: force}), err)
		}
	}
	return []outside.Check{
		{"W1", "least leg for 1/4 in, inclusive", srcMinFillet, outside.Published, "in", 0.125, 1e-9, least(0.25)},
		{"W1", "least leg just over 1/4 in", srcMinFillet, outside.Published, "in", 0.1875, 1e-9, least(0.251)},
		{"W1", "least leg for 1/2 in, inclusive", srcMinFillet, outside.Published, "in", 0.1875, 1e-9, least(0.5)},
		{"W1", "least leg just over 1/2 in", srcMinFillet, outside.Published, "in", 0.25, 1e-9, least(0.501)},
		{"W1", "least leg for 3/4 in, inclusive", srcMinFillet, outside.Published, "in", 0.25, 1e-9, least(0.75)},
		{"W1", "least leg just over 3/4 in", srcMinFillet, outside.Published, "in", 0.3125, 1e-9, least(0.751)},
		{"W2", "greatest leg on a 3/16 in edge", srcMinFillet, outside.Published, "in", 0.1875, 1e-9, most(0.1875)},
		{"W2", "greatest leg on a 1/4 in edge", srcMinFillet, outside.Published, "in", 0.1875, 1e-9, most(0.25)},
		{"W2", "greatest leg on a 1/2 in edge", srcMinFillet, outside.Published, "in", 0.4375, 1e-9, most(0.5)},
		{"W3", "leg that counts in a run 2 legs long", srcLongWeld, outside.Published, "legs", 0.5, 1e-9, fillet(2, effective)},
		{"W3", "leg that counts in a run 4 legs long", srcLongWeld, outside.Published, "legs", 1, 1e-9, fillet(4, effective)},
		{"W4", "long-weld factor at 100 legs", srcLongWeld, outside.Published, "1", 1, 1e-9, fillet(100, beta)},
		{"W4", "long-weld factor at 200 legs", srcLongWeld, outside.Published, "1", 0.8, 1e-9, fillet(200, beta)},
		{"W4", "effective length past 300 legs", srcLongWeld, outside.Published, "legs", 180, 1e-6, fillet(400, legs)},
		{"W5", "3/16 in, E70, nominal", srcJ1, outside.Published, "kip/in", 5.57, 0.005, strength(3./16, WeldNominal, 1)},
		{"W5", "length for 200 kip, LRFD", srcJ1, outside.Published, "in", 47.9, 0.05, length(200, 0.75)},
		{"W5", "length for 133 kip, ASD", srcJ1, outside.Computed, "in", 47.8, 0.05, length(133, 0.5)},
		{"W6", "one sixteenth, E70, ASD", srcJ1, outside.Computed, "kip/in", 0.928, 0.0005, strength(1./8, Weld030, 0.5)},
		{"W6", "one sixteenth, E70, LRFD", srcJ1, outside.Computed, "kip/in", 1.392, 0.0005, strength(1./8, WeldLRFD, 0.5)},
		{"W7", "3/8 in, E70, welding code", srcEx92, outside.Published, "kip/in", 5.57, 0.005, strength(0.375, Weld030, 1)},
		{"W7", "3/8 in, E70, 4 in long; source multiplies the rounded 5.57", srcEx92, outside.Published, "kip", 22.28, 0.01, strength(0.375, Weld030, 4)},
		{"W8", "5/16 in, 4 in, 17.7 kip", srcShigleyW, outside.Published, "ksi", 20, 0.06, stressOf(17.7*kip, 5./16*inch, 4*inch, ksi)},
		{"W8", "5/16 in, E70, 4 in", srcShigleyW, outside.Published, "kip", 18.56, 0.005, strength(5./16, Weld030, 4)},
		{"W9", "5 mm, 100 mm, 49.5 kN", srcShigleyW2, outside.Published, "MPa", 140, 0.15, stressOf(49500, 0.005, 0.1, megaPa)},
		{"W9", "5/16 in, 4 in, 22.1 kip", srcShigleyW2, outside.Published, "ksi", 25, 0.06, stressOf(22.1*kip, 5./16*inch, 4*inch, ksi)},
		{"W9", "5/16 in, 8 in, 44.2 kip", srcShigleyW2, outside.Published, "ksi", 25, 0.06, stressOf(44.2*kip, 5./16*inch, 8*inch, ksi)},
		{"L15", "E70 allowed, category A", "ASME BTH-1 fillet allowable", outside.Memory, "ksi", 17.5, 0.005, allowed(WeldBTHA)},
		{"L15", "E70 allowed, category B", "ASME BTH-1 fillet allowable", outside.Memory, "ksi", 11.67, 0.005, allowed(WeldBTHB)},
		{"L15", "1/4 in, E70, category B", "ASME BTH-1 fillet allowable", outside.Memory, "kip/in", 2.062, 0.0006, strength(0.25, WeldBTHB, 1)},
	}
}

func weldGroupChecks() []outside.Check {
	property := func(p WeldPattern, b, d float64, of func(WeldGroup) float64) func() (float64, error) {
		return func() (float64, error) {
			runs, n := p.lines(b, d)
			g, err := GroupWelds(runs[:n])
			return of(g), err
		}
	}
	ix := func(g WeldGroup) float64 { return g.IX }
	j := func(g WeldGroup) float64 { return g.J }
	const b, d = 0.3, 0.5
	c := func(of func(WeldGroup) float64) func() (float64, error) {
		return property(OpenC, 4*inch, 11*inch, of)
	}
	const throat = 0.5 * weldThroat * inch
	corner := func(x, y float64) func() (float64, error) {
		return c(func(g WeldGroup) float64 {
			sin, cos := math.Sincos(10 * degree)
			load := InPlane{FX: -52 * kip * sin, FY: -52 * kip * cos, Torque: -52 * kip * 8 * inch}
			return g.StressAt(x*inch, y*inch, throat, load) / ksi
		})
	}
	round := func(torque float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := CheckRoundWeld(RoundWeld{Bar: 0.08, Leg: 0.005, Torque: torque, Electrode: 70 * ksi, Basis: Weld030})
			return in(megaPa, r.Shear, err)
		}
	}
	return []outside.Check{
		{"W14", "one line, d³/12", srcLines, outside.Published, "m³", d * d * d / 12, 1e-12, property(OneUpright, b, d, ix)},
		{"W14", "two upright lines, d³/6", srcLines, outside.Published, "m³", d * d * d / 6, 1e-12, property(TwoUpright, b, d, ix)},
		{"W14", "two level lines, b·d²/2", srcLines, outside.Published, "m³", b * d * d / 2, 1e-12, property(TwoAcross, b, d, ix)},
		{"W14", "box, d²(3b + d)/6", srcLines, outside.Published, "m³", d * d * (3*b + d) / 6, 1e-12, property(ClosedBox, b, d, ix)},
		{"W14", "one line, polar d³/12", srcPolar, outside.Published, "m³", d * d * d / 12, 1e-12, property(OneUpright, b, d, j)},
		{"W14", "two lines, polar d(3b² + d²)/6", srcPolar, outside.Published, "m³", d * (3*b*b + d*d) / 6, 1e-12, property(TwoUpright, b, d, j)},
		{"W14", "box, polar (b + d)³/6", srcPolar, outside.Published, "m³", (b + d) * (b + d) * (b + d) / 6, 1e-12, property(ClosedBox, b, d, j)},
		{"W13", "C-weld, centroid", srcCWeld, outside.Published, "in", 0.842, 0.0005, c(func(g WeldGroup) float64 { return g.X / inch })},
		{"W13", "C-weld, throat area", srcCWeld, outside.Published, "in²", 6.72, 0.005, c(func(g WeldGroup) float64 { return throat * g.Length / (inch * inch) })},
		{"W13", "C-weld, polar moment; source rounds the throat to 0.354", srcCWeld, outside.Published, "in⁴", 135.15, 0.07, c(func(g WeldGroup) float64 { return throat * g.J / math.Pow(inch, 4) })},
		{"W13", "C-weld, tip A", srcCWeld, outside.Published, "ksi", 23.3, 0.05, corner(4, 11)},
		{"W13", "C-weld, corner B", srcCWeld, outside.Published, "ksi", 16.4, 0.05, corner(0, 11)},
		{"W13", "C-weld, corner C", srcCWeld, outside.Published, "ksi", 19.0, 0.06, corner(0, 0)},
		{"W13", "C-weld, tip D", srcCWeld, outside.Published, "ksi", 25.2, 0.05, corner(4, 0)},
		{"W12", "round weld, stress per kN", srcRoundWeld, outside.Published, "MPa", 2.82, 0.01, round(100)},
		{"W12", "round weld, force at 140 MPa; source prints 49.2, its own figures give 49.6 to 49.8", srcRoundWeld, outside.Computed, "kN", 49.7, 0.1, func() (float64, error) { s, err := round(100)(); return 140 / s, err }},
	}
}
