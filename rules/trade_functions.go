package rules

import (
	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/trade/fit"
	"gudgeon/trade/lift"
	"gudgeon/trade/press"
)

// tradeFunctions lists what the trade packages offer to rule sheets.
func tradeFunctions() [][]trade.Function {
	return [][]trade.Function{
		bore.Functions(),
		fit.Functions(),
		lift.Functions(),
		press.Functions(),
	}
}
