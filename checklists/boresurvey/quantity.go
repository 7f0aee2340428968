package boresurvey

import (
	"errors"
	"fmt"
	"strings"

	"gudgeon/rules/source"
	"gudgeon/units"
)

// limits is the range of an input, SI.
type limits struct{ low, high float64 }

// check refuses a value outside the range, in the unit it was written in.
func (in limits) check(m units.Measure) error {
	if m.Value >= in.low && m.Value <= in.high {
		return nil
	}
	show := func(x float64) string { return units.ShowIn(x, m.Unit, units.Nearest) }
	return fmt.Errorf("%s is outside what makes sense here, %s to %s", show(m.Value), show(in.low), show(in.high))
}

func readLength(text source.Text, in limits, report *source.Report) float64 {
	return readQuantity(units.Length, text, units.Unit{}, in, report).Value
}

// readQuantity reads one measure; an empty text gives none.
func readQuantity(k units.Kind, text source.Text, bare units.Unit, in limits, report *source.Report) units.Measure {
	if text.Value == "" {
		return units.Measure{}
	}
	m, err := units.Parse(k, text.Value, bare)
	if err == nil && m.HasLimits {
		err = errors.New("one value is expected here, not limits")
	}
	if err == nil {
		err = in.check(m)
	}
	if err != nil {
		report.At(text, err.Error(), "")
		return units.Measure{}
	}
	return m
}

// Size is a diameter and what it may be, m.
type Size struct {
	Nominal         float64
	HasLimits       bool
	Least, Greatest float64 // zero without limits
}

// Aim is the diameter to work to: the middle of the limits.
func (s Size) Aim() float64 {
	if !s.HasLimits {
		return s.Nominal
	}
	return (s.Least + s.Greatest) / 2
}

// readSize reads a diameter that may carry limits, 3.000 +.002/-.000 in.
func readSize(text source.Text, in limits, report *source.Report) Size {
	if text.Value == "" {
		return Size{}
	}
	m, err := units.Parse(units.Length, text.Value, units.Unit{})
	if err == nil {
		err = in.check(m)
	}
	switch {
	case err != nil:
		report.At(text, err.Error(), "")
		return Size{}
	case m.U > 0:
		report.At(text, "± says how sure a reading is; a size has limits", "write it like 3.000 +.001/-.001 in")
		return Size{}
	case !m.HasLimits:
		return Size{Nominal: m.Value}
	case m.Upper <= m.Lower:
		report.At(text, "the upper limit is no more than the lower one", "")
	}
	return Size{m.Value, true, m.Value + m.Lower, m.Value + m.Upper}
}

// readYesNo reads a fact; known is false where nothing is written.
func readYesNo(text source.Text, report *source.Report) (yes, known bool) {
	switch strings.ToLower(text.Value) {
	case "":
		return false, false
	case "yes", "true":
		return true, true
	case "no", "false":
		return false, true
	}
	report.At(text, "yes or no is expected here", "")
	return false, true
}

// readWord reads one of some words and gives its index; known is false where
// none of them is written.
func readWord(text source.Text, words []string, report *source.Report) (index int, known bool) {
	if text.Value == "" {
		return 0, false
	}
	for i, w := range words {
		if strings.EqualFold(w, text.Value) {
			return i, true
		}
	}
	hint := source.Suggest(text.Value, words)
	if len(text.Value) < 3 { // too short for a slip of the finger
		hint = "known here: " + strings.Join(words, ", ")
	}
	report.At(text, fmt.Sprintf("%q is not known here", text.Value), hint)
	return 0, false
}

// firstOf is the first text that is written: where a mistake of a whole section
// belongs.
func firstOf(texts ...source.Text) source.Text {
	for _, t := range texts {
		if !t.IsZero() {
			return t
		}
	}
	return source.Text{}
}
