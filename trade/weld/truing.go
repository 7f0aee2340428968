package weld

import "gudgeon/trade/bore"

// TruingOption is one truing bore and what it does to weld and wall.
type TruingOption struct {
	Name         string  // "as planned"
	Diameter     float64 // m; 0: none
	ThinnestWeld float64 // weld left in the finished bore where it is thinnest, m; below zero parent metal shows
	MostNeeded   float64 // greatest weld thickness needed, grid error included, m
	Layers       int     // planned layers that would do
	Wall         float64 // least wall behind it, m; 0 if the boss is not known
	FairWeld     bool    // ThinnestWeld is at least the job's LeastWeld
	KeepsWall    bool    // Wall is at least the job's LeastWall, and more than nothing, as far as the boss is known
	TruesUp      bool    // it cuts all round at every depth: no old surface is left under the weld
}

// The names of the options.
const (
	AsPlanned    = "as planned"
	ForLeastWeld = "for the least weld"
	ForAllRound  = "cuts all round"
)

// truings compares the planned truing bore with one that leaves the least weld
// wanted everywhere, and with one that cuts all round.
func (p *Plan) truings() {
	j := &p.Job
	p.Truing = append(make([]TruingOption, 0, 3), p.option(AsPlanned, j.Truing))
	if j.LeastWeld > 0 {
		p.Truing = append(p.Truing, p.option(ForLeastWeld, j.Finish+2*j.LeastWeld))
	}
	worn := p.Grid.most(p.Grid.Worn).Value + p.GridError
	p.Truing = append(p.Truing, p.option(ForAllRound, 2*worn))
}

func (p *Plan) option(name string, diameter float64) TruingOption {
	j, g := &p.Job, &p.Grid
	o := TruingOption{Name: name, Diameter: diameter, TruesUp: true}
	for i, worn := range g.Worn {
		trued := max(worn, diameter/2)
		o.TruesUp = o.TruesUp && worn+p.GridError <= diameter/2*(1+1e-12)
		if weld := trued - j.Finish/2; i == 0 || weld < o.ThinnestWeld {
			o.ThinnestWeld = weld
		}
		if need := trued + j.Allowance - j.Finish/2; need > 0 {
			o.MostNeeded = max(o.MostNeeded, need+p.GridError)
		}
		if g.Wall == nil {
			continue
		}
		if wall := g.Wall[i] + g.Trued[i] - trued; i == 0 || wall < o.Wall {
			o.Wall = wall
		}
	}
	o.Layers = layersFor(o.MostNeeded+bore.Coverage*j.U, j.Layer)
	o.FairWeld = o.ThinnestWeld >= j.LeastWeld-1e-9
	o.KeepsWall = g.Wall == nil || (o.Wall >= j.LeastWall && o.Wall > 0)
	return o
}

// ThicknessNeeded returns the weld thickness, m on the radius, that the worst
// place of an off-centre bore needs.
//
//	t = max(0, max(d/2 + e, T/2) + a − D/2)
//
// worn d and finish D are diameters, m, 5 mm to 3 m; truing bore T, m, 0 (none)
// to 3 m; offset e, m, 0 to 1.5 m; allowance a on the radius, m, 0 to 20 mm.
// Errors: a *trade.RangeError. Source: plane geometry of two circles, exact.
func ThicknessNeeded(worn, offset, truing, finish, allowance float64) (float64, error) {
	if err := limWorn.Check(worn); err != nil {
		return 0, err
	}
	if err := limOffset.Check(offset); err != nil {
		return 0, err
	}
	if err := limTruing.Check(truing); err != nil {
		return 0, err
	}
	if err := limFinish.Check(finish); err != nil {
		return 0, err
	}
	if err := limAllowance.Check(allowance); err != nil {
		return 0, err
	}
	return max(0, max(worn/2+offset, truing/2)+allowance-finish/2), nil
}

// LayersNeeded returns how many whole layers make up a thickness.
//
//	n = ⌈t/b⌉
//
// thickness t m, 0 to 200 mm, build-up per layer b m, 0.2 to 12 mm, both on the
// radius. A layer too many by less than a billionth is not counted. Errors: a
// *trade.RangeError. Source: counting.
func LayersNeeded(thickness, layer float64) (int, error) {
	if err := limThick.Check(thickness); err != nil {
		return 0, err
	}
	if err := limLayer.Check(layer); err != nil {
		return 0, err
	}
	return layersFor(thickness, layer), nil
}
