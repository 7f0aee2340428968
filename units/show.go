package units

import (
	"math"
	"strconv"
	"strings"
)

// Rounding says which way printing may move a number.
type Rounding int8

// The roundings. A capacity rounds Down, a demand rounds Up.
const (
	Nearest Rounding = iota
	Down
	Up
)

// Show prints x, an SI value of kind k, in the usual unit of shop s.
func Show(x float64, k Kind, s System, r Rounding) string {
	return ShowIn(x, Usual(k, s), r)
}

// ShowIn prints x, an SI value, in unit u with the digits that are worth reading.
func ShowIn(x float64, u Unit, r Rounding) string {
	return ShowDigits(x, u, r, 0)
}

// ShowDigits is ShowIn with extra decimals, for when two numbers must be told apart.
func ShowDigits(x float64, u Unit, r Rounding, extra int) string {
	switch {
	case math.IsNaN(x):
		return "not known"
	case math.IsInf(x, 0):
		return "without limit"
	}
	v := u.FromSI(x)
	text := group(round(v, u.decimals(v)+extra, r))
	return attach(text, u)
}

// Rounded is the number that ShowDigits prints, in unit u.
func Rounded(x float64, u Unit, r Rounding, extra int) float64 {
	v := u.FromSI(x)
	rounded, err := strconv.ParseFloat(round(v, u.decimals(v)+extra, r), 64)
	if err != nil {
		return v
	}
	return rounded
}

func attach(number string, u Unit) string {
	if u.Symbol == "" {
		return number
	}
	if u.Name == "hours" && number == "0" {
		number = "12" // a clock has no 0
	}
	if u.Symbol == "%" || u.Symbol == "°" {
		return number + u.Symbol
	}
	return number + " " + u.Symbol
}

// decimals is how many places of v are worth printing: always the full places
// for lengths, about four significant digits for the rest.
func (u Unit) decimals(v float64) int {
	if u.fixed || v == 0 {
		return u.places
	}
	d := 3 - int(math.Floor(math.Log10(math.Abs(v))))
	return min(max(d, 0), u.places)
}

// round writes v with the given decimals, moving it only the allowed way, and
// drops zeros at the end. What is within float error of a printed value is
// printed as that value: 28.000000000000004 is 28, not 28.0001.
func round(v float64, decimals int, r Rounding) string {
	p := math.Pow10(decimals)
	scaled := v * p
	whole := math.Round(scaled)
	if math.Abs(scaled-whole) > 1e-6+math.Abs(scaled)*1e-12 {
		switch r {
		case Down:
			whole = math.Floor(scaled)
		case Up:
			whole = math.Ceil(scaled)
		}
	}
	text := strconv.FormatFloat(whole/p, 'f', decimals, 64)
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		return "0"
	}
	return text
}

// group puts commas between thousands.
func group(number string) string {
	sign, digits := "", number
	if strings.HasPrefix(digits, "-") {
		sign, digits = "-", digits[1:]
	}
	whole, rest, found := strings.Cut(digits, ".")
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	if found {
		whole += "." + rest
	}
	return sign + whole
}

// Exact prints x, a finite SI value, in unit u so that Parse gives x back, bit
// for bit. Where no decimal number of u does that, it falls back on the SI unit
// of the kind.
func Exact(x float64, u Unit) string {
	v := u.FromSI(x)
	for _, c := range []float64{v, math.Nextafter(v, math.Inf(1)), math.Nextafter(v, math.Inf(-1))} {
		if u.ToSI(c) == x {
			return attach(plain(c), u)
		}
	}
	for _, si := range OfKind(u.Kind) {
		if si.Factor == 1 && si.Offset == 0 {
			return plain(x) + " " + si.Name // the name, since a ratio has no symbol
		}
	}
	return attach(plain(v), u)
}

func plain(v float64) string {
	if a := math.Abs(v); v != 0 && (a < 1e-6 || a >= 1e15) {
		return strconv.FormatFloat(v, 'e', -1, 64)
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}
