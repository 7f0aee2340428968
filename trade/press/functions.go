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

type stepper interface{ Steps() []trade.Step }

// worked makes the two calls of a Function from a typed one: work reads the
// arguments, put writes the results.
func worked[R stepper](f trade.Function, work func(x []float64) (R, error), put func(r R, out []float64)) trade.Function {
	f.Call = func(in trade.Args, out []float64) error {
		r, err := work(in.X)
		if err != nil {
			return err
		}
		put(r, out)
		return nil
	}
	f.Steps = func(in trade.Args) []trade.Step {
		r, err := work(in.X)
		if err != nil {
			return nil
		}
		return r.Steps()
	}
	return f
}

// plain makes the call of a Function whose formula says it all.
func plain(f trade.Function, work func(x []float64) (float64, error)) trade.Function {
	f.Call = func(in trade.Args, out []float64) error {
		v, err := work(in.X)
		if err != nil {
			return err
		}
		out[0] = v
		return nil
	}
	return f
}

// jointParams puts the six values of a joint first, more after them, and the
// four that override the table of metals last.
func jointParams(more ...trade.Param) []trade.Param {
	list := []trade.Param{
		diameterRange.param("diameter", "Diameter of the fit: the bushing's outside"),
		boreRange.param("bushing_bore", "Bore of the bushing before pressing; 0 for a solid pin"),
		hubRange.param("hub_diameter", "Outside diameter of the boss"),
		interferenceRange.param("interference", "Bushing's outside less the bore it goes in, on diameter"),
		choiceOf("hub", "Metal of the boss"),
		choiceOf("bushing", "Metal of the bushing"),
	}
	list = append(list, more...)
	return append(list, overrides()...)
}

func overrides() []trade.Param {
	modulus, poisson := modulusRange, poissonRange
	modulus.low, poisson.low = 0, 0
	return []trade.Param{
		modulus.optional("hub_modulus", "Modulus of the boss, if not the table's (0: the table's)", 0),
		poisson.optional("hub_poisson", "Poisson's ratio of the boss, if not the table's (0: the table's)", 0),
		modulus.optional("bushing_modulus", "Modulus of the bushing, if not the table's (0: the table's)", 0),
		poisson.optional("bushing_poisson", "Poisson's ratio of the bushing, if not the table's (0: the table's)", 0),
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
	return []trade.Result{{Name: name, About: about, Kind: kind, Unit: unit, Round: round}}
}

const exampleJoint = `diameter: inch(4), bushing_bore: inch(3), hub_diameter: inch(7), interference: inch(0.004), hub: "A36 steel", bushing: "4140 normalized steel"`
