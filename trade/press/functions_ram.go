package press

import (
	"gudgeon/trade"
	"gudgeon/units"
)

const (
	armyManual = "US Army TM 1-1500-204-23-2, hydraulic principles"
	ramAbout   = "Bore of the ram's cylinder"
)

func ramFunctions() []trade.Function {
	return []trade.Function{ramForceFunction(), ramPressureFunction(), ramVolumeFunction(), handPumpFunction(), capacityFunction(), offCentreFunction()}
}

func ramForceFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "press.ram_force",
		About:   "Force of a hydraulic ram at an oil pressure.",
		Formula: "F = p·pi·d²/4",
		Params:  []trade.Param{oilRange.Param("pressure", "Oil pressure on the gauge"), ramRange.Param("ram_bore", ramAbout)},
		Results: one("force", "Force of the ram", units.Force, "short_tonf", units.Down),
		Source:  armyManual,
		Example: "press.ram_force(psi(5000), inch(6))",
	}, func(x []float64) (float64, error) { return RamForce(x[0], x[1]) })
}

func ramPressureFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "press.ram_pressure",
		About:   "Gauge pressure at which a ram gives a force.",
		Formula: "p = 4F/(pi·d²)",
		Params:  []trade.Param{forceRange.Param("force", "Force wanted"), ramRange.Param("ram_bore", ramAbout)},
		Results: one("pressure", "Oil pressure on the gauge", units.Pressure, "psi", units.Up),
		Source:  armyManual,
		Example: "press.ram_pressure(short_tonf(40), inch(6))",
	}, func(x []float64) (float64, error) { return RamPressure(x[0], x[1]) })
}

func ramVolumeFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "press.ram_volume",
		About:   "Oil that a stroke of the ram takes.",
		Formula: "V = s·pi·d²/4",
		Params:  []trade.Param{strokeRange.Param("stroke", "Stroke of the ram"), ramRange.Param("ram_bore", ramAbout)},
		Results: one("volume", "Oil", units.Volume, "cuin", units.Up),
		Source:  armyManual,
		Example: "press.ram_volume(inch(10), inch(6))",
	}, func(x []float64) (float64, error) { return RamVolume(x[0], x[1]) })
}

func handPumpFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.hand_pump",
		About:   "Force and travel of a hand pump's piston that moves a ram under load.",
		Formula: "ratio = (D/d)²; f = F/ratio; travel = s·ratio",
		Params: []trade.Param{
			forceRange.Param("force", "Force of the ram"),
			ramRange.Param("ram_bore", ramAbout),
			ramRange.Param("pump_bore", "Bore of the pump's cylinder"),
			strokeRange.Param("stroke", "Stroke of the ram"),
		},
		Results: []trade.Result{
			{Name: "pump_force", About: "Force on the pump's piston", Kind: units.Force, Unit: "lbf", Round: units.Up},
			{Name: "pump_travel", About: "Travel of the pump's piston in all", Kind: units.Length, Unit: "inch", Round: units.Up},
		},
		Source:  armyManual,
		Example: "press.hand_pump({force: short_tonf(20), ram_bore: inch(4), pump_bore: inch(0.5), stroke: inch(3)}).pump_force",
	}, func(x []float64) (HandPumpResult, error) { return HandPump(x[0], x[1], x[2], x[3]) },
		func(r HandPumpResult, out []float64) { out[0], out[1] = r.PumpForce, r.PumpTravel })
}

func capacityFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.capacity",
		About:   "What a press may push: the ram at full pressure or the frame's rating, whichever is less.",
		Formula: "F = min(p·pi·d²/4, frame)",
		Params: []trade.Param{
			oilRange.Param("pressure", "Highest oil pressure of the pump"),
			ramRange.Param("ram_bore", ramAbout),
			ratingRange.Param("frame_rating", "Rated force on the press's plate"),
		},
		Results: one("force", "The press may push", units.Force, "short_tonf", units.Down),
		Source:  armyManual + "; the plate on the press governs",
		Example: "press.capacity({pressure: psi(5000), ram_bore: inch(6), frame_rating: short_tonf(60)})",
	}, func(x []float64) (CapacityResult, error) { return Capacity(x[0], x[1], x[2]) },
		func(r CapacityResult, out []float64) { out[0] = r.Force })
}

func offCentreFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.off_centre",
		About:   "What a load beside the middle does to a two-column press, and how much it may push there.",
		Formula: "near = F(1/2 + e/W); allowed = frame/(1 + 2e/W); M = F·e",
		Params: []trade.Param{
			forceRange.Param("force", "Force to be pressed with"),
			offsetRange.Param("offset", "Distance of the load from midway between the columns"),
			columnRange.Param("columns", "Distance between the columns' centre lines"),
			ratingRange.Param("frame_rating", "Rated force on the press's plate"),
		},
		Results: []trade.Result{
			{Name: "allowed", About: "Force allowed at that offset", Kind: units.Force, Unit: "short_tonf", Round: units.Down},
			{Name: "use", About: "Force over the force allowed", Kind: units.Ratio, Unit: "percent", Round: units.Up},
			{Name: "near_column", About: "Pull in the nearer column", Kind: units.Force, Unit: "short_tonf", Round: units.Up},
			{Name: "moment", About: "Moment that tilts a ram left in the middle", Kind: units.Torque, Unit: "lbf_ft", Round: units.Up},
		},
		Source:  "statics; the maker's limit for the ram's guides governs",
		Example: "press.off_centre({force: short_tonf(40), offset: inch(4), columns: inch(48), frame_rating: short_tonf(60)}).allowed",
	}, func(x []float64) (OffCentreResult, error) {
		return OffCentre(OffCentreInput{Force: x[0], Offset: x[1], Columns: x[2], Frame: x[3]})
	}, func(r OffCentreResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.Allowed, r.Use, r.NearColumn, r.Moment
	})
}
