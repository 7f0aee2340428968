package truck

import (
	"cmp"

	"gudgeon/trade"
	"gudgeon/units"
)

// Table is a load on a lift table with its centre of gravity off the middle,
// seen along the direction that it is off.
type Table struct {
	Load         float64 // kg, 0.1 to 100 000
	Rating       float64 // on the plate, load spread evenly, kg, 0.1 to 100 000
	Weight       float64 // of the table itself, kg, 0.1 to 100 000
	PlatformHalf float64 // middle of the table to the line its platform rests on, m, 10 mm to 10 m
	BaseHalf     float64 // middle of the table to the line its base stands on, m, 10 mm to 10 m
	Offset       float64 // middle of the table to the load's centre of gravity, m, 0 to 10
	EndRating    float64 // maker's rating for one end or side, kg, 0 to 100 000; 0 takes half of Rating
}

// The ways a lift table fails, in the order of TableResult.Checks.
const (
	TableRating  = iota // more than the plate
	TableEnd            // too much on one end
	TableLiftOff        // platform lifts off at the far end
	TableTipping        // the whole table goes over
)

// TableResult holds every way of failing.
type TableResult struct {
	In      Table
	NearEnd float64 // kg, on the end that the load is off towards
	FarEnd  float64 // kg; below 0 the platform is pulled up there
	Checks  [4]Check
	Governs int
}

// Use is the greatest use of all checks.
func (r TableResult) Use() float64 { return r.Checks[r.Governs].Use() }

// tippingMargin is how many times over the table's weight must hold it down.
const tippingMargin = 1.5

var endRatingRange = trade.Between("end rating", 0, loadRange.High, units.Mass, "")

// LiftTable works a lift table with its load off the middle, by moments: near
// end = W·(1/2 + x/(2s)), far end = W − near; s is PlatformHalf, x Offset.
//
//	rating    W against the plate
//	end       near end against the end's rating, or half of the plate
//	lift-off  x against s: past it the platform is pulled up at the far end
//	tipping   1.5·W·(x − b) against the table's weight times b, b is BaseHalf;
//	          nothing while the load is inside its base
//
// The plate governs, and a maker's figure for edge loads before the half taken
// here. The table must be on level, firm ground; a load that lands hard or is
// pulled sideways is more than it weighs. Out of range is an error. Sources:
// moments; half the rating on an end and 1.5 against tipping are common practice,
// no source.
func LiftTable(in Table) (TableResult, error) {
	err := cmp.Or(loadRange.CheckAs("load", in.Load), loadRange.CheckAs("rating on the plate", in.Rating), loadRange.CheckAs("weight of the table", in.Weight),
		centreRange.CheckAs("middle to the platform's support", in.PlatformHalf), centreRange.CheckAs("middle to the base's edge", in.BaseHalf),
		reachRange.CheckAs("middle to the load's centre of gravity", in.Offset), endRatingRange.CheckAs("rating of one end", in.EndRating))
	if err != nil {
		return TableResult{}, err
	}
	end := in.EndRating
	if end == 0 {
		end = in.Rating / 2
	}
	r := TableResult{In: in, NearEnd: in.Load * (0.5 + in.Offset/(2*in.PlatformHalf))}
	r.FarEnd = in.Load - r.NearEnd
	over := tippingMargin * in.Load * max(0, in.Offset-in.BaseHalf)
	r.Checks = [4]Check{
		TableRating:  {"rating", in.Load, in.Rating, units.Mass},
		TableEnd:     {"load on one end", r.NearEnd, end, units.Mass},
		TableLiftOff: {"lift-off at the far end", in.Offset, in.PlatformHalf, units.Length},
		TableTipping: {"tipping", over, in.Weight * in.BaseHalf, units.Number},
	}
	for i, c := range r.Checks {
		if c.Use() > r.Checks[r.Governs].Use() {
			r.Governs = i
		}
	}
	return r, nil
}

// Steps gives the lines of the work.
func (r TableResult) Steps() []trade.Step {
	formulas := [4]string{"W/rating", "near end/end's rating", "x/s", "1.5·W·(x − b)/(table·b)"}
	steps := []trade.Step{
		{Name: "near end", Formula: "W·(1/2 + x/(2s))", Kind: units.Mass, Value: r.NearEnd, Unit: "lb"},
		{Name: "far end", Formula: "W − near end", Kind: units.Mass, Value: r.FarEnd, Unit: "lb"},
	}
	for i, c := range r.Checks {
		steps = append(steps, trade.Step{Name: "use in " + c.Name, Formula: formulas[i], Kind: units.Ratio, Value: c.Use(), Unit: "percent"})
	}
	return steps
}
