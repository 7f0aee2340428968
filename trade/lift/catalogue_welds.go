package lift

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func weldRuleFunctions() []trade.Function {
	return []trade.Function{
		trade.Plain(trade.Function{
			Name: "lift.electrode_strength", About: "Least tensile strength of an electrode class.", Formula: "class number in ksi",
			Params:  []trade.Param{trade.Choice("class", "electrode class", electrodeNames()...)},
			Results: []trade.Result{trade.ResultOf("strength", "tensile strength", units.Pressure, "ksi", units.Down)}, Source: "AWS classification numbering",
			Example: `lift.electrode_strength("E70")`,
		}, func(x []float64) (float64, error) {
			i, err := index("electrode class", x[0], classNames)
			if err != nil {
				return 0, err
			}
			return electrodes[i].strength * ksi, nil
		}),
		trade.Plain(trade.Function{
			Name: "lift.fillet_strength", About: "What a length of fillet weld may bear.", Formula: "leg/√2·0.60·Exx/(1.20·Nd), or leg/√2·0.30·Exx",
			Params:  []trade.Param{legSizeRange.Param("leg", "leg of the weld"), electrodeParam(), basisParam()},
			Results: []trade.Result{trade.ResultOf("strength", "per length of weld", units.LineLoad, "kip_per_in", units.Down)},
			Source:  "ASME BTH-1, from memory; 0.30 as used in Shigley 9th ed. ex. 9-2", Example: `lift.fillet_strength(inch(0.25), ksi(70), "BTH-1 B")`,
		}, func(x []float64) (float64, error) {
			basis, err := index("basis", x[2], bases)
			if err != nil {
				return 0, err
			}
			return FilletStrength(x[0], x[1], Basis(basis))
		}),
		trade.Plain(trade.Function{
			Name: "lift.fillet_least_leg", About: "Least leg of a fillet weld for the thinner of the parts.", Formula: "to 1/4 in 1/8; to 1/2 in 3/16; to 3/4 in 1/4; over 3/4 in 5/16",
			Params:  []trade.Param{plateRange.Param("thinner", "thickness of the thinner part")},
			Results: []trade.Result{trade.ResultOf("leg", "least leg", units.Length, "inch", units.Up)}, Source: "AISC 360-05/-10 Table J2.4",
			Example: `lift.fillet_least_leg(inch(0.75))`,
		}, func(x []float64) (float64, error) { return FilletLeastLeg(x[0]) }),
		trade.Plain(trade.Function{
			Name: "lift.fillet_most_leg", About: "Greatest leg of a fillet weld along the edge of a plate.", Formula: "t under 1/4 in; t − 1/16 in from 1/4 in",
			Params:  []trade.Param{plateRange.Param("edge", "thickness of the plate at that edge")},
			Results: []trade.Result{trade.ResultOf("leg", "greatest leg", units.Length, "inch", units.Down)}, Source: "AISC 360 J2.2b",
			Example: `lift.fillet_most_leg(inch(0.5))`,
		}, func(x []float64) (float64, error) { return FilletMostLeg(x[0]) }),
		trade.Plain(trade.Function{
			Name: "lift.flare_throat", About: "Throat of the groove between a round bar and a flat face, welded flush.", Formula: "5/16 of the bar's radius",
			Params:  []trade.Param{weldRange.Param("bar", "diameter of the bar")},
			Results: []trade.Result{trade.ResultOf("throat", "throat", units.Length, "inch", units.Down)}, Source: "flare bevel groove, AISC 360 Table J2.2 and AWS D1.1 as restated in a handbook",
			Example: `lift.flare_throat(inch(1))`,
		}, func(x []float64) (float64, error) { return FlareThroat(x[0]) }),
	}
}

var classNames = electrodeNames()

func weldFunctions() []trade.Function {
	return []trade.Function{filletWeld(), eccentricWeld(), lugWeld(), roundWeld(), flareWeld()}
}

func filletWeld() trade.Function {
	work := func(x []float64) (FilletResult, error) {
		ended, err := yes("end_loaded", x[5])
		if err != nil {
			return FilletResult{}, err
		}
		basis, err := index("basis", x[6], bases)
		if err != nil {
			return FilletResult{}, err
		}
		return CheckFillet(Fillet{Load: x[0], Leg: x[1], Length: x[2], Runs: x[3], Electrode: x[4], EndLoaded: ended, Basis: Basis(basis)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.fillet_weld", About: "Straight fillet welds loaded through their centre. Short runs count with a smaller leg, long end-loaded ones with a shorter length; no increase is taken for welds across the load.",
		Formula: "runs·min(leg, length/4)/√2·β·length·stress",
		Params: []trade.Param{loadParam("load", "load on all runs together"), legSizeRange.Param("leg", "leg of the weld"), weldRange.Param("length", "length of one run"),
			runsRange.Param("runs", "number of such runs"), electrodeParam(), yesNo("end_loaded", "the load flows along the runs from one end").Usual(0), basisParam()},
		Results: []trade.Result{useOf("use", "load over capacity"), capacityOf("of all runs"), trade.ResultOf("effective_leg", "leg that counts", units.Length, "inch", units.Down),
			trade.ResultOf("beta", "reduction for a long end-loaded run", units.Number, "number", units.Down)},
		Source:  "AISC 360 J2.2b; weld stress by ASME BTH-1 (from memory) or 0.30 of the electrode",
		Example: `lift.fillet_weld({load: lb(8000), leg: inch(0.375), length: inch(4), runs: 2, electrode: ksi(70)})`,
	}, work, func(r FilletResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.Use, r.Capacity, r.EffectiveLeg, r.Beta
	})
}

func eccentricWeld() trade.Function {
	work := func(x []float64) (EccentricWeldResult, error) {
		pattern, err := index("pattern", x[1], patterns)
		if err != nil {
			return EccentricWeldResult{}, err
		}
		basis, err := index("basis", x[7], bases)
		if err != nil {
			return EccentricWeldResult{}, err
		}
		return CheckEccentricWeld(EccentricWeld{Load: x[0], Pattern: WeldPattern(pattern), Depth: x[2], Reach: x[3], Leg: x[4], Electrode: x[5], Width: x[6], Basis: Basis(basis)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.eccentric_weld", About: "Fillet welds loaded in their own plane off their centre: a lug lapped on the side of a part. Elastic line method, to the safe side.",
		Formula: "vector sum of P/(throat·L) and P·arm·r/(throat·J)",
		Params: []trade.Param{loadParam("load", "load on the lug"), trade.Choice("pattern", "where the runs are, along or across the load", patterns...),
			weldRange.Param("depth", "of the pattern along the load"), placeRange.Param("reach", "from the pattern's back to the line of load"), legSizeRange.Param("leg", "leg of the weld"),
			electrodeParam(), weldWidthRange.Param("width", "of the pattern across the load; not used for one run").Usual(0), basisParam()},
		Results: []trade.Result{useOf("use", "stress over allowed"), stress("stress", "greatest on the throat"), stress("direct", "from the load alone"), capacityOf("greatest load"),
			trade.ResultOf("arm", "line of load from the centroid of the weld", units.Length, "inch", units.Up)},
		Source:  "elastic line method, Shigley 9th ed. sec. 9-3",
		Example: `lift.eccentric_weld({load: lb(5000), pattern: "C", depth: inch(11), width: inch(4), reach: inch(8), leg: inch(0.5), electrode: ksi(70)})`,
	}, work, func(r EccentricWeldResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4] = r.Use, r.Stress, r.Direct, r.Capacity, r.Arm
	})
}

func lugWeld() trade.Function {
	work := func(x []float64) (LugWeldResult, error) {
		pattern, err := index("pattern", x[7], lugWeldPatterns)
		if err != nil {
			return LugWeldResult{}, err
		}
		basis, err := index("basis", x[9], bases)
		if err != nil {
			return LugWeldResult{}, err
		}
		return CheckLugWeld(LugWeld{Pull: Pull{Load: x[0], Angle: x[1], Side: x[2]}, Height: x[3], Width: x[4], Thickness: x[5], Leg: x[6],
			Pattern: LugWeldPattern(pattern), Electrode: x[8], Basis: Basis(basis)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.lug_weld", About: "Fillet weld at the foot of a plate lug under an angled and a side pull.",
		Formula: "√((off/L + along·h/S + across·h/S')² + (along² + across²)/L²)/throat",
		Params: append(pullParams(), stockRange.Param("height", "face to the centre of the hole"), weldRange.Param("width", "width of the lug at its base"),
			weldRange.Param("thickness", "thickness of the lug"), legSizeRange.Param("leg", "leg of the weld"),
			trade.Choice("pattern", "where it is welded", lugWeldPatterns...), electrodeParam(), basisParam()),
		Results: []trade.Result{useOf("use", "all together at the worst corner"), useOf("pull", "pulled off the face"), useOf("bending", "bent in the lug's plane"),
			useOf("side_bending", "bent out of the lug's plane"), useOf("shear", "sheared along the face"),
			governs("pull", "bending", "side bending", "shear"), stress("stress", "on the throat at the worst corner"), capacityOf("greatest load in this direction")},
		Source:  "elastic line method, Shigley 9th ed. Table 9-2; weld stress by ASME BTH-1 (from memory) or 0.30 of the electrode",
		Example: `lift.lug_weld({load: lb(5000), angle: deg(60), side_angle: deg(5), height: inch(3), width: inch(6), thickness: inch(1), leg: inch(0.375), pattern: "all round", electrode: ksi(70)})`,
	}, work, func(r LugWeldResult, out []float64) {
		out[0] = r.Use
		uses(out[1:5], r.Parts[:])
		out[5], out[6], out[7] = float64(r.Governs), r.Stress, r.Capacity
	})
}

func roundWeld() trade.Function {
	work := func(x []float64) (RoundWeldResult, error) {
		basis, err := index("basis", x[7], bases)
		if err != nil {
			return RoundWeldResult{}, err
		}
		return CheckRoundWeld(RoundWeld{Bar: x[0], Leg: x[1], Electrode: x[2], Tension: x[3], Shear: x[4], Moment: x[5], Torque: x[6], Basis: Basis(basis)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.round_weld", About: "Fillet weld round the end of a bar that stands on a face, such as the foot of a bent-bar lug.",
		Formula: "√((N/(π·d) + M/(π·d²/4))² + (V/(π·d) + T/(π·d²/2))²)/throat",
		Params: []trade.Param{weldRange.Param("bar", "diameter of the bar"), legSizeRange.Param("leg", "leg of the weld"), electrodeParam(),
			forceRange.Param("tension", "off the face"), forceRange.Param("shear", "along the face"), momentRange.Param("moment", "bending the bar"),
			momentRange.Param("torque", "twisting the bar").Usual(0), basisParam()},
		Results: []trade.Result{useOf("use", "stress over allowed"), stress("stress", "on the throat"), stress("normal", "off the face"), stress("shear", "along the face")},
		Source:  "line method, Shigley 9th ed. Tables 9-1 and 9-2; weld stress by ASME BTH-1 (from memory) or 0.30 of the electrode",
		Example: `lift.round_weld({bar: inch(1), leg: inch(0.375), electrode: ksi(70), tension: lbf(1000), shear: lbf(300), moment: lbf_in(400)})`,
	}, work, func(r RoundWeldResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.Use, r.Stress, r.Normal, r.Shear
	})
}

func flareWeld() trade.Function {
	work := func(x []float64) (FlareWeldResult, error) {
		basis, err := index("basis", x[4], bases)
		if err != nil {
			return FlareWeldResult{}, err
		}
		return CheckFlareWeld(FlareWeld{Load: x[0], Bar: x[1], Length: x[2], Electrode: x[3], Basis: Basis(basis)})
	}
	return trade.Worked(trade.Function{
		Name: "lift.flare_weld", About: "One leg of a bar lug laid along a face and welded flush on both sides.",
		Formula: "√((P/(2L))² + (P·d/2/(L²/3))²)/throat",
		Params: []trade.Param{loadParam("load", "pull of this one leg"), weldRange.Param("bar", "diameter of the bar"),
			weldRange.Param("length", "of the weld on each side"), electrodeParam(), basisParam()},
		Results: []trade.Result{useOf("use", "stress over allowed"), capacityOf("pull of one leg"), stress("stress", "at the end of the weld"),
			trade.ResultOf("throat", "throat of the groove", units.Length, "inch", units.Down)},
		Source:  "flare bevel groove of AISC 360 Table J2.2 as restated; line method, Shigley 9th ed. Table 9-2",
		Example: `lift.flare_weld({load: lb(2000), bar: inch(1), length: inch(5), electrode: ksi(70)})`,
	}, work, func(r FlareWeldResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.Use, r.Capacity, r.Stress, r.Throat
	})
}
