package bore

import (
	"gudgeon/trade"
	"gudgeon/units"
)

var (
	paramSweeps = trade.Param{Name: "survey", About: "Indicator readings round the bore at two stations or more, plus outward", Kind: units.Survey}
	paramSet    = limSetRadius.Param("set_radius", "Radius at which the indicator reads zero; 0 if the readings are radii")
	paramLength = limFaceFace.Param("bore_length", "Face to face; 0 means up to the last station").Usual(0)
)

func surveyFunctions() []trade.Function {
	return []trade.Function{{
		Name: "bore.survey", About: "Axis, size and roundness of a worn bore, from indicator readings taken from the bar.",
		Formula: "least squares circle at each station; least squares line through the centres",
		Params:  []trade.Param{paramSweeps, paramSet, paramLength},
		Results: []trade.Result{
			length("diameter", "Mean least squares diameter of the stations", units.Nearest),
			thou("taper", "Greatest less least diameter of the stations", units.Up),
			thou("offset_near", "Offset of the axis at the near face", units.Up),
			clock("clock_near", "Its clock position"),
			thou("offset_far", "Offset of the axis at the far face", units.Up),
			clock("clock_far", "Its clock position"),
			thou("offset_u", "Expanded uncertainty of the offsets, k = 2", units.Up),
			{Name: "tilt", About: "Tilt of the axis", Kind: units.Angle, Unit: "thou_per_ft", Round: units.Up},
			{Name: "tilt_u", About: "Its expanded uncertainty, k = 2", Kind: units.Angle, Unit: "thou_per_ft", Round: units.Up},
			thou("out_of_round", "Worst roundness of a station, peak to valley about its least squares circle", units.Up),
			length("least_radius", "Nearest place of the wall to the bar", units.Down),
			length("greatest_radius", "Farthest place of the wall from the bar", units.Up),
			{Name: "outliers", About: "Readings that do not belong to the circle", Kind: units.Number},
			{Name: "widest_gap", About: "Widest gap between neighbouring readings", Kind: units.Angle, Round: units.Up},
		},
		Source:  "N. Chernov, Circular and Linear Regression (2010); ISO 12181-1; JCGM 100",
		Example: "bore.survey(worn_bore, inch(1.5))",
		Call:    callSurvey,
		Steps: func(in trade.Args) []trade.Step {
			s, err := surveyOf(in, 2)
			if err != nil {
				return nil
			}
			return s.Steps()
		},
	}, {
		Name: "bore.least_stock", About: "Least metal left on the bar's axis, on the radius, from indicator readings; below zero is a dark patch.",
		Formula: "s = D/2 − greatest radius of the wall",
		Params:  []trade.Param{paramSweeps, paramSet, paramFinish},
		Results: []trade.Result{length("stock", "Least stock on the radius", units.Down)},
		Source:  "the definition of stock, on the wall that the readings show",
		Example: "bore.least_stock(worn_bore, inch(1.5), inch(3.25))",
		Call: func(in trade.Args, out []float64) error {
			s, err := surveyOf(in, -1)
			if err != nil {
				return err
			}
			stock, _, err := s.LeastStock(in.X[2])
			if err != nil {
				return err
			}
			out[0] = stock
			return nil
		},
	}, {
		Name: "bore.inspect", About: "Size, taper and out-of-round of a finished bore, from inside-micrometer diameters.",
		Formula: "taper = difference of the stations' mean diameters; out-of-round = (Dmax − Dmin)/2",
		Params: []trade.Param{{Name: "diameters", About: "Diameters at three depths and two clock positions or more", Kind: units.Survey},
			limDiameter.Param("least_allowed", "Least diameter allowed"), limDiameter.Param("greatest_allowed", "Greatest diameter allowed")},
		Results: []trade.Result{
			length("least", "Least diameter found", units.Down), length("greatest", "Greatest diameter found", units.Up),
			thou("taper", "Difference of the mean diameters", units.Up), thou("out_of_round", "Worst out-of-round on the radius", units.Up),
			thou("room", "Room left to the nearer limit of size; below zero is out", units.Down),
			{Name: "complete", About: "Whether depths and clock positions suffice", Kind: units.YesNo},
		},
		Source:  "ISO 12181-1; ASME Y14.5 for the radial sense",
		Example: "bore.inspect(final_diameters, inch(3), inch(3.002))",
		Call:    callInspect,
	}}
}

// surveyOf works the survey of a call; lengthAt is the place of bore_length
// among the arguments, or −1.
func surveyOf(in trade.Args, lengthAt int) (*Surveyed, error) {
	points, err := surveyAt(in, 0)
	if err != nil {
		return nil, err
	}
	r := Readings{Sweeps: points, SetRadius: in.X[1]}
	if lengthAt >= 0 {
		r.Length = in.X[lengthAt]
	}
	return Survey(r)
}

func callSurvey(in trade.Args, out []float64) error {
	s, err := surveyOf(in, 2)
	if err != nil {
		return err
	}
	if s.Axis == nil {
		return errOneStation
	}
	mean, least, most, round, gap, n := 0.0, 0.0, 0.0, 0.0, 0.0, 0
	for _, st := range s.Stations {
		d := st.Circle.Diameter()
		if n == 0 {
			least = d
		}
		n++
		mean += d
		least, most = min(least, d), max(most, d)
		round, gap = max(round, st.Round.LSCI), max(gap, st.Arc.Gap)
	}
	near, far, tilt := s.Near(), s.Far(), s.Axis.Tilt()
	copy(out, []float64{mean / float64(n), most - least, near.Size, near.Clock, far.Size, far.Clock,
		Coverage * max(near.U, far.U), tilt.Angle, Coverage * tilt.U, round,
		s.LeastRadius.Radius, s.GreatestRadius.Radius, float64(len(s.Outliers)), gap})
	return nil
}

func callInspect(in trade.Args, out []float64) error {
	points, err := surveyAt(in, 0)
	if err != nil {
		return err
	}
	i, err := Inspect(Inspection{Diameters: points, LeastDiameter: in.X[1], GreatestDiameter: in.X[2]})
	if err != nil {
		return err
	}
	copy(out, []float64{i.Least, i.Greatest, i.Taper, i.OutOfRound, min(i.Margins[0].Room, i.Margins[1].Room), trade.YesNo(len(i.Faults) == 0)})
	return nil
}
