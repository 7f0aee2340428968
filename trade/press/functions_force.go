package press

import (
	"gudgeon/trade"
	"gudgeon/units"
)

func forceFunctions() []trade.Function {
	return []trade.Function{frictionFunction(), forceFunction(), pushOutFunction(), handbookFunction(), railroadFunction(), allowanceFunction(), thinRingFunction()}
}

// Steps gives the band itself.
func (b FrictionBand) Steps() []trade.Step {
	return []trade.Step{
		{Name: "least friction, for what the fit holds", Formula: b.Source, Kind: units.Number, Value: b.Low},
		{Name: "most friction, for the press's size", Formula: b.Source, Kind: units.Number, Value: b.High},
	}
}

func frictionFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.friction",
		About:   "Least and most friction to reckon with between bushing and boss.",
		Formula: "a table",
		Params:  []trade.Param{trade.Choice("surfaces", "The pair of surfaces", FrictionNames()...)},
		Results: []trade.Result{
			{Name: "low", About: "Least friction coefficient, for what the fit holds", Kind: units.Number, Round: units.Down},
			{Name: "high", About: "Most friction coefficient, for the press's size", Kind: units.Number, Round: units.Up},
		},
		Source:  "from memory",
		Example: `press.friction("steel on steel, oiled").high`,
	}, func(x []float64) (FrictionBand, error) { return Friction(x[0]) },
		func(b FrictionBand, out []float64) { out[0], out[1] = b.Low, b.High })
}

func frictionParams() []trade.Param {
	return []trade.Param{
		lengthRange.Param("length", "Length of full engagement"),
		frictionRange.Param("friction_low", "Least friction coefficient, for what the fit holds").Usual(0.05),
		frictionRange.Param("friction_high", "Most friction coefficient, for the press's size").Usual(0.20),
	}
}

func forceInput(x []float64) (ForceInput, error) {
	j, _, _, err := joint(x)
	return ForceInput{Joint: j, Length: x[6], FrictionLow: x[7], FrictionHigh: x[8]}, err
}

func forceFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.force",
		About:   "Force to press a bushing home at the most friction, and what the fit holds at the least.",
		Formula: "F = mu·p·pi·D·L, at full engagement",
		Params:  jointParams(frictionParams()...),
		Results: []trade.Result{
			{Name: "press_in", About: "Force to press in, at the most friction", Kind: units.Force, Unit: "short_tonf", Round: units.Up},
			{Name: "holds", About: "Force along the axis that the fit holds, at the least friction", Kind: units.Force, Unit: "short_tonf", Round: units.Down},
			{Name: "holds_torque", About: "Torque that the fit holds, at the least friction", Kind: units.Torque, Unit: "lbf_ft", Round: units.Down},
			{Name: "pressure", About: "Pressure between bushing and boss", Kind: units.Pressure, Unit: "psi", Round: units.Nearest},
		},
		Source:  shigley356 + "; friction bands from memory",
		Example: "press.force({" + exampleJoint + ", length: inch(4)}).press_in",
	}, func(x []float64) (ForceResult, error) {
		in, err := forceInput(x)
		if err != nil {
			return ForceResult{}, err
		}
		return Force(in)
	}, func(r ForceResult, out []float64) {
		out[0], out[1], out[2], out[3] = r.PressIn, r.Holds, r.HoldsTorque, r.Pressure
	})
}

func pushOutFunction() trade.Function {
	params := frictionParams()
	params = append(params, seizureRange.Param("seizure", "Allowance for rust and fretting; 1 for a clean bushing").Usual(1.5))
	return trade.Worked(trade.Function{
		Name:    "press.push_out",
		About:   "Force that it may take to push an old bushing out.",
		Formula: "F = s·mu_high·p·pi·D·L",
		Params:  jointParams(params...),
		Results: one("force", "Force to push out", units.Force, "short_tonf", units.Up),
		Source:  shigley356 + "; the allowance for seizing: common practice, no source",
		Example: "press.push_out({" + exampleJoint + ", length: inch(4), seizure: 2})",
	}, func(x []float64) (PushOutResult, error) {
		in, err := forceInput(x)
		if err != nil {
			return PushOutResult{}, err
		}
		return PushOut(in, x[9])
	}, func(r PushOutResult, out []float64) { out[0] = r.Force })
}

func handbookFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.handbook_force",
		About:   "An old handbook's tonnage, to cross-check press.force; never to size a press by.",
		Formula: "P = pi·D·L·a·F/2 short tons, F from the table for D",
		Params: []trade.Param{
			handbookDiameterRange.Param("diameter", "Diameter of the fit"),
			lengthRange.Param("length", "Length of fit"),
			interferenceRange.Param("interference", "Interference on diameter"),
		},
		Results: one("force", "Handbook tonnage", units.Force, "short_tonf", units.Nearest),
		Source:  "Machinery's Handbook, pressure factors for forced fits (restated)",
		Example: "press.handbook_force({diameter: inch(4), length: inch(4), interference: inch(0.004)})",
	}, func(x []float64) (HandbookResult, error) {
		return HandbookForce(HandbookInput{Diameter: x[0], Length: x[1], Interference: x[2]})
	}, func(r HandbookResult, out []float64) { out[0] = r.Force })
}

func railroadFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "press.railroad_force",
		About:   "Forced-fit tonnage of railroad practice about 1919: a rule of thumb for crank pins in cast-steel wheels.",
		Formula: "P = 15·D + 15 short tons, D in inches",
		Params:  []trade.Param{thumbDiameterRange.Param("diameter", "Diameter of the pin")},
		Results: one("force", "Tonnage", units.Force, "short_tonf", units.Nearest),
		Source:  "Dooley, Applied Science for Metal Workers, sec. 454",
		Example: "press.railroad_force(inch(9))",
	}, func(x []float64) (float64, error) { return RailroadForce(x[0]) })
}

func allowanceFunction() trade.Function {
	return trade.Plain(trade.Function{
		Name:    "press.shrink_allowance",
		About:   "Old shop allowance on diameter for a shrunk fit.",
		Formula: "A = 0.001·D",
		Params:  []trade.Param{thumbDiameterRange.Param("diameter", "Diameter of the fit")},
		Results: one("allowance", "Allowance on diameter", units.Length, "thou", units.Nearest),
		Source:  "Dooley, Applied Science for Metal Workers, sec. 453",
		Example: "press.shrink_allowance(inch(10))",
	}, func(x []float64) (float64, error) { return ShrinkAllowance(x[0]) })
}

func thinRingFunction() trade.Function {
	thickness := trade.Between("ring thickness", 0.01*inch, ringRange.High/20, units.Length, "")
	return trade.Worked(trade.Function{
		Name:    "press.thin_ring",
		About:   "Grip of a thin ring shrunk on a wheel that does not give.",
		Formula: "P = alpha·dT·E·t·w; p = 2P/(D·w)",
		Params: []trade.Param{
			ringRange.Param("diameter", "Diameter of the ring"),
			widthRange.Param("width", "Width of the ring"),
			thickness.Param("thickness", "Thickness of the ring, at most a twentieth of its diameter"),
			coolingRange.Param("cooling", "Temperature drop from just fitting"),
			metalParam("ring", "Metal of the ring"),
		},
		Results: []trade.Result{
			{Name: "pull", About: "Pull in the ring's section", Kind: units.Force, Unit: "lbf", Round: units.Nearest},
			{Name: "pressure", About: "Pressure on the wheel", Kind: units.Pressure, Unit: "psi", Round: units.Nearest},
		},
		Source:  "Singer & Pytel, Strength of Materials, problem 267",
		Example: `press.thin_ring({diameter: mm(2000), width: mm(90), thickness: mm(12), cooling: delta_degC(55), ring: "A36 steel"}).pressure`,
	}, func(x []float64) (ThinRingResult, error) {
		m, err := MaterialAt(x[4])
		if err != nil {
			return ThinRingResult{}, err
		}
		return ThinRing(ThinRingInput{Diameter: x[0], Width: x[1], Thickness: x[2], Cooling: x[3], Modulus: m.Elastic.Modulus, Expansion: m.Expansion})
	}, func(r ThinRingResult, out []float64) { out[0], out[1] = r.Pull, r.Pressure })
}
