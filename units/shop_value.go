package units

import (
	"fmt"
	"math"
)

// Finenesses is how many roundings ShopValue knows, from coarse to exact.
const Finenesses = 8

// ShopValue moves x, an SI value, on to one that a shop would set: away from
// where it came from, so up when up is true. change is how far it has come. With
// fractions, lengths in inches end on halves, quarters and so on to 1/64; all
// else on 1, 2 or 5 of some decimal place. Fineness goes from 0, coarse, to
// Finenesses-1, which gives x as it is.
func ShopValue(x float64, u Unit, fractions, up bool, change float64, fineness int) (float64, string) {
	if fineness >= Finenesses-1 {
		return x, ShowDigits(x, u, roundingTo(up), 2)
	}
	step := decimalStep(math.Abs(change/u.Factor), fineness)
	fractions = fractions && u.Name == "inch"
	if fractions {
		step = math.Pow(2, -float64(fineness))
	}
	v := u.FromSI(x)
	steps := v / step
	whole := math.Round(steps)
	if math.Abs(steps-whole) > 1e-9*math.Max(1, math.Abs(steps)) {
		whole = math.Floor(steps)
		if up {
			whole++
		}
	}
	v = whole * step
	if fractions {
		return u.ToSI(v), attach(fraction(v), u)
	}
	places := max(0, -int(math.Floor(math.Log10(step)+1e-9))) // as many as the step needs
	return u.ToSI(v), attach(group(round(v, places, Nearest)), u)
}

func roundingTo(up bool) Rounding {
	if up {
		return Up
	}
	return Down
}

// decimalStep is 1, 2 or 5 of the decimal place that is some way below a
// change: a fifth of it or less, then finer and finer.
func decimalStep(change float64, fineness int) float64 {
	if change == 0 {
		change = 1
	}
	place := math.Floor(math.Log10(change / 5))
	mantissas := [...]float64{5, 2, 1}
	step := mantissas[fineness%3] * math.Pow10(int(place)-fineness/3)
	return step
}

// fraction writes a number of inches the way a tape is read: 27-1/4.
func fraction(v float64) string {
	sign := ""
	if v < 0 {
		sign, v = "-", -v
	}
	whole, part := math.Modf(v)
	if part == 0 {
		return sign + group(fmt.Sprintf("%.0f", whole))
	}
	over, under := part*64, 64
	for under > 2 && math.Mod(over, 2) == 0 {
		over, under = over/2, under/2
	}
	if whole == 0 {
		return fmt.Sprintf("%s%.0f/%d", sign, over, under)
	}
	return fmt.Sprintf("%s%s-%.0f/%d", sign, group(fmt.Sprintf("%.0f", whole)), over, under)
}
