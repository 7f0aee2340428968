package lift

import (
	"gudgeon/trade"
	"gudgeon/units"
)

var legCountRange = trade.Between("leg count", 1, 4, units.Number, "")

func legFunctions() []trade.Function {
	load := func(name, about string) trade.Result { return trade.ResultOf(name, about, units.Mass, "lb", units.Up) }
	angle := func(name, about string) trade.Result {
		return trade.ResultOf(name, about, units.Angle, "deg", units.Down)
	}
	weight := loadParam("weight", "weight of the part and what hangs with it")
	return []trade.Function{
		trade.Plain(trade.Function{
			Name: "lift.leg_angle", About: "Angle of a sling leg from the horizontal. Under 30 degrees is refused.", Formula: "sin a = height/length",
			Params:  []trade.Param{lengthRange.Param("height", "hook above the lifting points"), lengthRange.Param("length", "length of the leg")},
			Results: []trade.Result{angle("angle", "from the horizontal")}, Source: "geometry; NAVEDTRA 14080 p. 3-23; 30 degrees as in sling practice citing 29 CFR 1910.184",
			Example: `lift.leg_angle(ft(8), ft(10))`,
		}, func(x []float64) (float64, error) { return LegAngle(x[0], x[1]) }),
		trade.Plain(trade.Function{
			Name: "lift.leg_load", About: "Load on each leg of a sling whose hook is over the centre of gravity. Three or four legs count as two, because a stiff part can rest on two.",
			Formula: "T = W/(n·sin a), n = 1, 2, 2, 2",
			Params:  []trade.Param{weight, legCountRange.Param("legs", "number of legs"), legAngleRange.Param("angle", "of the legs from the horizontal")},
			Results: []trade.Result{load("load", "on one leg")}, Source: "NAVEDTRA 14080 pp. 3-23, 3-24 (Equipment Operator)",
			Example: `lift.leg_load(lb(4000), 2, deg(60))`,
		}, func(x []float64) (float64, error) { return LegLoad(x[0], x[1], x[2]) }),
		trade.Record(trade.Function{
			Name: "lift.vertical_legs", About: "Share of a weight on two vertical legs: the leg nearer the centre of gravity carries more.",
			Formula: "left = W·b/(a + b), right = W·a/(a + b)",
			Params: []trade.Param{weight, boreRange.Param("from_left", "left leg to centre of gravity"),
				boreRange.Param("from_right", "right leg to centre of gravity")},
			Results: []trade.Result{load("left", "on the left leg"), load("right", "on the right leg")}, Source: "moments about a leg",
			Example: `lift.vertical_legs(lb(10000), ft(2), ft(8))`,
		}, func(x, out []float64) (err error) {
			left, right, err := VerticalLegs(x[0], x[1], x[2])
			if err == nil {
				out[0], out[1] = left, right
			}
			return err
		}),
		trade.Record(trade.Function{
			Name: "lift.angled_legs", About: "Load on two unlike legs, from their angles measured with the part hanging.",
			Formula: "left = W·cos r/sin(l + r), right = W·cos l/sin(l + r)",
			Params: []trade.Param{weight, legAngleRange.Param("left_angle", "left leg from the horizontal"),
				legAngleRange.Param("right_angle", "right leg from the horizontal; the two together at most 170 degrees")},
			Results: []trade.Result{load("left", "on the left leg"), load("right", "on the right leg")}, Source: "statics of three forces at the hook",
			Example: `lift.angled_legs(lb(4000), deg(45), deg(60))`,
		}, func(x, out []float64) error {
			left, right, err := AngledLegs(x[0], x[1], x[2])
			if err == nil {
				out[0], out[1] = left, right
			}
			return err
		}),
		twoLegs(weight, load, angle), fourLegs(weight, load, angle),
	}
}

type makeResult func(name, about string) trade.Result

func twoLegs(weight trade.Param, load, angle makeResult) trade.Function {
	work := func(x []float64) (TwoLegsResult, error) {
		return LoadTwoLegs(TwoLegs{Weight: x[0], Span: x[1], LeftLength: x[2], RightLength: x[3],
			CentreFromLeft: x[4], CentreBelow: x[5], RightAbove: x[6]})
	}
	return trade.Worked(trade.Function{
		Name: "lift.two_legs", About: "Load on two legs of any lengths with the centre of gravity off the middle: the part swings until its centre of gravity is under the hook.",
		Formula: "T1·u1 + T2·u2 = W·v",
		Params: []trade.Param{weight, lengthRange.Param("span", "between the lifting points, part level"),
			lengthRange.Param("left_length", "left leg with its shackle"), lengthRange.Param("right_length", "right leg with its shackle"),
			placeRange.Param("centre_from_left", "centre of gravity from the left lifting point, part level"),
			placeRange.Param("centre_below", "centre of gravity below the left lifting point"),
			placeRange.Param("right_above", "right lifting point above the left one").Usual(0)},
		Results: []trade.Result{load("left", "on the left leg"), load("right", "on the right leg"),
			angle("left_angle", "left leg from the horizontal, at rest"), angle("right_angle", "right leg from the horizontal, at rest"),
			trade.ResultOf("tilt", "of the part at rest; positive: right end low", units.Angle, "deg", units.Nearest),
			trade.ResultOf("hook_above", "hook above the centre of gravity, at rest", units.Length, "inch", units.Up)},
		Source:  "statics with the legs' real geometry",
		Example: `lift.two_legs({weight: lb(4000), span: ft(8), left_length: ft(7), right_length: ft(8), centre_from_left: ft(3.5), centre_below: ft(1)})`,
	}, work, func(r TwoLegsResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4], out[5] = r.Left, r.Right, r.LeftAngle, r.RightAngle, r.Tilt, r.HookAbove
	})
}

func fourLegs(weight trade.Param, load, angle makeResult) trade.Function {
	work := func(x []float64) (FourLegsResult, error) {
		return LoadFourLegs(FourLegs{Weight: x[0], Length: x[1], Width: x[2], Height: x[3], CentreAlong: x[4], CentreAcross: x[5]})
	}
	return trade.Worked(trade.Function{
		Name: "lift.four_legs", About: "The most that any leg can carry of a stiff part on four legs, with the centre of gravity anywhere between them. Two legs may carry all of it.",
		Formula: "T = (Vi + min(Vj, Vk))·leg/height",
		Params: []trade.Param{weight, lengthRange.Param("length", "between lifting points along the part"),
			lengthRange.Param("width", "between lifting points across the part"), lengthRange.Param("height", "hook above the lifting points"),
			lengthRange.Param("centre_along", "centre of gravity from one end's lifting points"),
			lengthRange.Param("centre_across", "centre of gravity from one side's lifting points")},
		Results: []trade.Result{load("load", "largest leg load"), load("vertical", "largest share of the weight on a corner"),
			angle("angle", "flattest leg from the horizontal"),
			trade.ResultOf("shortest", "shortest leg, to hang level", units.Length, "inch", units.Nearest),
			trade.ResultOf("longest", "longest leg, to hang level", units.Length, "inch", units.Nearest)},
		Source:  "statics of a stiff part; NAVEDTRA 14080 p. 3-24 and 14081 p. 13-28 for two legs carrying all",
		Example: `lift.four_legs({weight: lb(8000), length: ft(6), width: ft(4), height: ft(6), centre_along: ft(2.5), centre_across: ft(2)})`,
	}, work, func(r FourLegsResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4] = r.Load, r.Vertical, r.Angle, r.Shortest, r.Longest
	})
}

func slingFunctions() []trade.Function {
	factor := []trade.Result{trade.ResultOf("factor", "multiply the load by this", units.Number, "number", units.Up)}
	return []trade.Function{
		trade.Plain(trade.Function{
			Name: "lift.sling_capacity", About: "What a hitch may lift, from the vertical rating on the tag. A bridle of three or four legs counts as two. A choker below 45 degrees is refused. The tag governs where it says less.",
			Formula: "one leg V·sin a; bridle, basket 2V·sin a; double basket 4V·sin a; choker k·V; choker bridle 2k·V·sin a",
			Params: []trade.Param{loadParam("rating", "vertical rating of one sling, from its tag"), trade.Choice("hitch", "how it is rigged", hitches...),
				hitchAngleRange.Param("angle", "from the horizontal; of the choke for a choker").Usual(90 * degree),
				chokeFactorRange.Param("choker_factor", "choker rating over vertical rating; 0.45 for natural fibre rope").Usual(0.75)},
			Results: []trade.Result{capacityOf("what may be lifted")},
			Source:  "NAVEDTRA 14080 pp. 3-23, 3-24 and 14081 p. 13-20",
			Example: `lift.sling_capacity(lb(5000), "bridle", deg(60), 0.75)`,
		}, func(x []float64) (float64, error) {
			hitch, err := index("hitch", x[1], hitches)
			if err != nil {
				return 0, err
			}
			return SlingCapacity(x[0], Hitch(hitch), x[2], x[3])
		}),
		trade.Plain(trade.Function{
			Name: "lift.working_load", About: "Working load from a breaking strength. Hardware without a tag or mark is not for lifting.", Formula: "breaking/factor",
			Params:  []trade.Param{loadParam("breaking", "breaking strength, as a weight"), designFactorRange.Param("factor", "design factor").Usual(5)},
			Results: []trade.Result{trade.ResultOf("working_load", "working load", units.Mass, "lb", units.Down)},
			Source:  "DOE-STD-1090-96, 11.3.1.3 and 11.3.5", Example: `lift.working_load(lb(50000), 5)`,
		}, func(x []float64) (float64, error) { return WorkingLoad(x[0], x[1]) }),
		trade.Plain(trade.Function{
			Name: "lift.proof_load", About: "Test load before a custom accessory, a sling leg or an unknown hook goes to work.", Formula: "1.25·rating; 2·rating for a sling leg or hook",
			Params:  []trade.Param{loadParam("rating", "rated load"), trade.Choice("what", "what is tested; an accessory is a custom grab, hook or clamp", proofKinds...)},
			Results: []trade.Result{trade.ResultOf("load", "test load", units.Mass, "lb", units.Nearest)},
			Source:  "29 CFR 1926.251(a)(4); NAVEDTRA 14251; WAC 296-304-07005", Example: `lift.proof_load(lb(2000), "custom accessory")`,
		}, func(x []float64) (float64, error) {
			what, err := index("what is tested", x[1], proofKinds)
			if err != nil {
				return 0, err
			}
			return ProofLoad(x[0], ProofKind(what))
		}),
		trade.Plain(trade.Function{
			Name: "lift.hoist_factor", About: "Dynamic factor for steady hoisting with a crane.", Formula: "1 + max(0.15, 0.005·v), v in ft/min",
			Params: []trade.Param{hoistSpeedRange.Param("speed", "hoisting speed, to 100 ft/min")}, Results: factor,
			Source: "CMAA 70, hoist load factor, from memory", Example: `lift.hoist_factor(sfpm(20))`,
		}, func(x []float64) (float64, error) { return HoistFactor(x[0]) }),
		trade.Plain(trade.Function{
			Name: "lift.snatch_factor", About: "Dynamic factor when a load falls before its sling tightens; a load let go suddenly counts twice.", Formula: "1 + √(1 + 2·drop/stretch)",
			Params:  []trade.Param{dropRange.Param("drop", "how far it falls"), stretchRange.Param("stretch", "stretch of the rigging under the load at rest")},
			Results: factor, Source: "energy balance, standard textbook result", Example: `lift.snatch_factor(inch(1), inch(0.25))`,
		}, func(x []float64) (float64, error) { return SnatchFactor(x[0], x[1]) }),
		trade.Plain(trade.Function{
			Name: "lift.chain_capacity", About: "Field rule for open-link chain: a cross-check only; a sling chain's tag governs.", Formula: "8·D² short tons, D in inches",
			Params: []trade.Param{chainSizeRange.Param("diameter", "stock of the link at its thinnest")}, Results: []trade.Result{capacityOf("what it may carry")},
			Source: "US Army FM 5-125 (1995) p. 3-2", Example: `lift.chain_capacity(inch(0.75))`,
		}, func(x []float64) (float64, error) { return ChainCapacity(x[0]) }),
		trade.Plain(trade.Function{
			Name: "lift.chain_wear_limit", About: "Least thickness left at any point of a chain link; below it the chain is scrap.", Formula: "from a table",
			Params:  []trade.Param{trade.Choice("size", "nominal size of the chain", chainSizes()...)},
			Results: []trade.Result{trade.ResultOf("least", "least thickness", units.Length, "inch", units.Up)},
			Source:  "Mich. Admin. Code R 408.14923 Table 1", Example: `lift.chain_wear_limit("1/2 in")`,
		}, func(x []float64) (float64, error) {
			i, err := index("chain size", x[0], chainSizeNames)
			if err != nil {
				return 0, err
			}
			return chainWear[i].least * inch, nil
		}),
		tieDown(),
	}
}

var chainSizeNames = chainSizes()

func tieDown() trade.Function {
	return trade.Record(trade.Function{
		Name: "lift.tie_down", About: "Whether the ties on a vehicle together hold half the load's weight. A tie to the load counts half, a tie over it in full.",
		Formula: "needed = W/2; total = rating·(direct/2 + over)",
		Params: []trade.Param{loadParam("weight", "weight of the load"), loadParam("rating", "working load limit of one tie, from its tag"),
			tieRange.Param("direct", "number of ties from the vehicle to the load"), tieRange.Param("over", "number of ties over or through the load and back to the vehicle")},
		Results: []trade.Result{useOf("use", "needed over total"), trade.ResultOf("needed", "working load limit needed", units.Mass, "lb", units.Up),
			trade.ResultOf("total", "working load limit there is", units.Mass, "lb", units.Down)},
		Source: "49 CFR 393.102 and 393.106", Example: `lift.tie_down(lb(20000), lb(5000), 4, 0)`,
	}, func(x, out []float64) error {
		r, err := TieDown(TieDowns{Weight: x[0], Rating: x[1], Direct: x[2], Over: x[3]})
		if err != nil {
			return err
		}
		out[0], out[1], out[2] = r.Use, r.Needed, r.Total
		return nil
	})
}

func hardwareFunctions() []trade.Function {
	held := []trade.Result{capacityOf("what it may carry this way"), useOf("use", "load over capacity")}
	put := func(out []float64, h Held, err error) error {
		if err == nil {
			out[0], out[1] = h.Capacity, h.Use
		}
		return err
	}
	return []trade.Function{
		trade.Record(trade.Function{
			Name: "lift.shackle", About: "What a screw-pin or bolt-type shackle may carry, from the mark on it. No mark, no lift. The maker's chart governs.",
			Formula: "marked·(1 to 5°, 0.70 to 45°, 0.50 to 90°)",
			Params: []trade.Param{loadParam("load", "load on the shackle"), loadParam("marked", "rating marked on the shackle"),
				sideAngleRange.Param("side_angle", "pull from in line, in the plane of the bow").Usual(0),
				spreadRange.Param("spread", "between two legs in the bow").Usual(0)},
			Results: held, Source: "bands of WAC 296-155-33905 fig. 17; percentages from memory, as in several makers' charts",
			Example: `lift.shackle(lb(3000), lb(6500), deg(0), deg(60))`,
		}, func(x, out []float64) error {
			h, err := Shackle(x[0], x[1], x[2], x[3])
			return put(out, h, err)
		}),
		trade.Plain(trade.Function{
			Name: "lift.shackle_field_rule", About: "Field rule for a shackle: a cross-check of a mark that looks wrong, never a rating.", Formula: "3·D² short tons, D in inches",
			Params: []trade.Param{shackleRange.Param("diameter", "stock of the bow")}, Results: []trade.Result{capacityOf("by the rule")},
			Source: "NAVEDTRA 14251 (Steelworker)", Example: `lift.shackle_field_rule(inch(0.625))`,
		}, func(x []float64) (float64, error) { return ShackleFieldRule(x[0]) }),
		trade.Record(trade.Function{
			Name: "lift.eyebolt", About: "What an eyebolt may carry, from its marked rating: shouldered and seated flat to 45 degrees from its axis, plain only straight; pulled in the plane of the eye. The maker's table governs.",
			Formula: "marked·(1 to 5°, 0.80 to 15°, 0.65 to 30°, 0.25 to 45°)",
			Params: []trade.Param{loadParam("load", "load on the eyebolt"), loadParam("marked", "vertical rating marked on the eyebolt"),
				eyeAngleRange.Param("angle", "pull from the bolt's axis"), yesNo("shoulder", "has a shoulder, seated flat")},
			Results: held, Source: "makers' tables for shouldered eyebolts, the lower where they differ",
			Example: `lift.eyebolt(lb(400), lb(1550), deg(30), true)`,
		}, func(x, out []float64) error {
			shoulder, err := yes("shoulder", x[3])
			if err != nil {
				return err
			}
			h, err := Eyebolt(x[0], x[1], x[2], shoulder)
			return put(out, h, err)
		}),
		trade.Plain(trade.Function{
			Name: "lift.eyebolt_pull", About: "Pull of a sling leg from the axis of an eyebolt that stands upright.", Formula: "90° − leg angle",
			Params:  []trade.Param{legAngleRange.Param("leg_angle", "sling leg from the horizontal")},
			Results: []trade.Result{trade.ResultOf("angle", "from the bolt's axis", units.Angle, "deg", units.Up)}, Source: "geometry",
			Example: `lift.eyebolt_pull(deg(60))`,
		}, func(x []float64) (float64, error) { return EyeboltPull(x[0]) }),
		trade.Plain(trade.Function{
			Name: "lift.eyebolt_thread", About: "Least thread engagement of an eyebolt in steel; nine tenths of its threads must be in.", Formula: "1.5·d",
			Params:  []trade.Param{threadRange.Param("diameter", "thread diameter")},
			Results: []trade.Result{trade.ResultOf("least", "least engagement", units.Length, "inch", units.Up)}, Source: "rigging supplier's handbook page",
			Example: `lift.eyebolt_thread(inch(0.5))`,
		}, func(x []float64) (float64, error) { return EyeboltThread(x[0]) }),
	}
}
