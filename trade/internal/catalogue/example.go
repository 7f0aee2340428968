package catalogue

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/expr-lang/expr"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gudgeon/trade"
	"gudgeon/units"
)

// quantity is a number with its kind, so that an example cannot give a length
// where a force belongs.
type quantity struct {
	si   float64
	kind units.Kind
}

// runExample evaluates f's example and returns the arguments that it gave to f.
func runExample(t *testing.T, functions []trade.Function, f trade.Function) []float64 {
	t.Helper()
	var got []float64
	env := map[string]any{}
	for _, u := range units.All() {
		env[u.Name] = func(v any) (any, error) {
			n, err := number(v)
			return quantity{u.ToSI(n), u.Kind}, err
		}
	}
	members := map[string]any{}
	for _, g := range functions {
		_, name, _ := strings.Cut(g.Name, ".")
		members[name] = func(args ...any) (any, error) {
			x, err := arrange(g, args)
			if err != nil {
				return nil, err
			}
			if g.Name == f.Name {
				got = x
			}
			return call(g, x)
		}
	}
	pkg, _, _ := strings.Cut(f.Name, ".")
	env[pkg] = members
	value, err := expr.Eval(f.Example, env)
	require.NoError(t, err)
	if _, record := value.(map[string]any); !record {
		assert.IsType(t, quantity{}, value)
	}
	return got
}

// call gives a quantity, or a record of them by name.
func call(f trade.Function, x []float64) (any, error) {
	out := make([]float64, len(f.Results))
	if err := f.Call(trade.Args{X: x}, out); err != nil {
		return nil, err
	}
	if len(out) == 1 {
		return quantity{out[0], f.Results[0].Kind}, nil
	}
	record := map[string]any{}
	for i, r := range f.Results {
		record[r.Name] = quantity{out[i], r.Kind}
	}
	return record, nil
}

// arrange puts positional or named arguments in the order of the parameters.
func arrange(f trade.Function, args []any) ([]float64, error) {
	named, _ := args[0].(map[string]any)
	if named == nil {
		named = map[string]any{}
		for i, a := range args {
			named[f.Params[i].Name] = a
		}
	}
	var x []float64
	for _, p := range f.Params {
		v, ok := named[p.Name]
		if !ok && !p.Optional {
			return nil, fmt.Errorf("%s is missing", p.Name)
		}
		if !ok {
			x = append(x, p.Default)
			continue
		}
		delete(named, p.Name)
		n, err := argument(p, v)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", p.Name, err)
		}
		x = append(x, n)
	}
	if len(named) > 0 {
		return nil, fmt.Errorf("unknown arguments %v", named)
	}
	return x, nil
}

func argument(p trade.Param, v any) (float64, error) {
	switch v := v.(type) {
	case quantity:
		if v.kind != p.Kind {
			return 0, fmt.Errorf("a %s where a %s belongs", v.kind, p.Kind)
		}
		return v.si, nil
	case bool:
		return trade.YesNo(v), nil
	case string:
		i := slices.Index(p.Options, v)
		if i < 0 {
			return 0, fmt.Errorf("no option %q", v)
		}
		return float64(i), nil
	}
	if p.Kind != units.Number && p.Kind != units.Ratio {
		return 0, fmt.Errorf("a bare number where a %s belongs", p.Kind)
	}
	return number(v)
}

func number(v any) (float64, error) {
	switch n := v.(type) {
	case int:
		return float64(n), nil
	case float64:
		return n, nil
	}
	return 0, fmt.Errorf("%v is not a number", v)
}
