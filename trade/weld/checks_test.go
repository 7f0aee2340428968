package weld

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"gudgeon/trade/outside"
	"gudgeon/units"
)

func TestChecks(t *testing.T) { outside.Run(t, "weld", checks()) }

func checks() []outside.Check {
	out := append(carbonChecks(), preheatChecks()...)
	out = append(out, heatInputChecks()...)
	return append(out, fillerChecks()...)
}

// si turns a value in a named unit into SI.
func si(v float64, unit string) float64 {
	u, ok := units.Named(unit)
	if !ok {
		panic(unit)
	}
	return u.ToSI(v)
}

// inUnit gives an SI result in a named unit.
func inUnit(unit string) func(v float64, err error) (float64, error) {
	u, ok := units.Named(unit)
	if !ok {
		panic(unit)
	}
	return func(v float64, err error) (float64, error) { return u.FromSI(v), err }
}

func carbonChecks() []outside.Check {
	iiw := "formula: https://eng-tips.com/forums/330/faqs/1077 ; 4140 ranges: https://liquisearch.com/41xx_steel/properties"
	percent := inUnit("percent")
	mid4140 := Composition{C: .405 * pc, Mn: .875 * pc, Cr: .95 * pc, Mo: .20 * pc}
	withSi := mid4140
	withSi.Si = .25 * pc
	of := func(id, what, source string, confidence outside.Confidence, want, tol float64, c Composition) outside.Check {
		return outside.Check{id, what, source, confidence, "%", want, tol, func() (float64, error) { return percent(CarbonEquivalent(c)) }}
	}
	named := func(pick Pick) func() (float64, error) {
		return func() (float64, error) {
			c, err := SteelNamed("4140", pick)
			if err != nil {
				return 0, err
			}
			return percent(CarbonEquivalent(c))
		}
	}
	band := func(ce, want float64) outside.Check {
		return outside.Check{"W-5", fmt.Sprintf("word for CE %.2f %% (0 excellent to 4 poor)", ce), "https://www.seaportsteel.com/mobile/News.aspx (guidance)", outside.Published, "1", want, 1e-9, func() (float64, error) {
			w, err := WeldabilityOf(ce * pc)
			return float64(w), err
		}}
	}
	return []outside.Check{
		of("W-1", "IIW CE of 4140, middle of the range", iiw, outside.Computed, 0.781, 0.001, mid4140),
		of("W-1", "IIW CE of 4140, top of the range", iiw, outside.Computed, 0.867, 0.001, Composition{C: .43 * pc, Mn: 1.0 * pc, Cr: 1.1 * pc, Mo: .25 * pc}),
		{"W-1", "the same by the steel's name, middle", iiw, outside.Computed, "%", 0.781, 0.001, named(MidRange)},
		{"W-1", "the same by the steel's name, top", iiw, outside.Computed, "%", 0.867, 0.001, named(TopOfRange)},
		of("W-2", "IIW CE of 1045", "compositions from memory", outside.Memory, 0.575, 0.0005, Composition{C: .45 * pc, Mn: .75 * pc}),
		of("W-2", "IIW CE of 1018", "compositions from memory", outside.Memory, 0.305, 0.0005, Composition{C: .18 * pc, Mn: .75 * pc}),
		of("W-2", "IIW CE of A36 near its top", "compositions from memory", outside.Memory, 0.423, 0.0005, Composition{C: .26 * pc, Mn: .90 * pc, Cu: .20 * pc}),
		{"W-3", "AWS D1.1 annex CE of 4140 with 0.25 % Si", "Si term: https://www.eng-tips.com/viewthread.cfm?qid=152729", outside.Computed, "%", 0.8225, 0.0005, func() (float64, error) {
			return percent(CarbonEquivalentSi(withSi))
		}},
		{"W-3", "the annex's CE less the IIW's is Si/6", "Si term: https://www.eng-tips.com/viewthread.cfm?qid=152729", outside.Computed, "%", 0.0417, 0.00005, func() (float64, error) {
			a, err := CarbonEquivalentSi(withSi)
			b, err2 := CarbonEquivalent(withSi)
			return (a - b) * 100, errors.Join(err, err2)
		}},
		{"W-4", "Pcm of C .10 Si .30 Mn 1.40 Cu .20 Cr .10 Ni .30 Mo .15 V .05 B .001", "formula: https://eng-tips.com/forums/330/faqs/1077 ; worked by hand", outside.Computed, "%", 0.10 + 0.01 + 0.085 + 0.005 + 0.01 + 0.005 + 0.005, 1e-9, func() (float64, error) {
			return percent(Pcm(Composition{C: .10 * pc, Si: .30 * pc, Mn: 1.40 * pc, Cu: .20 * pc, Cr: .10 * pc, Ni: .30 * pc, Mo: .15 * pc, V: .05 * pc, B: .001 * pc}))
		}},
		band(0.35, 0), band(0.36, 1), band(0.40, 1), band(0.41, 2), band(0.45, 2), band(0.46, 3), band(0.50, 3), band(0.51, 4),
	}
}

func preheatChecks() []outside.Check {
	d11 := "AWS D1.1:2015 Table 3.3 as restated at https://pdfcoffee.com/prequalified-minimum-preheat-and-interpass-temperature-pdf-free.html ; US Army TI 809-26 (2000) Table 3-1"
	single := "a single restatement: https://manualsdump.com/amp/en/manuals/271634/35 (column 3)"
	var out []outside.Check
	add := func(id, source string, c Category, inches, want float64) {
		what := fmt.Sprintf("category %s, %g in", c, inches)
		out = append(out, outside.Check{id, what, source, outside.Published, "°F", want, 0.01, func() (float64, error) { return inUnit("degF")(Preheat(c, inches*inch)) }})
	}
	for i, thick := range [][2]float64{{0.25, 0.75}, {0.76, 1.5}, {1.51, 2.5}, {2.51, 8}} {
		for _, inches := range thick { // just inside both ends of a row
			add("W-7", d11, CategoryA, inches, []float64{32, 150, 225, 300}[i])
			add("W-8", d11, CategoryB, inches, []float64{32, 50, 150, 225}[i])
			add("W-9", single, CategoryC, inches, []float64{50, 150, 225, 300}[i])
		}
	}
	add("W-10", d11+"; a web page says 150 °F here: wrong", CategoryB, 1, 50)
	return out
}

func heatInputChecks() []outside.Check {
	kJ, J := inUnit("kJ_per_in"), inUnit("J_per_in")
	at := func(v, a, ipm float64) (float64, error) { return HeatInput(v, a, si(ipm, "ipm"), 1) }
	return []outside.Check{
		{"W-12", "325 A, 29 V, 25 in in 2 min", "https://weldinginspections.net/t/heat-input-caculation/318", outside.Published, "kJ/in", 45.24, 0.01, func() (float64, error) { return kJ(at(29, 325, 12.5)) }},
		{"W-14", "24 V, 120 A, 10 in/min", "https://www.fatskills.com/journalism/chapter/consumer-math-heat-input-calculations-volts-amps-60-travel-speed", outside.Published, "J/in", 17280, 0.5, func() (float64, error) { return J(at(24, 120, 10)) }},
		{"W-14", "24 V, 120 A, 12 in/min", "https://www.fatskills.com/journalism/chapter/consumer-math-heat-input-calculations-volts-amps-60-travel-speed", outside.Published, "J/in", 14400, 0.5, func() (float64, error) { return J(at(24, 120, 12)) }},
		{"W-14", "26 V, 130 A, 8 in/min", "https://www.fatskills.com/journalism/chapter/consumer-math-heat-input-calculations-volts-amps-60-travel-speed", outside.Published, "J/in", 25350, 0.5, func() (float64, error) { return J(at(26, 130, 8)) }},
		{"W-15", "300 A, 30 V, 24 in in 93 s", "inputs: https://app.aws.org/forum/topic_show.pl?tid=21521 ; the poster's own 38.5 is a slip", outside.Computed, "kJ/in", 34.88, 0.01, func() (float64, error) {
			return kJ(HeatInput(30, 300, 24*inch/93, 1))
		}},
	}
}

func fillerChecks() []outside.Check {
	handbook := "ESAB handbook, Calculating Filler Metal Consumption, https://pdfcoffee.com/esab-calculating-filler-metal-consumptionpdf-pdf-free.html"
	lbft, lb := inUnit("lb_per_ft"), inUnit("lb")
	rho := si(0.283, "lb_per_in3")
	out := []outside.Check{
		{"W-16", "fillet of 1/2 by 1/2 in", handbook, outside.Published, "lb/ft", 0.4245, 0.0006, func() (float64, error) { return lbft(BeadMass(si(0.125, "sqin"), rho)) }},
		{"W-17", "electrode for 424 lb at 64 %", handbook + " (formula); numbers invented", outside.Synthetic, "lb", 662.5, 0.05, func() (float64, error) { return lb(FillerUsed(si(424, "lb"), 0.64)) }},
		{"W-19", "3 lb of weld metal from 4 lb", "ESAB filler metal handbook, https://www.esabna.com/euweb/fm_handbook/577fm8_7.htm", outside.Published, "%", 75, 1e-9, func() (float64, error) {
			return inUnit("percent")(DepositionEfficiency(si(3, "lb"), si(4, "lb")))
		}},
		{"W-20", "150 g laid from 188 g less a stub of 24.7 g", "inputs: https://vi.scribd.com/document/313114853/CIG-WELD-Deposition-Rate-pdf ; arithmetic redone", outside.Computed, "%", 91.9, 0.05, func() (float64, error) {
			return inUnit("percent")(DepositionEfficiency(0.150, 0.188-0.0247))
		}},
		{"W-21", "95 g in 60 s", "https://vi.scribd.com/document/313114853/CIG-WELD-Deposition-Rate-pdf", outside.Published, "kg/h", 5.7, 1e-9, func() (float64, error) { return inUnit("kg_per_hour")(DepositionRate(0.095, 60)) }},
		{"W-24", ".045 in wire at 400 in/min (the table's wire is 1.2 % heavier than 0.283 lb/in³)", "table: ESAB MIG handbook sec. 7-10, https://www.esabna.com/euweb/mig_handbook/592mig7_10.htm ; arithmetic redone", outside.Computed, "lb/h", 10.93, 0.012 * 10.93, func() (float64, error) {
			return inUnit("lb_per_hour")(MeltOff(0.045*inch, si(400, "ipm"), rho))
		}},
		{"W-26", "overlay by the rule π·D·t·ρ, D 6, t .25, ρ .283", "rule of a hardfacing page (no address kept); arithmetic redone", outside.Computed, "lb/in", 1.334, 0.0005, func() (float64, error) {
			return inUnit("lb_per_in")(BeadMass(si(math.Pi*6*0.25, "sqin"), rho))
		}},
		{"W-26", "the same with the page's rounded ρ .3", "rule of a hardfacing page (no address kept); arithmetic redone", outside.Computed, "lb/in", 1.414, 0.0005, func() (float64, error) {
			return inUnit("lb_per_in")(BeadMass(si(math.Pi*6*0.25, "sqin"), si(0.3, "lb_per_in3")))
		}},
		{"W-27", "bore 3.25 to 2.75 in, 4 in long", "plane geometry; arithmetic redone", outside.Synthetic, "lb", 2.667, 0.001, func() (float64, error) {
			v, err := BoreBuildUp(3.25*inch, 2.75*inch, 4*inch)
			if err != nil {
				return 0, err
			}
			return lb(DepositMass(v, rho))
		}},
	}
	for _, w := range [][2]float64{{0.030, 4956}, {0.035, 3648}, {0.045, 2196}, {1. / 16, 1152}, {3. / 32, 516}} {
		out = append(out, outside.Check{"W-23", fmt.Sprintf("wire of %.4g in: length per lb (the table's density varies)", w[0]), "ESAB MIG handbook sec. 7-10, https://www.esabna.com/euweb/mig_handbook/592mig7_10.htm", outside.Published, "in/lb", w[1], 0.013 * w[1], func() (float64, error) {
			v, err := inUnit("lb_per_in")(WireMass(w[0]*inch, rho))
			return 1 / v, err
		}})
	}
	for _, row := range []struct {
		p    Process
		want float64
	}{{Submerged, 99}, {SolidWireMixed, 98}, {SolidWireArCO2, 96}, {SolidWireCO2, 93}, {MetalCored, 93}, {FluxCoredGas, 86}, {FluxCoredSelf, 78}, {StickShort, 59}, {Stick, 62}, {StickLong, 66}} {
		out = append(out, outside.Check{"W-18", "deposition efficiency, " + row.p.String(), handbook + "; which value belongs to which process is from memory", outside.Memory, "%", row.want, 1e-9, func() (float64, error) {
			return inUnit("percent")(row.p.Efficiency())
		}})
	}
	return out
}
