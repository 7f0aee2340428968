package truck

import (
	"cmp"
	"errors"
	"math"
)

// Grade is a slope as a ratio, rise/run.
//
// rise: m, 0 to 10; run, level: m, 10 mm to 10 m. Out of range, or steeper than
// 1 in 1, is an error. Over 0.10 a loaded truck drives with its load upslope, up
// and down. Sources: definition of a slope; 30 CFR 57.16016 and WAC
// 296-863-40015 for the 0.10.
func Grade(rise, run float64) (float64, error) {
	err := cmp.Or(reachRange.CheckAs("rise", rise), centreRange.CheckAs("run", run))
	if err != nil {
		return 0, err
	}
	grade := rise / run
	if grade > 1 {
		return 0, errors.New("no truck goes up a slope steeper than 1 in 1: check rise and run")
	}
	return grade, nil
}

// GradeFromAngle is a slope as a ratio from its angle, tan a.
//
// angle: rad, 0 to 45 degrees. Out of range is an error. Use as in Grade.
// Source: geometry.
func GradeFromAngle(angle float64) (float64, error) {
	return math.Tan(angle), angleOff.CheckAs("slope", angle)
}
