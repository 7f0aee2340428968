package bore

import (
	"errors"
	"fmt"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Void is a place that the finish cut did not reach, or a hole in the weld.
type Void struct {
	Clock float64 // of its middle, rad
	Z     float64 // of its middle, m
	Along float64 // its length along the bore, m
	Round float64 // its length round the bore, m
}

// Finished is the surface on which voids are counted.
type Finished struct {
	Diameter, Length float64 // m; 5 mm to 3 m, 1 mm to 10 m
	LoadClock        float64 // middle of the loaded zone, rad
	LoadWidth        float64 // its width round the bore, rad, 0 to 2π
	Edge             float64 // a void nearer than this to a face is at the edge, m, 0 to half the length
}

// CleanedUp says how much of a finished surface is sound.
type CleanedUp struct {
	Share       float64 // share of the whole surface, 0 to 1
	LoadedShare float64 // of the loaded zone; 1 when it has no width
	Loaded      []int   // voids that reach into the loaded zone, by index
	AtEdge      []int   // voids that reach the edge strip of a face
	Largest     int     // index of the largest void; −1 for none
}

// CleanUp returns the share of the finished surface that is free of voids.
//
//	share = 1 − Σ(along·round) / (π·D·L)
//
// Each void is taken as a rectangle, which is larger than the spot inside it, and
// voids are taken not to overlap: both on the safe side. In the loaded zone the
// part of each rectangle inside it counts. Lengths m, clock positions rad. Errors:
// a size out of range, a void outside the bore or wider than its turn, voids
// that together exceed the surface. Source: plane geometry; common practice for
// what is at the edge.
func CleanUp(f Finished, voids []Void) (CleanedUp, error) {
	if err := f.check(); err != nil {
		return CleanedUp{}, err
	}
	out := CleanedUp{Share: 1, LoadedShare: 1, Largest: -1}
	area, loaded, largest := 0.0, 0.0, 0.0
	for i, v := range voids {
		if err := f.holds(v); err != nil {
			return CleanedUp{}, fmt.Errorf("void %d: %w", i+1, err)
		}
		size := v.Along * v.Round
		area += size
		if size > largest {
			largest, out.Largest = size, i
		}
		if within := f.overlap(v); within > 0 {
			loaded += within * f.Diameter / 2 * v.Along
			out.Loaded = append(out.Loaded, i)
		}
		if v.Z-v.Along/2 < f.Edge || v.Z+v.Along/2 > f.Length-f.Edge {
			out.AtEdge = append(out.AtEdge, i)
		}
	}
	whole := math.Pi * f.Diameter * f.Length
	zone := f.LoadWidth / 2 * f.Diameter * f.Length
	if area > whole || (zone > 0 && loaded > zone*(1+1e-9)) {
		return CleanedUp{}, errVoids
	}
	out.Share = 1 - area/whole
	if zone > 0 {
		out.LoadedShare = max(0, 1-loaded/zone)
	}
	return out, nil
}

// SoundShare returns the share of a finished surface that is free of voids, from
// their area alone.
//
//	share = 1 − A/(π·D·L)
//
// diameter D 5 mm to 3 m, length L 1 mm to 10 m, area A of all voids 0 to 100 m²
// and no more than the surface. Errors: a *trade.RangeError; more void than
// surface. Source: plane geometry.
func SoundShare(diameter, length, area float64) (float64, error) {
	if err := limFinish.Check(diameter); err != nil {
		return 0, err
	}
	if err := limLength.Check(length); err != nil {
		return 0, err
	}
	if err := limVoidArea.Check(area); err != nil {
		return 0, err
	}
	whole := math.Pi * diameter * length
	if area > whole {
		return 0, errVoids
	}
	return 1 - area/whole, nil
}

var (
	errVoids     = errors.New("the voids together are larger than the surface: count each only once")
	limVoidArea  = trade.Between("area of the voids", 0, 100, units.Area, "")
	limLoadWidth = trade.Between("width of the loaded zone", 0, 2*math.Pi, units.Angle, "")
	limVoid      = trade.Between("size of a void", 1e-5, 10, units.Length, "")
)

func (f *Finished) check() error {
	return errors.Join(limFinish.Check(f.Diameter), limLength.Check(f.Length), limAngle.Check(f.LoadClock),
		limLoadWidth.Check(f.LoadWidth), trade.Between("edge strip", 0, f.Length/2, units.Length, "").Check(f.Edge))
}

func (f *Finished) holds(v Void) error {
	if err := errors.Join(limAngle.Check(v.Clock), limVoid.Check(v.Along), limVoid.Check(v.Round)); err != nil {
		return err
	}
	if v.Round > math.Pi*f.Diameter*(1+1e-9) {
		return errors.New("it is longer than once round the bore")
	}
	if !(v.Z-v.Along/2 >= -sameStation && v.Z+v.Along/2 <= f.Length+sameStation) {
		return errors.New("it reaches beyond a face of the bore")
	}
	return nil
}

// overlap is the angle of a void that lies inside the loaded zone, rad.
func (f *Finished) overlap(v Void) float64 {
	half := min(math.Pi, v.Round/f.Diameter)
	apart := Turn(v.Clock - f.LoadClock)
	sum := 0.0
	for _, middle := range [...]float64{apart, apart - 2*math.Pi} {
		lo, hi := max(middle-half, -f.LoadWidth/2), min(middle+half, f.LoadWidth/2)
		sum += max(0, hi-lo)
	}
	return min(sum, 2*half, f.LoadWidth)
}
