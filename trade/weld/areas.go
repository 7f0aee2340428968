package weld

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"

	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Window is a part of the bore's wall: clockwise From one clock position To
// another, and between two depths. A window that goes all round has From 0 and
// To 2π.
type Window struct {
	From, To           float64 // rad; To may be less than From: then it passes 12 o'clock
	DepthFrom, DepthTo float64 // m
}

// AllRound reports whether the window has no ends.
func (w *Window) AllRound() bool { return w.To-w.From >= 2*math.Pi-1e-9 }

// Covers reports whether a place lies in the window, its edges included.
func (w *Window) Covers(clock, z float64) bool {
	const close = 1e-9
	if z < w.DepthFrom-close || z > w.DepthTo+close {
		return false
	}
	return w.AllRound() || bore.Turn(clock-w.From+close) <= bore.Turn(w.To-w.From)+2*close
}

// Text says the window in a machinist's words.
func (w *Window) Text(sys units.System) string {
	depth := func(x float64) string { return units.Show(x, units.Length, sys, units.Nearest) }
	arc := "all round"
	if !w.AllRound() {
		arc = "from " + bore.ClockWords(w.From) + " to " + bore.ClockWords(w.To)
	}
	return fmt.Sprintf("%s, %s to %s deep", arc, depth(w.DepthFrom), depth(w.DepthTo))
}

// Area is a connected part of the wall that stays short. Its window reaches out
// to the nearest places that do not.
type Area struct {
	Window
	Most  Spot    // greatest shortfall, m
	Share float64 // share of the finished surface that is short here
}

// Patch is one hand-laid layer.
type Patch struct {
	Window
	Layer     int     // the first is laid first
	Thickness float64 // on the radius, m
}

// shortfall is by how much each place misses the allowance, m; 0 or less is enough.
func (p *Plan) shortfall() []float64 {
	out := make([]float64, len(p.Grid.Stock))
	for i, s := range p.Grid.Stock {
		out[i] = p.Job.Allowance + p.GridError - s
		if math.Abs(out[i]) < 1e-9 { // rounding
			out[i] = 0
		}
	}
	return out
}

// areas lists the connected places whose shortfall is more than over, the
// greatest shortfall first. Places that touch at a corner are connected: a gap
// in the weld there would be hard to lay.
func (g *Grid) areas(short []float64, over float64) []Area {
	cols := len(g.Clocks)
	seen := make([]bool, len(short))
	var out []Area
	var todo []int
	usedCol, usedRow := make([]bool, cols), make([]bool, len(g.Depths))
	for start := range short {
		if seen[start] || short[start] <= over {
			continue
		}
		clear(usedCol)
		clear(usedRow)
		most, size := start, 0.0
		seen[start] = true
		todo = append(todo[:0], start)
		for len(todo) > 0 {
			i := todo[len(todo)-1]
			todo = todo[:len(todo)-1]
			row, col := i/cols, i%cols
			usedRow[row], usedCol[col] = true, true
			size += g.weight(row, 1)
			if short[i] > short[most] {
				most = i
			}
			for r := max(0, row-1); r <= min(len(g.Depths)-1, row+1); r++ {
				for _, c := range [...]int{(col + cols - 1) % cols, col, (col + 1) % cols} {
					if k := r*cols + c; !seen[k] && short[k] > over {
						seen[k] = true
						todo = append(todo, k)
					}
				}
			}
		}
		whole := float64(cols) * (g.Depths[len(g.Depths)-1] - g.Depths[0])
		out = append(out, Area{g.window(usedCol, usedRow), g.spot(most, short[most]), size / whole})
	}
	slices.SortFunc(out, func(a, b Area) int { return cmp.Compare(b.Most.Value, a.Most.Value) })
	return out
}

// window is the least one that holds the used columns and rows and one more of
// each on either side.
func (g *Grid) window(usedCol, usedRow []bool) Window {
	first, last := slices.Index(usedRow, true), len(usedRow)-1
	for !usedRow[last] {
		last--
	}
	w := Window{From: 0, To: 2 * math.Pi,
		DepthFrom: g.Depths[max(0, first-1)], DepthTo: g.Depths[min(len(usedRow)-1, last+1)]}
	start, free := freeRun(usedCol)
	if free < 2 { // the extra columns on both sides would meet
		return w
	}
	n := len(usedCol)
	w.From, w.To = g.Clocks[(start+free-1)%n], g.Clocks[start%n]
	return w
}

// freeRun finds the longest run of unused columns, going round.
func freeRun(used []bool) (start, length int) {
	n := len(used)
	run := 0
	for i := range 2 * n {
		if used[i%n] {
			run = 0
			continue
		}
		if run++; run > length && run <= n {
			length, start = run, i-run+1
		}
	}
	return start, length
}

const mostHandLayers = 40

// handWeld lists what to lay by hand so that nothing stays short, and nothing is
// left too close to call either: the first layer wherever it is not sure to clean
// up, each next one where that is not enough. It is empty for a plan that
// cleans up.
func (p *Plan) handWeld(short []float64) ([]Patch, error) {
	if p.CleansUp {
		return nil, nil
	}
	var out []Patch
	sure := 1e-9 - 1.001*bore.Coverage*p.Job.U
	for layer := 1; ; layer++ {
		areas := p.Grid.areas(short, float64(layer-1)*p.Job.HandLayer+sure)
		if len(areas) == 0 {
			return out, nil
		}
		if layer > mostHandLayers {
			return nil, errors.New("more than 40 layers would have to be laid by hand: plan more layers all over, or check the survey")
		}
		for _, a := range areas {
			out = append(out, Patch{a.Window, layer, p.Job.HandLayer})
		}
	}
}

func (j *Job) checkPatches() error {
	for i, p := range j.HandWeld {
		ok := p.From >= 0 && p.From < 2*math.Pi && p.To >= 0 && p.To <= 2*math.Pi &&
			p.DepthFrom <= p.DepthTo && p.DepthTo-p.DepthFrom < 1e3
		if !ok {
			return fmt.Errorf("hand weld %d: give clock positions within one turn and the lesser depth first", i+1)
		}
		if err := limThick.Check(p.Thickness); err != nil {
			return fmt.Errorf("hand weld %d: %w", i+1, err)
		}
	}
	return nil
}
