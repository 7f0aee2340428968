package boresurvey

import (
	"cmp"
	"errors"
	"fmt"
	"slices"

	"gudgeon/rules"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Finished is the bore against its limits, and what became of its surface.
type Finished struct {
	*bore.Inspected
	Limits  Size
	Surface *bore.CleanedUp // nil until the voids are known
}

// leastShare is the share of the surface that must have cleaned up. Common
// practice, no source.
const leastShare = 0.99

// finished works the section out, as far as it goes.
func (f *Finding) finished() error {
	d := f.Job.Finished
	if d == nil {
		return nil
	}
	f.Missing = append(f.Missing, d.Missing...)
	size := d.Size
	if plan := f.Job.Plan; !size.HasLimits && plan != nil {
		size = plan.Size
	}
	if !size.HasLimits {
		f.Missing = append(f.Missing, "finished: size with its limits, like 3.000 +.002/-.000 in, here or as the finish diameter")
		return nil
	}
	if err := f.beyondFace(d); err != nil {
		return err
	}
	i, err := bore.Inspect(bore.Inspection{Diameters: d.Diameters, LeastDiameter: size.Least, GreatestDiameter: size.Greatest,
		TaperLimit: d.Taper, RoundLimit: d.OutOfRound})
	if err != nil {
		return mistake(d.at, err)
	}
	for _, fault := range i.Faults {
		f.Missing = append(f.Missing, "finished: "+string(fault))
	}
	f.Finished = &Finished{Inspected: i, Limits: size}
	return f.cleanUp(d)
}

// beyondFace refuses a depth that the bore does not have.
func (f *Finding) beyondFace(d *FinishedData) error {
	for _, s := range d.stations {
		if length := f.Job.Readings.Length; length > 0 && s.z > length+1e-5 {
			return mistake(s.text, errors.New("this depth lies beyond the far face"))
		}
	}
	return nil
}

// cleanUp counts the voids on the surface.
func (f *Finding) cleanUp(d *FinishedData) error {
	if !d.Looked || (d.Loaded == nil && len(d.Voids) > 0) {
		return nil
	}
	surface := bore.Finished{Diameter: f.Finished.Limits.Nominal, Length: f.Survey.Length, Edge: min(d.Edge, f.Survey.Length/2)}
	if d.Loaded != nil {
		surface.LoadWidth, surface.LoadClock = d.Loaded.Width(), d.Loaded.Middle()
	}
	for i := range d.Voids {
		if _, err := bore.CleanUp(surface, d.Voids[i:i+1]); err != nil {
			return mistake(d.voids[i], cmp.Or(errors.Unwrap(err), err)) // without its number: the place says which
		}
	}
	c, err := bore.CleanUp(surface, d.Voids)
	if err != nil {
		return mistake(firstOf(append(d.voids, d.at)...), err)
	}
	f.Finished.Surface = &c
	return nil
}

// judgeFinished says what stands against passing the bore.
func (f *Finding) judgeFinished() {
	b := f.Finished
	if b == nil {
		return
	}
	for _, m := range b.Margins {
		switch {
		case m.Room < 0:
			f.notice(rules.Stop, func(sys units.System) string { return outText(m, sys) })
		case m.Close:
			f.notice(rules.Caution, func(sys units.System) string {
				return fmt.Sprintf("Too close to call, %s: %s from its limit, and the gauge is good to ±%s. Measure again with a better gauge.", m.Limit,
					fine(m.Room, sys, units.Down), fine(bore.Coverage*m.U, sys, units.Up))
			})
		}
	}
	f.judgeVoids()
}

// outText says by how much a limit is missed, and what to do.
func outText(m bore.Margin, sys units.System) string {
	by := fine(-m.Room, sys, units.Up)
	switch m.Limit {
	case "least diameter":
		return "The bore is too small, by " + by + " at its smallest place. Let it cool, measure again, then take it out with the light pass."
	case "greatest diameter":
		return "The bore is too large, by " + by + " at its largest place. Show the foreman: a fitted bushing or a new build-up is his to choose."
	case "taper":
		return "The bore tapers too much, by " + by + ". Sharpen the tool, shorten the bar or feed from the other end, and take one more light pass if there is stock for it."
	}
	return "The bore is too far out of round, by " + by + " on the radius. Slacken the clamps and measure again; if it stays, true it with one heavy pass, if there is stock."
}

func (f *Finding) judgeVoids() {
	c, d := f.Finished.Surface, f.Job.Finished
	if c == nil {
		return
	}
	if c.Share < leastShare {
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("Only %s of the surface cleaned up; %s is wanted. Grind the spots out, weld them hot, and bore again.",
				units.Show(c.Share, units.Ratio, sys, units.Down), units.Show(leastShare, units.Ratio, sys, units.Nearest))
		})
	}
	for i, v := range d.Voids {
		where := ""
		switch loaded, edge := slices.Contains(c.Loaded, i), slices.Contains(c.AtEdge, i); {
		case loaded && edge:
			where = "in the loaded zone and at an edge"
		case loaded:
			where = "in the loaded zone"
		case edge:
			where = "at an edge"
		default:
			continue
		}
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("The void at %s, %s deep, lies %s: its rim breaks out and it grows. Grind it out to clean metal, preheat, weld, and bore again. Do not peen it shut.",
				bore.ClockWords(v.Clock), units.Show(v.Z, units.Length, sys, units.Nearest), where)
		})
	}
}

// fine shows a length with one place more than a size has: margins are that
// small.
func fine(x float64, sys units.System, r units.Rounding) string {
	return units.ShowDigits(x, units.Usual(units.Length, sys), r, 1)
}
