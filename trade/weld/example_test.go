package weld_test

import (
	"fmt"
	"math"

	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

const inch = 0.0254

func ExampleMakePlan() {
	// A 3.04 in bore that an earlier repair left 1/8 in off towards 2 o'clock at
	// the near face. It is to be trued to 3.06 in, built up by one layer and
	// finished to 3.000 in.
	wall, _ := bore.SurfaceOf(
		bore.Section{Z: 0, Centre: bore.Polar(math.Pi/3, 0.125*inch), R: 1.52 * inch},
		bore.Section{Z: 6 * inch, Centre: bore.XY{}, R: 1.52 * inch})
	plan, err := weld.MakePlan(weld.Job{Surface: wall, Length: 6 * inch, Finish: 3 * inch, Truing: 3.06 * inch,
		Allowance: 0.03 * inch, Layer: 0.09 * inch, Layers: 1})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(plan.Text(units.InchShop))
	done, _ := weld.ApplyHandWeld(plan)
	fmt.Println("with that: ", done.CleansUp)
	// Output:
	// It will not clean up. The worst place is at 2 o'clock, 0 in deep: stock -0.055 in, wanted 0.03 in. Short from 11:40 to 4:20, 0 in to 4.25 in deep: by up to 0.0852 in. Lay by hand, layer 1, from 11:40 to 4:20, 0 in to 4.25 in deep. Or lay 2 layers all over instead of 1.
	// with that:  true
}

func ExampleHeatInput() {
	h, _ := weld.HeatInput(29, 325, 12.5*inch/60, 1)
	fmt.Println(units.Show(h, units.HeatInput, units.InchShop, units.Nearest))
	// Output: 45.24 kJ/in
}

func ExampleCarbonEquivalent() {
	steel, _ := weld.SteelNamed("4140", weld.TopOfRange)
	ce, _ := weld.CarbonEquivalent(steel)
	word, _ := weld.WeldabilityOf(ce)
	fmt.Printf("%.2f %%, %s\n", 100*ce, word)
	// Output: 0.87 %, poor
}
