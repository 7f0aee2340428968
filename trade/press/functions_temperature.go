package press

import (
	"gudgeon/trade"
	"gudgeon/units"
)

const (
	linear   = "linear expansion, Callister, Fundamentals of Materials Science 3rd ed. Table B.6"
	deepCold = linear + "; the fall of the rate in the cold is from memory"
	roomTemp = fZero + 70/perF
)

func temperatureFunctions() []trade.Function {
	return []trade.Function{shrinkFunction(), freezeFunction(), heatFunction(), slipFunction()}
}

func roomParam() trade.Param {
	return roomRange.Param("room", "Temperature of the shop").Usual(roomTemp)
}

func shrinkFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.shrink",
		About:   "How much a part shrinks on its diameter when cooled, and whether the room-temperature rate overstates it.",
		Formula: "dD = D·alpha·(T0-T)·(1 - 0.23·(T0-T)/217 K)",
		Params: []trade.Param{
			diameterRange.Param("diameter", "Diameter of the part"),
			metalParam("metal", "Metal of the part"),
			coldRange.Param("temperature", "Temperature of the part after cooling"),
			roomParam(),
		},
		Results: []trade.Result{
			{Name: "shrink", About: "Shrinkage to count on, on diameter", Kind: units.Length, Unit: "thou", Round: units.Down},
			{Name: "at_room_rate", About: "Shrinkage by the room-temperature expansion", Kind: units.Length, Unit: "thou", Round: units.Nearest},
			{Name: "overstates", About: "Colder than dry ice: the room-temperature rate promises too much", Kind: units.YesNo},
		},
		Source:  deepCold,
		Example: `press.shrink({diameter: inch(4), metal: "1018 cold drawn steel", temperature: degF(-109)}).shrink`,
	}, func(x []float64) (ShrinkResult, error) {
		m, err := MaterialAt(x[1])
		if err != nil {
			return ShrinkResult{}, err
		}
		return Shrink(ShrinkInput{Diameter: x[0], Expansion: m.Expansion, Temperature: x[2], Room: x[3]})
	}, func(r ShrinkResult, out []float64) {
		out[0], out[1], out[2] = r.Shrink, r.AtRoomRate, trade.YesNo(r.Overstates)
	})
}

func easeParams(metal, about string) []trade.Param {
	return []trade.Param{
		diameterRange.Param("diameter", "Diameter of the fit"),
		interferenceRange.Param("interference", "Interference on diameter at room temperature"),
		gapRange.Param("clearance", "Clearance wanted while it goes in, on diameter"),
		metalParam(metal, about),
		roomParam(),
	}
}

func easeInput(x []float64) (EaseInput, error) {
	m, err := MaterialAt(x[3])
	return EaseInput{Diameter: x[0], Interference: x[1], Clearance: x[2], Expansion: m.Expansion, Room: x[4]}, err
}

func freezeFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.freeze_to",
		About:   "How cold a bushing must be to drop in with a clearance, and whether dry ice is enough.",
		Formula: "D·alpha·(T0-T)·(1 - 0.23·(T0-T)/217 K) = delta + c, solved for T",
		Params:  easeParams("bushing", "Metal of the bushing"),
		Results: []trade.Result{
			{Name: "temperature", About: "Temperature to cool to", Kind: units.Temperature, Unit: "degF", Round: units.Down},
			{Name: "dry_ice", About: "Dry ice is cold enough", Kind: units.YesNo},
		},
		Source:  deepCold,
		Example: `press.freeze_to({diameter: inch(4), interference: inch(0.002), clearance: inch(0.001), bushing: "4140 normalized steel"}).temperature`,
	}, func(x []float64) (FreezeResult, error) {
		in, err := easeInput(x)
		if err != nil {
			return FreezeResult{}, err
		}
		return FreezeTo(in)
	}, func(r FreezeResult, out []float64) { out[0], out[1] = r.Temperature, trade.YesNo(r.DryIce) })
}

func heatFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.heat_to",
		About:   "How hot a boss must be for the bushing to drop in with a clearance.",
		Formula: "T = T0 + (delta + c)/(D·alpha)",
		Params:  easeParams("hub", "Metal of the boss"),
		Results: one("temperature", "Temperature to heat the whole boss to", units.Temperature, "degF", units.Up),
		Source:  linear + "; the limit of 600 °F: common practice, no source",
		Example: `press.heat_to({diameter: inch(4), interference: inch(0.004), clearance: inch(0.002), hub: "A36 steel"})`,
	}, func(x []float64) (HeatResult, error) {
		in, err := easeInput(x)
		if err != nil {
			return HeatResult{}, err
		}
		return HeatTo(in)
	}, func(r HeatResult, out []float64) { out[0] = r.Temperature })
}

func slipFunction() trade.Function {
	return trade.Worked(trade.Function{
		Name:    "press.slip_in",
		About:   "Clearance on diameter when a cold bushing meets a hot boss; negative if it sticks.",
		Formula: "c = dD(T) + D·alphah·(Th-T0) - delta",
		Params: []trade.Param{
			diameterRange.Param("diameter", "Diameter of the fit"),
			interferenceRange.Param("interference", "Interference on diameter at room temperature"),
			metalParam("bushing", "Metal of the bushing"),
			metalParam("hub", "Metal of the boss"),
			coldRange.Param("bushing_temperature", "Temperature of the bushing as it goes in"),
			hotRange.Param("hub_temperature", "Temperature of the boss as it goes in"),
			roomParam(),
		},
		Results: one("clearance", "Clearance on diameter", units.Length, "thou", units.Down),
		Source:  deepCold,
		Example: `press.slip_in({diameter: inch(4), interference: inch(0.004), bushing: "4140 normalized steel", hub: "A36 steel", bushing_temperature: degF(-100), hub_temperature: degF(200)})`,
	}, func(x []float64) (SlipResult, error) {
		bushing, err := MaterialAt(x[2])
		if err != nil {
			return SlipResult{}, err
		}
		hub, err := MaterialAt(x[3])
		if err != nil {
			return SlipResult{}, err
		}
		return SlipIn(SlipInput{
			Diameter: x[0], Interference: x[1], BushingExpansion: bushing.Expansion, HubExpansion: hub.Expansion,
			BushingTemp: x[4], HubTemp: x[5], Room: x[6],
		})
	}, func(r SlipResult, out []float64) { out[0] = r.Clearance })
}
