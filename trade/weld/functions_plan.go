package weld

import (
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

var (
	errProcess  = errors.New("unknown welding process")
	errNoSurvey = errors.New("the survey is missing")
	errWhole    = errors.New("the number of layers must be a whole number")
)

var (
	paramWorn      = limWorn.Param("worn_diameter", "Diameter of the worn bore")
	paramFinish    = limFinish.Param("finish_diameter", "Diameter the bore is to have")
	paramTruing    = limTruing.Param("truing_diameter", "Truing bore before welding; 0 for none")
	paramAllowance = limAllowance.Param("allowance", "Metal wanted under the finish cut, on the radius")
	limSetRadius   = trade.Between("set radius", 0, 1.5, units.Length, "0 when the readings are radii themselves")
)

func planFunctions() []trade.Function {
	return []trade.Function{trade.Plain(trade.Function{
		Name: "weld.thickness_needed", About: "Weld thickness that the worst place of an off-centre bore needs, on the radius.",
		Formula: "t = max(0, max(d/2 + e, T/2) + a − D/2)",
		Params:  []trade.Param{paramWorn, limOffset.Param("offset", "Distance between the old axis and the true one"), paramTruing, paramFinish, paramAllowance},
		Results: []trade.Result{trade.ResultOf("thickness", "Weld thickness at the worst place", units.Length, "", units.Up)},
		Source:  "plane geometry of two circles, exact", Example: "weld.thickness_needed(inch(3.1), inch(0.125), inch(3.2), inch(3), inch(0.03))",
	}, func(x []float64) (float64, error) { return ThicknessNeeded(x[0], x[1], x[2], x[3], x[4]) }), trade.Plain(trade.Function{
		Name: "weld.layers_needed", About: "Whole layers that make up a thickness.",
		Formula: "n = ⌈t/b⌉",
		Params:  []trade.Param{limThick.Param("thickness", "Weld thickness, on the radius"), paramLayer},
		Results: []trade.Result{trade.ResultOf("layers", "Number of layers", units.Number, "", units.Up)},
		Source:  "counting", Example: "weld.layers_needed(inch(0.26), inch(0.09))",
	}, func(x []float64) (float64, error) {
		n, err := LayersNeeded(x[0], x[1])
		return float64(n), err
	}), {
		Name: "weld.plan", About: "Whether a planned build-up of a surveyed bore will clean up everywhere, and what is short where.",
		Formula: "stock = Rf − (max(ρ, Rt) − w) at every clock position and depth",
		Params: []trade.Param{
			{Name: "survey", About: "Indicator readings round the worn bore at two stations or more, plus outward", Kind: units.Survey},
			limSetRadius.Param("set_radius", "Radius at which the indicator reads zero; 0 if the readings are radii"),
			paramFinish, paramTruing, paramAllowance, paramLayer,
			limLayers.Param("layers", "Layers planned all over"),
			limBoss.Param("boss_diameter", "Outside diameter of the boss, taken as centred on the true axis; 0 if not known"),
			limLength.Param("bore_length", "Face to face"),
			limShift.Param("axis_x_near", "True axis at the near face, from the bar, to 3 o'clock").Usual(0),
			limShift.Param("axis_y_near", "True axis at the near face, from the bar, to 12 o'clock").Usual(0),
			limShift.Param("axis_x_far", "True axis at the far face, from the bar, to 3 o'clock").Usual(0),
			limShift.Param("axis_y_far", "True axis at the far face, from the bar, to 12 o'clock").Usual(0),
			limLeast.Param("least_weld", "Weld wanted everywhere in the finished bore, on the radius; 0 if not asked").Usual(0),
		},
		Results: planResults(),
		Source:  "plane geometry on the wall that the readings show; the order of work is common practice, no source",
		Example: "weld.plan(worn_bore, inch(1.5), inch(3), inch(3.1), inch(0.03), inch(0.09), 2, inch(5), inch(6))",
		Call:    callPlan,
		Steps: func(in trade.Args) []trade.Step {
			p, err := planOf(in)
			if err != nil {
				return nil
			}
			return p.Steps()
		},
	}}
}

func planResults() []trade.Result {
	l := func(name, about string, r trade.Rounding) trade.Result {
		return trade.ResultOf(name, about, units.Length, "", r)
	}
	hours := func(name, about string) trade.Result {
		return trade.ResultOf(name, about, units.Angle, "hours", units.Nearest)
	}
	return []trade.Result{
		trade.ResultOf("cleans_up", "Whether the allowance is there everywhere", units.YesNo, "", units.Nearest),
		l("least_stock", "Least metal under the finish cut, on the radius; what the grid may miss is taken off", units.Down),
		hours("least_clock", "Where that is: clock position"), l("least_depth", "Where that is: depth", units.Nearest),
		l("most_needed", "Greatest weld thickness needed", units.Up), l("least_needed", "Least weld thickness needed", units.Nearest),
		trade.ResultOf("layers_enough", "Layers all over that would do without hand weld", units.Number, "", units.Up),
		trade.ResultOf("short_areas", "Areas that will not clean up", units.Number, "", units.Nearest),
		l("shortfall", "Greatest shortfall", units.Up),
		hours("short_from", "The worst area begins at this clock position"), hours("short_to", "and ends, going clockwise, at this"),
		l("short_depth_from", "It begins at this depth", units.Down), l("short_depth_to", "and ends at this", units.Up),
		trade.ResultOf("hand_layers", "Hand-laid layers at the worst place", units.Number, "", units.Up),
		trade.ResultOf("share", "Share of the surface that the finish cut reaches", units.Ratio, "percent", units.Down),
		l("wall", "Least wall behind the trued surface; 0 if the boss is not known", units.Down),
		l("thinnest_weld", "Weld in the finished bore where it is thinnest; below zero parent metal shows", units.Down),
		l("truing_for_weld", "Truing diameter that leaves the least weld wanted; 0 if not asked", units.Up),
		l("wall_for_weld", "Wall behind that truing bore", units.Down),
		trade.ResultOf("deposit", "Weld metal, hand weld not included", units.Volume, "", units.Up),
	}
}

func planOf(in trade.Args) (*Plan, error) {
	if len(in.Surveys) == 0 || len(in.Surveys[0]) == 0 {
		return nil, errNoSurvey
	}
	x := in.X
	if err := limLength.Check(x[8]); err != nil {
		return nil, err
	}
	if err := limLayers.Check(x[6]); err != nil {
		return nil, err
	}
	if x[6] != math.Trunc(x[6]) {
		return nil, errWhole
	}
	s, err := bore.Survey(bore.Readings{Sweeps: in.Surveys[0], SetRadius: x[1], Length: x[8]})
	if err != nil {
		return nil, err
	}
	if s.Axis == nil {
		return nil, errors.New("one station gives no axis: sweep the bore at two stations at least")
	}
	wall, err := s.Surface()
	if err != nil {
		return nil, err
	}
	return MakePlan(Job{Surface: wall, Length: x[8], Finish: x[2], Truing: x[3], Allowance: x[4], Layer: x[5], Layers: int(x[6]), Boss: x[7],
		Axis: bore.LineThrough(bore.XY{X: x[9], Y: x[10]}, bore.XY{X: x[11], Y: x[12]}, x[8]), LeastWeld: x[13],
		BossCentre: bore.XY{X: x[9], Y: x[10]}})
}

func callPlan(in trade.Args, out []float64) error {
	p, err := planOf(in)
	if err != nil {
		return err
	}
	var worst Area
	hand, clean := 0, 1.0
	if !p.CleansUp {
		clean, worst = 0, p.Short[0]
		hand = p.HandWeld[len(p.HandWeld)-1].Layer
	}
	var forWeld TruingOption
	if p.Job.LeastWeld > 0 {
		forWeld = p.Truing[1]
	}
	copy(out, []float64{clean, p.LeastStock.Value - p.GridError, p.LeastStock.Clock, p.LeastStock.Z,
		p.MostNeeded.Value, p.LeastNeeded.Value, float64(p.LayersEnough), float64(len(p.Short)), worst.Most.Value,
		worst.From, worst.To, worst.DepthFrom, worst.DepthTo, float64(hand), p.Share, p.Wall.Value,
		p.Truing[0].ThinnestWeld, forWeld.Diameter, forWeld.Wall, p.Deposit.Volume})
	return nil
}
