package bar

import (
	"cmp"
	"fmt"

	"gudgeon/trade"
	"gudgeon/units"
)

// PassKind says what a pass is for.
type PassKind uint8

// The kinds of pass, in the order in which they come.
const (
	RoughPass  PassKind = iota // takes the bulk and the high places
	TruingPass                 // the last heavy pass: cuts deep all round, so the bar gives evenly
	LightPass                  // the last pass: sizes
)

// String is the word for the kind.
func (k PassKind) String() string { return [...]string{"roughing", "truing", "light"}[k] }

// Pass is one pass of a plan.
type Pass struct {
	Kind       PassKind
	Tool       float64 // diameter to set the tool to: larger than the bore, as the bar gives, m
	Diameter   float64 // mean bore that comes out, m
	Least      float64 // metal removed where it is least, on radius, m; 0: not cut there
	Most       float64 // metal removed where it is most, on radius, m
	OutOfRound float64 // left afterwards, on radius, m
	Rotation   float64 // rad/s
	Feed       float64 // m/rad
	Time       float64 // s
	Push       float64 // greatest push on the bar, N
	Power      float64 // greatest, at the cutter, W
}

// PlanInput is a rough bore and the means to bore it. Stock is on radius, from
// the surface as it is to the finished bore.
type PlanInput struct {
	Finish     float64 // finished diameter, m
	LeastStock float64 // where there is least, m
	MostStock  float64 // where there is most, m
	Length     float64 // of cut with run-out, m
	Stiffness  float64 // of the bar at the cutter, N/m
	Work       Work
	Lead       float64 // angle of the cutting edge to the feed, rad
	PushShare  float64 // share of the cutting force that pushes the bar off, 1
	RoughFeed  float64 // of heavy passes, m/rad
	RoughSpeed float64 // of heavy passes, m/s
	FineFeed   float64 // of the light pass, m/rad
	FineSpeed  float64 // of the light pass, m/s
	DepthLimit float64 // most metal a pass may take, on radius, m
	PowerLimit float64 // at the cutter, W
	Truing     float64 // least that the truing pass must take anywhere, on radius, m
	Light      float64 // what the light pass takes, on radius, m
	Tolerance  float64 // full width, on diameter, m
}

const mostPasses = 24

// PlanResult is the plan: Passes[:Count].
type PlanResult struct {
	In         PlanInput
	Count      int
	Passes     [mostPasses]Pass
	HeavyShare float64 // out-of-round that a heavy pass leaves of what it found, 1
	LightShare float64 // the same of the light pass, 1
	DepthLimit float64 // the smaller of the given limit and what the power allows, m
	OutOfRound float64 // at the end, on radius, m
	Time       float64 // of cutting, s
	MostPower  float64 // at the cutter, W
}

// roundShare is the share of the size tolerance that ovality may use; the rest
// is for setting and measuring. Common practice, no source.
const roundShare = 0.5

var (
	stockRange   = trade.Between("stock", 0, 2*inch, units.Length, "on radius")
	limitRange   = trade.Between("greatest depth of cut", 0.001*inch, 1*inch, units.Length, "on radius")
	powerRange   = trade.Between("power at the cutter", 10, 500e3, units.Power, "")
	truingRange  = trade.Between("least depth of the truing pass", 0.002*inch, 0.25*inch, units.Length, "on radius")
	lightRange   = trade.Between("depth of the light pass", 0.0005*inch, 0.05*inch, units.Length, "on radius")
	sizeTolRange = trade.Between("tolerance on diameter", 0.0001*inch, 0.1*inch, units.Length, "")
)

func (in PlanInput) check() error {
	return cmp.Or(
		cutRange.Check(in.Finish), stockRange.Check(in.LeastStock), stockRange.Check(in.MostStock),
		lengthRange.Check(in.Length), stiffnessRange.Check(in.Stiffness),
		speedRange.Check(in.RoughSpeed), speedRange.Check(in.FineSpeed),
		limitRange.Check(in.DepthLimit), powerRange.Check(in.PowerLimit),
		truingRange.Check(in.Truing), lightRange.Check(in.Light), sizeTolRange.Check(in.Tolerance),
		trade.InRange("stock where there is most", in.MostStock, in.LeastStock, in.Finish/4, units.Length, "at least as much as where there is least, and not over a quarter of the bore"),
	)
}

// Plan returns the fewest passes that bring a rough bore round and to size:
// roughing passes, a last heavy pass that trues, a light pass that sizes.
//
//	a heavy pass leaves eps = c/(k+c) of the out-of-round that it found, c = share·kc·f
//	tool diameter = bore wanted + twice what the bar gives
//	power = kc·a·f·v; rotation = 2v/D; time = L/(f·rotation)
//
// Each heavy pass takes the same from the high places. Required of a plan:
// no pass over the depth limit or the power; the truing pass takes its least
// depth everywhere; the light pass takes at least half its depth everywhere;
// the ovality left, twice the out-of-round on radius, uses at most half of the
// tolerance (common practice, no source). The sizes hold if the bore is
// measured before the light pass and the tool set from that.
//
// k stiffness, c push per depth: N/m; kc: Pa; f feed per turn (given in m/rad),
// a depth on radius, D, L: m; v: m/s; share, eps: 1.
//
// Valid as Cut; stock 0 to 2 in on radius; at most 24 passes. An error in words
// where no plan can do it: too little stock, too soft a bar, too small a limit.
//
// Source: Copying's and Cut's.
func Plan(in PlanInput) (PlanResult, error) {
	if err := in.check(); err != nil {
		return PlanResult{}, err
	}
	heavy, err := CutStiffness(in.Work, in.RoughFeed, in.Lead, in.PushShare)
	if err != nil {
		return PlanResult{}, err
	}
	light, err := CutStiffness(in.Work, in.FineFeed, in.Lead, in.PushShare)
	if err != nil {
		return PlanResult{}, err
	}
	r := PlanResult{In: in, HeavyShare: copied(heavy, in.Stiffness), LightShare: copied(light, in.Stiffness)}
	r.DepthLimit = min(in.DepthLimit, in.PowerLimit*in.PushShare/(heavy*in.RoughSpeed))
	if err := r.feasible(); err != nil {
		return PlanResult{}, err
	}
	if err := r.search(heavy, light); err != nil {
		return PlanResult{}, err
	}
	return r, nil
}

// Steps gives the plan as lines, pass by pass.
func (r PlanResult) Steps() []trade.Step {
	steps := []trade.Step{
		{Name: "share of out-of-round that a heavy pass leaves", Formula: "eps = c/(k+c)", Kind: units.Ratio, Value: r.HeavyShare},
		{Name: "share of out-of-round that the light pass leaves", Formula: "eps = c/(k+c)", Kind: units.Ratio, Value: r.LightShare},
	}
	for i, p := range r.Passes[:r.Count] {
		name := fmt.Sprintf("pass %d, %s", i+1, p.Kind)
		steps = append(steps,
			trade.Step{Name: name + ": set the tool to", Formula: "bore + 2·deflection", Kind: units.Length, Value: p.Tool},
			trade.Step{Name: name + ": bore comes out", Formula: "mean diameter", Kind: units.Length, Value: p.Diameter},
			trade.Step{Name: name + ": greatest depth on radius", Formula: "stock before - after", Kind: units.Length, Value: p.Most, Unit: "thou"},
			trade.Step{Name: name + ": out-of-round left on radius", Formula: "eps·e", Kind: units.Length, Value: p.OutOfRound, Unit: "thou"},
			trade.Step{Name: name + ": spindle", Formula: "2v/D", Kind: units.Rotation, Value: p.Rotation},
			trade.Step{Name: name + ": feed", Formula: "given", Kind: units.Feed, Value: p.Feed},
			trade.Step{Name: name + ": power at the cutter", Formula: "kc·a·f·v", Kind: units.Power, Value: p.Power},
			trade.Step{Name: name + ": time", Formula: "L/(f·w)", Kind: units.Time, Value: p.Time},
		)
	}
	return append(steps, trade.Step{Name: "out-of-round at the end, on radius", Formula: "most - least", Kind: units.Length, Value: r.OutOfRound, Unit: "thou"})
}
