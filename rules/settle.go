package rules

import (
	"math"

	"gudgeon/units"
)

// Doubt says why a result is too close to call and what would settle it.
type Doubt struct {
	Margin, U  string // as shown
	Reading    string // the reading that makes most of the doubt
	With       string // what it was taken with; may be empty
	Share      float64
	Instrument string // the coarsest instrument that would settle it; empty when none would

	words *Translation
}

// Doubt explains a result that is too close to call.
func (r *Report) Doubt(i int, s units.System) (Doubt, bool) {
	result := &r.Results[i]
	if !result.TooClose || result.Dominant == nil {
		return Doubt{}, false
	}
	d := result.Dominant
	reading := r.readings[d.Name]
	u := r.MarginUnit(result, s)
	out := Doubt{
		words:  r.words,
		Margin: showSmall(result.Margin, u), U: units.ShowIn(result.U, u, units.Up),
		Reading: d.Name, With: r.with(d, reading), Share: (result.DominantU / result.U) * (result.DominantU / result.U),
	}
	if better := r.settles(result); better != nil {
		out.Instrument = better.Name
	}
	return out, true
}

// settles finds an instrument that makes U smaller than the margin: the one that
// the sheet names for the reading, else the coarsest of general use.
func (r *Report) settles(result *Result) *Instrument {
	d := result.Dominant
	reading := r.readings[d.Name]
	now := r.standardU(d, reading)
	if reading.Survey != nil {
		now = r.pointU(d, reading)
	}
	if now == 0 {
		return nil
	}
	rest := result.U*result.U - result.DominantU*result.DominantU
	kind := d.Kind
	if kind == units.Survey {
		kind = units.Length
	}
	settle := func(i *Instrument) bool {
		part := result.DominantU * i.U(reading.Value) / now
		return i.U(reading.Value) < now && math.Sqrt(math.Max(rest, 0)+part*part) < result.Margin
	}
	if i, ok := r.set.library.Instruments.Find(d.With, kind); ok && settle(i) {
		return i
	}
	for _, i := range r.set.library.Instruments.byU(kind, reading.Value) {
		if !i.Special && settle(i) {
			return i
		}
	}
	return nil
}

// String says it in a sentence.
func (d Doubt) String() string {
	with := ""
	if d.With != "" {
		with = d.words.phrasef(" (%s)", d.words.phrase(d.With))
	}
	text := d.words.phrasef("Too close to call: %s to spare, but that is only sure to ±%s. %s%s makes %.0f %% of the doubt", d.Margin, d.U, d.Reading, with, d.Share*100)
	if d.Instrument == "" {
		return text + d.words.phrase("; no single better instrument settles it, so move away from the limit.")
	}
	return text + d.words.phrasef("; take it with the %s to settle it.", d.words.phrase(d.Instrument))
}

// showSmall prints a margin, rounded down, with more decimals where it would
// print as nothing.
func showSmall(x float64, u units.Unit) string {
	if text := units.ShowIn(x, u, units.Down); text != units.ShowIn(0, u, units.Down) {
		return text
	}
	return units.ShowDigits(x, u, units.Down, 2)
}
