package lift

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func lugFunctions() []trade.Function {
	return []trade.Function{plateLug(), plateLugAISC(), lugBase()}
}

func plateLug() trade.Function {
	work := func(x []float64) (PlateLugResult, error) {
		category, err := index("design category", x[9], categories)
		if err != nil {
			return PlateLugResult{}, err
		}
		return CheckPlateLug(PlateLug{Load: x[0], Thickness: x[1], Side: x[2], Beyond: x[3], Hole: x[4], Pin: x[5],
			Yield: x[6], Ultimate: x[7], EndRadius: x[8], Category: Category(category)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.plate_lug", About: "A plate lug pulled in line by a pin: tension, fracture, shear and bearing, by ASME BTH-1 as restated in published lug sheets. Give the load with its dynamic factor.",
		Formula: "Pt = Cr·Fu/(1.20·Nd)·2·t·beff; Pb = Cr·Fu/(1.20·Nd)·[1.13(R − Dh/2) + 0.92·be/(1 + be/Dh)]·t; Pv = 0.70·Fu/(1.20·Nd)·Av; Pp = 1.25·Fy/Nd·Dp·t",
		Params: []trade.Param{loadParam("load", "pull on the pin"), stockRange.Param("thickness", "thickness of the lug"),
			stockRange.Param("side", "edge of the hole to the side edge of the plate"), stockRange.Param("beyond", "edge of the hole to the edge of the plate, along the pull"),
			stockRange.Param("hole", "diameter of the hole"), stockRange.Param("pin", "diameter of the pin"), yieldParam(),
			ultimateRange.Param("ultimate", "tensile strength of the steel"),
			boreRange.Param("end_radius", "radius of the rounded end about the hole's centre; 0 for a square end").Usual(0), categoryParam()},
		Results: []trade.Result{useOf("use", "greatest use of all"), useOf("tension", "torn through the hole"), useOf("fracture", "split beyond the hole"),
			useOf("shear", "sheared out beyond the hole"), useOf("bearing", "crushed under the pin"),
			governs("tension", "fracture", "shear", "bearing"), capacityOf("greatest load on the lug")},
		Source:  "ASME BTH-1 as restated in published lug sheets; design factors from memory",
		Example: `lift.plate_lug({load: lb(10000), thickness: inch(0.75), side: inch(1.66), beyond: inch(3.3125), hole: inch(1.6875), pin: inch(1.375), yield: ksi(36), ultimate: ksi(58), end_radius: inch(4.15625)})`,
	}, work, func(r PlateLugResult, out []float64) {
		out[0] = r.Use()
		uses(out[1:5], r.Checks[:])
		out[5], out[6] = float64(r.Governs), r.Capacity
	})
}

func plateLugAISC() trade.Function {
	work := func(x []float64) (AISCLugResult, error) {
		return CheckAISCLug(AISCLug{Load: x[0], Thickness: x[1], Width: x[2], Beyond: x[3], Hole: x[4], Pin: x[5], Yield: x[6], Ultimate: x[7]})
	}
	return trade.Worked(trade.Function{
		Name: "lift.plate_lug_aisc", About: "The same lug by AISC 360 D5, a cross-check only: D5 is not meant for lifting lugs and has less margin.",
		Formula: "2·t·be·Fu/2.00; 0.6·Fu·2t(a + d/2)/2.00; 1.8·Fy·t·d/2.00; Fy·t·w/1.67",
		Params: []trade.Param{loadParam("load", "pull on the pin"), stockRange.Param("thickness", "thickness of the lug"),
			stockRange.Param("width", "width of the whole plate at the hole"), stockRange.Param("beyond", "edge of the hole to the edge of the plate, along the pull"),
			stockRange.Param("hole", "diameter of the hole"), stockRange.Param("pin", "diameter of the pin"), yieldParam(),
			ultimateRange.Param("ultimate", "tensile strength of the steel")},
		Results: []trade.Result{useOf("use", "greatest use of all"), useOf("tension", "rupture on the effective width"), useOf("shear", "rupture beyond the pin"),
			useOf("bearing", "crushed under the pin"), useOf("yielding", "yielding of the whole width"),
			useOf("dimensions", "rules for shape; above 1 they are not met"),
			governs("tension", "shear", "bearing", "yielding"), capacityOf("greatest load on the lug")},
		Source:  "AISC 360-10 D5, allowable strength design",
		Example: `lift.plate_lug_aisc({load: lb(16000), thickness: inch(0.5), width: inch(4.25), beyond: inch(2.25), hole: inch(1.03), pin: inch(1), yield: ksi(36), ultimate: ksi(58)})`,
	}, work, func(r AISCLugResult, out []float64) {
		out[0] = r.Use()
		uses(out[1:5], r.Checks[:])
		out[5], out[6], out[7] = r.Dimensions, float64(r.Governs), r.Capacity
	})
}

// pullParams are the arguments that make a Pull.
func pullParams() []trade.Param {
	return []trade.Param{loadParam("load", "pull on the lug"),
		pullAngleRange.Param("angle", "pull from the face, in the lug's plane; 90 degrees is straight off, 0 is along the face"),
		sidePullRange.Param("side_angle", "pull out of the lug's plane; 0 is in line")}
}

func lugBase() trade.Function {
	work := func(x []float64) (LugBaseResult, error) {
		category, err := index("design category", x[7], categories)
		if err != nil {
			return LugBaseResult{}, err
		}
		return CheckLugBase(LugBase{Pull: Pull{Load: x[0], Angle: x[1], Side: x[2]}, Height: x[3], Width: x[4], Thickness: x[5], Yield: x[6], Category: Category(category)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.lug_base", About: "Stress where a plate lug meets the part, under an angled and a side pull. A side pull bends the plate the weak way.",
		Formula: "√((P·cos s·sin a/(w·t) + 6·P·cos s·cos a·h/(t·w²) + 6·P·sin s·h/(w·t²))² + 3·shear²) ≤ Fy/Nd",
		Params: append(pullParams(), stockRange.Param("height", "face to the centre of the hole"), stockRange.Param("width", "width of the lug at its base"),
			stockRange.Param("thickness", "thickness of the lug"), yieldParam(), categoryParam()),
		Results: []trade.Result{useOf("use", "all together at the worst corner"), useOf("tension", "pulled off the face"), useOf("bending", "bent in its own plane"),
			useOf("side_bending", "bent out of its plane"), useOf("shear", "sheared along the face"),
			governs("tension", "bending", "side bending", "shear"), stress("stress", "combined stress at the worst corner")},
		Source:  "beam theory; combined stress and design factors as in ASME BTH-1, from memory",
		Example: `lift.lug_base({load: lb(5000), angle: deg(60), side_angle: deg(5), height: inch(3), width: inch(6), thickness: inch(1), yield: ksi(36)})`,
	}, work, func(r LugBaseResult, out []float64) {
		out[0] = r.Use()
		uses(out[1:5], r.Checks[:BaseCombined])
		out[5], out[6] = float64(r.Governs), r.Checks[BaseCombined].Demand
	})
}

func barFunctions() []trade.Function {
	return []trade.Function{bentBarLug(), hookStress(), closedRing()}
}

func bentBarLug() trade.Function {
	work := func(x []float64) (BentBarResult, error) {
		category, err := index("design category", x[7], categories)
		if err != nil {
			return BentBarResult{}, err
		}
		return CheckBentBarLug(BentBarLug{Load: x[0], Bar: x[1], Inside: x[2], Leg: x[3], Yield: x[4], Angle: x[5], Side: x[6], Category: Category(category)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.bent_bar_lug", About: "A lug bent from round bar with both legs welded down, bounded between feet that turn and feet that cannot; an angled pull with the shackle stuck at the top and ridden round. Mild steel bar only, never hardened or reinforcing bar.",
		Formula: "M(θ) = M0 + T0·R(1 − cos θ) − P/2·R·sin θ, and sway; stress N/A ± M·(rn − r)/(A·e·r), moment about the centroid",
		Params: []trade.Param{loadParam("load", "pull on the lug"), stockRange.Param("bar", "diameter of the bar"),
			stockRange.Param("inside", "clear width between the legs; at least the bar"), footRange.Param("leg", "straight length from the face to where the bend begins"),
			yieldParam(), bowPullRange.Param("angle", "pull from the face, in the lug's plane; 90 degrees is straight off").Usual(90 * degree),
			sidePullRange.Param("side_angle", "pull out of the lug's plane; 0 is in line").Usual(0), categoryParam()},
		Results: []trade.Result{useOf("use", "greatest use of all"), useOf("bow", "bent in the bow"), useOf("leg", "pulled and bent in a leg"),
			useOf("shear", "sheared beside the shackle"), governs("bow", "leg", "shear"), capacityOf("greatest load on the lug"),
			trade.ResultOf("foot_pull", "greatest tension on one foot", units.Force, "lbf", units.Up), trade.ResultOf("foot_shear", "greatest sideways force on one foot", units.Force, "lbf", units.Up),
			trade.ResultOf("foot_moment", "greatest moment on one foot", units.Torque, "lbf_in", units.Up)},
		Source:  "Castigliano and curved-beam theory, Shigley 9th ed. secs. 3-18, 4-9; design factors as in ASME BTH-1, from memory",
		Example: `lift.bent_bar_lug({load: lb(2000), bar: inch(1), inside: inch(2.5), leg: inch(2), yield: ksi(36)})`,
	}, work, func(r BentBarResult, out []float64) {
		out[0] = r.Use()
		uses(out[1:4], r.Checks[:])
		out[4], out[5] = float64(r.Governs), r.Capacity
		out[6], out[7], out[8] = r.FootPull, r.FootShear, r.FootMoment
	})
}

func hookStress() trade.Function {
	work := func(x []float64) (HookResult, error) {
		section, err := index("section", x[1], sections)
		if err != nil {
			return HookResult{}, err
		}
		return HookStress(Hook{Load: x[0], Section: Section(section), Depth: x[2], Inside: x[3], Arm: x[4], Width: x[5]})
	}
	return trade.Worked(trade.Function{
		Name: "lift.hook_stress", About: "Stress at the inside and outside of a hook or C-frame, with the moment about the centroid of the section.",
		Formula: "F/A + F·x·(rn − r)/(A·e·r)",
		Params: []trade.Param{loadParam("load", "load on the hook"), trade.Choice("section", "shape of the bar", sections...),
			stockRange.Param("depth", "of the section across the bend; the diameter of a round"), stockRange.Param("inside", "inside radius of the bend, at least half the depth"),
			hookArmRange.Param("arm", "line of load to the centroid of the section"),
			hookWidthRange.Param("width", "of a rectangular section, along the bend's axis; not used for a round").Usual(0)},
		Results: []trade.Result{stress("inside", "at the inside face, tension positive"), trade.ResultOf("outside", "at the outside face, compression negative", units.Pressure, "ksi", units.Nearest),
			trade.ResultOf("neutral", "radius of the neutral axis", units.Length, "inch", units.Nearest)},
		Source:  "Shigley 9th ed. sec. 3-18",
		Example: `lift.hook_stress({load: lb(800), section: "round", depth: inch(1.25), inside: inch(2.5), arm: inch(3.125)})`,
	}, work, func(r HookResult, out []float64) {
		out[0], out[1], out[2] = r.Inside, r.Outside, r.Neutral
	})
}

func closedRing() trade.Function {
	work := func(x []float64) (RingResult, error) {
		return ClosedRing(Ring{Load: x[0], Bar: x[1], Inside: x[2]})
	}
	return trade.Worked(trade.Function{
		Name: "lift.closed_ring", About: "Stress in a closed ring of round bar. A staple welded down by its ends is not a closed ring: use lift.bent_bar_lug.",
		Formula: "M = P·R/π·(1 − e/R) under the load, P·R/2 − M at the sides",
		Params:  []trade.Param{loadParam("load", "load across the ring"), stockRange.Param("bar", "diameter of the bar"), stockRange.Param("inside", "inside diameter of the ring")},
		Results: []trade.Result{stress("worst", "greatest stress of either sign"),
			trade.ResultOf("load_inside", "under the load, inside", units.Pressure, "ksi", units.Nearest), trade.ResultOf("load_outside", "under the load, outside", units.Pressure, "ksi", units.Nearest),
			trade.ResultOf("side_inside", "at the sides, inside", units.Pressure, "ksi", units.Nearest), trade.ResultOf("side_outside", "at the sides, outside", units.Pressure, "ksi", units.Nearest)},
		Source:  "strain energy of a thick ring; thin ring in Mechanical Engineer's Data Handbook p. 29",
		Example: `lift.closed_ring(lb(2000), inch(0.75), inch(4))`,
	}, work, func(r RingResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4] = r.Worst(), r.LoadInside, r.LoadOutside, r.SideInside, r.SideOutside
	})
}
