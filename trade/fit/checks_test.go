package fit

import (
	"testing"

	"gudgeon/trade/outside"
)

func TestChecks(t *testing.T) { outside.Run(t, "fit", checks()) }

func checks() []outside.Check { return append(isoChecks(), inchChecks()...) }

const (
	exact = 1e-9 // the tables hold decimal numbers: nothing but float error
)

// deviation reads one limit of a class in µm.
func deviation(size float64, class string, upper bool) func() (float64, error) {
	return func() (float64, error) {
		r, err := Limits(size, class)
		if upper {
			return r.Deviation.Upper / micron, err
		}
		return r.Deviation.Lower / micron, err
	}
}

func clearance(size float64, name string, unit float64, most bool) func() (float64, error) {
	return func() (float64, error) {
		r, err := Named(size, name)
		if most {
			return r.MostClearance / unit, err
		}
		return r.LeastClearance / unit, err
	}
}

// limit reads one of the four limits of size of a fit.
func limit(size float64, name string, unit float64, pick func(FitResult) float64) func() (float64, error) {
	return func() (float64, error) {
		r, err := Named(size, name)
		return (size + pick(r)) / unit, err
	}
}

func holeLow(r FitResult) float64   { return r.Hole.Lower }
func holeHigh(r FitResult) float64  { return r.Hole.Upper }
func shaftLow(r FitResult) float64  { return r.Shaft.Lower }
func shaftHigh(r FitResult) float64 { return r.Shaft.Upper }

func isoChecks() []outside.Check {
	const byjus = "byjus.com, 64 mm H8f7"
	const mdNote = "Machine Drawing (Narayana, Kannaiah, Reddy) Table 15.3 p.221 note"
	const ex31, ex32 = "Bhandari, Design of Machine Elements EX3.1", "Bhandari, Design of Machine Elements EX3.2"
	const ex77, ex78 = "Shigley 9th ed. Example 7-7", "Shigley 9th ed. Example 7-8"
	const sm = "Shigley 8th ed. instructor's solutions 3-64"
	const cor = "ISO 286-2:1988/Cor.1:2006"
	return []outside.Check{
		{"ISO-1", "64 H8 upper", byjus, outside.Published, "µm", 46, exact, deviation(64*mm, "H8", true)},
		{"ISO-1", "64 H8 lower", byjus, outside.Published, "µm", 0, exact, deviation(64*mm, "H8", false)},
		{"ISO-1", "64 f7 upper (the page misprints the computed -30.1 as -0.30115 mm)", byjus, outside.Published, "µm", -30, exact, deviation(64*mm, "f7", true)},
		{"ISO-1", "64 f7 lower", byjus, outside.Published, "µm", -60, exact, deviation(64*mm, "f7", false)},
		{"ISO-1", "64 H8/f7 least clearance", byjus, outside.Published, "mm", 0.030, exact, clearance(64*mm, "H8/f7", mm, false)},
		{"ISO-2", "IT11 at 40 mm is 160, not the computed 156.1", "ISO 286 IT table", outside.Published, "µm", 160, exact, grade(40*mm, "IT11")},
		{"ISO-2", "IT6 at 5 mm is 8, not the computed 7.3", "ISO 286 IT table", outside.Published, "µm", 8, exact, grade(5*mm, "IT6")},
		{"ISO-2", "IT11 at 450 mm is 400, not the computed 388.8", "ISO 286 IT table", outside.Published, "µm", 400, exact, grade(450*mm, "IT11")},
		{"ISO-3", "P7 at 25 mm, upper", mdNote, outside.Published, "µm", -14, exact, deviation(25*mm, "P7", true)},
		{"ISO-3", "P7 at 25 mm, lower", mdNote, outside.Published, "µm", -35, exact, deviation(25*mm, "P7", false)},
		{"PF-2", "40 s6 upper", sm, outside.Published, "µm", 59, exact, deviation(40*mm, "s6", true)},
		{"PF-2", "40 s6 lower", sm, outside.Published, "µm", 43, exact, deviation(40*mm, "s6", false)},
		{"PF-2", "40 H7 upper", sm, outside.Published, "µm", 25, exact, deviation(40*mm, "H7", true)},
		{"ISO-5", "20 H7/s6 hole high", ex32, outside.Published, "mm", 20.021, exact, limit(20*mm, "H7/s6", mm, holeHigh)},
		{"ISO-5", "20 H7/s6 shaft low", ex32, outside.Published, "mm", 20.035, exact, limit(20*mm, "H7/s6", mm, shaftLow)},
		{"ISO-5", "20 H7/s6 shaft high", ex32, outside.Published, "mm", 20.048, exact, limit(20*mm, "H7/s6", mm, shaftHigh)},
		{"ISO-5", "20 H7/s6 least interference", ex32, outside.Published, "mm", -0.014, exact, clearance(20*mm, "H7/s6", mm, true)},
		{"ISO-5", "20 H7/s6 most interference", ex32, outside.Published, "mm", -0.048, exact, clearance(20*mm, "H7/s6", mm, false)},
		{"ISO-6", "20 H6/e7 hole high", ex31, outside.Published, "mm", 20.013, exact, limit(20*mm, "H6/e7", mm, holeHigh)},
		{"ISO-6", "20 H6/e7 shaft low", ex31, outside.Published, "mm", 19.939, exact, limit(20*mm, "H6/e7", mm, shaftLow)},
		{"ISO-6", "20 H6/e7 shaft high", ex31, outside.Published, "mm", 19.960, exact, limit(20*mm, "H6/e7", mm, shaftHigh)},
		{"ISO-6", "20 H6/e7 least clearance", ex31, outside.Published, "mm", 0.040, exact, clearance(20*mm, "H6/e7", mm, false)},
		{"ISO-6", "20 H6/e7 most clearance", ex31, outside.Published, "mm", 0.074, exact, clearance(20*mm, "H6/e7", mm, true)},
		{"ISO-7", "34 H11/c11 hole high", ex77, outside.Published, "mm", 34.160, exact, limit(34*mm, "H11/c11", mm, holeHigh)},
		{"ISO-7", "34 H11/c11 shaft low", ex77, outside.Published, "mm", 33.720, exact, limit(34*mm, "H11/c11", mm, shaftLow)},
		{"ISO-7", "34 H11/c11 shaft high", ex77, outside.Published, "mm", 33.880, exact, limit(34*mm, "H11/c11", mm, shaftHigh)},
		// The book's inch form rounds the ranges to inches, so its 2.00 in stands
		// in the row that ends at 50 mm here: see TestTwoInchIsOverFiftyMillimetres.
		{"ISO-8", "H7/s6 to 50 mm in inches, hole high", ex78, outside.Published, "in", 0.0010, 0.00005, inchOf(50*mm, "H7/s6", holeHigh)},
		{"ISO-8", "H7/s6 to 50 mm in inches, shaft low", ex78, outside.Published, "in", 0.0017, 0.00005, inchOf(50*mm, "H7/s6", shaftLow)},
		{"ISO-8", "H7/s6 to 50 mm in inches, shaft high", ex78, outside.Published, "in", 0.0023, 0.00005, inchOf(50*mm, "H7/s6", shaftHigh)},
		{"ISO-9", "E8 over 80 to 120: 126, not the 125 first printed", cor, outside.Published, "µm", 126, exact, deviation(100*mm, "E8", true)},
		{"ISO-9", "R10 over 18 to 30: -28, not the -10 first printed", cor, outside.Published, "µm", -28, exact, deviation(25*mm, "R10", true)},
		{"ISO-9", "f9 over 250 to 315: -186, not the -185 first printed", cor, outside.Published, "µm", -186, exact, deviation(300*mm, "f9", false)},
		{"ISO-10", "M6 over 250 to 315: -9, not the -11 of the rule", "Machine Drawing (Narayana, Kannaiah, Reddy) p.219 footnote", outside.Published, "µm", -9, exact, deviation(300*mm, "M6", true)},
		{"ISO-11", "h8 over 30 to 50 is -39, not the +39 seen on one page", "ISO 286-2", outside.Published, "µm", -39, exact, deviation(40*mm, "h8", false)},
	}
}

func grade(size float64, name string) func() (float64, error) {
	return func() (float64, error) {
		w, err := ToleranceGrade(size, name)
		return w / micron, err
	}
}

func inchOf(size float64, name string, pick func(FitResult) float64) func() (float64, error) {
	return func() (float64, error) {
		r, err := Named(size, name)
		return pick(r) / inch, err
	}
}

func inchChecks() []outside.Check {
	const mh27 = "Machinery's Handbook 27 Table 11 p.663"
	const mh31 = "Machinery's Handbook 31 Table 8a"
	thouOf := func(size float64, name string, pick func(FitResult) float64) func() (float64, error) {
		return func() (float64, error) {
			r, err := Named(size, name)
			return pick(r) / thou, err
		}
	}
	return []outside.Check{
		{"AN-1", "FN2 at 2.25 in, hole high", mh27, outside.Published, "thou", 1.2, exact, thouOf(2.25*inch, "FN2", holeHigh)},
		{"AN-1", "FN2 at 2.25 in, shaft low", mh27, outside.Published, "thou", 2.0, exact, thouOf(2.25*inch, "FN2", shaftLow)},
		{"AN-1", "FN2 at 2.25 in, shaft high", mh27, outside.Published, "thou", 2.7, exact, thouOf(2.25*inch, "FN2", shaftHigh)},
		{"AN-1", "FN2 at 2.25 in, least interference", mh27, outside.Published, "thou", -0.8, exact, clearance(2.25*inch, "FN2", thou, true)},
		{"AN-1", "FN2 at 2.25 in, most interference", mh27, outside.Published, "thou", -2.7, exact, clearance(2.25*inch, "FN2", thou, false)},
		{"AN-2", "FN3 at 2.5 in, hole high", mh27, outside.Published, "thou", 1.2, exact, thouOf(2.5*inch, "FN3", holeHigh)},
		{"AN-2", "FN3 at 2.5 in, shaft low", mh27, outside.Published, "thou", 2.5, exact, thouOf(2.5*inch, "FN3", shaftLow)},
		{"AN-2", "FN3 at 2.5 in, shaft high", mh27, outside.Published, "thou", 3.2, exact, thouOf(2.5*inch, "FN3", shaftHigh)},
		{"AN-2", "FN3 at 2.5 in, least interference", mh27, outside.Published, "thou", -1.3, exact, clearance(2.5*inch, "FN3", thou, true)},
		{"AN-2", "FN3 at 2.5 in, most interference", mh27, outside.Published, "thou", -3.2, exact, clearance(2.5*inch, "FN3", thou, false)},
		{"AN-4", "RC4 at 3 in, hole low", mh31, outside.Published, "thou", 0, exact, thouOf(3*inch, "RC4", holeLow)},
		{"AN-4", "RC4 at 3 in, hole high", mh31, outside.Published, "thou", 1.8, exact, thouOf(3*inch, "RC4", holeHigh)},
		{"AN-4", "RC4 at 3 in, shaft low", mh31, outside.Published, "thou", -2.4, exact, thouOf(3*inch, "RC4", shaftLow)},
		{"AN-4", "RC4 at 3 in, least clearance", mh31, outside.Published, "thou", 1.2, exact, clearance(3*inch, "RC4", thou, false)},
		{"AN-4", "RC4 at 3 in, most clearance", mh31, outside.Published, "thou", 4.2, exact, clearance(3*inch, "RC4", thou, true)},
		{"AN-5", "RC4 at 1.97 in lies in the lower row, hole high", mh31, outside.Computed, "thou", 1.6, exact, thouOf(1.97*inch, "RC4", holeHigh)},
		{"AN-5", "FN2 at 1.97 in lies in the lower row, hole high", mh27, outside.Computed, "thou", 1.0, exact, thouOf(1.97*inch, "FN2", holeHigh)},
	}
}
