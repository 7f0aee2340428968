package bar

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func planFunctions() []trade.Function {
	return []trade.Function{cutStiffnessFunction(), copyingFunction(), planFunction()}
}

func cutStiffnessFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "bar.cut_stiffness",
		About:   "Push on the bar per depth of cut.",
		Formula: "c = share·kc·f",
		Params:  []trade.Param{workParam(), feedRange.Param("feed", "Feed"), leadParam(), pushParam()},
		Results: []trade.Result{trade.ResultOf("push_per_depth", "Push on the bar per depth of cut", units.Stiffness, "lbf_per_in", units.Up)},
		Source:  kienzleSource + "; push share: common practice, no source",
		Example: `bar.cut_stiffness({work: "42CrMo4", feed: ipr(0.008)})`,
	}, func(x []float64) (float64, error) {
		w, err := WorkAt(x[0])
		if err != nil {
			return 0, err
		}
		return CutStiffness(w, x[1], x[2], x[3])
	})
}

func copyingFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.copying",
		About:   "How much out-of-round is left after passes with the same bar.",
		Formula: "eps = c/(k+c); left = eps^n·e",
		Params: []trade.Param{
			stiffnessRange.Param("stiffness", "Stiffness of the bar at the cutter"),
			cutStiffRange.Param("push_per_depth", "Push on the bar per depth of cut"),
			ovalRange.Param("out_of_round", "Out-of-round before, on radius"),
			passRange.Param("passes", "Number of passes that cut all round").Usual(1),
		},
		Results: []trade.Result{
			trade.ResultOf("left", "Out-of-round left, on radius", units.Length, "inch", units.Up),
			trade.ResultOf("share", "Share that one pass leaves", units.Ratio, "percent", units.Up),
		},
		Source:  "balance of cutting force and bar, from memory; no worked example was found published",
		Example: "bar.copying({stiffness: N_per_mm(20000), push_per_depth: N_per_mm(1500), out_of_round: mm(0.5), passes: 3}).left",
	}, func(x []float64) (CopyingResult, error) {
		return Copying(CopyingInput{Stiffness: x[0], CutStiffness: x[1], OutOfRound: x[2], Passes: x[3]})
	}, func(r CopyingResult, out []float64) { out[0], out[1] = r.Last, r.Share })
}

func planFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.plan",
		About:   "Fewest passes from rough stock to size: roughing, a heavy truing pass, a light sizing pass.",
		Formula: "a pass leaves eps = c/(k+c) of the out-of-round; heavy passes take equal depths; ovality left uses at most half of the tolerance",
		Params: []trade.Param{
			cutRange.Param("finish", "Finished bore"),
			stockRange.Param("least_stock", "Stock on radius where there is least"),
			stockRange.Param("most_stock", "Stock on radius where there is most"),
			lengthRange.Param("length", "Length of cut with run-out"),
			stiffnessRange.Param("stiffness", "Stiffness of the bar at the cutter"),
			workParam(),
			feedRange.Param("rough_feed", "Feed of the heavy passes"),
			speedRange.Param("rough_speed", "Cutting speed of the heavy passes"),
			feedRange.Param("fine_feed", "Feed of the light pass"),
			speedRange.Param("fine_speed", "Cutting speed of the light pass"),
			limitRange.Param("depth_limit", "Most that a pass may take, on radius"),
			powerRange.Param("power_limit", "Most power at the cutter"),
			sizeTolRange.Param("tolerance", "Full width of the tolerance on diameter"),
			leadParam(), pushParam(),
			truingRange.Param("truing", "Least that the truing pass must take anywhere, on radius").Usual(0.010 * inch),
			lightRange.Param("light", "What the light pass takes, on radius").Usual(0.0025 * inch),
		},
		Results: []trade.Result{
			trade.ResultOf("passes", "Number of passes", units.Number, "number", units.Nearest),
			trade.ResultOf("heavy_depth", "Greatest depth of the heavy passes, on radius", units.Length, "thou", units.Up),
			trade.ResultOf("truing_bore", "Bore after the truing pass", units.Length, "inch", units.Nearest),
			trade.ResultOf("out_of_round", "Out-of-round at the end, on radius", units.Length, "inch", units.Up),
			trade.ResultOf("time", "Cutting time in all", units.Time, "min", units.Up),
			trade.ResultOf("power", "Most power at the cutter", units.Power, "hp", units.Up),
			trade.ResultOf("heavy_rotation", "Spindle of the truing pass", units.Rotation, "rpm", units.Nearest),
			trade.ResultOf("light_rotation", "Spindle of the light pass", units.Rotation, "rpm", units.Nearest),
		},
		Source: kienzleSource + "; copying from memory; truing and light depth, push share, half of the tolerance: common practice, no source",
		Example: `bar.plan({finish: inch(4), least_stock: inch(0.09), most_stock: inch(0.15), length: inch(6), stiffness: lbf_per_in(200000), work: "42CrMo4",
			rough_feed: ipr(0.010), rough_speed: sfpm(200), fine_feed: ipr(0.004), fine_speed: sfpm(250), depth_limit: inch(0.06), power_limit: hp(5), tolerance: inch(0.001)}).passes`,
	}, func(x []float64) (PlanResult, error) {
		w, err := WorkAt(x[5])
		if err != nil {
			return PlanResult{}, err
		}
		return Plan(PlanInput{
			Finish: x[0], LeastStock: x[1], MostStock: x[2], Length: x[3], Stiffness: x[4], Work: w,
			RoughFeed: x[6], RoughSpeed: x[7], FineFeed: x[8], FineSpeed: x[9],
			DepthLimit: x[10], PowerLimit: x[11], Tolerance: x[12], Lead: x[13], PushShare: x[14], Truing: x[15], Light: x[16],
		})
	}, putPlan)
}

func putPlan(r PlanResult, out []float64) {
	truing, light := &r.Passes[r.Count-2], &r.Passes[r.Count-1]
	out[0] = float64(r.Count)
	out[1] = r.Passes[0].Most
	out[2] = truing.Diameter
	out[3] = r.OutOfRound
	out[4] = r.Time
	out[5] = r.MostPower
	out[6], out[7] = truing.Rotation, light.Rotation
}
