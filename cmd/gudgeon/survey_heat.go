package main

import (
	"fmt"

	"gudgeon/checklists/boresurvey"
	"gudgeon/trade/bore"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// formulaIIW says which carbon equivalent is meant; there are several.
const formulaIIW = "C + Mn/6 + (Cr+Mo+V)/5 + (Ni+Cu)/15, IIW"

// heat tells what heat the part wants, and whether it has it.
func (s *surveyScreen) heat() {
	h, d := s.Heat, s.Job.Heat
	if h == nil {
		return
	}
	s.heading("Heat")
	s.row(2, "steel", 14, fmt.Sprintf("%s: carbon equivalent %s (%s); %s to weld", steelWords(d), s.show(h.CE, units.Ratio, units.Up), formulaIIW, h.Weldability))
	s.row(2, "preheat table", 14, fmt.Sprintf("%s or more, also between layers: group %s, %s thick", s.degrees(h.Preheat, units.Up), d.Category, s.near(d.Thickness)))
	if d.Procedure > 0 {
		s.row(2, "procedure", 14, s.degrees(d.Procedure, units.Up)+" or more")
	}
	s.row(2, "preheat", 14, s.reading(d.Preheat, h.Reached.String()))
	s.row(2, "interpass", 14, s.interpass())
	s.row(2, "heat input", 14, s.heatInput())
}

// steelWords names the steel and says which end of its range counts.
func steelWords(d *boresurvey.HeatData) string {
	switch {
	case d.Grade == "":
		return "as analysed"
	case d.Pick == weld.MidRange:
		return d.Grade + ", middle of its range"
	}
	return d.Grade + ", top of its range"
}

func (s *surveyScreen) degrees(k float64, r units.Rounding) string {
	return s.show(k, units.Temperature, r)
}

// within says how good a temperature is.
func (s *surveyScreen) within(u float64) string {
	return "±" + s.show(bore.Coverage*u, units.TemperatureDifference, units.Up)
}

func (s *surveyScreen) reading(t boresurvey.Temperature, word string) string {
	if t.K == 0 {
		return "not read yet"
	}
	return fmt.Sprintf("reads %s %s: %s", s.degrees(t.K, units.Nearest), s.within(t.U), word)
}

func (s *surveyScreen) interpass() string {
	h, most := s.Heat, ""
	if limit := s.Job.Heat.MostInterpass; limit > 0 {
		most = ", " + s.degrees(limit, units.Down) + " at most"
	}
	if h.Coldest.K == 0 {
		return "not read yet; " + s.degrees(h.Wanted, units.Up) + " or more" + most
	}
	return fmt.Sprintf("read %s to %s %s: %s; %s or more wanted%s", s.degrees(h.Coldest.K, units.Nearest), s.degrees(h.Hottest.K, units.Nearest),
		s.within(max(h.Coldest.U, h.Hottest.U)), h.Held.Held(), s.degrees(h.Wanted, units.Up), most)
}

func (s *surveyScreen) heatInput() string {
	h, d := s.Heat, s.Job.Heat
	if h.HeatInput == 0 {
		return "not known; give volts, amps and travel speed"
	}
	ipm, _ := units.Named(map[units.System]string{units.InchShop: "ipm", units.MetricShop: "mm_per_min"}[s.system])
	return fmt.Sprintf("%s at %s, %s, %s (volts × amps / travel speed); the procedure says how much it may be", s.show(h.HeatInput, units.HeatInput, units.Nearest),
		s.show(d.Volts, units.Voltage, units.Nearest), s.show(d.Amps, units.Current, units.Nearest), units.ShowIn(d.Travel, ipm, units.Nearest))
}
