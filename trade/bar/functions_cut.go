package bar

import (
	"gudgeon/trade"
	"gudgeon/units"
)

const kienzleSource = "Kienzle's law; constants from memory (AWF 158, König tables), each within 4 % of a chuck maker's printed table"

func cutFunctions() []trade.Function {
	return []trade.Function{specificFunction(), cutFunction(), volumeFunction(), spindleFunction(), speedFunction(), roughnessFunction()}
}

func specificFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "bar.specific_force",
		About:   "Cutting force per area of chip of a metal at a feed.",
		Formula: "kc = kc11·h^-m, h = f·sin(k) in mm",
		Params:  []trade.Param{workParam(), feedRange.Param("feed", "Feed"), leadParam()},
		Results: []trade.Result{trade.ResultOf("specific_force", "Cutting force per area of chip", units.Pressure, "ksi", units.Up)},
		Source:  kienzleSource,
		Example: `bar.specific_force({work: "42CrMo4", feed: ipr(0.010)})`,
	}, func(x []float64) (float64, error) {
		w, err := WorkAt(x[0])
		if err != nil {
			return 0, err
		}
		return SpecificForce(w, x[1], x[2])
	})
}

func cutFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.cut",
		About:   "Force, torque and power of a boring cut.",
		Formula: "Fc = kc11·b·h^(1-m), b = a/sin k, h = f·sin k; Fp = share·Fc; T = Fc·D/2; P = Fc·v/eta",
		Params: []trade.Param{
			workParam(),
			cutRange.Param("diameter", "Bore after the cut"),
			depthRange.Param("depth", "Depth of cut on radius"),
			feedRange.Param("feed", "Feed"),
			speedRange.Param("speed", "Cutting speed"),
			leadParam(), pushParam(),
			efficiencyRange.Param("drive", "Efficiency from motor to spindle").Usual(0.8),
		},
		Results: []trade.Result{
			trade.ResultOf("force", "Cutting force", units.Force, "lbf", units.Up),
			trade.ResultOf("push", "Force that pushes the bar off the wall", units.Force, "lbf", units.Up),
			trade.ResultOf("torque", "Torque at the spindle", units.Torque, "lbf_ft", units.Up),
			trade.ResultOf("power", "Power at the cutter", units.Power, "hp", units.Up),
			trade.ResultOf("motor_power", "Power of the motor", units.Power, "hp", units.Up),
			trade.ResultOf("rotation", "Spindle", units.Rotation, "rpm", units.Nearest),
		},
		Source:  kienzleSource + "; push share: common practice, no source",
		Example: `bar.cut({work: "42CrMo4", diameter: inch(6), depth: inch(0.05), feed: ipr(0.010), speed: sfpm(300)}).power`,
	}, func(x []float64) (CutResult, error) {
		w, err := WorkAt(x[0])
		if err != nil {
			return CutResult{}, err
		}
		return Cut(CutInput{Work: w, Diameter: x[1], Depth: x[2], Feed: x[3], Speed: x[4], Lead: x[5], PushShare: x[6], Drive: x[7]})
	}, func(r CutResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4], out[5] = r.Force, r.Push, r.Torque, r.Power, r.MotorPower, r.Rotation
	})
}

func volumeFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.cut_by_unit_power",
		About:   "Power, torque and force of a cut from the energy that a volume of chips takes.",
		Formula: "P = u·pi·Dm·a·vf; T = P/w; F = T/(Dm/2)",
		Params: []trade.Param{
			cutRange.Param("before", "Diameter before the cut"),
			cutRange.Param("after", "Diameter after the cut"),
			rotationRange.Param("rotation", "Spindle"),
			rateRange.Param("feed_rate", "Feed per minute"),
			lengthRange.Param("length", "Length of cut"),
			specificRange.Param("unit_power", "Energy per volume of chips, as a pressure (1 hp·min/in³ is 396 ksi)"),
		},
		Results: []trade.Result{
			trade.ResultOf("power", "Power at the cutter", units.Power, "hp", units.Up),
			trade.ResultOf("torque", "Torque at the spindle", units.Torque, "lbf_in", units.Up),
			trade.ResultOf("force", "Cutting force", units.Force, "lbf", units.Up),
			trade.ResultOf("time", "Time of the pass", units.Time, "min", units.Up),
		},
		Source:  "Kalpakjian & Schmid, Manufacturing Engineering and Technology, Table 23.3 (restated)",
		Example: `bar.cut_by_unit_power({before: inch(0.5), after: inch(0.48), rotation: rpm(400), feed_rate: ipm(8), length: inch(6), unit_power: ksi(582)}).power`,
	}, func(x []float64) (VolumeResult, error) {
		return CutByUnitPower(VolumeInput{Before: x[0], After: x[1], Rotation: x[2], FeedRate: x[3], Length: x[4], UnitPower: x[5]})
	}, func(r VolumeResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.Power, r.Torque, r.Force, r.Time
	})
}

func spindleFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.spindle",
		About:   "Rotation, feed rate and time of a pass.",
		Formula: "w = 2v/D; vf = f·w; t = L/vf",
		Params: []trade.Param{
			speedRange.Param("speed", "Cutting speed"),
			cutRange.Param("diameter", "Bore"),
			feedRange.Param("feed", "Feed"),
			lengthRange.Param("length", "Length of cut with run-out"),
		},
		Results: []trade.Result{
			trade.ResultOf("rotation", "Spindle", units.Rotation, "rpm", units.Nearest),
			trade.ResultOf("feed_rate", "Feed per minute", units.Speed, "ipm", units.Nearest),
			trade.ResultOf("time", "Time of the pass", units.Time, "min", units.Up),
		},
		Source:  "definition of cutting speed and feed",
		Example: "bar.spindle({speed: sfpm(200), diameter: inch(6), feed: ipr(0.010), length: inch(8)}).time",
	}, func(x []float64) (SpindleResult, error) { return Spindle(x[0], x[1], x[2], x[3]) },
		func(r SpindleResult, out []float64) { out[0], out[1], out[2] = r.Rotation, r.FeedRate, r.Time })
}

func speedFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.surface_speed",
		About:   "Cutting speeds to start from.",
		Formula: "a table",
		Params:  []trade.Param{trade.Choice("work", "Metal to be cut", SpeedNames()...), trade.Choice("tool", "Tool material", ToolNames()...)},
		Results: []trade.Result{
			trade.ResultOf("low", "Slowest", units.Speed, "sfpm", units.Nearest),
			trade.ResultOf("high", "Fastest", units.Speed, "sfpm", units.Down),
		},
		Source:  handout + "; stainless: " + tm43,
		Example: `bar.surface_speed("cast steel", "carbide").high`,
	}, func(x []float64) (SpeedResult, error) { return SurfaceSpeed(x[0], x[1]) },
		func(r SpeedResult, out []float64) { out[0], out[1] = r.Low, r.High })
}

func roughnessFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.roughness",
		About:   "Theoretical finish of a round-nosed tool; real finish is rougher.",
		Formula: "Rt = r - √(r²-f²/4); Ra = mean |z - mean| of the arc",
		Params:  []trade.Param{feedRange.Param("feed", "Feed"), noseRange.Param("nose", "Nose radius")},
		Results: []trade.Result{
			trade.ResultOf("ra", "Roughness Ra", units.Length, "um", units.Up),
			trade.ResultOf("height", "Peak to valley", units.Length, "um", units.Up),
		},
		Source:  "geometry of the arc; short form f²/(8r) in a tool maker's turning technical information",
		Example: "bar.roughness(mm_per_rev(0.2), mm(0.8)).ra",
	}, func(x []float64) (RoughnessResult, error) { return Roughness(x[0], x[1]) },
		func(r RoughnessResult, out []float64) { out[0], out[1] = r.Ra, r.Height })
}
