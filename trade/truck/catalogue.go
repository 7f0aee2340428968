package truck

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func useOf(name, about string) trade.Result {
	return trade.ResultOf(name, about, units.Ratio, "percent", units.Up)
}

func uses(out []float64, checks []Check) {
	for i, c := range checks {
		out[i] = c.Use()
	}
}

// Functions lists what a rule sheet can call.
func Functions() []trade.Function {
	return []trade.Function{
		capacityAt(), capacityFromAxle(), hungLoadCentre(), engagement(),
		forkShare(), forkWear(), forkExtension(), liftTable(), grade(), gradeFromAngle(),
	}
}

func plateParams() []trade.Param {
	return []trade.Param{
		loadRange.Param("rating", "rated capacity on the truck's plate"),
		centreRange.Param("rating_centre", "load centre on the plate"),
		centreRange.Param("load_centre", "fork face to the load's centre of gravity"),
	}
}

func capacityAt() trade.Function {
	return trade.Plain(trade.Function{
		Name: "truck.capacity_at", About: "What a truck may carry with the load's centre of gravity further out than its plate assumes; never more than the plate. The plate governs: this is an estimate.",
		Formula: "W = W0·c0/c, at most W0", Params: plateParams(),
		Results: []trade.Result{trade.ResultOf("capacity", "what it may carry there", units.Mass, "lb", units.Down)},
		Source:  "29 CFR 1910.178 App. A, A-5 (load moment)", Example: `truck.capacity_at(lb(5000), inch(24), inch(28))`,
	}, func(x []float64) (float64, error) { return CapacityAt(x[0], x[1], x[2]) })
}

func capacityFromAxle() trade.Function {
	return trade.Plain(trade.Function{
		Name: "truck.capacity_from_axle", About: "The same with moments about the front axle; gives more than truck.capacity_at, so use it only with the maker's distance from axle to fork face. The plate governs.",
		Formula: "W = W0·(f + c0)/(f + c), at most W0",
		Params:  append(plateParams(), axleRange.Param("axle_to_face", "front axle to fork face, from the truck's data sheet")),
		Results: []trade.Result{trade.ResultOf("capacity", "what it may carry there", units.Mass, "lb", units.Down)},
		Source:  "moments about the front axle", Example: `truck.capacity_from_axle(lb(5000), inch(24), inch(28), inch(18))`,
	}, func(x []float64) (float64, error) { return CapacityFromAxle(x[0], x[1], x[2], x[3]) })
}

func hungLoadCentre() trade.Function {
	return trade.Plain(trade.Function{
		Name: "truck.hung_load_centre", About: "Load centre of a load hung past the fork tips. Hanging from forks needs the maker's written approval and a plate for it; the plate governs.",
		Formula: "c = fork length + distance past the tips",
		Params:  []trade.Param{bladeRange.Param("fork_length", "fork face to tip"), reachRange.Param("past_tips", "tip to the line the load hangs on")},
		Results: []trade.Result{trade.ResultOf("load_centre", "fork face to the line the load hangs on", units.Length, "inch", units.Up)},
		Source:  "geometry; 29 CFR 1910.178(a)(4) for the approval", Example: `truck.hung_load_centre(inch(48), inch(6))`,
	}, func(x []float64) (float64, error) { return HungLoadCentre(x[0], x[1]) })
}

func engagement() trade.Function {
	return trade.Record(trade.Function{
		Name: "truck.engagement", About: "How far forks reach under a load, against two thirds of its depth. The plate governs what may be carried.",
		Formula: "share = reach/depth, at most 1; use = (2/3)/share",
		Params:  []trade.Param{bladeRange.Param("reach", "length of fork under the load"), centreRange.Param("depth", "depth of the load from the fork face out")},
		Results: []trade.Result{trade.ResultOf("share", "of the load's depth", units.Ratio, "percent", units.Down), useOf("use", "two thirds over share; above 1 the forks are too short")},
		Source:  "29 CFR 1910.178(o) for engaging the load as far as possible; two thirds is common practice", Example: `truck.engagement(inch(42), inch(48))`,
	}, func(x, out []float64) error {
		r, err := Engagement(x[0], x[1])
		if err == nil {
			out[0], out[1] = r.Share, r.Use
		}
		return err
	})
}

func forkShare() trade.Function {
	work := func(x []float64) (Shared, error) { return ForkShare(Across{x[0], x[1], x[2]}) }
	return trade.Worked(trade.Function{
		Name: "truck.fork_share", About: "What each of two forks carries when the load is off the middle between them. Compare the heavier with the rating stamped on one fork; the plate governs.",
		Formula: "heavier = W·(1/2 + offset/spread)",
		Params: []trade.Param{loadRange.Param("load", "weight of the load"), bladeRange.Param("spread", "centre to centre of the forks"),
			reachRange.Param("offset", "load's centre of gravity from midway between the forks")},
		Results: []trade.Result{trade.ResultOf("heavier", "on the heavier fork", units.Mass, "lb", units.Up), trade.ResultOf("lighter", "on the lighter fork", units.Mass, "lb", units.Nearest),
			trade.ResultOf("share", "of the load on the heavier fork", units.Ratio, "percent", units.Up)},
		Source: "moments", Example: `truck.fork_share(lb(4000), inch(30), inch(4))`,
	}, work, func(r Shared, out []float64) {
		out[0], out[1], out[2] = r.Heavier, r.Lighter, r.HeavierPortion
	})
}

func forkWear() trade.Function {
	work := func(x []float64) (ForkResult, error) { return ForkWear(Fork{x[0], x[1], x[2], x[3], x[4], x[5]}) }
	return trade.Worked(trade.Function{
		Name: "truck.fork_wear", About: "Whether forks are worn or bent past use: above 1 they come off. A crack takes them off at once. The maker's manual and plate govern.",
		Formula: "lost/(10 % of new); angle/3°; bow/(0.5 % of length); tips/(3 % of blade)",
		Params: []trade.Param{newThickness.Param("new", "thickness when new, as at the upper shank"), wornThickness.Param("worn", "least thickness now, at the heel"),
			angleOff.Param("angle_off", "blade to shank away from what it was new"), reachRange.Param("bow", "blade or shank out of straight"),
			bladeRange.Param("blade", "length of the blade"), reachRange.Param("tips", "difference in height of the two tips")},
		Results: []trade.Result{useOf("use", "greatest of all"), useOf("thickness", "lost thickness over its limit"), useOf("angle", "angle off over its limit"),
			useOf("straightness", "out of straight over its limit"), useOf("tip_height", "difference of the tips over its limit"),
			trade.WordOf("governs", "which is worst", "thickness", "angle", "straightness", "tips")},
		Source:  "ANSI B56.1-2005 as restated by fork and truck makers",
		Example: `truck.fork_wear({new: inch(1.5), worn: inch(1.42), angle_off: deg(1), bow: inch(0.1), blade: inch(42), tips: inch(0.5)})`,
	}, work, func(r ForkResult, out []float64) {
		out[0] = r.Use()
		uses(out[1:5], r.Checks[:])
		out[5] = float64(r.Governs)
	})
}

func forkExtension() trade.Function {
	return trade.Plain(trade.Function{
		Name: "truck.fork_extension_limit", About: "Greatest length of a fork extension. It moves the load centre out and needs its own plate, which governs.", Formula: "1.5·fork length",
		Params:  []trade.Param{bladeRange.Param("fork_length", "length of the fork under it")},
		Results: []trade.Result{trade.ResultOf("length", "of the extension", units.Length, "inch", units.Down)},
		Source:  "ANSI B56.1-2005, 7.39.1, as quoted by a supplier", Example: `truck.fork_extension_limit(inch(48))`,
	}, func(x []float64) (float64, error) { return ForkExtensionLimit(x[0]) })
}

func liftTable() trade.Function {
	work := func(x []float64) (TableResult, error) {
		return LiftTable(Table{Load: x[0], Rating: x[1], Weight: x[2], PlatformHalf: x[3], BaseHalf: x[4], Offset: x[5], EndRating: x[6]})
	}
	return trade.Worked(trade.Function{
		Name: "truck.lift_table", About: "A lift table with the load's centre of gravity off its middle, or off its edge: rating, load on one end, lift-off, tipping. The plate governs, and the maker's figure for edge loads.",
		Formula: "near end = W·(1/2 + x/(2s)); tipping 1.5·W·(x − b) against table·b",
		Params: []trade.Param{loadRange.Param("load", "weight of the load"), loadRange.Param("rating", "rated capacity on the table's plate"),
			loadRange.Param("table_weight", "weight of the table itself"), centreRange.Param("platform_half", "middle of the table to the line its platform rests on"),
			centreRange.Param("base_half", "middle of the table to the edge of its base, or line of its wheels"),
			reachRange.Param("offset", "middle of the table to the load's centre of gravity"),
			endRatingRange.Param("end_rating", "maker's rating for one end or side; 0 takes half the plate").Usual(0)},
		Results: []trade.Result{useOf("use", "greatest of all"), useOf("capacity_use", "load over the plate"), useOf("end", "load on one end over its rating"),
			useOf("lift_off", "offset over the platform's support"), useOf("tipping", "1.5 times the tipping moment over the holding moment"),
			trade.WordOf("governs", "which is worst", "rating", "end", "lift-off", "tipping"),
			trade.ResultOf("near_end", "load on the near end", units.Mass, "lb", units.Up), trade.ResultOf("far_end", "load on the far end; below 0 it lifts", units.Mass, "lb", units.Down)},
		Source:  "moments; half the rating on an end and 1.5 against tipping: " + trade.CommonPractice,
		Example: `truck.lift_table({load: lb(2000), rating: lb(4000), table_weight: lb(900), platform_half: inch(20), base_half: inch(22), offset: inch(8)})`,
	}, work, func(r TableResult, out []float64) {
		out[0] = r.Use()
		uses(out[1:5], r.Checks[:])
		out[5], out[6], out[7] = float64(r.Governs), r.NearEnd, r.FarEnd
	})
}

func grade() trade.Function {
	return trade.Plain(trade.Function{
		Name: "truck.grade", About: "A slope as a share, rise over run. Over 10 % a loaded truck drives with its load upslope, up and down; the plate and manual govern.", Formula: "rise/run",
		Params:  []trade.Param{reachRange.Param("rise", "rise"), centreRange.Param("run", "level distance")},
		Results: []trade.Result{trade.ResultOf("grade", "slope", units.Ratio, "percent", units.Up)},
		Source:  "30 CFR 57.16016; WAC 296-863-40015", Example: `truck.grade(inch(6), ft(6))`,
	}, func(x []float64) (float64, error) { return Grade(x[0], x[1]) })
}

func gradeFromAngle() trade.Function {
	return trade.Plain(trade.Function{
		Name: "truck.grade_from_angle", About: "A slope as a share, from its angle. Over 10 % a loaded truck drives with its load upslope; the plate and manual govern.", Formula: "tan a",
		Params:  []trade.Param{angleOff.Param("angle", "of the slope")},
		Results: []trade.Result{trade.ResultOf("grade", "slope", units.Ratio, "percent", units.Up)},
		Source:  "geometry; 30 CFR 57.16016 for the 10 %", Example: `truck.grade_from_angle(deg(4))`,
	}, func(x []float64) (float64, error) { return GradeFromAngle(x[0]) })
}
