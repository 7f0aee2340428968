package press

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func benchFunctions() []trade.Function {
	return []trade.Function{daylightFunction(), supportFunction()}
}

func daylightFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.daylight",
		About:   "Whether part, bushing and tooling go under the ram, and whether its stroke drives the bushing home.",
		Formula: "spare = opening - support - part - (bushing - started) - tooling; stroke needed = opening - support - part - tooling + below flush",
		Params: []trade.Param{
			heightRange.Param("opening", "Table to ram, ram fully up"),
			heightRange.Param("support", "Blocks and ring under the part"),
			heightRange.Param("part", "Underside of the part at the support to the face the bushing enters"),
			heightRange.Param("bushing", "Length of the bushing"),
			heightRange.Param("tooling", "Driver and plate between bushing and ram"),
			strokeRange.Param("stroke", "Stroke of the ram"),
			heightRange.Param("started", "How much of the bushing is in before the ram pushes").Usual(0),
			heightRange.Param("below_flush", "How far below the face it is driven").Usual(0),
		},
		Results: []trade.Result{
			{Name: "spare", About: "Room left under the ram; negative: it does not go in", Kind: units.Length, Unit: "inch", Round: units.Down},
			{Name: "stroke_needed", About: "Stroke from fully up to bushing home", Kind: units.Length, Unit: "inch", Round: units.Up},
			{Name: "stroke_spare", About: "Stroke left over; negative: the ram does not reach", Kind: units.Length, Unit: "inch", Round: units.Down},
		},
		Source:  "geometry",
		Example: "press.daylight({opening: inch(40), support: inch(6), part: inch(14), bushing: inch(5), tooling: inch(3), stroke: inch(20), started: inch(0.25)}).spare",
	}, func(x []float64) (DaylightResult, error) {
		return Daylight(DaylightInput{Opening: x[0], Support: x[1], Part: x[2], Bushing: x[3], Tooling: x[4], Stroke: x[5], Started: x[6], BelowFlush: x[7]})
	}, func(r DaylightResult, out []float64) { out[0], out[1], out[2] = r.Spare, r.StrokeNeeded, r.StrokeSpare })
}

func supportFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.support",
		About:   "Stress between the boss and the ring under it; refuses a ring that misses the boss or blocks the bushing.",
		Formula: "s = F/(pi/4·(Do²-Di²)), Do the smaller outside, Di the larger bore; use = s/yield",
		Params: []trade.Param{
			forceRange.Param("force", "Force of the press"),
			hubRange.Param("boss_diameter", "Outside diameter of the boss's face"),
			hubRange.Param("boss_bore", "Bore in that face"),
			hubRange.Param("ring_diameter", "Outside diameter of the support ring"),
			hubRange.Param("ring_bore", "Bore of the support ring"),
			metalParam("boss", "Metal of the boss"),
			passRange.Param("pass_through", "Diameter that must pass through the ring, such as the old bushing").Usual(0),
		},
		Results: []trade.Result{
			{Name: "stress", About: "Stress under the boss", Kind: units.Pressure, Unit: "ksi", Round: units.Up},
			{Name: "use", About: "Share of the boss's strength used", Kind: units.Ratio, Unit: "percent", Round: units.Up},
		},
		Source:  "direct stress, F/A; strengths as in the table of metals",
		Example: `press.support({force: short_tonf(40), boss_diameter: inch(7), boss_bore: inch(4), ring_diameter: inch(7), ring_bore: inch(4.5), boss: "A36 steel", pass_through: inch(4.25)}).use`,
	}, func(x []float64) (SupportResult, error) {
		m, err := MaterialAt(x[5])
		if err != nil {
			return SupportResult{}, err
		}
		return Support(SupportInput{Force: x[0], BossDiameter: x[1], BossBore: x[2], RingDiameter: x[3], RingBore: x[4], Boss: m.Strength, PassThrough: x[6]})
	}, func(r SupportResult, out []float64) { out[0], out[1] = r.Stress, r.Use })
}
