package fit

import (
	"gudgeon/trade"
	"gudgeon/units"
)

// bounds is the range of one quantity, written once for both the check in the
// typed function and the parameter in the catalogue, so that they cannot differ.
type bounds struct {
	what      string
	low, high float64
	kind      units.Kind
	why       string
}

func (b bounds) check(x float64) error {
	return trade.InRange(b.what, x, b.low, b.high, b.kind, b.why)
}

func (b bounds) param(name, about string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: b.kind, Low: b.low, High: b.high}
}

// optional is param with a value for when it is left out.
func (b bounds) optional(name, about string, value float64) trade.Param {
	p := b.param(name, about)
	p.Optional, p.Default = true, value
	return p
}

// firstError checks several quantities in the order they are given.
func firstError(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

const (
	inch    = 0.0254
	mm      = 0.001
	micron  = 1e-6
	thou    = inch / 1000
	sameDim = 1e-9 // a size this near a boundary, m, lies on it
)

var (
	isoSizeRange  = bounds{"nominal size", 3 * mm, 500 * mm, units.Length, "the ISO table here covers over 3 to 500 mm"}
	inchSizeRange = bounds{"nominal size", 0.71 * inch, 9.85 * inch, units.Length, "the ANSI table here covers over 0.71 to 9.85 in"}
	measuredRange = bounds{"measured diameter", 2.9 * mm, 510 * mm, units.Length, ""}
	boreRange     = bounds{"bushing bore", 1 * mm, 2, units.Length, ""}
	pinRange      = bounds{"pin diameter", 1 * mm, 2, units.Length, ""}
	diameterRange = bounds{"interface diameter", 2 * mm, 2, units.Length, ""}
	tightRange    = bounds{"interference", 0, 10 * mm, units.Length, "with clearance the bushing is not held"}
	closeInRange  = bounds{"close-in of the bore", 0, 10 * mm, units.Length, ""}
	tempRange     = bounds{"temperature", 200, 600, units.Temperature, "expansion is taken as constant"}
)
