package bore

import (
	"errors"
	"fmt"
	"math"
	"slices"

	"gudgeon/trade"
	"gudgeon/units"
)

// Readings is what a machinist writes down about a worn bore.
type Readings struct {
	// Sweeps are indicator readings, plus outward, from a circle of SetRadius
	// about the bar; or radii from the bar if SetRadius is 0.
	Sweeps    trade.Survey
	SetRadius float64 // m
	// Diameters are inside-micrometer readings; Clock is either end of the line
	// that was measured.
	Diameters trade.Survey
	Length    float64 // face to face, m; 0: up to the last station
	LeaveOut  []int   // readings of Sweeps to leave out of the fits, by index
	// UDatum is the standard uncertainty of the bar's own place against the datum
	// in each direction, m; 0 when the bar is the datum.
	UDatum float64
}

// Reading is one place on the wall: repeats there are averaged.
type Reading struct {
	Index   int     // in Sweeps, of the first of the repeats
	Clock   float64 // rad
	Radius  float64 // from the bar, m
	U       float64 // standard uncertainty, m; 0 when not known
	N       int     // readings averaged
	Spread  float64 // greatest less least of them, m
	LeftOut bool
}

// Repeats says how well repeated readings agree over the whole survey.
type Repeats struct {
	Places int     // places read more than once
	Sigma  float64 // pooled standard deviation of one reading, m
	DoF    int
	Widest Reading // the place with the widest spread
	Z      float64 // its station, m
}

// Size is what inside-micrometer readings at one station tell: size and
// ovality. They cannot tell where the centre is.
type Size struct {
	N                     int
	Mean, Least, Greatest float64 // diameters, m
	LeastClock            float64 // rad
	GreatestClock         float64 // rad
	OutOfRound            float64 // (Greatest − Least)/2, m
	U                     float64 // standard uncertainty of one diameter, m; 0 when not known
}

const (
	sameStation = 1e-5 // m: two stations nearer than this are one
	sameClock   = 1e-4 // rad
)

var (
	limStation  = trade.Between("station", -1, 10, units.Length, "it is measured from the near face into the bore")
	limRadiusIn = trade.Between("radius", 2.5*mm, greatest/2, units.Length, "give a set radius if the readings are the indicator's")
	limDiameter = trade.Between("measured diameter", 5*mm, greatest, units.Length, "")
	limPointU   = trade.Between("uncertainty of a reading", 0, 0.05, units.Length, "")
	errNothing  = errors.New("the survey has no readings")
	errTooMany  = errors.New("the survey has more than 20 000 readings")
	limUDatum   = trade.Between("uncertainty of the datum", 0, 0.05, units.Length, "")
	limFaceFace = trade.Between("bore length", 0, 10, units.Length, "0 means up to the last station")
	errLeaveOut = errors.New("a reading to be left out is not in the survey")
)

func (in *Readings) check() error {
	if len(in.Sweeps)+len(in.Diameters) == 0 {
		return errNothing
	}
	if len(in.Sweeps)+len(in.Diameters) > 20000 {
		return errTooMany
	}
	if err := errors.Join(limSetRadius.Check(in.SetRadius), limUDatum.Check(in.UDatum), limFaceFace.Check(in.Length)); err != nil {
		return err
	}
	for _, i := range in.LeaveOut {
		if i < 0 || i >= len(in.Sweeps) {
			return errLeaveOut
		}
	}
	for i, p := range in.Sweeps {
		if err := in.checkPoint(p, in.sweepLimit()); err != nil {
			return fmt.Errorf("reading %d: %w", i+1, err)
		}
	}
	for i, p := range in.Diameters {
		if err := in.checkPoint(p, limDiameter); err != nil {
			return fmt.Errorf("diameter %d: %w", i+1, err)
		}
	}
	return nil
}

func (in *Readings) sweepLimit() trade.Range {
	if in.SetRadius > 0 {
		return limReading
	}
	return limRadiusIn
}

func (in *Readings) checkPoint(p trade.Point, read trade.Range) error {
	if err := limStation.Check(p.Station); err != nil {
		return err
	}
	if err := limAngle.Check(p.Clock); err != nil {
		return err
	}
	if err := limPointU.Check(p.U); err != nil {
		return err
	}
	if err := read.Check(p.Read); err != nil {
		return err
	}
	if read == limReading && in.SetRadius+p.Read < 2.5*mm {
		return limRadiusIn.Check(in.SetRadius + p.Read)
	}
	if in.Length > 0 && p.Station > in.Length+sameStation {
		return &trade.RangeError{What: "station", Value: p.Station, Low: limStation.Low, High: in.Length, Kind: units.Length,
			Why: "it lies beyond the far face"}
	}
	return nil
}

// stations groups the readings by station and place, in order of depth.
func (in *Readings) stations() ([]Station, Repeats) {
	all := make([]rawPoint, 0, len(in.Sweeps)+len(in.Diameters))
	for i, p := range in.Sweeps {
		p.Clock, p.Read = Turn(p.Clock), p.Read+in.SetRadius
		all = append(all, rawPoint{p, i, false})
	}
	for i, p := range in.Diameters {
		p.Clock = math.Mod(Turn(p.Clock), math.Pi)
		all = append(all, rawPoint{p, i, true})
	}
	slices.SortStableFunc(all, func(a, b rawPoint) int {
		if a.Station < b.Station {
			return -1
		}
		if a.Station > b.Station {
			return 1
		}
		return 0
	})
	var out []Station
	for _, p := range all {
		if len(out) == 0 || p.Station-out[len(out)-1].Z > sameStation {
			out = append(out, Station{Z: p.Station, raw: make([]rawPoint, 0, 24)})
		}
		s := &out[len(out)-1]
		s.raw = append(s.raw, p)
	}
	var rep Repeats
	for i := range out {
		out[i].merge(in.LeaveOut, &rep)
	}
	if rep.DoF > 0 {
		rep.Sigma = math.Sqrt(rep.Sigma / float64(rep.DoF))
	}
	return out, rep
}

type rawPoint struct {
	trade.Point
	index    int
	diameter bool
}

// merge averages repeats into Readings and gathers the diameters into Size.
func (s *Station) merge(leaveOut []int, rep *Repeats) {
	slices.SortStableFunc(s.raw, func(a, b rawPoint) int {
		if a.Clock < b.Clock {
			return -1
		}
		if a.Clock > b.Clock {
			return 1
		}
		return a.index - b.index
	})
	s.Readings = make([]Reading, 0, len(s.raw))
	var low, high, sumSq float64
	for _, p := range s.raw {
		if p.diameter {
			s.Size.add(p.Point)
			continue
		}
		out := slices.Contains(leaveOut, p.index)
		last := len(s.Readings) - 1
		if last < 0 || p.Clock-s.Readings[last].Clock > sameClock || s.Readings[last].LeftOut != out {
			s.Readings = append(s.Readings, Reading{p.index, p.Clock, p.Read, p.U, 1, 0, out})
			low, high, sumSq = p.Read, p.Read, 0
			continue
		}
		r := &s.Readings[last]
		r.N++
		step := p.Read - r.Radius
		r.Radius += step / float64(r.N)
		sumSq = step * (p.Read - r.Radius) // Welford's increment
		low, high = min(low, p.Read), max(high, p.Read)
		r.Spread, r.U = high-low, max(r.U, p.U)
		rep.count(*r, s.Z, sumSq)
	}
	s.Size.finish()
	s.raw = nil
}

func (r *Repeats) count(at Reading, z, sumSq float64) {
	if at.N == 2 {
		r.Places++
	}
	r.DoF++
	r.Sigma += sumSq
	if at.Spread >= r.Widest.Spread {
		r.Widest, r.Z = at, z
	}
}

func (s *Size) add(p trade.Point) {
	if s.N == 0 || p.Read < s.Least {
		s.Least, s.LeastClock = p.Read, p.Clock
	}
	if s.N == 0 || p.Read > s.Greatest {
		s.Greatest, s.GreatestClock = p.Read, p.Clock
	}
	s.N++
	s.Mean += (p.Read - s.Mean) / float64(s.N)
	s.U = max(s.U, p.U)
}

func (s *Size) finish() { s.OutOfRound = (s.Greatest - s.Least) / 2 }
