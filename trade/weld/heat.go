package weld

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// Category is the class of steel and process in the preheat table.
type Category uint8

// The categories of AWS D1.1, in short.
const (
	CategoryA Category = iota // stick electrodes that are not low-hydrogen
	CategoryB                 // low-hydrogen stick, submerged arc, solid, metal- and flux-cored wire
	CategoryC                 // the same on the higher-strength steels of the table
)

func (c Category) String() string {
	if int(c) >= len(categoryNames) {
		return "unknown category"
	}
	return categoryNames[c]
}

var categoryNames = [...]string{"A", "B", "C"}

// The rows end at 3/4, 1-1/2 and 2-1/2 in; the end belongs to the row.
var (
	preheatEnds = [...]float64{0.75 * inch, 1.5 * inch, 2.5 * inch}
	preheatF    = [...][4]float64{{32, 150, 225, 300}, {32, 50, 150, 225}, {50, 150, 225, 300}}
)

// Preheat returns the least preheat and interpass temperature, K, for a steel of
// the table.
//
//	A: 32, 150, 225, 300 °F   B: 32, 50, 150, 225 °F   C: 50, 150, 225, 300 °F
//	for the thickest part to 3/4, to 1-1/2, to 2-1/2 in, and over
//
// thickness m, 1 mm to 1 m; exactly 3/4 in is in the first row. Base metal below
// 32 °F is first warmed to 70 °F (from memory). For steels outside the table,
// such as hardenable bar and castings, it is no answer: follow a qualified
// procedure. Errors: a *trade.RangeError, an unknown category. Source: AWS
// D1.1:2015 Table 3.3, A and B also US Army TI 809-26 (2000) Table 3-1, as
// restated; C from a single restatement.
func Preheat(c Category, thickness float64) (float64, error) {
	if int(c) >= len(preheatF) {
		return 0, errCategory
	}
	if err := limBase.Check(thickness); err != nil {
		return 0, err
	}
	row := 0
	for row < len(preheatEnds) && thickness > preheatEnds[row]*(1+1e-9) { // 1e-9: 19.05 mm is 3/4 in
		row++
	}
	return fahrenheit(preheatF[c][row]), nil
}

var errCategory = errors.New("the preheat category must be A, B or C")

func fahrenheit(f float64) float64 { return (f + 459.67) * 5 / 9 }

// HeatInput returns the energy of the arc per length of bead, J/m.
//
//	H = η·V·I/S  (in kJ/in: 0.06·V·I/S with S in in/min, η = 1)
//
// voltage 5 to 100 V, current 5 to 2000 A, travel speed 1e-4 to 0.2 m/s; arc
// efficiency η 0.2 to 1, 1 in the AWS and ASME formula. Errors: a
// *trade.RangeError. Source: AWS D1.1 and D1.5, ASME IX, as restated.
func HeatInput(voltage, current, travel, efficiency float64) (float64, error) {
	if err := limVoltage.Check(voltage); err != nil {
		return 0, err
	}
	if err := limCurrent.Check(current); err != nil {
		return 0, err
	}
	if err := limTravel.Check(travel); err != nil {
		return 0, err
	}
	if err := limArcShare.Check(efficiency); err != nil {
		return 0, err
	}
	return efficiency * voltage * current / travel, nil
}

// Caution is something that hurts people or the repair.
type Caution uint8

// The cautions.
const (
	FollowProcedure Caution = iota
	Hydrogen
	Hardenable
	OutsideTable
	Galvanised
	ClosedCavity
	Hoses
	FireWatch
	Fume
	ColdMetal
)

var cautionText = [...]string{
	FollowProcedure: "The welding procedure and the code that apply at the place govern; this is arithmetic, not a procedure.",
	Hydrogen:        "Hydrogen cracks the heat-affected zone hours after welding: low-hydrogen filler kept dry, no oil, rust or damp, preheat held between layers, slow cooling.",
	Hardenable:      "This steel hardens beside the weld: preheat well above the table by a qualified procedure, cool slowly under a blanket, expect hard spots under the tool.",
	OutsideTable:    "The preheat table is for listed structural steels; for this steel it is a floor, not an answer.",
	Galvanised:      "Zinc fume makes people ill and zinc cracks welds: take the coating off well back, and draw the fume away.",
	ClosedCavity:    "Never heat a closed cylinder, tank or cavity, or one that holds oil: it can burst. Open it, drain it and vent it first.",
	Hoses:           "Take hoses, seals, greases and wiring away from the heat, and release pressure first.",
	FireWatch:       "Clear what burns, keep an extinguisher at hand and watch for at least half an hour after the last arc (29 CFR 1910.252, from memory), longer if the site says so.",
	Fume:            "Draw the fume away from the face; inside a bore or boss it gathers.",
	ColdMetal:       "Metal below freezing is wet with frost: warm it to 70 °F first.",
}

func (c Caution) String() string {
	if int(c) >= len(cautionText) {
		return ""
	}
	return cautionText[c]
}

// HeatJob is a part to be welded.
type HeatJob struct {
	Steel     Composition
	Category  Category
	Thickness float64 // of the thickest part at the joint, m, 1 mm to 1 m
	Cast      bool
	Coated    bool    // galvanised or otherwise zinc-coated
	Cavity    bool    // a cylinder, tank or closed cavity is part of it or near
	Hoses     bool    // hoses, seals or wiring are near
	Metal     float64 // temperature of the metal now, K; 0: not known
}

// Advice is what heat the part wants, and what to mind.
type Advice struct {
	CE, CESi, Pcm float64 // shares by mass; three scales, not to be mixed
	Weldability   Weldability
	Preheat       float64 // least, also between layers, K
	Cautions      []Caution
}

// Advise returns carbon equivalents, the table's preheat and the cautions.
//
// Formulas, ranges and sources are those of CarbonEquivalent, CarbonEquivalentSi,
// Pcm, WeldabilityOf and Preheat; metal temperature 200 to 1000 K. The caution of
// hydrogen comes with CategoryA or CE over 0.40 %, that of hardening and of being
// outside the table with CE over 0.45 % (common practice, no source). Errors: a
// *trade.RangeError.
func Advise(j HeatJob) (Advice, error) {
	var a Advice
	var err error
	if a.CE, err = CarbonEquivalent(j.Steel); err != nil {
		return Advice{}, err
	}
	a.CESi, _ = CarbonEquivalentSi(j.Steel) // the same checks have passed
	a.Pcm, _ = Pcm(j.Steel)
	if a.Weldability, err = WeldabilityOf(a.CE); err != nil {
		return Advice{}, err
	}
	if a.Preheat, err = Preheat(j.Category, j.Thickness); err != nil {
		return Advice{}, err
	}
	if j.Metal != 0 {
		if err := trade.InRange("metal temperature", j.Metal, 200, 1000, units.Temperature, ""); err != nil {
			return Advice{}, err
		}
	}
	a.Cautions = j.cautions(a.CE)
	return a, nil
}

func (j *HeatJob) cautions(ce float64) []Caution {
	out := []Caution{FollowProcedure}
	add := func(yes bool, c Caution) {
		if yes {
			out = append(out, c)
		}
	}
	hard := ce > 0.0045
	add(j.Category == CategoryA || ce > 0.0040, Hydrogen)
	add(hard, Hardenable)
	add(hard || j.Cast, OutsideTable)
	add(j.Metal != 0 && j.Metal < fahrenheit(32), ColdMetal)
	add(j.Cavity, ClosedCavity)
	add(j.Hoses, Hoses)
	add(j.Coated, Galvanised)
	return append(out, FireWatch, Fume)
}
