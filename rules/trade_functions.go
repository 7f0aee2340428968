package rules

import (
	"gudgeon/trade"
	"gudgeon/trade/press"
)

// tradeFunctions lists what the trade packages offer to rule sheets.
func tradeFunctions() [][]trade.Function {
	return [][]trade.Function{
		press.Functions(),
	}
}
