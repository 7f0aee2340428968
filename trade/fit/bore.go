package fit

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// BoreResult is the bore to make for a part that is measured.
type BoreResult struct {
	Fit       FitResult
	Measured  float64 // of the bushing's outside or the pin, m
	Low, High float64 // limits of the bore, m
	Target    float64 // midway, m
}

// farFromNominal is how far, as a share, a measured part may be from the
// nominal size that picks the row. Common practice, no source.
const farFromNominal = 0.02

// BoreFor returns the limits of a bore that give a measured bushing or pin the
// clearance or interference of a fit, whatever its own size came out at.
//
//	low = measured + least clearance; high = measured + most clearance
//
// measured diameter, clearances of the fit (negative: interference), limits: m.
//
// Valid for a measured diameter from 2.9 to 510 mm and within 2 % of the fit's
// nominal size; otherwise an error. The band is as wide as both tolerances of the fit
// together; work to its middle. Source: definition of the fit; the 2 % are
// common practice, no source.
func BoreFor(measured float64, f FitResult) (BoreResult, error) {
	if err := measuredRange.Check(measured); err != nil {
		return BoreResult{}, err
	}
	if err := trade.InRange("measured diameter", measured, f.Size*(1-farFromNominal), f.Size*(1+farFromNominal), units.Length,
		"it is more than 2 % from the nominal size that the fit was looked up for"); err != nil {
		return BoreResult{}, err
	}
	r := BoreResult{Fit: f, Measured: measured}
	r.Low = measured + f.LeastClearance
	r.High = measured + f.MostClearance
	r.Target = (r.Low + r.High) / 2
	return r, nil
}

// Steps gives the worked lines of the bore.
func (r BoreResult) Steps() []trade.Step {
	return append(r.Fit.Steps(),
		trade.Step{Name: "bore, low limit", Formula: "measured + least clearance", Kind: units.Length, Value: r.Low},
		trade.Step{Name: "bore, high limit", Formula: "measured + most clearance", Kind: units.Length, Value: r.High},
		trade.Step{Name: "bore to aim at", Formula: "(low + high)/2", Kind: units.Length, Value: r.Target},
	)
}

// RunningInput is a pin in a bushing that is pressed in a boss.
type RunningInput struct {
	BushingBore      float64 // before pressing, m
	Pin              float64 // m
	Diameter         float64 // of the press fit, m
	Interference     float64 // of the press fit, on diameter, m; 0 if it is glued or pinned
	CloseIn          float64 // how much the bore closes when pressed in, m
	BushingExpansion float64 // 1/K
	BossExpansion    float64 // 1/K
	PinExpansion     float64 // 1/K
	Measured         float64 // temperature at which all were measured, K
	BossTemp         float64 // of boss and bushing at work, K
	PinTemp          float64 // of the pin at work, K
}

// RunningResult is the pin's clearance cold and at work.
type RunningResult struct {
	In              RunningInput
	Cold            float64 // clearance on diameter once pressed in, as measured, m
	HotInterference float64 // of the press fit at work, m
	HotCloseIn      float64 // m
	HotBore         float64 // m
	HotPin          float64 // m
	Hot             float64 // clearance on diameter at work, m
}

var expansionRange = trade.Between("thermal expansion", 1e-6, 40e-6, units.Expansion, "")

func (in RunningInput) check() error {
	return cmp.Or(
		boreRange.Check(in.BushingBore), pinRange.Check(in.Pin), diameterRange.Check(in.Diameter),
		tightRange.Check(in.Interference), closeInRange.Check(in.CloseIn),
		expansionRange.Check(in.BushingExpansion), expansionRange.Check(in.BossExpansion), expansionRange.Check(in.PinExpansion),
		tempRange.Check(in.Measured), tempRange.Check(in.BossTemp), tempRange.Check(in.PinTemp),
		trade.InRange("bushing bore", in.BushingBore, 0, math.Nextafter(in.Diameter, 0), units.Length, "it is to be smaller than the press fit's diameter"),
		trade.InRange("close-in of the bore", in.CloseIn, 0, 1.2*in.Interference, units.Length, "a bore does not close by more than the interference that closes it"),
	)
}

// Running returns the clearance on diameter of a pin in a pressed-in bushing,
// as measured and at work.
//
//	cold = d - k - pin
//	hot interference = delta + D(ab - ah)(T-T0);  hot close-in = k·(hot interference)/delta
//	hot = d(1 + ab(T-T0)) - hot close-in - pin(1 + ap(Tp-T0))
//
// d bushing bore before pressing, k close-in, pin, D press fit diameter, delta
// interference, clearances: m; a expansion of bushing b, boss h, pin p: 1/K; T
// of boss and bushing, Tp of the pin, T0 when measured: K.
//
// A bronze bushing that gets hot in a steel boss cannot grow outward, so its
// bore closes more: that is the hot close-in.
//
// Valid for temperatures 200 to 600 K, k from 0 to 1.2 delta; otherwise an
// error. An error, too, where the press fit has no interference left at work:
// the bushing is then loose. Negative clearance is an answer: the pin seizes.
// Source: linear expansion and the elastic press fit (Shigley 9th ed. eq. 3-56).
func Running(in RunningInput) (RunningResult, error) {
	if err := in.check(); err != nil {
		return RunningResult{}, err
	}
	r := RunningResult{In: in, Cold: in.BushingBore - in.CloseIn - in.Pin}
	warm := in.BossTemp - in.Measured
	if in.Interference > 0 {
		r.HotInterference = in.Interference + in.Diameter*(in.BushingExpansion-in.BossExpansion)*warm
		if r.HotInterference <= 0 {
			return RunningResult{}, errLoose
		}
		r.HotCloseIn = in.CloseIn * r.HotInterference / in.Interference
	}
	r.HotBore = in.BushingBore*(1+in.BushingExpansion*warm) - r.HotCloseIn
	r.HotPin = in.Pin * (1 + in.PinExpansion*(in.PinTemp-in.Measured))
	r.Hot = r.HotBore - r.HotPin
	return r, nil
}

var errLoose = errors.New("at that temperature the press fit has no interference left: the bushing is loose in the boss")

// Steps gives the worked lines of the running clearance.
func (r RunningResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "clearance once pressed in, as measured", Formula: "d - k - pin", Kind: units.Length, Value: r.Cold, Unit: "thou"},
		{Name: "interference at work", Formula: "delta + D(ab-ah)(T-T0)", Kind: units.Length, Value: r.HotInterference, Unit: "thou"},
		{Name: "close-in at work", Formula: "k·(hot interference)/delta", Kind: units.Length, Value: r.HotCloseIn, Unit: "thou"},
		{Name: "bore at work", Formula: "d(1+ab(T-T0)) - hot close-in", Kind: units.Length, Value: r.HotBore},
		{Name: "pin at work", Formula: "pin(1+ap(Tp-T0))", Kind: units.Length, Value: r.HotPin},
		{Name: "clearance at work", Formula: "bore - pin", Kind: units.Length, Value: r.Hot, Unit: "thou"},
	}
}
