package rules

import (
	"gudgeon/trade"
	"gudgeon/trade/bar"
	"gudgeon/trade/bore"
	"gudgeon/trade/fit"
	"gudgeon/trade/lift"
	"gudgeon/trade/press"
	"gudgeon/trade/setup"
	"gudgeon/trade/truck"
	"gudgeon/trade/weld"
)

// tradeFunctions lists what the trade packages offer to rule sheets.
func tradeFunctions() [][]trade.Function {
	return [][]trade.Function{
		bar.Functions(),
		bore.Functions(),
		fit.Functions(),
		lift.Functions(),
		press.Functions(),
		setup.Functions(),
		truck.Functions(),
		weld.Functions(),
	}
}
