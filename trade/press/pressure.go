package press

import (
	"cmp"
	"errors"
	"math"

	"gudgeon/trade"
	"gudgeon/units"
)

// Joint is a bushing (or solid pin) in a round hub.
type Joint struct {
	Diameter     float64 // of the interface, m
	BushingBore  float64 // m; 0 for a solid pin
	HubDiameter  float64 // outside diameter of the hub, m
	Interference float64 // on diameter, m
	Hub, Bushing Elastic
}

const (
	thinnestHub     = 1.2   // hub outside diameter over interface diameter
	thinnestBushing = 0.96  // bushing bore over interface diameter
	mostStrain      = 0.005 // interference over interface diameter
)

// check refuses a joint that the thick-cylinder formula does not describe.
// The limits of wall and strain are common practice, no source.
func (j Joint) check() error {
	if err := cmp.Or(
		diameterRange.Check(j.Diameter), boreRange.Check(j.BushingBore),
		hubRange.Check(j.HubDiameter), interferenceRange.Check(j.Interference),
		modulusRange.Check(j.Hub.Modulus), poissonRange.Check(j.Hub.Poisson),
		modulusRange.Check(j.Bushing.Modulus), poissonRange.Check(j.Bushing.Poisson),
	); err != nil {
		return err
	}
	if j.BushingBore >= j.Diameter {
		return errors.New("the bushing's bore is not smaller than its outside diameter; check which is which")
	}
	if j.HubDiameter <= j.Diameter {
		return errors.New("the hub's outside diameter is not larger than the bore it is pressed on; check which is which")
	}
	return cmp.Or(
		trade.InRange("bushing bore", j.BushingBore, 0, thinnestBushing*j.Diameter, units.Length,
			"a thinner bushing buckles inward before it grips"),
		trade.InRange("hub outside diameter", j.HubDiameter, thinnestHub*j.Diameter, math.Inf(1), units.Length,
			"a thin ear stretches and bends like a strap; the ring formula would promise a grip it does not have"),
		trade.InRange("interference", j.Interference, 0, mostStrain*j.Diameter, units.Length,
			"more than 5 thou per inch of diameter yields any bushing or boss; check that it is on diameter"),
	)
}

// PressureResult is the state of an elastic press fit.
type PressureResult struct {
	In               Joint
	HubGive          float64 // share of diameter that the hub's bore grows per pressure, 1/Pa
	BushingGive      float64 // share of diameter that the bushing shrinks per pressure, 1/Pa
	Pressure         float64 // between the two, Pa
	HubHoop          float64 // hoop stress at the hub's bore, tension positive, Pa
	HubVonMises      float64 // at the hub's bore, Pa
	BushingHoop      float64 // hoop stress at the bushing's outside, Pa
	BushingHoopBore  float64 // hoop stress at its bore (for a solid pin: everywhere), Pa
	BushingOutsideVM float64 // von Mises at the bushing's outside, Pa
	BushingVonMises  float64 // worst von Mises in the bushing, Pa
	CloseIn          float64 // how much the bushing's bore closes, on diameter, m
	BoreAfter        float64 // bushing bore once pressed in, m
	HubGrowth        float64 // how much the hub's outside grows, on diameter, m
	BushingSqueeze   float64 // how much the bushing's outside shrinks, on diameter, m
	CloseInShare     float64 // close-in over interference, 1; 0 for a solid pin
}

// Pressure returns the pressure, stresses and bore close-in of a press fit of
// two materials, both elastic, neither longer than the other, free of end load.
//
//	p = delta / ( D [ (1/Eh)((Dh²+D²)/(Dh²-D²)+nuh) + (1/Eb)((D²+d²)/(D²-d²)-nub) ] )
//	hub hoop at its bore      = p (Dh²+D²)/(Dh²-D²)
//	bushing hoop, outside     = -p (D²+d²)/(D²-d²);  at its bore = -2 p D²/(D²-d²)
//	close-in of bushing bore  = 2 p D² d / (Eb (D²-d²)), on diameter
//
// p pressure, E modulus, hoop stress: Pa; D interface, d bushing bore, Dh hub
// outside diameter, delta interference on diameter, close-in on diameter: m;
// nu Poisson's ratio: 1.
//
// Valid for D 0.1 to 80 in, d from 0 (solid) to 0.96 D, Dh from 1.2 D,
// delta from 0 to 0.005 D, E 5 to 700 GPa, nu 0.1 to 0.45. Outside it, or with
// diameters in the wrong order, an error. The wall and strain limits are
// common practice, no source.
//
// Source: Shigley 9th ed. eq. 3-56 (pressure); thick-cylinder theory of Lamé in
// plane stress (stress, close-in).
func Pressure(j Joint) (PressureResult, error) {
	if err := j.check(); err != nil {
		return PressureResult{}, err
	}
	return pressureOf(j), nil
}

func pressureOf(j Joint) PressureResult {
	D2, b2, h2 := j.Diameter*j.Diameter, j.BushingBore*j.BushingBore, j.HubDiameter*j.HubDiameter
	hub, bush := (h2+D2)/(h2-D2), (D2+b2)/(D2-b2)

	r := PressureResult{In: j}
	r.HubGive = (hub + j.Hub.Poisson) / j.Hub.Modulus
	r.BushingGive = (bush - j.Bushing.Poisson) / j.Bushing.Modulus
	p := j.Interference / (j.Diameter * (r.HubGive + r.BushingGive))
	r.Pressure = p

	r.HubHoop = p * hub
	r.HubVonMises = vonMises(r.HubHoop, -p)
	r.BushingHoop = -p * bush
	r.BushingOutsideVM = vonMises(r.BushingHoop, -p)
	// A solid pin has no free surface inside, so no doubling of the hoop stress there.
	r.BushingHoopBore, r.BushingVonMises = -p, p
	if j.BushingBore > 0 {
		r.BushingHoopBore = -2 * p * D2 / (D2 - b2)
		r.BushingVonMises = -r.BushingHoopBore
	}

	r.CloseIn = 2 * p * D2 * j.BushingBore / (j.Bushing.Modulus * (D2 - b2))
	r.BoreAfter = j.BushingBore - r.CloseIn
	r.HubGrowth = 2 * p * D2 * j.HubDiameter / (j.Hub.Modulus * (h2 - D2))
	r.BushingSqueeze = p * r.BushingGive * j.Diameter
	if j.Interference > 0 {
		r.CloseInShare = r.CloseIn / j.Interference
	}
	return r
}

// vonMises joins two principal stresses of plane stress.
func vonMises(a, b float64) float64 { return math.Sqrt(a*a - a*b + b*b) }

// Steps gives the worked lines of the pressure.
func (r PressureResult) Steps() []trade.Step {
	d := r.In.Diameter
	return []trade.Step{
		{Name: "hub gives per unit of pressure", Formula: "Gh = D·((Dh²+D²)/(Dh²-D²)+nuh)/Eh × 1 ksi", Kind: units.Length, Value: r.HubGive * d * ksi, Unit: "thou"},
		{Name: "bushing gives per unit of pressure", Formula: "Gb = D·((D²+d²)/(D²-d²)-nub)/Eb × 1 ksi", Kind: units.Length, Value: r.BushingGive * d * ksi, Unit: "thou"},
		{Name: "interference pressure", Formula: "p = delta/(Gh+Gb) × 1 ksi", Kind: units.Pressure, Value: r.Pressure, Unit: "psi"},
		{Name: "hub hoop stress at its bore", Formula: "p(Dh²+D²)/(Dh²-D²)", Kind: units.Pressure, Value: r.HubHoop, Unit: "ksi"},
		{Name: "hub von Mises stress at its bore", Formula: "√(s²+s·p+p²), s the hoop stress", Kind: units.Pressure, Value: r.HubVonMises, Unit: "ksi"},
		{Name: "bushing hoop stress at its bore", Formula: "-2pD²/(D²-d²); solid pin: -p", Kind: units.Pressure, Value: r.BushingHoopBore, Unit: "ksi"},
		{Name: "bushing bore closes in, on diameter", Formula: "2pD²d/(Eb(D²-d²))", Kind: units.Length, Value: r.CloseIn, Unit: "thou"},
		{Name: "hub grows outside, on diameter", Formula: "2pD²Dh/(Eh(Dh²-D²))", Kind: units.Length, Value: r.HubGrowth, Unit: "thou"},
	}
}
