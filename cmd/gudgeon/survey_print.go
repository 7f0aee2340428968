package main

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf8"

	"gudgeon/checklists/boresurvey"
	"gudgeon/rules"
	"gudgeon/trade/bore"
	"gudgeon/units"
	"gudgeon/web/sketch"
)

// surveyScreen writes a finding: the verdict and what stands against it first.
type surveyScreen struct {
	*screen
	*boresurvey.Finding
	system units.System
}

func (s *surveyScreen) show(x float64, k units.Kind, r units.Rounding) string {
	return units.Show(x, k, s.system, r)
}

func (s *surveyScreen) length(x float64, r units.Rounding) string { return s.show(x, units.Length, r) }

func (s *surveyScreen) near(x float64) string { return s.length(x, units.Nearest) }

// printSurvey writes a finding; drawn says what became of the drawing.
func printSurvey(s *surveyScreen, drawn string) {
	s.line("%s: %s", s.bold(s.Job.Part), s.verdict(s.Verdict))
	s.labelled(0, "", s.Job.Note)
	if s.Verdict == rules.Go {
		s.labelled(2, "", s.goWords())
	}
	for _, n := range s.Notices {
		s.row(2, n.Verdict.String(), 9, n.Text(s.system))
	}
	for _, m := range s.Missing {
		s.row(2, "missing", 9, m)
	}
	s.stations()
	s.axis()
	s.datum()
	if s.Plan != nil {
		s.plan()
	}
	s.heat()
	s.passes()
	s.finished()
	s.deference()
	if drawn != "" {
		s.gap()
		s.labelled(0, "", drawn)
	}
}

// goWords says what a go stands for.
func (s *surveyScreen) goWords() string {
	text := "It cleans up as planned, and the features agree about the centre."
	if s.Heat != nil {
		text += " The preheat is reached."
	}
	if s.Passes != nil {
		text += fmt.Sprintf(" It comes to size in %d passes.", s.Passes.Plan.Count)
	}
	if s.Finished != nil {
		text += " The finished bore is within its limits and clean."
	}
	return text
}

// table writes rows in columns, each as wide as its widest entry.
func (s *surveyScreen) table(rows [][]string) {
	var width []int
	for _, row := range rows {
		for i, text := range row {
			if i == len(width) {
				width = append(width, 0)
			}
			width[i] = max(width[i], utf8.RuneCountInString(text))
		}
	}
	for _, row := range rows {
		line := ""
		for i, text := range row {
			line += text + strings.Repeat(" ", width[i]-utf8.RuneCountInString(text)+2)
		}
		s.line("  %s", strings.TrimRight(line, " "))
	}
}

// stations tells what was found at each depth, seen from the bar.
func (s *surveyScreen) stations() {
	rows := [][]string{{"depth", "centre off", "towards", "diameter", "out of round", "", "read"},
		{"", "", "", "", "LSCI", "MZCI", ""}}
	measured := [][]string{measuredHead}
	for i := range s.Survey.Stations {
		st := &s.Survey.Stations[i]
		if st.Swept {
			rows = append(rows, s.station(st))
		}
		if st.Size.N > 0 {
			measured = append(measured, s.measured(st.Z, st.Size))
		}
	}
	if len(rows) > 2 {
		s.heading("Worn bore, swept from the bar (" + s.unit() + ")")
		s.table(rows)
		s.labelled(2, "", "± is twice the standard uncertainty. Out of round is on the radius; LSCI about the least squares centre, MZCI the least it can be called.")
	}
	if len(measured) > 1 {
		s.heading("Worn bore, measured across (" + s.unit() + ")")
		s.table(measured)
	}
}

var measuredHead = []string{"depth", "mean", "least", "at", "greatest", "at", "out of round"}

// measured is one depth of a bore that was measured across.
func (s *surveyScreen) measured(depth float64, z bore.Size) []string {
	return []string{s.bare(depth), s.bare(z.Mean), s.bare(z.Least), bore.ClockWords(z.LeastClock),
		s.bare(z.Greatest), bore.ClockWords(z.GreatestClock), s.bare(z.OutOfRound)}
}

func (s *surveyScreen) station(st *bore.Station) []string {
	c := &st.Circle
	xx, _, yy := st.Cov()
	return []string{s.bare(st.Z), s.barePlusMinus(c.Centre.Len(), bore.Coverage*math.Sqrt(max(xx, yy))), bore.ClockWords(c.Centre.Clock()),
		s.barePlusMinus(c.Diameter(), bore.Coverage*c.UDiameter()), s.bare(st.Round.LSCI), s.bare(st.Round.MZCI.Width()),
		count(c.DoF+3, "place")}
}

// unit is the shop's unit of length, which heads a table.
func (s *surveyScreen) unit() string { return units.Usual(units.Length, s.system).Symbol }

// bare writes a length without its unit.
func (s *surveyScreen) bare(x float64) string {
	text, _, _ := strings.Cut(s.near(x), " ")
	return text
}

func (s *surveyScreen) barePlusMinus(x, u float64) string {
	return strings.TrimSuffix(s.plusMinus(x, u), " "+s.unit())
}

// plusMinus writes a length and how sure it is.
func (s *surveyScreen) plusMinus(x, u float64) string {
	text, unit, _ := strings.Cut(s.near(x), " ")
	doubt, _, _ := strings.Cut(s.length(u, units.Up), " ")
	return text + " ±" + doubt + " " + unit
}

// axis tells how the old axis lies against the datum.
func (s *surveyScreen) axis() {
	if s.Axis == nil {
		return
	}
	s.heading("Old axis, seen from " + s.Datum.Name)
	if s.Job.Datum == boresurvey.DatumWornBore {
		s.labelled(2, "", "The worn bore is its own datum here, so nothing shows whether it is off. See the true centre below.")
		return
	}
	s.row(2, "near face", 11, s.offset(s.Axis.Offset(0)))
	s.row(2, "far face", 11, s.offset(s.Axis.Offset(s.Survey.Length)))
	tilt := s.Axis.Tilt()
	s.row(2, "tilt", 11, fmt.Sprintf("%s (%s) towards %s going in; %s", sketch.ThouPerFoot(tilt, s.system),
		s.show(tilt.Angle, units.Angle, units.Nearest), bore.ClockWords(tilt.Clock), s.beyond(tilt.Significant)))
	if c := s.Survey.Cylinder; c != nil {
		s.row(2, "cylinder", 11, fmt.Sprintf("least squares diameter %s; all readings lie within %s of it, greatest less least",
			s.plusMinus(2*c.R, 2*bore.Coverage*c.UR), s.near(c.Width)))
	}
}

func (s *surveyScreen) offset(o bore.Offset) string {
	return fmt.Sprintf("%s off towards %s; %s", s.plusMinus(o.Size, bore.Coverage*o.U), bore.ClockWords(o.Clock), s.beyond(o.Significant))
}

func (s *surveyScreen) beyond(significant bool) string {
	if significant {
		return "more than its uncertainty"
	}
	return "no more than its uncertainty explains"
}

// datum tells which features agree about the true centre.
func (s *surveyScreen) datum() {
	if s.Centres == nil {
		return
	}
	s.heading("True centre, from the bar (" + s.unit() + ")")
	rows := [][]string{{"feature", "centre off", "towards", ""}}
	for i, c := range s.Centres.Candidates {
		rows = append(rows, []string{c.Name, s.barePlusMinus(c.Centre.Len(), bore.Coverage*c.U), bore.ClockWords(c.Centre.Clock()), s.standing(i)})
	}
	s.table(rows)
	s.labelled(2, "", s.Centres.Text(s.system))
	s.labelled(2, "", "Datum of this plan: "+s.Datum.Name+".")
}

// standing says whether a feature is with the others.
func (s *surveyScreen) standing(i int) string {
	for _, g := range s.Centres.Group {
		if g == i {
			return "agrees"
		}
	}
	for _, o := range s.Centres.Odd {
		if o.Candidate == i {
			return "odd one out"
		}
	}
	return ""
}

func (s *surveyScreen) deference() {
	s.heading("Take care")
	s.labelled(2, "- ", "The part's drawing and the foreman say what may be off and how far. The welding procedure, the code at the place and a welding inspector govern the weld.")
	if s.Heat != nil {
		for _, c := range s.Heat.Care {
			s.labelled(2, "- ", c)
		}
	}
	if s.Plan != nil {
		s.labelled(2, "- ", "Prove the build-up of a layer on a test ring before trusting the plan. Preheat again before any hand weld.")
	}
	s.labelled(2, "- ", "Whether the boss is strong enough with the wall that is left is an engineer's or the maker's word.")
}
