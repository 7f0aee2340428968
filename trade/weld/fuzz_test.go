package weld

import (
	"math"
	"testing"

	"gudgeon/trade/bore"
)

// FuzzPlan: whatever is asked, the answer is an error or made of numbers.
func FuzzPlan(f *testing.F) {
	f.Add(0.038, 0.003, -0.001, 0.15, 0.076, 0.077, 0.001, 0.002, 1, 0.12)
	f.Add(0.04, 0.0, 0.0, 0.001, 0.08, 0.0, 0.0, 0.0002, 0, 0.0)
	f.Fuzz(func(t *testing.T, r, near, far, length, finish, truing, allowance, layer float64, layers int, boss float64) {
		wall, err := bore.SurfaceOf(bore.Section{Centre: bore.XY{X: near}, R: r}, bore.Section{Z: 0.1, Centre: bore.XY{Y: far}, R: r})
		if err != nil {
			return
		}
		p, err := MakePlan(Job{Surface: wall, Length: length, Finish: finish, Truing: truing, Allowance: allowance, Layer: layer, Layers: layers, Boss: boss, Clocks: 24, Rows: 6})
		if err != nil {
			return
		}
		for _, v := range []float64{p.LeastStock.Value, p.MostNeeded.Value, p.LeastNeeded.Value, p.GridError, p.Share, p.ShareFull, p.Wall.Value, p.Deposit.Volume, p.Deposit.Error, p.TruedOff.Volume} {
			if math.IsNaN(v) || math.IsInf(v, 0) {
				t.Fatalf("not a number: %+v", p.Job)
			}
		}
		for _, g := range [][]float64{p.Grid.Worn, p.Grid.Trued, p.Grid.Needed, p.Grid.Weld, p.Grid.Stock, p.Grid.Wall} {
			for _, v := range g {
				if math.IsNaN(v) || math.IsInf(v, 0) {
					t.Fatalf("not a number: %+v", p.Job)
				}
			}
		}
		done, err := ApplyHandWeld(p)
		if err == nil && !done.CleansUp {
			t.Fatalf("the hand-weld list does not clean up: %+v", p.Job)
		}
	})
}
