package bar

import (
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

const (
	inch    = 0.0254
	micron  = 1e-6
	psi     = 6894.757293168361
	lbf     = 4.4482216152605
	turn    = 2 * math.Pi
	degree  = math.Pi / 180
	minute  = 60.0
	perTurn = 1 / turn // a feed per turn is this many times as large per radian
)

var (
	forceRange      = trade.Between("force", 0, 1e6, units.Force, "")
	diameterRange   = trade.Between("bar diameter", 0.1*inch, 24*inch, units.Length, "")
	boreRange       = trade.Between("hole through the bar", 0, 24*inch, units.Length, "")
	overhangRange   = trade.Between("overhang", 0.1*inch, 200*inch, units.Length, "")
	spanRange       = trade.Between("distance between bearings", 1*inch, 1000*inch, units.Length, "")
	stationRange    = trade.Between("cutter from a bearing", 0.1*inch, 1000*inch, units.Length, "")
	modulusRange    = trade.Between("modulus of elasticity", 5e9, 800e9, units.Pressure, "no bar material lies outside this")
	densityRange    = trade.Between("density", 1000, 20000, units.Density, "no bar material lies outside this")
	stiffnessRange  = trade.Between("stiffness at the cutter", 1e4, 1e10, units.Stiffness, "")
	dampingRange    = trade.Between("damping ratio", 0.001, 0.5, units.Number, "")
	specificRange   = trade.Between("specific cutting force", 100e6, 20e9, units.Pressure, "")
	exponentRange   = trade.Between("exponent of chip thickness", 0, 0.5, units.Number, "")
	depthRange      = trade.Between("depth of cut", 0.0001*inch, 1*inch, units.Length, "on radius")
	feedRange       = trade.Between("feed", 0.0002*inch*perTurn, 0.2*inch*perTurn, units.Feed, "")
	leadRange       = trade.Between("angle of the cutting edge to the feed", 15*degree, 105*degree, units.Angle, "")
	speedRange      = trade.Between("cutting speed", 0.01, 30, units.Speed, "")
	cutRange        = trade.Between("bore diameter", 0.25*inch, 200*inch, units.Length, "")
	lengthRange     = trade.Between("length of cut", 0.01*inch, 1000*inch, units.Length, "")
	rotationRange   = trade.Between("rotation", 0.1*turn/minute, 10000*turn/minute, units.Rotation, "")
	noseRange       = trade.Between("nose radius", 0.002*inch, 1*inch, units.Length, "")
	shareRange      = trade.Between("share of the cutting force that pushes the bar off", 0.1, 1, units.Ratio, "")
	efficiencyRange = trade.Between("efficiency of the drive", 0.3, 1, units.Ratio, "")
	ratioRange      = trade.Between("length-to-diameter limit", 1, 20, units.Number, "")
)
