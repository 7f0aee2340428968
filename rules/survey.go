package rules

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// clockUnit is the unit of a clock position: an hour is 30 degrees.
func clockUnit() units.Unit {
	u, _ := units.Named("hours")
	return u
}

// ReadClock understands a clock position, clockwise from 12 looking at the near
// face: 12, 1:30, 4.5, 3 o'clock, 90 deg.
func ReadClock(text string) (float64, error) {
	t := strings.TrimSpace(text)
	if hours, minutes, found := strings.Cut(t, ":"); found {
		h, err1 := units.Parse(units.Number, hours, numberUnit())
		m, err2 := units.Parse(units.Number, minutes, numberUnit())
		if err1 != nil || err2 != nil || m.Value < 0 || m.Value >= 60 || h.Value != math.Trunc(h.Value) {
			return 0, clockError(text)
		}
		return onClock(clockUnit().ToSI(h.Value+m.Value/60), text)
	}
	m, err := units.Parse(units.Angle, t, clockUnit())
	if err != nil {
		return 0, clockError(text)
	}
	return onClock(m.Value, text)
}

func numberUnit() units.Unit { return units.Usual(units.Number, units.InchShop) }

func onClock(angle float64, text string) (float64, error) {
	if angle < 0 || angle > 2*math.Pi+1e-12 {
		return 0, clockError(text)
	}
	return math.Mod(angle, 2*math.Pi), nil
}

func clockError(text string) error {
	return fmt.Errorf("%q is not a clock position: write it like 12, 1:30, 4.5 or 90 deg", text)
}

// ReadSurvey reads a survey's table: the clock positions under at, then a line
// of readings for every station. A reading that could not be taken is written -.
//
//	worn_bore:
//	  at:   [12, 3, 6, 9]
//	  0 in: [1.512, 1.508, 1.530, -]
//	  4 in: [1.510, 1.507, 1.541, 1.509]
func (d *ReadingDef) ReadSurvey(n source.Node, report *source.Report) Reading {
	var clocks []float64
	var points trade.Survey
	for _, pair := range n.Pairs(report) {
		if pair.Key.Value == "at" {
			clocks = readClocks(pair.Value, report)
			continue
		}
		station, err := units.Parse(units.Length, pair.Key.Value, d.Unit)
		if err != nil {
			report.At(pair.Key, "a station is written as a depth: "+err.Error(), "")
			continue
		}
		items := pair.Value.Items(report)
		if len(clocks) == 0 {
			pair.Value.Fail(report, "the clock positions come first", "begin the table with at: [12, 3, 6, 9]")
			return Reading{}
		}
		if len(items) != len(clocks) {
			pair.Value.Fail(report, fmt.Sprintf("%d readings for %d clock positions", len(items), len(clocks)), "write - where there is none")
			continue
		}
		for i, item := range items {
			if p, ok := d.ReadPoint(item.Text(report), report); ok {
				p.Station, p.Clock = station.Value, clocks[i]
				points = append(points, p)
			}
		}
	}
	if len(points) == 0 && !report.Failed() {
		n.Fail(report, d.Name+" has no points", "")
	}
	return Reading{Value: 1, Survey: points}
}

func readClocks(n source.Node, report *source.Report) []float64 {
	var clocks []float64
	for _, item := range n.Items(report) {
		text := item.Text(report)
		angle, err := ReadClock(text.Value)
		if err != nil {
			report.At(text, err.Error(), "")
		}
		clocks = append(clocks, angle)
	}
	return clocks
}

// ReadPoint reads one place of a survey; ok is false where a dash says that it
// could not be taken, and after a mistake, which is reported.
func (d *ReadingDef) ReadPoint(text source.Text, report *source.Report) (p trade.Point, ok bool) {
	if text.Value == "-" || text.Value == "" {
		return trade.Point{}, false
	}
	m, err := units.Parse(units.Length, text.Value, d.Unit)
	if err == nil {
		err = d.InRange(m.Value)
	}
	if err != nil {
		report.At(text, err.Error(), "")
		return trade.Point{}, false
	}
	return trade.Point{Read: m.Value, U: m.U / 2}, true
}

// WriteSurvey writes a survey's table so that ReadSurvey reads it back the same.
// Every line begins with indent.
func (d *ReadingDef) WriteSurvey(r Reading, indent string) string {
	clocks, stations := axes(r.Survey)
	var b strings.Builder
	texts := make([]string, len(clocks))
	for i, c := range clocks {
		texts[i] = units.Exact(c, units.Unit{Name: "rad", Symbol: "rad", Kind: units.Angle, Factor: 1})
	}
	fmt.Fprintf(&b, "%sat: [%s]\n", indent, strings.Join(texts, ", "))
	for _, z := range stations {
		for i, c := range clocks {
			texts[i] = "-"
			for _, p := range r.Survey {
				if p.Station == z && p.Clock == c {
					texts[i] = units.Exact(p.Read, d.Unit)
				}
			}
		}
		fmt.Fprintf(&b, "%s%s: [%s]\n", indent, units.Exact(z, d.Unit), strings.Join(texts, ", "))
	}
	return b.String()
}

// axes lists the clock positions and stations of a survey, in order.
func axes(s trade.Survey) (clocks, stations []float64) {
	for _, p := range s {
		if !slices.Contains(clocks, p.Clock) {
			clocks = append(clocks, p.Clock)
		}
		if !slices.Contains(stations, p.Station) {
			stations = append(stations, p.Station)
		}
	}
	slices.Sort(clocks)
	slices.Sort(stations)
	return clocks, stations
}
