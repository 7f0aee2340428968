package boresurvey

import (
	"fmt"
	"math"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade/weld"
	"gudgeon/units"
)

// PlanData is how the bore is meant to be built up. Zero means not given.
type PlanData struct {
	weld.Job
	Size          Size    // Finish with its limits
	BuildUpWithin float64 // how even the build-up is, k = 2, m
	Process       weld.Process
	ProcessNamed  bool
	Rate          float64 // weld metal laid per arc time, kg/s
	Missing       []string
}

type planSource struct {
	Finish        source.Text   `yaml:"finish diameter"`
	Allowance     source.Text   `yaml:"clean-up allowance"`
	Truing        source.Text   `yaml:"truing bore"`
	Boss          source.Text   `yaml:"boss diameter"`
	LeastWall     source.Text   `yaml:"least wall"`
	LeastWeld     source.Text   `yaml:"least weld"`
	Layer         source.Text   `yaml:"layer"`
	Layers        source.Text   `yaml:"layers"`
	BuildUp       source.Text   `yaml:"build-up"`
	BuildUpWithin source.Text   `yaml:"build-up within"`
	HandLayer     source.Text   `yaml:"hand layer"`
	HandWeld      []patchSource `yaml:"hand weld"`
	Process       source.Text   `yaml:"process"`
	Rate          source.Text   `yaml:"rate"`

	first source.Text
}

type patchSource struct {
	From      source.Text `yaml:"from,required"`
	To        source.Text `yaml:"to,required"`
	DepthFrom source.Text `yaml:"depth from,required"`
	DepthTo   source.Text `yaml:"depth to,required"`
	Thickness source.Text `yaml:"thickness,required"`
	Layer     source.Text `yaml:"layer"`
}

var (
	thin      = limits{0, 0.1}   // anything measured on the radius, m
	diameters = limits{0.005, 3} // of a bore, m
)

func (src *planSource) read(report *source.Report) *PlanData {
	length := func(text source.Text, in limits) float64 { return readLength(text, in, report) }
	p := &PlanData{BuildUpWithin: length(src.BuildUpWithin, thin)}
	p.Size = readSize(src.Finish, diameters, report)
	p.Finish = p.Size.Nominal
	p.Allowance = length(src.Allowance, limits{0, 0.02})
	p.Truing = length(src.Truing, limits{0, 3})
	p.Boss = length(src.Boss, limits{0, 6})
	p.LeastWall, p.LeastWeld = length(src.LeastWall, thin), length(src.LeastWeld, thin)
	p.Layer, p.HandLayer = length(src.Layer, limits{0.0002, 0.012}), length(src.HandLayer, limits{0.0002, 0.012})
	p.BuildUp = length(src.BuildUp, thin)
	p.Layers = src.layers(report)
	for i := range src.HandWeld {
		p.HandWeld = append(p.HandWeld, src.HandWeld[i].read(report))
	}
	p.Rate = readQuantity(units.MassRate, src.Rate, units.Unit{}, limits{1e-6, 0.05}, report).Value
	if src.Process.Value != "" {
		p.Process, p.ProcessNamed = processNamed(src.Process.Value)
		if !p.ProcessNamed {
			report.At(src.Process, "this is not a process that is known here", source.Suggest(src.Process.Value, processNames()))
		}
	}
	p.missing(src)
	src.first = firstOf(src.Finish, src.Truing, src.Allowance, src.Layer, src.Boss, src.Layers)
	return p
}

// missing lists what no plan can be made without.
func (p *PlanData) missing(src *planSource) {
	need := func(there bool, what string) {
		if !there {
			p.Missing = append(p.Missing, what)
		}
	}
	need(p.Finish > 0, "finish diameter")
	need(src.Allowance.Value != "", "clean-up allowance (metal under the finish cut, on the radius)")
	need(p.Layer > 0, "layer (build-up of one layer, on the radius)")
	need(src.Layers.Value != "" || p.BuildUp > 0, "layers (how many all over), or build-up")
}

func (src *planSource) layers(report *source.Report) int {
	n := readQuantity(units.Number, src.Layers, units.Usual(units.Number, units.InchShop), limits{0, 60}, report).Value
	if n != math.Trunc(n) {
		report.At(src.Layers, "the number of layers must be a whole number", "")
	}
	return int(n)
}

func (src *patchSource) read(report *source.Report) weld.Patch {
	p := weld.Patch{Layer: 1, Thickness: readLength(src.Thickness, thin, report)}
	p.From, p.To = clockOf(src.From, report), clockOf(src.To, report)
	if p.From == p.To { // all round
		p.From, p.To = 0, 2*math.Pi
	}
	p.DepthFrom, p.DepthTo = readLength(src.DepthFrom, limits{-1, 10}, report), readLength(src.DepthTo, limits{-1, 10}, report)
	if p.DepthTo < p.DepthFrom {
		report.At(src.DepthTo, fmt.Sprintf("the weld ends at %s, before it begins", src.DepthTo), "write the lesser depth first")
	}
	if src.Layer.Value != "" {
		p.Layer = int(readQuantity(units.Number, src.Layer, units.Usual(units.Number, units.InchShop), limits{1, 40}, report).Value)
	}
	return p
}

func clockOf(text source.Text, report *source.Report) float64 {
	if text.Value == "" {
		return 0 // said already
	}
	clock, err := rules.ReadClock(text.Value)
	if err != nil {
		report.At(text, err.Error(), "")
	}
	return clock
}

func processes() (list []weld.Process) {
	for p := weld.Stick; p <= weld.Submerged; p++ {
		list = append(list, p)
	}
	return list
}

func processNames() (names []string) {
	for _, p := range processes() {
		names = append(names, p.String())
	}
	return names
}

func processNamed(name string) (weld.Process, bool) {
	for _, p := range processes() {
		if p.String() == name {
			return p, true
		}
	}
	return weld.Stick, false
}
