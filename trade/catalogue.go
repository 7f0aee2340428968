package trade

import (
	"errors"

	"gudgeon/units"
)

// Usual makes a parameter optional; value is used where it is left out.
func (p Param) Usual(value float64) Param {
	p.Optional, p.Default = true, value
	return p
}

// Choice is a parameter that picks one of some words; a call passes its index.
func Choice(name, about string, options ...string) Param {
	return Param{Name: name, About: about, Kind: units.Choice, High: float64(len(options) - 1), Options: options}
}

// Chosen turns the argument of a Choice with n options into an index; ok is
// false for anything but a whole number from 0 to n-1.
func Chosen(x float64, n int) (i int, ok bool) {
	if !(x >= 0 && x < float64(n)) || x != float64(int(x)) {
		return 0, false
	}
	return int(x), true
}

// YesNo is the value of a result of kind yes/no.
func YesNo(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

// ResultOf makes a Result.
func ResultOf(name, about string, kind units.Kind, unit string, round Rounding) Result {
	return Result{Name: name, About: about, Kind: kind, Unit: unit, Round: round}
}

// WordOf makes a Result that is one of some words.
func WordOf(name, about string, options ...string) Result {
	return Result{Name: name, About: about, Kind: units.Choice, Options: options}
}

var errArgs = errors.New("wrong number of arguments or results")

// Plain makes the Call of a Function with a single result, whose formula says
// it all.
func Plain(f Function, work func(x []float64) (float64, error)) Function {
	return Record(f, func(x, out []float64) error {
		y, err := work(x)
		if err != nil {
			return err
		}
		out[0] = y
		return nil
	})
}

// Record makes the Call of a Function with several results.
func Record(f Function, work func(x, out []float64) error) Function {
	params, results := len(f.Params), len(f.Results)
	f.Call = func(in Args, out []float64) error {
		if len(in.X) != params || len(out) != results {
			return errArgs
		}
		return work(in.X, out)
	}
	return f
}

// Worked makes the Call and the Steps of a Function from one typed calculation:
// work reads the arguments, put writes the results. A call that fails has no
// steps.
func Worked[R interface{ Steps() []Step }](f Function, work func(x []float64) (R, error), put func(r R, out []float64)) Function {
	params := len(f.Params)
	f.Steps = func(in Args) []Step {
		if len(in.X) != params {
			return nil
		}
		r, err := work(in.X)
		if err != nil {
			return nil
		}
		return r.Steps()
	}
	return Record(f, func(x, out []float64) error {
		r, err := work(x)
		if err != nil {
			return err
		}
		put(r, out)
		return nil
	})
}
