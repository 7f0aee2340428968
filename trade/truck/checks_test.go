package truck

import (
	"testing"

	"gudgeon/trade/outside"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const pound = 0.45359237

func in(unit float64, x float64, err error) (float64, error) { return x / unit, err }

func TestChecks(t *testing.T) { outside.Run(t, "truck", checks()) }

// checks lists every outside value of this package.
func checks() []outside.Check {
	const (
		srcA5    = "29 CFR 1910.178 App. A, A-5, https://osha.gov/laws-regs/regulations/standardnumber/1910/1910.178AppA"
		srcField = "OSHA field calculation, http://blog.forklifttraining.ws/2014/06/load-composition-part-2.html"
		srcRound = "capacity at 28 in as a second page rounds it, https://www.lion.com/lion-news/march-2012/forklift-safety-how-much-weight-can-my-forklift-ca"
		srcF5    = "load moment, https://eastmanind.com/cranes/your-question-how-is-forklift-load-calculation.html"
		srcF6    = "no capacity above the plate, http://www.indlftruck.com/rentals.htm"
		srcF7    = "training slide; the moment rule of the same slide, https://www.lomag-man.org/quiz_pleinla_tete/forkliftSafetyTrainingPresentationsBLR.s_an-web2_fichiers/v3_slide0006_notes_pane.htm"
		srcF9    = "30 CFR 57.16016, http://laws9.com/cfr/text/30/57/16016"
		srcF11   = "ANSI B56.1-2005 limits, https://manualshive.com/en/manual/cascade-corporation/10a-bin/2567192?page=15"
		srcF12   = "ANSI B56.1-2005, 7.39.1, https://forklift-accessories.indoff.com/Weblog/Archive/2007/7/18/Fork_Extension_Length"
		srcTwo   = "fork training page, https://tipsfolder.com/traveling-load-load-lifted-5-inches-683c299c75ac222382dc025ddfa419ad/"
	)
	at := func(rating, c0, c float64) func() (float64, error) {
		return func() (float64, error) {
			w, err := CapacityAt(rating*pound, c0*inch, c*inch)
			return in(pound, w, err)
		}
	}
	moment := func(rating, c0, c float64) func() (float64, error) {
		return func() (float64, error) { w, err := at(rating, c0, c)(); return w * c, err }
	}
	worn := func(of int, change func(*Fork)) func() (float64, error) {
		return func() (float64, error) {
			f := Fork{New: 0.04, Worn: 0.04, Blade: 1}
			change(&f)
			r, err := ForkWear(f)
			return r.Checks[of].Use(), err
		}
	}
	return []outside.Check{
		{"F1", "3,000 lb at 24 in, 60 in load", srcA5, outside.Published, "lb", 2400, 0.5, at(3000, 24, 30)},
		{"F1", "load moment of the same", srcA5, outside.Published, "lb·in", 72000, 1, moment(3000, 24, 30)},
		{"F2", "5,000 lb at 24 in, load at 28; source cuts off the fraction", srcField, outside.Published, "lb", 4285, 1, at(5000, 24, 28)},
		{"F2", "5,000 lb at 24 in, load at 28; source rounds", srcRound, outside.Published, "lb", 4286, 0.5, at(5000, 24, 28)},
		{"F2", "4,000 lb at 24 in, load at 36; source cuts off the fraction", srcField, outside.Published, "lb", 2666, 1, at(4000, 24, 36)},
		{"F5", "load moment of 5,000 lb at 24 in", srcF5, outside.Published, "lb·in", 120000, 1, moment(5000, 24, 40)},
		{"F6", "load nearer than the plate's centre", srcF6, outside.Published, "lb", 5000, 1e-9, at(5000, 24, 18)},
		{"F7", "5,000 lb at 24 in, load at 40 by the moment rule", srcF7, outside.Published, "lb", 3000, 0.5, at(5000, 24, 40)},
		{"F9", "a slope of 1 in 10 is the limit", srcF9, outside.Published, "%", 10, 1e-9, func() (float64, error) { g, err := Grade(1, 10); return in(0.01, g, err) }},
		{"F11", "fork at 90 % of its thickness", srcF11, outside.Published, "use", 1, 1e-9, worn(ForkThickness, func(f *Fork) { f.Worn = 0.9 * f.New })},
		{"F11", "fork 3 degrees off", srcF11, outside.Published, "use", 1, 1e-9, worn(ForkAngle, func(f *Fork) { f.Angle = 3 * degree })},
		{"F11", "fork 0.5 % out of straight", srcF11, outside.Published, "use", 1, 1e-9, worn(ForkBow, func(f *Fork) { f.Bow = 0.005 })},
		{"F11", "tips 3 % of the blade apart", srcF11, outside.Published, "use", 1, 1e-9, worn(ForkTips, func(f *Fork) { f.TipsDiff = 0.03 })},
		{"F12", "extension on a 48 in fork", srcF12, outside.Published, "in", 72, 1e-9, func() (float64, error) { x, err := ForkExtensionLimit(48 * inch); return in(inch, x, err) }},
		{"T1", "forks two thirds under the load", srcTwo, outside.Published, "use", 1, 1e-9, func() (float64, error) { r, err := Engagement(32*inch, 48*inch); return r.Use, err }},
		{"T2", "capacity about the front axle, f = 18 in", "moments worked by hand: 5,000·42/46", outside.Computed, "lb", 4565.2, 0.05, func() (float64, error) {
			w, err := CapacityFromAxle(5000*pound, 24*inch, 28*inch, 18*inch)
			return in(pound, w, err)
		}},
	}
}

func TestCapacityPrintsOnTheSafeSide(t *testing.T) {
	// F2: one page prints 4,286 lb for 4,285.7; a capacity may not round up.
	w, err := CapacityAt(5000*pound, 24*inch, 28*inch)
	require.NoError(t, err)
	assert.Less(t, w/pound, 4286.0)
}

func TestHundredPoundsPerInchIsNotUsed(t *testing.T) {
	// F7: "100 lb for every inch over 24" allows 3,400 lb at 40 in.
	w, err := CapacityAt(5000*pound, 24*inch, 40*inch)
	require.NoError(t, err)
	assert.Less(t, w/pound, 3400.0)
}
