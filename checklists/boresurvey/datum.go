package boresurvey

import (
	"fmt"
	"math"
	"strings"

	"gudgeon/rules"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// Datum is the axis that the bore is meant to be bored on.
type Datum struct {
	bore.Line
	Name string
	U    float64 // its standard uncertainty in each direction, m
}

// takeDatum finds the axis that the file names.
func (f *Finding) takeDatum() {
	f.Datum = Datum{Name: "the bar", U: f.Job.Readings.UDatum}
	switch f.Job.Datum {
	case DatumBar:
	case DatumWornBore:
		f.Datum.Name = "the worn bore"
		if f.Survey.Axis != nil {
			f.Datum.Line, f.Datum.U = f.Survey.Axis.Line, 0
		}
	case DatumAgreed:
		f.Datum.Name = "the centre that the features agree on"
		if f.Centres == nil || f.Centres.Group == nil {
			f.Datum.Name = "the bar, as the features do not agree"
			return
		}
		at, u := f.agreed()
		f.Datum.Line, f.Datum.U = parallel(at), u
	default:
		i := f.candidate(f.Job.Datum)
		c := f.Centres.Candidates[i]
		f.Datum = Datum{Name: "the " + c.Name, Line: parallel(c.Centre), U: c.U}
	}
}

// agreed is the centre of those that agree, with its standard uncertainty. The
// worn bore may bear the others out, but is no witness to where it should be: it
// counts only where there is nothing else.
func (f *Finding) agreed() (bore.XY, float64) {
	var sum bore.XY
	weights := 0.0
	for _, i := range f.Centres.Group {
		c := &f.Centres.Candidates[i]
		if c.Feature.Suspect() && !f.Centres.OnlySuspects {
			continue
		}
		w := 1 / (c.U * c.U)
		sum, weights = sum.Add(c.Centre.Times(w)), weights+w
	}
	return sum.Times(1 / weights), 1 / math.Sqrt(weights)
}

// parallel is an axis along the bar.
func parallel(at bore.XY) bore.Line { return bore.Line{X0: at.X, Y0: at.Y} }

// candidate is the index of a centre by its name.
func (f *Finding) candidate(name string) int {
	for i, c := range f.Centres.Candidates {
		if strings.EqualFold(c.Name, name) {
			return i
		}
	}
	return -1
}

// judgeDatum says whether the centres bear the datum out.
func (f *Finding) judgeDatum() {
	c := f.Centres
	switch {
	case c == nil, c.Verdict == bore.OneFeature:
		f.Missing = append(f.Missing, "centres: a sweep of two features that no repair has touched, to prove where the true centre is")
		return
	case c.Verdict == bore.Undecided:
		f.notice(rules.Stop, func(units.System) string { return "The features do not agree about the centre. Do not cut yet." })
		return
	case c.OnlySuspects:
		f.notice(rules.Caution, func(units.System) string {
			return "All that agree about the centre may have been cut by the same earlier repair. Measure one that it cannot have touched."
		})
	case c.Verdict == bore.OddOneOut && !c.EarlierRepair:
		f.notice(rules.Caution, func(units.System) string {
			return "One feature stands apart, and it is not one that an earlier repair would have cut. Look at it again."
		})
	}
	f.judgeChoice()
}

// judgeChoice compares the datum that the file names with the agreed centre, at
// the face where it is farther off.
func (f *Finding) judgeChoice() {
	at, u := f.agreed()
	off := f.Datum.At(0).Sub(at)
	if far := f.Datum.At(f.Survey.Length).Sub(at); far.Len() > off.Len() {
		off = far
	}
	explained := bore.Coverage * math.Hypot(u, f.datumU())
	if off.Len() <= explained {
		return
	}
	f.notice(rules.Stop, func(sys units.System) string {
		length := func(x float64, r units.Rounding) string { return units.Show(x, units.Length, sys, r) }
		return fmt.Sprintf("The datum is wrong: %s is %s towards %s from where the other features put the centre, and %s would be explained. "+
			"All that follows from it is wrong by as much. Write datum: agreed, or set up again.",
			f.Datum.Name, length(off.Len(), units.Nearest), bore.ClockWords(off.Clock()), length(explained, units.Up))
	})
}

// datumU is how sure the datum is when it is held against the features.
func (f *Finding) datumU() float64 {
	if f.Job.Datum == DatumWornBore && f.Survey.Axis != nil {
		return max(f.Survey.Near().U, f.Survey.Far().U)
	}
	return f.Datum.U
}
