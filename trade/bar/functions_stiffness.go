package bar

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func stiffnessFunctions() []trade.Function {
	return []trade.Function{cantileverFunction(), lineBarFunction(), overhangFunction(), frequencyFunction(), headFunction(), stableFunction()}
}

func cantileverFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.cantilever",
		About:   "How far a boring bar held at one end gives at the cutter.",
		Formula: "y = F·L³/(3EI), I = pi(D⁴-d⁴)/64; k = 3EI/L³",
		Params: []trade.Param{
			diameterRange.Param("diameter", "Diameter of the bar"),
			overhangRange.Param("overhang", "Bar out of its holder, to the cutter"),
			forceRange.Param("force", "Force that pushes the cutter off"),
			materialParam(), holeParam(),
		},
		Results: []trade.Result{
			trade.ResultOf("deflection", "Deflection at the cutter", units.Length, "thou", units.Up),
			trade.ResultOf("stiffness", "Stiffness at the cutter", units.Stiffness, "lbf_per_in", units.Down),
			trade.ResultOf("stress", "Bending stress at the holder", units.Pressure, "ksi", units.Up),
		},
		Source:  `Isakov, "Boring: calculating deflection", Cutting Tool Engineering, July 2019; Shigley 9th ed. Table A-9; moduli of heavy metal and carbide from memory`,
		Example: `bar.cantilever({diameter: inch(2), overhang: inch(8), force: lbf(150), material: "steel"}).deflection`,
	}, func(x []float64) (CantileverResult, error) {
		m, err := MaterialAt(x[3])
		if err != nil {
			return CantileverResult{}, err
		}
		return Cantilever(CantileverInput{Section: Section{x[0], x[4]}, Overhang: x[1], Force: x[2], Modulus: m.Modulus})
	}, func(r CantileverResult, out []float64) { out[0], out[1], out[2] = r.Deflection, r.Stiffness, r.Stress })
}

func lineBarFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.line_bar",
		About:   "How far a line bar in two bearings gives: if they let it tilt, and if they hold it in line.",
		Formula: "at the cutter F·a²b²/(3EIL); greatest F·b(L²-b²)^1.5/(9√3·LEI); held in line F·a³b³/(3EIL³)",
		Params: []trade.Param{
			diameterRange.Param("diameter", "Diameter of the bar"),
			spanRange.Param("span", "Distance between the bearings' middles"),
			stationRange.Param("station", "Cutter from one bearing"),
			forceRange.Param("force", "Force that pushes the cutter off"),
			materialParam(), holeParam(),
		},
		Results: []trade.Result{
			trade.ResultOf("deflection", "Deflection at the cutter, bearings that let the bar tilt", units.Length, "thou", units.Up),
			trade.ResultOf("greatest", "Greatest deflection on the bar", units.Length, "thou", units.Up),
			trade.ResultOf("deflection_fixed", "Deflection at the cutter, ends held in line", units.Length, "thou", units.Up),
			trade.ResultOf("stiffness", "Stiffness at the cutter, bearings that let the bar tilt", units.Stiffness, "lbf_per_in", units.Down),
			trade.ResultOf("stiffness_fixed", "Stiffness at the cutter, ends held in line", units.Stiffness, "lbf_per_in", units.Down),
		},
		Source:  "Mott, Machine Elements in Mechanical Design 4th ed. Table A14-1(b); ends held in line from memory",
		Example: `bar.line_bar({diameter: inch(2.5), span: inch(60), station: inch(24), force: lbf(150), material: "steel"}).deflection`,
	}, func(x []float64) (LineBarResult, error) {
		m, err := MaterialAt(x[4])
		if err != nil {
			return LineBarResult{}, err
		}
		return LineBar(LineBarInput{Section: Section{x[0], x[5]}, Span: x[1], Station: x[2], Force: x[3], Modulus: m.Modulus})
	}, func(r LineBarResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4] = r.AtCutter, r.Greatest, r.AtCutterFixed, r.Stiffness, r.StiffnessFixed
	})
}

func overhangFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.overhang",
		About:   "Longest overhangs of a bar by its material, and the share used.",
		Formula: "usual = ru·D; most = rm·D; use = L/most",
		Params: []trade.Param{
			diameterRange.Param("diameter", "Diameter of the bar"),
			overhangRange.Param("overhang", "Bar out of its holder, to the cutter"),
			materialParam(),
		},
		Results: []trade.Result{
			trade.ResultOf("use", "Overhang over the longest to try", units.Ratio, "percent", units.Up),
			trade.ResultOf("ratio", "Overhang over diameter", units.Number, "number", units.Up),
			trade.ResultOf("usual", "Longest that mostly runs well", units.Length, "inch", units.Down),
			trade.ResultOf("most", "Longest to try", units.Length, "inch", units.Down),
		},
		Source:  "steel 4 and carbide 10: a tool maker's catalogue for small-hole bars (2017) p. D86, makers differ; the rest: " + trade.CommonPractice,
		Example: `bar.overhang({diameter: inch(2), overhang: inch(7), material: "steel"}).use`,
	}, func(x []float64) (OverhangResult, error) {
		m, err := MaterialAt(x[2])
		if err != nil {
			return OverhangResult{}, err
		}
		return Overhang(m, x[0], x[1])
	}, func(r OverhangResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.Use, r.Ratio, r.Usual, r.Most
	})
}

func frequencyInput(diameter, overhang, material, hole, head float64) (FrequencyInput, error) {
	m, err := MaterialAt(material)
	return FrequencyInput{Section: Section{diameter, hole}, Overhang: overhang, Modulus: m.Modulus, Density: m.Density, Head: head}, err
}

func frequencyFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.frequency",
		About:   "Lowest natural frequency of a bare bar held at one end.",
		Formula: "w = (1.8751/L)²·√(EI/(rho·A))",
		Params: []trade.Param{
			diameterRange.Param("diameter", "Diameter of the bar"),
			overhangRange.Param("overhang", "Bar out of its holder"),
			materialParam(), holeParam(),
		},
		Results: []trade.Result{
			trade.ResultOf("rotation", "The frequency as a rotation", units.Rotation, "rpm", units.Nearest),
			trade.ResultOf("hertz", "Cycles per second", units.Number, "number", units.Nearest),
		},
		Source:  "Euler-Bernoulli cantilever; root 1.8751 as in an instrument maker's user guide p. 97; densities of heavy metal and carbide from memory",
		Example: `bar.frequency({diameter: inch(2.5), overhang: inch(15), material: "steel"}).hertz`,
	}, func(x []float64) (FrequencyResult, error) {
		in, err := frequencyInput(x[0], x[1], x[2], x[3], 0)
		if err != nil {
			return FrequencyResult{}, err
		}
		return Frequency(in)
	}, func(r FrequencyResult, out []float64) { out[0], out[1] = r.Rotation, r.Hertz })
}

func headFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.frequency_with_head",
		About:   "Lowest natural frequency of a bar with a boring head at its end.",
		Formula: "w = √(k/(M + 33/140·m)), k = 3EI/L³",
		Params: []trade.Param{
			diameterRange.Param("diameter", "Diameter of the bar"),
			overhangRange.Param("overhang", "Bar out of its holder"),
			headRange.Param("head", "Mass of the boring head"),
			materialParam(), holeParam(),
		},
		Results: []trade.Result{
			trade.ResultOf("rotation", "The frequency as a rotation", units.Rotation, "rpm", units.Nearest),
			trade.ResultOf("hertz", "Cycles per second", units.Number, "number", units.Nearest),
		},
		Source:  "Rayleigh's method, 33/140 from memory",
		Example: `bar.frequency_with_head({diameter: inch(2.5), overhang: inch(15), head: lb(6), material: "steel"}).hertz`,
	}, func(x []float64) (FrequencyResult, error) {
		in, err := frequencyInput(x[0], x[1], x[3], x[4], x[2])
		if err != nil {
			return FrequencyResult{}, err
		}
		return FrequencyWithHead(in)
	}, func(r FrequencyResult, out []float64) { out[0], out[1] = r.Rotation, r.Hertz })
}

func stableFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "bar.stable_depth",
		About:   "Width of cut that cannot chatter at any spindle speed.",
		Formula: "a = 2·k·z(1+z)/K",
		Params: []trade.Param{
			stiffnessRange.Param("stiffness", "Stiffness at the cutter"),
			specificRange.Param("specific_force", "Specific cutting force in the direction in which the bar gives"),
			dampingRange.Param("damping", "Damping ratio of the bar in its holder").Usual(0.03),
		},
		Results: []trade.Result{trade.ResultOf("depth", "Width of cut that cannot chatter", units.Length, "thou", units.Down)},
		Source:  "absolute stability limit after Tlusty and Tobias (Schmitz & Smith, Machining Dynamics ch. 3), closed form from memory; damping: common practice, no source",
		Example: `bar.stable_depth({stiffness: N_per_mm(20000), specific_force: MPa(2000), damping: 0.03})`,
	}, func(x []float64) (StableResult, error) {
		return StableDepth(StableInput{Stiffness: x[0], Specific: x[1], Damping: x[2]})
	}, func(r StableResult, out []float64) { out[0] = r.Depth })
}
