package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Held is a load on a piece of rated hardware.
type Held struct {
	Capacity float64 // what the hardware may carry this way, kg
	Use      float64 // load/Capacity, a ratio
}

var (
	sideAngleRange = trade.Between("side angle", 0, 90*degree+touch, units.Angle, "a shackle is not loaded past square to its axis")
	spreadRange    = trade.Between("spread", 0, 120*degree+touch, units.Angle, "two legs in one shackle spread 120 degrees at most")
	shackleRange   = trade.Between("shackle", 0.25*inch-touch, 4*inch+touch, units.Length, "")
	eyeAngleRange  = trade.Between("eye angle", 0, 45*degree+touch, units.Angle, "an eyebolt is never pulled more than 45 degrees from its axis")
	threadRange    = trade.Between("thread", 3e-3, 0.2, units.Length, "")
)

// Shackle is what a screw-pin or bolt-type shackle may carry, from the mark on
// it: in line (to 5 degrees) all of it, to 45 degrees 70 %, to 90 degrees 50 %.
//
// load, marked rating: kg, 0.1 to 500 000; sideAngle from in line, in the plane
// of the bow: rad, 0 to 90 degrees; spread between two legs in the bow: rad, 0
// to 120 degrees. Out of range is an error; there is no form for a shackle
// without a mark. Sources: the bands are those of WAC 296-155-33905 fig. 17; the
// percentages, from memory, agree with several makers' charts; the maker's own
// chart governs.
func Shackle(load, marked, sideAngle, spread float64) (Held, error) {
	err := cmp.Or(loadRange.CheckAs("load", load), loadRange.CheckAs("rating marked on the shackle", marked),
		sideAngleRange.CheckAs("side load angle", sideAngle), spreadRange.CheckAs("angle between the legs in the bow", spread))
	if err != nil {
		return Held{}, err
	}
	factor := 0.5
	switch {
	case sideAngle <= 5*degree+touch:
		factor = 1
	case sideAngle <= 45*degree+touch:
		factor = 0.7
	}
	capacity := marked * factor
	return Held{Capacity: capacity, Use: load / capacity}, nil
}

// ShackleFieldRule is 3·D² short tons, D the bow's stock in inches, in kg.
//
// diameter: m, 1/4 to 4 in. Out of range is an error. A cross-check of a mark
// that looks wrong, never a rating for a shackle without one. Source:
// Steelworker (NAVEDTRA 14251).
func ShackleFieldRule(diameter float64) (float64, error) {
	d := diameter / inch
	return 3 * d * d * shortTon, shackleRange.CheckAs("shackle stock", diameter)
}

// Eyebolt is what an eyebolt may carry, from its marked vertical rating. With a
// shoulder seated flat: to 5 degrees from its axis all of it, to 15 degrees
// 80 %, to 30 degrees 65 %, to 45 degrees 25 %. Without a shoulder: straight
// only, to 5 degrees.
//
// load, marked rating: kg, 0.1 to 500 000; angle from the bolt's axis: rad, 0 to
// 45 degrees, in the plane of the eye only. Out of range, or an angled pull on a
// plain eyebolt, is an error. Sources: makers' tables for shouldered eyebolts,
// which give 25 % or 30 % at 45 degrees: the lower is kept; 5 degrees for
// straight is common practice, no source. The maker's table governs.
func Eyebolt(load, marked, angle float64, shoulder bool) (Held, error) {
	err := cmp.Or(loadRange.CheckAs("load", load), loadRange.CheckAs("rating marked on the eyebolt", marked),
		eyeAngleRange.CheckAs("pull from the eyebolt's axis", angle))
	if err != nil {
		return Held{}, err
	}
	straight := angle <= 5*degree+touch
	if !shoulder && !straight {
		return Held{}, errors.New("an eyebolt without a shoulder is for a straight pull only")
	}
	factor := 0.25
	switch {
	case straight:
		factor = 1
	case angle <= 15*degree+touch:
		factor = 0.8
	case angle <= 30*degree+touch:
		factor = 0.65
	}
	capacity := marked * factor
	return Held{Capacity: capacity, Use: load / capacity}, nil
}

// EyeboltThread is the least thread engagement of an eyebolt in steel, 1.5·d,
// in m; at least nine tenths of its threads must be in.
//
// diameter: m, 3 to 200 mm. Out of range is an error. Source: a rigging
// supplier's handbook page.
func EyeboltThread(diameter float64) (float64, error) {
	return 1.5 * diameter, threadRange.CheckAs("eyebolt thread", diameter)
}

// EyeboltPull is an eyebolt's angle from its axis in rad for a sling leg's angle
// from the horizontal, when the bolt stands upright: 90 degrees less the leg's.
//
// legAngle: rad, 30 to 90 degrees. Out of range is an error. Source: geometry.
func EyeboltPull(legAngle float64) (float64, error) {
	err := legAngleRange.CheckAs("sling angle from the horizontal", legAngle)
	return max(0, math.Pi/2-legAngle), err
}
