package main

import (
	"fmt"

	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// plan tells whether the planned weld cleans up, and what to lay where.
func (s *surveyScreen) plan() {
	p := s.Plan
	s.heading("Weld plan")
	s.row(2, "as planned", 14, s.planned(p.CleansUp))
	s.row(2, "least stock", 14, fmt.Sprintf("%s at %s, %s deep; %s wanted", s.length(p.LeastStock.Value, units.Down),
		bore.ClockWords(p.LeastStock.Clock), s.near(p.LeastStock.Z), s.near(p.Job.Allowance)))
	s.row(2, "will clean up", 14, fmt.Sprintf("%s of the surface; %s with the whole allowance", s.show(p.Share, units.Ratio, units.Down),
		s.show(p.ShareFull, units.Ratio, units.Down)))
	s.row(2, "weld needed", 14, fmt.Sprintf("%s to %s on the radius", s.length(p.LeastNeeded.Value, units.Nearest), s.length(p.MostNeeded.Value, units.Up)))
	for i, a := range p.Short {
		s.row(2, fmt.Sprintf("short area %d", i+1), 14, fmt.Sprintf("%s: by up to %s, worst at %s, %s deep", a.Window.Text(s.system),
			s.length(a.Most.Value, units.Up), bore.ClockWords(a.Most.Clock), s.near(a.Most.Z)))
	}
	s.handWeld()
	s.truing()
	if p.Job.Boss > 0 {
		s.row(2, "thinnest wall", 14, fmt.Sprintf("%s at %s, %s deep, behind the trued bore", s.length(p.Wall.Value, units.Down), bore.ClockWords(p.Wall.Clock), s.near(p.Wall.Z)))
	}
	s.filler()
}

func (s *surveyScreen) planned(cleansUp bool) string {
	j := &s.Plan.Job
	text := fmt.Sprintf("%s of %s", count(j.Layers, "layer"), s.near(j.Layer))
	if j.BuildUp > 0 {
		text = s.near(j.BuildUp) + " by machine"
	}
	if n := len(j.HandWeld); n > 0 {
		text += fmt.Sprintf(" and %s by hand", count(n, "patch"))
	}
	if cleansUp {
		return text + " cleans up everywhere"
	}
	return text + " will not clean up"
}

// handWeld lists what to lay by hand and proves that it is enough.
func (s *surveyScreen) handWeld() {
	if len(s.Plan.HandWeld) == 0 {
		return
	}
	label := "lay by hand"
	for _, h := range s.Plan.HandWeld {
		s.row(2, label, 14, fmt.Sprintf("layer %d, %s thick: %s", h.Layer, s.near(h.Thickness), h.Window.Text(s.system)))
		label = ""
	}
	s.row(2, "with that", 14, handProof(s.HandLaid, s.length))
	s.row(2, "or", 14, fmt.Sprintf("%s all over, and no hand weld", count(s.Plan.LayersEnough, "layer")))
}

func handProof(done *weld.Plan, length func(float64, units.Rounding) string) string {
	if !done.CleansUp {
		return "it is still short: survey again after the hand weld"
	}
	text := fmt.Sprintf("it cleans up everywhere, with %s of stock or more", length(done.LeastStock.Value, units.Down))
	if done.TooClose {
		text += "; too close to call, so measure after the hand weld"
	}
	return text
}

func (s *surveyScreen) truing() {
	for i, o := range s.Plan.Truing {
		label := ""
		if i == 0 {
			label = "truing bore"
		}
		s.row(2, label, 14, s.truingText(o))
	}
}

func (s *surveyScreen) truingText(o weld.TruingOption) string {
	size := s.length(o.Diameter, units.Up)
	if o.Diameter == 0 {
		size = "none"
	}
	text := fmt.Sprintf("%s, %s: up to %s of weld, %s", size, o.Name, s.length(o.MostNeeded, units.Up), count(o.Layers, "layer"))
	if o.ThinnestWeld < 0 {
		text += ", parent metal shows in the finished bore"
	} else {
		text += fmt.Sprintf(", weld %s or more when finished", s.length(o.ThinnestWeld, units.Down))
	}
	if s.Plan.Job.Boss > 0 {
		text += ", wall " + s.length(o.Wall, units.Down)
	}
	if !o.TruesUp {
		text += "; old surface stays under the weld in places"
	}
	if !o.KeepsWall {
		text += "; TOO LITTLE WALL"
	}
	return text
}

// filler tells volume, mass and time, with the hand weld and without.
func (s *surveyScreen) filler() {
	text := s.show(s.Plan.Deposit.Volume, units.Volume, units.Up)
	if s.HandLaid != nil {
		text += "; with the hand weld " + s.show(s.HandLaid.Deposit.Volume, units.Volume, units.Up)
	}
	s.row(2, "weld metal", 14, text)
	label := "filler"
	for _, f := range s.Filler {
		s.row(2, label, 14, s.fillerText(f.Process.String(), f.Filler.Used, f.Filler.ArcTime, f.Hand.Used, f.Hand.ArcTime))
		label = ""
	}
	if s.Job.Plan.Rate == 0 {
		s.row(2, "arc time", 14, "not known; give the plan rate:, weld metal per arc time, like 4 lb/h")
	}
}

func (s *surveyScreen) fillerText(process string, used, time, handUsed, handTime float64) string {
	text := process + ": " + s.show(used, units.Mass, units.Up)
	if time > 0 {
		text += ", " + s.show(time, units.Time, units.Up) + " of arc"
	}
	if handUsed == 0 {
		return text
	}
	text += "; with the hand weld " + s.show(handUsed, units.Mass, units.Up)
	if handTime > 0 {
		text += ", " + s.show(handTime, units.Time, units.Up)
	}
	return text
}
