package weld

import (
	"errors"
	"math"
)

// SteelDensity is the density of mild steel weld metal that the filler tables
// use, 0.283 lb/in³, in kg/m³.
const SteelDensity = 0.283 * 0.45359237 / (inch * inch * inch)

// Process is a way of welding, for what share of the filler stays in the joint.
type Process uint8

// The processes.
const (
	Stick          Process = iota // SMAW, 14 in electrode, 2 in stub thrown away
	StickShort                    // SMAW, 12 in electrode
	StickLong                     // SMAW, 18 in electrode
	SolidWireMixed                // GMAW, argon and oxygen
	SolidWireArCO2                // GMAW, argon and CO2
	SolidWireCO2                  // GMAW, CO2
	MetalCored                    // metal-cored wire
	FluxCoredGas                  // FCAW, gas shielded
	FluxCoredSelf                 // FCAW, self-shielded
	Submerged                     // SAW
)

type processRow struct {
	name       string
	efficiency float64
}

var processes = [...]processRow{
	Stick: {"stick 14 in", 0.62}, StickShort: {"stick 12 in", 0.59}, StickLong: {"stick 18 in", 0.66},
	SolidWireMixed: {"solid wire, argon-oxygen", 0.98}, SolidWireArCO2: {"solid wire, argon-CO2", 0.96}, SolidWireCO2: {"solid wire, CO2", 0.93},
	MetalCored: {"metal-cored wire", 0.93}, FluxCoredGas: {"flux-cored wire, gas", 0.86}, FluxCoredSelf: {"flux-cored wire, self-shielded", 0.78},
	Submerged: {"submerged arc", 0.99},
}

func (p Process) String() string {
	if int(p) >= len(processes) {
		return "unknown process"
	}
	return processes[p].name
}

// Efficiency returns the average deposition efficiency of a process: weld metal
// over filler used, 1. For stick the stub is in it. Error: an unknown process.
// Source: averages in a filler-metal handbook, Calculating Filler Metal Consumption; which value
// belongs to which process is from memory.
func (p Process) Efficiency() (float64, error) {
	if int(p) >= len(processes) {
		return 0, errors.New("unknown welding process")
	}
	return processes[p].efficiency, nil
}

// FillerJob is a volume of weld metal and how it is laid.
type FillerJob struct {
	Volume     float64 // weld metal, m³, 0 to 1
	Density    float64 // kg/m³, 1000 to 20 000; 0: SteelDensity
	Efficiency float64 // deposition efficiency, a ratio, 0.3 to 1
	Rate       float64 // weld metal laid per arc time, kg/s, 1e-6 to 0.05
}

// Filler is what a job uses.
type Filler struct {
	Deposit float64 // kg
	Used    float64 // filler to buy, kg
	ArcTime float64 // s, arc burning; handling is on top
}

// MakeFiller returns filler and arc time for a volume of weld metal.
//
//	m = ρ·V,  used = m/E,  t = m/R
//
// Ranges as in FillerJob. Errors: a *trade.RangeError. Source: a filler-metal handbook, Calculating
// Filler Metal Consumption (P = W·L/E); arithmetic.
func MakeFiller(j FillerJob) (Filler, error) {
	if j.Density == 0 {
		j.Density = SteelDensity
	}
	m, err := DepositMass(j.Volume, j.Density)
	if err != nil {
		return Filler{}, err
	}
	used, err := FillerUsed(m, j.Efficiency)
	if err != nil {
		return Filler{}, err
	}
	t, err := ArcTime(m, j.Rate)
	return Filler{m, used, t}, err
}

// DepositMass returns the mass of weld metal, kg.
//
//	m = ρ·V
//
// volume m³, 0 to 1; density kg/m³, 1000 to 20 000. Errors: a *trade.RangeError.
// Source: definition of density.
func DepositMass(volume, density float64) (float64, error) {
	if err := limVolume.Check(volume); err != nil {
		return 0, err
	}
	if err := limDensity.Check(density); err != nil {
		return 0, err
	}
	return volume * density, nil
}

// FillerUsed returns the filler consumed, kg.
//
//	used = m/E
//
// weld metal m kg, 0 to 10 t; deposition efficiency E, 0.3 to 1. Errors: a
// *trade.RangeError. Source: a filler-metal handbook, Calculating Filler Metal Consumption, P = W·L/E.
func FillerUsed(deposit, efficiency float64) (float64, error) {
	if err := limMass.Check(deposit); err != nil {
		return 0, err
	}
	if err := limEfficiency.Check(efficiency); err != nil {
		return 0, err
	}
	return deposit / efficiency, nil
}

// ArcTime returns how long the arc burns, s.
//
//	t = m/R
//
// weld metal m kg, 0 to 10 t; rate R of weld metal laid, kg/s, 1e-6 to 0.05.
// Errors: a *trade.RangeError. Source: definition of a rate.
func ArcTime(deposit, rate float64) (float64, error) {
	if err := limMass.Check(deposit); err != nil {
		return 0, err
	}
	if err := limRate.Check(rate); err != nil {
		return 0, err
	}
	return deposit / rate, nil
}

// BeadMass returns weld metal per length, kg/m.
//
//	w = A·ρ
//
// cross-section A m², 0 to 0.1 (a fillet: half the product of its legs); density
// ρ kg/m³, 1000 to 20 000. Errors: a *trade.RangeError. Source: a filler-metal handbook,
// Calculating Filler Metal Consumption, ½·B·A·12·ρ in lb/ft.
func BeadMass(area, density float64) (float64, error) {
	if err := limArea.Check(area); err != nil {
		return 0, err
	}
	if err := limDensity.Check(density); err != nil {
		return 0, err
	}
	return area * density, nil
}

// BoreBuildUp returns the volume of weld, m³, in a bore built up from one
// diameter to a smaller one.
//
//	V = π/4·(D₁² − D₂²)·L
//
// worn or trued diameter D₁, m, 5 mm to 3 m; diameter after welding D₂, m, 5 mm
// to less than D₁ (equal gives 0); length L m, 1 mm to 10 m. Errors: a
// *trade.RangeError; a bore that grows by welding. Source: volume of a ring,
// exact; the rule π·D·t is up to t/D wrong.
func BoreBuildUp(before, after, length float64) (float64, error) {
	if err := limWorn.Check(before); err != nil {
		return 0, err
	}
	if err := limWorn.Check(after); err != nil {
		return 0, err
	}
	if err := limLength.Check(length); err != nil {
		return 0, err
	}
	if after > before {
		return 0, errGrows
	}
	return math.Pi / 4 * (before - after) * (before + after) * length, nil
}

var (
	errGrows = errors.New("the diameter after welding is larger than before: they are exchanged")
	errMore  = errors.New("more weld metal came out than filler went in: weigh again")
	errNone  = errors.New("no filler was used")
)

// WireMass returns the mass of wire per length, kg/m.
//
//	w = ρ·π·d²/4
//
// wire diameter d m, 0.3 to 8 mm; density ρ kg/m³, 1000 to 20 000. Errors: a
// *trade.RangeError. Source: geometry; wire tables differ from it by up to 1.2 %.
func WireMass(diameter, density float64) (float64, error) {
	if err := limWire.Check(diameter); err != nil {
		return 0, err
	}
	if err := limDensity.Check(density); err != nil {
		return 0, err
	}
	return density * math.Pi * diameter * diameter / 4, nil
}

// MeltOff returns how much wire melts per time, kg/s; times the deposition
// efficiency it is the deposition rate.
//
//	R = w·v
//
// wire diameter m, 0.3 to 8 mm; feed speed v m/s, 1e-4 to 1; density kg/m³, 1000
// to 20 000. Errors: a *trade.RangeError. Source: conservation of mass.
func MeltOff(diameter, speed, density float64) (float64, error) {
	w, err := WireMass(diameter, density)
	if err != nil {
		return 0, err
	}
	if err := limWireSpeed.Check(speed); err != nil {
		return 0, err
	}
	return w * speed, nil
}

// DepositionRate returns the rate of a bead that was weighed, kg/s.
//
//	R = m/t
//
// weld metal m kg, 0 to 10 t; arc time t s, 1 to 1e6. Errors: a
// *trade.RangeError. Source: deposition-rate test sheet of a maker of filler metal.
func DepositionRate(deposit, time float64) (float64, error) {
	if err := limMass.Check(deposit); err != nil {
		return 0, err
	}
	if err := limTime.Check(time); err != nil {
		return 0, err
	}
	return deposit / time, nil
}

// DepositionEfficiency returns weld metal over filler used, 1.
//
//	E = m/used
//
// both kg, 0 to 10 t. Errors: a *trade.RangeError; no filler; more metal than
// filler. Source: a filler-metal handbook, definition.
func DepositionEfficiency(deposit, used float64) (float64, error) {
	if err := limMass.Check(deposit); err != nil {
		return 0, err
	}
	if err := limMass.Check(used); err != nil {
		return 0, err
	}
	if used == 0 {
		return 0, errNone
	}
	if deposit > used {
		return 0, errMore
	}
	return deposit / used, nil
}
