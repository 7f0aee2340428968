package setup

import (
	"errors"

	"gudgeon/trade"
	"gudgeon/units"
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

type stepper interface{ Steps() []trade.Step }

// worked makes the two calls of a Function from a typed one: work reads the
// arguments, put writes the results.
func worked[R stepper](f trade.Function, work func(x []float64) (R, error), put func(r R, out []float64)) trade.Function {
	f.Call = func(in trade.Args, out []float64) error {
		r, err := work(in.X)
		if err != nil {
			return err
		}
		put(r, out)
		return nil
	}
	f.Steps = func(in trade.Args) []trade.Step {
		r, err := work(in.X)
		if err != nil {
			return nil
		}
		return r.Steps()
	}
	return f
}

// plain makes the call of a Function whose formula says it all.
func plain(f trade.Function, work func(x []float64) (float64, error)) trade.Function {
	f.Call = func(in trade.Args, out []float64) error {
		v, err := work(in.X)
		if err != nil {
			return err
		}
		out[0] = v
		return nil
	}
	return f
}

func choice(name, about string, options []string) trade.Param {
	return trade.Param{Name: name, About: about, Kind: units.Choice, Options: options, High: float64(len(options) - 1)}
}

func result(name, about string, kind units.Kind, unit string, round trade.Rounding) trade.Result {
	return trade.Result{Name: name, About: about, Kind: kind, Unit: unit, Round: round}
}

// pick turns the index of a choice into one of n small types.
func pick[T ~uint8](what string, x float64, n int) (T, error) {
	if !(x >= 0 && x < float64(n)) || x != float64(int(x)) {
		return 0, errors.New(what + " is not in the list")
	}
	return T(x), nil
}
