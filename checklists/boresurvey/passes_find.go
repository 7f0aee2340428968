package boresurvey

import (
	"errors"
	"math"
	"strings"

	"gudgeon/trade"
	"gudgeon/trade/bar"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Passes is the way from the weld to size, or why there is none.
type Passes struct {
	Stock    Stock
	Aim      float64 // diameter to finish to, m
	Set      Setup
	Overhang *bar.OverhangResult // nil for a bar in two bearings
	Plan     *bar.PlanResult     // nil when no plan can do it
	Deepest  int                 // pass that pushes hardest, by index
	Gives    float64             // the bar, in that pass, m
	TooClose bool                // with the least stock that there may be, no plan does it

	Why  string // without a plan
	Ways []Way  // single changes that would give one
}

// Stock is the metal over the finished bore, on the radius, m.
type Stock struct {
	Least, Most float64
	U           float64 // standard uncertainty of either
	From        string  // where it is known from
}

// Setup is what bar and cut give, whatever the number of passes.
type Setup struct {
	Stiffness  float64 // of the bar at the cutter, N/m
	Stable     float64 // depth on the radius that cannot chatter, m
	DepthLimit float64 // that the plan keeps to, m
}

// noPlan is a reason, not a mistake in the file.
type noPlan struct{ why string }

func (e noPlan) Error() string { return e.why }

// passes works the section out, as far as it goes.
func (f *Finding) passes() error {
	if err := f.surveyWeld(); err != nil {
		return err
	}
	data := f.Job.Passes
	if data == nil {
		return nil
	}
	d := *data
	f.Missing = append(f.Missing, d.Missing...)
	f.completePasses(&d)
	stock, known := f.stock()
	if !known || len(d.Missing) > 0 || d.Tolerance == 0 {
		return nil
	}
	p := &Passes{Stock: stock, Aim: f.Job.Plan.Size.Aim()}
	if err := p.work(&d); err != nil {
		return err
	}
	f.Passes = p
	return nil
}

// completePasses takes from the rest of the file what the section leaves out.
func (f *Finding) completePasses(d *PassData) {
	if d.Length == 0 {
		d.Length = f.Survey.Length
	}
	if plan := f.Job.Plan; d.Tolerance == 0 && plan != nil && plan.Size.HasLimits {
		d.Tolerance = plan.Size.Greatest - plan.Size.Least
	}
	if d.Tolerance == 0 {
		f.Missing = append(f.Missing, "passes: tolerance, or limits of the finish diameter, like 3.000 +.002/-.000 in")
	}
}

// surveyWeld works out the weld surface, swept from the bar.
func (f *Finding) surveyWeld() error {
	if f.Job.WeldSurface == nil {
		return nil
	}
	s, err := bore.Survey(*f.Job.WeldSurface)
	if err != nil {
		return mistake(f.Job.places.weldSurface, err)
	}
	f.WeldSurface = s
	return nil
}

// stock is taken from the weld itself where it was surveyed, else from the plan.
func (f *Finding) stock() (Stock, bool) {
	plan := f.Job.Plan
	if plan == nil || plan.Finish == 0 {
		return Stock{}, false // the plan is said to be missing already
	}
	if s := f.WeldSurface; s != nil {
		least, _, err := s.LeastStock(plan.Size.Aim())
		return Stock{least, plan.Size.Aim()/2 - s.LeastRadius.Radius, s.UWall(), "the survey of the weld"}, err == nil
	}
	p, from := f.Plan, "the weld plan"
	if f.HandLaid != nil {
		p, from = f.HandLaid, "the weld plan with the hand weld laid"
	}
	if p == nil {
		return Stock{}, false
	}
	more := (plan.Size.Aim() - plan.Finish) / 2
	most := math.Inf(-1)
	for _, s := range p.Grid.Stock {
		most = max(most, s)
	}
	return Stock{p.LeastStock.Value - p.GridError + more, most + p.GridError + more, p.Job.U, from}, true
}

// work makes the plan, or finds why there is none.
func (p *Passes) work(d *PassData) error {
	if d.Overhang > 0 {
		o, err := bar.Overhang(d.Material, d.Diameter, d.Overhang)
		if err != nil {
			return mistake(d.barAt, err)
		}
		p.Overhang = &o
	}
	var err error
	if p.Set, err = d.setup(); err != nil {
		return err
	}
	plan, err := d.plan(p.Set, p.Aim, p.Stock)
	var none noPlan
	switch {
	case errors.As(err, &none):
		p.Why, p.Ways = none.why, p.ways(d)
		return nil
	case err != nil:
		return mistake(d.at, err)
	}
	p.Plan = &plan
	for i := range plan.Passes[:plan.Count] {
		if plan.Passes[i].Push > plan.Passes[p.Deepest].Push {
			p.Deepest = i
		}
	}
	if _, p.Gives, err = d.bends(plan.Passes[p.Deepest].Push); err != nil {
		return mistake(d.barAt, err)
	}
	_, err = d.plan(p.Set, p.Aim, p.Stock.atWorst())
	p.TooClose = err != nil
	return nil
}

// atWorst is the stock with its uncertainty against it.
func (s Stock) atWorst() Stock {
	s.Least, s.Most = s.Least-bore.Coverage*s.U, s.Most+bore.Coverage*s.U
	return s
}

// bends gives the stiffness of the bar at the cutter, and how far a push bends
// it. Two bearings are taken to let it tilt: the softer of the two bounds.
func (d *PassData) bends(push float64) (stiffness, deflection float64, err error) {
	if d.Span > 0 {
		r, err := bar.LineBar(bar.LineBarInput{Section: d.Section, Span: d.Span, Station: d.Station, Modulus: d.Material.Modulus, Force: push})
		return r.Stiffness, r.AtCutter, err
	}
	r, err := bar.Cantilever(bar.CantileverInput{Section: d.Section, Overhang: d.Overhang, Modulus: d.Material.Modulus, Force: push})
	return r.Stiffness, r.Deflection, err
}

// setup works out what does not depend on the passes.
func (d *PassData) setup() (Setup, error) {
	k, _, err := d.bends(0)
	if err != nil {
		return Setup{}, mistake(d.barAt, err)
	}
	kc, err := bar.SpecificForce(d.Work, d.HeavyFeed, squareEdge)
	if err != nil {
		return Setup{}, mistake(d.at, err)
	}
	// The bar gives away from the wall, and only a share of the force acts there.
	stable, err := bar.StableDepth(bar.StableInput{Stiffness: k, Damping: Damping, Specific: pushShare * kc})
	if err != nil {
		return Setup{}, mistake(d.at, err)
	}
	s := Setup{k, stable.Depth, d.DepthLimit}
	if s.DepthLimit == 0 {
		s.DepthLimit = min(stable.Depth, 0.0254)
	}
	return s, nil
}

// plan asks for the passes. What no plan can do comes back as a noPlan.
func (d *PassData) plan(set Setup, aim float64, stock Stock) (bar.PlanResult, error) {
	if stock.Least < 0 {
		return bar.PlanResult{}, noPlan{"where the weld is thinnest it does not reach the finish size: it will not clean up; add weld there"}
	}
	if set.DepthLimit < 2.54e-5 {
		return bar.PlanResult{}, noPlan{"the bar is so soft that it may chatter at any depth worth taking"}
	}
	r, err := bar.Plan(bar.PlanInput{Finish: aim, LeastStock: stock.Least, MostStock: stock.Most, Length: d.Length, Stiffness: set.Stiffness,
		Work: d.Work, Lead: squareEdge, PushShare: pushShare, RoughFeed: d.HeavyFeed, RoughSpeed: d.HeavySpeed, FineFeed: d.LightFeed, FineSpeed: d.LightSpeed,
		DepthLimit: set.DepthLimit, PowerLimit: d.Power, Truing: truingLeast, Light: d.Light, Tolerance: d.Tolerance})
	var outside *trade.RangeError
	if err != nil && !errors.As(err, &outside) {
		err = noPlan{strings.TrimPrefix(err.Error(), "no plan: ")}
	}
	return r, err
}

// Through is the narrowest place of the welded bore, a diameter, m.
func (p *Passes) Through() float64 { return p.Aim - 2*p.Stock.Most }

// onDiameter shows twice a length on the radius.
func onDiameter(x float64, sys units.System) string {
	return units.Show(2*x, units.Length, sys, units.Nearest)
}
