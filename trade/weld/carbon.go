package weld

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
)

// Composition is a steel's analysis in shares by mass (0.00405 is 0.405 %).
type Composition struct {
	C, Mn, Si, Cr, Mo, V, Ni, Cu, B float64
}

// limElement bounds one element of a steel that this arithmetic is for.
var (
	limCarbon  = trade.Between("carbon", 0, 0.02, units.Ratio, "more than 2 % is cast iron: these formulas are for steel")
	limElement = trade.Between("element", 0, 0.1, units.Ratio, "these formulas are for carbon and low-alloy steel")
	limBoron   = trade.Between("boron", 0, 0.0002, units.Ratio, "boron is given in hundredths of a percent or less")
)

func (c *Composition) check() error {
	if err := limCarbon.Check(c.C); err != nil {
		return err
	}
	for _, e := range [...]struct {
		name  string
		share float64
	}{{"manganese", c.Mn}, {"silicon", c.Si}, {"chromium", c.Cr}, {"molybdenum", c.Mo}, {"vanadium", c.V}, {"nickel", c.Ni}, {"copper", c.Cu}} {
		if e.share >= limElement.Low && e.share <= limElement.High {
			continue
		}
		return trade.InRange(e.name, e.share, limElement.Low, limElement.High, units.Ratio, limElement.Why)
	}
	return limBoron.Check(c.B)
}

// CarbonEquivalent returns the IIW carbon equivalent, a share by mass.
//
//	CE = C + Mn/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15
//
// Carbon 0 to 2 %, the others 0 to 10 %. Silicon is not in it: that is
// CarbonEquivalentSi. Errors: a *trade.RangeError. Source: International
// Institute of Welding, doc. IX-535-67 (number from memory), as restated in
// engineering references.
func CarbonEquivalent(c Composition) (float64, error) {
	if err := c.check(); err != nil {
		return 0, err
	}
	return c.C + c.Mn/6 + (c.Cr+c.Mo+c.V)/5 + (c.Ni+c.Cu)/15, nil
}

// CarbonEquivalentSi returns the carbon equivalent of the annex on preheat of
// AWS D1.1, a share by mass. It is Si/6 more than the IIW's; limits for one do
// not hold for the other.
//
//	CE = C + (Mn + Si)/6 + (Cr + Mo + V)/5 + (Ni + Cu)/15
//
// Ranges and errors as CarbonEquivalent. Source: AWS D1.1, annex on alternative
// methods for preheat, as restated.
func CarbonEquivalentSi(c Composition) (float64, error) {
	ce, err := CarbonEquivalent(c)
	return ce + c.Si/6, err
}

// Pcm returns the crack-sensitivity parameter of Ito and Bessyo, a share by mass.
//
//	Pcm = C + Si/30 + (Mn + Cu + Cr)/20 + Ni/60 + Mo/15 + V/10 + 5·B
//
// For low-carbon steels (about 0.07 to 0.22 % C, from memory; a richer one is
// not refused, but the number then means little). Ranges and errors as
// CarbonEquivalent; boron 0 to 0.02 %. Source: Ito and Bessyo (1968), as restated.
func Pcm(c Composition) (float64, error) {
	if err := c.check(); err != nil {
		return 0, err
	}
	return c.C + c.Si/30 + (c.Mn+c.Cu+c.Cr)/20 + c.Ni/60 + c.Mo/15 + c.V/10 + 5*c.B, nil
}

// Weldability is a rough word for an IIW carbon equivalent.
type Weldability uint8

// The words, best first.
const (
	Excellent Weldability = iota // up to 0.35 %
	VeryGood                     // up to 0.40 %
	Good                         // up to 0.45 %
	Fair                         // up to 0.50 %
	Poor                         // more
)

func (w Weldability) String() string {
	if int(w) >= 5 {
		return "unknown"
	}
	return [...]string{"excellent", "very good", "good", "fair", "poor"}[w]
}

// WeldabilityOf returns the word for an IIW carbon equivalent, a share by mass
// from 0 to 3 %.
//
//	≤ 0.35 % excellent, ≤ 0.40 % very good, ≤ 0.45 % good, ≤ 0.50 % fair, else poor
//
// Guidance only, no code. A value between two printed bands counts to the worse.
// Errors: a *trade.RangeError. Source: a steel supplier's bands (guidance).
func WeldabilityOf(ce float64) (Weldability, error) {
	if err := limCE.Check(ce); err != nil {
		return 0, err
	}
	for i, top := range [...]float64{0.0035, 0.0040, 0.0045, 0.0050} {
		if ce <= top*(1+1e-12) {
			return Weldability(i), nil
		}
	}
	return Poor, nil
}

var limCE = trade.Between("carbon equivalent", 0, 0.03, units.Ratio, "")

// Pick says which composition of a steel's range to take.
type Pick uint8

// The picks. Top is on the safe side for preheat.
const (
	MidRange Pick = iota
	TopOfRange
)

// Steel is a steel's range of composition.
type Steel struct {
	Name      string
	Low, High Composition
	Note      string
}

const pc = 0.01

// steels are ranges from memory of the standards' tables; a mill certificate or
// a chip analysis of the part beats them.
var steels = [...]Steel{
	{"1018", Composition{C: .15 * pc, Mn: .60 * pc}, Composition{C: .20 * pc, Mn: .90 * pc}, ""},
	{"1020", Composition{C: .18 * pc, Mn: .30 * pc}, Composition{C: .23 * pc, Mn: .60 * pc}, ""},
	{"1045", Composition{C: .43 * pc, Mn: .60 * pc}, Composition{C: .50 * pc, Mn: .90 * pc}, ""},
	{"4130", Composition{C: .28 * pc, Mn: .40 * pc, Si: .15 * pc, Cr: .80 * pc, Mo: .15 * pc}, Composition{C: .33 * pc, Mn: .60 * pc, Si: .35 * pc, Cr: 1.10 * pc, Mo: .25 * pc}, ""},
	{"4140", Composition{C: .38 * pc, Mn: .75 * pc, Si: .15 * pc, Cr: .80 * pc, Mo: .15 * pc}, Composition{C: .43 * pc, Mn: 1.00 * pc, Si: .35 * pc, Cr: 1.10 * pc, Mo: .25 * pc}, ""},
	{"4340", Composition{C: .38 * pc, Mn: .60 * pc, Si: .15 * pc, Cr: .70 * pc, Mo: .20 * pc, Ni: 1.65 * pc}, Composition{C: .43 * pc, Mn: .80 * pc, Si: .35 * pc, Cr: .90 * pc, Mo: .30 * pc, Ni: 2.00 * pc}, ""},
	{"8620", Composition{C: .18 * pc, Mn: .70 * pc, Si: .15 * pc, Cr: .40 * pc, Mo: .15 * pc, Ni: .40 * pc}, Composition{C: .23 * pc, Mn: .90 * pc, Si: .35 * pc, Cr: .60 * pc, Mo: .25 * pc, Ni: .70 * pc}, ""},
	{"A36", Composition{C: .15 * pc, Mn: .60 * pc}, Composition{C: .26 * pc, Mn: .90 * pc, Cu: .20 * pc}, "only the top is specified; thick plate may have more manganese"},
	{"A572-50", Composition{C: .10 * pc, Mn: .50 * pc}, Composition{C: .23 * pc, Mn: 1.35 * pc, Si: .40 * pc, V: .15 * pc}, "only the top is specified"},
	{"cast A27 70-36", Composition{C: .20 * pc, Mn: .50 * pc}, Composition{C: .35 * pc, Mn: .70 * pc, Si: .80 * pc}, "only the top is specified; residual alloy is not counted"},
}

// Steels lists the steels that SteelNamed knows.
func Steels() []string {
	return trade.Names(steels[:], func(s Steel) string { return s.Name })
}

// SteelNamed returns a steel's composition at the middle or the top of its range.
//
//	mid = (low + high)/2
//
// Shares by mass. Error: a steel that is not in Steels. Source: ranges of SAE
// and ASTM tables from memory; 4140 also as restated in an encyclopaedia of
// steel grades.
func SteelNamed(name string, pick Pick) (Composition, error) {
	for i := range steels {
		if steels[i].Name == name {
			return steels[i].pick(pick)
		}
	}
	return Composition{}, errNoSteel
}

var (
	errNoSteel = errors.New("that steel is not in the list: give its analysis instead")
	errPick    = errors.New("pick the middle or the top of the range")
)

func (s *Steel) pick(p Pick) (Composition, error) {
	a, b := &s.Low, &s.High
	switch p {
	case TopOfRange:
		return *b, nil
	case MidRange:
		return Composition{(a.C + b.C) / 2, (a.Mn + b.Mn) / 2, (a.Si + b.Si) / 2, (a.Cr + b.Cr) / 2, (a.Mo + b.Mo) / 2,
			(a.V + b.V) / 2, (a.Ni + b.Ni) / 2, (a.Cu + b.Cu) / 2, (a.B + b.B) / 2}, nil
	}
	return Composition{}, errPick
}
