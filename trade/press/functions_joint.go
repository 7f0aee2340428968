package press

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

const shigley356 = "Shigley, Mechanical Engineering Design 9th ed. eq. 3-56; thick-cylinder theory of Lamé; limits of wall and strain: common practice, no source"

func jointFunctions() []trade.Function {
	return []trade.Function{pressureFunction(), stressFunction(), limitFunction(), closeInFunction(), pinFunction(), bossFunction()}
}

func pressureWork(x []float64) (PressureResult, error) {
	j, _, _, err := joint(x)
	if err != nil {
		return PressureResult{}, err
	}
	return Pressure(j)
}

func pressureFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.pressure",
		About:   "Pressure between a bushing and a round boss, from their interference.",
		Formula: "p = delta/(D·[((Dh²+D²)/(Dh²-D²)+nuh)/Eh + ((D²+d²)/(D²-d²)-nub)/Eb])",
		Params:  jointParams(),
		Results: one("pressure", "Pressure between bushing and boss", units.Pressure, "psi", units.Nearest),
		Source:  shigley356,
		Example: "press.pressure({" + exampleJoint + "})",
	}, pressureWork, func(r PressureResult, out []float64) { out[0] = r.Pressure })
}

func stressWork(x []float64) (StressResult, error) {
	j, hub, bushing, err := joint(x)
	if err != nil {
		return StressResult{}, err
	}
	s, t := hub.Strength, bushing.Strength
	s.Limit, t.Limit = or(x[6], s.Limit), or(x[7], t.Limit)
	return Stress(j, s, t)
}

func yieldParams() []trade.Param {
	strength := strengthRange
	strength.Low = 0
	return []trade.Param{
		strength.Param("hub_yield", "Yield of the boss (tensile strength of gray iron), if not the table's (0: the table's)").Usual(0),
		strength.Param("bushing_yield", "Yield of the bushing (tensile strength of gray iron), if not the table's (0: the table's)").Usual(0),
	}
}

func stressFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.stress",
		About:   "Stress in boss and bushing, and the share of their strength that the fit uses.",
		Formula: "hub s = p(Dh²+D²)/(Dh²-D²), von Mises √(s²+s·p+p²); bushing 2pD²/(D²-d²); use = stress/yield",
		Params:  jointParams(yieldParams()...),
		Results: []trade.Result{
			{Name: "hub_use", About: "Share of the boss's strength used", Kind: units.Ratio, Unit: "percent", Round: units.Up},
			{Name: "bushing_use", About: "Share of the bushing's strength used", Kind: units.Ratio, Unit: "percent", Round: units.Up},
			{Name: "hub_hoop", About: "Hoop stress of the boss at its bore", Kind: units.Pressure, Unit: "ksi", Round: units.Up},
			{Name: "hub_von_mises", About: "Von Mises stress of the boss at its bore", Kind: units.Pressure, Unit: "ksi", Round: units.Up},
			{Name: "bushing_von_mises", About: "Worst von Mises stress of the bushing", Kind: units.Pressure, Unit: "ksi", Round: units.Up},
		},
		Source:  shigley356 + "; distortion-energy and maximum-normal-stress theories, Shigley 9th ed. ch. 5",
		Example: "press.stress({" + exampleJoint + "}).hub_use",
	}, stressWork, func(r StressResult, out []float64) {
		out[0], out[1], out[2], out[3], out[4] = r.HubUse, r.BushingUse, r.HubHoop, r.HubVonMises, r.BushingVonMises
	})
}

func limitFunction() trade.Function {
	// The joint's parameters without its interference, which is the answer.
	params := jointParams(yieldParams()...)
	params = append(params[:3:3], params[4:]...)
	return trade.Worked(trade.Function{
		Name:    "press.greatest_interference",
		About:   "Interference at which boss or bushing first reaches its strength.",
		Formula: "delta = p·D·(Gh+Gb), p the smaller of the pressures that boss and bushing can take",
		Params:  params,
		Results: one("interference", "Most interference on diameter", units.Length, "thou", units.Down),
		Source:  shigley356,
		Example: `press.greatest_interference({diameter: inch(4), bushing_bore: inch(3), hub_diameter: inch(7), hub: "A36 steel", bushing: "4140 normalized steel"})`,
	}, func(x []float64) (LimitResult, error) {
		hub, err := MaterialAt(x[3])
		if err != nil {
			return LimitResult{}, err
		}
		bushing, err := MaterialAt(x[4])
		if err != nil {
			return LimitResult{}, err
		}
		s, t := hub.Strength, bushing.Strength
		s.Limit, t.Limit = or(x[5], s.Limit), or(x[6], t.Limit)
		return GreatestInterference(Joint{
			Diameter: x[0], BushingBore: x[1], HubDiameter: x[2],
			Hub:     Elastic{or(x[7], hub.Elastic.Modulus), or(x[8], hub.Elastic.Poisson)},
			Bushing: Elastic{or(x[9], bushing.Elastic.Modulus), or(x[10], bushing.Elastic.Poisson)},
		}, s, t)
	}, func(r LimitResult, out []float64) { out[0] = r.Interference })
}

func closeInFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.close_in",
		About:   "How much a bushing's bore closes when pressed in, and the bore that is left.",
		Formula: "close-in = 2pD²d/(Eb(D²-d²)); bore after = d - close-in",
		Params:  jointParams(),
		Results: []trade.Result{
			{Name: "close_in", About: "How much the bore closes, on diameter", Kind: units.Length, Unit: "thou", Round: units.Up},
			{Name: "bore_after", About: "Bore once pressed in", Kind: units.Length, Unit: "inch", Round: units.Down},
		},
		Source:  shigley356,
		Example: "press.close_in({" + exampleJoint + "}).bore_after",
	}, pressureWork, func(r PressureResult, out []float64) { out[0], out[1] = r.CloseIn, r.BoreAfter })
}

func pinFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.pin_clearance",
		About:   "Clearance on diameter of a pin in the bushing once it is pressed in; negative if the pin no longer runs.",
		Formula: "c = d - 2pD²d/(Eb(D²-d²)) - pin",
		Params:  jointParams(pinRange.Param("pin", "Diameter of the pin")),
		Results: one("clearance", "Clearance on diameter", units.Length, "thou", units.Down),
		Source:  shigley356,
		Example: "press.pin_clearance({" + exampleJoint + ", pin: inch(2.99)})",
	}, func(x []float64) (PinResult, error) {
		j, _, _, err := joint(x)
		if err != nil {
			return PinResult{}, err
		}
		return PinClearance(j, x[6])
	}, func(r PinResult, out []float64) { out[0] = r.Clearance })
}

func bossFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.boss",
		About:   "The two round hubs between which an uneven boss lies; refuses a split boss and a thin ear.",
		Formula: "least = D + 2·tmin; most = D + 2·tmax",
		Params: []trade.Param{
			diameterRange.Param("bore", "Bore in the boss"),
			wallRange.Param("least_wall", "Metal round the bore where it is thinnest"),
			wallRange.Param("greatest_wall", "Metal round the bore where it is thickest"),
			trade.Choice("shape", "Is the ring of metal closed, or split by a cap or a slot?", BossShapes()...),
		},
		Results: []trade.Result{
			{Name: "least", About: "Hub diameter for what the fit holds and for stress", Kind: units.Length, Unit: "inch", Round: units.Down},
			{Name: "most", About: "Hub diameter for the press's size", Kind: units.Length, Unit: "inch", Round: units.Up},
		},
		Source:  trade.CommonPractice,
		Example: `press.boss({bore: inch(4), least_wall: inch(1), greatest_wall: inch(2.5), shape: "closed"}).least`,
	}, func(x []float64) (BossResult, error) {
		if x[3] != 0 && x[3] != 1 {
			return BossResult{}, errors.New("the boss is neither closed nor split")
		}
		return Boss(BossInput{Bore: x[0], LeastWall: x[1], GreatestWall: x[2], Shape: BossShape(x[3])})
	}, func(r BossResult, out []float64) { out[0], out[1] = r.Least, r.Most })
}
