package bar

import (
	"math"
	"testing"

	"gudgeon/trade/outside"
)

func TestChecks(t *testing.T) { outside.Run(t, "bar", checks()) }

func checks() []outside.Check {
	list := deflectionChecks()
	list = append(list, vibrationChecks()...)
	list = append(list, kienzleChecks()...)
	list = append(list, cutChecks()...)
	return append(list, finishChecks()...)
}

const (
	mm    = 0.001
	mpa   = 1e6
	perMM = 1000.0 // N/mm in N/m
	scipy = "closed form, checked by scipy and an energy integral"
)

// near is a tolerance relative to the value wanted.
func near(want, share float64) float64 { return math.Abs(want) * share }

func deflectionChecks() []outside.Check {
	const isakov = "Isakov, Boring: calculating deflection, Cutting Tool Engineering, July 2019"
	const mott = "Mott, Machine Elements in Mechanical Design 4th ed. Table A14-1(b); " + scipy
	moment := func(d, unit float64) func() (float64, error) {
		return func() (float64, error) {
			i, err := SecondMoment(Section{Diameter: d})
			return i / unit, err
		}
	}
	cantilever := func(force, overhang, modulus, diameter, unit float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := Cantilever(CantileverInput{Section: Section{Diameter: diameter}, Overhang: overhang, Modulus: modulus, Force: force})
			return r.Deflection / unit, err
		}
	}
	in4 := inch * inch * inch * inch
	// D5 is in any one system of units: taken as lbf, in, psi.
	d5 := LineBarInput{Section: Section{Diameter: 2.5 * inch}, Span: 60 * inch, Station: 24 * inch, Modulus: 30e6 * psi, Force: 50 * lbf}
	d6 := LineBarInput{Section: Section{Diameter: 60 * mm}, Span: 1, Station: 0.3, Modulus: 206000 * mpa, Force: 800}
	d8 := d6
	d8.Station = 0.5
	line := func(in LineBarInput, figure func(LineBarResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := LineBar(in)
			return figure(r), err
		}
	}
	atCutter := func(unit float64) func(LineBarResult) float64 {
		return func(r LineBarResult) float64 { return r.AtCutter / unit }
	}
	greatest := func(unit float64) func(LineBarResult) float64 {
		return func(r LineBarResult) float64 { return r.Greatest / unit }
	}
	ratio := func(a, b CantileverInput) func() (float64, error) {
		return func() (float64, error) {
			ra, err := Cantilever(a)
			if err != nil {
				return 0, err
			}
			rb, err := Cantilever(b)
			return rb.Deflection / ra.Deflection, err
		}
	}
	base := CantileverInput{Section: Section{Diameter: 0.05}, Overhang: 0.2, Modulus: 207e9, Force: 1000}
	longer, thicker, shorter := base, base, base
	longer.Overhang, thicker.Diameter, shorter.Overhang = 0.4, 0.1, 0.15
	reach := func(material float64, diameter float64) func() (float64, error) {
		return func() (float64, error) {
			m, err := MaterialAt(material)
			if err != nil {
				return 0, err
			}
			r, err := Overhang(m, diameter, diameter)
			return r.Most / mm, err
		}
	}
	const d10 = "tool maker's catalogue (2017) p. D86, small-hole bars"
	return []outside.Check{
		{"D1", "second moment, 1 in", isakov, outside.Published, "in⁴", 0.0491, near(0.0491, 0.001), moment(inch, in4)},
		{"D1", "second moment, 25.4 mm", isakov, outside.Published, "mm⁴", 20432, near(20432, 0.001), moment(25.4*mm, 1e-12)},
		{"D1", "second moment, 1 in", "pi/64", outside.Computed, "in⁴", 0.0490873852123, 1e-12, moment(inch, in4)},
		{"D2", "cantilever, inch", isakov, outside.Published, "in", 0.003, 5e-4, cantilever(207.8*lbf, 4*inch, 30e6*psi, inch, inch)},
		{"D2", "cantilever, inch", isakov, outside.Computed, "in", 0.00301032308504, 1e-12, cantilever(207.8*lbf, 4*inch, 30e6*psi, inch, inch)},
		// The source prints a denominator of 34,208,992,000, which would give 0.0279 mm; its result is right.
		{"D3", "cantilever, metric", isakov, outside.Published, "mm", 0.0757, 5e-5, cantilever(911.1, 101.6*mm, 20.6e4*mpa, 25.4*mm, mm)},
		{"D5", "line bar, at the cutter", mott, outside.Computed, "in", 0.00360473875792, near(0.0036, 1e-9), line(d5, atCutter(inch))},
		{"D5", "line bar, greatest", mott, outside.Computed, "in", 0.0037089275591, near(0.0037, 1e-9), line(d5, greatest(inch))},
		{"D6", "line bar, at the cutter", mott, outside.Computed, "mm", 0.0897356888774, near(0.09, 1e-9), line(d6, atCutter(mm))},
		{"D6", "line bar, greatest", mott, outside.Computed, "mm", 0.101983067973, near(0.1, 1e-9), line(d6, greatest(mm))},
		{"D8", "both ends held in line, mid-span", "F·L³/(192·E·I), structural formula list; " + scipy, outside.Computed, "mm", 0.0317941074537, near(0.03, 1e-9), line(d8, func(r LineBarResult) float64 { return r.AtCutterFixed / mm })},
		{"D9", "twice the overhang", "arithmetic", outside.Synthetic, "1", 8, 1e-12, ratio(base, longer)},
		{"D9", "twice the diameter", "arithmetic", outside.Synthetic, "1", 1.0 / 16, 1e-12, ratio(base, thicker)},
		{"D9", "overhang from 4 D to 3 D", "arithmetic", outside.Synthetic, "1", 0.421875, 1e-12, ratio(base, shorter)},
		{"D10", "steel, 16 mm", d10, outside.Published, "mm", 64, 1e-9, reach(0, 16*mm)},
		{"D10", "steel, 25 mm", d10, outside.Published, "mm", 100, 1e-9, reach(0, 25*mm)},
		{"D10", "carbide, 16 mm", d10, outside.Published, "mm", 160, 1e-9, reach(2, 16*mm)},
		{"D10", "carbide, 25 mm", d10, outside.Published, "mm", 250, 1e-9, reach(2, 25*mm)},
	}
}

func vibrationChecks() []outside.Check {
	hertz := func(f func(FrequencyInput) (FrequencyResult, error), in FrequencyInput) func() (float64, error) {
		return func() (float64, error) {
			r, err := f(in)
			return r.Hertz, err
		}
	}
	metric := FrequencyInput{Section: Section{Diameter: 50 * mm}, Overhang: 250 * mm, Modulus: 206e9, Density: 7850}
	withHead := metric
	withHead.Head = 1.2
	// Weight density 0.2836 lbf/in³ over the source's g of 386.0886 in/s².
	imperial := FrequencyInput{Section: Section{Diameter: 2.5 * inch}, Overhang: 15 * inch, Modulus: 29e6 * psi, Density: 0.2836 * lbf / (inch * inch * inch) / (386.0886 * inch)}
	stable := func(k, z, ks float64, figure func(StableResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := StableDepth(StableInput{Stiffness: k * perMM, Damping: z, Specific: ks * mpa})
			return figure(r), err
		}
	}
	depth := func(r StableResult) float64 { return r.Depth / mm }
	freq := func(r StableResult) float64 { return r.Ratio }
	const tlusty = "absolute stability limit after Tlusty and Tobias (Ozlu & Budak; Schmitz & Smith ch. 3); numeric minimum of Re[G]"
	return []outside.Check{
		{"N1", "first root of 1 + cos·cosh", "instrument maker's user guide p. 97", outside.Published, "1", 1.8751, 5e-5, func() (float64, error) { return firstRoot, nil }},
		{"N1", "the root solves the equation", "1 + cos(x)·cosh(x) = 0", outside.Computed, "1", 0, 1e-12, func() (float64, error) { return 1 + math.Cos(firstRoot)*math.Cosh(firstRoot), nil }},
		{"N3", "50 mm bar, 250 mm out", "Euler-Bernoulli, mpmath", outside.Computed, "Hz", 573.3233918, near(573, 1e-9), hertz(Frequency, metric)},
		{"N3", "2.5 in bar, 15 in out", "Euler-Bernoulli, mpmath", outside.Computed, "Hz", 308.85722, 5e-6, hertz(Frequency, imperial)},
		{"N4", "the same with 1.2 kg at its end", "Rayleigh's method, 33/140 from memory", outside.Memory, "Hz", 381.8246305, near(381, 1e-9), hertz(FrequencyWithHead, withHead)},
		{"K1", "depth without chatter", tlusty, outside.Memory, "mm", 0.618, near(0.618, 1e-9), stable(20000, 0.03, 2000, depth)},
		{"K1", "worst frequency ratio", tlusty, outside.Memory, "1", 1.0295630141, near(1, 1e-9), stable(20000, 0.03, 2000, freq)},
		{"K2", "depth without chatter", tlusty, outside.Memory, "mm", 0.13056, near(0.13, 1e-9), stable(8000, 0.02, 2500, depth)},
		{"K2", "worst frequency ratio", tlusty, outside.Memory, "1", 1.01980390272, near(1, 1e-9), stable(8000, 0.02, 2500, freq)},
		{"K3", "depth without chatter", tlusty, outside.Memory, "mm", 2.625, near(2.625, 1e-9), stable(45000, 0.05, 1800, depth)},
		{"K3", "worst frequency ratio", tlusty, outside.Memory, "1", 1.04880884817, near(1, 1e-9), stable(45000, 0.05, 1800, freq)},
	}
}

// kienzleChecks holds the law against a chuck maker's table, whose rows were
// paired with the metals because they fit, and against its own arithmetic.
func kienzleChecks() []outside.Check {
	const chuck = "lathe-chuck manual, Table 2 p. 43 (specific force against feed at 45°); its rows were paired with the metals because they fit"
	rows := []struct {
		id, name string
		share    float64 // of the printed figure, which is rounded to 0.05
		printed  [6]float64
		exact    [6]float64
	}{
		{"F3", "St 50", 0.02, [6]float64{3.50, 3.10, 2.75, 2.45, 2.15, 1.95}, [6]float64{3.506839, 3.122645, 2.763449, 2.455605, 2.177644, 1.927151}},
		{"F4", "St 60", 0.02, [6]float64{3.05, 2.80, 2.60, 2.40, 2.20, 2.05}, [6]float64{3.056114, 2.832828, 2.615290, 2.420929, 2.238051, 2.066187}},
		{"F5", "St 70", 0.02, [6]float64{4.35, 3.80, 3.30, 2.90, 2.50, 2.20}, [6]float64{4.345372, 3.800852, 3.300996, 2.880453, 2.507627, 2.177845}},
		{"F6", "42CrMo4", 0.02, [6]float64{4.35, 3.90, 3.45, 3.10, 2.75, 2.45}, [6]float64{4.405576, 3.922920, 3.471669, 3.084930, 2.735734, 2.421044}},
		{"F7", "16MnCr5", 0.02, [6]float64{3.75, 3.30, 2.95, 2.60, 2.30, 2.05}, [6]float64{3.700684, 3.295253, 2.916202, 2.591342, 2.298017, 2.033677}},
		{"F9", "GS-52", 0.035, [6]float64{2.55, 2.35, 2.20, 2.05, 1.90, 1.80}, [6]float64{2.578144, 2.389779, 2.206263, 2.042301, 1.888024, 1.743039}},
		{"F10", "GG-25", 0.035, [6]float64{2.05, 1.80, 1.60, 1.45, 1.30, 1.15}, [6]float64{2.044187, 1.820235, 1.610854, 1.431408, 1.269381, 1.123364}},
	}
	feeds := [6]float64{0.16, 0.25, 0.4, 0.63, 1.0, 1.6}
	var list []outside.Check
	for _, row := range rows {
		for i, feed := range feeds {
			got := func() (float64, error) {
				for j, n := range WorkNames() {
					if n == row.name {
						w, err := WorkAt(float64(j))
						if err != nil {
							return 0, err
						}
						kc, err := SpecificForce(w, feed*mm*perTurn, 45*degree)
						return kc / 1e9, err
					}
				}
				return math.NaN(), nil
			}
			what := row.name + ", specific force at a printed feed"
			list = append(list,
				outside.Check{row.id, what, chuck, outside.Published, "kN/mm²", row.printed[i], near(row.printed[i], row.share), got},
				outside.Check{row.id, what, "kc11·h^-m, constants from memory (AWF 158, König)", outside.Memory, "kN/mm²", row.exact[i], 6e-7, got})
		}
	}
	return list
}

func cutChecks() []outside.Check {
	f11 := CutInput{Work: Work{Specific: 2500 * mpa, Exponent: 0.26}, Diameter: 152.4 * mm, Depth: 2 * mm, Feed: 0.25 * mm * perTurn, Lead: 95 * degree, Speed: 120 / minute, PushShare: 0.5, Drive: 1}
	cut := func(figure func(CutResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := Cut(f11)
			return figure(r), err
		}
	}
	const f11Source = "Kienzle's law; constants from memory (AWF 158, König)"
	const hp = 550 * lbf * 12 * inch
	f16 := VolumeInput{Before: 0.5 * inch, After: 0.48 * inch, Rotation: 400 * turn / minute, FeedRate: 8 * inch / minute, Length: 6 * inch, UnitPower: 1.47 * hp * minute / (inch * inch * inch)}
	f17 := VolumeInput{Before: 75 * mm, After: 65 * mm, Rotation: 400 * turn / minute, FeedRate: 250 * mm / minute, Length: 200 * mm, UnitPower: 3.0e9}
	f17high := f17
	f17high.UnitPower = 4.1e9
	volume := func(in VolumeInput, figure func(VolumeResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := CutByUnitPower(in)
			return figure(r), err
		}
	}
	cuin := inch * inch * inch
	const kalpakjian = "Kalpakjian & Schmid example 23.1, from memory"
	const titanium = "data of tutorsglobe.com question 5746658"
	list := []outside.Check{
		{"F1", "turning power", "tool maker's technical information, cutting power for turning", outside.Published, "kW", 4.65, 1e-9, func() (float64, error) {
			p, err := CuttingPower(3*mm, 0.2*mm*perTurn, 120/minute, 3100*mpa, 0.8)
			return p / 1000, err
		}},
		{"F11", "chip thickness", f11Source, outside.Memory, "mm", 0.2490486745, near(0.25, 1e-9), cut(func(r CutResult) float64 { return r.Chip / mm })},
		{"F11", "chip width", f11Source, outside.Memory, "mm", 2.007639675, near(2, 1e-9), cut(func(r CutResult) float64 { return r.Width / mm })},
		{"F11", "cutting force", f11Source, outside.Memory, "N", 1794.221729, near(1794, 1e-9), cut(func(r CutResult) float64 { return r.Force })},
		{"F11", "torque", f11Source, outside.Memory, "N·m", 136.7196958, near(136, 1e-9), cut(func(r CutResult) float64 { return r.Torque })},
		{"F11", "power", f11Source, outside.Memory, "kW", 3.588443459, near(3.6, 1e-9), cut(func(r CutResult) float64 { return r.Power / 1000 })},
		{"F11", "spindle", f11Source, outside.Memory, "rpm", 250.6377057, near(250, 1e-9), cut(func(r CutResult) float64 { return r.Rotation * minute / turn })},
		{"F11", "metal removed", f11Source, outside.Memory, "cm³/min", 60, near(60, 1e-9), cut(func(r CutResult) float64 { return r.Removal * 1e6 * minute })},
		{"F16", "speed", kalpakjian, outside.Memory, "ft/min", 52.359878, near(52, 1e-7), volume(f16, func(r VolumeResult) float64 { return r.Speed / sfpm })},
		{"F16", "metal removed", kalpakjian, outside.Memory, "in³/min", 0.123, near(0.123, 0.02), volume(f16, func(r VolumeResult) float64 { return r.Removal / cuin * minute })},
		{"F16", "time", kalpakjian, outside.Memory, "min", 0.75, 1e-9, volume(f16, func(r VolumeResult) float64 { return r.Time / minute })},
		{"F16", "power", kalpakjian, outside.Memory, "hp", 0.181, near(0.181, 0.02), volume(f16, func(r VolumeResult) float64 { return r.Power / hp })},
		{"F16", "torque", kalpakjian, outside.Memory, "lbf·in", 29, near(29, 0.02), volume(f16, func(r VolumeResult) float64 { return r.Torque / (lbf * inch) })},
		{"F16", "force", kalpakjian, outside.Memory, "lbf", 118, near(118, 0.02), volume(f16, func(r VolumeResult) float64 { return r.Force / lbf })},
		{"F16", "metal removed, unrounded", "the same data", outside.Computed, "in³/min", 0.12315043, near(0.12, 1e-7), volume(f16, func(r VolumeResult) float64 { return r.Removal / cuin * minute })},
		{"F16", "power, unrounded", "the same data", outside.Computed, "hp", 0.18103114, near(0.18, 1e-7), volume(f16, func(r VolumeResult) float64 { return r.Power / hp })},
		{"F16", "torque, unrounded", "the same data", outside.Computed, "lbf·in", 28.52388, near(28.5, 2e-7), volume(f16, func(r VolumeResult) float64 { return r.Torque / (lbf * inch) })},
		{"F16", "force, unrounded", "the same data", outside.Computed, "lbf", 116.424, near(116.4, 1e-5), volume(f16, func(r VolumeResult) float64 { return r.Force / lbf })},
		{"F17", "speed", titanium, outside.Computed, "m/min", 94.24778, near(94, 1e-7), volume(f17, func(r VolumeResult) float64 { return r.Speed * minute })},
		{"F17", "metal removed", titanium, outside.Computed, "mm³/min", 274889.3572, near(274889, 1e-7), volume(f17, func(r VolumeResult) float64 { return r.Removal * 1e9 * minute })},
		{"F17", "time", titanium, outside.Computed, "min", 0.8, 1e-9, volume(f17, func(r VolumeResult) float64 { return r.Time / minute })},
		{"F17", "least power", titanium, outside.Computed, "kW", 13.744468, near(13.7, 1e-7), volume(f17, func(r VolumeResult) float64 { return r.Power / 1000 })},
		{"F17", "most power", titanium, outside.Computed, "kW", 18.784106, near(18.8, 1e-7), volume(f17high, func(r VolumeResult) float64 { return r.Power / 1000 })},
		{"F17", "least force", titanium, outside.Computed, "N", 9375, near(9375, 1e-7), volume(f17, func(r VolumeResult) float64 { return r.Force })},
		{"F17", "most force", titanium, outside.Computed, "N", 12812.5, near(12812, 1e-7), volume(f17high, func(r VolumeResult) float64 { return r.Force })},
	}
	list = append(list, fitChecks()...)
	return append(list, speedChecks()...)
}

// fitChecks fits Kienzle's law to a maker's table of specific force against feed.
func fitChecks() []outside.Check {
	const table = "tool maker's technical information, cutting power for turning (table); the fit is ours by another program"
	feeds := [5]float64{0.1, 0.2, 0.3, 0.4, 0.6}
	var list []outside.Check
	for _, row := range []struct {
		name     string
		kc       [5]float64
		kc1, exp float64
	}{
		{"mild steel 520 MPa", [5]float64{3610, 3100, 2720, 2500, 2280}, 1987.6392, 0.26309649},
		{"medium steel 620", [5]float64{3080, 2700, 2570, 2450, 2300}, 2112.5993, 0.16070166},
		{"hard steel 720", [5]float64{4050, 3600, 3250, 2950, 2640}, 2378.7765, 0.24116329},
		{"Cr-Mo 730", [5]float64{4500, 3900, 3400, 3150, 2850}, 2497.1877, 0.26099583},
		{"Cr-Mo 600", [5]float64{3610, 3200, 2880, 2700, 2500}, 2243.9525, 0.20983855},
		{"inoculated iron 360", [5]float64{2300, 1930, 1730, 1600, 1450}, 1267.0153, 0.25932581},
		{"gray iron 200 HB", [5]float64{2110, 1800, 1600, 1400, 1330}, 1138.819, 0.27145656},
	} {
		fitted := func() (Work, error) {
			var points []FeedForce
			for i, f := range feeds {
				points = append(points, FeedForce{f * mm * perTurn, row.kc[i] * mpa})
			}
			return FitKienzle(row.name, points)
		}
		list = append(list,
			outside.Check{"F2", row.name + ", kc at 1 mm/rev", table, outside.Computed, "N/mm²", row.kc1, near(row.kc1, 1e-6), func() (float64, error) {
				w, err := fitted()
				return w.Specific / mpa, err
			}},
			outside.Check{"F2", row.name + ", exponent", table, outside.Computed, "1", row.exp, 1e-6, func() (float64, error) {
				w, err := fitted()
				return w.Exponent, err
			}})
	}
	return list
}

func speedChecks() []outside.Check {
	var list []outside.Check
	for _, row := range []struct {
		id, name    string
		tool        float64
		low, high   float64
		least, most float64 // feeds, in/rev
		table       string
		trust       outside.Confidence
	}{
		{"F14", "soft cast iron", 0, 100, 120, 0, 0, handout, outside.Published},
		{"F14", "hard cast iron", 0, 80, 80, 0, 0, handout, outside.Published},
		{"F14", "mild steel", 0, 110, 110, 0, 0, handout, outside.Published},
		{"F14", "mild steel", 1, 110, 220, 0, 0, handout, outside.Published},
		{"F14", "cast steel", 0, 50, 50, 0, 0, handout, outside.Published},
		{"F14", "hard alloy steel", 0, 60, 60, 0, 0, handout, outside.Published},
		{"F14", "tool steel", 0, 60, 60, 0, 0, handout, outside.Published},
		{"F15", "stainless, roughing", 0, 20, 40, 0.020, 0.040, tm43, outside.Published},
		{"F15", "stainless, roughing", 1, 150, 200, 0.010, 0.030, tm43, outside.Published},
		{"F15", "stainless, finishing", 0, 50, 80, 0.008, 0.015, tm43, outside.Published},
		{"F15", "stainless, finishing", 1, 150, 300, 0.008, 0.018, tm43, outside.Published},
	} {
		read := func(figure func(SpeedResult) float64) func() (float64, error) {
			return func() (float64, error) {
				for i, n := range SpeedNames() {
					if n == row.name {
						r, err := SurfaceSpeed(float64(i), row.tool)
						return figure(r), err
					}
				}
				return math.NaN(), nil
			}
		}
		what := row.name + ", " + ToolNames()[int(row.tool)]
		list = append(list,
			outside.Check{row.id, what + ", slowest", row.table, row.trust, "sfpm", row.low, 1e-9, read(func(r SpeedResult) float64 { return r.Low / sfpm })},
			outside.Check{row.id, what + ", fastest", row.table, row.trust, "sfpm", row.high, 1e-9, read(func(r SpeedResult) float64 { return r.High / sfpm })},
			outside.Check{row.id, what + ", least feed", row.table, row.trust, "in/rev", row.least, 1e-9, read(func(r SpeedResult) float64 { return r.FeedLow / ipr })},
			outside.Check{row.id, what + ", most feed", row.table, row.trust, "in/rev", row.most, 1e-9, read(func(r SpeedResult) float64 { return r.FeedHigh / ipr })})
	}
	return list
}

func finishChecks() []outside.Check {
	const short = "f²/(8r): tool maker's turning technical information 2016 p. 28"
	const quad = "quadrature of the arc by scipy"
	var list []outside.Check
	for _, row := range []struct {
		id                    string
		feed, nose            float64
		rough, exact, ra0, ra float64
	}{
		{"F18", 0.2, 0.8, 6.25, 6.274606681, 1.603750748, 1.608793668},
		{"F19", 0.1, 0.4, 3.125, 3.13730334, 0.8018753739, 0.8043968339},
		{"F20", 0.3, 1.2, 9.375, 9.411910021, 2.405626122, 2.413190502},
	} {
		read := func(figure func(RoughnessResult) float64) func() (float64, error) {
			return func() (float64, error) {
				r, err := Roughness(row.feed*mm*perTurn, row.nose*mm)
				return figure(r) / micron, err
			}
		}
		list = append(list,
			outside.Check{row.id, "peak to valley, short form", short, outside.Published, "µm", row.rough, near(row.rough, 1e-8), read(func(r RoughnessResult) float64 { return r.HeightRough })},
			outside.Check{row.id, "peak to valley", quad, outside.Computed, "µm", row.exact, near(row.exact, 1e-8), read(func(r RoughnessResult) float64 { return r.Height })},
			outside.Check{row.id, "Ra, short form", "f²/(18√3·r)", outside.Computed, "µm", row.ra0, near(row.ra0, 1e-8), read(func(r RoughnessResult) float64 { return r.RaRough })},
			outside.Check{row.id, "Ra", quad, outside.Computed, "µm", row.ra, near(row.ra, 1e-8), read(func(r RoughnessResult) float64 { return r.Ra })})
	}
	for _, row := range []struct {
		id             string
		k, c, e, n     float64
		share, one, nn float64
	}{
		{"E1", 20000, 1500, 0.5, 3, 0.0697674418605, 0.0348837209302, 0.000169796370131},
		{"E2", 8000, 2400, 0.8, 2, 0.230769230769, 0.184615384615, 0.0426035502959},
		{"E3", 30000, 600, 0.1, 2, 0.0196078431373, 0.00196078431373, 3.84467512495e-05},
	} {
		read := func(figure func(CopyingResult) float64) func() (float64, error) {
			return func() (float64, error) {
				r, err := Copying(CopyingInput{Stiffness: row.k * perMM, CutStiffness: row.c * perMM, OutOfRound: row.e * mm, Passes: row.n})
				return figure(r), err
			}
		}
		const from = "balance of cutting force and bar, by root-solving; no published example found"
		list = append(list,
			outside.Check{row.id, "share that a pass leaves", from, outside.Memory, "1", row.share, near(row.share, 1e-9), read(func(r CopyingResult) float64 { return r.Share })},
			outside.Check{row.id, "after one pass", from, outside.Memory, "mm", row.one, near(row.one, 1e-9), read(func(r CopyingResult) float64 { return r.First / mm })},
			outside.Check{row.id, "after all passes", from, outside.Memory, "mm", row.nn, near(row.nn, 1e-9), read(func(r CopyingResult) float64 { return r.Last / mm })})
	}
	return list
}
