package main

import (
	"fmt"
	"slices"

	"gudgeon/trade/bore"
	"gudgeon/units"
)

// finished tells how the bore stands against its limits, and how clean it is.
func (s *surveyScreen) finished() {
	b := s.Finished
	if b == nil {
		return
	}
	s.heading("Finished bore (" + s.unit() + ")")
	rows := [][]string{measuredHead}
	for _, z := range b.Sections {
		rows = append(rows, s.measured(z.Z, z.Size))
	}
	s.table(rows)
	s.row(2, "size", 14, fmt.Sprintf("%s to %s, limits %s to %s: %s", s.bare(b.Least), s.near(b.Greatest), s.bare(b.Limits.Least), s.near(b.Limits.Greatest), s.room("least diameter", "greatest diameter")))
	s.row(2, "taper", 14, s.fine(b.Taper, units.Up)+": "+s.room("taper"))
	s.row(2, "out of round", 14, s.fine(b.OutOfRound, units.Up)+" on the radius: "+s.room("out of round"))
	s.labelled(2, "", "Two-point diameters do not show three lobes. Where the pin still grips, sweep the bore with an indicator.")
	s.cleanedUp()
}

// room says how much is left to the nearest of some limits.
func (s *surveyScreen) room(limits ...string) string {
	var nearest *bore.Margin
	for i, m := range s.Finished.Margins {
		if slices.Contains(limits, m.Limit) && (nearest == nil || m.Room < nearest.Room) {
			nearest = &s.Finished.Margins[i]
		}
	}
	if nearest == nil {
		return "no limit is given"
	}
	gauge := "gauge good to ±" + s.fine(bore.Coverage*nearest.U, units.Up)
	switch {
	case nearest.Room < 0:
		return "OUT by " + s.fine(-nearest.Room, units.Up) + ", " + gauge
	case nearest.Close:
		return "too close to call, " + s.fine(nearest.Room, units.Down) + " to spare, " + gauge
	}
	return s.fine(nearest.Room, units.Down) + " to spare, " + gauge
}

func (s *surveyScreen) cleanedUp() {
	c, d := s.Finished.Surface, s.Job.Finished
	if c == nil {
		return
	}
	text := s.show(c.Share, units.Ratio, units.Down) + " of the surface"
	if d.Loaded != nil {
		text += fmt.Sprintf("; %s of the loaded zone, %s to %s", s.show(c.LoadedShare, units.Ratio, units.Down), bore.ClockWords(d.Loaded.From), bore.ClockWords(d.Loaded.To))
	}
	s.row(2, "cleaned up", 14, text)
	if len(d.Voids) == 0 {
		s.row(2, "voids", 14, "none")
	}
	for i, v := range d.Voids {
		s.row(2, fmt.Sprintf("void %d", i+1), 14, fmt.Sprintf("%s, %s deep, %s across and %s along: %s", bore.ClockWords(v.Clock), s.near(v.Z), s.near(v.Round), s.near(v.Along), s.voidWords(i)))
	}
}

func (s *surveyScreen) voidWords(i int) string {
	c, text := s.Finished.Surface, ""
	if slices.Contains(c.Loaded, i) {
		text = "in the loaded zone"
	}
	if slices.Contains(c.AtEdge, i) {
		if text != "" {
			text += " and "
		}
		text += "within " + s.near(s.Job.Finished.Edge) + " of a face"
	}
	if text == "" {
		return "clear of the loaded zone and the edges"
	}
	return text
}
