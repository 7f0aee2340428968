package rules

import (
	"testing"

	"gudgeon/trade/outside"
)

// TestChecks holds the propagation of uncertainty against the worked example of
// JCGM 100; TestGaugeBlock says more about the same sheet.
func TestChecks(t *testing.T) {
	const h1 = "JCGM 100:2008, H.1 (end-gauge calibration), "
	nm := func(x float64) float64 { return x * 1e9 }
	spread := func(readings Readings) func() (float64, error) {
		return func() (float64, error) {
			set, err := compileText(t, gaugeSheet)
			if err != nil {
				return 0, err
			}
			return nm(set.Evaluate(readings).Results[0].U / coverage), nil
		}
	}
	only := gaugeReadings()
	for name, reading := range only {
		if name != "delta_theta" {
			reading.U = 0
			only[name] = reading
		}
	}
	outside.Run(t, "rules", []outside.Check{
		{"H.1.2", "length of the gauge", h1 + "H.1.2", outside.Published, "mm", 50.000838, 0.5e-6, func() (float64, error) {
			set, err := compileText(t, gaugeSheet)
			if err != nil {
				return 0, err
			}
			return set.Evaluate(gaugeReadings()).frame.x[set.Values[0].slot] * 1e3, nil
		}},
		{"H.1.3.5", "combined standard uncertainty, as printed", h1 + "H.1.3.5", outside.Published, "nm", 32, 0.5, spread(gaugeReadings())},
		{"H.1.3.5", "the same from the rounded components of its table", h1 + "table H.1, summed by hand", outside.Computed, "nm", 31.67, 0.01, spread(gaugeReadings())},
		{"H.1.3.4", "the term of the difference of temperature", h1 + "H.1.3.4", outside.Published, "nm", 16.6, 0.05, spread(only)},
	})
}
