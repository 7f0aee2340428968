package press

import (
	"gudgeon/trade"
	"gudgeon/units"
)

// Functions lists what a rule sheet can call from this package.
//
// Source: each function's own.
func Functions() []trade.Function {
	list := jointFunctions()
	list = append(list, forceFunctions()...)
	list = append(list, temperatureFunctions()...)
	list = append(list, ramFunctions()...)
	return append(list, benchFunctions()...)
}

// jointParams puts the six values of a joint first, more after them, and the
// four that override the table of metals last.
func jointParams(more ...trade.Param) []trade.Param {
	list := []trade.Param{
		diameterRange.Param("diameter", "Diameter of the fit: the bushing's outside"),
		boreRange.Param("bushing_bore", "Bore of the bushing before pressing; 0 for a solid pin"),
		hubRange.Param("hub_diameter", "Outside diameter of the boss"),
		interferenceRange.Param("interference", "Bushing's outside less the bore it goes in, on diameter"),
		metalParam("hub", "Metal of the boss"),
		metalParam("bushing", "Metal of the bushing"),
	}
	list = append(list, more...)
	return append(list, overrides()...)
}

func overrides() []trade.Param {
	modulus, poisson := modulusRange, poissonRange
	modulus.Low, poisson.Low = 0, 0
	return []trade.Param{
		modulus.Param("hub_modulus", "Modulus of the boss, if not the table's (0: the table's)").Usual(0),
		poisson.Param("hub_poisson", "Poisson's ratio of the boss, if not the table's (0: the table's)").Usual(0),
		modulus.Param("bushing_modulus", "Modulus of the bushing, if not the table's (0: the table's)").Usual(0),
		poisson.Param("bushing_poisson", "Poisson's ratio of the bushing, if not the table's (0: the table's)").Usual(0),
	}
}

// joint reads the arguments that jointParams lists.
func joint(x []float64) (j Joint, hub, bushing Material, err error) {
	if hub, err = MaterialAt(x[4]); err != nil {
		return
	}
	if bushing, err = MaterialAt(x[5]); err != nil {
		return
	}
	o := x[len(x)-4:]
	j = Joint{
		Diameter: x[0], BushingBore: x[1], HubDiameter: x[2], Interference: x[3],
		Hub:     Elastic{or(o[0], hub.Elastic.Modulus), or(o[1], hub.Elastic.Poisson)},
		Bushing: Elastic{or(o[2], bushing.Elastic.Modulus), or(o[3], bushing.Elastic.Poisson)},
	}
	return
}

func one(name, about string, kind units.Kind, unit string, round trade.Rounding) []trade.Result {
	return []trade.Result{trade.ResultOf(name, about, kind, unit, round)}
}

const exampleJoint = `diameter: inch(4), bushing_bore: inch(3), hub_diameter: inch(7), interference: inch(0.004), hub: "A36 steel", bushing: "4140 normalized steel"`
