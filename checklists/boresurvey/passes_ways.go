package boresurvey

import (
	"math"

	"gudgeon/units"
)

// Way is a single change that would give a pass plan.
type Way struct {
	Value float64 // SI
	kind  units.Kind
	round units.Rounding
	words [2]string // before and after the value
}

// Text says the way out, its value rounded to the safe side.
func (w Way) Text(sys units.System) string {
	return w.words[0] + units.Show(w.Value, w.kind, sys, w.round) + w.words[1]
}

// headroom is the share of the narrowest bore that a bar may fill, so that its
// tool and the chips have room. Common practice, no source.
const headroom = 0.8

// ways looks for the nearest value of each thing a shop can change, the rest as
// it is.
func (p *Passes) ways(d *PassData) (out []Way) {
	try := func(w Way, from, to float64, set func(d *PassData, s *Stock, x float64)) {
		x, found := nearest(from, to, func(x float64) bool {
			changed, stock := *d, p.Stock
			set(&changed, &stock, x)
			setup, err := changed.setup()
			if err == nil {
				_, err = changed.plan(setup, p.Aim, stock)
			}
			return err == nil
		})
		if found {
			w.Value = x
			out = append(out, w)
		}
	}
	try(Way{kind: units.Length, round: units.Down, words: [2]string{"the bar out no more than ", ""}}, d.Overhang, d.Overhang/4,
		func(d *PassData, _ *Stock, x float64) { d.Overhang = x })
	try(Way{kind: units.Length, round: units.Up, words: [2]string{"a bar of ", " or thicker"}}, d.Diameter, headroom*p.Through(),
		func(d *PassData, _ *Stock, x float64) { d.Diameter = x })
	try(Way{kind: units.Feed, round: units.Down, words: [2]string{"a heavy feed of ", " or less"}}, d.HeavyFeed, d.HeavyFeed/4,
		func(d *PassData, _ *Stock, x float64) { d.HeavyFeed = x })
	try(Way{kind: units.Power, round: units.Up, words: [2]string{"", " at the spindle"}}, d.Power, 8*d.Power,
		func(d *PassData, _ *Stock, x float64) { d.Power = x })
	try(Way{kind: units.Length, round: units.Up, words: [2]string{"a depth limit of ", " or more on the radius"}}, d.DepthLimit, 8*d.DepthLimit,
		func(d *PassData, _ *Stock, x float64) { d.DepthLimit = x })
	try(Way{kind: units.Length, round: units.Up, words: [2]string{"weld until there is ", " of stock on the radius where it is thinnest"}},
		max(p.Stock.Least, truingLeast/4), p.Stock.Most+2*truingLeast,
		func(_ *PassData, s *Stock, x float64) { s.Least, s.Most = x, max(x, s.Most) })
	return out
}

// nearest is the value nearest to from, towards to, that works: the range is
// walked first, since it may work here and there, then halved.
func nearest(from, to float64, works func(float64) bool) (float64, bool) {
	if from <= 0 || to <= 0 || from == to {
		return 0, false
	}
	const steps = 60
	before := from
	for i := 1; i <= steps; i++ {
		x := from * math.Pow(to/from, float64(i)/steps)
		if !works(x) {
			before = x
			continue
		}
		for range 20 {
			if middle := (before + x) / 2; works(middle) {
				x = middle
			} else {
				before = middle
			}
		}
		return x, true
	}
	return 0, false
}
