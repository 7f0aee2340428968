package weld

import (
	"errors"
	"math"
	"slices"

	"gudgeon/trade/bore"
)

// Grid holds what a drawing of the bore needs: values by depth and clock
// position, at index row·len(Clocks) + column. All are on the radius, m.
type Grid struct {
	Clocks []float64 // rad, evenly round from 12 o'clock
	Depths []float64 // m, from 0 to the length, the survey's stations among them

	Worn   []float64 // worn wall from the true axis
	Trued  []float64 // the same after the truing bore
	Needed []float64 // weld thickness needed
	Weld   []float64 // weld thickness laid
	Stock  []float64 // metal under the finish cut; below zero a dark patch
	Wall   []float64 // parent metal behind the trued surface; nil if the boss is not known
}

// Index is the place of a row and a column in the grid's values.
func (g *Grid) Index(row, column int) int { return row*len(g.Clocks) + column }

// lay fills the grid.
func (p *Plan) lay() error {
	j, g := &p.Job, &p.Grid
	g.Clocks = bore.EvenClocks(j.Clocks)
	g.Depths = depths(j)
	n := len(g.Clocks) * len(g.Depths)
	columns := [...]*[]float64{&g.Worn, &g.Trued, &g.Needed, &g.Weld, &g.Stock, &g.Wall}
	all := make([]float64, len(columns)*n)
	for i, c := range columns {
		*c = all[i*n : (i+1)*n : (i+1)*n]
	}
	if j.Boss == 0 {
		g.Wall = nil
	}
	rays := bore.Rays(g.Clocks)
	for row, z := range g.Depths {
		if err := p.layRow(row, z, rays); err != nil {
			return err
		}
	}
	p.GridError = j.Surface.GridError(j.Axis, j.Length, 2*math.Pi/float64(j.Clocks))
	return nil
}

// depths are even steps and the survey's stations between the faces.
func depths(j *Job) []float64 {
	out := make([]float64, 0, j.Rows+8)
	for i := range j.Rows + 1 {
		out = append(out, j.Length*float64(i)/float64(j.Rows))
	}
	for _, z := range j.Surface.Stations() {
		if z > 0 && z < j.Length {
			out = append(out, z)
		}
	}
	slices.Sort(out)
	return slices.CompactFunc(out, func(a, b float64) bool { return math.Abs(b-a) < 1e-6 })
}

func (p *Plan) layRow(row int, z float64, rays []bore.Ray) error {
	j, g := &p.Job, &p.Grid
	lo, hi := g.Index(row, 0), g.Index(row+1, 0)
	if err := j.Surface.Row(j.Axis, z, rays, g.Worn[lo:hi]); err != nil {
		return err
	}
	planned := j.planned()
	boss := j.BossCentre.Sub(j.Axis.At(z))
	for i := lo; i < hi; i++ {
		ray := rays[i-lo]
		g.Trued[i] = max(g.Worn[i], j.Truing/2)
		g.Needed[i] = max(0, g.Trued[i]+j.Allowance-j.Finish/2)
		g.Weld[i] = planned
		for k := range j.HandWeld {
			if j.HandWeld[k].Covers(ray.Clock, z) {
				g.Weld[i] += j.HandWeld[k].Thickness
			}
		}
		if g.Weld[i] >= g.Trued[i] {
			return errors.New("the weld would close the bore: check layers and build-up")
		}
		g.Stock[i] = j.Finish/2 - (g.Trued[i] - g.Weld[i])
		if g.Wall == nil {
			continue
		}
		edge, ok := rim(boss, j.Boss/2, ray)
		if !ok {
			return errors.New("the true axis lies outside the boss: check its centre")
		}
		g.Wall[i] = edge - g.Trued[i]
	}
	return nil
}

// rim is the distance to a circle of radius r whose centre is at e.
func rim(e bore.XY, r float64, ray bore.Ray) (float64, bool) {
	along, across := e.X*ray.Sin+e.Y*ray.Cos, e.X*ray.Cos-e.Y*ray.Sin
	if e.X*e.X+e.Y*e.Y >= r*r {
		return 0, false
	}
	return along + math.Sqrt(r*r-across*across), true
}

// measure takes extremes, shares and volumes off the grid.
func (p *Plan) measure() {
	j, g := &p.Job, &p.Grid
	p.LeastStock = g.least(g.Stock)
	p.MostNeeded = g.most(g.Needed)
	if p.MostNeeded.Value > 0 {
		p.MostNeeded.Value += p.GridError
	}
	p.LeastNeeded = g.least(g.Needed)
	p.LayersEnough = layersFor(p.MostNeeded.Value+bore.Coverage*j.U, j.Layer)
	if g.Wall != nil {
		p.Wall = g.least(g.Wall)
	}
	p.Share = g.share(func(i int) bool { return g.Stock[i] >= 0 })
	p.ShareFull = g.share(func(i int) bool { return g.Stock[i] >= j.Allowance })
	p.Deposit = g.amount(func(i int) float64 { return g.Weld[i] * (g.Trued[i] - g.Weld[i]/2) })
	p.TruedOff = g.amount(func(i int) float64 { return (g.Trued[i] - g.Worn[i]) * (g.Trued[i] + g.Worn[i]) / 2 })
}

// layersFor is how many layers make up a thickness.
func layersFor(thickness, layer float64) int {
	return int(math.Ceil(thickness/layer - 1e-9))
}

func (g *Grid) spot(i int, v float64) Spot {
	return Spot{v, g.Clocks[i%len(g.Clocks)], g.Depths[i/len(g.Clocks)]}
}

func (g *Grid) least(values []float64) Spot {
	at := 0
	for i, v := range values {
		if v < values[at] {
			at = i
		}
	}
	return g.spot(at, values[at])
}

func (g *Grid) most(values []float64) Spot {
	at := 0
	for i, v := range values {
		if v > values[at] {
			at = i
		}
	}
	return g.spot(at, values[at])
}

// nearest is the row and column of a spot that came from the grid.
func (g *Grid) nearest(s Spot) (row, column int) {
	row, _ = slices.BinarySearch(g.Depths, s.Z)
	column, _ = slices.BinarySearch(g.Clocks, s.Clock)
	return min(row, len(g.Depths)-1), min(column, len(g.Clocks)-1)
}

// weight is the length of bore that a row stands for, among every step-th row.
func (g *Grid) weight(row, step int) float64 {
	last := len(g.Depths) - 1
	before, after := max(0, row-step), min(last, row+step)
	return (g.Depths[after] - g.Depths[before]) / 2
}

func (g *Grid) share(ok func(i int) bool) float64 {
	sum, whole := 0.0, 0.0
	for row := range g.Depths {
		w := g.weight(row, 1)
		for col := range g.Clocks {
			whole += w
			if ok(g.Index(row, col)) {
				sum += w
			}
		}
	}
	return sum / whole
}

// amount integrates over clock position and depth by the trapezoidal rule; the
// error is the change when every other column, and every other row, is left out.
func (g *Grid) amount(f func(i int) float64) Amount {
	fine := g.integrate(f, 1, 1)
	error := math.Abs(fine-g.integrate(f, 1, 2)) + math.Abs(fine-g.integrate(f, 2, 1))
	return Amount{fine, error}
}

func (g *Grid) integrate(f func(i int) float64, rowStep, colStep int) float64 {
	sum, last := 0.0, len(g.Depths)-1
	for row := 0; row <= last; row = next(row, rowStep, last) {
		before := max(0, row-rowStep)
		if row == last && rowStep > 1 && last%rowStep != 0 {
			before = last - last%rowStep
		}
		w := (g.Depths[min(last, row+rowStep)] - g.Depths[before]) / 2
		line := 0.0
		for col := 0; col < len(g.Clocks); col += colStep {
			line += f(g.Index(row, col))
		}
		sum += w * line
	}
	return sum * 2 * math.Pi * float64(colStep) / float64(len(g.Clocks))
}

// next goes on by step, but never over the last row.
func next(row, step, last int) int {
	if row < last && row+step > last {
		return last
	}
	return row + step
}
