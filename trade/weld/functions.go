package weld

import (
	"gudgeon/trade"
	"gudgeon/units"
)

// Functions lists what a rule sheet can call of this package.
func Functions() []trade.Function {
	list := append(planFunctions(), fillerFunctions()...)
	return append(list, heatFunctions()...)
}

var (
	paramDensity  = limDensity.Param("density", "Density of the weld metal; left out: 0.283 lb/in³").Usual(SteelDensity)
	paramDeposit  = limMass.Param("deposit", "Weld metal laid")
	paramLayer    = limLayer.Param("layer", "Build-up per layer, on the radius")
	paramProcess  = trade.Choice("process", "Welding process", processNames()...)
	paramCategory = trade.Choice("category", "A: stick that is not low-hydrogen; B: low-hydrogen stick, wire, submerged arc; C: the same on the table's higher-strength steels", categoryNames[:]...)
)

func processNames() []string {
	return trade.Names(processes[:], func(r processRow) string { return r.name })
}

func fillerFunctions() []trade.Function {
	return []trade.Function{trade.Plain(trade.Function{
		Name: "weld.bore_build_up", About: "Volume of weld in a bore built up from one diameter to a smaller one.",
		Formula: "V = π/4·(D₁² − D₂²)·L",
		Params: []trade.Param{limWorn.Param("before", "Diameter before welding"), limWorn.Param("after", "Diameter after welding"),
			limLength.Param("length", "Length built up")},
		Results: []trade.Result{trade.ResultOf("volume", "Weld metal", units.Volume, "", units.Up)},
		Source:  "volume of a ring, exact", Example: "weld.bore_build_up(inch(3.25), inch(2.75), inch(4))",
	}, func(x []float64) (float64, error) { return BoreBuildUp(x[0], x[1], x[2]) }), trade.Plain(trade.Function{
		Name: "weld.deposit_mass", About: "Mass of a volume of weld metal.",
		Formula: "m = ρ·V",
		Params:  []trade.Param{limVolume.Param("volume", "Volume of weld metal"), paramDensity},
		Results: []trade.Result{trade.ResultOf("mass", "Weld metal", units.Mass, "lb", units.Up)},
		Source:  "definition of density", Example: "weld.deposit_mass(cuin(9.42))",
	}, func(x []float64) (float64, error) { return DepositMass(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "weld.filler_needed", About: "Filler to have at hand for a mass of weld metal.",
		Formula: "used = m/E",
		Params:  []trade.Param{paramDeposit, limEfficiency.Param("efficiency", "Deposition efficiency")},
		Results: []trade.Result{trade.ResultOf("filler", "Filler used, stubs and spatter included", units.Mass, "lb", units.Up)},
		Source:  "a filler-metal handbook, Calculating Filler Metal Consumption, P = W·L/E", Example: "weld.filler_needed(lb(2.67), percent(62))",
	}, func(x []float64) (float64, error) { return FillerUsed(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "weld.process_efficiency", About: "Average deposition efficiency of a process.",
		Formula: "table", Params: []trade.Param{paramProcess},
		Results: []trade.Result{trade.ResultOf("efficiency", "Weld metal over filler used", units.Ratio, "percent", units.Down)},
		Source:  "averages in a filler-metal handbook, Calculating Filler Metal Consumption; which value belongs to which process is from memory", Example: `weld.process_efficiency("flux-cored wire, gas")`,
	}, func(x []float64) (float64, error) {
		i, ok := trade.Chosen(x[0], len(processes))
		if !ok {
			return 0, errProcess
		}
		return Process(i).Efficiency()
	}), trade.Plain(trade.Function{
		Name: "weld.deposition_efficiency", About: "Deposition efficiency from two weighings.",
		Formula: "E = m/used",
		Params:  []trade.Param{paramDeposit, limMass.Param("used", "Filler used")},
		Results: []trade.Result{trade.ResultOf("efficiency", "Weld metal over filler used", units.Ratio, "percent", units.Down)},
		Source:  "a filler-metal handbook, definition", Example: "weld.deposition_efficiency(lb(3), lb(4))",
	}, func(x []float64) (float64, error) { return DepositionEfficiency(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "weld.arc_time", About: "How long the arc burns for a mass of weld metal.",
		Formula: "t = m/R",
		Params:  []trade.Param{paramDeposit, limRate.Param("rate", "Weld metal laid per arc time")},
		Results: []trade.Result{trade.ResultOf("time", "Arc time, handling not included", units.Time, "hour", units.Up)},
		Source:  "definition of a rate", Example: "weld.arc_time(lb(2.67), lb_per_hour(6))",
	}, func(x []float64) (float64, error) { return ArcTime(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "weld.deposition_rate", About: "Deposition rate from a weighed bead.",
		Formula: "R = m/t",
		Params:  []trade.Param{paramDeposit, limTime.Param("time", "Arc time")},
		Results: []trade.Result{trade.ResultOf("rate", "Weld metal laid per arc time", units.MassRate, "lb_per_hour", units.Down)},
		Source:  "deposition-rate test sheet of a maker of filler metal", Example: "weld.deposition_rate(kg(0.095), s(60))",
	}, func(x []float64) (float64, error) { return DepositionRate(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "weld.bead_mass", About: "Weld metal per length for a bead of a given cross-section.",
		Formula: "w = A·ρ",
		Params:  []trade.Param{limArea.Param("area", "Cross-section of the bead"), paramDensity},
		Results: []trade.Result{trade.ResultOf("mass_per_length", "Weld metal per length", units.MassPerLength, "lb_per_ft", units.Up)},
		Source:  "a filler-metal handbook, Calculating Filler Metal Consumption", Example: "weld.bead_mass(sqin(0.125))",
	}, func(x []float64) (float64, error) { return BeadMass(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "weld.wire_mass", About: "Mass of wire per length.",
		Formula: "w = ρ·π·d²/4",
		Params:  []trade.Param{limWire.Param("wire_diameter", "Wire diameter"), paramDensity},
		Results: []trade.Result{trade.ResultOf("mass_per_length", "Wire per length", units.MassPerLength, "lb_per_ft", units.Nearest)},
		Source:  "geometry", Example: "weld.wire_mass(inch(0.045))",
	}, func(x []float64) (float64, error) { return WireMass(x[0], x[1]) }), trade.Plain(trade.Function{
		Name: "weld.melt_off", About: "Wire melted per arc time; times the efficiency it is the deposition rate.",
		Formula: "R = ρ·π·d²/4·v",
		Params:  []trade.Param{limWire.Param("wire_diameter", "Wire diameter"), limWireSpeed.Param("wire_speed", "Wire feed speed"), paramDensity},
		Results: []trade.Result{trade.ResultOf("rate", "Wire melted per arc time", units.MassRate, "lb_per_hour", units.Nearest)},
		Source:  "conservation of mass", Example: "weld.melt_off(inch(0.045), ipm(400))",
	}, func(x []float64) (float64, error) { return MeltOff(x[0], x[1], x[2]) })}
}
