package sketch

import (
	"math"

	"gudgeon/units"
)

const (
	inch = 0.0254
	lb   = 0.45359237
	lbf  = lb * 9.80665
)

func deg(x float64) float64 { return x * math.Pi / 180 }

// samples are the pre-lift drawings, each of an invented job.
func samples() map[string]*Drawing {
	return map[string]*Drawing{
		"slings": Slings(Rig{Weight: 4600 * lb, Legs: []Leg{{deg(58), 2712 * lbf}, {deg(47), 2107 * lbf}},
			Note: "Leg 1 takes more than leg 2: the load's centre of gravity is on its side."}),
		"slings-four": Slings(Rig{Weight: 9800 * lb, Legs: []Leg{{deg(52), 6220 * lbf}, {deg(52), 6220 * lbf}, {deg(52), 6220 * lbf}, {deg(52), 6220 * lbf}},
			Note: "Two of four legs are taken to carry it all."}),
		"slings-flat": Slings(Rig{Weight: 1200 * lb, Legs: []Leg{{deg(22), 1602 * lbf}, {deg(22), 1602 * lbf}}}),
		"slings-one":  Slings(Rig{Weight: 850 * lb, Legs: []Leg{{deg(90), 850 * lbf}}, Units: units.MetricShop}),
		"hanging": Hanging(Hung{LugOffset: 3.5 * inch, LugHeight: 14 * inch, Length: 62 * inch, Tilt: math.Atan(3.5 / 14),
			Drop: 62 * inch * math.Sin(math.Atan(3.5/14)), Move: -3.5 * inch}),
		"hanging-b": Hanging(Hung{LugOffset: -6 * inch, LugHeight: 9 * inch, Length: 70 * inch, Tilt: -math.Atan(6.0 / 9),
			Drop: -70 * inch * math.Sin(math.Atan(6.0/9)), Move: 6 * inch, Units: units.MetricShop}),
		"hanging-level": Hanging(Hung{LugHeight: 12 * inch, Length: 40 * inch}),
		"forks": ForkLoad(Carried{Weight: 4600 * lb, LoadCentre: 41 * inch, Rating: 5000 * lb, RatingCentre: 24 * inch, Capacity: 2926 * lb,
			ForkLength: 48 * inch, Gap: 2 * inch, Length: 66 * inch, Note: "Bring the load closer, or use a bigger truck."}),
		"forks-good": ForkLoad(Carried{Weight: 1850 * lb, LoadCentre: 26 * inch, Rating: 5000 * lb, RatingCentre: 24 * inch, Capacity: 4615 * lb,
			ForkLength: 48 * inch}),
		"table": TableLoad(OnTable{Weight: 1400 * lb, Rating: 2000 * lb, PlatformHalf: 20 * inch, BaseHalf: 22 * inch, Offset: 27 * inch,
			NearEnd: 1645 * lb, FarEnd: -245 * lb, Note: "Its middle is outside the base: the table can go over."}),
		"table-good": TableLoad(OnTable{Weight: 900 * lb, Rating: 2000 * lb, PlatformHalf: 20 * inch, BaseHalf: 22 * inch, Offset: 1.5 * inch,
			NearEnd: 484 * lb, FarEnd: 416 * lb}),
		"bar": BarBend(Bent{Span: 34 * inch, Station: 12 * inch, Diameter: 2.25 * inch, Force: 210 * lbf, Deflection: .0037 * inch}),
		"bar-one-end": BarBend(Bent{Span: 9 * inch, Station: 9 * inch, OneEnd: true, Diameter: 1.5 * inch, Force: 140 * lbf, Deflection: .0046 * inch,
			Note: "Six diameters of overhang: expect chatter."}),
	}
}
