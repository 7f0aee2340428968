package press

import (
	"gudgeon/trade"
)

// Elastic is how a metal gives under load.
type Elastic struct {
	Modulus float64 // modulus of elasticity, Pa
	Poisson float64 // Poisson's ratio, 1
}

// Strength is the stress that a metal may reach. A ductile metal is judged by
// von Mises stress against yield, a brittle one by hoop stress against its
// tensile strength.
type Strength struct {
	Limit   float64 // Pa
	Brittle bool
}

// Material is one row of the table of metals.
type Material struct {
	Name      string
	Elastic   Elastic
	Strength  Strength
	Expansion float64 // mean near room temperature, 1/K
	Source    string
}

const (
	carbonSteel = "E and nu: Shigley 9th ed. Table A-5 (restated)"
	table20     = "yield: Shigley 9th ed. Table A-20 (restated)"
	callister   = "expansion: Callister, Fundamentals of Materials Science 3rd ed. Table B.6"
	efunda4140  = "yield: efunda, AISI 4140"
)

// materials is in the order of MaterialNames. A value without a source of its
// own is said to be from memory.
var materials = [...]Material{
	{"A36 steel", Elastic{207e9, 0.292}, Strength{36 * ksi, false}, 6.5e-6 * perF,
		carbonSteel + "; yield: AWS D1.1:2015 Table 3.1; " + callister},
	{"1018 hot rolled steel", Elastic{207e9, 0.292}, Strength{32 * ksi, false}, 6.5e-6 * perF,
		carbonSteel + "; " + table20 + "; " + callister + " (1020)"},
	{"1018 cold drawn steel", Elastic{207e9, 0.292}, Strength{54 * ksi, false}, 6.5e-6 * perF,
		carbonSteel + "; " + table20 + "; " + callister + " (1020)"},
	{"1045 hot rolled steel", Elastic{207e9, 0.292}, Strength{45 * ksi, false}, 6.3e-6 * perF,
		carbonSteel + "; " + table20 + "; " + callister + " (1040)"},
	{"1045 cold drawn steel", Elastic{207e9, 0.292}, Strength{77 * ksi, false}, 6.3e-6 * perF,
		carbonSteel + "; " + table20 + "; " + callister + " (1040)"},
	{"4140 annealed steel", Elastic{207e9, 0.292}, Strength{60.5 * ksi, false}, 6.8e-6 * perF,
		carbonSteel + "; " + efunda4140 + "; " + callister},
	{"4140 normalized steel", Elastic{207e9, 0.292}, Strength{95 * ksi, false}, 6.8e-6 * perF,
		carbonSteel + "; " + efunda4140 + "; " + callister},
	{"4140 tempered steel", Elastic{207e9, 0.292}, Strength{121 * ksi, false}, 6.8e-6 * perF,
		carbonSteel + "; " + efunda4140 + ", tempered at 540 °C; " + callister},
	{"gray cast iron", Elastic{100e9, 0.211}, Strength{25 * ksi, true}, 6.3e-6 * perF,
		"E and nu: Shigley 9th ed. Table A-5 (restated); tensile strength: ASTM A48 class 25; " + callister},
	{"ductile iron 60-40-18", Elastic{169e9, 0.275}, Strength{40 * ksi, false}, 6.2e-6 * perF,
		"E and nu from memory; yield: the grade's name; " + callister},
	{"C93200 bearing bronze", Elastic{14.5e6 * psi, 0.34}, Strength{14 * ksi, false}, 10.0e-6 * perF,
		"E, expansion and yield (the least of sand, centrifugal and continuous casting): C93200 data sheet; nu of bronze: Gere, Mechanics of Materials (restated)"},
}

// MaterialNames lists the metals of the table, in the order of their indices.
func MaterialNames() []string {
	return trade.Names(materials[:], func(r Material) string { return r.Name })
}

// MaterialAt returns the metal at an index of MaterialNames.
//
// The index is a whole number from 0 to len(MaterialNames())-1; anything else
// is an error. Sources stand in each Material.
func MaterialAt(index float64) (Material, error) {
	return trade.Row(materials[:], index, "metal")
}

// metalParam makes the parameter that picks a metal.
func metalParam(name, about string) trade.Param {
	return trade.Choice(name, about, MaterialNames()...)
}

// or returns the typed-in value, or the table's when none was typed (0).
func or(typed, table float64) float64 {
	if typed == 0 {
		return table
	}
	return typed
}
