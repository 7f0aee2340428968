package setup

import (
	"errors"

	"gudgeon/trade"
)

// Functions lists what a rule sheet can call from this package.
//
// Source: each function's own.
func Functions() []trade.Function {
	list := angleFunctions()
	list = append(list, shimFunctions()...)
	list = append(list, boltFunctions()...)
	return append(list, sizeFunctions()...)
}

// pick turns the index of a choice into one of n small types.
func pick[T ~uint8](what string, x float64, n int) (T, error) {
	i, ok := trade.Chosen(x, n)
	if !ok {
		return 0, errors.New(what + " is not in the list")
	}
	return T(i), nil
}
