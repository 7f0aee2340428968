package bar

import (
	"gudgeon/trade"
	"gudgeon/units"
)

// Functions lists what a rule sheet can call from this package.
//
// Source: each function's own.
func Functions() []trade.Function {
	list := stiffnessFunctions()
	list = append(list, cutFunctions()...)
	return append(list, planFunctions()...)
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

func materialParam() trade.Param {
	return choice("material", "What the bar is made of", MaterialNames())
}

func workParam() trade.Param {
	return choice("work", "Metal to be cut: St 50 mild, St 60 medium, St 70 harder carbon steel; 42CrMo4 is much like 4140; GS-52 cast steel; GG-25 gray iron. No figures for weld metal were found: take a hard row", WorkNames())
}

func leadParam() trade.Param {
	return leadRange.optional("lead", "Angle of the cutting edge to the feed; 90° is square", 90*degree)
}

func pushParam() trade.Param {
	return shareRange.optional("push_share", "Share of the cutting force that pushes the bar off", 0.5)
}

func holeParam() trade.Param {
	return boreRange.optional("hole", "Hole through the bar, 0 for solid", 0)
}

func result(name, about string, kind units.Kind, unit string, round trade.Rounding) trade.Result {
	return trade.Result{Name: name, About: about, Kind: kind, Unit: unit, Round: round}
}
