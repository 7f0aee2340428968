package rules

import (
	"maps"
	"math"
	"slices"
	"sort"
	"sync"

	"gudgeon/rules/source"
	"gudgeon/trade"
	"gudgeon/units"
)

// Library is the set of trade functions that sheets may call.
type Library struct {
	functions map[string]*trade.Function
	groups    map[string]bool // the word before the point: truck, lift, ...

	Instruments Instruments

	own []*source.File // a shop's own files that this library was made with
}

// NewLibrary collects functions.
func NewLibrary(lists ...[]trade.Function) *Library {
	l := &Library{functions: map[string]*trade.Function{}, groups: map[string]bool{}, Instruments: UsualInstruments()}
	for _, list := range lists {
		for i := range list {
			f := &list[i]
			l.functions[f.Name] = f
			l.groups[groupOf(f.Name)] = true
		}
	}
	return l
}

// With is the library with the instruments of a shop's own file in front.
func (l *Library) With(f *source.File) (*Library, error) {
	own, err := ReadInstruments(f)
	if err != nil {
		return nil, err
	}
	with := *l
	with.Instruments = maps.Clone(l.Instruments)
	maps.Copy(with.Instruments, own)
	with.own = append(slices.Clip(l.own), f)
	return &with, nil
}

// Files gives the shop's own files that have a say in what comes out.
func (l *Library) Files() []*source.File { return l.own }

func groupOf(name string) string {
	for i := range len(name) {
		if name[i] == '.' {
			return name[:i]
		}
	}
	return name
}

// Function finds a function by its full name, such as truck.capacity_at.
func (l *Library) Function(name string) (*trade.Function, bool) {
	f, ok := l.functions[name]
	return f, ok
}

// Functions lists every trade function, by name.
func (l *Library) Functions() []*trade.Function {
	list := make([]*trade.Function, 0, len(l.functions))
	for _, f := range l.functions {
		list = append(list, f)
	}
	sort.Slice(list, func(i, j int) bool { return list[i].Name < list[j].Name })
	return list
}

func (l *Library) names() []string {
	var names []string
	for _, f := range l.Functions() {
		names = append(names, f.Name)
	}
	return names
}

// Trade is the library of every function that this program has.
var Trade = sync.OnceValue(func() *Library { return NewLibrary(tradeFunctions()...) })

// mathFunction is one of the plain functions of the language, whose kinds
// follow from its arguments.
type mathFunction struct {
	name     string
	about    string
	min, max int // number of arguments; max < 0 for any number
	kind     func(args []Type) (Type, string)
	eval     func(args []float64) float64
}

func sameKind(args []Type) (Type, string) {
	t := args[0]
	for _, a := range args[1:] {
		if !match(t, a) {
			return Type{}, "takes values of one kind, not " + t.String() + " and " + a.String()
		}
		if t.isDerived() {
			t = a
		}
	}
	return t, ""
}

func takes(want, gives units.Kind) func([]Type) (Type, string) {
	return func(args []Type) (Type, string) {
		for _, a := range args {
			if !match(kindType(want), a) {
				return Type{}, "takes " + kindType(want).String() + ", not " + a.String()
			}
		}
		return kindType(gives), ""
	}
}

func halfDimension(args []Type) (Type, string) {
	d := args[0].Dim
	for i, e := range d {
		if e%2 != 0 {
			return Type{}, "cannot take the root of " + args[0].String()
		}
		d[i] = e / 2
	}
	return derived(d), ""
}

// mathFunctions holds the plain functions. None may give NaN for finite
// arguments of a checked kind except outside its domain, which is reported.
var mathFunctions = map[string]mathFunction{
	"min":   {"min", "the least of several values", 1, -1, sameKind, func(a []float64) float64 { return fold(a, math.Min) }},
	"max":   {"max", "the greatest of several values", 1, -1, sameKind, func(a []float64) float64 { return fold(a, math.Max) }},
	"abs":   {"abs", "a value without its sign", 1, 1, sameKind, func(a []float64) float64 { return math.Abs(a[0]) }},
	"hypot": {"hypot", "the long side of a right triangle", 2, 2, sameKind, func(a []float64) float64 { return math.Hypot(a[0], a[1]) }},
	"mean": {"mean", "the average of several values", 1, -1, sameKind, func(a []float64) float64 {
		return fold(a, func(x, y float64) float64 { return x + y }) / float64(len(a))
	}},
	"sqrt": {"sqrt", "the square root", 1, 1, halfDimension, func(a []float64) float64 { return math.Sqrt(a[0]) }},
	"sin":  {"sin", "the sine of an angle", 1, 1, takes(units.Angle, units.Ratio), func(a []float64) float64 { return math.Sin(a[0]) }},
	"cos":  {"cos", "the cosine of an angle", 1, 1, takes(units.Angle, units.Ratio), func(a []float64) float64 { return math.Cos(a[0]) }},
	"tan":  {"tan", "the tangent of an angle", 1, 1, takes(units.Angle, units.Ratio), func(a []float64) float64 { return math.Tan(a[0]) }},
	"asin": {"asin", "the angle whose sine is given", 1, 1, takes(units.Ratio, units.Angle), func(a []float64) float64 { return math.Asin(a[0]) }},
	"acos": {"acos", "the angle whose cosine is given", 1, 1, takes(units.Ratio, units.Angle), func(a []float64) float64 { return math.Acos(a[0]) }},
	"atan": {"atan", "the angle whose tangent is given", 1, 1, takes(units.Ratio, units.Angle), func(a []float64) float64 { return math.Atan(a[0]) }},
	"weight_of": {"weight_of", "the force with which a mass pulls down, at standard gravity", 1, 1, takes(units.Mass, units.Force),
		func(a []float64) float64 { return a[0] * trade.StandardGravity }},
}

func fold(a []float64, f func(x, y float64) float64) float64 {
	x := a[0]
	for _, y := range a[1:] {
		x = f(x, y)
	}
	return x
}

// constants of the language.
var constants = map[string]float64{"pi": math.Pi}

// logic functions are built into the checker: given and between.
var logicFunctions = map[string]string{
	"given":   "whether a reading has been taken",
	"between": "whether a value lies from one limit to the other, both included",
}

// reserved reports whether a name already means something in the language. The
// names of functions and units are free: they only mean something with a
// bracket behind them.
func reserved(name string) bool {
	_, isConstant := constants[name]
	return isConstant || keywords[name]
}

var keywords = map[string]bool{"and": true, "or": true, "not": true, "in": true, "true": true, "false": true, "nil": true, "let": true, "if": true, "else": true, "matches": true, "contains": true, "startsWith": true, "endsWith": true}

// PlainFunction is a function of the language itself.
type PlainFunction struct{ Name, About string }

// PlainFunctions lists the functions that belong to no part of the trade, by
// name.
func PlainFunctions() []PlainFunction {
	var list []PlainFunction
	for name, f := range mathFunctions {
		list = append(list, PlainFunction{name, f.about})
	}
	for name, text := range logicFunctions {
		list = append(list, PlainFunction{name, text})
	}
	sort.Slice(list, func(i, j int) bool { return list[i].Name < list[j].Name })
	return list
}
