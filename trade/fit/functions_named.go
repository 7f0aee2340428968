package fit

import (
	"errors"

	"gudgeon/trade"
)

var errNotNamed = errors.New("the fit is not one of the tables'; write it as H7/p6 or FN2")

// namedFits lists every fit the tables can give, as a drawing names it: each ISO
// hole with each shaft, then the ANSI fits.
func namedFits() []string {
	var names []string
	for _, hole := range HoleClasses() {
		for _, shaft := range ShaftClasses() {
			names = append(names, hole+"/"+shaft)
		}
	}
	return append(names, InchFits()...)
}

// namedFunction finds a fit by its name, as Named does, from its place in
// namedFits.
func namedFunction() trade.Function {
	names, shafts := namedFits(), len(ShaftClasses())
	pairs := len(HoleClasses()) * shafts
	return trade.Worked(trade.Function{
		Name:    "fit.named",
		About:   "Limits and clearance of a fit as a drawing names it: H7/p6 by ISO 286, FN2 by ANSI B4.1. The two are not the same numbers.",
		Formula: "least clearance = hole low - shaft high; most = hole high - shaft low",
		Params: []trade.Param{
			isoSizeRange.Param("size", nominal),
			trade.Choice("fit", "name of the fit", names...),
		},
		Results: pairResults(),
		Source:  isoSource + "; " + inchSource,
		Example: `fit.named(mm(100), "H7/p6").most_interference`,
	}, func(x []float64) (FitResult, error) {
		i, ok := trade.Chosen(x[1], len(names))
		if !ok {
			return FitResult{}, errNotNamed
		}
		if i < pairs {
			return isoPair(x[0], float64(i/shafts), float64(i%shafts))
		}
		return inchPair(x[0], float64(i-pairs))
	}, putPair)
}
