package bore

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// Functions lists what a rule sheet can call of this package.
func Functions() []trade.Function {
	list := append(stockFunctions(), checkFunctions()...)
	list = append(list, datumFunctions()...)
	return append(list, surveyFunctions()...)
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
	paramWorn   = limWorn.Param("worn_diameter", "Diameter of the old bore")
	paramFinish = limFinish.Param("finish_diameter", "Diameter the bore is to have")
	paramOffset = limOffset.Param("offset", "Distance between the old axis and the new one")
)

func stockFunctions() []trade.Function {
	return []trade.Function{trade.Plain(trade.Function{
		Name: "bore.eccentric_stock", About: "Least metal left to cut round an off-centre bore, on the radius; below zero is a dark patch.",
		Formula: "s = (D − d)/2 − e",
		Params:  []trade.Param{paramWorn, paramFinish, paramOffset},
		Results: []trade.Result{length("stock", "Least stock on the radius", units.Down)},
		Source:  exact, Example: "bore.eccentric_stock(inch(2.9), inch(3), inch(0.02))",
	}, func(x []float64) (float64, error) { return EccentricStock(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "bore.finish_for_stock", About: "Smallest finish diameter that leaves a given stock everywhere.",
		Formula: "D = d + 2(e + s)",
		Params:  []trade.Param{paramWorn, paramOffset, limStock.Param("stock", "Stock wanted on the radius")},
		Results: []trade.Result{length("finish_diameter", "Smallest finish diameter", units.Up)},
		Source:  exact, Example: "bore.finish_for_stock(inch(2.9), inch(0.02), inch(0.01))",
	}, func(x []float64) (float64, error) { return FinishForStock(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "bore.greatest_offset", About: "How far off centre the old bore may be and still leave a given stock everywhere.",
		Formula: "e = (D − d)/2 − s",
		Params:  []trade.Param{paramWorn, paramFinish, limStock.Param("stock", "Stock wanted on the radius")},
		Results: []trade.Result{length("offset", "Greatest offset; below zero: not even on centre", units.Down)},
		Source:  exact, Example: "bore.greatest_offset(inch(2.9), inch(3), inch(0.01))",
	}, func(x []float64) (float64, error) { return GreatestOffset(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "bore.old_radius", About: "Distance of the old bore's wall from the new axis, at an angle from the direction it is off.",
		Formula: "ρ = e·cos α + √(r² − e²·sin² α), r = d/2",
		Params:  []trade.Param{paramWorn, paramOffset, limAngle.Param("angle", "Angle from the direction in which the old bore is off")},
		Results: []trade.Result{length("radius", "Distance of the old wall", units.Nearest)},
		Source:  "law of cosines, exact", Example: "bore.old_radius(inch(6), inch(0.02), deg(45))",
	}, func(x []float64) (float64, error) { return OldRadius(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "bore.lune_area", About: "Area of metal that the new bore takes out of one cross-section round the old one.",
		Formula: "A = π·R² − lens(R, r, e), R = D/2, r = d/2",
		Params:  []trade.Param{paramWorn, paramFinish, paramOffset},
		Results: []trade.Result{{Name: "area", About: "Area removed", Kind: units.Area}},
		Source:  exact, Example: "bore.lune_area(inch(6), inch(6.12), inch(0.06))",
	}, func(x []float64) (float64, error) { return LuneArea(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "bore.lune_volume", About: "Volume of metal that a straight new bore takes out round an old one that is conical or crooked, off to one side.",
		Formula: "V = ∫ (π·R² − lens(R, r(z), |e(z)|)) dz, r and e linear in z",
		Params: []trade.Param{limWorn.Param("worn_near", "Old diameter at the near face"), limWorn.Param("worn_far", "Old diameter at the far face"),
			paramFinish, limShift.Param("offset_near", "Offset at the near face"),
			limShift.Param("offset_far", "Offset at the far face, minus if to the other side"), limLength.Param("length", "Length of the bore")},
		Results: []trade.Result{{Name: "volume", About: "Volume removed", Kind: units.Volume}},
		Source:  "plane geometry; Gauss-Kronrod quadrature (QUADPACK, 1983)", Example: "bore.lune_volume(inch(6), inch(6), inch(6.12), inch(0.02), inch(0.1), inch(8))",
	}, func(x []float64) (float64, error) {
		v, err := LuneVolume(TaperingLune{WornNear: x[0], WornFar: x[1], Finish: x[2], Near: XY{x[3], 0}, Far: XY{x[4], 0}, Length: x[5]})
		return v.Volume, err
	})}
}

var errNoSurvey = errors.New("the survey is missing")

// surveyAt is the survey given for parameter i.
func surveyAt(in trade.Args, i int) (trade.Survey, error) {
	if i >= len(in.Surveys) || len(in.Surveys[i]) == 0 {
		return nil, errNoSurvey
	}
	return in.Surveys[i], nil
}
