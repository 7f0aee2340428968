package lift

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

var (
	hoistSpeedRange = trade.Between("hoist speed", 0, 100*12*inch/60, units.Speed, "above 100 ft/min have the lift engineered")
	dropRange       = trade.Between("drop", 0, 10, units.Length, "")
	stretchRange    = trade.Between("stretch", 1e-6, 1, units.Length, "")
)

// HoistFactor is what to multiply a load by for steady hoisting with a crane,
// 1 + max(0.15, 0.005·v), v in ft/min.
//
// speed: m/s, 0 to 0.508 (100 ft/min); faster is an error. Source: the hoist
// load factor of CMAA 70, from memory.
func HoistFactor(speed float64) (float64, error) {
	feetPerMinute := speed / (12 * inch) * 60
	return 1 + max(0.15, 0.005*feetPerMinute), hoistSpeedRange.CheckAs("hoisting speed", speed)
}

// SnatchFactor is what to multiply a load by when it falls before its sling
// tightens, 1 + √(1 + 2·drop/stretch). With no fall at all, a load let go
// suddenly counts twice.
//
// drop: how far it falls, m, 0 to 10; stretch: how much the rigging stretches
// under the load at rest, m, 1 µm to 1 m. Out of range is an error. Source:
// energy balance of a falling weight on a spring, standard textbook result.
func SnatchFactor(drop, stretch float64) (float64, error) {
	err := cmp.Or(dropRange.CheckAs("fall", drop), stretchRange.CheckAs("stretch at rest", stretch))
	if err != nil {
		return 0, err
	}
	return 1 + math.Sqrt(1+2*drop/stretch), nil
}
