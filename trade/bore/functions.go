package bore

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// Functions lists what a rule sheet can call of this package.
func Functions() []trade.Function {
	list := append(stockFunctions(), checkFunctions()...)
	return append(list, surveyFunctions()...)
}

// one gives the value or the error of a typed function that returns one number.
func one(out []float64, v float64, err error) error {
	if err != nil {
		return err
	}
	out[0] = v
	return nil
}

func length(name, about string, r trade.Rounding) trade.Result {
	return trade.Result{Name: name, About: about, Kind: units.Length, Round: r}
}

func thou(name, about string, r trade.Rounding) trade.Result {
	return trade.Result{Name: name, About: about, Kind: units.Length, Unit: "thou", Round: r}
}

func clock(name, about string) trade.Result {
	return trade.Result{Name: name, About: about, Kind: units.Angle, Unit: "hours"}
}

const exact = "plane geometry of two circles, exact"

var (
	paramWorn   = limWorn.param("worn_diameter", "Diameter of the old bore")
	paramFinish = limFinish.param("finish_diameter", "Diameter the bore is to have")
	paramOffset = limOffset.param("offset", "Distance between the old axis and the new one")
)

func stockFunctions() []trade.Function {
	return []trade.Function{{
		Name: "bore.eccentric_stock", About: "Least metal left to cut round an off-centre bore, on the radius; below zero is a dark patch.",
		Formula: "s = (D − d)/2 − e",
		Params:  []trade.Param{paramWorn, paramFinish, paramOffset},
		Results: []trade.Result{length("stock", "Least stock on the radius", units.Down)},
		Source:  exact, Example: "bore.eccentric_stock(inch(2.9), inch(3), inch(0.02))",
		Call: func(in trade.Args, out []float64) error {
			v, err := EccentricStock(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}, {
		Name: "bore.finish_for_stock", About: "Smallest finish diameter that leaves a given stock everywhere.",
		Formula: "D = d + 2(e + s)",
		Params:  []trade.Param{paramWorn, paramOffset, limStock.param("stock", "Stock wanted on the radius")},
		Results: []trade.Result{length("finish_diameter", "Smallest finish diameter", units.Up)},
		Source:  exact, Example: "bore.finish_for_stock(inch(2.9), inch(0.02), inch(0.01))",
		Call: func(in trade.Args, out []float64) error {
			v, err := FinishForStock(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}, {
		Name: "bore.greatest_offset", About: "How far off centre the old bore may be and still leave a given stock everywhere.",
		Formula: "e = (D − d)/2 − s",
		Params:  []trade.Param{paramWorn, paramFinish, limStock.param("stock", "Stock wanted on the radius")},
		Results: []trade.Result{length("offset", "Greatest offset; below zero: not even on centre", units.Down)},
		Source:  exact, Example: "bore.greatest_offset(inch(2.9), inch(3), inch(0.01))",
		Call: func(in trade.Args, out []float64) error {
			v, err := GreatestOffset(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}, {
		Name: "bore.old_radius", About: "Distance of the old bore's wall from the new axis, at an angle from the direction it is off.",
		Formula: "ρ = e·cos α + √(r² − e²·sin² α), r = d/2",
		Params:  []trade.Param{paramWorn, paramOffset, limAngle.param("angle", "Angle from the direction in which the old bore is off")},
		Results: []trade.Result{length("radius", "Distance of the old wall", units.Nearest)},
		Source:  "law of cosines, exact", Example: "bore.old_radius(inch(6), inch(0.02), deg(45))",
		Call: func(in trade.Args, out []float64) error {
			v, err := OldRadius(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}, {
		Name: "bore.lune_area", About: "Area of metal that the new bore takes out of one cross-section round the old one.",
		Formula: "A = π·R² − lens(R, r, e), R = D/2, r = d/2",
		Params:  []trade.Param{paramWorn, paramFinish, paramOffset},
		Results: []trade.Result{{Name: "area", About: "Area removed", Kind: units.Area}},
		Source:  exact, Example: "bore.lune_area(inch(6), inch(6.12), inch(0.06))",
		Call: func(in trade.Args, out []float64) error {
			v, err := LuneArea(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}, {
		Name: "bore.lune_volume", About: "Volume of metal that a straight new bore takes out round an old one that is conical or crooked, off to one side.",
		Formula: "V = ∫ (π·R² − lens(R, r(z), |e(z)|)) dz, r and e linear in z",
		Params: []trade.Param{limWorn.param("worn_near", "Old diameter at the near face"), limWorn.param("worn_far", "Old diameter at the far face"),
			paramFinish, limShift.param("offset_near", "Offset at the near face"),
			limShift.param("offset_far", "Offset at the far face, minus if to the other side"), limLength.param("length", "Length of the bore")},
		Results: []trade.Result{{Name: "volume", About: "Volume removed", Kind: units.Volume}},
		Source:  "plane geometry; Gauss-Kronrod quadrature (QUADPACK, 1983)", Example: "bore.lune_volume(inch(6), inch(6), inch(6.12), inch(0.02), inch(0.1), inch(8))",
		Call: func(in trade.Args, out []float64) error {
			x := in.X
			v, err := LuneVolume(TaperingLune{WornNear: x[0], WornFar: x[1], Finish: x[2], Near: XY{x[3], 0}, Far: XY{x[4], 0}, Length: x[5]})
			return one(out, v.Volume, err)
		},
	}}
}

func checkFunctions() []trade.Function {
	quarter := func(at string) trade.Param {
		return limReading.param("at_"+at, "Indicator at "+at+" o'clock, plus outward")
	}
	return []trade.Function{{
		Name: "bore.four_point", About: "Centre of a bore from indicator readings at the four quarters.",
		Formula: "x = (r₃ − r₉)/2, y = (r₁₂ − r₆)/2",
		Params:  []trade.Param{quarter("12"), quarter("3"), quarter("6"), quarter("9")},
		Results: []trade.Result{thou("offset", "Offset of the bore from the bar", units.Up), clock("clock", "Towards which clock position"),
			thou("out_of_round", "Half the difference of the two diameters", units.Up)},
		Source: trade.CommonPractice, Example: "bore.four_point(thou(20), thou(5), thou(-18), thou(-3))",
		Call: func(in trade.Args, out []float64) error {
			v, err := FourPoint(in.X[0], in.X[1], in.X[2], in.X[3])
			if err != nil {
				return err
			}
			out[0], out[1], out[2] = v.Size, v.Clock, v.OutOfRound
			return nil
		},
	}, {
		Name: "bore.lean", About: "Lean of a bore from its offsets at the two faces.",
		Formula: "tan α = |far − near|/L",
		Params: []trade.Param{limShift.param("x_near", "Offset to 3 o'clock at the near face"), limShift.param("y_near", "Offset to 12 o'clock at the near face"),
			limShift.param("x_far", "Offset to 3 o'clock at the far face"), limShift.param("y_far", "Offset to 12 o'clock at the far face"),
			limLength.param("length", "Length of the bore")},
		Results: []trade.Result{{Name: "lean", About: "Lean of the axis", Kind: units.Angle, Unit: "thou_per_ft", Round: units.Up}, clock("clock", "The way it moves going in")},
		Source:  "the definition of a slope", Example: "bore.lean(inch(0.01), inch(0), inch(0.05), inch(0), inch(8))",
		Call: func(in trade.Args, out []float64) error {
			x := in.X
			v, err := LeanOf(XY{x[0], x[1]}, XY{x[2], x[3]}, x[4])
			if err != nil {
				return err
			}
			out[0], out[1] = v.Angle, v.Clock
			return nil
		},
	}, {
		Name: "bore.normalised_distance", About: "Distance of two measured centres over its expanded uncertainty; 1 or less agrees.",
		Formula: "En = d/(2·√(uA² + uB²))",
		Params: []trade.Param{limDistance.param("distance", "Distance of the two centres"),
			limU.param("u_a", "Standard uncertainty of the one"), limU.param("u_b", "Standard uncertainty of the other")},
		Results: []trade.Result{{Name: "en", About: "Normalised distance", Kind: units.Number, Round: units.Up}},
		Source:  "En number, ISO/IEC 17043 (from memory)", Example: "bore.normalised_distance(thou(60), thou(2), thou(3))",
		Call: func(in trade.Args, out []float64) error {
			v, err := NormalisedDistance(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}, {
		Name: "bore.out_of_round", About: "Out-of-round on the radius from two diameters of one section; blind to odd lobes.",
		Formula: "δ = (Dmax − Dmin)/2",
		Params:  []trade.Param{limDiameter.param("greatest_diameter", "Greatest diameter"), limDiameter.param("least_diameter", "Least diameter")},
		Results: []trade.Result{thou("out_of_round", "Out-of-round on the radius", units.Up)},
		Source:  "two-point form from memory; radial sense ASME Y14.5, ISO 1101", Example: "bore.out_of_round(inch(3.0012), inch(3.0004))",
		Call: func(in trade.Args, out []float64) error {
			v, err := OutOfRound(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "bore.taper", About: "By how much a bore widens per length; minus if it narrows going in.",
		Formula: "t = (D₂ − D₁)/ℓ",
		Params: []trade.Param{limDiameter.param("near_diameter", "Diameter nearer to the near face"), limDiameter.param("far_diameter", "Diameter further in"),
			limLength.param("distance", "Distance between the two")},
		Results: []trade.Result{{Name: "taper", About: "Widening per length", Kind: units.Ratio}},
		Source:  "F. D. Jones, Turning and Boring (1914)", Example: "bore.taper(inch(3.001), inch(3.003), inch(6))",
		Call: func(in trade.Args, out []float64) error {
			v, err := Taper(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}}
}

var errNoSurvey = errors.New("the survey is missing")

// surveyAt is the survey given for parameter i.
func surveyAt(in trade.Args, i int) (trade.Survey, error) {
	if i >= len(in.Surveys) || len(in.Surveys[i]) == 0 {
		return nil, errNoSurvey
	}
	return in.Surveys[i], nil
}
