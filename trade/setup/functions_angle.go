package setup

import (
	"gudgeon/trade"
	"gudgeon/units"
)

const jones = "F. D. Jones, Turning and Boring (1914)"

func angleFunctions() []trade.Function {
	return []trade.Function{slopeFunction(), offsetFunction(), taperFunction(), taperAngleFunction(), tailstockFunction(), sineFunction(), cosineFunction(), tirFunction()}
}

func slopeFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.slope",
		About:   "A slope as an angle, per foot and per metre.",
		Formula: "angle = atan(rise/run); per foot = rise/run × 1 ft; per metre = rise/run × 1 m",
		Params:  []trade.Param{offsetRange.Param("rise", "How much it rises"), distanceRange.Param("run", "Over which distance")},
		Results: []trade.Result{
			trade.ResultOf("angle", "The slope as an angle", units.Angle, "thou_per_ft", units.Nearest),
			trade.ResultOf("per_foot", "Rise over a foot", units.Length, "thou", units.Nearest),
			trade.ResultOf("per_metre", "Rise over a metre", units.Length, "mm", units.Nearest),
		},
		Source:  "definition of the tangent",
		Example: "setup.slope(thou(5), inch(18)).angle",
	}, func(x []float64) (SlopeResult, error) { return Slope(x[0], x[1]) },
		func(r SlopeResult, out []float64) { out[0], out[1], out[2] = r.Angle, r.PerFoot, r.PerMetre })
}

func offsetFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "setup.offset_at",
		About:   "Offset of a tilted axis at a distance along it.",
		Formula: "y = y0 + z·tan(a)",
		Params: []trade.Param{
			offsetRange.Param("offset", "Offset at the start"),
			tiltRange.Param("tilt", "Tilt of the axis"),
			alongRange.Param("distance", "Distance from the start"),
		},
		Results: []trade.Result{trade.ResultOf("offset", "Offset there", units.Length, "thou", units.Nearest)},
		Source:  "geometry",
		Example: "setup.offset_at(thou(4), deg(0.012), inch(18))",
	}, func(x []float64) (float64, error) { return OffsetAt(x[0], x[1], x[2]) })
}

func taperResults() []trade.Result {
	return []trade.Result{
		trade.ResultOf("rate", "Difference of diameter over length", units.Number, "number", units.Nearest),
		trade.ResultOf("per_foot", "Difference of diameter over a foot", units.Length, "inch", units.Nearest),
		trade.ResultOf("included_angle", "Angle between the sides", units.Angle, "deg", units.Nearest),
	}
}

func putTaper(r TaperResult, out []float64) { out[0], out[1], out[2] = r.Rate, r.PerFoot, r.Included }

func taperFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.taper",
		About:   "Taper between two diameters.",
		Formula: "rate = (D-d)/l; included angle = 2·atan(rate/2)",
		Params: []trade.Param{
			diameterRange.Param("large", "Larger diameter"),
			diameterRange.Param("small", "Smaller diameter"),
			distanceRange.Param("length", "Length between them"),
		},
		Results: taperResults(),
		Source:  jones,
		Example: "setup.taper({large: inch(2.5), small: inch(2), length: inch(6)}).per_foot",
	}, func(x []float64) (TaperResult, error) { return Taper(x[0], x[1], x[2]) }, putTaper)
}

func taperAngleFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "setup.taper_of_angle",
		About:   "Taper of an included angle.",
		Formula: "rate = 2·tan(A/2)",
		Params:  []trade.Param{includedRange.Param("included_angle", "Angle between the sides")},
		Results: taperResults(),
		Source:  "D. Collard, table of tapers for turning and boring (1902)",
		Example: "setup.taper_of_angle(deg(20)).per_foot",
	}, func(x []float64) (TaperResult, error) { return TaperOfAngle(x[0]) }, putTaper)
}

func tailstockFunction() trade.Function {
	rate := trade.Between("taper", 0, 1, units.Number, "")
	return trade.Plain(trade.Function{
		Name:    "setup.tailstock_offset",
		About:   "How far to set a tailstock over for a taper.",
		Formula: "offset = rate·L/2",
		Params:  []trade.Param{rate.Param("rate", "Difference of diameter over length; 1 in/ft is 1/12"), distanceRange.Param("length", "Whole length between centres")},
		Results: []trade.Result{trade.ResultOf("offset", "Set the tailstock over by", units.Length, "inch", units.Nearest)},
		Source:  jones,
		Example: "setup.tailstock_offset(1/12, inch(9))",
	}, func(x []float64) (float64, error) { return TailstockOffset(x[0], x[1]) })
}

func sineFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "setup.sine_bar",
		About:   "Height of blocks under a sine bar.",
		Formula: "h = L·sin(A)",
		Params:  []trade.Param{distanceRange.Param("length", "Distance between the rolls"), sineRange.Param("angle", "Angle")},
		Results: []trade.Result{trade.ResultOf("height", "Height of the blocks", units.Length, "inch", units.Nearest)},
		Source:  "definition of the sine",
		Example: "setup.sine_bar(inch(5), deg(27))",
	}, func(x []float64) (float64, error) { return SineBar(x[0], x[1]) })
}

func cosineFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "setup.cosine",
		About:   "True movement behind a lever indicator whose arm stands at an angle to the surface.",
		Formula: "true = reading·cos(A)",
		Params:  []trade.Param{readingRange.Param("reading", "What the indicator reads"), cosineRange.Param("angle", "Angle between arm and surface")},
		Results: []trade.Result{trade.ResultOf("movement", "True movement", units.Length, "thou", units.Nearest)},
		Source:  "a trade page on test-indicator cosine error",
		Example: "setup.cosine(thou(4), deg(30))",
	}, func(x []float64) (float64, error) { return Cosine(x[0], x[1]) })
}

func tirFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "setup.half_tir",
		About:   "Offset of a centre behind a total indicator reading.",
		Formula: "offset = TIR/2",
		Params:  []trade.Param{tirRange.Param("tir", "Whole swing of the indicator in a turn")},
		Results: []trade.Result{trade.ResultOf("offset", "Offset of the centre", units.Length, "thou", units.Up)},
		Source:  "a chiller maker's alignment manual p. 216",
		Example: "setup.half_tir(thou(4))",
	}, func(x []float64) (float64, error) { return HalfTIR(x[0]) })
}
