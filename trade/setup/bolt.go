package setup

import (
	"cmp"
	"errors"
	"fmt"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Thread says which standard a thread follows; the stress area differs.
type Thread uint8

// The threads, in the order of ThreadNames.
const (
	Unified Thread = iota // UNC, UNF
	Metric                // ISO M
)

// ThreadNames lists the words for Thread.
func ThreadNames() []string { return []string{"unified", "metric"} }

var (
	boltRange   = trade.Between("bolt diameter", 0.19*inch, 4*inch, units.Length, "")
	pitchRange  = trade.Between("thread pitch", 0.3*mm, 10*mm, units.Length, "1 in over the threads per inch")
	torqueRange = trade.Between("torque", 0, 20000, units.Torque, "")
	nutRange    = trade.Between("nut factor", 0.05, 0.5, units.Number, "")
	shareRange  = trade.Between("share of the proof load", 0.1, 0.9, units.Ratio, "more leaves no room for the scatter of a torque wrench")
	countRange  = trade.Between("number of clamps", 1, 50, units.Number, "")
)

// TensileArea returns the tensile stress area of a bolt.
//
//	unified: A = pi/4·(D - 0.9743·P)²;  metric: A = pi/4·(D - 0.9382·P)²
//
// A: m²; D major diameter, P pitch: m.
// Valid for D 0.19 to 4 in, P 0.3 to 10 mm and under D/3; otherwise an error.
//
// Source: ASME B1.1 and ISO 898-1 forms, from memory; agrees with published
// bolt tables for UNC.
func TensileArea(diameter, pitch float64, thread Thread) (float64, error) {
	if err := cmp.Or(boltRange.Check(diameter), pitchRange.Check(pitch)); err != nil {
		return 0, err
	}
	if pitch > diameter/3 {
		return 0, errors.New("the pitch is too coarse for the bolt; give 1 in over the threads per inch")
	}
	depth := 0.9743
	switch thread {
	case Unified:
	case Metric:
		depth = 0.9382
	default:
		return 0, errors.New("the thread is neither unified nor metric")
	}
	d := diameter - depth*pitch
	return math.Pi / 4 * d * d, nil
}

// TensileAreaStrong returns the tensile stress area of a high-strength unified
// bolt from its least pitch diameter.
//
//	A = pi·(E/2 - 0.16238·P)²
//
// A: m²; E least pitch diameter, P pitch: m.
// Valid for E 0.15 to 4 in, P 0.3 to 10 mm; otherwise an error. For steels over
// 100 ksi tensile. Source: published thread tables (boltport.com, UNF).
func TensileAreaStrong(pitchDiameter, pitch float64) (float64, error) {
	if err := cmp.Or(
		trade.InRange("pitch diameter", pitchDiameter, 0.15*inch, 4*inch, units.Length, ""), pitchRange.Check(pitch),
		trade.InRange("thread pitch", pitch, 0, pitchDiameter/3, units.Length, "it is too coarse for the bolt"),
	); err != nil {
		return 0, err
	}
	r := pitchDiameter/2 - 0.16238*pitch
	return math.Pi * r * r, nil
}

// Grade is how strong a bolt is over a range of diameters.
type Grade struct {
	Name     string
	Over, To float64 // diameter, m
	Proof    float64 // Pa
	Yield    float64 // Pa
	Tensile  float64 // Pa
	Source   string
}

const (
	j429  = "SAE J429 (restated)"
	iso   = "ISO 898-1, from memory"
	dust  = 1e-9
	sae2  = "SAE grade 2"
	sae5  = "SAE grade 5"
	sae8  = "SAE grade 8"
	m88   = "class 8.8"
	m109  = "class 10.9"
	m129  = "class 12.9"
	bolts = 6
)

var gradeNames = [bolts]string{sae2, sae5, sae8, m88, m109, m129}

var grades = [...]Grade{
	{sae2, 0.19 * inch, 0.75 * inch, 55 * ksi, 57 * ksi, 74 * ksi, j429},
	{sae5, 0.19 * inch, 1 * inch, 85 * ksi, 92 * ksi, 120 * ksi, j429},
	{sae5, 1 * inch, 1.5 * inch, 74 * ksi, 81 * ksi, 105 * ksi, j429},
	{sae8, 0.19 * inch, 1.5 * inch, 120 * ksi, 130 * ksi, 150 * ksi, j429},
	{m88, 4.9 * mm, 16 * mm, 580 * mpa, 640 * mpa, 800 * mpa, iso},
	{m88, 16 * mm, 39 * mm, 600 * mpa, 660 * mpa, 830 * mpa, iso},
	{m109, 4.9 * mm, 39 * mm, 830 * mpa, 940 * mpa, 1040 * mpa, iso},
	{m129, 4.9 * mm, 39 * mm, 970 * mpa, 1100 * mpa, 1220 * mpa, iso},
}

// GradeNames lists the bolt grades, in the order of their indices.
func GradeNames() []string { return append([]string(nil), gradeNames[:]...) }

// GradeAt returns the strength of a bolt grade, by its index in GradeNames, at
// a diameter in m.
//
// Any other index, and a diameter that the grade's table does not cover (0.19 to
// 1.5 in, 4.9 to 39 mm), is an error. A diameter on a boundary belongs to the
// smaller range. Sources stand in each Grade: SAE J429 (restated); ISO 898-1
// from memory.
func GradeAt(index, diameter float64) (Grade, error) {
	name, err := trade.Row(gradeNames[:], index, "bolt grade")
	if err != nil {
		return Grade{}, err
	}
	if err := boltRange.Check(diameter); err != nil {
		return Grade{}, err
	}
	for _, g := range grades {
		first := g.Over <= 0.2*inch
		if g.Name == name && (diameter > g.Over+dust || first && diameter >= g.Over) && diameter <= g.To+dust {
			return g, nil
		}
	}
	return Grade{}, fmt.Errorf("the table has no %s bolt of that diameter", name)
}

// BoltInput is a bolt to be tightened.
type BoltInput struct {
	Diameter  float64 // m
	Pitch     float64 // m
	Thread    Thread
	Grade     Grade
	NutFactor float64 // torque over (pull × diameter), 1
}

// BoltResult is a bolt under torque. The pull of a torque wrench scatters.
type BoltResult struct {
	In     BoltInput
	Area   float64 // tensile stress area, m²
	Proof  float64 // proof load, N
	Torque float64 // N·m
	Pull   float64 // nominal, N
	Least  float64 // what to count on for holding, N
	Most   float64 // what the bolt may get, N
	Use    float64 // Most over proof load, 1
}

// scatter is how far the pull may be off at a given torque. From memory.
const scatter = 0.30

// Preload returns the pull of a bolt at a torque.
//
//	F = T/(K·d); least = 0.7·F; most = 1.3·F; use = most/(proof·A)
//
// F pull: N; T torque: N·m; K nut factor: 1; d diameter: m; proof: Pa; A tensile
// stress area: m².
//
// K is about 0.20 dry and 0.15 oiled. Valid for T 0 to 20000 N·m, K 0.05 to 0.5,
// the rest as TensileArea; otherwise an error. A use over 1 is an answer: the
// bolt may stretch for good.
//
// Source: published bolt torque tables (T = K·D·P); scatter of 30 % from memory.
func Preload(in BoltInput, torque float64) (BoltResult, error) {
	area, err := TensileArea(in.Diameter, in.Pitch, in.Thread)
	if err != nil {
		return BoltResult{}, err
	}
	if err := cmp.Or(torqueRange.Check(torque), nutRange.Check(in.NutFactor), trade.InRange("proof stress", in.Grade.Proof, 100e6, 3e9, units.Pressure, "")); err != nil {
		return BoltResult{}, err
	}
	r := BoltResult{In: in, Area: area, Proof: in.Grade.Proof * area, Torque: torque}
	r.Pull = torque / (in.NutFactor * in.Diameter)
	r.Least, r.Most = (1-scatter)*r.Pull, (1+scatter)*r.Pull
	r.Use = r.Most / r.Proof
	return r, nil
}

// TorqueFor returns the torque for a share of the proof load, mostly 0.75.
//
//	T = K·d·share·proof·A
//
// As in Preload. Valid for a share of 0.1 to 0.9; otherwise an error.
//
// Source: published bolt torque tables (T = K·D·P, P = 0.75 proof load).
func TorqueFor(in BoltInput, share float64) (BoltResult, error) {
	if err := shareRange.Check(share); err != nil {
		return BoltResult{}, err
	}
	area, err := TensileArea(in.Diameter, in.Pitch, in.Thread)
	if err != nil {
		return BoltResult{}, err
	}
	return Preload(in, in.NutFactor*in.Diameter*share*in.Grade.Proof*area)
}

// Steps gives the worked lines of the bolt.
func (r BoltResult) Steps() []trade.Step {
	return []trade.Step{
		{Name: "tensile stress area", Formula: "A = pi/4·(D - 0.9743·P)², metric 0.9382", Kind: units.Area, Value: r.Area},
		{Name: "proof load, " + r.In.Grade.Name + ", " + r.In.Grade.Source, Formula: "proof·A", Kind: units.Force, Value: r.Proof},
		{Name: "torque", Formula: "T = K·d·F", Kind: units.Torque, Value: r.Torque},
		{Name: "nominal pull", Formula: "F = T/(K·d)", Kind: units.Force, Value: r.Pull},
		{Name: "pull to count on", Formula: "0.7·F", Kind: units.Force, Value: r.Least},
		{Name: "pull the bolt may get", Formula: "1.3·F", Kind: units.Force, Value: r.Most},
		{Name: "share of the proof load", Formula: "most/proof load", Kind: units.Ratio, Value: r.Use},
	}
}
