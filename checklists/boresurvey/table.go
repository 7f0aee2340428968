package boresurvey

import (
	"fmt"
	"strings"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/trade/bore"
	"gudgeon/units"
)

// tableSource is a table of readings with what they were taken with.
type tableSource struct {
	SetRadius source.Text `yaml:"set radius"`
	Unit      source.Text `yaml:"unit"`
	With      source.Text `yaml:"with"`
	Within    source.Text `yaml:"within"`
	Readings  node        `yaml:"readings,required"`

	known rules.Instruments
}

// node keeps a piece of the file for later, when its unit is known.
type node struct{ source.Node }

// DecodeNode keeps n.
func (k *node) DecodeNode(n source.Node, _ *source.Report) { k.Node = n }

// gauge is what a table was read with: its unit and how good it is.
type gauge struct {
	unit units.Unit
	u    float64 // standard uncertainty, m; 0 when nothing says
	in   limits
	what string
	hint string // when a reading is out of range
}

// readGauge finds unit and uncertainty. Both an instrument and a figure may be
// given: the figure counts.
func readGauge(known rules.Instruments, unit, with, within source.Text, report *source.Report) gauge {
	var g gauge
	if unit.Value != "" {
		u, ok := units.Lookup(units.Length, unit.Value)
		if !ok {
			report.At(unit, fmt.Sprintf("%q is no unit of length", unit.Value), "write in, thou, mm or µm")
		}
		g.unit = u
	}
	if with.Value != "" {
		i, ok := known.Find(with.Value, units.Length)
		if !ok {
			report.At(with, fmt.Sprintf("%q is not a known instrument for a length", with.Value), source.Suggest(with.Value, known.Names(units.Length)))
		} else {
			g.u = i.U(0)
		}
	}
	if within.Value != "" {
		g.u = readLength(within, limits{0, 0.05}, report) / bore.Coverage
	}
	return g
}

// reads says what a sweep's readings are, which the set radius tells.
func (g *gauge) reads(setRadius float64) {
	g.in, g.what = limits{0.0025, 1.5}, "a radius from the bar"
	g.hint = "if it is an indicator's reading, give the set radius: where it read zero"
	if setRadius > 0 {
		g.in, g.what, g.hint = limits{-0.1, 0.1}, "an indicator reading", ""
	}
}

// cell is one place of a table.
type cell struct {
	text    source.Text
	z       float64
	clock   float64
	missing bool
	struck  bool // in brackets: on the sheet, but not in the circle
	m       units.Measure
}

func (job *Job) readSweep(src *tableSource, report *source.Report) {
	if src == nil {
		return
	}
	in, dashes, stations := src.sweep(report)
	job.Readings.Sweeps, job.Readings.SetRadius, job.Readings.LeaveOut = in.Sweeps, in.SetRadius, in.LeaveOut
	job.Dashes, job.places.stations = dashes, stations
	if len(stations) > 0 {
		job.places.sweep = stations[0].text
	}
}

// sweep reads a table of indicator readings, or of radii.
func (src *tableSource) sweep(report *source.Report) (in bore.Readings, dashes []Dash, stations []stationText) {
	g := readGauge(src.known, src.Unit, src.With, src.Within, report)
	in.SetRadius = readLength(src.SetRadius, limits{0, 1.5}, report)
	g.reads(in.SetRadius)
	cells, stations := readTable(src.Readings.Node, g, report)
	for _, c := range cells {
		if c.missing {
			dashes = append(dashes, Dash{c.z, c.clock})
			continue
		}
		if c.struck {
			in.LeaveOut = append(in.LeaveOut, len(in.Sweeps))
		}
		in.Sweeps = append(in.Sweeps, c.point(g.u))
	}
	return in, dashes, stations
}

func (job *Job) readWeldSurface(src *tableSource, report *source.Report) {
	if src == nil {
		return
	}
	in, dashes, stations := src.sweep(report)
	in.Length = job.Readings.Length
	job.WeldSurface, job.WeldDashes = &in, dashes
	if len(stations) > 0 {
		job.places.weldSurface = stations[0].text
	}
}

func (job *Job) readDiameters(src *tableSource, report *source.Report) {
	if src == nil {
		return
	}
	list, stations := src.diameters(report)
	job.Readings.Diameters = list
	job.places.stations = append(job.places.stations, stations...)
}

// diameters reads a table of inside-micrometer or bore-gauge readings.
func (src *tableSource) diameters(report *source.Report) (list trade.Survey, stations []stationText) {
	if src.SetRadius.Value != "" {
		report.At(src.SetRadius, "diameters have no set radius", "take it out, or write the table under sweep:")
	}
	g := readGauge(src.known, src.Unit, src.With, src.Within, report)
	g.in, g.what = diameters, "a diameter"
	cells, stations := readTable(src.Readings.Node, g, report)
	for _, c := range cells {
		if c.struck {
			report.At(c.text, "a diameter in brackets", "brackets leave an indicator reading out; take a wrong diameter away, or write -")
		}
		if !c.missing {
			list = append(list, c.point(g.u))
		}
	}
	return list, stations
}

func (c *cell) point(u float64) trade.Point {
	if c.m.U > 0 {
		u = c.m.U / bore.Coverage
	}
	return trade.Point{Station: c.z, Clock: c.clock, Read: c.m.Value, U: u}
}

// readTable reads the clock positions under at, then a line for every station:
// one list, or a list of lists where it was read more than once.
func readTable(n source.Node, g gauge, report *source.Report) (cells []cell, stations []stationText) {
	var clocks []float64
	for i, pair := range n.Pairs(report) {
		if pair.Key.Value == "at" {
			clocks = readClocks(pair.Value, report)
			continue
		}
		if i == 0 {
			report.At(pair.Key, "the clock positions come first", "begin the table with at: [12, 3, 6, 9]")
			return nil, nil
		}
		z, err := units.Parse(units.Length, pair.Key.Value, units.Unit{})
		if err == nil {
			err = limits{-1, 10}.check(z)
		}
		if err != nil {
			report.At(pair.Key, err.Error(), "")
			continue
		}
		stations = append(stations, stationText{z.Value, pair.Key})
		for _, line := range lines(pair.Value, report) {
			for _, c := range readLine(line, clocks, g, report) {
				c.z = z.Value
				cells = append(cells, c)
			}
		}
	}
	if len(stations) == 0 && !report.Failed() {
		n.Fail(report, "the table has no stations", "add lines like 0.5 in: [12, -3, 4, 8]")
	}
	return cells, stations
}

// lines are the repeats of one station.
func lines(n source.Node, report *source.Report) []source.Node {
	items := n.Items(report)
	if len(items) > 0 && items[0].IsList() {
		return items
	}
	return []source.Node{n}
}

func readClocks(n source.Node, report *source.Report) []float64 {
	var out []float64
	for _, item := range n.Items(report) {
		text := item.Text(report)
		clock, err := rules.ReadClock(text.Value)
		if err != nil {
			report.At(text, err.Error(), "")
		}
		out = append(out, clock)
	}
	return out
}

func readLine(n source.Node, clocks []float64, g gauge, report *source.Report) []cell {
	items := n.Items(report)
	if len(items) != len(clocks) {
		n.Fail(report, fmt.Sprintf("%d readings for %d clock positions", len(items), len(clocks)), "write - where one could not be taken")
		return nil
	}
	out := make([]cell, 0, len(items))
	for i, item := range items {
		c := readCell(item.Text(report), g, report)
		c.clock = clocks[i]
		out = append(out, c)
	}
	return out
}

func readCell(text source.Text, g gauge, report *source.Report) cell {
	c := cell{text: text}
	body := strings.TrimSpace(text.Value)
	if body == "-" || body == "" {
		c.missing = true
		return c
	}
	if strings.HasPrefix(body, "(") && strings.HasSuffix(body, ")") {
		c.struck, body = true, body[1:len(body)-1]
	}
	var err error
	if c.m, err = units.Parse(units.Length, body, g.unit); err == nil {
		err = g.in.check(c.m)
	}
	if err != nil {
		report.At(text, "as "+g.what+": "+err.Error(), g.hint)
	}
	return c
}
