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

// one gives the value or the error of a typed function that returns one number.
func one(out []float64, v float64, err error) error {
	if err != nil {
		return err
	}
	out[0] = v
	return nil
}

func result(name, about string, kind units.Kind, unit string, r trade.Rounding) trade.Result {
	return trade.Result{Name: name, About: about, Kind: kind, Unit: unit, Round: r}
}

// with makes a parameter optional.
func with(p trade.Param, preset float64) trade.Param {
	p.Optional, p.Default = true, preset
	return p
}

var (
	paramDensity  = with(limDensity.param("density", "Density of the weld metal; left out: 0.283 lb/in³"), SteelDensity)
	paramDeposit  = limMass.param("deposit", "Weld metal laid")
	paramLayer    = limLayer.param("layer", "Build-up per layer, on the radius")
	paramProcess  = trade.Param{Name: "process", About: "Welding process", Kind: units.Choice, Options: processNames(), High: float64(len(processes) - 1)}
	paramCategory = trade.Param{Name: "category", About: "A: stick that is not low-hydrogen; B: low-hydrogen stick, wire, submerged arc; C: the same on the table's higher-strength steels",
		Kind: units.Choice, Options: categoryNames[:], High: float64(len(categoryNames) - 1)}
)

func processNames() []string {
	out := make([]string, len(processes))
	for i := range processes {
		out[i] = processes[i].name
	}
	return out
}

// choice checks an option's index.
func choice(x float64, n int, missing error) (int, error) {
	i := int(x)
	if !(x >= 0 && x < float64(n)) || float64(i) != x {
		return 0, missing
	}
	return i, nil
}

func fillerFunctions() []trade.Function {
	return []trade.Function{{
		Name: "weld.bore_build_up", About: "Volume of weld in a bore built up from one diameter to a smaller one.",
		Formula: "V = π/4·(D₁² − D₂²)·L",
		Params: []trade.Param{limWorn.param("before", "Diameter before welding"), limWorn.param("after", "Diameter after welding"),
			limLength.param("length", "Length built up")},
		Results: []trade.Result{result("volume", "Weld metal", units.Volume, "", units.Up)},
		Source:  "volume of a ring, exact", Example: "weld.bore_build_up(inch(3.25), inch(2.75), inch(4))",
		Call: func(in trade.Args, out []float64) error {
			v, err := BoreBuildUp(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}, {
		Name: "weld.deposit_mass", About: "Mass of a volume of weld metal.",
		Formula: "m = ρ·V",
		Params:  []trade.Param{limVolume.param("volume", "Volume of weld metal"), paramDensity},
		Results: []trade.Result{result("mass", "Weld metal", units.Mass, "lb", units.Up)},
		Source:  "definition of density", Example: "weld.deposit_mass(cuin(9.42))",
		Call: func(in trade.Args, out []float64) error {
			v, err := DepositMass(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "weld.filler_needed", About: "Filler to have at hand for a mass of weld metal.",
		Formula: "used = m/E",
		Params:  []trade.Param{paramDeposit, limEfficiency.param("efficiency", "Deposition efficiency")},
		Results: []trade.Result{result("filler", "Filler used, stubs and spatter included", units.Mass, "lb", units.Up)},
		Source:  "ESAB, Calculating Filler Metal Consumption, P = W·L/E", Example: "weld.filler_needed(lb(2.67), percent(62))",
		Call: func(in trade.Args, out []float64) error {
			v, err := FillerUsed(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "weld.process_efficiency", About: "Average deposition efficiency of a process.",
		Formula: "table", Params: []trade.Param{paramProcess},
		Results: []trade.Result{result("efficiency", "Weld metal over filler used", units.Ratio, "percent", units.Down)},
		Source:  "averages in ESAB, Calculating Filler Metal Consumption; which value belongs to which process is from memory", Example: `weld.process_efficiency("flux-cored wire, gas")`,
		Call: func(in trade.Args, out []float64) error {
			i, err := choice(in.X[0], len(processes), errProcess)
			if err != nil {
				return err
			}
			v, err := Process(i).Efficiency()
			return one(out, v, err)
		},
	}, {
		Name: "weld.deposition_efficiency", About: "Deposition efficiency from two weighings.",
		Formula: "E = m/used",
		Params:  []trade.Param{paramDeposit, limMass.param("used", "Filler used")},
		Results: []trade.Result{result("efficiency", "Weld metal over filler used", units.Ratio, "percent", units.Down)},
		Source:  "ESAB filler metal handbook, definition", Example: "weld.deposition_efficiency(lb(3), lb(4))",
		Call: func(in trade.Args, out []float64) error {
			v, err := DepositionEfficiency(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "weld.arc_time", About: "How long the arc burns for a mass of weld metal.",
		Formula: "t = m/R",
		Params:  []trade.Param{paramDeposit, limRate.param("rate", "Weld metal laid per arc time")},
		Results: []trade.Result{result("time", "Arc time, handling not included", units.Time, "hour", units.Up)},
		Source:  "definition of a rate", Example: "weld.arc_time(lb(2.67), lb_per_hour(6))",
		Call: func(in trade.Args, out []float64) error {
			v, err := ArcTime(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "weld.deposition_rate", About: "Deposition rate from a weighed bead.",
		Formula: "R = m/t",
		Params:  []trade.Param{paramDeposit, limTime.param("time", "Arc time")},
		Results: []trade.Result{result("rate", "Weld metal laid per arc time", units.MassRate, "lb_per_hour", units.Down)},
		Source:  "deposition-rate test sheet of CIGWELD", Example: "weld.deposition_rate(kg(0.095), s(60))",
		Call: func(in trade.Args, out []float64) error {
			v, err := DepositionRate(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "weld.bead_mass", About: "Weld metal per length for a bead of a given cross-section.",
		Formula: "w = A·ρ",
		Params:  []trade.Param{limArea.param("area", "Cross-section of the bead"), paramDensity},
		Results: []trade.Result{result("mass_per_length", "Weld metal per length", units.MassPerLength, "lb_per_ft", units.Up)},
		Source:  "ESAB, Calculating Filler Metal Consumption", Example: "weld.bead_mass(sqin(0.125))",
		Call: func(in trade.Args, out []float64) error {
			v, err := BeadMass(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "weld.wire_mass", About: "Mass of wire per length.",
		Formula: "w = ρ·π·d²/4",
		Params:  []trade.Param{limWire.param("wire_diameter", "Wire diameter"), paramDensity},
		Results: []trade.Result{result("mass_per_length", "Wire per length", units.MassPerLength, "lb_per_ft", units.Nearest)},
		Source:  "geometry", Example: "weld.wire_mass(inch(0.045))",
		Call: func(in trade.Args, out []float64) error {
			v, err := WireMass(in.X[0], in.X[1])
			return one(out, v, err)
		},
	}, {
		Name: "weld.melt_off", About: "Wire melted per arc time; times the efficiency it is the deposition rate.",
		Formula: "R = ρ·π·d²/4·v",
		Params:  []trade.Param{limWire.param("wire_diameter", "Wire diameter"), limWireSpeed.param("wire_speed", "Wire feed speed"), paramDensity},
		Results: []trade.Result{result("rate", "Wire melted per arc time", units.MassRate, "lb_per_hour", units.Nearest)},
		Source:  "conservation of mass", Example: "weld.melt_off(inch(0.045), ipm(400))",
		Call: func(in trade.Args, out []float64) error {
			v, err := MeltOff(in.X[0], in.X[1], in.X[2])
			return one(out, v, err)
		},
	}}
}
