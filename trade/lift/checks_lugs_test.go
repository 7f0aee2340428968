package lift

import "gudgeon/trade/outside"

const (
	srcLugSheet  = "unsigned lug sheet to ASME BTH-1-2005, https://id.scribd.com/document/355418702/Lug-Design-R4-xls"
	srcLugSheet2 = "unsigned lug sheet to ASME BTH-1-2014, https://ar.scribd.com/document/334153731/ASME-BTH-1-Lifting-Lug-Design"
	srcD7        = "AISC Design Example D.7 (V14), https://scribd.com/document/429295284/d7"
)

// lugSheet is the lug of the first published sheet; lugSheet2 of the second.
func lugSheet() PlateLug {
	return PlateLug{Load: 1000, Thickness: 0.75 * inch, Side: 1.66 * inch, Beyond: 3.3125 * inch, Hole: 1.6875 * inch, Pin: 1.375 * inch,
		EndRadius: 4.15625 * inch, Yield: 36 * ksi, Ultimate: 58 * ksi, Category: CategoryA}
}

func lugSheet2() PlateLug {
	return PlateLug{Load: 1000, Thickness: 0.75 * inch, Side: 1.0625 * inch, Beyond: 1.0625 * inch, Hole: 0.875 * inch, Pin: 0.75 * inch,
		Yield: 36 * ksi, Ultimate: 58 * ksi, Category: CategoryB}
}

func lugChecks() []outside.Check {
	lug := func(in PlateLug, of func(PlateLugResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := CheckPlateLug(in)
			if err != nil {
				return 0, err
			}
			return of(r), nil
		}
	}
	capacity := func(mode int) func(PlateLugResult) float64 {
		return func(r PlateLugResult) float64 { return r.Checks[mode].Capacity / kip }
	}
	effective := func(r PlateLugResult) float64 { return r.Effective / inch }
	clearance := func(r PlateLugResult) float64 { return r.Clearance }
	area := func(r PlateLugResult) float64 { return r.ShearArea / (inch * inch) }
	square := lugSheet()
	square.EndRadius = 0
	factor := func(c Category) func() (float64, error) { return func() (float64, error) { return c.Factor() } }
	return []outside.Check{
		{"L8", "effective width", srcLugSheet, outside.Published, "in", 1.62, 0.005, lug(lugSheet(), effective)},
		{"L8", "clearance factor", srcLugSheet, outside.Published, "1", 0.841, 0.0005, lug(lugSheet(), clearance)},
		{"L8", "tension", srcLugSheet, outside.Published, "kip", 49.30, 0.005, lug(lugSheet(), capacity(LugTension))},
		{"L9", "single-plane fracture", srcLugSheet, outside.Published, "kip", 68.76, 0.005, lug(lugSheet(), capacity(LugFracture))},
		{"L10", "shear area", srcLugSheet, outside.Published, "in²", 5.23, 0.005, lug(lugSheet(), area)},
		{"L10", "double-plane shear", srcLugSheet, outside.Published, "kip", 88.41, 0.005, lug(lugSheet(), capacity(LugShear))},
		{"L10", "double-plane shear, square end", srcLugSheet, outside.Computed, "kip", 89.12, 0.25, lug(square, capacity(LugShear))},
		{"L11", "bearing", srcLugSheet, outside.Published, "kip", 23.20, 0.005, lug(lugSheet(), capacity(LugBearing))},
		{"L13", "clearance factor, second sheet", srcLugSheet2, outside.Published, "1", 0.8583533, 1e-6, lug(lugSheet2(), clearance)},
		{"L13", "effective width, second sheet", srcLugSheet2, outside.Published, "in", 0.9321, 0.00005, lug(lugSheet2(), effective)},
		{"L13", "tension, second sheet", srcLugSheet2, outside.Published, "kip", 19.3343, 0.0001, lug(lugSheet2(), capacity(LugTension))},
		{"L13", "single-plane fracture, second sheet", srcLugSheet2, outside.Published, "kip", 17.0312, 0.0001, lug(lugSheet2(), capacity(LugFracture))},
		{"L13", "bearing, second sheet", srcLugSheet2, outside.Computed, "kip", 8.44, 0.005, lug(lugSheet2(), capacity(LugBearing))},
		{"L13", "shear area, second sheet", srcLugSheet2, outside.Computed, "in²", 1.774, 0.0005, lug(lugSheet2(), area)},
		{"L13", "double-plane shear, second sheet", srcLugSheet2, outside.Computed, "kip", 20.00, 0.005, lug(lugSheet2(), capacity(LugShear))},
		{"L14", "design factor, category A", "ASME BTH-1", outside.Memory, "1", 2, 1e-12, factor(CategoryA)},
		{"L14", "design factor, category B", "ASME BTH-1", outside.Memory, "1", 3, 1e-12, factor(CategoryB)},
	}
}

func aiscChecks() []outside.Check {
	example := AISCLug{Load: 1000, Thickness: 0.5 * inch, Width: 4.25 * inch, Beyond: 2.25 * inch, Hole: 1.03 * inch, Pin: inch, Yield: 36 * ksi, Ultimate: 58 * ksi}
	lug := func(of func(AISCLugResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := CheckAISCLug(example)
			if err != nil {
				return 0, err
			}
			return of(r), nil
		}
	}
	nominal := func(mode int) func() (float64, error) {
		return lug(func(r AISCLugResult) float64 { return r.Nominal[mode] / kip })
	}
	allowed := func(mode int) func() (float64, error) {
		return lug(func(r AISCLugResult) float64 { return r.Checks[mode].Capacity / kip })
	}
	factored := func(mode int, phi float64) func() (float64, error) {
		return lug(func(r AISCLugResult) float64 { return phi * r.Nominal[mode] / kip })
	}
	return []outside.Check{
		{"L1", "effective width", srcD7, outside.Published, "in", 1.61, 0.005, lug(func(r AISCLugResult) float64 { return r.Effective / inch })},
		{"L1", "tension, nominal", srcD7, outside.Published, "kip", 93.4, 0.1, nominal(AISCTension)},
		{"L2", "shear rupture, nominal", srcD7, outside.Published, "kip", 95.7, 0.1, nominal(AISCShear)},
		{"L3", "bearing, nominal", srcD7, outside.Published, "kip", 32.4, 0.1, nominal(AISCBearing)},
		{"L4", "gross yielding, nominal; the source rounded its area", srcD7, outside.Published, "kip", 76.7, 0.25, nominal(AISCYielding)},
		{"L5", "tension, ASD", srcD7, outside.Computed, "kip", 46.7, 0.05, allowed(AISCTension)},
		{"L5", "shear rupture, ASD", srcD7, outside.Computed, "kip", 47.9, 0.05, allowed(AISCShear)},
		{"L5", "bearing, ASD", srcD7, outside.Computed, "kip", 16.2, 0.05, allowed(AISCBearing)},
		{"L5", "gross yielding, ASD", srcD7, outside.Computed, "kip", 45.8, 0.05, allowed(AISCYielding)},
		{"L5", "tension, LRFD", srcD7, outside.Computed, "kip", 70.0, 0.05, factored(AISCTension, 0.75)},
		{"L5", "shear rupture, LRFD", srcD7, outside.Computed, "kip", 71.8, 0.05, factored(AISCShear, 0.75)},
		{"L5", "bearing, LRFD", srcD7, outside.Computed, "kip", 24.3, 0.05, factored(AISCBearing, 0.75)},
		{"L5", "gross yielding, LRFD; 68.85 exactly", srcD7, outside.Computed, "kip", 68.9, 0.05 + 1e-9, factored(AISCYielding, 0.9)},
		{"L7", "shape rules of the example: just met", "AISC 360-10 Comm. fig. C-D5.1, https://id.scribd.com/document/56516420/AISC-360-2010-pin", outside.Computed, "1", 0.993, 0.0006, lug(func(r AISCLugResult) float64 { return r.Dimensions })},
	}
}

func curvedChecks() []outside.Check {
	const (
		srcB1 = "Shigley 9th ed. fig. 3-35 p. 120, https://digilib.universitaspertamina.ac.id/ebook/Shigley's%20Mechanical%20Engineering%20Design/files/basic-html/page145.html"
		srcB2 = "Hibbeler, eye hook, https://holooly.com/solutions/the-eye-hook-has-the-dimensions-shown-if-it-supports-a-cable-loading-of-80-kn-determine-the-maximum-normal-stress-at-section-and-sketch-the-stress-distribution-acting-over-the-cross-section"
		srcB4 = "frame problem, https://studylib.net/doc/27659786/t-11"
		srcB5 = "utility hook problem, https://www.transtutors.com/questions/a-utility-hook-was-formed-from-a-round-rod-of-diameter-d-20-mm-into-the-geometry-sho-13332665.htm"
		srcB7 = "Mechanical Engineer's Data Handbook p. 29, https://digilib.universitaspertamina.ac.id/ebook/Mechanical%20Engineer's%20Data%20Handbook/files/basic-html/page40.html"
		srcB8 = "thick ring problem, https://askfilo.com/user-question-answers-smart-solutions/example-1-a-circular-ring-of-circular-cross-section-8-cm-in-3338353336313235"
	)
	newton := 1 / 9.80665
	b1 := Hook{5000 * pound, Rectangle, 4 * inch, 0.75 * inch, 2 * inch, 4 * inch}
	b2 := Hook{800 * pound, Round, 1.25 * inch, 0, 2.5 * inch, 3.125 * inch}
	b4 := Hook{9500 * newton, Rectangle, 0.05, 0.05, 0.03, 0.155}
	b5 := Hook{4000 * newton, Round, 0.02, 0, 0.0375, 0.0475}
	face := func(h Hook, outside bool, unit float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := HookStress(h)
			if outside {
				return in(unit, r.Outside, err)
			}
			return in(unit, r.Inside, err)
		}
	}
	ring := func(r Ring, of func(RingResult) float64) func() (float64, error) {
		return func() (float64, error) {
			got, err := ClosedRing(r)
			return of(got), err
		}
	}
	thin := Ring{Load: 1000 * newton, Bar: 0.01, Inside: 0.99}
	thick := Ring{Load: 25000 * newton, Bar: 0.08, Inside: 0.16}
	return []outside.Check{
		{"B1", "rectangular hook, inside", srcB1, outside.Published, "ksi", 16.9, 0.05, face(b1, false, ksi)},
		{"B1", "rectangular hook, outside", srcB1, outside.Published, "ksi", -5.63, 0.005, face(b1, true, ksi)},
		{"B2", "round eye hook, inside; source takes the moment about the neutral axis", srcB2, outside.Published, "ksi", 15.8, 0.015 * 15.8, face(b2, false, ksi)},
		{"B2", "round eye hook, outside; source takes the moment about the neutral axis", srcB2, outside.Published, "ksi", -10.5, 0.015 * 10.5, face(b2, true, ksi)},
		{"B2", "round eye hook, inside, about the centroid", srcB2, outside.Computed, "ksi", 15.97, 0.005, face(b2, false, ksi)},
		{"B2", "round eye hook, outside, about the centroid", srcB2, outside.Computed, "ksi", -10.65, 0.005, face(b2, true, ksi)},
		{"B2", "neutral radius of a round", srcB2, outside.Published, "in", 3.09343, 5e-6, func() (float64, error) { r, err := HookStress(b2); return in(inch, r.Neutral, err) }},
		{"B2", "integral of dA/r over a round", srcB2, outside.Published, "in", 0.396707, 5e-7, func() (float64, error) { b := roundBend(2.5*inch, 1.25*inch); return in(inch, b.area/b.neutral, nil) }},
		{"B4", "square frame, inside", srcB4, outside.Computed, "MPa", 106.2, 0.05, face(b4, false, megaPa)},
		{"B4", "square frame, outside", srcB4, outside.Computed, "MPa", -49.3, 0.05, face(b4, true, megaPa)},
		{"B5", "round hook, inside", srcB5, outside.Computed, "MPa", 299.6, 0.05, face(b5, false, megaPa)},
		{"B5", "round hook, outside", srcB5, outside.Computed, "MPa", -195.4, 0.05, face(b5, true, megaPa)},
		{"B7", "thin ring, moment under the load over WR", srcB7, outside.Published, "1", 0.3183, 5e-5, ring(thin, func(r RingResult) float64 { return r.MomentAtLoad / (1000 * 0.5) })},
		{"B7", "thin ring, moment at the sides over WR", "ring formulas", outside.Memory, "1", 0.1817, 5e-5, ring(thin, func(r RingResult) float64 { return r.MomentAtSide / (1000 * 0.5) })},
		{"B8", "thick ring, moment under the load", srcB8, outside.Computed, "N·m", 927.6, 0.05, ring(thick, func(r RingResult) float64 { return r.MomentAtLoad })},
		{"B8", "thick ring, under the load, inside", srcB8, outside.Computed, "MPa", -24.6, 0.05, ring(thick, func(r RingResult) float64 { return r.LoadInside / megaPa })},
		{"B8", "thick ring, under the load, outside", srcB8, outside.Computed, "MPa", 14.6, 0.05, ring(thick, func(r RingResult) float64 { return r.LoadOutside / megaPa })},
		{"B8", "thick ring, at the sides, inside", srcB8, outside.Computed, "MPa", 17.7, 0.05, ring(thick, func(r RingResult) float64 { return r.SideInside / megaPa })},
		{"B8", "thick ring, at the sides, outside", srcB8, outside.Computed, "MPa", -6.5, 0.05, ring(thick, func(r RingResult) float64 { return r.SideOutside / megaPa })},
	}
}
