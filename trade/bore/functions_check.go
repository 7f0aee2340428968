package bore

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func checkFunctions() []trade.Function {
	quarter := func(at string) trade.Param {
		return limReading.Param("at_"+at, "Indicator at "+at+" o'clock, plus outward")
	}
	return []trade.Function{trade.Record(trade.Function{
		Name: "bore.four_point", About: "Centre of a bore from indicator readings at the four quarters.",
		Formula: "x = (r₃ − r₉)/2, y = (r₁₂ − r₆)/2",
		Params:  []trade.Param{quarter("12"), quarter("3"), quarter("6"), quarter("9")},
		Results: []trade.Result{thou("offset", "Offset of the bore from the bar", units.Up), clock("clock", "Towards which clock position"),
			thou("out_of_round", "Half the difference of the two diameters", units.Up)},
		Source: trade.CommonPractice, Example: "bore.four_point(thou(20), thou(5), thou(-18), thou(-3))",
	}, func(x, out []float64) error {
		v, err := FourPoint(x[0], x[1], x[2], x[3])
		if err != nil {
			return err
		}
		out[0], out[1], out[2] = v.Size, v.Clock, v.OutOfRound
		return nil
	}), trade.Record(trade.Function{
		Name: "bore.lean", About: "Lean of a bore from its offsets at the two faces.",
		Formula: "tan α = |far − near|/L",
		Params: []trade.Param{limShift.Param("x_near", "Offset to 3 o'clock at the near face"), limShift.Param("y_near", "Offset to 12 o'clock at the near face"),
			limShift.Param("x_far", "Offset to 3 o'clock at the far face"), limShift.Param("y_far", "Offset to 12 o'clock at the far face"),
			limLength.Param("length", "Length of the bore")},
		Results: []trade.Result{{Name: "lean", About: "Lean of the axis", Kind: units.Angle, Unit: "thou_per_ft", Round: units.Up}, clock("clock", "The way it moves going in")},
		Source:  "the definition of a slope", Example: "bore.lean(inch(0.01), inch(0), inch(0.05), inch(0), inch(8))",
	}, func(x, out []float64) error {
		v, err := LeanOf(XY{x[0], x[1]}, XY{x[2], x[3]}, x[4])
		if err != nil {
			return err
		}
		out[0], out[1] = v.Angle, v.Clock
		return nil
	}), trade.Plain(trade.Function{
		Name: "bore.normalised_distance", About: "Distance of two measured centres over its expanded uncertainty; 1 or less agrees.",
		Formula: "En = d/(2·√(uA² + uB²))",
		Params: []trade.Param{limDistance.Param("distance", "Distance of the two centres"),
			limU.Param("u_a", "Standard uncertainty of the one"), limU.Param("u_b", "Standard uncertainty of the other")},
		Results: []trade.Result{{Name: "en", About: "Normalised distance", Kind: units.Number, Round: units.Up}},
		Source:  "En number, ISO/IEC 17043 (from memory)", Example: "bore.normalised_distance(thou(60), thou(2), thou(3))",
	}, func(x []float64) (float64, error) { return NormalisedDistance(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "bore.out_of_round", About: "Out-of-round on the radius from two diameters of one section; blind to odd lobes.",
		Formula: "δ = (Dmax − Dmin)/2",
		Params:  []trade.Param{limDiameter.Param("greatest_diameter", "Greatest diameter"), limDiameter.Param("least_diameter", "Least diameter")},
		Results: []trade.Result{thou("out_of_round", "Out-of-round on the radius", units.Up)},
		Source:  "two-point form from memory; radial sense ASME Y14.5, ISO 1101", Example: "bore.out_of_round(inch(3.0012), inch(3.0004))",
	}, func(x []float64) (float64, error) { return OutOfRound(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "bore.taper", About: "By how much a bore widens per length; minus if it narrows going in.",
		Formula: "t = (D₂ − D₁)/ℓ",
		Params: []trade.Param{limDiameter.Param("near_diameter", "Diameter nearer to the near face"), limDiameter.Param("far_diameter", "Diameter further in"),
			limLength.Param("distance", "Distance between the two")},
		Results: []trade.Result{{Name: "taper", About: "Widening per length", Kind: units.Ratio}},
		Source:  "F. D. Jones, Turning and Boring (1914)", Example: "bore.taper(inch(3.001), inch(3.003), inch(6))",
	}, func(x []float64) (float64, error) { return Taper(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "bore.sound_share", About: "Share of a finished surface that is free of voids.",
		Formula: "share = 1 − A/(π·D·L)",
		Params: []trade.Param{limFinish.Param("diameter", "Finished diameter"), limLength.Param("length", "Length of the bore"),
			limVoidArea.Param("void_area", "Area of all voids together")},
		Results: []trade.Result{{Name: "share", About: "Sound share of the surface", Kind: units.Ratio, Round: units.Down}},
		Source:  "plane geometry", Example: "bore.sound_share(inch(3), inch(6), sqin(0.5))",
	}, func(x []float64) (float64, error) { return SoundShare(x[0], x[1], x[2]) })}
}

// candidate makes the three parameters of one candidate.
func candidate(name, what string) []trade.Param {
	return []trade.Param{limShift.Param(name+"_x", what+": centre from the bar, to 3 o'clock"),
		limShift.Param(name+"_y", what+": centre from the bar, to 12 o'clock"),
		limU.Param(name+"_u", what+": standard uncertainty of that centre")}
}

func datumFunctions() []trade.Function {
	params := append(candidate("worn", "Worn bore"), candidate("first", "First feature that no repair has cut")...)
	return []trade.Function{trade.Record(trade.Function{
		Name: "bore.two_witnesses", About: "Whether the worn bore is where two untouched features say; if not, an earlier repair was off centre.",
		Formula: "En = |worn − c|/(2·√(u² + u_c²)), c the weighted mean of the two features",
		Params:  append(params, candidate("second", "Second feature that no repair has cut")...),
		Results: []trade.Result{
			{Name: "features_agree", About: "Whether the two features agree; if not, the rest means nothing", Kind: units.YesNo},
			{Name: "features_en", About: "Normalised distance of the two features; 1 or less agrees", Kind: units.Number, Round: units.Up},
			{Name: "worn_agrees", About: "Whether the worn bore agrees with them", Kind: units.YesNo},
			{Name: "worn_en", About: "Normalised distance of the worn bore; 1 or less agrees", Kind: units.Number, Round: units.Up},
			thou("worn_offset", "How far the worn bore is off their centre", units.Up), clock("worn_clock", "Towards which clock position"),
			length("centre_x", "Their centre from the bar, to 3 o'clock", units.Nearest), length("centre_y", "Their centre from the bar, to 12 o'clock", units.Nearest),
			thou("centre_u", "Standard uncertainty of that centre", units.Up),
		},
		Source:  "weighted mean, JCGM 100; En number, ISO/IEC 17043 (from memory)",
		Example: "bore.two_witnesses(thou(125), thou(10), thou(2), thou(3), thou(-4), thou(10), thou(-2), thou(1), thou(3))",
	}, func(x, out []float64) error {
		of := func(i int) Candidate { return Candidate{Centre: XY{x[i], x[i+1]}, U: x[i+2]} }
		w, err := TwoWitnesses(of(0), of(3), of(6))
		if err != nil {
			return err
		}
		out[0], out[1], out[2], out[3] = trade.YesNo(w.FeaturesAgree), w.FeaturesEn, trade.YesNo(w.WornAgrees), w.WornEn
		out[4], out[5], out[6], out[7], out[8] = w.Worn.Size, w.Worn.Clock, w.Centre.X, w.Centre.Y, w.U
		return nil
	})}
}
