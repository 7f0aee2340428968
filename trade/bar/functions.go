package bar

import (
	"gudgeon/trade"
)

// Functions lists what a rule sheet can call from this package.
//
// Source: each function's own.
func Functions() []trade.Function {
	list := stiffnessFunctions()
	list = append(list, cutFunctions()...)
	return append(list, planFunctions()...)
}

func materialParam() trade.Param {
	return trade.Choice("material", "What the bar is made of", MaterialNames()...)
}

func workParam() trade.Param {
	return trade.Choice("work", "Metal to be cut: St 50 mild, St 60 medium, St 70 harder carbon steel; 42CrMo4 is much like 4140; GS-52 cast steel; GG-25 gray iron. No figures for weld metal were found: take a hard row", WorkNames()...)
}

func leadParam() trade.Param {
	return leadRange.Param("lead", "Angle of the cutting edge to the feed; 90° is square").Usual(90 * degree)
}

func pushParam() trade.Param {
	return shareRange.Param("push_share", "Share of the cutting force that pushes the bar off").Usual(0.5)
}

func holeParam() trade.Param {
	return boreRange.Param("hole", "Hole through the bar, 0 for solid").Usual(0)
}
