package weld

import (
	"fmt"
	"strings"

	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Text says the plan in a machinist's words, worst first.
func (p *Plan) Text(sys units.System) string {
	length := func(x float64, r units.Rounding) string { return units.Show(x, units.Length, sys, r) }
	say := []string{}
	at := func(s Spot) string {
		return fmt.Sprintf("at %s, %s deep", bore.ClockWords(s.Clock), length(s.Z, units.Nearest))
	}
	switch {
	case p.CleansUp:
		say = append(say, fmt.Sprintf("It cleans up everywhere: %s of stock or more, the least %s.", length(p.LeastStock.Value, units.Down), at(p.LeastStock)))
	default:
		say = append(say, fmt.Sprintf("It will not clean up. The worst place is %s: stock %s, wanted %s.",
			at(p.LeastStock), length(p.LeastStock.Value, units.Down), length(p.Job.Allowance, units.Nearest)))
		for _, a := range p.Short {
			say = append(say, fmt.Sprintf("Short %s: by up to %s.", a.Window.Text(sys), length(a.Most.Value, units.Up)))
		}
		for _, h := range p.HandWeld {
			say = append(say, fmt.Sprintf("Lay by hand, layer %d, %s.", h.Layer, h.Window.Text(sys)))
		}
		say = append(say, fmt.Sprintf("Or lay %d layers all over instead of %s.", p.LayersEnough, p.instead(sys)))
	}
	if p.TooClose {
		say = append(say, fmt.Sprintf("It is too close to call: the stock is known to %s only.", length(bore.Coverage*p.Job.U, units.Up)))
	}
	return strings.Join(append(say, p.truingText(sys)...), " ")
}

func (p *Plan) instead(sys units.System) string {
	if p.Job.BuildUp > 0 {
		return units.Show(p.Job.BuildUp, units.Length, sys, units.Nearest) + " by machine"
	}
	return fmt.Sprint(p.Job.Layers)
}

// truingText compares the truing bores.
func (p *Plan) truingText(sys units.System) (say []string) {
	length := func(x float64, r units.Rounding) string { return units.Show(x, units.Length, sys, r) }
	now := p.Truing[0]
	if p.Job.Boss > 0 && !now.KeepsWall {
		say = append(say, fmt.Sprintf("The wall behind the weld is only %s at %s, %s deep.",
			length(p.Wall.Value, units.Down), bore.ClockWords(p.Wall.Clock), length(p.Wall.Z, units.Nearest)))
	}
	if p.Job.LeastWeld == 0 || now.FairWeld {
		return say
	}
	other := p.Truing[1]
	text := fmt.Sprintf("The weld in the finished bore gets as thin as %s. A truing bore of %s would leave %s everywhere",
		length(max(0, now.ThinnestWeld), units.Down), length(other.Diameter, units.Up), length(other.ThinnestWeld, units.Down))
	switch {
	case p.Job.Boss == 0:
		text += "; check the wall first."
	case other.KeepsWall:
		text += ", with " + length(other.Wall, units.Down) + " of wall."
	default:
		text += ", but it eats the wall down to " + length(max(0, other.Wall), units.Down) + "."
	}
	return append(say, text)
}
