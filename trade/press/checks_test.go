package press

import (
	"fmt"
	"math"
	"testing"

	"gudgeon/trade/outside"
)

func TestChecks(t *testing.T) { outside.Run(t, "press", checks()) }

func checks() []outside.Check {
	list := sameMetalChecks()
	list = append(list, twoMetalChecks()...)
	list = append(list, handbookChecks()...)
	list = append(list, temperatureChecks()...)
	list = append(list, ramChecks()...)
	return append(list, metalChecks()...)
}

const (
	mm  = 0.001
	mpa = 1e6
)

// of reads one figure of a joint.
func of(j Joint, figure func(PressureResult) float64) func() (float64, error) {
	return func() (float64, error) {
		r, err := Pressure(j)
		return figure(r), err
	}
}

func in(unit float64, figure func(PressureResult) float64) func(PressureResult) float64 {
	return func(r PressureResult) float64 { return figure(r) / unit }
}

func pressure(r PressureResult) float64        { return r.Pressure }
func hubHoop(r PressureResult) float64         { return r.HubHoop }
func hubVonMises(r PressureResult) float64     { return r.HubVonMises }
func bushingHoop(r PressureResult) float64     { return r.BushingHoop }
func bushingHoopBore(r PressureResult) float64 { return r.BushingHoopBore }
func closeIn(r PressureResult) float64         { return r.CloseIn }
func closeInShare(r PressureResult) float64    { return r.CloseInShare }

func solid(d, hub, delta, modulus float64) Joint {
	e := Elastic{modulus, 0.3} // the same on both sides: Poisson's ratio cancels
	return Joint{Diameter: d, HubDiameter: hub, Interference: delta, Hub: e, Bushing: e}
}

func sameMetalChecks() []outside.Check {
	const manual = "Shigley 8th ed. instructor's solutions, ch. 3 "
	const book = "Shigley 8th ed. instructor's solutions, 5-35"
	pf1 := solid(1*inch, 2*inch, 0.002*inch, 30e6*psi)
	pf6 := Joint{Diameter: 50 * mm, BushingBore: 25 * mm, HubDiameter: 75 * mm, Interference: 0.02 * mm, Hub: Elastic{207e9, 0.3}, Bushing: Elastic{207e9, 0.3}}
	return []outside.Check{
		{"PF-1", "solid shaft, same metal: pressure", manual + "3-68", outside.Published, "psi", 22500, 50, of(pf1, in(psi, pressure))},
		{"PF-1", "hub hoop stress", manual + "3-68", outside.Published, "psi", 37500, 100, of(pf1, in(psi, hubHoop))},
		{"PF-1", "shaft hoop stress is -p everywhere", manual + "3-68", outside.Published, "psi", -22500, 50, of(pf1, in(psi, bushingHoopBore))},
		{"PF-2", "40 mm, most interference", manual + "3-64", outside.Published, "MPa", 114.5, 0.1, of(solid(40*mm, 80*mm, 0.059*mm, 207e9), in(mpa, pressure))},
		{"PF-2", "40 mm, least interference", manual + "3-64", outside.Published, "MPa", 34.9, 0.1, of(solid(40*mm, 80*mm, 0.018*mm, 207e9), in(mpa, pressure))},
		{"PF-4", "40 mm H7/u6, most", manual + "3-66", outside.Published, "MPa", 147.5, 0.1, of(solid(40*mm, 80*mm, 0.076*mm, 207e9), in(mpa, pressure))},
		{"PF-4", "40 mm H7/u6, least", manual + "3-66", outside.Published, "MPa", 67.9, 0.1, of(solid(40*mm, 80*mm, 0.035*mm, 207e9), in(mpa, pressure))},
		{"PF-5", "1.5 in H7/u6, most", manual + "3-67", outside.Published, "psi", 22500, 50, of(solid(1.5*inch, 3*inch, 0.0030*inch, 30e6*psi), in(psi, pressure))},
		{"PF-5", "1.5 in H7/u6, least", manual + "3-67", outside.Published, "psi", 10500, 50, of(solid(1.5*inch, 3*inch, 0.0014*inch, 30e6*psi), in(psi, pressure))},
		{"PF-6", "tube in tube: pressure", book, outside.Published, "MPa", 19.41, 0.05, of(pf6, in(mpa, pressure))},
		{"PF-6", "inner hoop at the fit", book, outside.Published, "MPa", -32.35, 0.05, of(pf6, in(mpa, bushingHoop))},
		{"PF-6", "inner von Mises at the fit", book, outside.Published, "MPa", 28.20, 0.05, of(pf6, in(mpa, func(r PressureResult) float64 { return r.BushingOutsideVM }))},
		{"PF-6", "outer hoop at the fit", book, outside.Published, "MPa", 50.47, 0.05, of(pf6, in(mpa, hubHoop))},
		{"PF-6", "outer von Mises at the fit", book, outside.Published, "MPa", 62.48, 0.05, of(pf6, in(mpa, hubVonMises))},
	}
}

func twoMetalChecks() []outside.Check {
	const qa = "worked answer on qammunity.org/10378823 (its 0.05 is radial)"
	pf9 := Joint{Diameter: 60 * mm, BushingBore: 40 * mm, HubDiameter: 120 * mm, Interference: 0.1 * mm, Hub: Elastic{210e9, 0.3}, Bushing: Elastic{105e9, 0.3}}
	const mott = "data of Mott, Machine Elements, fig. 13-6 (FN3); the published 'approved answer' uses a made-up FN3 and is not followed"
	pf10 := Joint{Diameter: 2.5 * inch, BushingBore: 2 * inch, HubDiameter: 3.5 * inch, Interference: 0.0032 * inch, Hub: Elastic{30e6 * psi, 0.27}, Bushing: Elastic{17e6 * psi, 0.27}}
	const tut = "data of tutorsglobe.com question 5735556"
	pf11 := Joint{Diameter: 101.6 * mm, BushingBore: 50.8 * mm, HubDiameter: 127 * mm, Interference: 0.051 * mm, Hub: Elastic{206.7e9, 0.29}, Bushing: Elastic{103.4e9, 0.32}}
	const wiz = "data of wizedu.com question 1681178"
	pf12 := ForceInput{
		Joint:  Joint{Diameter: 40 * mm, HubDiameter: 80 * mm, Interference: 0.04 * mm, Hub: Elastic{70e9, 0.33}, Bushing: Elastic{210e9, 0.33}},
		Length: 10 * mm, FrictionLow: 0.1, FrictionHigh: 0.1,
	}
	force := func(figure func(ForceResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := Force(pf12)
			return figure(r), err
		}
	}
	const bha = "data of Bhandari, Design of Machine Elements, EX22.6; its transcribed answer (38.46 MPa, 39.9683 mm) overloads the inner tube"
	pf14 := func(figure func(LimitResult) float64) func() (float64, error) {
		return func() (float64, error) {
			e := Elastic{207e9, 0.3}
			j := Joint{Diameter: 40 * mm, BushingBore: 20 * mm, HubDiameter: 60 * mm, Hub: e, Bushing: e}
			r, err := GreatestInterference(j, Strength{100 * mpa, true}, Strength{100 * mpa, true})
			return figure(r), err
		}
	}
	return []outside.Check{
		{"PF-9", "bronze in steel: pressure", qa, outside.Published, "MPa", 53.3, 0.1, of(pf9, in(mpa, pressure))},
		{"PF-9", "steel hoop at 30 mm", qa, outside.Published, "MPa", 88.8, 0.1, of(pf9, in(mpa, hubHoop))},
		{"PF-9", "steel hoop at 60 mm: 2pD²/(Dh²-D²)", qa, outside.Published, "MPa", 35.5, 0.1, of(pf9, func(r PressureResult) float64 {
			return r.HubGrowth / r.In.HubDiameter * r.In.Hub.Modulus / mpa // nothing but hoop stress at the outside
		})},
		{"PF-9", "bronze hoop at 30 mm", qa, outside.Published, "MPa", -138.6, 0.1, of(pf9, in(mpa, bushingHoop))},
		{"PF-9", "bronze hoop at 20 mm", qa, outside.Published, "MPa", -191.9, 0.1, of(pf9, in(mpa, bushingHoopBore))},
		{"PF-9b", "bore close-in on diameter", "Lamé with the data of qammunity.org/10378823", outside.Computed, "mm", 0.0731, 0.0003, of(pf9, in(mm, closeIn))},
		{"PF-9b", "close-in over interference", "Lamé with the data of qammunity.org/10378823", outside.Computed, "1", 0.73, 0.005, of(pf9, closeInShare)},
		{"PF-10", "FN3 bronze in steel: pressure", mott, outside.Computed, "psi", 3518, 7, of(pf10, in(psi, pressure))},
		{"PF-10", "sleeve hoop at its bore", mott, outside.Computed, "psi", 10846, 22, of(pf10, in(psi, hubHoop))},
		{"PF-10", "bushing hoop at its outside", mott, outside.Computed, "psi", -16025, 32, of(pf10, in(psi, bushingHoop))},
		{"PF-10", "bushing hoop at its bore", mott, outside.Computed, "psi", -19543, 39, of(pf10, in(psi, bushingHoopBore))},
		{"PF-10", "bore close-in on diameter", mott, outside.Computed, "in", 0.00230, 0.000005, of(pf10, in(inch, closeIn))},
		{"PF-10", "close-in over interference", mott, outside.Computed, "1", 0.72, 0.005, of(pf10, closeInShare)},
		{"PF-11", "brass in steel: pressure", tut, outside.Computed, "MPa", 13.77, 0.005, of(pf11, in(mpa, pressure))},
		{"PF-11", "steel hoop at its bore", tut, outside.Computed, "MPa", 62.7, 0.05, of(pf11, in(mpa, hubHoop))},
		{"PF-11", "brass bore closes on diameter", tut, outside.Computed, "mm", 0.0180, 0.00005, of(pf11, in(mm, closeIn))},
		{"PF-12", "steel in aluminium: pressure", wiz, outside.Computed, "MPa", 31.53, 0.032, of(pf12.Joint, in(mpa, pressure))},
		{"PF-12", "press force", wiz, outside.Computed, "N", 3962, 4, force(func(r ForceResult) float64 { return r.PressIn })},
		{"PF-12", "torque held", wiz, outside.Computed, "N·m", 79.25, 0.08, force(func(r ForceResult) float64 { return r.HoldsTorque })},
		{"PF-14", "greatest pressure within 100 MPa in both tubes", bha, outside.Computed, "MPa", 37.5, 0.005, pf14(func(r LimitResult) float64 { return r.Pressure / mpa })},
		{"PF-14", "pressure that the jacket alone could take", bha, outside.Published, "MPa", 38.46, 0.005, pf14(func(r LimitResult) float64 { return r.HubPressure / mpa })},
		{"PF-14", "interference at that limit", bha, outside.Computed, "mm", 0.03092, 0.00001, pf14(func(r LimitResult) float64 { return r.Interference / mm })},
	}
}

func handbookChecks() []outside.Check {
	const table2 = "Machinery's Handbook 31st ed. Table 2 p. 645"
	const table3 = "Machinery's Handbook 31st ed. Table 3 p. 645, cast-iron hub, nu 0.25"
	factorC := func(k, a, hubPoisson float64) func() (float64, error) {
		return of(Joint{
			Diameter: 4 * inch, BushingBore: 4 * inch / a, HubDiameter: 4 * inch * k,
			Hub: Elastic{200e9, hubPoisson}, Bushing: Elastic{200e9, 1.0 / 3},
		}, func(r PressureResult) float64 { return r.BushingGive / r.HubGive })
	}
	const tonnage = "Machinery's Handbook, pressure factors for forced fits (restated)"
	book := HandbookInput{Diameter: 4 * inch, Length: 4 * inch, Interference: 0.004 * inch}
	impliedFriction := func(hub, shaft Elastic) func() (float64, error) {
		return func() (float64, error) {
			h, err := HandbookForce(book)
			if err != nil {
				return 0, err
			}
			p, err := Pressure(Joint{Diameter: 4 * inch, HubDiameter: 8 * inch, Interference: book.Interference, Hub: hub, Bushing: shaft})
			return h.Force / (p.Pressure * math.Pi * book.Diameter * book.Length), err
		}
	}
	list := []outside.Check{
		{"PF-15", "factor C, k=1.5 a=2.0", table2, outside.Published, "1", 0.455, 0.001, factorC(1.5, 2, 1.0/3)},
		{"PF-15", "factor C, k=1.5 a=2.5", table2, outside.Published, "1", 0.357, 0.001, factorC(1.5, 2.5, 1.0/3)},
		{"PF-15", "factor C, k=1.5 a=3.0", table2, outside.Published, "1", 0.313, 0.001, factorC(1.5, 3, 1.0/3)},
		{"PF-15", "factor C, k=1.5 a=3.5", table2, outside.Published, "1", 0.288, 0.001, factorC(1.5, 3.5, 1.0/3)},
		{"PF-15", "factor C, k=2.0 a=2.0", table2, outside.Published, "1", 0.667, 0.001, factorC(2, 2, 1.0/3)},
		// The table prints 0.718 here, one in the last digit below the formula that gives all its other rows.
		{"PF-15", "factor C, k=2.2 a=2.0, printed as 0.718", table2, outside.Computed, "1", 0.71910, 0.00001, factorC(2.2, 2, 1.0/3)},
		{"PF-15", "factor C, k=1.6 a=2.0", table2, outside.Published, "1", 0.509, 0.001, factorC(1.6, 2, 1.0/3)},
		{"PF-15", "factor C, cast iron, k=1.5 a=2.0", table3, outside.Published, "1", 0.468, 0.001, factorC(1.5, 2, 0.25)},
		{"PF-15", "factor C, cast iron, k=2.0 a=2.0", table3, outside.Published, "1", 0.696, 0.001, factorC(2, 2, 0.25)},
		{"PF-16", "thin tyre: pull", "Singer & Pytel problem 267 (mathalino.com)", outside.Published, "N", 138996, 0.5, tyre(func(r ThinRingResult) float64 { return r.Pull })},
		{"PF-16", "thin tyre: pressure", "Singer & Pytel problem 267 (mathalino.com)", outside.Published, "MPa", 1.5444, 0.0005, tyre(func(r ThinRingResult) float64 { return r.Pressure / mpa })},
		{"PF-17", "tonnage, d 4 L 4 a 0.004 in", tonnage, outside.Computed, "short tons", 11.56, 0.05, func() (float64, error) {
			r, err := HandbookForce(book)
			return r.Force / tonf, err
		}},
		{"PF-17", "friction that the table implies, steel hub", tonnage, outside.Computed, "1", 0.041, 0.0005, impliedFriction(Elastic{30e6 * psi, 0.3}, Elastic{30e6 * psi, 0.3})},
		{"PF-17", "friction that the table implies, cast-iron hub", tonnage, outside.Memory, "1", 0.070, 0.001, impliedFriction(Elastic{14.5e6 * psi, 0.211}, Elastic{30e6 * psi, 0.292})},
		{"PF-18", "railroad rule, 9 in crank pin", "Dooley sec. 454", outside.Published, "short tons", 150, 1e-9, func() (float64, error) {
			f, err := RailroadForce(9 * inch)
			return f / tonf, err
		}},
		{"PF-19", "shrink allowance, 68 in tyre", "Dooley sec. 453", outside.Published, "in", 0.068, 1e-12, func() (float64, error) {
			a, err := ShrinkAllowance(68 * inch)
			return a / inch, err
		}},
	}
	for _, row := range [][2]float64{{1, 500}, {1.5, 325}, {2, 240}, {2.5, 189}, {3, 155}, {3.5, 131}, {4, 115}, {5, 91}, {6, 75}, {8, 55}, {9, 48.8}, {10, 43.5}} {
		list = append(list, outside.Check{"PF-17", "pressure factor of the table", tonnage, outside.Published, "1", row[1], 1e-9, func() (float64, error) {
			r, err := HandbookForce(HandbookInput{Diameter: row[0] * inch, Length: inch, Interference: 0.0001 * inch})
			return r.Factor, err
		}})
	}
	return list
}

func tyre(figure func(ThinRingResult) float64) func() (float64, error) {
	return func() (float64, error) {
		r, err := ThinRing(ThinRingInput{Diameter: 2, Width: 90 * mm, Thickness: 12 * mm, Modulus: 200e9, Expansion: 11.7e-6, Cooling: 55})
		return figure(r), err
	}
}

func temperatureChecks() []outside.Check {
	const pf23 = "Callister Table B.6 and C93200 data sheet, room-temperature expansion"
	shrunk := func(alpha, temp float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := Shrink(ShrinkInput{Diameter: 4 * inch, Expansion: alpha * perF, Room: roomTemp, Temperature: temp})
			return r.AtRoomRate / inch, err
		}
	}
	// The computed figures take dry ice as -109 °F and nitrogen as -320 °F.
	const ice, nitrogen = fZero - 109/perF, fZero - 320/perF
	return []outside.Check{
		{"PF-22", "dry ice", "biologyinsights.com, technifab.com", outside.Published, "°F", -109.3, 0.05, func() (float64, error) { return (iceTemp - fZero) * perF, nil }},
		{"PF-22", "liquid nitrogen", "biologyinsights.com", outside.Published, "°F", -320.4, 0.5, func() (float64, error) { return (n2Temp - fZero) * perF, nil }},
		{"PF-23", "4 in steel in dry ice", pf23, outside.Computed, "in", 0.00465, 1e-5, shrunk(6.5e-6, ice)},
		{"PF-23", "4 in steel in liquid nitrogen, room rate", pf23, outside.Computed, "in", 0.01014, 1e-5, shrunk(6.5e-6, nitrogen)},
		{"PF-23", "4 in bronze in dry ice", pf23, outside.Computed, "in", 0.00716, 1e-5, shrunk(10e-6, ice)},
		{"PF-23", "4 in bronze in liquid nitrogen, room rate", pf23, outside.Computed, "in", 0.01560, 1e-5, shrunk(10e-6, nitrogen)},
		{"PF-23", "4 in steel in liquid nitrogen, to count on", "steel averages about 5e-6/°F down to liquid nitrogen", outside.Memory, "in", 4 * 5e-6 * 390.4, 1e-5, func() (float64, error) {
			r, err := Shrink(ShrinkInput{Diameter: 4 * inch, Expansion: 6.5e-6 * perF, Room: roomTemp, Temperature: n2Temp})
			return r.Shrink / inch, err
		}},
	}
}

func ramChecks() []outside.Check {
	const army = "US Army TM 1-1500-204-23-2 pp. 2-2, 2-3"
	boreOf := func(area float64) float64 { return math.Sqrt(4 * area / math.Pi) }
	sqin := inch * inch
	return []outside.Check{
		{"H-1", "250 lb on 10 in² needs 50 lb on 2 in²", army, outside.Published, "lbf", 50, 1e-9, func() (float64, error) {
			r, err := HandPump(250*lbf, boreOf(10*sqin), boreOf(2*sqin), 0)
			return r.PumpForce / lbf, err
		}},
		{"H-1", "ratio of areas", army, outside.Published, "1", 5, 1e-9, func() (float64, error) {
			r, err := HandPump(250*lbf, boreOf(10*sqin), boreOf(2*sqin), 0)
			return r.AreaRatio, err
		}},
		{"H-1", "250 lb on 10 in² is 25 psi", army, outside.Published, "psi", 25, 1e-9, func() (float64, error) {
			p, err := RamPressure(250*lbf, boreOf(10*sqin))
			return p / psi, err
		}},
		{"H-2", "800 lb from 40 lb on 4 in²: 80 in² ram", army, outside.Published, "lbf", 40, 1e-9, func() (float64, error) {
			r, err := HandPump(800*lbf, boreOf(80*sqin), boreOf(4*sqin), 10*inch)
			return r.PumpForce / lbf, err
		}},
		{"H-2", "10 in of lift takes 200 in of the small piston", army, outside.Published, "in", 200, 1e-9, func() (float64, error) {
			r, err := HandPump(800*lbf, boreOf(80*sqin), boreOf(4*sqin), 10*inch)
			return r.PumpTravel / inch, err
		}},
		{"H-3", "8 in² by 10 in", army, outside.Published, "in³", 80, 1e-9, func() (float64, error) {
			v, err := RamVolume(10*inch, boreOf(8*sqin))
			return v / (sqin * inch), err
		}},
		{"H-5", "6 in bore at 5000 psi", "tons = P·pi·D²/8000", outside.Computed, "lbf", 141372, 0.5, func() (float64, error) {
			f, err := RamForce(5000*psi, 6*inch)
			return f / lbf, err
		}},
		{"H-5", "6 in bore at 5000 psi", "tons = P·pi·D²/8000", outside.Computed, "short tons", 70.7, 0.05, func() (float64, error) {
			f, err := RamForce(5000*psi, 6*inch)
			return f / tonf, err
		}},
		{"H-6", "2 MPa on 0.01 m²", "unitedflightsimtechpracticequestions.examzify.com", outside.Published, "kN", 20, 1e-9, func() (float64, error) {
			f, err := RamForce(2*mpa, boreOf(0.01))
			return f / 1000, err
		}},
	}
}

// metalChecks hold the table of metals against its sources.
func metalChecks() []outside.Check {
	row := func(name string, figure func(Material) float64) func() (float64, error) {
		return func() (float64, error) {
			for i, n := range MaterialNames() {
				if n == name {
					m, err := MaterialAt(float64(i))
					return figure(m), err
				}
			}
			return 0, fmt.Errorf("no metal named %q", name)
		}
	}
	yield := func(m Material) float64 { return m.Strength.Limit / ksi }
	alpha := func(m Material) float64 { return m.Expansion / perF * 1e6 }
	modulus := func(m Material) float64 { return m.Elastic.Modulus / psi / 1e6 }
	const callisterB6 = "Callister, Fundamentals of Materials Science 3rd ed. Table B.6"
	const a20 = "Shigley Table A-20"
	const c932 = "C93200 material data sheet, spectrummachine.com"
	return []outside.Check{
		{"PF-21", "expansion of A36", callisterB6, outside.Published, "1e-6/°F", 6.5, 1e-9, row("A36 steel", alpha)},
		{"PF-21", "expansion of 1020", callisterB6, outside.Published, "1e-6/°F", 6.5, 1e-9, row("1018 cold drawn steel", alpha)},
		{"PF-21", "expansion of 1040", callisterB6, outside.Published, "1e-6/°F", 6.3, 1e-9, row("1045 hot rolled steel", alpha)},
		{"PF-21", "expansion of 4140", callisterB6, outside.Published, "1e-6/°F", 6.8, 1e-9, row("4140 normalized steel", alpha)},
		{"PF-21", "expansion of gray iron", callisterB6, outside.Published, "1e-6/°F", 6.3, 1e-9, row("gray cast iron", alpha)},
		{"PF-21", "expansion of ductile iron", callisterB6, outside.Published, "1e-6/°F", 6.2, 1e-9, row("ductile iron 60-40-18", alpha)},
		{"PF-21", "expansion of C93200", c932, outside.Published, "1e-6/°F", 10.0, 1e-9, row("C93200 bearing bronze", alpha)},
		{"B-7", "yield of A36", "AWS D1.1:2015 Table 3.1", outside.Published, "ksi", 36, 1e-9, row("A36 steel", yield)},
		{"B-7", "yield of 1018 hot rolled", a20, outside.Published, "ksi", 32, 1e-9, row("1018 hot rolled steel", yield)},
		{"B-7", "yield of 1018 cold drawn", a20, outside.Published, "ksi", 54, 1e-9, row("1018 cold drawn steel", yield)},
		{"B-7", "yield of 1045 hot rolled", a20, outside.Published, "ksi", 45, 1e-9, row("1045 hot rolled steel", yield)},
		{"B-7", "yield of 1045 cold drawn", a20, outside.Published, "ksi", 77, 1e-9, row("1045 cold drawn steel", yield)},
		{"B-7", "yield of 4140 annealed", "efunda.com AISI 4140", outside.Published, "ksi", 60.5, 1e-9, row("4140 annealed steel", yield)},
		{"B-7", "yield of 4140 normalized", "efunda.com AISI 4140", outside.Published, "ksi", 95, 1e-9, row("4140 normalized steel", yield)},
		{"B-7", "yield of 4140 tempered at 540 °C", "efunda.com AISI 4140", outside.Published, "ksi", 121, 1e-9, row("4140 tempered steel", yield)},
		{"B-7", "yield of C93200, the least of its castings", c932, outside.Published, "ksi", 14, 1e-9, row("C93200 bearing bronze", yield)},
		{"B-7", "modulus of C93200", c932, outside.Published, "1e6 psi", 14.5, 1e-9, row("C93200 bearing bronze", modulus)},
	}
}
