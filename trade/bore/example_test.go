package bore_test

import (
	"fmt"
	"math"

	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

const inch = 0.0254

func ExampleEccentricStock() {
	// A 2.900 in bore, 20 thou off centre, to be bored to 3.000 in.
	stock, _ := bore.EccentricStock(2.9*inch, 3*inch, 0.02*inch)
	fmt.Println(units.Show(stock, units.Length, units.InchShop, units.Down))
	// Output: 0.03 in
}

func ExampleSurvey() {
	// An indicator set to 1.500 in, swept at two depths of a bore that leans.
	var sweep trade.Survey
	for _, at := range []struct{ z, off float64 }{{0.5, 0.040}, {5.5, 0.010}} {
		for i := range 12 {
			clock := float64(i) * math.Pi / 6
			sweep = append(sweep, trade.Point{Station: at.z * inch, Clock: clock,
				Read: (0.010 + at.off*math.Sin(clock)) * inch, U: 0.0003 * inch})
		}
	}
	s, err := bore.Survey(bore.Readings{Sweeps: sweep, SetRadius: 1.5 * inch, Length: 6 * inch})
	if err != nil {
		fmt.Println(err)
		return
	}
	near := s.Near()
	fmt.Printf("near face: %.0f thou towards %s, significant: %v\n", near.Size/inch*1000, bore.ClockWords(near.Clock), near.Significant)
	fmt.Printf("tilt: %.0f thou per foot\n", s.Axis.Tilt().ThouPerFoot())
	// Output:
	// near face: 43 thou towards 3 o'clock, significant: true
	// tilt: 72 thou per foot
}

func ExampleCompare() {
	c, _ := bore.Compare([]bore.Candidate{
		{Feature: bore.WornBore, Centre: bore.XY{X: 0.125 * inch}, U: 0.002 * inch},
		{Feature: bore.OutsideOfBoss, Centre: bore.XY{X: 0.003 * inch}, U: 0.008 * inch},
		{Feature: bore.UntouchedShoulder, U: 0.003 * inch},
	})
	fmt.Println(c.Text(units.InchShop))
	// Output: The outside of the boss and the untouched shoulder agree about the centre. The worn bore does not: it is 0.1246 in off towards 3 o'clock, where 0.0069 in would be explained. That looks like an earlier repair that was bored off centre. Set up on the features that agree, not on the old bore. Before cutting, measure the opposite bore or the grease hole.
}
