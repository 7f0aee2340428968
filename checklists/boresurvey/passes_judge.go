package boresurvey

import (
	"fmt"
	"strings"

	"gudgeon/rules"
	"gudgeon/trade/bar"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Bounds of a light pass that neither rubs nor springs the bar, on the radius,
// m. Common practice, no source.
const (
	lightLeast = 0.0015 * 0.0254
	lightMost  = 0.004 * 0.0254
)

// judgePasses says what stands against the pass plan.
func (f *Finding) judgePasses() {
	f.judgeWeldSurface()
	p := f.Passes
	if p == nil {
		return
	}
	d := f.Job.Passes
	if d.Diameter >= p.Through() {
		f.notice(rules.Stop, func(sys units.System) string {
			return fmt.Sprintf("The bar of %s does not go through the weld, which is %s at its narrowest.",
				units.Show(d.Diameter, units.Length, sys, units.Nearest), units.Show(p.Through(), units.Length, sys, units.Down))
		})
	}
	if p.Plan == nil {
		f.notice(rules.Stop, p.refusal)
		return
	}
	f.judgeBar()
	if p.TooClose {
		f.notice(rules.Caution, func(sys units.System) string {
			return fmt.Sprintf("The pass plan is too close to call: the stock is known to ±%s only, and with that much against it no plan does it. Survey the weld itself before you bore.",
				units.Show(bore.Coverage*p.Stock.U, units.Length, sys, units.Up))
		})
	}
	if d.Light < lightLeast*(1-1e-9) || d.Light > lightMost*(1+1e-9) {
		f.notice(rules.Caution, func(sys units.System) string {
			return fmt.Sprintf("The last pass takes %s on the diameter; about %s is right. Much less only rubs, much more springs the bar.",
				onDiameter(d.Light, sys), onDiameter(lightUsual, sys))
		})
	}
}

// judgeWeldSurface passes on what the survey of the weld is weak in.
func (f *Finding) judgeWeldSurface() {
	if f.WeldSurface == nil {
		return
	}
	for _, w := range f.WeldSurface.Warnings {
		f.notice(rules.Caution, func(sys units.System) string { return "Weld surface: " + w.Text(sys) })
	}
	if len(f.Job.WeldDashes) > 0 {
		f.notice(rules.Caution, func(sys units.System) string { return "Weld surface: " + dashText(f.Job.WeldDashes, sys) })
	}
}

// judgeBar holds the bar against its reach and its chatter.
func (f *Finding) judgeBar() {
	p := f.Passes
	if o := p.Overhang; o != nil && o.Use > 1 {
		f.notice(rules.Caution, func(sys units.System) string {
			return fmt.Sprintf("The bar hangs out %s times its diameter; %s is the most to try with %s. Shorten it, take a thicker one, or bore from both sides.",
				units.Show(o.Ratio, units.Number, sys, units.Up), units.Show(o.Most, units.Length, sys, units.Down), o.Material.Name)
		})
	}
	if n := p.chattering(); n != "" {
		f.notice(rules.Caution, func(sys units.System) string {
			way := "Set that as the depth limit, or change the speed when it sings."
			if p.Set.Stable < truingLeast {
				way = "No truing pass is that light: shorten the bar or take a thicker one."
			}
			return fmt.Sprintf("Chatter is possible in %s: this bar takes %s on the radius at any speed, and it is deeper. %s", n,
				units.Show(p.Set.Stable, units.Length, sys, units.Down), way)
		})
	}
}

// chattering names the heavy passes that are deeper than what cannot chatter;
// they follow each other, since all of them take the same.
func (p *Passes) chattering() string {
	first, last := 0, 0
	for i, pass := range p.Plan.Passes[:p.Plan.Count] {
		if pass.Kind == bar.LightPass || pass.Most <= p.Set.Stable*(1+1e-9) {
			continue
		}
		if last = i + 1; first == 0 {
			first = last
		}
	}
	switch first {
	case 0:
		return ""
	case last:
		return fmt.Sprintf("pass %d", last)
	}
	return fmt.Sprintf("passes %d to %d", first, last)
}

// refusal says why there is no plan, and what would give one.
func (p *Passes) refusal(sys units.System) string {
	text := "There is no pass plan: " + p.Why + "."
	if len(p.Ways) == 0 {
		return text + " No single change does it; change several."
	}
	var ways []string
	for _, w := range p.Ways {
		ways = append(ways, w.Text(sys))
	}
	return text + " One of these would do: " + strings.Join(ways, "; ") + "."
}
