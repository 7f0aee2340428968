package boresurvey

import (
	"fmt"
	"math"

	"gudgeon/rules"
	"gudgeon/rules/source"
	"gudgeon/trade/bore"
)

// Centre is a feature that the true centre could be taken from, with its sweep.
type Centre struct {
	Name    string
	Feature bore.Feature
	Sweep   bore.Readings // at one station
	GoodTo  float64       // how well the feature is known to lie on the true centre, k = 2, m

	at source.Text
}

type centreSource struct {
	Feature   source.Text `yaml:"feature,required"`
	Name      source.Text `yaml:"name"`
	SetRadius source.Text `yaml:"set radius"`
	Unit      source.Text `yaml:"unit"`
	With      source.Text `yaml:"with"`
	Within    source.Text `yaml:"within"`
	GoodTo    source.Text `yaml:"good to"`
	At        node        `yaml:"at,required"`
	Reads     node        `yaml:"reads,required"`

	known rules.Instruments
}

func (src *centreSource) read(report *source.Report) Centre {
	c := Centre{Name: src.Name.Value, at: src.Feature, GoodTo: readLength(src.GoodTo, limits{0, 0.1}, report)}
	var ok bool
	if c.Feature, ok = featureNamed(src.Feature.Value); !ok && src.Feature.Value != "" {
		report.At(src.Feature, "this is not a feature that is known here", source.Suggest(src.Feature.Value, featureNames()))
	}
	if c.Name == "" {
		c.Name = c.Feature.String()
	}
	g := readGauge(src.known, src.Unit, src.With, src.Within, report)
	c.Sweep.SetRadius = readLength(src.SetRadius, limits{0, 1.5}, report)
	g.reads(c.Sweep.SetRadius)
	if src.At.IsEmpty() || src.Reads.IsEmpty() {
		return c // said already
	}
	clocks := readClocks(src.At.Node, report)
	for _, line := range lines(src.Reads.Node, report) {
		for i, cell := range readLine(line, clocks, g, report) {
			cell.clock = clocks[i]
			switch {
			case cell.missing:
			case cell.struck:
				report.At(cell.text, "a reading in brackets", "leave it out here: write -")
			default:
				c.Sweep.Sweeps = append(c.Sweep.Sweeps, cell.point(g.u))
			}
		}
	}
	return c
}

func features() (list []bore.Feature) {
	for f := bore.OutsideOfBoss; f <= bore.OtherFeature; f++ {
		list = append(list, f)
	}
	return list
}

func featureNames() (names []string) {
	for _, f := range features() {
		names = append(names, f.String())
	}
	return names
}

func featureNamed(name string) (bore.Feature, bool) {
	for _, f := range features() {
		if f.String() == name {
			return f, true
		}
	}
	return bore.OtherFeature, false
}

// leastU keeps a perfect sweep, as of a typed-in example, from being taken for
// perfect knowledge: half a tenth of a thou.
const leastU = 0.05e-3 * 0.0254

// candidate is the centre that the sweep shows.
func (c *Centre) candidate() (bore.Candidate, error) {
	s, err := bore.Survey(c.Sweep)
	if err != nil {
		return bore.Candidate{}, mistake(c.at, fmt.Errorf("%s: %w", c.Name, plainStation(err)))
	}
	st := &s.Stations[0]
	xx, _, yy := st.Cov()
	u := math.Sqrt(max(xx, yy) + c.GoodTo*c.GoodTo/(bore.Coverage*bore.Coverage))
	return bore.Candidate{Name: c.Name, Feature: c.Feature, Centre: st.Circle.Centre, U: max(u, leastU)}, nil
}

// plainStation takes the station away from an error: a centre has only one.
func plainStation(err error) error {
	if station, ok := err.(*bore.StationError); ok {
		return station.Err
	}
	return err
}
