package weld

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Job is a worn bore and how it is meant to be built up. Depths run from the
// near face; the axis and the boss are measured from the bar, as the survey is.
type Job struct {
	Surface *bore.Surface // the worn wall
	Axis    bore.Line     // the true axis; the zero Line is the bar
	Length  float64       // face to face, m, 1 mm to 10 m

	Finish    float64 // finish diameter, m, 5 mm to 3 m
	Truing    float64 // truing bore before welding, on the true axis, diameter, m; 0: none
	Allowance float64 // metal wanted under the finish cut, on the radius, m, 0 to 20 mm

	Layer     float64 // build-up per layer on the radius, m, 0.2 to 12 mm
	Layers    int     // planned all over, 0 to 60
	BuildUp   float64 // instead of Layers: total build-up by machine on the radius, m
	HandLayer float64 // build-up per hand-laid layer, m; 0: as Layer
	HandWeld  []Patch // laid in addition

	Boss       float64 // outside diameter of the boss, m; 0: not known
	BossCentre bore.XY // its centre, m, the same at every depth
	LeastWall  float64 // wall that must remain behind the trued surface, m; 0: not asked
	LeastWeld  float64 // weld wanted everywhere in the finished bore, on the radius, m; 0: not asked

	U float64 // standard uncertainty of the stock at a place, m: survey, axis and build-up; 0: not known

	Clocks int // clock positions of the grid, 24 to 720; 0: 72
	Rows   int // steps of depth, 4 to 200; 0: 24
}

// Plan is what comes of a Job.
type Plan struct {
	Job  Job
	Grid Grid

	CleansUp     bool    // the stock is at least the allowance everywhere
	TooClose     bool    // the least stock differs from the allowance by less than k·U
	LeastStock   Spot    // before the grid error is taken off, m
	MostNeeded   Spot    // greatest weld thickness that any place needs, grid error included, m
	LeastNeeded  Spot    // the least, m
	GridError    float64 // the wall may stick out by so much between the places of the grid, m
	LayersEnough int     // planned layers that would do everywhere without hand weld, the uncertainty of the stock counted in

	Short    []Area  // what will not clean up, largest shortfall first
	HandWeld []Patch // what to lay there, layer by layer

	Share     float64 // share of the finished surface that the cut will reach, 0 to 1
	ShareFull float64 // share of it that has the whole allowance

	Wall     Spot           // least wall behind the trued surface, m; zero if the boss is not known
	Truing   []TruingOption // this truing bore and others worth a thought
	Deposit  Amount         // weld metal laid
	TruedOff Amount         // metal the truing bore takes out
}

// Spot is a value at a place of the grid.
type Spot struct {
	Value float64 // m
	Clock float64 // rad
	Z     float64 // m
}

// Amount is a volume, m³, and how far the grid may be wrong about it.
type Amount struct{ Volume, Error float64 }

// MakePlan returns the stock everywhere on the finish bore, and what will not
// clean up.
//
//	trued surface  S = max(ρ, Rt)    ρ worn wall and Rt truing radius, about the true axis
//	needed         t = max(0, S + a − Rf)
//	stock          s = Rf − (S − w)  w weld laid there; it must be a or more
//	wall           b = B − S         B outside of the boss, about the true axis
//	deposit        V = ∫∫ (S·w − w²/2) dα dz
//
// All m, on the radius. The wall is looked at on a grid of clock positions and
// depths which holds the survey's stations; what it may miss in between is
// bounded (GridError) and counts against the plan. Ranges as in Job. Errors: a
// *trade.RangeError; sizes that contradict each other; the true axis outside the
// worn bore; more than 40 hand-laid layers. Source: plane geometry; the order of
// work (bore true, weld, finish) is common practice, no source.
func MakePlan(job Job) (*Plan, error) {
	if err := job.check(); err != nil {
		return nil, err
	}
	p := &Plan{Job: job}
	if err := p.lay(); err != nil {
		return nil, err
	}
	p.measure()
	short := p.shortfall()
	p.CleansUp = true
	for _, s := range short {
		p.CleansUp = p.CleansUp && s <= 0
	}
	if u := bore.Coverage * job.U; u > 0 {
		room := p.LeastStock.Value - p.GridError - job.Allowance
		p.TooClose = room < u && room > -u
	}
	p.Short = p.Grid.areas(short, 0)
	var err error
	if p.HandWeld, err = p.handWeld(short); err != nil {
		return nil, err
	}
	p.truings()
	return p, nil
}

// ApplyHandWeld returns the plan with its hand-weld list laid: it cleans up
// everywhere. Ranges and errors as MakePlan. Source: as MakePlan.
func ApplyHandWeld(p *Plan) (*Plan, error) {
	job := p.Job
	job.HandWeld = append(append([]Patch(nil), job.HandWeld...), p.HandWeld...)
	return MakePlan(job)
}

func (j *Job) check() error {
	if j.Surface == nil {
		return errors.New("the plan needs the worn wall: survey the bore first")
	}
	far := j.Axis.At(j.Length)
	err := errors.Join(limLength.Check(j.Length), limFinish.Check(j.Finish), limTruing.Check(j.Truing),
		limAllowance.Check(j.Allowance), limLayer.Check(j.Layer), limLayers.Check(float64(j.Layers)),
		limBuildUp.Check(j.BuildUp), limBoss.Check(j.Boss), limLeast.Check(j.LeastWall), limLeast.Check(j.LeastWeld),
		limU.Check(j.U), limShift.Check(j.Axis.X0), limShift.Check(j.Axis.Y0), limShift.Check(far.X), limShift.Check(far.Y),
		limShift.Check(j.BossCentre.X), limShift.Check(j.BossCentre.Y))
	if err != nil {
		return err
	}
	switch {
	case j.HandLayer == 0:
		j.HandLayer = j.Layer
	default:
		if err := limLayer.Check(j.HandLayer); err != nil {
			return err
		}
	}
	if j.Clocks == 0 {
		j.Clocks = 72
	}
	if j.Rows == 0 {
		j.Rows = 24
	}
	return errors.Join(j.contradictions(), j.checkPatches())
}

func (j *Job) contradictions() error {
	switch {
	case j.Clocks < 24 || j.Clocks > 720 || j.Clocks%2 != 0 || j.Rows < 4 || j.Rows > 200:
		return errors.New("the grid must have an even number of clock positions from 24 to 720, and 4 to 200 steps of depth")
	case j.BuildUp > 0 && j.Layers > 0:
		return errors.New("give the planned layers or the machine's total build-up, not both")
	case j.Boss > 0 && j.Boss <= j.Finish:
		return errors.New("the boss is no larger than the finish bore")
	case j.Boss > 0 && j.Boss <= j.Truing:
		return errors.New("the truing bore is as large as the boss")
	case j.Boss == 0 && j.LeastWall > 0:
		return errors.New("to keep a least wall, give the boss diameter")
	case j.Truing > 0 && j.Truing < j.Finish/2:
		return errors.New("the truing bore is less than half the finish bore: check the two diameters")
	}
	return nil
}

// planned is the build-up meant for the whole bore, m.
func (j *Job) planned() float64 {
	if j.BuildUp > 0 {
		return j.BuildUp
	}
	return float64(j.Layers) * j.Layer
}

// Steps gives the worked lines at the worst place.
func (p *Plan) Steps() []trade.Step {
	row, col := p.Grid.nearest(p.LeastStock)
	at := row*len(p.Grid.Clocks) + col
	g := &p.Grid
	line := func(name, formula string, v float64) trade.Step {
		return trade.Step{Name: name, Formula: formula, Kind: units.Length, Value: v}
	}
	out := []trade.Step{
		{Name: "worst place: clock position", Kind: units.Angle, Value: p.LeastStock.Clock, Unit: "hours"},
		line("worst place: depth", "", p.LeastStock.Z),
		line("worn wall from the true axis", "ρ", g.Worn[at]),
		line("after truing", "S = max(ρ, Rt)", g.Trued[at]),
		line("weld needed there", "t = max(0, S + a − Rf)", g.Needed[at]),
		line("weld planned there", "w", g.Weld[at]),
		line("stock", "s = Rf − (S − w)", g.Stock[at]),
		line("allowance", "a", p.Job.Allowance),
		line("short", "a + grid error − s", max(0, p.Job.Allowance+p.GridError-g.Stock[at])),
	}
	if p.Job.Boss > 0 {
		out = append(out, line("least wall", "b = B − S", p.Wall.Value))
	}
	return append(out, trade.Step{Name: "weld metal", Formula: "V = ∫∫ (S·w − w²/2) dα dz", Kind: units.Volume, Value: p.Deposit.Volume})
}
