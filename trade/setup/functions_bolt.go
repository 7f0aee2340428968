package setup

import (
	"gudgeon/trade"
	"gudgeon/units"
)

const (
	boltTables = "published bolt torque tables (T = K·D·P); SAE J429 (restated); ISO classes and the scatter of 30 % from memory"
	lever      = "statics of a lever"
)

func boltFunctions() []trade.Function {
	return []trade.Function{areaFunction(), preloadFunction(), torqueFunction(), strapFunction(), holdFunction()}
}

func threadParams() []trade.Param {
	return []trade.Param{
		boltRange.Param("diameter", "Diameter of the bolt"),
		pitchRange.Param("pitch", "Pitch of the thread: 1 in over the threads per inch"),
		trade.Choice("thread", "Standard of the thread", ThreadNames()...),
	}
}

func areaFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "setup.tensile_area",
		About:   "Tensile stress area of a bolt.",
		Formula: "A = pi/4·(D - 0.9743·P)², metric 0.9382",
		Params:  threadParams(),
		Results: []trade.Result{trade.ResultOf("area", "Tensile stress area", units.Area, "sqin", units.Down)},
		Source:  "ASME B1.1 and ISO 898-1 forms, from memory; agrees with published bolt tables for UNC",
		Example: `setup.tensile_area({diameter: inch(0.75), pitch: inch(1/10), thread: "unified"})`,
	}, func(x []float64) (float64, error) {
		t, err := pick[Thread]("the thread", x[2], 2)
		if err != nil {
			return 0, err
		}
		return TensileArea(x[0], x[1], t)
	})
}

func boltParams(more trade.Param) []trade.Param {
	return append(threadParams(),
		trade.Choice("grade", "Grade on the bolt's head", GradeNames()...),
		more,
		nutRange.Param("nut_factor", "Nut factor: about 0.20 dry, 0.15 oiled").Usual(0.20))
}

func boltInput(x []float64) (BoltInput, error) {
	t, err := pick[Thread]("the thread", x[2], 2)
	if err != nil {
		return BoltInput{}, err
	}
	g, err := GradeAt(x[3], x[0])
	return BoltInput{Diameter: x[0], Pitch: x[1], Thread: t, Grade: g, NutFactor: x[5]}, err
}

func preloadFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.preload",
		About:   "Pull of a bolt at a torque: the least to count on, and the most it may get.",
		Formula: "F = T/(K·d); least 0.7·F; most 1.3·F; use = most/proof load",
		Params:  boltParams(torqueRange.Param("torque", "Torque on the wrench")),
		Results: []trade.Result{
			trade.ResultOf("least", "Pull to count on", units.Force, "lbf", units.Down),
			trade.ResultOf("most", "Pull that the bolt may get", units.Force, "lbf", units.Up),
			trade.ResultOf("use", "Most pull over the proof load", units.Ratio, "percent", units.Up),
			trade.ResultOf("nominal", "Pull by the formula", units.Force, "lbf", units.Nearest),
		},
		Source:  boltTables,
		Example: `setup.preload({diameter: inch(0.75), pitch: inch(1/10), thread: "unified", grade: "SAE grade 5", torque: lbf_ft(200)}).least`,
	}, func(x []float64) (BoltResult, error) {
		in, err := boltInput(x)
		if err != nil {
			return BoltResult{}, err
		}
		return Preload(in, x[4])
	}, func(r BoltResult, out []float64) { out[0], out[1], out[2], out[3] = r.Least, r.Most, r.Use, r.Pull })
}

func torqueFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.torque_for",
		About:   "Torque for a share of a bolt's proof load, mostly 75 %.",
		Formula: "T = K·d·share·proof·A",
		Params:  boltParams(shareRange.Param("share", "Share of the proof load wanted")),
		Results: []trade.Result{
			trade.ResultOf("torque", "Torque on the wrench", units.Torque, "lbf_ft", units.Down),
			trade.ResultOf("nominal", "Pull by the formula", units.Force, "lbf", units.Nearest),
			trade.ResultOf("least", "Pull to count on", units.Force, "lbf", units.Down),
		},
		Source:  boltTables,
		Example: `setup.torque_for({diameter: inch(0.5), pitch: inch(1/13), thread: "unified", grade: "SAE grade 5", share: percent(75)}).torque`,
	}, func(x []float64) (BoltResult, error) {
		in, err := boltInput(x)
		if err != nil {
			return BoltResult{}, err
		}
		return TorqueFor(in, x[4])
	}, func(r BoltResult, out []float64) { out[0], out[1], out[2] = r.Torque, r.Pull, r.Least })
}

func strapFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.strap_clamp",
		About:   "Force that a strap clamp puts on the part.",
		Formula: "on part = F·h/(p+h)",
		Params: []trade.Param{
			pullRange.Param("pull", "Pull of the bolt"),
			leverRange.Param("to_part", "Bolt to the point on the part"),
			leverRange.Param("to_heel", "Bolt to the heel block"),
		},
		Results: []trade.Result{
			trade.ResultOf("on_part", "Force on the part", units.Force, "lbf", units.Down),
			trade.ResultOf("on_heel", "Force on the heel block", units.Force, "lbf", units.Up),
		},
		Source:  lever,
		Example: "setup.strap_clamp({pull: lbf(8000), to_part: inch(2), to_heel: inch(3)}).on_part",
	}, func(x []float64) (StrapResult, error) { return StrapClamp(x[0], x[1], x[2]) },
		func(r StrapResult, out []float64) { out[0], out[1] = r.OnPart, r.OnHeel })
}

func holdFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.hold",
		About:   "How much of its friction grip a clamped part needs against the cut.",
		Formula: "grip = mu·(n·C + W - lift); use = S·(F/grip + F·e/(grip·r))",
		Params: []trade.Param{
			countRange.Param("clamps", "Number of clamps"),
			clampRange.Param("clamp_force", "Force of each clamp on the part"),
			cuttingRange.Param("cutting_force", "Cutting force along the table"),
			weightRange.Param("weight", "Weight pressing on the table").Usual(0),
			cuttingRange.Param("lift", "Cutting force away from the table").Usual(0),
			armRange.Param("arm", "From the line of the cutting force to the middle of the clamps").Usual(0),
			reachRange.Param("reach", "Mean distance of the clamps from their middle").Usual(0),
			frictionRange.Param("friction", "Least friction coefficient; 0.1 for oily steel on steel").Usual(0.1),
			safetyRange.Param("safety", "Safety factor").Usual(2),
		},
		Results: []trade.Result{
			trade.ResultOf("use", "Share of the grip used, safety included", units.Ratio, "percent", units.Up),
			trade.ResultOf("grip", "Friction grip", units.Force, "lbf", units.Down),
			trade.ResultOf("clamp_needed", "Force needed of each clamp", units.Force, "lbf", units.Up),
		},
		Source:  "Coulomb friction, statics; friction and safety: " + trade.CommonPractice,
		Example: "setup.hold({clamps: 4, clamp_force: lbf(4000), cutting_force: lbf(400), weight: lbf(1200), arm: inch(10), reach: inch(15)}).use",
	}, func(x []float64) (HoldResult, error) {
		return Hold(HoldInput{Clamps: x[0], Force: x[1], Cutting: x[2], Weight: x[3], Lift: x[4], Arm: x[5], Reach: x[6], Friction: x[7], Safety: x[8]})
	}, func(r HoldResult, out []float64) { out[0], out[1], out[2] = r.Use, r.Grip, r.Needed })
}
