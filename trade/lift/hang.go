package lift

import (
	"cmp"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Hanging is a part on one hook, seen from the side, with its ends called A
// and B. Work each of two views on its own when the lug is off both ways.
type Hanging struct {
	LugOffset float64 // from the centre of gravity to where the shackle bears, level, positive towards A, m, within ±50
	LugHeight float64 // from the centre of gravity up to where the shackle bears, m, 1 mm to 50 m
	Length    float64 // from end A to end B, m
	Wanted    float64 // tilt wanted, positive with A high, rad, within ±60 degrees; 0 is level
}

// HangingResult is how the part hangs and what would change it.
type HangingResult struct {
	In   Hanging
	Tilt float64 // from level, rad; positive: A high, B low
	Drop float64 // A above B, m; negative: B above A
	Move float64 // how far to move the lug at the same height, m; positive towards A
}

var (
	lugHeightRange = trade.Between("lug height", 1e-3, 50, units.Length,
		"hung from at or below its centre of gravity a part turns over")
	wantedRange = trade.Between("wanted", -60*degree, 60*degree, units.Angle, "")
)

// Hang says at what angle a part hangs from a lug that is off its centre of
// gravity, and how far to move the lug. The centre of gravity comes to rest
// under the lug: tan tilt = offset/height; drop = length·sin tilt;
// move = height·tan wanted − offset.
//
// The end on the far side of the centre of gravity from the lug goes low. The
// rigging above the pivot must be free to turn. A lug less than 1 mm above the
// centre of gravity, or anything out of range, is an error. Source: statics.
func Hang(in Hanging) (HangingResult, error) {
	err := cmp.Or(placeRange.CheckAs("lug offset", in.LugOffset), lugHeightRange.CheckAs("lug height above the centre of gravity", in.LugHeight),
		lengthRange.CheckAs("length of the part", in.Length), wantedRange.CheckAs("tilt wanted", in.Wanted))
	if err != nil {
		return HangingResult{}, err
	}
	tilt := math.Atan2(in.LugOffset, in.LugHeight)
	return HangingResult{
		In: in, Tilt: tilt,
		Drop: in.Length * math.Sin(tilt),
		Move: in.LugHeight*math.Tan(in.Wanted) - in.LugOffset,
	}, nil
}

// Steps gives the lines of the work.
func (r HangingResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "tilt, A high", Formula: "tan tilt = offset/height", Kind: units.Angle, Value: r.Tilt, Unit: "deg"},
		{Name: "end A above end B", Formula: "drop = length·sin tilt", Kind: units.Length, Value: r.Drop, Unit: "inch"},
		{Name: "move the lug towards A", Formula: "move = height·tan wanted − offset", Kind: units.Length, Value: r.Move, Unit: "inch"},
	}
}
