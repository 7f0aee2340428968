package bar

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Material is what a bar is made of.
type Material struct {
	Name          string
	Modulus       float64 // Pa
	Density       float64 // kg/m³
	UsualOverhang float64 // length over diameter that mostly runs well, 1
	MostOverhang  float64 // length over diameter beyond which it is asking for chatter, 1
	Source        string
}

const toolMaker = "most: a tool maker's catalogue for small-hole bars (2017) p. D86; makers differ"

var materials = [...]Material{
	{"steel", 207e9, 7850, 4, 4, "E: Shigley 9th ed. Table A-5 (restated); " + toolMaker},
	{"heavy metal", 310e9, 17000, 5, 6, "E and density from memory; overhang: " + trade.CommonPractice},
	{"carbide", 550e9, 14500, 6, 10, "E and density from memory; usual: " + trade.CommonPractice + "; " + toolMaker},
}

// MaterialNames lists the bar materials, in the order of their indices.
func MaterialNames() []string {
	return trade.Names(materials[:], func(r Material) string { return r.Name })
}

// MaterialAt returns the bar material at an index of MaterialNames.
//
// Any other index is an error. Sources stand in each Material.
func MaterialAt(index float64) (Material, error) {
	return trade.Row(materials[:], index, "bar material")
}

// Section is a round bar, solid or with a hole through it.
type Section struct {
	Diameter float64 // m
	Bore     float64 // of a hole along its middle, m; 0 for solid
}

func (s Section) check() error {
	if err := cmp.Or(diameterRange.Check(s.Diameter), boreRange.Check(s.Bore)); err != nil {
		return err
	}
	if s.Bore >= s.Diameter {
		return errors.New("the hole through the bar is not smaller than the bar")
	}
	return nil
}

// SecondMoment returns the second moment of area of a round bar.
//
//	I = pi(D⁴ - d⁴)/64
//
// I: m⁴; D diameter, d hole through it: m. Valid for D 0.1 to 24 in, d from 0
// to under D; otherwise an error.
//
// Source: Isakov, "Boring: calculating deflection", Cutting Tool Engineering, July 2019.
func SecondMoment(s Section) (float64, error) {
	if err := s.check(); err != nil {
		return 0, err
	}
	return s.moment(), nil
}

func (s Section) moment() float64 {
	return math.Pi / 64 * (math.Pow(s.Diameter, 4) - math.Pow(s.Bore, 4))
}

// area is the cross section in m².
func (s Section) area() float64 {
	return math.Pi / 4 * (s.Diameter*s.Diameter - s.Bore*s.Bore)
}

// OverhangResult says how an overhang stands against the limits of a material.
type OverhangResult struct {
	Material Material
	Ratio    float64 // overhang over diameter, 1
	Usual    float64 // longest overhang that mostly runs well, m
	Most     float64 // longest overhang to try, m
	Use      float64 // overhang over Most, 1
}

// Overhang returns the longest overhangs for a bar and the share used.
//
//	ratio = L/D; usual = ru·D; most = rm·D; use = L/most
//
// L overhang, D bar diameter: m; ru, rm length-to-diameter limits: 1.
//
// Valid for D 0.1 to 24 in, L 0.1 to 200 in, limits 1 to 20; otherwise an error. Rules of
// thumb: the true limit is StableDepth's. Source: steel 4 and carbide 10 from
// a tool maker's catalogue (small-hole bars; makers differ); the rest common
// practice, no source.
func Overhang(m Material, diameter, overhang float64) (OverhangResult, error) {
	if err := cmp.Or(ratioRange.Check(m.UsualOverhang), ratioRange.Check(m.MostOverhang), diameterRange.Check(diameter), overhangRange.Check(overhang)); err != nil {
		return OverhangResult{}, err
	}
	r := OverhangResult{Material: m, Ratio: overhang / diameter, Usual: m.UsualOverhang * diameter, Most: m.MostOverhang * diameter}
	r.Use = overhang / r.Most
	return r, nil
}

// Steps gives the worked lines of the overhang.
func (r OverhangResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "overhang over diameter", Formula: "L/D", Kind: units.Number, Value: r.Ratio},
		{Name: "longest that mostly runs well, " + r.Material.Name, Formula: r.Material.Source, Kind: units.Length, Value: r.Usual},
		{Name: "longest to try, " + r.Material.Name, Formula: r.Material.Source, Kind: units.Length, Value: r.Most},
		{Name: "share of it used", Formula: "L/most", Kind: units.Ratio, Value: r.Use},
	}
}
