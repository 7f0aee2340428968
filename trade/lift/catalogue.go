package lift

import (
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

// useOf is a result that is a demand over a capacity.
func useOf(name, about string) trade.Result {
	return trade.ResultOf(name, about, units.Ratio, "percent", units.Up)
}

func stress(name, about string) trade.Result {
	return trade.ResultOf(name, about, units.Pressure, "ksi", units.Up)
}

// governs is a result that names the way of failing that is worst.
func governs(modes ...string) trade.Result {
	return trade.WordOf("governs", "which is worst", modes...)
}

func capacityOf(about string) trade.Result {
	return trade.ResultOf("capacity", about, units.Mass, "lb", units.Down)
}

func yesNo(name, about string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: units.YesNo, High: 1}
}

func categoryParam() trade.Param {
	p := trade.Choice("category", "design category of ASME BTH-1: A for known, steady conditions, else B", categories...)
	return p.Usual(float64(CategoryB))
}

func basisParam() trade.Param {
	p := trade.Choice("basis", "rule for the weld's stress: BTH-1 A or B for lifting, 0.30 of the electrode for other work", bases...)
	return p.Usual(float64(WeldBTHB))
}

func electrodeParam() trade.Param {
	return electrodeRange.Param("electrode", "tensile strength of the electrode")
}

func yieldParam() trade.Param { return yieldRange.Param("yield", "yield strength of the steel") }

func loadParam(name, about string) trade.Param { return loadRange.Param(name, about) }

// uses writes the use of each check to out.
func uses(out []float64, checks []Check) {
	for i, c := range checks {
		out[i] = c.Use()
	}
}
