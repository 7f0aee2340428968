package weld

import (
	"gudgeon/trade"
	"gudgeon/units"
)

// limit is the range of one input, for the typed functions and the catalogue
// alike.
type limit struct {
	what      string
	low, high float64
	kind      units.Kind
	why       string
}

func (l *limit) check(x float64) error {
	return trade.InRange(l.what, x, l.low, l.high, l.kind, l.why)
}

// param describes the input for a rule sheet.
func (l *limit) param(name, about string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: l.kind, Low: l.low, High: l.high}
}

const (
	mm   = 0.001
	inch = 0.0254
)

var (
	limWorn      = limit{"worn diameter", 5 * mm, 3, units.Length, ""}
	limFinish    = limit{"finish diameter", 5 * mm, 3, units.Length, ""}
	limTruing    = limit{"truing-bore diameter", 0, 3, units.Length, "0 means no truing bore"}
	limBoss      = limit{"boss diameter", 0, 6, units.Length, "0 means not known"}
	limOffset    = limit{"offset", 0, 1.5, units.Length, ""}
	limShift     = limit{"place of the axis", -1.5, 1.5, units.Length, ""}
	limAllowance = limit{"clean-up allowance", 0, 20 * mm, units.Length, "it is on the radius"}
	limLayer     = limit{"build-up per layer", 0.2 * mm, 12 * mm, units.Length, "on the radius; no single layer is thinner or thicker"}
	limLayers    = limit{"number of layers", 0, 60, units.Number, ""}
	limBuildUp   = limit{"build-up", 0, 100 * mm, units.Length, "on the radius"}
	limLength    = limit{"bore length", 1 * mm, 10, units.Length, ""}
	limLeast     = limit{"least thickness", 0, 100 * mm, units.Length, ""}
	limU         = limit{"standard uncertainty", 0, 50 * mm, units.Length, ""}
	limThick     = limit{"weld thickness", 0, 200 * mm, units.Length, "on the radius"}

	limVolume     = limit{"weld volume", 0, 1, units.Volume, ""}
	limDensity    = limit{"density", 1000, 20000, units.Density, ""}
	limEfficiency = limit{"deposition efficiency", 0.3, 1, units.Ratio, "weld metal over filler used"}
	limMass       = limit{"mass", 0, 10000, units.Mass, ""}
	limRate       = limit{"deposition rate", 1e-6, 0.05, units.MassRate, ""}
	limArea       = limit{"bead area", 0, 0.1, units.Area, ""}
	limWire       = limit{"wire diameter", 0.3 * mm, 8 * mm, units.Length, ""}
	limWireSpeed  = limit{"wire feed speed", 1e-4, 1, units.Speed, ""}
	limTime       = limit{"time", 1, 1e6, units.Time, ""}

	limVoltage  = limit{"arc voltage", 5, 100, units.Voltage, ""}
	limCurrent  = limit{"welding current", 5, 2000, units.Current, ""}
	limTravel   = limit{"travel speed", 1e-4, 0.2, units.Speed, "the speed of the bead, not of the wire"}
	limArcShare = limit{"arc efficiency", 0.2, 1, units.Ratio, "1 where the code's formula has none"}
	limBase     = limit{"thickness", 1 * mm, 1, units.Length, "the thickest part at the joint"}
)
