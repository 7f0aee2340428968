package lift

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func weightFunctions() []trade.Function {
	weight := []trade.Result{trade.ResultOf("weight", "weight", units.Mass, "lb", units.Up)}
	density := densityRange.Param("density", "density of the material, as lift.density gives it")
	return []trade.Function{
		trade.Plain(trade.Function{
			Name: "lift.density", About: "Density of a material by name, the heavier where sources differ.",
			Formula: "from a table", Params: []trade.Param{trade.Choice("material", "what it is made of", Materials()...)},
			Results: []trade.Result{trade.ResultOf("density", "density", units.Density, "lb_per_ft3", units.Up)},
			Source:  "Hibbeler, Statics 14th ed. prob. 9-89 (steel); handbook and riggers' tables; stainless steel, bronze and lead from memory",
			Example: `lift.density("steel")`,
		}, func(x []float64) (float64, error) {
			i, err := index("material", x[0], materialNames)
			if err != nil {
				return 0, err
			}
			return materials[i].density, nil
		}),
		trade.Plain(trade.Function{
			Name: "lift.weight_plate", About: "Weight of a flat plate.", Formula: "W = length·width·thickness·density",
			Params: []trade.Param{lengthRange.Param("length", "length"), lengthRange.Param("width", "width"),
				lengthRange.Param("thickness", "thickness"), density},
			Results: weight, Source: "geometry",
			Example: `lift.weight_plate(ft(4), ft(3), inch(2), lift.density("steel"))`,
		}, func(x []float64) (float64, error) { return BlockWeight(x[0], x[1], x[2], x[3]) }),
		trade.Plain(trade.Function{
			Name: "lift.weight_block", About: "Weight of a rectangular block.", Formula: "W = length·width·height·density",
			Params: []trade.Param{lengthRange.Param("length", "length"), lengthRange.Param("width", "width"),
				lengthRange.Param("height", "height"), density},
			Results: weight, Source: "geometry",
			Example: `lift.weight_block(ft(6), ft(3), ft(4), lb_per_ft3(165))`,
		}, func(x []float64) (float64, error) { return BlockWeight(x[0], x[1], x[2], x[3]) }),
		trade.Plain(trade.Function{
			Name: "lift.weight_bar", About: "Weight of a solid round bar or disc.", Formula: "W = π/4·diameter²·length·density",
			Params:  []trade.Param{lengthRange.Param("diameter", "diameter"), lengthRange.Param("length", "length or thickness"), density},
			Results: weight, Source: "geometry",
			Example: `lift.weight_bar(inch(3), ft(10), lift.density("steel"))`,
		}, func(x []float64) (float64, error) { return BossWeight(x[0], 0, x[1], x[2]) }),
		bossFunction("lift.weight_tube", "Weight of a tube.", `lift.weight_tube(inch(8), inch(7), ft(6), lift.density("steel"))`, weight, density),
		bossFunction("lift.weight_boss", "Weight of a boss with its bore; 0 for a solid one.", `lift.weight_boss(inch(10), inch(5), inch(6), lift.density("steel"))`, weight, density),
		trade.Plain(trade.Function{
			Name: "lift.weight_gusset", About: "Weight of a triangular plate; its centre is a third of the way in from base and upright side.",
			Formula: "W = base·height·thickness·density/2",
			Params: []trade.Param{lengthRange.Param("base", "base"), lengthRange.Param("height", "height square to the base"),
				lengthRange.Param("thickness", "thickness"), density},
			Results: weight, Source: "geometry",
			Example: `lift.weight_gusset(inch(12), inch(9), inch(1), lift.density("steel"))`,
		}, func(x []float64) (float64, error) { return GussetWeight(x[0], x[1], x[2], x[3]) }),
		trade.Plain(trade.Function{
			Name: "lift.weight_by_length", About: "Weight of a bar, pipe or shape from its listed weight per length.", Formula: "W = per_length·length",
			Params:  []trade.Param{perLengthRange.Param("per_length", "weight per length, from the table"), lengthRange.Param("length", "length")},
			Results: weight, Source: "definition",
			Example: `lift.weight_by_length(lb_per_ft(282.36), ft(20))`,
		}, func(x []float64) (float64, error) { return WeightByLength(x[0], x[1]) }),
	}
}

var materialNames = Materials()

func bossFunction(name, about, example string, weight []trade.Result, density trade.Param) trade.Function {
	return trade.Plain(trade.Function{
		Name: name, About: about, Formula: "W = π/4·(outside² − bore²)·length·density",
		Params: []trade.Param{lengthRange.Param("outside", "outside diameter"), boreRange.Param("bore", "bore or inside diameter"),
			lengthRange.Param("length", "length"), density},
		Results: weight, Source: "geometry", Example: example,
	}, func(x []float64) (float64, error) { return BossWeight(x[0], x[1], x[2], x[3]) })
}

func centreFunctions() []trade.Function {
	return []trade.Function{centreOfParts(), centreFromScales(), centreHeight(), centreFromHangs(2), centreFromHangs(3), hang()}
}

func centreOfParts() trade.Function {
	piece := func(name, about string) trade.Param { return pieceRange.Param(name, about) }
	place := func(name string) trade.Param { return placeRange.Param(name, "its centre from a chosen end") }
	params := []trade.Param{
		piece("weight1", "weight of the first piece; a hole is negative"), place("at1"), piece("weight2", "second piece"), place("at2"),
		piece("weight3", "third piece").Usual(0), place("at3").Usual(0), piece("weight4", "fourth piece").Usual(0), place("at4").Usual(0),
	}
	return trade.Record(trade.Function{
		Name: "lift.centre_of_parts", About: "Weight and centre of gravity of up to four pieces, along one direction; a hole counts negative.",
		Formula: "W = ΣWi, x = ΣWi·xi/W", Params: params,
		Results: []trade.Result{
			trade.ResultOf("weight", "total weight", units.Mass, "lb", units.Up),
			trade.ResultOf("centre", "centre of gravity from the same end", units.Length, "inch", units.Nearest),
		},
		Source:  "definition of the centre of gravity",
		Example: `lift.centre_of_parts({weight1: lb(500), at1: inch(6), weight2: lb(200), at2: inch(30)})`,
	}, func(x, out []float64) error {
		var pieces [4]Piece
		for i := range pieces {
			pieces[i].Weight, pieces[i].Centre[0] = x[2*i], x[2*i+1]
		}
		b, err := Centre(pieces[:])
		if err != nil {
			return err
		}
		out[0], out[1] = b.Weight, b.Centre[0]
		return nil
	})
}

func centreFromScales() trade.Function {
	work := func(x []float64) (ScalesResult, error) {
		return CentreFromScales(Scales{Front: x[0], Rear: x[1], Span: x[2]})
	}
	return trade.Worked(trade.Function{
		Name: "lift.centre_from_scales", About: "Weight and centre of gravity of a part weighed on two supports at once.",
		Formula: "W = F + R, x = R·L/W",
		Params: []trade.Param{scaleRange.Param("front", "scale reading at the front, less tare"), scaleRange.Param("rear", "scale reading at the rear, less tare"),
			lengthRange.Param("span", "between the two supports")},
		Results: []trade.Result{
			trade.ResultOf("weight", "whole weight", units.Mass, "lb", units.Up),
			trade.ResultOf("from_front", "centre of gravity behind the front support", units.Length, "inch", units.Nearest),
			trade.ResultOf("from_rear", "centre of gravity ahead of the rear support", units.Length, "inch", units.Nearest),
		},
		Source:  "moments about a support",
		Example: `lift.centre_from_scales(lb(1200), lb(1800), ft(10))`,
	}, work, func(r ScalesResult, out []float64) {
		out[0], out[1], out[2] = r.Weight, r.FromFront, r.FromRear
	})
}

func centreHeight() trade.Function {
	return trade.Plain(trade.Function{
		Name: "lift.centre_height", About: "Height of the centre of gravity, from how a scale reading changes when that end is raised.",
		Formula: "h = r + L·(F0 − F1)/W·cot θ, sin θ = rise/L",
		Params: []trade.Param{loadParam("weight", "whole weight"), scaleRange.Param("level", "reading under the end to be raised, part level"),
			scaleRange.Param("raised", "reading under the same end when raised"), lengthRange.Param("span", "between the two supports"),
			lengthRange.Param("rise", "how far that end was raised, 0.05 to 0.7 of the span"),
			boreRange.Param("support_height", "pivots of the supports above the base line").Usual(0)},
		Results: []trade.Result{trade.ResultOf("height", "centre of gravity above the base line", units.Length, "inch", units.Up)},
		Source:  "vehicle weighing by tilting, derived from moments about the low support",
		Example: `lift.centre_height(lb(3000), lb(1500), lb(1400), ft(10), ft(2), inch(0))`,
	}, func(x []float64) (float64, error) {
		return CentreHeight(Tilt{Weight: x[0], Level: x[1], Raised: x[2], Span: x[3], Rise: x[4], SupportHeight: x[5]})
	})
}

var hangNames = [3]string{"1", "2", "3"}

func centreFromHangs(n int) trade.Function {
	f := trade.Function{
		Name: "lift.centre_from_hangs", About: "Centre of gravity in a side view, where the plumb lines of two trial hangs cross.",
		Formula: "least Σ(ni·(c − pi))²",
		Results: []trade.Result{
			trade.ResultOf("x", "centre of gravity", units.Length, "inch", units.Nearest), trade.ResultOf("y", "centre of gravity", units.Length, "inch", units.Nearest),
			trade.ResultOf("x_uncertainty", "standard uncertainty of x", units.Length, "inch", units.Up),
			trade.ResultOf("y_uncertainty", "standard uncertainty of y", units.Length, "inch", units.Up),
			trade.ResultOf("crossing", "angle between the lines; 90 degrees is best", units.Angle, "deg", units.Down),
			trade.ResultOf("miss", "farthest that a line passes from the centre found; 0 for two", units.Length, "inch", units.Up),
		},
		Source: "plumb-line method; least squares for the best point",
		Example: `lift.centre_from_hangs({point1_x: inch(0), point1_y: inch(0), mark1_x: inch(20), mark1_y: inch(10), ` +
			`point2_x: inch(40), point2_y: inch(0), mark2_x: inch(20), mark2_y: inch(10.2), uncertainty: inch(0.1)})`,
	}
	if n == 3 {
		f.Name, f.About = "lift.centre_from_three_hangs", "Centre of gravity from three trial hangs, the third being the check."
		f.Example = `lift.centre_from_three_hangs({point1_x: inch(0), point1_y: inch(0), mark1_x: inch(20), mark1_y: inch(10), ` +
			`point2_x: inch(40), point2_y: inch(0), mark2_x: inch(20), mark2_y: inch(10.2), ` +
			`point3_x: inch(20), point3_y: inch(30), mark3_x: inch(20.1), mark3_y: inch(10), uncertainty: inch(0.1)})`
	}
	for i := range n {
		for _, what := range [4][2]string{{"point", "_x"}, {"point", "_y"}, {"mark", "_x"}, {"mark", "_y"}} {
			about := "hang point, in the part's own axes"
			if what[0] == "mark" {
				about = "second mark on the same plumb line"
			}
			f.Params = append(f.Params, placeRange.Param(what[0]+hangNames[i]+what[1], about))
		}
	}
	f.Params = append(f.Params, markRange.Param("uncertainty", "standard uncertainty of a mark"))
	params := len(f.Params)
	return trade.Record(f, func(x, out []float64) error {
		var hangs [3]TrialHang
		for i := range n {
			hangs[i] = TrialHang{x[4*i], x[4*i+1], x[4*i+2], x[4*i+3]}
		}
		t, err := CentreFromHangs(hangs[:n], x[params-1])
		if err != nil {
			return err
		}
		out[0], out[1], out[2], out[3], out[4], out[5] = t.X, t.Y, t.UX, t.UY, t.Crossing, t.Miss
		return nil
	})
}

func hang() trade.Function {
	work := func(x []float64) (HangingResult, error) {
		return Hang(Hanging{LugOffset: x[0], LugHeight: x[1], Length: x[2], Wanted: x[3]})
	}
	return trade.Worked(trade.Function{
		Name: "lift.hang", About: "How a part hangs from a lug that is off its centre of gravity, and where to move the lug. Ends are A and B; the end away from the lug goes low.",
		Formula: "tan tilt = offset/height; drop = length·sin tilt; move = height·tan wanted − offset",
		Params: []trade.Param{
			placeRange.Param("lug_offset", "from the centre of gravity to the lug, positive towards end A"),
			lugHeightRange.Param("lug_height", "from the centre of gravity up to where the shackle bears"),
			lengthRange.Param("length", "from end A to end B"),
			wantedRange.Param("wanted_tilt", "tilt wanted, positive with end A high; 0 is level").Usual(0),
		},
		Results: []trade.Result{
			trade.ResultOf("tilt", "from level; positive: A high, B low", units.Angle, "deg", units.Nearest),
			trade.ResultOf("drop", "how much higher A is than B; negative: B is higher", units.Length, "inch", units.Nearest),
			trade.ResultOf("move", "move the lug this far at the same height; positive towards A, negative towards B", units.Length, "inch", units.Nearest),
		},
		Source:  "statics: the centre of gravity comes to rest under the lug",
		Example: `lift.hang({lug_offset: inch(3), lug_height: inch(20), length: ft(6)})`,
	}, work, func(r HangingResult, out []float64) {
		out[0], out[1], out[2] = r.Tilt, r.Drop, r.Move
	})
}
