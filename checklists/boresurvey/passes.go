package boresurvey

import (
	"math"

	"gudgeon/rules/source"
	"gudgeon/trade/bar"
	"gudgeon/units"
)

// PassData is the bar and the means to bore the weld to size. Zero means not
// given.
type PassData struct {
	bar.Section
	Material               bar.Material
	Overhang               float64 // of a bar held at one end, m
	Span, Station          float64 // of a bar in two bearings, m
	Work                   bar.Work
	HeavyFeed, LightFeed   float64 // m/rad
	HeavySpeed, LightSpeed float64 // m/s
	Power                  float64 // at the spindle, W
	DepthLimit             float64 // on the radius, m; 0: what cannot chatter
	Light                  float64 // light pass, on the radius, m
	Tolerance              float64 // full width, on the diameter, m; 0: the finish diameter's limits
	Length                 float64 // of the cut, m; 0: the bore's
	Missing                []string

	at, barAt source.Text
}

// What a pass plan takes for granted where the file does not say; common
// practice, no source.
const (
	squareEdge  = math.Pi / 2     // cutting edge to the feed, rad
	pushShare   = 0.5             // of the cutting force, that pushes the bar off
	truingLeast = 0.010 * 0.0254  // that the truing pass takes anywhere, on the radius, m
	lightUsual  = 0.0025 * 0.0254 // light pass on the radius, m: 0.005 in on the diameter
	Damping     = 0.03            // of a bar in its holder
)

// inchTurn is a feed of 1 in/rev, m/rad.
const inchTurn = 0.0254 / (2 * math.Pi)

type passSource struct {
	Diameter   source.Text `yaml:"bar diameter"`
	Hole       source.Text `yaml:"hole through the bar"`
	Material   source.Text `yaml:"bar material"`
	Overhang   source.Text `yaml:"overhang"`
	Span       source.Text `yaml:"span"`
	Station    source.Text `yaml:"station"`
	Work       source.Text `yaml:"work metal"`
	HeavyFeed  source.Text `yaml:"heavy feed"`
	HeavySpeed source.Text `yaml:"heavy speed"`
	LightFeed  source.Text `yaml:"light feed"`
	LightSpeed source.Text `yaml:"light speed"`
	Power      source.Text `yaml:"power at the spindle"`
	DepthLimit source.Text `yaml:"depth limit"`
	LightPass  source.Text `yaml:"light pass"`
	Tolerance  source.Text `yaml:"tolerance"`
	Length     source.Text `yaml:"length of cut"`
}

func (src *passSource) read(report *source.Report) *PassData {
	d := &PassData{at: firstOf(src.HeavyFeed, src.Work, src.Diameter, src.Power), barAt: firstOf(src.Overhang, src.Station, src.Diameter)}
	src.readBar(d, report)
	src.readCut(d, report)
	d.Tolerance = readLength(src.Tolerance, limits{2.54e-6, 0.00254}, report)
	d.Length = readLength(src.Length, limits{0.001, 25}, report)
	return d
}

func (d *PassData) need(there bool, what string) {
	if !there {
		d.Missing = append(d.Missing, "passes: "+what)
	}
}

func (src *passSource) readBar(d *PassData, report *source.Report) {
	d.Diameter = readLength(src.Diameter, limits{0.00254, 0.6}, report)
	d.Bore = readLength(src.Hole, limits{0, 0.6}, report)
	if d.Bore > 0 && d.Bore >= d.Diameter {
		report.At(src.Hole, "the hole is not smaller than the bar", "")
	}
	i, known := readWord(src.Material, bar.MaterialNames(), report)
	d.Material, _ = bar.MaterialAt(float64(i)) // the index is one of its names
	d.need(d.Diameter > 0, "bar diameter")
	d.need(known, "bar material")
	d.Overhang = readLength(src.Overhang, limits{0.00254, 5}, report)
	d.Span, d.Station = readLength(src.Span, limits{0.0254, 25}, report), readLength(src.Station, limits{0.00254, 25}, report)
	switch {
	case src.Overhang.Value != "" && src.Span.Value != "":
		report.At(src.Span, "the bar is held at one end and in two bearings", "keep overhang, or span and station")
	case src.Overhang.Value == "" && src.Span.Value == "":
		d.need(false, "overhang (bar out of its holder), or span and station (between two bearings)")
	case src.Span.Value != "":
		d.need(d.Station > 0, "station (cutter from a bearing, where it is farthest from both)")
	}
	if d.Span > 0 && d.Station >= d.Span {
		report.At(src.Station, "the cutter is not between the bearings", "")
	}
}

func (src *passSource) readCut(d *PassData, report *source.Report) {
	feed := func(text source.Text, name string) float64 {
		v := readQuantity(units.Feed, text, units.Unit{}, limits{0.0002 * inchTurn, 0.2 * inchTurn}, report).Value
		d.need(v > 0, name)
		return v
	}
	speed := func(text source.Text, name string) float64 {
		v := readQuantity(units.Speed, text, units.Unit{}, limits{0.01, 30}, report).Value
		d.need(v > 0, name)
		return v
	}
	i, known := readWord(src.Work, bar.WorkNames(), report)
	d.Work, _ = bar.WorkAt(float64(i)) // the index is one of its names
	d.need(known, "work metal (for weld, a harder row than the part's)")
	d.HeavyFeed, d.HeavySpeed = feed(src.HeavyFeed, "heavy feed"), speed(src.HeavySpeed, "heavy speed")
	d.LightFeed, d.LightSpeed = feed(src.LightFeed, "light feed"), speed(src.LightSpeed, "light speed")
	d.Power = readQuantity(units.Power, src.Power, units.Unit{}, limits{10, 500e3}, report).Value
	d.need(d.Power > 0, "power at the spindle")
	d.DepthLimit = readLength(src.DepthLimit, limits{2.54e-5, 0.0254}, report)
	d.Light = lightUsual
	if src.LightPass.Value != "" {
		d.Light = readLength(src.LightPass, limits{2.54e-5, 0.00254}, report) / 2
	}
}
