package weld

import (
	"gudgeon/trade"
	"gudgeon/units"
)

const (
	mm   = 0.001
	inch = 0.0254
)

var (
	limWorn      = trade.Between("worn diameter", 5*mm, 3, units.Length, "")
	limFinish    = trade.Between("finish diameter", 5*mm, 3, units.Length, "")
	limTruing    = trade.Between("truing-bore diameter", 0, 3, units.Length, "0 means no truing bore")
	limBoss      = trade.Between("boss diameter", 0, 6, units.Length, "0 means not known")
	limOffset    = trade.Between("offset", 0, 1.5, units.Length, "")
	limShift     = trade.Between("place of the axis", -1.5, 1.5, units.Length, "")
	limAllowance = trade.Between("clean-up allowance", 0, 20*mm, units.Length, "it is on the radius")
	limLayer     = trade.Between("build-up per layer", 0.2*mm, 12*mm, units.Length, "on the radius; no single layer is thinner or thicker")
	limLayers    = trade.Between("number of layers", 0, 60, units.Number, "")
	limBuildUp   = trade.Between("build-up", 0, 100*mm, units.Length, "on the radius")
	limLength    = trade.Between("bore length", 1*mm, 10, units.Length, "")
	limLeast     = trade.Between("least thickness", 0, 100*mm, units.Length, "")
	limU         = trade.Between("standard uncertainty", 0, 50*mm, units.Length, "")
	limThick     = trade.Between("weld thickness", 0, 200*mm, units.Length, "on the radius")

	limVolume     = trade.Between("weld volume", 0, 1, units.Volume, "")
	limDensity    = trade.Between("density", 1000, 20000, units.Density, "")
	limEfficiency = trade.Between("deposition efficiency", 0.3, 1, units.Ratio, "weld metal over filler used")
	limMass       = trade.Between("mass", 0, 10000, units.Mass, "")
	limRate       = trade.Between("deposition rate", 1e-6, 0.05, units.MassRate, "")
	limArea       = trade.Between("bead area", 0, 0.1, units.Area, "")
	limWire       = trade.Between("wire diameter", 0.3*mm, 8*mm, units.Length, "")
	limWireSpeed  = trade.Between("wire feed speed", 1e-4, 1, units.Speed, "")
	limTime       = trade.Between("time", 1, 1e6, units.Time, "")

	limVoltage  = trade.Between("arc voltage", 5, 100, units.Voltage, "")
	limCurrent  = trade.Between("welding current", 5, 2000, units.Current, "")
	limTravel   = trade.Between("travel speed", 1e-4, 0.2, units.Speed, "the speed of the bead, not of the wire")
	limArcShare = trade.Between("arc efficiency", 0.2, 1, units.Ratio, "1 where the code's formula has none")
	limBase     = trade.Between("thickness", 1*mm, 1, units.Length, "the thickest part at the joint")
)
