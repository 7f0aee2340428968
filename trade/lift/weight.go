package lift

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
)

// materials lists densities in kg/m³. Where sources differ the heavier is
// kept, because a weight that is guessed low is the dangerous one.
var materials = []material{
	{"steel", 7850},
	{"stainless steel", 8000},
	{"cast iron", 7600},
	{"aluminium", 2700},
	{"bronze", 8900},
	{"brass", 8900},
	{"copper", 8970},
	{"zinc", 7130},
	{"lead", 11340},
	{"concrete", 2403},
	{"wood", 801},
	{"water", 1000},
	{"oil", 929},
	{"sand or gravel", 1922},
}

type material struct {
	name    string
	density float64
}

// Materials lists the names that Density knows.
func Materials() []string {
	return trade.Names(materials, func(m material) string { return m.name })
}

// Density gives the density in kg/m³ of a material by name (see Materials).
//
// Sources: steel 7850 (Hibbeler, Statics 14th ed. prob. 9-89); cast iron, brass and
// zinc from a drive maker's handbook table, upper values; aluminium likewise;
// copper, concrete, wood, oil and sand from a rigging trainer's table in lb/ft³
// (560, 150, 50, 58, 120); stainless steel, bronze and lead from memory; water
// 1000, the rounded physical value. An unknown name is an error.
func Density(material string) (float64, error) {
	for _, m := range materials {
		if m.name == material {
			return m.density, nil
		}
	}
	return 0, errors.New("no density is known for " + material + ": give the density itself")
}

// BlockWeight is the mass in kg of a rectangular block or plate,
// W = length·width·height·density.
//
// length, width, height: m, 0.5 mm to 50 m; density: kg/m³, 100 to 25 000. Out
// of range is an error. Source: geometry.
func BlockWeight(length, width, height, density float64) (float64, error) {
	err := cmp.Or(lengthRange.CheckAs("length", length), lengthRange.CheckAs("width", width),
		lengthRange.CheckAs("height", height), densityRange.CheckAs("density", density))
	if err != nil {
		return 0, err
	}
	return length * width * height * density, nil
}

// BossWeight is the mass in kg of a round bar, disc, boss or tube,
// W = π/4·(outside² − bore²)·length·density.
//
// outside, length: m, 0.5 mm to 50 m; bore: m, 0 (solid) to less than outside;
// density: kg/m³, 100 to 25 000. Out of range, or a bore that leaves no wall,
// is an error. Source: geometry.
func BossWeight(outside, bore, length, density float64) (float64, error) {
	err := cmp.Or(lengthRange.CheckAs("outside diameter", outside), boreRange.CheckAs("bore", bore),
		lengthRange.CheckAs("length", length), densityRange.CheckAs("density", density))
	if err != nil {
		return 0, err
	}
	if bore >= outside {
		return 0, errors.New("the bore is not smaller than the outside diameter")
	}
	return math.Pi / 4 * (outside - bore) * (outside + bore) * length * density, nil
}

// GussetWeight is the mass in kg of a triangular plate,
// W = base·height·thickness·density/2. Its centre lies a third of the way in
// from the base and from the upright side.
//
// base, height, thickness: m, 0.5 mm to 50 m; density: kg/m³, 100 to 25 000.
// Out of range is an error. Source: geometry.
func GussetWeight(base, height, thickness, density float64) (float64, error) {
	w, err := BlockWeight(base, height, thickness, density)
	return w / 2, err
}

// WeightByLength is the mass in kg of a bar, pipe or shape whose weight per
// length is listed, W = perLength·length.
//
// perLength: kg/m, 0.01 to 50 000; length: m, 0.5 mm to 50 m. Out of range is
// an error. Source: definition.
func WeightByLength(perLength, length float64) (float64, error) {
	err := cmp.Or(perLengthRange.CheckAs("weight per length", perLength), lengthRange.CheckAs("length", length))
	return perLength * length, err
}
