package fit

import (
	"gudgeon/trade"
	"gudgeon/trade/press"
	"gudgeon/units"
)

func runningFunction() trade.Function {
	const roomTemp = 293.15
	return trade.Worked(trade.Function{
		Name:    "fit.running_clearance",
		About:   "Clearance on diameter of a pin in a pressed-in bushing, as measured and at working temperature.",
		Formula: "cold = d - k - pin; hot = d(1+ab·dT) - k·(delta + D(ab-ah)dT)/delta - pin(1+ap·dTp)",
		Params: []trade.Param{
			boreRange.Param("bushing_bore", "Bore of the bushing before pressing"),
			pinRange.Param("pin", "Diameter of the pin"),
			diameterRange.Param("diameter", "Diameter of the press fit: the bushing's outside"),
			tightRange.Param("interference", "Interference of the press fit on diameter; 0 if it is not pressed"),
			closeInRange.Param("close_in", "How much the bore closes when pressed in, as from press.close_in"),
			trade.Choice("bushing", "Metal of the bushing", press.MaterialNames()...),
			trade.Choice("hub", "Metal of the boss", press.MaterialNames()...),
			trade.Choice("pin_metal", "Metal of the pin", press.MaterialNames()...),
			tempRange.Param("boss_temperature", "Boss and bushing at work").Usual(roomTemp),
			tempRange.Param("pin_temperature", "Pin at work").Usual(roomTemp),
			tempRange.Param("measured_at", "Temperature at which all were measured").Usual(roomTemp),
		},
		Results: []trade.Result{
			length("cold", "Clearance on diameter once pressed in", "thou", units.Down),
			length("hot", "Clearance on diameter at work", "thou", units.Down),
			length("hot_interference", "Interference of the press fit at work", "thou", units.Down),
		},
		Source:  "linear expansion (press's table of metals) and the elastic press fit, Shigley 9th ed. eq. 3-56",
		Example: `fit.running_clearance({bushing_bore: inch(3.01), pin: inch(3), diameter: inch(4), interference: inch(0.004), close_in: inch(0.003), bushing: "C93200 bearing bronze", hub: "A36 steel", pin_metal: "4140 tempered steel", boss_temperature: degF(150), pin_temperature: degF(170)}).hot`,
	}, func(x []float64) (RunningResult, error) {
		in := RunningInput{
			BushingBore: x[0], Pin: x[1], Diameter: x[2], Interference: x[3], CloseIn: x[4],
			BossTemp: x[8], PinTemp: x[9], Measured: x[10],
		}
		for i, to := range [...]*float64{&in.BushingExpansion, &in.BossExpansion, &in.PinExpansion} {
			m, err := press.MaterialAt(x[5+i])
			if err != nil {
				return RunningResult{}, err
			}
			*to = m.Expansion
		}
		return Running(in)
	}, func(r RunningResult, out []float64) { out[0], out[1], out[2] = r.Cold, r.Hot, r.HotInterference })
}
