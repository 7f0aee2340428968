package bore

import (
	"errors"
	"math"
	"slices"

	"gudgeon/trade"
	"gudgeon/units"
)

// Inspection is a finished bore and what it must be.
type Inspection struct {
	Diameters        trade.Survey // three depths and two angles or more
	LeastDiameter    float64      // limit, m, 5 mm to 3 m
	GreatestDiameter float64      // limit, m, more than LeastDiameter
	TaperLimit       float64      // greatest difference of mean diameters, m; 0: not asked
	RoundLimit       float64      // greatest out-of-round on the radius at one depth, m; 0: not asked
}

// Inspected is the finished bore against its limits.
type Inspected struct {
	Sections        []SectionSize // by depth
	Least, Greatest float64       // of all diameters, m
	Taper           float64       // greatest less least of the sections' mean diameters, m
	OutOfRound      float64       // of the worst section: half the difference of its diameters, m
	U               float64       // standard uncertainty of one diameter, m; 0 when not known
	// Margins are what is left to each limit, m; below zero is out. Those not
	// asked for are left out.
	Margins []Margin
	Faults  []Fault
}

// SectionSize is the size at one depth.
type SectionSize struct {
	Z float64 // m
	Size
}

// Margin is the room left to one limit.
type Margin struct {
	Limit string  // "least diameter"
	Room  float64 // m
	U     float64 // its standard uncertainty, m
	Close bool    // Room is not below zero but less than Coverage·U
}

// Fault says what keeps an inspection from being complete.
type Fault string

// The faults.
const (
	TooFewDepths Fault = "measure at three depths at least: near face, middle, far face"
	TooFewAngles Fault = "measure at two clock positions at least at every depth, a quarter turn apart"
	NotCrossed   Fault = "the clock positions at one depth are too near each other to show an oval"
)

// OK reports whether every limit is met and nothing is missing.
func (i *Inspected) OK() bool {
	for _, m := range i.Margins {
		if m.Room < 0 {
			return false
		}
	}
	return len(i.Faults) == 0
}

// Inspect returns size, taper and out-of-round of a finished bore against its
// limits.
//
//	taper = greatest − least mean diameter of the sections
//	out-of-round = (Dmax − Dmin)/2 within one section
//
// All m. Two-point diameters miss an odd number of lobes: a three-lobed bore
// passes them and still grips the pin. Every single diameter must be within the
// limits, not only the mean. Errors: limits that contradict each other, readings
// out of range, no readings. Too few depths or angles is a Fault. Source:
// ISO 12181-1 and ASME Y14.5 for the radial sense of roundness; two-point form
// from memory.
func Inspect(in Inspection) (*Inspected, error) {
	if err := in.check(); err != nil {
		return nil, err
	}
	r := Readings{Diameters: in.Diameters}
	if err := r.check(); err != nil {
		return nil, err
	}
	stations, _ := r.stations()
	out := &Inspected{Least: math.Inf(1)}
	low, high := math.Inf(1), 0.0
	for i := range stations {
		size := stations[i].Size
		out.Sections = append(out.Sections, SectionSize{stations[i].Z, size})
		out.Least, out.Greatest = min(out.Least, size.Least), max(out.Greatest, size.Greatest)
		out.OutOfRound = max(out.OutOfRound, size.OutOfRound)
		out.U = max(out.U, size.U)
		low, high = min(low, size.Mean), max(high, size.Mean)
	}
	out.Taper = high - low
	out.Faults = in.faults(stations)
	out.judge(&in)
	return out, nil
}

func (in *Inspection) check() error {
	if len(in.Diameters) == 0 {
		return errNothing
	}
	if err := errors.Join(limDiameter.Check(in.LeastDiameter), limDiameter.Check(in.GreatestDiameter)); err != nil {
		return err
	}
	if in.LeastDiameter >= in.GreatestDiameter {
		return errors.New("the least diameter allowed is not less than the greatest")
	}
	return errors.Join(limStock.Check(in.TaperLimit), limStock.Check(in.RoundLimit))
}

// faults looks for depths and angles that are missing.
func (in *Inspection) faults(stations []Station) (out []Fault) {
	if len(stations) < 3 {
		out = append(out, TooFewDepths)
	}
	few, near := false, false
	for _, s := range stations {
		var clocks []float64
		for _, p := range in.Diameters {
			if math.Abs(p.Station-s.Z) <= sameStation {
				clocks = append(clocks, Turn(2*p.Clock)) // doubled: a diameter repeats after half a turn
			}
		}
		slices.Sort(clocks)
		clocks = slices.CompactFunc(clocks, func(a, b float64) bool { return math.Abs(a-b) < sameClock })
		few = few || len(clocks) < 2
		near = near || (len(clocks) >= 2 && ArcOf(clocks).Gap > 4*math.Pi/3+sameClock)
	}
	if few {
		out = append(out, TooFewAngles)
	}
	if near {
		out = append(out, NotCrossed)
	}
	return out
}

func (i *Inspected) judge(in *Inspection) {
	add := func(limit string, room, u float64) {
		i.Margins = append(i.Margins, Margin{limit, room, u, room >= 0 && room < Coverage*u})
	}
	add("least diameter", i.Least-in.LeastDiameter, i.U)
	add("greatest diameter", in.GreatestDiameter-i.Greatest, i.U)
	if in.TaperLimit > 0 {
		add("taper", in.TaperLimit-i.Taper, math.Sqrt2*i.U)
	}
	if in.RoundLimit > 0 {
		add("out of round", in.RoundLimit-i.OutOfRound, i.U/math.Sqrt2)
	}
}

// Steps gives the worked lines of the inspection.
func (i *Inspected) Steps() []trade.Step {
	out := []trade.Step{
		{Name: "least diameter", Formula: "min D", Kind: units.Length, Value: i.Least},
		{Name: "greatest diameter", Formula: "max D", Kind: units.Length, Value: i.Greatest},
		{Name: "taper", Formula: "max − min mean diameter", Kind: units.Length, Value: i.Taper, Unit: "thou"},
		{Name: "out of round", Formula: "(Dmax − Dmin)/2 in one section", Kind: units.Length, Value: i.OutOfRound, Unit: "thou"},
	}
	for _, m := range i.Margins {
		out = append(out, trade.Step{Name: "room to the limit: " + m.Limit, Kind: units.Length, Value: m.Room, Unit: "thou"})
	}
	return out
}

// OutOfRound returns half the difference of the greatest and the least diameter
// of one section, m: the radial sense, as a drawing means it.
//
//	δ = (Dmax − Dmin)/2
//
// Both m, 5 mm to 3 m. It misses an odd number of lobes. Errors: a
// *trade.RangeError; greatest less than least. Source: two-point roundness, from
// memory; radial sense ASME Y14.5, ISO 1101.
func OutOfRound(greatestD, leastD float64) (float64, error) {
	for _, d := range [...]float64{greatestD, leastD} {
		if err := limDiameter.Check(d); err != nil {
			return 0, err
		}
	}
	if greatestD < leastD {
		return 0, errSwapped
	}
	return (greatestD - leastD) / 2, nil
}

var errSwapped = errors.New("the greatest diameter is less than the least: they are exchanged")
