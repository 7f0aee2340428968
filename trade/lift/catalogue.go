package lift

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// Functions lists what a rule sheet can call.
func Functions() []trade.Function {
	var all []trade.Function
	for _, some := range [][]trade.Function{
		weightFunctions(), centreFunctions(), legFunctions(), slingFunctions(), hardwareFunctions(),
		lugFunctions(), barFunctions(), weldRuleFunctions(), weldFunctions(),
	} {
		all = append(all, some...)
	}
	return all
}

var errArgs = errors.New("wrong number of arguments or results")

// value makes the Call of a function with a single result.
func value(params int, work func(x []float64) (float64, error)) func(trade.Args, []float64) error {
	return func(in trade.Args, out []float64) error {
		if len(in.X) != params || len(out) != 1 {
			return errArgs
		}
		y, err := work(in.X)
		if err != nil {
			return err
		}
		out[0] = y
		return nil
	}
}

// record makes the Call of a function with several results.
func record(params, results int, work func(x, out []float64) error) func(trade.Args, []float64) error {
	return func(in trade.Args, out []float64) error {
		if len(in.X) != params || len(out) != results {
			return errArgs
		}
		return work(in.X, out)
	}
}

// worked is a typed result that can show its lines.
type worked interface{ Steps() []trade.Step }

// steps makes the Steps of a function; a call that fails has none.
func steps[R worked](params int, work func(x []float64) (R, error)) func(trade.Args) []trade.Step {
	return func(in trade.Args) []trade.Step {
		if len(in.X) != params {
			return nil
		}
		r, err := work(in.X)
		if err != nil {
			return nil
		}
		return r.Steps()
	}
}

func result(name, about string, kind units.Kind, unit string, round trade.Rounding) trade.Result {
	return trade.Result{Name: name, About: about, Kind: kind, Unit: unit, Round: round}
}

// useOf is a result that is a demand over a capacity.
func useOf(name, about string) trade.Result {
	return result(name, about, units.Ratio, "percent", units.Up)
}

func stress(name, about string) trade.Result {
	return result(name, about, units.Pressure, "ksi", units.Up)
}

// governs is a result that tells which way of failing is worst, counted from 1.
func governs(order string) trade.Result {
	return result("governs", "which is worst: "+order, units.Number, "number", units.Nearest)
}

func capacityOf(about string) trade.Result {
	return result("capacity", about, units.Mass, "lb", units.Down)
}

func yesNo(name, about string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: units.YesNo, High: 1}
}

func categoryParam() trade.Param {
	p := word("category", "design category of ASME BTH-1: A for known, steady conditions, else B", categories...)
	return usual(p, float64(CategoryB))
}

func basisParam() trade.Param {
	p := word("basis", "rule for the weld's stress: BTH-1 A or B for lifting, 0.30 of the electrode for other work", bases...)
	return usual(p, float64(WeldBTHB))
}

func electrodeParam() trade.Param {
	return electrodeRange.param("electrode", "tensile strength of the electrode")
}

func yieldParam() trade.Param { return yieldRange.param("yield", "yield strength of the steel") }

func loadParam(name, about string) trade.Param { return loadRange.param(name, about) }

// uses writes the use of each check to out.
func uses(out []float64, checks []Check) {
	for i, c := range checks {
		out[i] = c.Use()
	}
}
